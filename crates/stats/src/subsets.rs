//! What a part of a sample could show: the figures of its runs in a row, or of any values picked from it.
//!
//! Nothing here is a test. It answers how far a few values, chosen by anyone or by nobody, can lie from what all
//! of them say. Runs are listed; picks are listed where there are few enough and drawn from a seed otherwise; the
//! extremes come from sorting, whatever was drawn.
//! Source: own construction. Extremes of averages over a window or a subset are plain combinatorics.

use crate::chance::Chance;
use crate::describe::mean;
use crate::sample::Sample;

/// Gaps closer than this share of the largest value are the same but for rounding.
const SLACK: f64 = 1e-9;

/// What is made of the values picked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figure {
    /// Their average.
    Mean,
    /// How far their average lies from zero.
    DistanceFromZero,
}

impl Figure {
    /// The figure of some values; 0 for none.
    #[must_use]
    pub fn of(self, values: &[f64]) -> f64 {
        self.of_mean(mean(values))
    }

    fn of_mean(self, mean: f64) -> f64 {
        match self {
            Figure::Mean => mean,
            Figure::DistanceFromZero => mean.abs(),
        }
    }
}

/// How the choices came about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Taken {
    /// Every one was listed once.
    Listed,
    /// They were drawn from this seed, each as likely as any other.
    Drawn {
        /// The seed.
        seed: u64,
    },
}

/// The figures that choices of n values of one sample give.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Subsets {
    /// One for each choice, ascending.
    pub figures: Vec<f64>,
    /// Smallest figure of any choice, drawn or not.
    pub least: f64,
    /// Largest figure of any choice, drawn or not.
    pub most: f64,
    /// Whether every choice is among the figures.
    pub taken: Taken,
}

/// The figure of every run of `n` values in a row; `None` when there is no such run.
#[must_use]
pub fn runs(sample: &Sample, n: usize, figure: Figure) -> Option<Subsets> {
    if n == 0 || n > sample.n() {
        return None;
    }
    Some(listed(sample.values().windows(n).map(|run| figure.of(run)).collect()))
}

/// The figures of choices of any `n` values: all of them if they are no more than `draws`, else `draws` random ones.
///
/// Accuracy: the extremes are exact, save the least distance from zero where choices lie on both sides of it: then
/// it is at most half the largest step between neighboring values, divided by n, above the true one. `None` when
/// there are fewer than `n` values or nothing would be drawn.
#[must_use]
pub fn picks(sample: &Sample, n: usize, figure: Figure, draws: u32, seed: u64) -> Option<Subsets> {
    if n == 0 || n > sample.n() || draws == 0 {
        return None;
    }
    let sorted = sample.sorted();
    if number_of_picks(sorted.len(), n).is_some_and(|all| all <= u64::from(draws)) {
        return Some(listed(every_pick(&sorted, n, figure)));
    }
    let drawn = listed(drawn_picks(&sorted, n, figure, draws, seed));
    let (low, high) = (mean(&sorted[..n]), mean(&sorted[sorted.len() - n..]));
    let (least, most) = match figure {
        Figure::Mean => (low, high),
        Figure::DistanceFromZero => (nearest_zero(&sorted, n), low.abs().max(high.abs())),
    };
    Some(Subsets {
        least: least.min(drawn.least),
        most: most.max(drawn.most),
        taken: Taken::Drawn { seed },
        ..drawn
    })
}

/// The figures of random choices of any `n` values, in the order drawn; `None` when there are fewer than `n`, or none are
/// asked for.
#[must_use]
pub fn deals(sample: &Sample, n: usize, figure: Figure, draws: u32, seed: u64) -> Option<Vec<f64>> {
    (n > 0 && n <= sample.n() && draws > 0).then(|| drawn_picks(&sample.sorted(), n, figure, draws, seed))
}

/// Share of all pairs, one choice of each, whose gap `above` − `below` is at least `at_least`; with 0, above zero.
///
/// Rounding does not decide: a gap within 1e-9 of the largest figure counts as equal.
/// Time: that of going through both once.
#[must_use]
pub fn share_of_pairs(above: &Subsets, below: &Subsets, at_least: f64) -> f64 {
    let largest =
        [above.least, above.most, below.least, below.most].iter().fold(0.0_f64, |a, b| a.max(b.abs()));
    let slack = SLACK * largest;
    let limit = if at_least > 0.0 { at_least - slack } else { slack };
    let (mut start, mut pairs) = (0, 0_u64);
    for figure in &below.figures {
        while above.figures.get(start).is_some_and(|a| a - figure <= limit) {
            start += 1;
        }
        pairs += (above.figures.len() - start) as u64;
    }
    pairs as f64 / (above.figures.len() as f64 * below.figures.len() as f64).max(1.0)
}

fn listed(mut figures: Vec<f64>) -> Subsets {
    crate::arrange::sort_numbers(&mut figures);
    let (least, most) = (figures.first().copied(), figures.last().copied());
    Subsets {
        least: least.unwrap_or_default(),
        most: most.unwrap_or_default(),
        figures,
        taken: Taken::Listed,
    }
}

/// Binomial coefficient; `None` beyond 64 bits.
fn number_of_picks(of: usize, n: usize) -> Option<u64> {
    let n = n.min(of - n);
    (1..=n as u64).try_fold(1_u64, |picks, k| Some(picks.checked_mul(of as u64 - n as u64 + k)? / k))
}

/// Every choice once, by moving the last place that still has room.
fn every_pick(values: &[f64], n: usize, figure: Figure) -> Vec<f64> {
    let mut places: Vec<usize> = (0..n).collect();
    let mut picked: Vec<f64> = values[..n].to_vec();
    let mut figures = vec![figure.of(&picked)];
    while let Some(k) = (0..n).rev().find(|&k| places[k] < values.len() - n + k) {
        places[k] += 1;
        for later in k + 1..n {
            places[later] = places[later - 1] + 1;
        }
        for (value, &place) in picked[k..].iter_mut().zip(&places[k..]) {
            *value = values[place];
        }
        figures.push(figure.of(&picked));
    }
    figures
}

/// Random choices: the first `n` places of a shuffle that stops there.
fn drawn_picks(values: &[f64], n: usize, figure: Figure, draws: u32, seed: u64) -> Vec<f64> {
    let mut chance = Chance::seeded(seed);
    let mut deck = values.to_vec();
    let pick = |_| {
        for place in 0..n {
            let rest = u32::try_from(deck.len() - place).unwrap_or(u32::MAX);
            deck.swap(place, place + chance.below(rest));
        }
        figure.of(&deck[..n])
    };
    (0..draws).map(pick).collect()
}

/// The average nearest zero met on the way from the lowest `n` values to the highest, one value and one rank at a
/// time; each step moves the average by a step between neighbors divided by n.
fn nearest_zero(sorted: &[f64], n: usize) -> f64 {
    let mut sum: f64 = sorted[..n].iter().sum();
    let mut nearest = sum.abs();
    for leaving in (0..n).rev() {
        let free = sorted.len() - n + leaving;
        for place in leaving..free {
            sum += sorted[place + 1] - sorted[place];
            nearest = nearest.min(sum.abs());
        }
    }
    nearest / n as f64
}

/// Gaps between two choices when nothing but chance sets the samples apart.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct ChanceGaps {
    /// Size of each drawn gap without its sign, ascending. Which of two equal samples is named first makes no
    /// difference, so each stands for a gap to either side.
    pub sizes: Vec<f64>,
    /// Seed they were drawn from.
    pub seed: u64,
}

impl ChanceGaps {
    /// Share of gaps of at least this size, to either side.
    #[must_use]
    pub fn share_at_least(&self, size: f64) -> f64 {
        let slack = SLACK * self.sizes.last().copied().unwrap_or_default();
        let below = self.sizes.partition_point(|s| *s < size - slack);
        (self.sizes.len() - below) as f64 / (self.sizes.len() as f64).max(1.0)
    }
}

/// Draws gaps between the figures of `n` values each, both from one pool.
///
/// The null: both samples are the same source, seen through independent values that scatter as these do. The pool
/// holds all values less the average of their own sample, times √(nᵢ/(nᵢ−1)), since values lie nearer to their own
/// average than to the true one; n and n are drawn from it with replacement. A distance from zero needs a place as
/// well: the middle between both averages. Memory from one value to the next is not part of it.
/// The gaps have standard deviation s√(2/n), s² the samples' variances weighted by their counts.
/// Source: the bootstrap of a null hypothesis, Efron and Tibshirani, An Introduction to the Bootstrap (1993), 16.2.
/// `None` when `n` or `draws` is 0.
#[must_use]
pub fn chance_gaps(
    one: &Sample,
    other: &Sample,
    n: usize,
    figure: Figure,
    draws: u32,
    seed: u64,
) -> Option<ChanceGaps> {
    if n == 0 || draws == 0 {
        return None;
    }
    let center = match figure {
        Figure::Mean => 0.0,
        Figure::DistanceFromZero => 0.5 * (one.mean() + other.mean()),
    };
    let mut pool: Vec<f64> = [one, other].into_iter().flat_map(spread_out).collect();
    // In ascending order, so that it does not matter which sample is named first.
    crate::arrange::sort_numbers(&mut pool);
    let bound = u32::try_from(pool.len()).unwrap_or(u32::MAX);
    let mut chance = Chance::seeded(seed);
    let mut figure_of_some = || {
        let sum: f64 = (0..n).map(|_| pool[chance.below(bound)]).sum();
        figure.of_mean(center + sum / n as f64)
    };
    let mut sizes: Vec<f64> = (0..draws).map(|_| (figure_of_some() - figure_of_some()).abs()).collect();
    crate::arrange::sort_numbers(&mut sizes);
    Some(ChanceGaps { sizes, seed })
}

/// Values less their average, widened to the scatter of values around the true one.
fn spread_out(sample: &Sample) -> impl Iterator<Item = f64> {
    let (center, n) = (sample.mean(), sample.n() as f64);
    let widen = (n / (n - 1.0)).sqrt();
    sample.values().iter().map(move |value| (value - center) * widen)
}
