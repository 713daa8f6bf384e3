//! What a reading is in doubt of: data that the page asks about before it answers, and what the golfer said to it.
//!
//! While a doubt holds the answer waits. What a tap says goes back in [`crate::Hints::settled`] under the doubt's key,
//! and the text is read again: a doubt that was settled is none.

use serde::{Deserialize, Serialize};
use session::measure::MeasureId;

/// What a doubt is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DoubtKind {
    /// More builds than any session has: another column may name them.
    ManyClubs,
    /// Nothing names what was measured.
    MeasureGuessed,
    /// A column whose heading nobody knows has a unit and values of the trade.
    UnknownHeading,
    /// Two columns claim one measure.
    HeadedAlike,
    /// A whole column only makes sense in another unit.
    Unit,
    /// One build's values go with its other measures, and with the other builds, only in another unit.
    UnitOfClub,
    /// Values of one column stand in several units.
    UnitsMixed,
    /// Values that cannot be: they stay out.
    OutOfRange,
    /// Values ten times off the others of their build: they stay out.
    PointSlipped,
    /// The ball carried farther than it went.
    AboveTotal,
    /// What stands behind ± was taken for a standard deviation.
    PlusMinus,
    /// A spread that no golfer has.
    OddSpread,
    /// Names that differ by case, spaces or signs.
    SameName,
    /// A build with a single shot among builds with several.
    OneRow,
    /// A build named by a number, or by the word for a measure.
    OddName,
    /// Shots are marked as not counting, and nothing says why.
    LeftOutWhy,
}

/// What the golfer can say to a doubt.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Settled {
    /// It is as it was read.
    Right,
    /// The cells, or the rows, stay out.
    LeaveOut,
    /// The builds are one.
    OneClub,
    /// The second of the two columns is meant.
    Second,
    /// The shots count all the same.
    Count,
    /// The values are in this unit.
    Unit(String),
    /// The values, or the column, are of this measure.
    Measure(MeasureId),
    /// This column, from 0, names the builds.
    Column(usize),
    /// Why the shots are left out.
    Reason(String),
}

/// One tap that settles a doubt.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Choice {
    /// What it says.
    pub says: Settled,
    /// On its button.
    pub label: String,
}

/// Some shots of a build, in words, to see whether they were understood.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Sample {
    /// Index of the build.
    pub build: usize,
    /// Its first shots, one text each.
    pub shots: Vec<String>,
}

/// Something about the reading that only the golfer can say.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(rename = "ReadingDoubt"))]
pub struct Doubt {
    /// Its name in [`crate::Hints::settled`].
    pub key: String,
    /// What it is about.
    pub kind: DoubtKind,
    /// The measure, null where it is about no single one.
    pub measure: Option<MeasureId>,
    /// Builds it touches, by index.
    pub builds: Vec<usize>,
    /// Lines it touches, the first ones; empty when it is about a whole column or build.
    pub lines: Vec<u32>,
    /// The measures whose answer waits for it; empty: every answer waits.
    pub holds: Vec<MeasureId>,
    /// What is asked, in plain words.
    pub question: String,
    /// What can be said to it, the likeliest first.
    pub choices: Vec<Choice>,
    /// Some shots of each build, as they were read.
    pub samples: Vec<Sample>,
}
