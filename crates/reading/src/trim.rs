//! Texts without what does not matter at their ends, and short enough to be kept or repeated.

use crate::limits::{MAX_NAME, MAX_QUOTED};

/// Space, invisible and direction marks that carry no meaning at a cell's ends.
pub(crate) fn is_blank(c: char) -> bool {
    c.is_whitespace()
        || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

/// Marks that take no room: of direction, of joining, of a possible break.
pub(crate) fn is_unseen(c: char) -> bool {
    c == '\u{ad}' || is_blank(c) && !c.is_whitespace()
}

/// Whether a text holds a mark. `contains` brings along the search for whole words: three kilobytes of the package that
/// answers first, which needs it nowhere else.
pub(crate) fn has(text: &str, mark: char) -> bool {
    text.chars().any(|c| c == mark)
}

/// Without spaces and invisible marks at both ends.
pub(crate) fn trim(text: &str) -> &str {
    // Nearly every cell begins and ends with a figure or a letter.
    match text.as_bytes() {
        [only] if only.is_ascii_graphic() => text,
        [first, .., last] if first.is_ascii_graphic() && last.is_ascii_graphic() => text,
        _ => text.trim_matches(is_blank),
    }
}

/// The largest prefix of a text that is not longer than a limit and ends at a character.
pub(crate) fn prefix(text: &str, bytes: usize) -> &str {
    let mut end = bytes.min(text.len());
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    &text[..end]
}

/// A piece of the text short enough for a message.
pub(crate) fn shortened(text: &str) -> String {
    ended(trim(text), MAX_QUOTED)
}

/// A name or a reason, ended where none is longer.
pub(crate) fn named(text: &str) -> String {
    ended(text, MAX_NAME)
}

fn ended(text: &str, most: usize) -> String {
    match text.char_indices().nth(most) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}
