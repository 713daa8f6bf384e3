//! Columns lined up by spaces.

use super::number::{Cell, scan};

/// Whether a line looks like a row of several columns set apart by spaces.
pub(super) fn has_columns(line: &str) -> bool {
    let line = line.trim();
    line.contains("  ") || line.split_whitespace().filter(|w| matches!(scan(w), Cell::Figure(_))).count() > 1
}
