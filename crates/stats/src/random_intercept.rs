//! Two groups in blocks with random levels, by restricted maximum likelihood: a check on the fixed-effects answer.
//!
//! For balanced blocks it agrees with the comparison within rounds; it is shown beside it on the methods page and
//! decides nothing. The standard error is that of generalized least squares at the estimated variances.
//! Source: Patterson and Thompson, Biometrika 58 (1971), 545–554.

use crate::difference::Refusal;
use crate::real::{exp, ln, ln_1p};
use crate::rounds::{RoundShot, Rounds};
use std::f64::consts::PI;

/// The search covers ratios of variances from e^-18 to e^18 besides zero itself.
const FARTHEST: f64 = 18.0;

/// Candidate − baseline with blocks drawn from a normal distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct RandomIntercept {
    /// Candidate − baseline.
    pub diff: f64,
    /// Its standard error by generalized least squares.
    pub se: f64,
    /// Variance of block levels.
    pub between_blocks: f64,
    /// Variance of a shot within its block.
    pub within: f64,
    /// Restricted log-likelihood.
    pub log_likelihood: f64,
}

/// Fits y = mean + candidate + block + error; shots of other builds do not count.
///
/// # Errors
/// Fewer than two blocks, four shots, or one build; no scatter.
pub fn random_intercept(
    shots: &[RoundShot],
    candidate: usize,
    baseline: usize,
) -> Result<RandomIntercept, Refusal> {
    let pair: Vec<RoundShot> =
        shots.iter().filter(|shot| [candidate, baseline].contains(&shot.build)).copied().collect();
    let rounds = Rounds::new(&pair).map_err(|_| Refusal::TooFew { got: pair.len(), need: 4 })?;
    if rounds.count() < 2 || pair.len() < 4 {
        return Err(Refusal::TooFewRounds { got: rounds.count(), need: 2 });
    }
    let blocks = Block::of(&pair, candidate);
    let likelihood = |log_ratio: f64| profile(&blocks, exp(log_ratio)).log_likelihood;
    let best = highest(&likelihood);
    let (inside, none) = (profile(&blocks, exp(best)), profile(&blocks, 0.0));
    let found = if inside.log_likelihood > none.log_likelihood { inside } else { none };
    (found.within > 0.0 && found.log_likelihood.is_finite()).then_some(found).ok_or(Refusal::NoScatter)
}

/// Sums of one block: how many shots, how many with the candidate, their totals.
struct Block {
    n: f64,
    candidates: f64,
    total: f64,
    candidate_total: f64,
    squares: f64,
}

impl Block {
    /// Values are taken around their common mean, which the model's own mean then gives back.
    fn of(shots: &[RoundShot], candidate: usize) -> Vec<Block> {
        let center = crate::describe::mean(&shots.iter().map(|shot| shot.value).collect::<Vec<_>>());
        let mut sorted = shots.to_vec();
        crate::arrange::sort_by_key(&mut sorted, |shot| shot.round);
        let block = |shots: &[RoundShot]| {
            let mut block = Block { n: 0.0, candidates: 0.0, total: 0.0, candidate_total: 0.0, squares: 0.0 };
            for shot in shots {
                let (value, own) = (shot.value - center, f64::from(u8::from(shot.build == candidate)));
                block.n += 1.0;
                block.candidates += own;
                block.total += value;
                block.candidate_total += own * value;
                block.squares += value * value;
            }
            block
        };
        sorted.chunk_by(|a, b| a.round == b.round).map(block).collect()
    }
}

/// The likelihood and estimates at one ratio of variances, V = I + ratio·J within each block.
///
/// V⁻¹ = I − s J with s = ratio/(1 + n·ratio), ln|V| = ln(1 + n·ratio).
fn profile(blocks: &[Block], ratio: f64) -> RandomIntercept {
    let (mut a, mut b, mut c, mut u, mut v, mut yy, mut log_det, mut n) =
        (0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    for block in blocks {
        let s = ratio / (1.0 + block.n * ratio);
        a += block.n - s * block.n * block.n;
        b += block.candidates - s * block.n * block.candidates;
        c += block.candidates - s * block.candidates * block.candidates;
        u += block.total - s * block.n * block.total;
        v += block.candidate_total - s * block.candidates * block.total;
        yy += block.squares - s * block.total * block.total;
        log_det += ln_1p(block.n * ratio);
        n += block.n;
    }
    let determinant = a * c - b * b;
    let (mean, diff) = ((c * u - b * v) / determinant, (a * v - b * u) / determinant);
    let df = n - 2.0;
    let within = ((yy - mean * u - diff * v) / df).max(0.0);
    let log_likelihood = -0.5 * (df * ln(2.0 * PI * within) + log_det + ln(determinant) + df);
    RandomIntercept {
        diff,
        se: (within * a / determinant).sqrt(),
        between_blocks: ratio * within,
        within,
        log_likelihood,
    }
}

/// Where a function of one variable is highest: a coarse grid, then golden sections around its best place.
fn highest(f: &dyn Fn(f64) -> f64) -> f64 {
    let steps = (0..=72).map(|i| -FARTHEST + 0.5 * f64::from(i));
    let best = steps.max_by(|&x, &y| f(x).total_cmp(&f(y))).unwrap_or(0.0);
    let golden = 0.5 * (5f64.sqrt() - 1.0);
    let (mut low, mut high) = (best - 0.5, best + 0.5);
    // Flat to the last bit long before 60 sections of 0.618.
    for _ in 0..60 {
        let (left, right) = (high - golden * (high - low), low + golden * (high - low));
        if f(left) < f(right) { low = left } else { high = right }
    }
    0.5 * (low + high)
}
