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

/// Longest name of a build or a measure, and longest reason, in characters: a quote that never closes is none.
pub(crate) const MAX_NAME: usize = 200;

/// Longest piece of the text repeated in a message, in characters.
pub(crate) const MAX_QUOTED: usize = 40;
