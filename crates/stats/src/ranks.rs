//! Mann–Whitney: does one build's shot tend to beat the other's, and by how much in the middle?
//!
//! Exact where no two shots tie and both samples are small; otherwise normal with the variance that ties leave.
//! Sources: Mann and Whitney, Annals of Mathematical Statistics 18 (1947), 50–60; Hodges and Lehmann, same 34
//! (1963), 598–611; interval for the chance Brunner and Munzel, Biometrical Journal 42 (2000), 17–25.

use crate::count::whole;
use crate::difference::{Refusal, TDifference};
use crate::distributions::{normal_sf, normal_upper};
use crate::level::{Interval, Level};
use crate::pairwise::PairwiseDifferences;
use crate::real::{cube, exp, ln};
use crate::sample::Sample;
use crate::welch::satterthwaite;

/// Largest samples for which the exact distribution is counted, as is usual.
const EXACT_BELOW: usize = 50;

/// How often the candidate's shots beat the baseline's.
#[derive(Debug, Clone, PartialEq)]
pub struct MannWhitney {
    /// Pairs the candidate wins, ties counting half.
    pub u: f64,
    n: usize,
    m: usize,
    /// Σ(t³ − t) over groups of t tied values.
    ties: f64,
    differences: PairwiseDifferences,
    placements: Option<TDifference>,
}

/// Compares two samples by the order of their values.
#[must_use]
pub fn mann_whitney(candidate: &Sample, baseline: &Sample) -> MannWhitney {
    let (x, y) = (candidate.sorted(), baseline.sorted());
    let beaten = |values: &[f64], by: f64| {
        let (below, up_to) = (values.partition_point(|v| *v < by), values.partition_point(|v| *v <= by));
        0.5 * (below + up_to) as f64
    };
    let wins: Vec<f64> = x.iter().map(|&value| beaten(&y, value)).collect();
    let losses: Vec<f64> = y.iter().map(|&value| beaten(&x, value)).collect();
    let mut pooled = [&x[..], &y[..]].concat();
    crate::arrange::sort_numbers(&mut pooled);
    // In ascending order, not less means equal.
    let tied = pooled.chunk_by(|a, b| a >= b).map(|group| cube(group.len() as f64) - group.len() as f64);
    MannWhitney {
        u: wins.iter().sum(),
        n: x.len(),
        m: y.len(),
        ties: tied.sum(),
        placements: placements(&wins, &losses),
        differences: PairwiseDifferences::new(x, y),
    }
}

impl MannWhitney {
    /// Chance that a shot with the candidate beats one with the baseline, ties counting half.
    #[must_use]
    pub fn chance(&self) -> f64 {
        self.u / (self.n * self.m) as f64
    }

    /// The chance less one half, with a standard error that holds for unequal scatter (Brunner and Munzel).
    ///
    /// `None` where the builds do not overlap, or no pair decides.
    #[must_use]
    pub fn chance_above_half(&self) -> Option<TDifference> {
        self.placements
    }

    /// Interval for the chance; computed on the logit scale so that it stays within 0 to 1.
    #[must_use]
    pub fn chance_interval(&self, level: Level) -> Option<Interval> {
        let p = self.chance();
        let half_width = self.placements?.half_width(level) / (p * (1.0 - p));
        let logit = ln(p / (1.0 - p));
        let back = |x: f64| 1.0 / (1.0 + exp(-x));
        Some(Interval { level, low: back(logit - half_width), high: back(logit + half_width) })
    }

    /// Median of all differences candidate − baseline.
    #[must_use]
    pub fn shift(&self) -> f64 {
        let pairs = self.n * self.m;
        let middle = |k| self.differences.kth(k);
        if pairs % 2 == 1 { middle(pairs / 2) } else { 0.5 * (middle(pairs / 2 - 1) + middle(pairs / 2)) }
    }

    /// Interval for that shift: the k-th smallest to the k-th largest difference.
    ///
    /// k is the α/2 quantile of U where exact, else ⌊nm/2 − z·σ⌋ with σ corrected for ties; at least 1.
    #[must_use]
    pub fn shift_interval(&self, level: Level) -> Interval {
        let pairs = self.n * self.m;
        let k = self.shift_order(level);
        Interval { level, low: self.differences.kth(k - 1), high: self.differences.kth(pairs - k) }
    }

    /// The k of `shift_interval`.
    #[must_use]
    pub fn shift_order(&self, level: Level) -> usize {
        let pairs = self.n * self.m;
        let k = match self.exact() {
            Some(lower_tails) => lower_tails.iter().position(|&tail| tail >= level.tail()).unwrap_or(0),
            None => whole(0.5 * pairs as f64 - normal_upper(level.tail()) * self.sd(), pairs),
        };
        k.clamp(1, pairs)
    }

    /// Two-sided p: exact where `exact_p` is, else normal with continuity correction.
    #[must_use]
    pub fn p_value(&self) -> f64 {
        self.exact_p().unwrap_or_else(|| self.normal_p(Continuity::Corrected))
    }

    /// Two-sided p counted over all orders; `None` with ties or from 50 values on.
    #[must_use]
    pub fn exact_p(&self) -> Option<f64> {
        let lower_tails = self.exact()?;
        let smaller = self.u.min((self.n * self.m) as f64 - self.u);
        let tail = lower_tails.get(whole(smaller, self.n * self.m))?;
        Some((2.0 * tail).min(1.0))
    }

    /// Two-sided p from the normal approximation with the variance ties leave.
    #[must_use]
    pub fn normal_p(&self, continuity: Continuity) -> f64 {
        (2.0 * normal_sf(self.z(continuity).abs())).min(1.0)
    }

    /// The deviate behind it; 0 when all values tie.
    #[must_use]
    pub fn z(&self, continuity: Continuity) -> f64 {
        let distance = self.u - 0.5 * (self.n * self.m) as f64;
        let correction = match continuity {
            Continuity::Corrected => 0.5f64.min(distance.abs()),
            Continuity::Plain => 0.0,
        };
        let z = (distance - correction.copysign(distance)) / self.sd();
        if z.is_finite() { z } else { 0.0 }
    }

    /// √(nm/12 · (N + 1 − Σ(t³ − t)/(N(N − 1)))).
    fn sd(&self) -> f64 {
        let (pairs, all) = ((self.n * self.m) as f64, (self.n + self.m) as f64);
        (pairs / 12.0 * (all + 1.0 - self.ties / (all * (all - 1.0)))).max(0.0).sqrt()
    }

    /// P(U ≤ u) for u = 0, 1, …; `None` with ties or from 50 values on.
    fn exact(&self) -> Option<Vec<f64>> {
        let small = self.n < EXACT_BELOW && self.m < EXACT_BELOW;
        (small && self.ties < 0.5).then(|| lower_tails(self.n, self.m))
    }
}

/// Whether half a step is taken off before a count is held against the normal distribution.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Continuity {
    /// Half a step off.
    Corrected,
    /// As it is.
    Plain,
}

/// Distribution of U without ties, as products of (1 − qⁿ⁺ⁱ)/(1 − qⁱ): one factor in, one out at a time.
fn lower_tails(n: usize, m: usize) -> Vec<f64> {
    let most = n * m;
    let mut counts = vec![0.0; most + 1];
    counts[0] = 1.0;
    for i in 1..=m {
        for u in (n + i..=most).rev() {
            counts[u] -= counts[u - n - i];
        }
        for u in i..=most {
            counts[u] += counts[u - i];
        }
        // Keep the scale of probabilities: after i steps the counts add up to C(n + i, i).
        let shrink = i as f64 / (n + i) as f64;
        counts.iter_mut().for_each(|count| *count *= shrink);
    }
    let mut sum = 0.0;
    counts
        .iter()
        .map(|count| {
            sum += count;
            sum
        })
        .collect()
}

/// Brunner and Munzel's standard error from how each value is placed among the other sample's.
fn placements(wins: &[f64], losses: &[f64]) -> Option<TDifference> {
    let (n, m) = (wins.len() as f64, losses.len() as f64);
    let chance = wins.iter().sum::<f64>() / (n * m);
    let a = crate::describe::sum_of_squares(wins) / (n - 1.0) / (n * m * m);
    let b = crate::describe::sum_of_squares(losses) / (m - 1.0) / (m * n * n);
    let df = satterthwaite(a, wins.len() - 1, b, losses.len() - 1);
    let difference: Result<TDifference, Refusal> = TDifference::new(chance - 0.5, (a + b).sqrt(), df, 1.0);
    difference.ok().filter(|_| chance > 0.0 && chance < 1.0)
}
