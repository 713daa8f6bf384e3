//! A plan with every gap filled, and what follows from it by counting alone.

use libm::pow;
use serde::Serialize;
use session::known::Known;
use session::measure::Margin;
use session::plan::LookAfter;
use session::question::Goal;

/// Where the spread of a plan comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SpreadFrom {
    /// The golfer said so.
    Given,
    /// An earlier session.
    Earlier,
    /// What is usual.
    Usual,
}

/// How far single shots with one build scatter.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanSpread {
    /// Standard deviation.
    pub value: f64,
    /// Where it comes from.
    pub from: SpreadFrom,
}

/// A plan with every gap filled. Whoever makes one refuses what is no plan.
#[derive(Debug, Clone, PartialEq)]
pub struct SettledPlan {
    /// Names of the builds as they were typed, without blanks around them; for one build under two labels whatever was
    /// typed for it.
    pub names: Vec<String>,
    /// One build under two labels.
    pub same_club: bool,
    /// The measure named before the numbers.
    pub measure: Known,
    /// What better means.
    pub goal: Goal,
    /// The smallest difference that matters.
    pub margin: Margin,
    /// Whether that is the usual one.
    pub margin_is_default: bool,
    /// How far single shots scatter; `None` where nobody knows.
    pub spread: Option<PlanSpread>,
    /// Shots in a row.
    pub set: u32,
    /// Passes through the builds.
    pub rounds: u32,
    /// Seed of a drawn order; `None` for the balanced one.
    pub seed: Option<u32>,
    /// Shots before the first that counts.
    pub warm_up: u32,
    /// Rounds after which the answer may be looked at, ascending; the last of the plan among them.
    pub looks: Vec<u32>,
    /// The rule they come from.
    pub look_after: LookAfter,
}

impl SettledPlan {
    /// Builds, the two labels of one build counted as two.
    #[must_use]
    pub fn builds(&self) -> usize {
        if self.same_club { 2 } else { self.names.len() }
    }

    /// Builds that are held against the first.
    #[must_use]
    pub fn candidates(&self) -> usize {
        self.builds() - 1
    }

    /// The scatter that averages are compared by; `None` where nobody knows it and where scatters are compared.
    #[must_use]
    pub fn spread_of_averages(&self) -> Option<PlanSpread> {
        self.spread.filter(|_| self.goal != Goal::Tighter)
    }

    /// The margin so many times over; a ratio to that power.
    #[must_use]
    pub fn margin_times(&self, n: u32) -> f64 {
        match self.margin {
            Margin::Difference(size) => size * f64::from(n),
            Margin::Ratio(ratio) => pow(ratio, f64::from(n)),
        }
    }

    /// Balls of one round.
    pub(super) fn round(&self) -> u32 {
        (0..self.builds()).map(|_| self.set).sum()
    }
}
