//! Yuen's comparison of two trimmed means: the typical shot, mishits set aside.
//!
//! A second line beside the headline, never the headline: it answers another question, and hides it when one
//! build is mishit more often.
//! Source: K. K. Yuen, Biometrika 61 (1974), 165–170.

use crate::count::whole;
use crate::describe::{mean, sum_of_squares};
use crate::difference::{Refusal, TDifference};
use crate::real::square;
use crate::sample::Sample;
use crate::welch::satterthwaite;

/// Share cut from each end: 20 %, the usual choice (Wilcox, Introduction to Robust Estimation).
pub const TRIM: f64 = 0.2;

/// One build with both ends cut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trimmed {
    /// Mean of the values left in.
    pub mean: f64,
    /// Standard deviation with cut values replaced by the nearest one left in.
    pub winsorized_sd: f64,
    /// Values left in.
    pub kept: usize,
    /// Values cut from each end.
    pub cut: usize,
}

/// Difference of trimmed means, candidate − baseline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Yuen {
    /// The candidate's trimmed values.
    pub candidate: Trimmed,
    /// The baseline's trimmed values.
    pub baseline: Trimmed,
    /// Their difference.
    pub difference: TDifference,
}

/// Compares trimmed means.
///
/// g = ⌊trim·n⌋ cut from each end, h = n − 2g left, q = (n−1)s_w²/(h(h−1)), se = √(q + q'),
/// df = (q + q')² / (q²/(h−1) + q'²/(h'−1)), s_w the Winsorized deviation.
/// Requires: 0 ≤ `trim` < 0.5. Accuracy: 1e-9 relative against tests/reference/stats/06.
///
/// # Errors
/// A trim outside its range, fewer than two values left, no scatter among them.
pub fn yuen(candidate: &Sample, baseline: &Sample, trim: f64) -> Result<Yuen, Refusal> {
    if !(0.0..0.5).contains(&trim) {
        return Err(Refusal::Argument { got: trim });
    }
    let (candidate, baseline) = (trimmed(candidate, trim)?, trimmed(baseline, trim)?);
    let (a, b) = (candidate.squared_error(), baseline.squared_error());
    let difference = TDifference::new(
        candidate.mean - baseline.mean,
        (a + b).sqrt(),
        satterthwaite(a, candidate.kept - 1, b, baseline.kept - 1),
        candidate.mean.abs().max(baseline.mean.abs()),
    )?;
    Ok(Yuen { candidate, baseline, difference })
}

impl Trimmed {
    /// Squared standard error of the trimmed mean, q.
    fn squared_error(&self) -> f64 {
        let n = self.kept + 2 * self.cut;
        (n - 1) as f64 * square(self.winsorized_sd) / (self.kept * (self.kept - 1)) as f64
    }
}

fn trimmed(sample: &Sample, trim: f64) -> Result<Trimmed, Refusal> {
    let mut values = sample.sorted();
    let n = values.len();
    // The share times n may fall a rounding short of a whole number it is meant to be (0.1 · 30).
    let cut = whole(trim * n as f64 * (1.0 + 4.0 * f64::EPSILON), n);
    let kept = n - 2 * cut;
    if kept < 2 {
        return Err(Refusal::TooFew { got: kept, need: 2 });
    }
    let center = mean(&values[cut..n - cut]);
    let (lowest, highest) = (values[cut], values[n - cut - 1]);
    values[..cut].fill(lowest);
    values[n - cut..].fill(highest);
    let squares = sum_of_squares(&values);
    Ok(Trimmed { mean: center, winsorized_sd: (squares / (n - 1) as f64).sqrt(), kept, cut })
}
