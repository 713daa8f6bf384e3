//! Tables that lie otherwise than one row for each shot, laid out as if they did, before anything else looks at them.

mod laid;
mod list;
mod list_line;
mod measure;
mod over;
mod plain;
mod short;
mod sideways;
mod translate;
mod wide;

pub(crate) use laid::{Laid, Single};
pub(crate) use measure::guessed;
pub(crate) use plain::is_plain;

use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::outcome::{Delimiter, Layout};

/// Lays the text out, where it is of such a form. `None` leaves the grid as it was cut.
pub(crate) fn lay_out(text: &str, grid: &Grid, delimiter: Delimiter, hints: &Hints) -> Option<Laid> {
    if !matches!(hints.layout, None | Some(Layout::RowPerBuild)) || !hints.lines.is_empty() {
        return None;
    }
    let is_markup = matches!(delimiter, Delimiter::Html | Delimiter::Json);
    let list = if is_markup || hints.delimiter.is_some() { None } else { list::lay_out(text, hints) };
    list.or_else(|| wide::lay_out(grid, hints)).or_else(|| sideways::lay_out(grid))
}

/// Headings of other languages as the English ones.
pub(crate) fn in_english(grid: Grid) -> Grid {
    translate::translated(&grid).unwrap_or(grid)
}

/// The same table with headings that say by themselves what a row over them says, and rows that say their club.
pub(crate) fn mend(grid: Grid) -> Grid {
    let grid = over::with_groups(&grid).unwrap_or(grid);
    short::filled_up(&grid).unwrap_or(grid)
}
