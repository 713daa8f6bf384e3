//! A row over the headings that says whose they are: "Club", "Ball", "Flight" over "Speed", "Speed", "Height".

use crate::cut::grid::Grid;
use crate::lexicon::heading::{understand, words};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::vocabulary::lists;
use crate::lexicon::word::Word;

/// What such a row is made of.
const GROUPS: &str = "club ball flight swing launch impact head clubhead delivery landing distance data result \
     results shot spin face strike direction height trajectory";

/// The grid without that row, its words in the headings that need them; `None` when there is no such row.
pub(crate) fn with_groups(grid: &Grid) -> Option<Grid> {
    let over = (0..grid.len().min(20)).find(|&row| row + 1 < grid.len() && is_over(grid, row))?;
    let headings = over + 1;
    let mut out = Grid::default();
    for row in 0..grid.len() {
        out.begin(grid.line(row));
        if row == over {
            // One cell of text: neither a club nor a heading.
            let text: Vec<&str> = grid.cells(row).filter(|cell| !cell.is_empty()).collect();
            out.push(&format!("{}.", text.join(" ")));
        } else if row == headings {
            let mut group = "";
            for at in 0..grid.width(row) {
                let above = grid.cell(over, at);
                group = if above.is_empty() { group } else { above };
                out.push(&named(group, grid.cell(row, at)));
            }
        } else {
            (0..grid.width(row)).for_each(|at| out.push(grid.raw(row, at)));
        }
    }
    Some(out)
}

/// A row of nothing but group words, over a row of headings that is fuller.
fn is_over(grid: &Grid, row: usize) -> bool {
    let is_group = |cell: &str| words(cell).iter().all(|word| lists(GROUPS, word));
    let cells = || grid.cells(row).filter(|cell| !cell.is_empty());
    let below = grid.cells(row + 1).filter(|cell| matches!(scan(cell), Cell::Text)).count();
    let numbers = grid.cells(row + 1).any(|cell| matches!(scan(cell), Cell::Figure(_)));
    let several = cells().count() > 1 && cells().all(is_group);
    several && !numbers && below > grid.filled(row)
}

/// The heading with its group before it, where that makes it a measure or another one.
fn named(group: &str, heading: &str) -> String {
    let together = format!("{group} {heading}");
    let measure = |text: &str| {
        let heading = understand(text);
        match heading.word {
            Some(Word::Measure(known)) if heading.beside.is_none() => Some(known),
            _ => None,
        }
    };
    if measure(heading).is_none() && measure(&together).is_some() { together } else { heading.to_owned() }
}
