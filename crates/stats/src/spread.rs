//! Ratio of two standard deviations, for shots that are not normal: Bonett's intervals.
//!
//! The iterated form is the one verdicts use: it estimates the kurtosis both builds share at the ratio in
//! question instead of at 1, and holds its level where builds truly differ. Needs five shots with each build,
//! and at ten or fewer nearly always says 'cannot tell'.
//! Sources: D. G. Bonett, Applied Psychological Measurement 30 (2006), 432–439; the iteration pools as
//! `ci.ratio.sd2` of the same author's R package statpsych, whose printed example it gives (tests/reference).

use crate::count::whole;
use crate::describe::{mean, median_of_sorted, sum_of_squares};
use crate::difference::Refusal;
use crate::distributions::{normal_sf, normal_upper};
use crate::level::{Interval, Level};
use crate::real::{exp, fourth, ln, square};
use crate::root::find_root;
use crate::sample::Sample;

/// Shots with each build below which the kurtosis means nothing.
pub const FEWEST_FOR_SPREAD: usize = 5;

/// Steps from ratio 1 toward the end of the interval; later ones change nothing a golfer could see.
const ITERATIONS: usize = 10;

/// Deviate whose normal tail no double holds.
const HIGHEST_Z: f64 = 40.0;

/// What the spread of one build leaves behind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Scatter {
    n: f64,
    squares: f64,
    /// Σ(x − m)⁴ around a trimmed mean m.
    fourths: f64,
}

/// Candidate's standard deviation / baseline's, with an interval that does not suppose normal shots.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpreadRatio {
    candidate: Scatter,
    baseline: Scatter,
}

/// Compares spreads.
///
/// # Errors
/// Fewer than five values on a side, a side without scatter.
pub fn spread_ratio(candidate: &Sample, baseline: &Sample) -> Result<SpreadRatio, Refusal> {
    Ok(SpreadRatio { candidate: Scatter::of(candidate)?, baseline: Scatter::of(baseline)? })
}

impl SpreadRatio {
    /// Ratio of the standard deviations.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        (self.candidate.variance() / self.baseline.variance()).sqrt()
    }

    /// The kurtosis both builds share if their spreads stand in the ratio `ratio`.
    ///
    /// K = n (A₁ + r⁴A₂) / ((n₁−1)v₁ + r²(n₂−1)v₂)², A = Σ(x − m)⁴.
    #[must_use]
    pub fn pooled_kurtosis(&self, ratio: f64) -> f64 {
        let (a, b, r2) = (&self.candidate, &self.baseline, ratio * ratio);
        (a.n + b.n) * (a.fourths + r2 * r2 * b.fourths) / square(a.squares + r2 * b.squares)
    }

    /// Standard error of ln of the ratio of variances, if the spreads stand in the ratio `ratio`.
    ///
    /// √((K−k₁)/(n₁−1) + (K−k₂)/(n₂−1)), k = (n−3)/n.
    #[must_use]
    pub fn se(&self, ratio: f64) -> f64 {
        let kurtosis = self.pooled_kurtosis(ratio);
        let part = |side: &Scatter| (kurtosis - (side.n - 3.0) / side.n) / (side.n - 1.0);
        (part(&self.candidate) + part(&self.baseline)).max(0.0).sqrt()
    }

    /// Small-sample factor on the ratio of variances, [n₁/(n₁−z)]·[(n₂−z)/n₂].
    #[must_use]
    pub fn correction(&self, level: Level) -> f64 {
        self.correction_at(normal_upper(level.tail()))
    }

    /// The interval verdicts use: the kurtosis taken at each end's own ratio, by iteration from 1.
    ///
    /// r := exp{½[ln(c v₁/v₂) ∓ z·se(r)]}, ten times. `None` at levels so high that z reaches n.
    /// Accuracy: 1e-6 against the worked session of tests/reference.
    #[must_use]
    pub fn interval(&self, level: Level) -> Option<Interval> {
        let end =
            |sign: f64| (0..ITERATIONS).try_fold(1.0, |ratio, _| self.end(level, sign * self.se(ratio)));
        Some(Interval { level, low: end(-1.0)?, high: end(1.0)? })
    }

    /// Two-sided p that the spreads are equal: below α only if the interval at 1 − α excludes 1.
    ///
    /// Solves |ln(c v₁/v₂)| = z·se(1) for the first z; at ratio 1 both intervals agree, so this is the p of either.
    /// (With very unequal counts c grows without bound toward z = n and would let absurd levels reject again.)
    #[must_use]
    pub fn p_value(&self) -> f64 {
        let (log_ratio, se) = (2.0 * ln(self.ratio()), self.se(1.0));
        let excess = |z: f64| (log_ratio + ln(self.correction_at(z))).abs() - z * se;
        let most = self.candidate.n.min(self.baseline.n).min(HIGHEST_Z);
        let mut low = 0.0;
        while low < most {
            let high = (low + 0.25).min(most * (1.0 - f64::EPSILON));
            if excess(high) <= 0.0 {
                return 2.0 * normal_sf(find_root(low, high, 1e-12, &excess).unwrap_or(low));
            }
            low += 0.25;
        }
        2.0 * normal_sf(most)
    }

    fn end(&self, level: Level, signed_se: f64) -> Option<f64> {
        let z = normal_upper(level.tail());
        if z >= self.candidate.n.min(self.baseline.n) {
            return None;
        }
        let end = self.ratio() * exp(0.5 * (ln(self.correction_at(z)) + z * signed_se));
        (end.is_finite() && end > 0.0).then_some(end)
    }

    fn correction_at(&self, z: f64) -> f64 {
        let (n, m) = (self.candidate.n, self.baseline.n);
        n / (n - z) * (m - z) / m
    }
}

impl Scatter {
    pub(crate) fn of(sample: &Sample) -> Result<Scatter, Refusal> {
        if sample.n() < FEWEST_FOR_SPREAD {
            return Err(Refusal::TooFew { got: sample.n(), need: FEWEST_FOR_SPREAD });
        }
        let center = trimmed_center(sample);
        let fourths = sample.values().iter().map(|x| fourth(x - center)).sum::<f64>();
        let squares = sum_of_squares(sample.values());
        let rounding = sample.n() as f64 * square(4.0 * f64::EPSILON * center);
        if fourths <= 0.0 || squares <= rounding {
            return Err(Refusal::NoScatter);
        }
        Ok(Scatter { n: sample.n() as f64, squares, fourths })
    }

    fn variance(&self) -> f64 {
        self.squares / (self.n - 1.0)
    }
}

/// Shots with each build to call spreads in the ratio `ratio` different with chance `power`, roughly.
///
/// (z₁₋α/₂ + z_power)² (kurtosis − 1) / (2 ln² ratio), a large-sample formula; kurtosis 3 is normal.
/// `None` for a ratio of 1 or arguments outside their range.
#[must_use]
pub fn shots_for_ratio(ratio: f64, kurtosis: f64, level: Level, power: f64) -> Option<usize> {
    let reach = normal_upper(level.tail()) + normal_upper(1.0 - power);
    let shots = reach * reach * (kurtosis - 1.0) / (2.0 * square(ln(ratio)));
    (shots.is_finite() && shots > 0.0).then(|| whole(shots.ceil(), usize::MAX).max(FEWEST_FOR_SPREAD))
}

/// Mean of the values left after cutting the share 1/(2√(n−4)) at each end; the median from n = 5 down.
fn trimmed_center(sample: &Sample) -> f64 {
    let sorted = sample.sorted();
    let n = sorted.len();
    let share = 0.5 / (n as f64 - 4.0).sqrt();
    if share >= 0.5 {
        return median_of_sorted(&sorted).unwrap_or_default();
    }
    let cut = whole(n as f64 * share, n);
    mean(sorted.get(cut..n - cut).unwrap_or_default())
}
