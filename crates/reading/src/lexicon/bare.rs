//! The short way to a figure, for cells that are nothing but one: most of a text's.

use crate::lexicon::number::{Figure, LONGEST};

/// Digits, perhaps a minus before and one point within: what nearly every cell holds, and no other reading of it.
pub(crate) fn bare(text: &str) -> Option<Figure<'_>> {
    let (body, negative) = text.strip_prefix('-').map_or((text, false), |rest| (rest, true));
    let bytes = body.as_bytes();
    let whole = bytes.iter().take_while(|b| b.is_ascii_digit()).count();
    let closed = match &bytes[whole..] {
        [] => true,
        [b'.', fraction @ ..] => !fraction.is_empty() && fraction.iter().all(u8::is_ascii_digit),
        _ => false,
    };
    let fits = whole > 0 && text.len() <= LONGEST;
    (fits && closed).then_some(Figure { body, negative, side: None, unit: None, starred: false })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lexicon::number::figure;

    #[test]
    fn the_short_way_to_a_figure_leads_where_the_long_one_does() {
        for text in
            ["0", "-0", "12", "251.3", "-3.54", "007", "1.", ".5", "-", "1.2.3", "1-2", "12 m", "--1", "+4"]
        {
            if let Some(found) = bare(text) {
                assert_eq!(Some(found), figure(text), "{text}");
            }
        }
        assert!(["12", "-3.54", "0.0"].iter().all(|text| bare(text).is_some()));
        assert!(["1.", ".5", "-", "", "1e3", "1,5"].iter().all(|text| bare(text).is_none()));
        let long = "1".repeat(LONGEST + 1);
        assert_eq!((bare(&long), figure(&long)), (None, None));
    }
}
