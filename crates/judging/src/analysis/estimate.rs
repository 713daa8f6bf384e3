//! The shapes in which a comparison is reported: its size, its uncertainty, its sample size.

use crate::interval::Interval;
use serde::Serialize;

/// Number of shots behind an estimate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Counts {
    /// Shots with the baseline.
    pub baseline: usize,
    /// Shots with the candidate.
    pub candidate: usize,
}

/// How an estimate was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Method {
    /// Round by round, widened.
    Rounds,
    /// Welch, widened, plus the order allowance.
    WelchWithAllowance,
    /// Welch from averages, widened, plus the order allowance.
    SummaryWithAllowance,
    /// Averages without a deviation: the largest usual deviation was taken.
    SummaryAssumedSpread,
    /// Ratio of standard deviations.
    SpreadRatio,
}

/// The headline difference, candidate − baseline, as the decision saw it: widened, with its allowance.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Estimate {
    /// Difference of averages (or ratio of spreads).
    pub value: f64,
    /// Lower end of the interval that decides `different`.
    pub low: f64,
    /// Upper end of it.
    pub high: f64,
    /// Its level.
    pub level: f64,
    /// The interval that decides `same`.
    pub equivalence: Interval,
    /// Which of the two decided, and is told: that of `same` where the answer is that or 'too small to matter'.
    pub decided_by: Interval,
    /// Unit of all of them, empty for a plain ratio.
    pub unit: String,
    /// Shots behind it.
    pub n: Counts,
    /// How it was made.
    pub method: Method,
    /// Part of each half-width that stands for warming up and tiring, 0 when hit in turn.
    pub order_allowance: f64,
    /// How often two identical builds would show a gap at least this large in a session like this.
    pub chance_if_same: f64,
    /// Smallest true difference that a session like this shows in 8 of 10 cases.
    pub detectable: f64,
    /// Shots with each build with which 8 of 10 planned tests in turns tell, whatever is true: different or the same.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shots_to_settle: Option<u32>,
    /// What more shots would do for this answer; null where they are not called for, and without a margin.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub more_shots: Option<MoreShots>,
}

impl Estimate {
    /// Smallest true difference that as many shots hit in turn would show in 8 of 10 cases: no room is left for the order then.
    #[must_use]
    pub fn detectable_in_turn(&self) -> f64 {
        self.detectable - self.order_allowance
    }

    /// Whether three visits like this one hold so many shots with each.
    #[must_use]
    pub fn three_visits_hold(&self, shots: u32) -> bool {
        3 * self.n.baseline.min(self.n.candidate) >= shots as usize
    }
}

/// What more shots would do.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum MoreShots {
    /// So many with each, planned before and hit in turn, tell in 8 of 10 tests.
    Tell {
        /// Shots with each build.
        shots: u32,
    },
    /// The same, but more than one visit holds.
    TooMany {
        /// Shots with each build.
        shots: u32,
    },
    /// As many were hit in turn, with their number fixed before, and did not tell.
    WereHit,
    /// As many were hit in turn, and their number was not fixed before: so many with each would tell in 8 of 10 tests that are
    /// held to no more than the usual level.
    WereHitNotFixed {
        /// Shots with each build.
        shots: u32,
    },
    /// It is the size that is open: so many with each would leave ± `half_width` of it, or less, in 8 of 10 tests.
    Narrow {
        /// Shots with each build.
        shots: u32,
        /// Half of the 95 % interval that such a test leaves, in the unit of the measure.
        half_width: f64,
    },
    /// It is the size that is open, and no test of one visit narrows it by much.
    HardlyNarrow,
}

/// Average and spread of one build on one measure; all its shots.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Group {
    /// Number of shots.
    pub n: usize,
    /// Average.
    pub mean: f64,
    /// Standard deviation, null with fewer than two shots.
    pub sd: Option<f64>,
}

/// A textbook comparison of two groups, unwidened.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TextbookTest {
    /// Candidate − baseline.
    pub diff: f64,
    /// Standard error.
    pub se: f64,
    /// diff / se.
    pub t: f64,
    /// Degrees of freedom.
    pub df: f64,
    /// Two-sided.
    pub p: f64,
    /// Lower end of the 95 % interval.
    pub low: f64,
    /// Upper end of it.
    pub high: f64,
}

/// A comparison of two spreads: Bonett's interval with the iterated kurtosis, unwidened.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct RatioTest {
    /// Candidate's standard deviation / baseline's.
    pub ratio: f64,
    /// Two-sided.
    pub p: f64,
    /// Lower end of the 95 % interval.
    pub low: f64,
    /// Upper end of it.
    pub high: f64,
}

/// The numbers behind a finding, as a textbook would print them: no widening, no allowance.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Numbers {
    /// The baseline's shots.
    pub baseline: Option<Group>,
    /// The candidate's shots.
    pub candidate: Option<Group>,
    /// Welch's comparison of the averages.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub welch: Option<TextbookTest>,
    /// The comparison within rounds, where rounds exist.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub round: Option<TextbookTest>,
    /// The comparison of the spreads, from five shots with each build.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub spread: Option<RatioTest>,
}
