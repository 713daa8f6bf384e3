//! How much the shots of a session in turn lean on each other, as they show it themselves, and what that costs in width.
//!
//! The usual widening covers what shots commonly lean on each other. A session may show more: what a shot is off by then
//! goes on in the next one of its round. The memory φ of a first-order autoregression is the one whose residuals would
//! show as much, with the bias that taking out rounds and builds brings; the variance of the difference under it, in the
//! order in which the shots were hit, over what the model takes it to be, is the inflation. It may widen, never narrow.
//! Limits: one memory for the session; of a dozen shots next to nothing is seen; turns of one shot show nothing.
//! Source: own construction on first-order autoregression, moments matched as by Durbin and Watson, Biometrika 37
//! (1950), 409–428; `cargo xtask calibrate` measures it (target 30).

use crate::real::square;
use crate::rounds::RoundShot;

/// Memories that are tried; between them lines are drawn.
const MEMORIES: [f64; 8] = [0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.65, 0.8];
/// Less than this between two of them tells no memory from another.
const FLAT: f64 = 1e-6;

/// What the shots of two builds show of leaning on each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leaning {
    /// Correlation of a shot with the one before, 0 to 0.8.
    pub memory: f64,
    /// Variance of the difference, over that for independent shots; at least 1.
    pub inflation: f64,
}

impl Leaning {
    /// Nothing is seen.
    pub const NONE: Self = Self { memory: 0.0, inflation: 1.0 };
}

/// A shot of the two builds, in a round that holds both.
struct Placed {
    round: usize,
    is_candidate: bool,
    value: f64,
    /// Place among all shots of the session: others may have been hit between.
    at: usize,
}

/// Measures the memory of these shots, given round by round in the order hit.
///
/// q = Σ eₜeₜ₊₁ / Σ e² over neighbors within rounds, e the residuals of value = round + build; φ where the expectation of
/// the numerator over that of the denominator is q. Inflation = c′R(φ)c · W / (tr(M R(φ)) / df), d = c′y.
#[must_use]
pub fn leaning(shots: &[RoundShot], candidate: usize, baseline: usize) -> Leaning {
    let placed = shared(shots, candidate, baseline);
    Design::of(&placed).and_then(|design| design.leaning(&placed)).unwrap_or(Leaning::NONE)
}

/// The shots of both builds in the rounds that hold both, rounds one after the other.
fn shared(shots: &[RoundShot], candidate: usize, baseline: usize) -> Vec<Placed> {
    let mut order: Vec<usize> = (0..shots.len()).collect();
    crate::arrange::sort_by(&mut order, |a, b| (shots[*a].round, a).cmp(&(shots[*b].round, b)));
    let mut placed: Vec<Placed> = Vec::new();
    for (at, &shot) in order.iter().enumerate() {
        let RoundShot { round, build, value } = shots[shot];
        if build == candidate || build == baseline {
            placed.push(Placed { round, is_candidate: build == candidate, value, at });
        }
    }
    let holds_both = |round: &[Placed]| round.iter().any(|shot| shot.is_candidate != round[0].is_candidate);
    let kept = placed.chunk_by(|a, b| a.round == b.round).filter(|round| holds_both(round));
    let kept: Vec<usize> = kept.flatten().map(|shot| shot.at).collect();
    placed.retain(|shot| kept.binary_search(&shot.at).is_ok());
    placed
}

/// What of the model does not hang on the values.
struct Design {
    /// From and to of each round.
    rounds: Vec<(usize, usize)>,
    /// Unit vector along the contrast of the two builds.
    unit: Vec<f64>,
    df: f64,
}

impl Design {
    fn of(placed: &[Placed]) -> Option<Self> {
        let mut rounds = Vec::new();
        let mut from = 0;
        for round in placed.chunk_by(|a, b| a.round == b.round) {
            rounds.push((from, from + round.len()));
            from += round.len();
        }
        let mut unit = vec![0.0; placed.len()];
        for &(from, to) in &rounds {
            let candidates = placed[from..to].iter().filter(|shot| shot.is_candidate).count() as f64;
            let share = candidates / (to - from) as f64;
            for (at, shot) in (from..to).zip(&placed[from..to]) {
                unit[at] = f64::from(u8::from(shot.is_candidate)) - share;
            }
        }
        let length = unit.iter().map(|&u| square(u)).sum::<f64>().sqrt();
        unit.iter_mut().for_each(|u| *u /= length);
        let df = placed.len() as f64 - rounds.len() as f64 - 1.0;
        (rounds.len() >= 2 && df >= 1.0 && length > 0.0).then_some(Self { rounds, unit, df })
    }

    fn leaning(&self, placed: &[Placed]) -> Option<Leaning> {
        let residuals = self.residuals(placed);
        let squares: f64 = residuals.iter().map(|&e| square(e)).sum();
        let seen = self.neighbors(&residuals, &residuals) / squares;
        let expected = MEMORIES.map(|memory| self.expected(placed, memory));
        if !seen.is_finite() || seen <= expected[0].neighbors {
            return None;
        }
        for (at, pair) in expected.windows(2).enumerate() {
            let step = pair[1].neighbors - pair[0].neighbors;
            if step < FLAT {
                return None;
            }
            if seen <= pair[1].neighbors || at + 2 == MEMORIES.len() {
                let part = ((seen - pair[0].neighbors) / step).min(1.0);
                let between = |low: f64, high: f64| low + part * (high - low);
                return Some(Leaning {
                    memory: between(MEMORIES[at], MEMORIES[at + 1]),
                    inflation: between(pair[0].inflation, pair[1].inflation).max(1.0),
                });
            }
        }
        None
    }

    /// What is left of the values after rounds and builds.
    fn residuals(&self, placed: &[Placed]) -> Vec<f64> {
        let mut left: Vec<f64> = placed.iter().map(|shot| shot.value).collect();
        self.center(&mut left);
        let along: f64 = left.iter().zip(&self.unit).map(|(e, u)| e * u).sum();
        left.iter_mut().zip(&self.unit).for_each(|(e, u)| *e -= along * u);
        left
    }

    fn center(&self, values: &mut [f64]) {
        for &(from, to) in &self.rounds {
            let mean = crate::describe::mean(&values[from..to]);
            values[from..to].iter_mut().for_each(|value| *value -= mean);
        }
    }

    /// Σ (xₜyₜ₊₁ + yₜxₜ₊₁)/2 over neighbors within rounds.
    fn neighbors(&self, x: &[f64], y: &[f64]) -> f64 {
        let in_round = |&(from, to): &(usize, usize)| -> f64 {
            (from + 1..to).map(|t| 0.5 * (x[t - 1] * y[t] + y[t - 1] * x[t])).sum()
        };
        self.rounds.iter().map(in_round).sum()
    }

    /// Under a memory: with R the correlations and M what takes out rounds (C) and the contrast (u), M = C − uu′,
    /// tr(MR) = tr(CR) − u′Ru, and the neighbors' part likewise.
    fn expected(&self, placed: &[Placed], memory: f64) -> Expected {
        let correlated = correlated(&self.unit, placed, memory);
        let along: f64 = self.unit.iter().zip(&correlated).map(|(u, v)| u * v).sum();
        let mut centered = correlated;
        self.center(&mut centered);
        let (mut squares, mut neighbors) = (-along, 0.0);
        for &(from, to) in &self.rounds {
            let n = to - from;
            let means = correlated_means(&placed[from..to], memory);
            let mean = crate::describe::mean(&means);
            squares += n as f64 * (1.0 - mean);
            for t in 1..n {
                let own = power(memory, placed[from + t].at - placed[from + t - 1].at);
                neighbors += own - means[t - 1] - means[t] + mean;
            }
        }
        neighbors +=
            along * self.neighbors(&self.unit, &self.unit) - 2.0 * self.neighbors(&centered, &self.unit);
        Expected { neighbors: neighbors / squares, inflation: along * self.df / squares }
    }
}

struct Expected {
    neighbors: f64,
    inflation: f64,
}

/// R x, forward and back: what lies before a shot fades by the memory with each shot between.
fn correlated(x: &[f64], placed: &[Placed], memory: f64) -> Vec<f64> {
    let mut sums = x.to_vec();
    let mut before = 0.0;
    for t in 1..x.len() {
        before = power(memory, placed[t].at - placed[t - 1].at) * (before + x[t - 1]);
        sums[t] += before;
    }
    let mut after = 0.0;
    for t in (1..x.len()).rev() {
        after = power(memory, placed[t].at - placed[t - 1].at) * (after + x[t]);
        sums[t - 1] += after;
    }
    sums
}

/// Mean correlation of each shot of a round with all of it.
fn correlated_means(round: &[Placed], memory: f64) -> Vec<f64> {
    let n = round.len() as f64;
    correlated(&vec![1.0; round.len()], round, memory).iter().map(|sum| sum / n).collect()
}

/// φᵏ by products alone: the same bits everywhere.
fn power(memory: f64, steps: usize) -> f64 {
    // 0.8 to the 60th is 1e-6.
    (0..steps.min(60)).fold(1.0, |power, _| power * memory)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(a: f64, b: f64) -> bool {
        (a - b).abs() <= 1e-9 * (1.0 + b.abs())
    }

    /// AB BA AB BA AB, three at a time.
    fn in_threes(value: impl Fn(usize) -> f64) -> Vec<RoundShot> {
        let build = |at: usize| (at / 3).div_ceil(2) % 2;
        (0..30).map(|at| RoundShot { round: at / 6, build: build(at), value: value(at) }).collect()
    }

    /// By numpy, matrices written out: M R M for R = φ^|i − j| (seed-free, design alone).
    #[test]
    fn expectations_are_those_of_the_whole_matrices() {
        let placed = shared(&in_threes(|at| at as f64), 1, 0);
        let design = Design::of(&placed).unwrap();
        for (memory, neighbors, inflation) in [
            (0.0, -0.194_444_444_444, 1.0),
            (0.3, -0.032_630_594_826, 1.668_875_245_845),
            (0.6, 0.101_785_249_686, 2.742_678_966_685),
        ] {
            let Expected { neighbors: q, inflation: times } = design.expected(&placed, memory);
            assert!((q - neighbors).abs() < 1e-9 && (times - inflation).abs() < 1e-9, "{q} {times}");
        }
    }

    #[test]
    fn shots_that_lean_widen_and_shots_that_swing_back_do_not() {
        // Blocks of three that are all high or all low, across the turns, and shots that change from one to the next.
        let slow = leaning(&in_threes(|at| f64::from(u8::from((at / 4).is_multiple_of(2)))), 1, 0);
        assert!(slow.memory > 0.3 && slow.inflation > 1.5, "{slow:?}");
        let quick = leaning(&in_threes(|at| f64::from(u8::from(at % 2 == 0))), 1, 0);
        assert_eq!(quick, Leaning::NONE);
    }

    #[test]
    fn neither_scale_nor_the_names_of_builds_and_rounds_matter() {
        let wave = |at: usize| f64::from(u8::from((at / 5).is_multiple_of(2))) + 0.1 * (at * 7 % 5) as f64;
        let found = leaning(&in_threes(wave), 1, 0);
        let swapped = leaning(&in_threes(wave), 0, 1);
        let scaled = leaning(&in_threes(|at| 250.0 - 3.0 * wave(at)), 1, 0);
        assert!(near(found.memory, swapped.memory) && near(found.inflation, swapped.inflation));
        assert!(near(found.memory, scaled.memory) && found.memory > 0.0, "{found:?} {scaled:?}");
    }

    #[test]
    fn turns_of_one_shot_and_shots_without_scatter_show_nothing() {
        let single = |at: usize| RoundShot { round: at / 2, build: at % 2, value: (at * 7 % 11) as f64 };
        assert_eq!(leaning(&(0..20).map(single).collect::<Vec<_>>(), 1, 0), Leaning::NONE);
        assert_eq!(leaning(&in_threes(|_| 1.0), 1, 0), Leaning::NONE);
        assert_eq!(leaning(&[], 1, 0), Leaning::NONE);
        // A round that one build has to itself counts for nothing.
        let mut more = in_threes(|at| f64::from(u8::from((at / 4).is_multiple_of(2))));
        let found = leaning(&more, 1, 0);
        more.extend((0..9).map(|at| RoundShot { round: 9, build: 1, value: at as f64 }));
        assert_eq!(leaning(&more, 1, 0), found);
    }
}
