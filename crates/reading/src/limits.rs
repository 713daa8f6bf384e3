//! How much can be read, so that no text can take the page down.

/// Longest text, in bytes.
pub const MAX_BYTES: usize = 10 * 1024 * 1024;

/// Most rows.
pub const MAX_ROWS: usize = 100_000;

/// Most cells.
pub(crate) const MAX_CELLS: usize = 3_000_000;

/// Most columns of one table that are looked at.
pub(crate) const MAX_COLUMNS: usize = 200;

/// Problems and notices listed one by one; further ones are counted.
pub(crate) const MAX_LISTED: usize = 200;

/// Longest piece of the text repeated in a message, in characters.
pub(crate) const MAX_QUOTED: usize = 40;

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
    let text = crate::lexicon::number::trim(text);
    match text.char_indices().nth(MAX_QUOTED) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}
