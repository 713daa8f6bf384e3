//! Rows one cell short, as a web table with tall cells is copied: they belong to the club above.

use crate::cut::grid::Grid;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;

/// The grid with the club's cell in every row that lacks it; `None` when no row does.
pub(crate) fn filled_up(grid: &Grid) -> Option<Grid> {
    let headings = (0..grid.len().min(20)).find(|&row| is_headed(grid, row))?;
    let width = grid.width(headings);
    let is_named = |row: usize| grid.width(row) >= width && matches!(scan(grid.cell(row, 0)), Cell::Text);
    let is_short = |row: usize| {
        grid.width(row) + 1 == width
            && grid.cells(row).all(|cell| !matches!(scan(cell), Cell::Text))
            && matches!(scan(grid.cell(row, 0)), Cell::Figure(_))
    };
    let rows = headings + 1..grid.len();
    if !rows.clone().any(|row| grid.width(row) + 1 == width) {
        return None;
    }
    // A club named by a number in full rows, or a last cell that was left out, is no such table.
    let named = rows.clone().filter(|&row| is_named(row)).count();
    let short = rows.clone().filter(|&row| is_short(row)).count();
    let first_is_named = rows.clone().next().is_some_and(is_named);
    let other = rows.filter(|&row| grid.filled(row) > 1 && !is_named(row) && !is_short(row)).count();
    if short == 0 || named == 0 || !first_is_named || other > 0 {
        return None;
    }
    let mut out = Grid::default();
    let mut club = String::new();
    for row in 0..grid.len() {
        out.begin(grid.line(row));
        if row > headings && is_short(row) {
            out.push(&club);
        } else if row > headings {
            grid.cell(row, 0).clone_into(&mut club);
        }
        (0..grid.width(row)).for_each(|at| out.push(grid.raw(row, at)));
    }
    Some(out)
}

/// A row of headings whose first one is the club's.
fn is_headed(grid: &Grid, row: usize) -> bool {
    let measures = (1..grid.width(row))
        .filter(|&at| matches!(understand(grid.cell(row, at)).word, Some(Word::Measure(_))))
        .count();
    grid.width(row) > 2 && measures > 1 && matches!(understand(grid.cell(row, 0)).word, Some(Word::Build(_)))
}
