//! What a plan may be, and what it is where nothing is said: a form offers nothing that would be refused.

use serde::Serialize;
use session::plan::MOST_PLANNED_BUILDS;
use session::question::MOST_PLANNED_ROUNDS;

/// Most shots with one build in a row: longer sets are blocks in small, see `stats::choices::LONGEST_TURN`.
pub const LONGEST_SET: u32 = 5;
/// Fewest builds: one is held against another.
pub(super) const FEWEST_BUILDS: usize = 2;
/// Fewest rounds: within one round nothing can be compared.
pub(super) const FEWEST_ROUNDS: u32 = 2;
/// Most warm-up shots.
pub(super) const MOST_WARM_UP: u32 = 100;
/// Shots in a row with one build when nothing else is said.
pub(super) const USUAL_SET: u32 = 3;
/// Shots that do not count before the first that does. Judgement, no source.
pub(super) const USUAL_WARM_UP: u32 = 10;

/// The least and the most of a count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LeastAndMost {
    /// The least.
    pub least: u32,
    /// The most.
    pub most: u32,
}

impl LeastAndMost {
    pub(super) fn holds(&self, got: u32) -> bool {
        (self.least..=self.most).contains(&got)
    }
}

/// What a plan may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanLimits {
    /// Builds that are different clubs.
    pub builds: LeastAndMost,
    /// Passes through the builds.
    pub rounds: LeastAndMost,
    /// Shots with one build in a row.
    pub set: LeastAndMost,
    /// Shots before the first that counts.
    pub warm_up: LeastAndMost,
    /// Shots in a row when nothing else is said.
    pub usual_set: u32,
    /// Shots before the first that counts when nothing else is said.
    pub usual_warm_up: u32,
}

/// What a plan may be, and what it is where nothing is said. How many rounds are usual hangs on the builds: the plan says.
#[must_use]
pub fn limits() -> PlanLimits {
    let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
    PlanLimits {
        builds: LeastAndMost { least: count(FEWEST_BUILDS), most: count(MOST_PLANNED_BUILDS) },
        rounds: LeastAndMost { least: FEWEST_ROUNDS, most: MOST_PLANNED_ROUNDS },
        set: LeastAndMost { least: 1, most: LONGEST_SET },
        warm_up: LeastAndMost { least: 0, most: MOST_WARM_UP },
        usual_set: USUAL_SET,
        usual_warm_up: USUAL_WARM_UP,
    }
}
