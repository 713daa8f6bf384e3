//! One average as a share of another, where both were taken of the same sessions.
//!
//! Source: E. C. Fieller, J. Royal Statistical Society B 16 (1954), 175–185; with weights, and an error by how far the sessions
//! scatter, as in Hartung and Knapp, Statistics in Medicine 20 (2001), 1771–1782.

use crate::describe::mean;
use crate::difference::Refusal;
use crate::distributions::t_upper;
use crate::level::{Interval, Level};
use crate::real::square;

/// What was found and what it is a share of, in one session.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// What was found.
    pub found: f64,
    /// Of what.
    pub of: f64,
    /// How much the session counts, above zero.
    pub weight: f64,
}

/// A ratio of two averages.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct RatioOfMeans {
    /// Σ w·found / Σ w·of.
    pub ratio: f64,
    /// Where it lies; `None` where what it is a share of may be nothing at all.
    pub interval: Option<Interval>,
}

/// The weighted average of what was found over that of what it is a share of.
///
/// The interval holds every β at which Σ w(found − β·of) is within t·s of zero, s² = Σ w(r − r̄)²·Σw/(k − 1) of r = found − β·of,
/// t on k − 1 df. Accuracy: 1e-9 relative against tests/reference/stats/26.
///
/// # Errors
/// Fewer than two sessions; weights that are not above zero; nothing that it could be a share of.
pub fn ratio_of_means(sessions: &[Found], level: Level) -> Result<RatioOfMeans, Refusal> {
    if sessions.len() < 2 {
        return Err(Refusal::TooFew { got: sessions.len(), need: 2 });
    }
    if let Some(wrong) = sessions.iter().find(|it| !(it.weight > 0.0 && it.weight.is_finite())) {
        return Err(Refusal::Argument { got: wrong.weight });
    }
    // Weights of about 1 keep every product in range.
    let usual = mean(&sessions.iter().map(|it| it.weight).collect::<Vec<_>>());
    let sum = |of: &dyn Fn(&Found) -> f64| sessions.iter().map(|it| it.weight / usual * of(it)).sum::<f64>();
    let total = sum(&|_| 1.0);
    let (found, of) = (sum(&|it| it.found) / total, sum(&|it| it.of) / total);
    let ratio = found / of;
    if !ratio.is_finite() {
        return Err(Refusal::Argument { got: of });
    }
    let per = total * (sessions.len() - 1) as f64;
    let both = sum(&|it| (it.found - found) * (it.of - of)) / per;
    let (of_found, of_of) = (sum(&|it| square(it.found - found)) / per, sum(&|it| square(it.of - of)) / per);
    let reach = square(t_upper(level.tail(), (sessions.len() - 1) as f64));
    // a·β² − 2b·β + c ≤ 0.
    let a = square(of) - reach * of_of;
    let (b, c) = (found * of - reach * both, square(found) - reach * of_found);
    let interval = (a > 0.0).then(|| {
        // The ratio itself lies within, so that only rounding takes this below zero.
        let half = (square(b) - a * c).max(0.0).sqrt();
        Interval { level, low: (b - half) / a, high: (b + half) / a }
    });
    Ok(RatioOfMeans { ratio, interval })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn all(pairs: &[(f64, f64)]) -> Vec<Found> {
        pairs.iter().map(|&(found, of)| Found { found, of, weight: 2.0 }).collect()
    }

    #[test]
    fn half_of_everything_is_half_and_exact() {
        let got =
            ratio_of_means(&all(&[(10.0, 20.0), (11.0, 22.0), (10.5, 21.0)]), Level::P95).expect("usable");
        let ends = got.interval.expect("an interval");
        assert!((got.ratio - 0.5).abs() < 1e-12 && (ends.low - 0.5).abs() < 1e-6);
    }

    #[test]
    fn what_may_be_nothing_has_no_interval() {
        let got = ratio_of_means(&all(&[(1.0, 9.0), (3.0, -8.0), (2.0, 1.0)]), Level::P95).expect("usable");
        assert_eq!(got.interval, None);
        assert!(ratio_of_means(&all(&[(1.0, 0.0), (3.0, 0.0)]), Level::P95).is_err());
        assert!(ratio_of_means(&all(&[(1.0, 1.0)]), Level::P95).is_err());
    }
}
