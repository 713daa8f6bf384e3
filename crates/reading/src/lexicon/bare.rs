//! The short way to a figure, for cells that are nothing but one: most of a text's.

use crate::lexicon::figure::{Figure, LONGEST};

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
