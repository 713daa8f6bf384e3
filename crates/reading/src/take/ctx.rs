//! What taking shots from cells needs, and what it gathers.

use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::outcome::{LineIs, Statistic};
use crate::take::draft::Draft;
use crate::talk::Talk;
use session::SummaryOf;
use session::few::Set;

/// What reading needs and gathers.
pub(crate) struct Ctx<'a> {
    pub(crate) grid: &'a Grid,
    pub(crate) hints: &'a Hints,
    pub(crate) draft: Draft,
    pub(crate) talk: Talk,
    pub(crate) summaries: Vec<SummaryRow>,
    /// What each row turned out to be.
    pub(crate) outcomes: Vec<(usize, LineIs)>,
    /// Values read with letters as digits, as asked.
    pub(crate) letters_read: usize,
    /// Something had no build and got the assumed one.
    pub(crate) build_assumed: bool,
    /// There were more summaries than are kept.
    pub(crate) too_many_summaries: bool,
    /// Titles that gave a shot its build.
    pub(crate) titles_used: Set<usize>,
    /// Shots that a mark without a reason sets aside.
    pub(crate) unexplained: Vec<usize>,
    /// Cells already found to be no label of a summary.
    pub(crate) no_labels: Set<String>,
}

impl<'a> Ctx<'a> {
    /// For a text of so many bytes.
    pub(crate) fn new(grid: &'a Grid, hints: &'a Hints, talk: Talk, bytes: usize) -> Self {
        Self {
            grid,
            hints,
            draft: Draft::for_text(bytes),
            talk,
            summaries: Vec::new(),
            outcomes: Vec::new(),
            letters_read: 0,
            build_assumed: false,
            too_many_summaries: false,
            titles_used: Set::default(),
            unexplained: Vec::new(),
            no_labels: Set::default(),
        }
    }
}

/// A summary row as read.
#[derive(Debug, Clone)]
pub(crate) struct SummaryRow {
    pub(crate) line: u32,
    pub(crate) statistic: Statistic,
    /// `None` when it stands for all shots.
    pub(crate) build: Option<usize>,
    pub(crate) n: Option<u32>,
    pub(crate) of: SummaryOf,
    /// Measure, value, step it was written in.
    pub(crate) values: Vec<(usize, f64, f64)>,
    /// The shots it stands under.
    pub(crate) shots: std::ops::Range<usize>,
}
