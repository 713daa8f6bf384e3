//! What reading gives back: the session, what was understood, and every row that was not.
//!
//! Everything that was guessed stands in [`Reading`] and can be overruled through
//! [`crate::Hints`] in the same words.

use crate::doubt::Doubt;
use crate::form::Form;
use crate::remarks::{Notice, Problem};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::MeasureId;
use session::question::Question;

/// What a column holds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// The build's name. Several such columns make one name together (head and shaft).
    Build,
    /// The round.
    Round,
    /// The shot's number.
    Number,
    /// When the shot was hit.
    Time,
    /// How many shots stand behind a row of averages.
    Count,
    /// Why the golfer set the shot aside; empty when it counts.
    LeftOut,
    /// A measure: its value, or its average in a table of averages.
    Measure(MeasureId),
    /// The standard deviation of a measure, in a table of averages.
    Deviation(MeasureId),
    /// The smallest value of a measure, in a table of averages.
    Low(MeasureId),
    /// The largest value of a measure, in a table of averages.
    High(MeasureId),
    /// What else changed during the session: before and after a lesson, one ball and another.
    Second,
    /// Kept, shown, not used.
    Ignored,
}

/// Where a column's unit comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum UnitSource {
    /// From the heading.
    Heading,
    /// From a row of units under the headings.
    UnitsRow,
    /// Written behind the values.
    Values,
    /// The golfer said so.
    Hint,
    /// Nothing names it: the trade's usual unit was taken.
    Assumed,
    /// The column has no unit.
    None,
}

/// One column as it was understood.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ColumnReading {
    /// Position in the text, from 0; the key for [`crate::Hints::columns`] and its like.
    pub index: usize,
    /// Heading as written; empty when there is none.
    pub heading: String,
    /// What it was taken for.
    pub role: Role,
    /// Unit it was read in, as shown to the golfer; empty for none.
    pub unit: String,
    /// Where the unit comes from.
    pub unit_source: UnitSource,
    /// Decimal mark of its numbers, "." or ","; empty when no number has one.
    pub decimal_mark: String,
    /// The build that this column's values belong to, when the layout gives each its own columns.
    pub build: Option<String>,
    /// `false` when the reading needs the golfer's eye.
    pub sure: bool,
    /// Other readings worth offering, best first.
    pub alternatives: Vec<Role>,
    /// Other units worth offering.
    pub units: Vec<String>,
    /// The unit in which the whole column would make sense, when it makes none in its own.
    pub unit_question: Option<String>,
}

/// How cells are set apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Delimiter {
    /// `,`
    Comma,
    /// Tabulator, as copied from a spreadsheet.
    Tab,
    /// `;`
    Semicolon,
    /// `|`, also in Markdown tables.
    Pipe,
    /// Columns lined up by spaces.
    Spaces,
    /// One cell in each line.
    Lines,
    /// The rows and cells of an HTML table.
    Html,
    /// The objects of a JSON array.
    Json,
}

/// How shots lie in the text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Layout {
    /// One row for each shot, all under one heading.
    Rows,
    /// One row for each shot, in blocks that stand under their build's name.
    Blocks,
    /// One column for each build, all of one measure.
    ColumnPerBuild,
    /// One row for each build, its shots one behind the other; a row of [`RowCounts`] is then a shot.
    RowPerBuild,
    /// Each build has its own set of columns beside the others.
    SideBySide,
    /// Columns stand one below the other, as text taken from a photo has them.
    ColumnAfterColumn,
    /// No shots: one row of averages for each build.
    Averages,
    /// No shots: measures down, builds across.
    MeasuresDown,
}

/// What a line was taken for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum LineIs {
    /// A shot, or one shot for each build.
    Shot,
    /// Averages, deviations, counts and the like.
    Summary,
    /// Column headings.
    Headings,
    /// The units of the columns.
    Units,
    /// The name of the build that follows.
    Build,
    /// Text beside the table: a title, a greeting, a rule.
    Text,
    /// Could not be used; stands among the problems.
    Problem,
}

/// A line that is no shot, and what it was taken for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LineReading {
    /// Line, from 1; the key for [`crate::Hints::lines`].
    pub line: u32,
    /// What it was taken for.
    pub is: LineIs,
    /// Its beginning.
    pub text: String,
}

/// How the rows were sorted.
///
/// `shots + summaries + headings + problems` is every row that holds more than spaces and
/// delimiters. A row is a line, save where a quoted cell spans lines, in HTML and JSON (where it is a table row or an object),
/// and for columns that stand one below the other (where it is a shot).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct RowCounts {
    /// Rows read as shots; in a layout with builds side by side one row holds several.
    pub shots: usize,
    /// Rows read as averages and the like.
    pub summaries: usize,
    /// Headings, unit rows, titles, text.
    pub headings: usize,
    /// Rows that could not be used; each has a problem.
    pub problems: usize,
}

impl RowCounts {
    /// Every row that was not blank.
    #[must_use]
    pub fn total(self) -> usize {
        self.shots + self.summaries + self.headings + self.problems
    }
}

/// What was understood of the text, each part of it open to correction through [`crate::Hints`].
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Reading {
    /// How cells are set apart.
    pub delimiter: Delimiter,
    /// The decimal mark most columns use, "." or ",".
    pub decimal_mark: String,
    /// How shots lie in the text.
    pub layout: Layout,
    /// Every column.
    pub columns: Vec<ColumnReading>,
    /// Every row, counted.
    pub rows: RowCounts,
    /// The first lines that are no shots, with what each was taken for.
    pub lines: Vec<LineReading>,
    /// The measure of a table with one column for each build.
    pub single_measure: Option<MeasureId>,
}

/// Which figure of a summary.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Statistic {
    /// Average.
    Mean,
    /// Median.
    Median,
    /// Standard deviation.
    Deviation,
    /// Smallest.
    Low,
    /// Largest.
    High,
    /// Largest minus smallest.
    Range,
    /// Number of shots.
    Count,
}

/// A figure in the file that cannot come from the shots it stands with.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SummaryGap {
    /// Line of the figure.
    pub line: u32,
    /// Index of the build, null when the figure stands for all shots.
    pub build: Option<usize>,
    /// The measure, null for a number of shots.
    pub measure: Option<MeasureId>,
    /// Which figure.
    pub statistic: Statistic,
    /// As the file has it, in the canonical unit.
    pub printed: f64,
    /// As the rows give it.
    pub from_rows: f64,
    /// The number of shots it was worked out from.
    pub n: usize,
}

/// The outcome of reading.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ReadResult {
    /// The good rows.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// The rows and cells that could not be used.
    pub problems: Vec<Problem>,
    /// Guesses and things worth knowing.
    pub notices: Vec<Notice>,
    /// What was understood.
    pub reading: Reading,
    /// Figures in the file that cannot come from its shots.
    pub gaps: Vec<SummaryGap>,
    /// What only the golfer can say, most urgent first; the answer waits for it.
    pub doubts: Vec<Doubt>,
    /// What was found in sentences, for a form that opens filled in.
    pub form: Option<Form>,
    /// What was asked, where the text says it: only the tool's own CSV does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub question: Option<Question>,
}
