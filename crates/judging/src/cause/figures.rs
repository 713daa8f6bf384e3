//! The parts of a gap in carry with their intervals, from the flights of the shots.
//!
//! Where there are many shots, a sample of the pairs is flown and corrects the quadratic of all of them; the rest takes
//! up what that leaves, so the parts add up all the same.

use super::part::{LEVEL, Span};
use super::quick::Quadratic;
use super::split::{self, Pairing};
use crate::flying::{Flown, VALUES, forward_yd};
use stats::bootstrap::bootstrap;
use stats::choices::WIDENING;
use stats::distributions::t_upper;

/// Pairs flown through every mixture.
const MOST_PAIRS: usize = 240;
/// Resamples behind the intervals.
pub(super) const DRAWS: u32 = 1_000;
/// Always the same seed gives everybody the same intervals.
pub(super) const SEED: u32 = 1;

/// Place of what the model does not explain; before it the factors of a flight.
pub(super) const REST: usize = VALUES;
/// Place of club speed.
pub(super) const CLUB: usize = VALUES + 1;
/// Place of smash.
pub(super) const SMASH: usize = VALUES + 2;
const ALL: usize = VALUES + 3;

/// Every part, in yards, with its half-width.
pub(super) struct Figures {
    /// Gap in measured carry.
    pub(super) gap: f64,
    values: [f64; ALL],
    reach: [f64; ALL],
}

impl Figures {
    pub(super) fn sized(&self, at: usize) -> Span {
        let (value, reach) = (self.values[at], self.reach[at]);
        Span { value, low: value - reach, high: value + reach }
    }
}

/// The parts for shots in order of carry.
pub(super) fn figures(base: &[Flown], cand: &[Flown]) -> Figures {
    let center: [f64; VALUES] = std::array::from_fn(|i| 0.5 * (average(base, i) + average(cand, i)));
    let quick = Quadratic::around(center);
    let pairs = split::pair_by_rank(base.len(), cand.len());
    let slope = |i, from: &Flown, to: &Flown| {
        quick.as_ref().map_or(0.0, |quick| quick.slope_between(i, &from.values, &to.values))
    };
    let every = pairs.len().div_ceil(MOST_PAIRS);
    let mut correction = [0.0; VALUES];
    let mut values = sum(&pairs, base, cand, |from, to| {
        let parts = quick.as_ref().map_or([0.0; VALUES], |quick| quick.parts(&from.values, &to.values));
        with_club(parts, slope(0, from, to), from, to)
    });
    let mut sampled = 0.0;
    for pair in pairs.iter().step_by(every) {
        let (from, to) = (&base[pair.from], &cand[pair.to]);
        let roughly = quick.as_ref().map_or([0.0; VALUES], |quick| quick.parts(&from.values, &to.values));
        let exactly = split::shapley(&from.values, &to.values, forward_yd).unwrap_or(roughly);
        for (total, (exact, rough)) in correction.iter_mut().zip(exactly.iter().zip(roughly)) {
            *total += pair.weight * (exact - rough);
        }
        sampled += pair.weight;
    }
    for (value, correction) in values.iter_mut().zip(correction) {
        *value += correction / sampled;
    }
    values[SMASH] += correction[0] / sampled;
    let gap = mean_carry(cand) - mean_carry(base);
    values[REST] = gap - values.iter().take(VALUES).sum::<f64>();
    let errors = errors(base, cand, quick.as_ref());
    let df = (base.len() + cand.len() - 2) as f64;
    Figures { gap, values, reach: errors.map(|error| t_upper(LEVEL.tail(), df) * error) }
}

/// Adds the two parts of ball speed: at the slope between both shots, club speed at their average smash; the rest is
/// smash.
fn with_club(parts: [f64; VALUES], slope: f64, from: &Flown, to: &Flown) -> [f64; ALL] {
    let mut all = [0.0; ALL];
    all.iter_mut().zip(parts).for_each(|(to, part)| *to = part);
    if let (Some(club_from), Some(club_to)) = (from.club_speed, to.club_speed) {
        let smash = 0.5 * (from.values[0] / club_from + to.values[0] / club_to);
        all[CLUB] = slope * smash * (club_to - club_from);
        all[SMASH] = parts[0] - all[CLUB];
    }
    all
}

fn sum(
    pairs: &[Pairing],
    base: &[Flown],
    cand: &[Flown],
    of: impl Fn(&Flown, &Flown) -> [f64; ALL],
) -> [f64; ALL] {
    let mut total = [0.0; ALL];
    for pair in pairs {
        let parts = of(&base[pair.from], &cand[pair.to]);
        total.iter_mut().zip(parts).for_each(|(total, part)| *total += pair.weight * part);
    }
    total
}

/// 1.10 · se of the resamples, all on the quadratic.
fn errors(base: &[Flown], cand: &[Flown], quick: Option<&Quadratic>) -> [f64; ALL] {
    let Some(quick) = quick else { return [f64::INFINITY; ALL] };
    let pairs = split::pair_by_rank(base.len(), cand.len());
    let drawn = bootstrap(&[base.len(), cand.len()], DRAWS, u64::from(SEED), |indices| {
        let chosen = |shots: &[Flown], indices: Option<&Vec<usize>>| -> Vec<Flown> {
            // Shots stand in order of carry: counted out place by place, so do the chosen ones.
            let mut times = vec![0_usize; shots.len()];
            indices.into_iter().flatten().for_each(|&place| times[place] += 1);
            shots.iter().zip(times).flat_map(|(shot, times)| std::iter::repeat_n(*shot, times)).collect()
        };
        let (base_now, cand_now) = (chosen(base, indices.first()), chosen(cand, indices.get(1)));
        let whole = base_now.len() == base.len() && cand_now.len() == cand.len();
        let fresh = if whole { None } else { Some(split::pair_by_rank(base_now.len(), cand_now.len())) };
        let mut values = sum(fresh.as_ref().unwrap_or(&pairs), &base_now, &cand_now, |from, to| {
            let slope = quick.slope_between(0, &from.values, &to.values);
            with_club(quick.parts(&from.values, &to.values), slope, from, to)
        });
        values[REST] =
            mean_carry(&cand_now) - mean_carry(&base_now) - values.iter().take(VALUES).sum::<f64>();
        values.to_vec()
    });
    let fewer = base.len().min(cand.len()) as f64;
    // Resamples scatter by the deviation with divisor n.
    let factor = WIDENING * (fewer / (fewer - 1.0)).sqrt();
    std::array::from_fn(|at| drawn.get(at).map_or(f64::INFINITY, |figure| factor * figure.se()))
}

fn average(shots: &[Flown], i: usize) -> f64 {
    shots.iter().map(|shot| shot.values[i]).sum::<f64>() / shots.len() as f64
}

fn mean_carry(shots: &[Flown]) -> f64 {
    stats::describe::mean(&shots.iter().map(|shot| shot.carry).collect::<Vec<_>>())
}
