//! What a verdict may rest on: a careful difference of averages, or a ratio of spreads.

use super::estimate::{Counts, Method};
use crate::interval::Interval;
use libm::exp;
use stats::choices::PLANNED_POWER;
use stats::distributions::normal_upper;
use stats::{CautiousDifference, Level, SpreadRatio, leaning_cost};

/// The figures that decide.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Basis {
    /// Candidate − baseline, widened and with its order allowance.
    Difference(CautiousDifference),
    /// Candidate's standard deviation over the baseline's.
    Spread(SpreadRatio),
}

/// One comparison with what plans and words need beside it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Comparison {
    /// The figures that decide.
    pub basis: Basis,
    /// How it was made.
    pub method: Method,
    /// Shots behind it.
    pub n: Counts,
    /// Standard deviation of a single shot within a build, as plans need it.
    pub shot_sd: f64,
    /// The deviation taken for averages that came without one.
    pub assumed_sd: Option<f64>,
}

impl Comparison {
    /// The difference, or the ratio.
    #[must_use]
    pub fn value(&self) -> f64 {
        match &self.basis {
            Basis::Difference(careful) => careful.diff(),
            Basis::Spread(spread) => spread.ratio(),
        }
    }

    /// Part of each half-width that stands for warming up and tiring.
    #[must_use]
    pub fn allowance(&self) -> f64 {
        match &self.basis {
            Basis::Difference(careful) => careful.allowance,
            Basis::Spread(_) => 0.0,
        }
    }

    /// The careful interval at a level. A ratio that no interval can be given for reaches from 0 to infinity.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        let anything = stats::Interval { low: 0.0, high: f64::INFINITY, level };
        let ends = match &self.basis {
            Basis::Difference(careful) => careful.interval(level),
            Basis::Spread(spread) => spread.interval(level).unwrap_or(anything),
        };
        ends.into()
    }

    /// Two-sided p: below α exactly when the interval at level 1 − α excludes no difference.
    #[must_use]
    pub fn p_value(&self) -> f64 {
        match &self.basis {
            Basis::Difference(careful) => careful.p_value(),
            Basis::Spread(spread) => spread.p_value(),
        }
    }

    /// How often two identical builds would show at least this much; with an allowance for order, under the worst drift in it.
    #[must_use]
    pub fn chance_if_same(&self) -> f64 {
        match &self.basis {
            Basis::Difference(careful) => careful.chance_at_worst(),
            Basis::Spread(spread) => spread.p_value(),
        }
    }

    /// The drift between two blocks that would be enough to explain the lead; 0 when hit in turn.
    #[must_use]
    pub fn drift_to_explain(&self, level: Level) -> f64 {
        match &self.basis {
            Basis::Difference(careful) if self.method != Method::Rounds => careful.drift_to_explain(level),
            _ => 0.0,
        }
    }

    /// Smallest true difference (or ratio above 1) that a session like this shows in 8 of 10 cases.
    pub(super) fn detectable(&self, level: Level) -> f64 {
        match &self.basis {
            Basis::Difference(careful) => careful.detectable(level, PLANNED_POWER),
            Basis::Spread(spread) => {
                let reach = normal_upper(level.tail()) + normal_upper(1.0 - PLANNED_POWER);
                exp(0.5 * reach * spread.se(1.0))
            }
        }
    }

    /// Shots with each build that a planned test in turns needs, so that 8 of 10 tests tell, different or the same,
    /// whatever the true difference. With several candidates the first is held to its share of the error. For spreads
    /// so that a ratio of `margin` shows.
    pub(super) fn shots_to_settle(&self, margin: f64, candidates: usize) -> Option<u32> {
        let strict = strict(candidates);
        let shots = match &self.basis {
            Basis::Difference(_) => in_turns(
                stats::power::shots_to_tell(margin / self.shot_sd, strict, Level::P90, PLANNED_POWER)?.tool,
            ),
            Basis::Spread(spread) => whole_turns(stats::shots_for_ratio(
                margin,
                spread.pooled_kurtosis(1.0),
                strict,
                PLANNED_POWER,
            )?),
        };
        u32::try_from(shots).ok()
    }
}

/// The level of 'different' in a planned test of several candidates, the first of them.
pub(super) fn strict(candidates: usize) -> Level {
    Level::P95.shared_by(candidates)
}

/// Shots in a turn of the tests that the words advise.
pub(super) const TURN: usize = 3;

/// A number of shots that fills its last turn: a started one costs a round's degree of freedom and gives less.
const fn whole_turns(shots: usize) -> usize {
    shots.div_ceil(TURN) * TURN
}

/// What picking up another club again and again, and a swing that drifts within laps, cost in shots. A choice of ours, by the
/// sessions of `cargo xtask calibrate --only 19`: a twentieth of them no longer lets eight tests in ten become seven.
const PICKED_UP: f64 = 1.05;

/// As many shots in turns as find a difference of averages like so many in theory, where no shot leans on another: what they
/// lean, and what few shots seem to, costs width, and width costs shots.
#[must_use]
pub fn in_turns(shots: usize) -> usize {
    let worth = |hit: usize| {
        let cost = leaning_cost(hit / TURN, TURN);
        hit as f64 / (cost * cost)
    };
    let mut hit = whole_turns(shots.max(1));
    while worth(hit) < PICKED_UP * shots as f64 {
        hit += TURN;
    }
    hit
}
