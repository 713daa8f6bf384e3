//! Welch's comparison of two means, for builds with unequal scatter.
//!
//! Supposes independent shots. In blocks hit one after the other it is right about the numbers and blind to
//! warming up and tiring (see `cautious`).
//! Source: B. L. Welch, Biometrika 34 (1947), 28–35; degrees of freedom F. E. Satterthwaite, Biometrics
//! Bulletin 2 (1946), 110–114.

use crate::difference::{Refusal, TDifference};
use crate::real::square;
use crate::sample::{Sample, Summary};

/// Candidate's mean − baseline's mean by Welch.
///
/// se = √(a + b), df = (a + b)² / (a²/(n−1) + b²/(m−1)), a = s²/n, b = s²/m.
/// Accuracy: 1e-12 relative against tests/reference/stats/02.
///
/// # Errors
/// `NoScatter` when neither build scatters.
pub fn welch(candidate: &Sample, baseline: &Sample) -> Result<TDifference, Refusal> {
    welch_from_summaries(&candidate.summary(), &baseline.summary())
}

/// The same from counts, means and standard deviations.
///
/// # Errors
/// `NoScatter` when both deviations are zero, `OutOfRange` when their squares vanish.
pub fn welch_from_summaries(candidate: &Summary, baseline: &Summary) -> Result<TDifference, Refusal> {
    let a = square(candidate.sd()) / candidate.n() as f64;
    let b = square(baseline.sd()) / baseline.n() as f64;
    TDifference::new(
        candidate.mean() - baseline.mean(),
        (a + b).sqrt(),
        satterthwaite(a, candidate.n() - 1, b, baseline.n() - 1),
        candidate.mean().abs().max(baseline.mean().abs()),
    )
}

/// Degrees of freedom of a + b, each a variance on its own degrees of freedom; NaN when both are zero.
///
/// Written with shares of the total, so that small variances do not vanish when squared.
pub(crate) fn satterthwaite(a: f64, df_a: usize, b: f64, df_b: usize) -> f64 {
    let share = a / (a + b);
    1.0 / (share * share / df_a as f64 + (1.0 - share) * (1.0 - share) / df_b as f64)
}
