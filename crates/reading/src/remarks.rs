//! What is said of a text beside what was read: rows and cells that could not be used, and what was guessed.

use serde::Serialize;

/// Where in the text a problem or notice sits.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Place {
    /// Line, from 1; 0 when it is the text as a whole.
    pub line: u32,
    /// Column heading, or null.
    pub column: Option<String>,
}

/// Why a row, a cell or a whole text could not be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum ProblemKind {
    /// There is no text.
    EmptyText,
    /// The text holds no numbers that could be shots.
    NoNumbers,
    /// The text is longer than can be read; what follows the place was not read.
    TooLong,
    /// A cell that should hold a number does not.
    NotANumber,
    /// A letter stands where a digit belongs.
    LetterForDigit,
    /// The cell uses another decimal mark than its column.
    OtherDecimalMark,
    /// A unit that does not fit the measure.
    OtherUnit,
    /// More cells than headings.
    TooManyCells,
    /// A row without a single number.
    NoNumberInRow,
    /// No build is named for the row.
    NoBuild,
    /// A column, one line for each cell, with fewer or more values than the others.
    UnevenColumns,
    /// Further problems, counted but not listed.
    More,
}

/// A row or cell that could not be used.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Problem {
    /// Which kind.
    pub kind: ProblemKind,
    /// Where.
    pub place: Place,
    /// What was found there, shortened.
    pub found: String,
    /// What is wrong, in plain words.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
    /// What the cell probably should say, where that can be told.
    pub suggestion: Option<String>,
}

/// What a notice is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NoticeKind {
    /// No build was named; one name was given to all shots.
    BuildAssumed,
    /// The column that names the builds was guessed.
    BuildColumnGuessed,
    /// A build's name was carried down to the rows below it.
    BuildCarriedDown,
    /// There are no headings.
    NoHeadings,
    /// A column was kept under its own heading; a measure with a similar name is offered.
    ColumnUnsure,
    /// Two columns claim the same measure; the first one has it.
    ColumnRepeated,
    /// The measure of a table with one column for each build was guessed.
    MeasureGuessed,
    /// No unit is given; the trade's usual one was taken.
    UnitAssumed,
    /// A whole column only makes sense in another unit.
    UnitQuestion,
    /// A value outside the plausible range; it still counts.
    Implausible,
    /// Letters were read as digits, as the golfer asked.
    LettersRead,
    /// Shots were put in order by their numbers.
    OrderedByNumber,
    /// Shots were put in order by their times.
    OrderedByTime,
    /// Rounds were worked out from the order of the builds.
    RoundsInferred,
    /// Shot numbers are missing.
    NumbersMissing,
    /// A shot number is there twice.
    NumbersRepeated,
    /// An average or the like cannot come from the rows it stands with.
    SummaryDisagrees,
    /// Averages stand in the file and agree with its rows.
    SummaryAgrees,
    /// More summary rows than are kept; the further ones were counted only.
    TooManySummaries,
    /// Averages without a deviation: the largest usual one will be taken.
    DeviationMissing,
    /// Averages without a number of shots: no verdict can come from them.
    CountMissing,
    /// Averages of chosen shots: no verdict can come from them.
    ChosenShots,
    /// One number for each build: read as shots, though they may be averages.
    PerhapsAverages,
    /// Lines of text beside the table were passed over.
    TextPassedOver,
    /// Quotes that never close were taken as plain characters.
    QuotesIgnored,
    /// Values marked with a star were read like the others.
    MarkedValues,
    /// A column with hardly any value was set aside to keep the session small.
    ColumnTooSparse,
    /// A second thing changed during the session, and no club was hit on both sides of it.
    SecondMixedUp,
    /// A line between the shots says that something changed there.
    SomethingChanged,
    /// Further notices, counted but not listed.
    More,
}

/// Something understood by a guess, or worth knowing, that costs no row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Notice {
    /// Which kind.
    pub kind: NoticeKind,
    /// Where.
    pub place: Place,
    /// In plain words.
    pub message: String,
}
