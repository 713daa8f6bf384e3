//! What the golfer wants to know, said before the numbers are looked at.

use crate::measure::MeasureId;
use serde::{Deserialize, Serialize};

/// What 'better' means on the chosen measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Goal {
    /// A higher average: longer, faster.
    Higher,
    /// A lower average: less spin, lower flight.
    Lower,
    /// An average nearer to zero: straighter on average.
    NearerZero,
    /// Less scatter, whatever the average.
    Tighter,
    /// Any difference counts.
    Different,
}

/// Plain stopping rules, without a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum StoppingWord {
    /// The number of shots was fixed before the first one.
    Fixed,
    /// Nobody knows why it stopped there; taken as looked at again and again.
    Unknown,
}

/// When the numbers were looked at on the way.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum LookedAfter {
    /// After every round from the second up to this one.
    EveryRoundTo(u32),
    /// After exactly these rounds.
    Rounds(Vec<u32>),
}

/// How it was decided when to stop.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum Stopping {
    /// Without a plan of looks.
    Word(StoppingWord),
    /// A number of rounds was planned, and looked at on the way.
    Planned {
        /// The largest number of rounds, fixed before the first shot.
        planned_rounds: u32,
        /// The looks taken so far.
        looked_after: LookedAfter,
    },
}

impl Default for Stopping {
    fn default() -> Self {
        Self::Word(StoppingWord::Unknown)
    }
}

/// The question: does the candidate differ from the baseline on this measure, by enough to matter?
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Question {
    /// Index of the build the others are held against, usually the golfer's own club.
    pub baseline: usize,
    /// Index of the build in question; left open, the one that leads towards the goal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub candidate: Option<usize>,
    /// The measure named before the numbers.
    pub measure: MeasureId,
    /// What better means; left open, the measure's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub goal: Option<Goal>,
    /// Smallest difference that would matter, in the measure's unit; left open, the measure's own. For the goal
    /// `tighter` it is a ratio of scatters above 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub margin: Option<f64>,
    /// The margin under which the answer was first shown, when it was changed since.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first_margin: Option<f64>,
    /// How it was decided when to stop.
    #[serde(default)]
    pub stopping: Stopping,
}
