//! The difference a verdict may rest on: a textbook difference made more careful, never less.
//!
//! Three things may widen it: the factor for shots that are not independent, a second standard error where
//! sets disagree, and an allowance in the measure's own unit where builds and time are mixed up.
//! Source: own construction (see `choices`), measured by simulation.

use crate::choices::WIDENING;
use crate::difference::TDifference;
use crate::distributions::{t_sf, t_upper};
use crate::equivalence::Equivalence;
use crate::level::{Interval, Level};

/// Candidate − baseline with everything that speaks against trusting it taken into account.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct CautiousDifference {
    /// The difference with its standard error widened.
    pub widened: TDifference,
    /// A second standard error and degrees of freedom around the same difference, used where it is wider.
    pub fallback: Option<TDifference>,
    /// Part of the half-width that stands for drift between blocks, in the unit of the values.
    pub allowance: f64,
}

impl CautiousDifference {
    /// Widens a textbook difference; `allowance` (0 for none) is added to every half-width.
    ///
    /// An allowance that is negative or not a number counts as 0.
    #[must_use]
    pub fn new(textbook: &TDifference, allowance: f64) -> CautiousDifference {
        CautiousDifference::with_factor(textbook, WIDENING, allowance)
    }

    /// The same with another factor on the standard error, where shots lean on each other more than usual
    /// (see `blocked_widening`); a factor below the usual one counts as that.
    #[must_use]
    pub fn with_factor(textbook: &TDifference, factor: f64, allowance: f64) -> CautiousDifference {
        // What is not a number gives way to the other one.
        let (factor, allowance) = (factor.max(WIDENING), allowance.max(0.0));
        CautiousDifference { widened: textbook.widened(factor), fallback: None, allowance }
    }

    /// A difference whose standard error is careful already, with an allowance but no widening.
    #[must_use]
    pub fn taken_as_is(careful: &TDifference, allowance: f64) -> CautiousDifference {
        CautiousDifference { widened: *careful, ..CautiousDifference::new(careful, allowance) }
    }

    /// The same with this allowance; one that is negative or not a number counts as 0.
    #[must_use]
    pub fn allowing(self, allowance: f64) -> CautiousDifference {
        CautiousDifference { allowance: allowance.max(0.0), ..self }
    }

    /// Candidate − baseline.
    #[must_use]
    pub fn diff(&self) -> f64 {
        self.widened.diff
    }

    /// The one of the two standard errors, with its degrees of freedom, whose interval is the wider at a level.
    #[must_use]
    pub fn wider(&self, level: Level) -> TDifference {
        let fallback = self.fallback.filter(|it| it.half_width(level) > self.widened.half_width(level));
        fallback.unwrap_or(self.widened)
    }

    /// max(1.10·h, h of the fallback) + allowance.
    #[must_use]
    pub fn half_width(&self, level: Level) -> f64 {
        self.largest(|part| part.half_width(level)) + self.allowance
    }

    /// diff ± half-width.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        Interval::around(self.diff(), self.half_width(level), level)
    }

    /// Two-sided p: below α exactly when the interval at level 1 − α excludes zero.
    #[must_use]
    pub fn p_value(&self) -> f64 {
        let beyond = (self.diff().abs() - self.allowance).max(0.0);
        self.largest(|part| 2.0 * t_sf(beyond / part.se, part.df))
    }

    /// How often two equal means show a gap at least this large, where a drift of the whole allowance one way adds to luck:
    /// both tails about the drifted center. Without an allowance it is [`p_value`](Self::p_value).
    #[must_use]
    pub fn chance_at_worst(&self) -> f64 {
        let (near, far) = (self.diff().abs() - self.allowance, self.diff().abs() + self.allowance);
        self.largest(|part| t_sf(near / part.se, part.df) + t_sf(far / part.se, part.df))
    }

    /// Two one-sided tests against a difference between `low` and `high`.
    #[must_use]
    pub fn equivalence(&self, low: f64, high: f64) -> Equivalence {
        let p_low = self.largest(|part| part.p_above(low + self.allowance));
        let p_high = self.largest(|part| part.p_below(high - self.allowance));
        Equivalence { low, high, p_low, p_high }
    }

    /// The drift between blocks that would be enough to explain the lead: max(0, |diff| − half-width without
    /// allowance).
    #[must_use]
    pub fn drift_to_explain(&self, level: Level) -> f64 {
        (self.diff().abs() - self.half_width(level) + self.allowance).max(0.0)
    }

    /// Smallest true difference a session with these errors shows with chance `power`, as quoted to a golfer.
    ///
    /// (t₁₋α/₂ + t_power)·se + allowance, an approximation within 2 % of the noncentral t from 5 shots a build.
    /// Requires: 0 < `power` < 1, else NaN.
    #[must_use]
    pub fn detectable(&self, level: Level, power: f64) -> f64 {
        let reach = |part: &TDifference| part.half_width(level) + t_upper(1.0 - power, part.df) * part.se;
        self.largest(reach) + self.allowance
    }

    fn largest(&self, ask: impl Fn(&TDifference) -> f64) -> f64 {
        let main = ask(&self.widened);
        self.fallback.as_ref().map_or(main, |fallback| main.max(ask(fallback)))
    }
}
