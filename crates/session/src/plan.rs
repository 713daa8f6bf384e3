//! What a plan of a fair test is asked for, before anything is worked out.

use crate::Session;
use crate::measure::MeasureId;
use crate::question::Goal;
use serde::{Deserialize, Serialize};

/// Most builds of a plan: with more, an hour is not enough for any of them.
pub const MOST_PLANNED_BUILDS: usize = 8;

/// What a plan is asked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct PlanRequest {
    /// Names of the builds, the golfer's own first; 2 to 8, or one that is hit under two labels.
    pub builds: Vec<String>,
    /// The measure named before the numbers.
    pub measure: MeasureId,
    /// What better means; left open, the measure's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub goal: Option<Goal>,
    /// Smallest difference that would matter; left open, the usual one. A ratio above 1 for the goal `tighter`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub margin: Option<f64>,
    /// Standard deviation of the golfer's shots with one build; left open, that of the earlier session or what is
    /// usual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spread: Option<f64>,
    /// A session that shows how far this golfer's shots scatter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(as = "Option<crate::wire::Session>"))]
    pub earlier: Option<Session>,
    /// Shots with one build in a row, 1 to 5.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set: Option<u32>,
    /// Passes through the builds; left open, what about an hour holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rounds: Option<u32>,
    /// Draws the order within rounds from this seed; left open, the balanced order.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seed: Option<u32>,
    /// Shots before the first that counts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub warm_up: Option<u32>,
    /// When the answer may be looked at; left open, halfway and at the end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub looks: Option<LookAfter>,
    /// One build under two labels, to see what no difference looks like.
    #[serde(default)]
    pub same_club: bool,
}

impl PlanRequest {
    /// A plan for these builds and this measure, everything else left open.
    #[must_use]
    pub fn of(builds: Vec<String>, measure: MeasureId) -> Self {
        Self {
            builds,
            measure,
            goal: None,
            margin: None,
            spread: None,
            earlier: None,
            set: None,
            rounds: None,
            seed: None,
            warm_up: None,
            looks: None,
            same_club: false,
        }
    }
}

/// Usual choices of looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum LookWord {
    /// Only when all rounds are hit.
    AtEnd,
    /// Once in the middle, and at the end.
    Halfway,
    /// After every round from the second.
    EveryRound,
}

/// After which rounds the answer may be looked at.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum LookAfter {
    /// One of the usual choices.
    Word(LookWord),
    /// Exactly these rounds, and the last one.
    Rounds(Vec<u32>),
}

impl Default for LookAfter {
    fn default() -> Self {
        Self::Word(LookWord::Halfway)
    }
}

impl LookAfter {
    /// The rounds, ascending, the last of the plan among them; `None` when one is not in the plan.
    #[must_use]
    pub fn rounds(&self, planned: u32) -> Option<Vec<u32>> {
        let mut looks = match self {
            Self::Word(LookWord::AtEnd) => Vec::new(),
            Self::Word(LookWord::Halfway) => vec![planned.div_ceil(2).max(2)],
            Self::Word(LookWord::EveryRound) => (2..=planned).collect(),
            Self::Rounds(list) => list.clone(),
        };
        looks.push(planned);
        looks.iter().all(|round| (2..=planned).contains(round)).then(|| arrange::distinct(looks))
    }
}
