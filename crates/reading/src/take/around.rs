//! What the text around the tables says of them.

use crate::cut::blocks::Sorted;
use crate::cut::grid::Grid;
use crate::lexicon::heading::words;
use crate::outcome::LineIs;
use crate::take::averages::speak_of_averages;
use crate::take::summary::shots_meant;
use session::SummaryOf;

/// What the text around the tables says of them.
pub(crate) struct Around {
    pub(crate) speaks_of_averages: bool,
    pub(crate) meant: SummaryOf,
}

impl Around {
    pub(crate) fn of(grid: &Grid, sorted: &Sorted) -> Self {
        let mut around = Self { speaks_of_averages: false, meant: SummaryOf::All };
        let texts =
            sorted.others.iter().filter(|(_, is)| matches!(is, LineIs::Text | LineIs::Build)).take(50);
        for (row, _) in texts {
            let words: Vec<String> = grid.cells(*row).take(10).flat_map(words).collect();
            around.speaks_of_averages |= speak_of_averages(&words);
            if around.meant == SummaryOf::All {
                around.meant = shots_meant(&words);
            }
        }
        around
    }
}
