//! Text in; a session, what was understood, and every row that was not, out. Never fails whole.

use crate::measure::MeasureId;
use crate::session::Session;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

mod position;

/// What a column holds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// The build's name.
    Build,
    /// The round.
    Round,
    /// The shot's number.
    Number,
    /// A measure.
    Measure(MeasureId),
    /// Kept, shown, not used.
    Ignored,
}

/// One column as it was understood.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ColumnReading {
    /// Position in the text, from 0.
    pub index: usize,
    /// Heading as written.
    pub heading: String,
    /// What it was taken for.
    pub role: Role,
    /// Unit it was read in, as shown to the golfer; empty for none.
    pub unit: String,
    /// Whether the reading needs the golfer's eye.
    pub sure: bool,
    /// Other readings worth offering, best first.
    pub alternatives: Vec<Role>,
    /// Other units worth offering.
    pub units: Vec<String>,
}

/// How the rows were sorted; the numbers add up to every line that was not blank.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct RowCounts {
    /// Rows read as shots.
    pub shots: usize,
    /// Rows read as averages and the like.
    pub summaries: usize,
    /// Headings, unit rows, titles, prose.
    pub headings: usize,
    /// Rows that could not be used; each has a problem.
    pub problems: usize,
}

/// What was understood of the text, each part of it open to correction through [`Hints`].
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Reading {
    /// How cells are set apart: "comma", "tab", "semicolon", "pipe", "spaces", ...
    pub delimiter: String,
    /// The decimal mark, "." or ",".
    pub decimal_mark: String,
    /// How shots lie in the text.
    pub layout: String,
    /// Every column.
    pub columns: Vec<ColumnReading>,
    /// Every row, counted.
    pub rows: RowCounts,
}

/// What the golfer says about the text; overrides every guess.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default)]
pub struct Hints {
    /// How cells are set apart, in the words of [`Reading::delimiter`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub delimiter: Option<String>,
    /// "." or ",".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub decimal_mark: Option<String>,
    /// What columns hold, by position.
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<BTreeMap<usize, Role>>"))]
    #[serde(deserialize_with = "position::keyed")]
    pub columns: BTreeMap<usize, Role>,
    /// Units by column position.
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<BTreeMap<usize, String>>"))]
    #[serde(deserialize_with = "position::keyed")]
    pub units: BTreeMap<usize, String>,
    /// Name of the build that all shots without one belong to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub build: Option<String>,
    /// How the shots were hit, when the golfer knows.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub order: Option<crate::session::Order>,
}

/// Where in the text a problem or notice sits.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Place {
    /// Line, from 1; 0 when it is the text as a whole.
    pub line: u32,
    /// Column heading, or null.
    pub column: Option<String>,
}

/// A row or cell that could not be used.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Problem {
    /// Stable name of the kind, snake_case.
    pub kind: String,
    /// Where.
    pub place: Place,
    /// What was found there, shortened.
    pub found: String,
    /// What is wrong, in plain words.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

/// Something understood by a guess, or worth knowing, that costs no row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Notice {
    /// Stable name of the kind, snake_case.
    pub kind: String,
    /// Where.
    pub place: Place,
    /// In plain words.
    pub message: String,
}

/// The outcome of reading.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ReadResult {
    /// The good rows.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// The rows and cells that could not be used.
    pub problems: Vec<Problem>,
    /// Guesses and things worth knowing.
    pub notices: Vec<Notice>,
    /// What was understood.
    pub reading: Reading,
}

/// Reads shots from text.
#[must_use]
pub fn read(_text: &str, _hints: &Hints) -> ReadResult {
    ReadResult {
        session: Session::default(),
        problems: Vec::new(),
        notices: Vec::new(),
        reading: Reading {
            delimiter: "comma".into(),
            decimal_mark: ".".into(),
            layout: "one row per shot".into(),
            columns: Vec::new(),
            rows: RowCounts::default(),
        },
    }
}
