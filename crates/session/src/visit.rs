//! One visit: the builds, the shots in the order they were hit, and averages that came without shots.
//!
//! Values are in canonical units (see [`crate::measure`]). Inside, a shot's values stand
//! in the order of [`Session::measures`]; at the boundary they are keyed by measure id.

use crate::few::Map;
use crate::measure::MeasureId;
use crate::second_and_weather::{Conditions, SecondFactor};
use serde::{Deserialize, Serialize};

/// A club as assembled: head, loft, shaft, length, weight. Known here by its name only.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Build {
    /// As the golfer wrote it. May hold anything: it is text, never markup.
    pub name: String,
}

/// A column that is no measure of the trade's list, kept under its own heading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CustomMeasure {
    /// Id made from the heading.
    pub id: MeasureId,
    /// The heading as written.
    pub name: String,
    /// Unit as written, empty when none was given.
    pub unit: String,
}

/// How builds and time lie in the session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Order {
    /// The builds were hit in turn: at least two rounds hold two builds or more.
    Interleaved,
    /// One build after the other: build and time are the same thing.
    Blocked,
    /// The order in which the shots were hit is not known.
    #[default]
    Unknown,
}

/// One shot as hit. It is never removed: leaving it out gives it a reason.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shot {
    /// Index into [`Session::builds`].
    pub build: usize,
    /// The pass through the builds this shot belongs to, from 1.
    pub round: Option<u32>,
    /// The shot's own number where the source had one.
    pub number: Option<u32>,
    /// One value per entry of [`Session::measures`], `None` where nothing was read.
    pub values: Vec<Option<f64>>,
    /// Why the golfer set this shot aside, `None` when it counts.
    pub left_out: Option<String>,
    /// What the golfer noted of it, such as `mishit`. It counts all the same: a note sets nothing aside.
    pub note: Option<String>,
    /// Index into the values of [`Session::second`].
    pub second: Option<u32>,
}

/// What is known of one measure of one build when the shots themselves are not.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(default)]
pub struct SummaryValue {
    /// Average, in the measure's canonical unit.
    pub mean: Option<f64>,
    /// Standard deviation.
    pub sd: Option<f64>,
    /// Smallest value.
    pub low: Option<f64>,
    /// Largest value.
    pub high: Option<f64>,
}

/// Which shots an average stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SummaryOf {
    /// Every shot hit, as far as is known.
    #[default]
    All,
    /// The best shot or the best few.
    Best,
    /// "The good ones": somebody chose.
    Chosen,
}

/// Averages that a source gave for one build.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Summary {
    /// Index into [`Session::builds`].
    pub build: usize,
    /// Number of shots behind the averages, `None` when not said.
    pub n: Option<u32>,
    /// Which shots they stand for.
    #[serde(default)]
    pub of: SummaryOf,
    /// By measure id.
    #[cfg_attr(feature = "typescript", ts(as = "std::collections::BTreeMap<MeasureId, SummaryValue>"))]
    pub values: Map<MeasureId, SummaryValue>,
    /// Line in the source where it stood, from 1; `None` when typed in.
    #[serde(default)]
    pub line: Option<u32>,
}

/// One visit. Shots are in the order they were hit. As plain data it is a [`crate::wire::Session`].
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Session {
    /// In order of first appearance.
    pub builds: Vec<Build>,
    /// Ids of the measures that at least one shot or summary has.
    pub measures: Vec<MeasureId>,
    /// Names and units of the measures outside the trade's list.
    pub custom: Vec<CustomMeasure>,
    /// In the order hit.
    pub shots: Vec<Shot>,
    /// Averages that came with the shots or instead of them.
    pub summaries: Vec<Summary>,
    /// How builds and time lie.
    pub order: Order,
    /// What else changed during the session, when something did.
    pub second: Option<SecondFactor>,
    /// The weather, when the golfer told it.
    pub weather: Option<Conditions>,
}

impl Session {
    /// Position of a measure in every shot's `values`.
    #[must_use]
    pub fn measure_index(&self, id: &MeasureId) -> Option<usize> {
        self.measures.iter().position(|m| m == id)
    }

    /// A column of the golfer's own.
    #[must_use]
    pub fn custom(&self, id: &MeasureId) -> Option<&CustomMeasure> {
        self.custom.iter().find(|c| c.id == *id)
    }
}
