//! Which decimal mark a column uses, by the votes of its figures.

use crate::lexicon::figure::{Mark, MarkSign};

/// Counts of what a column's figures say about its decimal mark.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct MarkVotes {
    pub(crate) sure_point: usize,
    pub(crate) sure_comma: usize,
    pub(crate) either_point: usize,
    pub(crate) either_comma: usize,
}

impl MarkVotes {
    pub(crate) fn add(&mut self, sign: MarkSign) {
        match sign {
            MarkSign::Plain => {}
            MarkSign::Sure(Mark::Point) => self.sure_point += 1,
            MarkSign::Sure(Mark::Comma) => self.sure_comma += 1,
            MarkSign::Either(Mark::Point) => self.either_point += 1,
            MarkSign::Either(Mark::Comma) => self.either_comma += 1,
        }
    }

    pub(crate) fn any(&self) -> bool {
        self.sure_point + self.sure_comma + self.either_point + self.either_comma > 0
    }

    /// The mark that the sure figures agree on.
    pub(crate) fn sure(&self) -> Option<Mark> {
        match self.sure_point.cmp(&self.sure_comma) {
            std::cmp::Ordering::Greater => Some(Mark::Point),
            std::cmp::Ordering::Less => Some(Mark::Comma),
            std::cmp::Ordering::Equal => None,
        }
    }
}
