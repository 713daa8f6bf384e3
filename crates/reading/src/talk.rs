//! Problems and notices as they come up, with their wording, and with an end to their number.

use crate::limits::MAX_LISTED;
use crate::remarks::{Notice, NoticeKind, Place, Problem, ProblemKind};
use crate::trim::shortened;
use text::Voice;
use text::reading as say;

/// Collects what has to be said.
#[derive(Debug)]
pub(crate) struct Talk {
    voice: Voice,
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
fn wording(kind: ProblemKind, voice: &Voice) -> (String, String) {
    match kind {
        ProblemKind::EmptyText => (say::empty_text(voice), say::empty_text_remedy(voice)),
        ProblemKind::NoNumbers => (say::no_numbers(voice), say::no_numbers_remedy(voice)),
        ProblemKind::TooLong => (say::too_long(voice), say::too_long_remedy(voice)),
        ProblemKind::NotANumber => (say::not_a_number(voice), say::not_a_number_remedy(voice)),
        ProblemKind::LetterForDigit => (say::letter_for_digit(voice), say::letter_for_digit_remedy(voice)),
        ProblemKind::OtherDecimalMark => {
            (say::other_decimal_mark(voice), say::other_decimal_mark_remedy(voice))
        }
        ProblemKind::OtherUnit => (say::other_unit(voice), say::other_unit_remedy(voice)),
        ProblemKind::TooManyCells => (say::too_many_cells(voice), say::too_many_cells_remedy(voice)),
        ProblemKind::NoNumberInRow => (say::no_number_in_row(voice), say::no_number_in_row_remedy(voice)),
        ProblemKind::NoBuild => (say::no_build(voice), say::no_build_remedy(voice)),
        ProblemKind::UnevenColumns => (say::uneven_columns(voice), say::uneven_columns_remedy(voice)),
        ProblemKind::More => (say::more(voice), say::more_remedy(voice)),
    }
}

impl Talk {
    /// With nothing said yet.
    pub(crate) fn new(voice: &Voice) -> Self {
        Self {
            voice: voice.clone(),
            problems: Vec::new(),
            notices: Vec::new(),
            more_problems: 0,
            more_notices: 0,
        }
    }

    /// How all of it is said.
    pub(crate) fn voice(&self) -> &Voice {
        &self.voice
    }

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
        let (message, remedy) = wording(kind, &self.voice);
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
            let (message, remedy) = wording(ProblemKind::More, &self.voice);
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
            let message = say::more_notices(&self.voice, &self.more_notices.to_string());
            self.notices.push(Notice { kind: NoticeKind::More, place: Place::default(), message });
        }
        (self.problems, self.notices)
    }
}
