//! Equivalence by two one-sided tests: is the difference inside what would matter?
//!
//! Equivalent at α exactly when the interval at level 1 − 2α lies inside the bounds.
//! Source: D. J. Schuirmann, J. Pharmacokinetics and Biopharmaceutics 15 (1987), 657–680.

use crate::difference::TDifference;

/// Two one-sided tests of candidate − baseline against a lower and an upper bound.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Equivalence {
    /// Lower bound.
    pub low: f64,
    /// Upper bound.
    pub high: f64,
    /// Chance, were the true difference at the lower bound, of one at least this far above it.
    pub p_low: f64,
    /// Chance, were the true difference at the upper bound, of one at least this far below it.
    pub p_high: f64,
}

impl Equivalence {
    /// The larger of the two.
    #[must_use]
    pub fn p_value(&self) -> f64 {
        self.p_low.max(self.p_high)
    }

    /// Whether the difference is shown to lie inside the bounds, with one-sided error `alpha`.
    #[must_use]
    pub fn holds(&self, alpha: f64) -> bool {
        self.p_value() < alpha
    }
}

/// Tests whether a difference lies between `low` and `high`.
///
/// t_low = (diff − low)/se, p = P(T > t_low); t_high = (diff − high)/se, p = P(T < t_high).
/// Accuracy: 1e-9 relative against tests/reference/stats/03.
#[must_use]
pub fn equivalence(difference: &TDifference, low: f64, high: f64) -> Equivalence {
    Equivalence { low, high, p_low: difference.p_above(low), p_high: difference.p_below(high) }
}
