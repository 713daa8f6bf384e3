//! Problems and notices as they come up, with their wording, and with an end to their number.

use crate::limits::{MAX_LISTED, shortened};
use crate::remarks::{Notice, NoticeKind, Place, Problem, ProblemKind};
use text::reading as say;

/// Collects what has to be said.
#[derive(Debug, Default)]
pub(crate) struct Talk {
    problems: Vec<Problem>,
    notices: Vec<Notice>,
    more_problems: usize,
    more_notices: usize,
}

/// A line and a column's heading, while nothing is said about them yet.
#[derive(Debug, Clone, Copy)]
pub(crate) struct At<'a> {
    line: u32,
    column: &'a str,
}

pub(crate) fn place(line: u32, column: &str) -> At<'_> {
    At { line, column }
}

impl At<'_> {
    fn place(self) -> Place {
        let column = if self.column.is_empty() { None } else { Some(shortened(self.column)) };
        Place { line: self.line, column }
    }
}

/// Message and remedy of each kind of problem.
fn wording(kind: ProblemKind) -> (String, String) {
    match kind {
        ProblemKind::EmptyText => (say::empty_text(), say::empty_text_remedy()),
        ProblemKind::NoNumbers => (say::no_numbers(), say::no_numbers_remedy()),
        ProblemKind::TooLong => (say::too_long(), say::too_long_remedy()),
        ProblemKind::NotANumber => (say::not_a_number(), say::not_a_number_remedy()),
        ProblemKind::LetterForDigit => (say::letter_for_digit(), say::letter_for_digit_remedy()),
        ProblemKind::OtherDecimalMark => (say::other_decimal_mark(), say::other_decimal_mark_remedy()),
        ProblemKind::OtherUnit => (say::other_unit(), say::other_unit_remedy()),
        ProblemKind::TooManyCells => (say::too_many_cells(), say::too_many_cells_remedy()),
        ProblemKind::NoNumberInRow => (say::no_number_in_row(), say::no_number_in_row_remedy()),
        ProblemKind::NoBuild => (say::no_build(), say::no_build_remedy()),
        ProblemKind::UnevenColumns => (say::uneven_columns(), say::uneven_columns_remedy()),
        ProblemKind::More => (say::more(), say::more_remedy()),
    }
}

impl Talk {
    /// Adds a problem.
    pub(crate) fn problem(&mut self, kind: ProblemKind, place: At<'_>, found: &str) {
        self.suggest(kind, place, found, None);
    }

    /// Adds a problem with what the cell probably should say.
    pub(crate) fn suggest(
        &mut self,
        kind: ProblemKind,
        place: At<'_>,
        found: &str,
        suggestion: Option<String>,
    ) {
        if self.problems.len() >= MAX_LISTED {
            self.more_problems += 1;
            return;
        }
        let (message, remedy) = wording(kind);
        self.problems.push(Problem {
            kind,
            place: place.place(),
            found: shortened(found),
            message,
            remedy,
            suggestion,
        });
    }

    /// Adds a notice.
    pub(crate) fn notice(&mut self, kind: NoticeKind, place: At<'_>, message: String) {
        if self.notices.len() >= MAX_LISTED {
            self.more_notices += 1;
            return;
        }
        self.notices.push(Notice { kind, place: place.place(), message });
    }

    pub(crate) fn has_problems(&self) -> bool {
        !self.problems.is_empty()
    }

    /// All of it, problems in the order of the text.
    pub(crate) fn finish(mut self) -> (Vec<Problem>, Vec<Notice>) {
        arrange::sort_by_key(&mut self.problems, |p| p.place.line);
        if self.more_problems > 0 {
            let (message, remedy) = wording(ProblemKind::More);
            self.problems.push(Problem {
                kind: ProblemKind::More,
                place: Place::default(),
                found: self.more_problems.to_string(),
                message,
                remedy,
                suggestion: None,
            });
        }
        if self.more_notices > 0 {
            let message = say::more_notices(&self.more_notices.to_string());
            self.notices.push(Notice { kind: NoticeKind::More, place: Place::default(), message });
        }
        (self.problems, self.notices)
    }
}
