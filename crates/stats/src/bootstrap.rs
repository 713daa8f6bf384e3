//! Bias-corrected and accelerated bootstrap, for what has no formula.
//!
//! Resamples whole shots within each group (a build, or a set), so any statistic of any columns can be asked:
//! it is handed indices. Not for means or spreads, where it misses more often than the formulas do
//! (7 to 17 % for 95 % on skewed carry).
//! Sources: B. Efron, J. American Statistical Association 82 (1987), 171–185; acceleration of several samples as
//! in Davison and Hinkley, Bootstrap Methods (1997), 5.3.

use crate::chance::Chance;
use crate::count::whole;
use crate::distributions::{normal_cdf, normal_upper};
use crate::level::{Interval, Level};

/// A statistic's bootstrap distribution.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Bootstrap {
    /// The statistic of the shots themselves.
    pub estimate: f64,
    /// Deviate z₀ of the share of resamples below the estimate.
    pub bias_correction: f64,
    /// Acceleration a: how the statistic's error grows with it.
    pub acceleration: f64,
    /// Resamples drawn.
    pub draws: u32,
    /// Resamples on which the statistic was not a number; they are not among `sorted`.
    pub undefined: u32,
    /// Seed they were drawn from.
    pub seed: u64,
    /// The statistic of each resample, ascending.
    pub sorted: Vec<f64>,
}

impl Bootstrap {
    /// Bias-corrected and accelerated interval.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        let shares = bca_shares(self.bias_correction, self.acceleration, level);
        Interval { level, low: self.reached_by(shares.low), high: self.reached_by(shares.high) }
    }

    /// Standard deviation of the resamples.
    #[must_use]
    pub fn se(&self) -> f64 {
        let n = self.sorted.len() as f64;
        (crate::describe::sum_of_squares(&self.sorted) / (n - 1.0).max(1.0)).sqrt()
    }

    /// Smallest value v with at least `share` of the resamples at or below it.
    fn reached_by(&self, share: f64) -> f64 {
        let last = self.sorted.len().saturating_sub(1);
        let place = (share * self.sorted.len() as f64 * (1.0 - 1e-12)).ceil() - 1.0;
        self.sorted.get(whole(place, last)).copied().unwrap_or(self.estimate)
    }
}

/// The two shares of a bootstrap distribution at which an interval is read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shares {
    /// Lower share.
    pub low: f64,
    /// Upper share.
    pub high: f64,
}

/// Φ(z₀ + (z₀ + z)/(1 − a(z₀ + z))) at both tails.
#[must_use]
pub fn bca_shares(bias_correction: f64, acceleration: f64, level: Level) -> Shares {
    let z = normal_upper(level.tail());
    let share = |z: f64| {
        let sum = bias_correction + z;
        // Where the denominator is not positive the share has run to its end.
        let room = 1.0 - acceleration * sum;
        if room <= 0.0 { f64::from(u8::from(sum > 0.0)) } else { normal_cdf(bias_correction + sum / room) }
    };
    Shares { low: share(-z), high: share(z) }
}

/// z₀ = Φ⁻¹(P(θ* < θ̂) + ½P(θ* = θ̂)), bounded where all resamples lie on one side.
#[must_use]
pub fn bias_correction(below: u64, equal: u64, draws: u64) -> f64 {
    let share = (below as f64 + 0.5 * equal as f64) / draws.max(1) as f64;
    let least = 0.5 / (draws + 1) as f64;
    -normal_upper(share.clamp(least, 1.0 - least))
}

/// Acceleration from the leave-one-out values of one or several samples.
///
/// U = (n_j − 1)(θ̄_j − θ_(i),j); a = Σ_j Σ_i U³/n_j³ / (6 (Σ_j Σ_i U²/n_j²)^1.5). 0 where nothing varies.
#[must_use]
pub fn acceleration(left_out: &[Vec<f64>]) -> f64 {
    let (mut cubes, mut squares) = (0.0, 0.0);
    for group in left_out {
        let n = group.len() as f64;
        let mean = crate::describe::mean(group);
        for value in group {
            let u = (n - 1.0) / n * (mean - value);
            squares += u * u;
            cubes += u * u * u;
        }
    }
    let a = cubes / (6.0 * squares * squares.sqrt());
    if a.is_finite() { a } else { 0.0 }
}

/// Bootstraps several statistics at once on the same resamples.
///
/// `sizes` are the groups' numbers of shots; `statistics` receives one list of indices per group and returns one
/// number per statistic, always as many. Time: (draws + shots) times that of `statistics`.
pub fn bootstrap(
    sizes: &[usize],
    draws: u32,
    seed: u64,
    mut statistics: impl FnMut(&[Vec<usize>]) -> Vec<f64>,
) -> Vec<Bootstrap> {
    let whole_groups: Vec<Vec<usize>> = sizes.iter().map(|&n| (0..n).collect()).collect();
    let estimates = statistics(&whole_groups);
    let mut results: Vec<Bootstrap> = estimates
        .iter()
        .map(|&estimate| Bootstrap {
            estimate,
            bias_correction: 0.0,
            acceleration: 0.0,
            draws,
            undefined: 0,
            seed,
            sorted: Vec::with_capacity(draws as usize),
        })
        .collect();
    let mut chance = Chance::seeded(seed);
    let mut indices = whole_groups.clone();
    for _ in 0..draws {
        for group in &mut indices {
            let n = u32::try_from(group.len()).unwrap_or(u32::MAX);
            group.iter_mut().for_each(|index| *index = chance.below(n));
        }
        for (result, value) in results.iter_mut().zip(statistics(&indices)) {
            if value.is_nan() { result.undefined += 1 } else { result.sorted.push(value) }
        }
    }
    let accelerations = accelerations(&whole_groups, results.len(), &mut statistics);
    for (result, acceleration) in results.iter_mut().zip(accelerations) {
        crate::arrange::sort_numbers(&mut result.sorted);
        let below = result.sorted.partition_point(|value| *value < result.estimate);
        let up_to = result.sorted.partition_point(|value| *value <= result.estimate);
        result.bias_correction =
            bias_correction(below as u64, (up_to - below) as u64, result.sorted.len() as u64);
        result.acceleration = acceleration;
    }
    results
}

fn accelerations(
    groups: &[Vec<usize>],
    wanted: usize,
    statistics: &mut impl FnMut(&[Vec<usize>]) -> Vec<f64>,
) -> Vec<f64> {
    let mut left_out = vec![vec![Vec::new(); groups.len()]; wanted];
    // A group of one shot has nothing to leave out.
    for (j, group) in groups.iter().enumerate().filter(|(_, group)| group.len() > 1) {
        let mut without = groups.to_vec();
        for &gone in group {
            without[j] = group.iter().copied().filter(|&index| index != gone).collect();
            for (values, value) in left_out.iter_mut().zip(statistics(&without)) {
                values[j].push(value);
            }
        }
    }
    left_out.iter().map(|groups| acceleration(groups)).collect()
}
