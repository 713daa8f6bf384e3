//! A value known as one of several normal distributions, each with its chance.

use crate::distributions::{normal_cdf, normal_sf};
use crate::level::{Interval, Level};
use crate::real::exp;
use crate::root::find_root;

/// Ends of an interval lie within this many deviations of some part.
const FARTHEST: f64 = 40.0;

/// A mixture of normal distributions.
#[derive(Debug, Clone, PartialEq)]
pub struct NormalMixture {
    parts: Vec<Part>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Part {
    pub(crate) chance: f64,
    pub(crate) mean: f64,
    pub(crate) variance: f64,
}

/// Chances from logarithms of weights; `None` when nothing is left of them.
pub(crate) fn chances(logs: &[f64]) -> Option<Vec<f64>> {
    let largest = logs.iter().fold(f64::MIN, |most, log| most.max(*log));
    let total: f64 = logs.iter().map(|log| exp(log - largest)).sum();
    (total.is_finite() && total > 0.0).then(|| logs.iter().map(|log| exp(log - largest) / total).collect())
}

impl NormalMixture {
    /// `parts` have chances that add up to 1 and variances above zero.
    pub(crate) fn new(parts: impl Iterator<Item = Part>) -> NormalMixture {
        NormalMixture { parts: parts.filter(|part| part.chance > 0.0).collect() }
    }

    /// The mean.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.expect(&|part| part.mean)
    }

    /// Chance of a value above this one.
    #[must_use]
    pub fn chance_above(&self, value: f64) -> f64 {
        self.expect(&|part| normal_sf((value - part.mean) / part.variance.sqrt()))
    }

    /// Chance of a value below this one.
    #[must_use]
    pub fn chance_below(&self, value: f64) -> f64 {
        self.expect(&|part| normal_cdf((value - part.mean) / part.variance.sqrt()))
    }

    /// Where the value lies with the chance of the level, as much left out on either side.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        let reach = |part: &Part| FARTHEST * part.variance.sqrt();
        let low = self.parts.iter().fold(f64::MAX, |least, part| least.min(part.mean - reach(part)));
        let high = self.parts.iter().fold(f64::MIN, |most, part| most.max(part.mean + reach(part)));
        let end = |f: &dyn Fn(f64) -> f64| find_root(low, high, 0.0, f).unwrap_or(f64::NAN);
        Interval {
            low: end(&|value| self.chance_below(value) - level.tail()),
            high: end(&|value| level.tail() - self.chance_above(value)),
            level,
        }
    }

    fn expect(&self, of: &dyn Fn(&Part) -> f64) -> f64 {
        self.parts.iter().map(|part| part.chance * of(part)).sum()
    }
}
