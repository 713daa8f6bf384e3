//! A difference with its standard error and degrees of freedom: the one shape all t comparisons share.
//!
//! Always candidate − baseline. What is kept is sufficient for any level; p and interval are questions.

use crate::distributions::{t_sf, t_upper};
use crate::level::{Interval, Level};

/// Below this share of the size of the means, a standard error is only the rounding of equal values.
const ROUNDING: f64 = 4.0 * f64::EPSILON;

/// Why two builds could not be compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Refusal {
    /// Too few values on one side.
    TooFew {
        /// How many there were.
        got: usize,
        /// How many there must be.
        need: usize,
    },
    /// The values do not scatter, so nothing tells chance from cause.
    NoScatter,
    /// Too few rounds, or none that holds both builds.
    TooFewRounds {
        /// Rounds there were.
        got: usize,
        /// Rounds there must be.
        need: usize,
    },
    /// No chain of rounds links the two builds; in a model, columns depend on each other.
    NotLinked,
    /// An argument is outside its range.
    Argument {
        /// What it was.
        got: f64,
    },
    /// The arithmetic left the range of a double.
    OutOfRange,
}

/// Candidate − baseline with a standard error on Student's t.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct TDifference {
    /// Candidate − baseline.
    pub diff: f64,
    /// Standard error, above zero.
    pub se: f64,
    /// Degrees of freedom, above zero.
    pub df: f64,
}

impl TDifference {
    /// A difference from its parts; `size` is the magnitude of the numbers it came from.
    ///
    /// # Errors
    /// No scatter beyond the rounding of numbers of that size, or parts that are not finite.
    pub fn new(diff: f64, se: f64, df: f64, size: f64) -> Result<TDifference, Refusal> {
        if !diff.is_finite() || !se.is_finite() || df.is_nan() {
            // 0/0 in the degrees of freedom is what no scatter looks like.
            return Err(if se == 0.0 { Refusal::NoScatter } else { Refusal::OutOfRange });
        }
        if se <= ROUNDING * size.abs() || se <= 0.0 {
            return Err(Refusal::NoScatter);
        }
        if df <= 0.0 {
            return Err(Refusal::TooFew { got: 0, need: 1 });
        }
        Ok(TDifference { diff, se, df })
    }

    /// The statistic, diff / se.
    #[must_use]
    pub fn t(&self) -> f64 {
        self.diff / self.se
    }

    /// Chance, were there no difference, of one at least this large either way: 2·P(T > |t|).
    #[must_use]
    pub fn p_value(&self) -> f64 {
        2.0 * t_sf(self.t().abs(), self.df)
    }

    /// Chance, were the true difference `value`, of one at least this far above it: P(T > (diff − value)/se).
    #[must_use]
    pub fn p_above(&self, value: f64) -> f64 {
        t_sf((self.diff - value) / self.se, self.df)
    }

    /// Chance, were the true difference `value`, of one at least this far below it.
    #[must_use]
    pub fn p_below(&self, value: f64) -> f64 {
        t_sf((value - self.diff) / self.se, self.df)
    }

    /// t quantile times the standard error.
    #[must_use]
    pub fn half_width(&self, level: Level) -> f64 {
        t_upper(level.tail(), self.df) * self.se
    }

    /// diff ± half-width.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        Interval::around(self.diff, self.half_width(level), level)
    }

    /// The same difference with its standard error multiplied by `factor` (above zero).
    #[must_use]
    pub fn widened(&self, factor: f64) -> TDifference {
        TDifference { se: self.se * factor, ..*self }
    }
}
