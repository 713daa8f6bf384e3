//! An average with its deviation in one cell.

use crate::lexicon::number::{Cell, scan};
use crate::trim::trim;

/// "251 ± 8", "251 +/- 8", "251 (8)": an average with its deviation.
pub(crate) fn pair(text: &str) -> Option<(&str, &str)> {
    let split = text.split_once('±').or_else(|| {
        text.match_indices('+').find_map(|(at, _)| {
            let rest = text.get(at + 1..)?;
            Some((text.get(..at)?, rest.strip_prefix("/-").or(rest.strip_prefix('-'))?))
        })
    });
    let (mean, sd) = match split {
        Some(both) => both,
        None => text.strip_suffix(')')?.split_once('(')?,
    };
    let (mean, sd) = (trim(mean), trim(sd));
    let figure = |text: &str| matches!(scan(text), Cell::Figure(_));
    (figure(mean) && figure(sd)).then_some((mean, sd))
}

#[cfg(test)]
mod tests {
    use super::pair;

    #[test]
    fn a_deviation_is_found_however_its_mark_is_written() {
        for text in ["251 ± 8", "251 +/- 8", "251 +- 8", "251±8", "251 (8)"] {
            assert_eq!(pair(text), Some(("251", "8")), "{text}");
        }
        assert_eq!(pair("+5 +/- +3"), Some(("+5", "+3")));
        for text in ["251", "251 + 8", "251 - 8", "± 8", "251 +/-", "+", "a +/- 8"] {
            assert_eq!(pair(text), None, "{text}");
        }
    }
}
