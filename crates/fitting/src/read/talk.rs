//! Problems and notices as they come up, with their wording, and with an end to their number.

use super::limits::{MAX_LISTED, shortened};
use super::remarks::{Notice, NoticeKind, Place, Problem, ProblemKind};

/// Collects what has to be said.
#[derive(Debug, Default)]
pub(super) struct Talk {
    problems: Vec<Problem>,
    notices: Vec<Notice>,
    more_problems: usize,
    more_notices: usize,
}

/// A line and a column's heading, while nothing is said about them yet.
#[derive(Debug, Clone, Copy)]
pub(super) struct At<'a> {
    line: u32,
    column: &'a str,
}

pub(super) fn place(line: u32, column: &str) -> At<'_> {
    At { line, column }
}

impl At<'_> {
    fn place(self) -> Place {
        let column = if self.column.is_empty() { None } else { Some(shortened(self.column)) };
        Place { line: self.line, column }
    }
}

/// Message and remedy of each kind of problem.
fn wording(kind: ProblemKind) -> (&'static str, &'static str) {
    match kind {
        ProblemKind::EmptyText => {
            ("There is no text yet.", "Paste the shots, choose a file or type them in.")
        }
        ProblemKind::NoNumbers => (
            "No shots were found: the text has no column of numbers.",
            "Paste a table with one row for each shot, such as: Build, Carry, Offline.",
        ),
        ProblemKind::TooLong => (
            "The text is longer than can be read at once; the rest was not read.",
            "Split it into parts of at most 100,000 rows, 3,000,000 cells and 10 MB.",
        ),
        ProblemKind::NotANumber => (
            "A number was expected here.",
            "Correct the cell or empty it. The other values of this shot count.",
        ),
        ProblemKind::LetterForDigit => (
            "A letter stands in a number.",
            "Take the suggestion if it is right. Until then the value is left blank.",
        ),
        ProblemKind::OtherDecimalMark => (
            "This number uses another decimal mark than its column.",
            "Correct the cell, or choose the column's decimal mark.",
        ),
        ProblemKind::OtherUnit => (
            "The unit behind this number does not fit its column.",
            "Correct the cell, or say what the column holds.",
        ),
        ProblemKind::TooManyCells => (
            "This row has more cells than there are headings; the extra ones were not read.",
            "Check for a decimal comma in a list that is set apart by commas.",
        ),
        ProblemKind::NoNumberInRow => {
            ("This row holds no number that could be read.", "Fill in its numbers, or mark the line as text.")
        }
        ProblemKind::NoBuild => ("No build is named for this shot.", "Write the build's name into the row."),
        ProblemKind::UnevenColumns => (
            "This column has another number of values than the others, so they cannot be matched; it was not read.",
            "Add a dash for each value that is missing.",
        ),
        ProblemKind::More => (
            "More problems like these were counted but are not listed.",
            "Correct the first ones and read again.",
        ),
    }
}

impl Talk {
    /// Adds a problem.
    pub(super) fn problem(&mut self, kind: ProblemKind, place: At<'_>, found: &str) {
        self.suggest(kind, place, found, None);
    }

    /// Adds a problem with what the cell probably should say.
    pub(super) fn suggest(
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
            message: message.to_owned(),
            remedy: remedy.to_owned(),
            suggestion,
        });
    }

    /// Adds a notice.
    pub(super) fn notice(&mut self, kind: NoticeKind, place: At<'_>, message: String) {
        if self.notices.len() >= MAX_LISTED {
            self.more_notices += 1;
            return;
        }
        self.notices.push(Notice { kind, place: place.place(), message });
    }

    pub(super) fn has_problems(&self) -> bool {
        !self.problems.is_empty()
    }

    /// All of it, problems in the order of the text.
    pub(super) fn finish(mut self) -> (Vec<Problem>, Vec<Notice>) {
        stats::arrange::sort_by_key(&mut self.problems, |p| p.place.line);
        if self.more_problems > 0 {
            let (message, remedy) = wording(ProblemKind::More);
            self.problems.push(Problem {
                kind: ProblemKind::More,
                place: Place::default(),
                found: self.more_problems.to_string(),
                message: message.to_owned(),
                remedy: remedy.to_owned(),
                suggestion: None,
            });
        }
        if self.more_notices > 0 {
            let message = format!("{} more notices are not listed.", self.more_notices);
            self.notices.push(Notice { kind: NoticeKind::More, place: Place::default(), message });
        }
        (self.problems, self.notices)
    }
}
