//! Whether a grid is a table under one row of headings that are all known: nothing else is tried on it.

use crate::cut::grid::Grid;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;

/// Rows that may stand above the headings, each of one cell.
const MOST_ABOVE: usize = 30;

/// Whether known headings stand over rows that are all as wide, and no fuller row stands over them.
pub(crate) fn is_plain(grid: &Grid) -> bool {
    let top = grid.len().min(MOST_ABOVE);
    let Some(headings) = (0..top).find(|&row| grid.filled(row) > 1) else { return false };
    let width = grid.width(headings);
    heads_shots(grid, headings)
        && (headings + 1..grid.len()).all(|row| grid.width(row) == width || grid.filled(row) == 1)
}

/// A row of nothing but headings of the trade: a club's or a shot's number, and at least one measure.
fn heads_shots(grid: &Grid, row: usize) -> bool {
    let mut measures = 0;
    let is_known = |cell: &str| {
        let heading = understand(cell);
        measures += usize::from(matches!(heading.word, Some(Word::Measure(_))));
        matches!(scan(cell), Cell::Text) && heading.beside.is_none() && heading.word.is_some()
    };
    grid.cells(row).filter(|cell| !cell.is_empty()).all(is_known) && measures > 0
}
