//! Telling measures one below the other, as on a receipt or a screen, from rows of shots.

use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, is_missing, scan};
use crate::lexicon::pair::pair;
use crate::lexicon::word::Word;
use crate::outcome::Layout;
use crate::trim::trim;
use session::units::SourceUnit;

/// Most rows that are looked at: a receipt is short.
const MOST_ROWS: usize = 200;
/// Rows that may stand above the headings.
const MOST_ABOVE: usize = 5;

/// Splits lines such as "Carry 251 yd" and "Carry: 251" into heading and value.
///
/// `None` when fewer than two lines, or less than half of those with digits, are of that kind.
pub(crate) fn split_lines(grid: &Grid) -> Option<Grid> {
    if grid.len() > MOST_ROWS {
        return None;
    }
    let mut split = Grid::default();
    let (mut found, mut with_digits) = (0, 0);
    for row in 0..grid.len() {
        let text = grid.cell(row, 0);
        split.begin(grid.line(row));
        with_digits += usize::from(text.bytes().any(|b| b.is_ascii_digit()));
        if let Some((heading, value)) = heading_and_value(text) {
            found += 1;
            split.push(heading);
            split.push(value);
        } else {
            split.push(text);
        }
    }
    (found >= 2 && found * 2 >= with_digits).then_some(split)
}

fn heading_and_value(text: &str) -> Option<(&str, &str)> {
    let is_value = |text: &str| matches!(scan(text), Cell::Figure(_)) || pair(text).is_some();
    let is_heading = |text: &str| matches!(understand(text).word, Some(Word::Measure(_) | Word::Count));
    let fits = |&(heading, value): &(&str, &str)| is_heading(heading) && is_value(value);
    let at_mark = text.split_once([':', '=']).map(|(h, v)| (trim(h), trim(v))).filter(fits);
    at_mark.or_else(|| {
        let start = text.find(|c: char| c.is_ascii_digit() || matches!(c, '-' | '+' | '−'))?;
        let before = text.get(..start)?;
        Some((trim(before), trim(text.get(start..)?))).filter(fits)
    })
}

/// Whether a row is a heading of the trade followed by nothing but numbers.
fn is_down_row(grid: &Grid, row: usize) -> bool {
    let mut cells = grid.cells(row).filter(|c| !c.is_empty());
    let Some(first) = cells.next() else { return false };
    let mut values = 0;
    for cell in cells {
        if matches!(scan(cell), Cell::Figure(_)) || pair(cell).is_some() {
            values += 1;
        } else if !is_missing(cell) && SourceUnit::from_text(cell).is_none() {
            return false;
        }
    }
    values > 0 && matches!(understand(first).word, Some(Word::Measure(_) | Word::Count))
}

/// Whether a row heads a table of shots: the club's column, then nothing but measures.
fn is_headed(grid: &Grid, row: usize) -> bool {
    let mut cells = grid.cells(row).filter(|c| !c.is_empty());
    let first = cells.next().unwrap_or_default();
    let (mut all, mut any) = (true, false);
    for cell in cells {
        any = true;
        all &= matches!(scan(cell), Cell::Text) && matches!(understand(cell).word, Some(Word::Measure(_)));
    }
    all && any && matches!(understand(first).word, Some(Word::Build(_)))
}

/// Whether the rows are measures rather than shots.
pub(crate) fn has_measures_down(grid: &Grid, hints: &Hints) -> bool {
    match hints.layout {
        Some(Layout::MeasuresDown) => return true,
        Some(_) => return false,
        None => {}
    }
    if grid.len() == 0
        || grid.len() > MOST_ROWS
        || (0..grid.len().min(MOST_ABOVE)).any(|row| is_headed(grid, row))
    {
        return false;
    }
    let down = (0..grid.len()).filter(|&row| is_down_row(grid, row)).count();
    let numeric =
        (0..grid.len()).filter(|&row| grid.cells(row).any(|c| matches!(scan(c), Cell::Figure(_)))).count();
    down >= 2 && down * 5 >= numeric * 4
}
