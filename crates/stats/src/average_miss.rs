//! Ratio of average misses from the own center: a spread a golfer can picture, less moved by one mishit.
//!
//! A second line beside the ratio of standard deviations.
//! Source: Bonett and Seier, The American Statistician 57 (2003), 233–236, with t for z (own
//! choice, since z misses too often below 20 shots).

use crate::describe::median;
use crate::difference::{Refusal, TDifference};
use crate::level::{Interval, Level};
use crate::real::{exp, ln};
use crate::sample::Sample;
use crate::welch::satterthwaite;

/// Candidate's average miss / baseline's; kept as a difference of logarithms.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AverageMissRatio {
    /// ln of the ratio, with its standard error and degrees of freedom.
    pub log: TDifference,
}

/// Compares average absolute distances from each build's own median.
///
/// ln{[n₁/(n₁−1)]τ₁ / [n₂/(n₂−1)]τ₂} with variance v₁ + v₂, τ = Σ|x − median|/n,
/// v = (((x̄ − median)/τ)² + s²/τ² − 1)/n; df by Satterthwaite.
/// Accuracy: 1e-6 against the worked session of tests/reference.
///
/// # Errors
/// A side without scatter.
pub fn average_miss_ratio(candidate: &Sample, baseline: &Sample) -> Result<AverageMissRatio, Refusal> {
    let (a, b) = (Miss::of(candidate)?, Miss::of(baseline)?);
    let se = (a.variance + b.variance).sqrt();
    let df = satterthwaite(a.variance, candidate.n() - 1, b.variance, baseline.n() - 1);
    Ok(AverageMissRatio { log: TDifference::new(a.log_distance - b.log_distance, se, df, 0.0)? })
}

impl AverageMissRatio {
    /// The ratio itself.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        exp(self.log.diff)
    }

    /// Interval for the ratio.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        let log = self.log.interval(level);
        Interval { level, low: exp(log.low), high: exp(log.high) }
    }
}

struct Miss {
    /// ln of the average distance, corrected for the center being estimated.
    log_distance: f64,
    /// Variance of that.
    variance: f64,
}

impl Miss {
    fn of(sample: &Sample) -> Result<Miss, Refusal> {
        let n = sample.n() as f64;
        let center = median(sample.values()).unwrap_or_default();
        let distance = sample.values().iter().map(|x| (x - center).abs()).sum::<f64>() / n;
        if distance <= 4.0 * f64::EPSILON * center.abs() || distance <= 0.0 {
            return Err(Refusal::NoScatter);
        }
        let off_center = (sample.mean() - center) / distance;
        let scatter = sample.variance() / (distance * distance);
        Ok(Miss {
            log_distance: ln(n / (n - 1.0) * distance),
            variance: ((off_center * off_center + scatter - 1.0) / n).max(0.0),
        })
    }
}
