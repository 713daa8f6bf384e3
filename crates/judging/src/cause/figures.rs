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
    let quick = Quadratic::around(center, forward_yd);
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

#[cfg(test)]
mod tests {
    use super::*;

    /// Shots in order of carry; what is not told is that of every other shot.
    fn shots(n: usize, speed: f64, spin: f64, carry: f64) -> Vec<Flown> {
        let shot = |at: usize| {
            let bent = (at * 7 % n) as f64 / n as f64 - 0.5;
            let values = [speed + 3.0 * bent, 12.0 - 2.0 * bent, spin + 300.0 * bent, 0.0, 0.0];
            let modeled = forward_yd(&values).expect("flies");
            let club_speed = Some(speed / 1.45 + 2.0 * bent);
            Flown { shot: at, build: 0, values, carry: carry + at as f64, modeled, club_speed }
        };
        (0..n).map(shot).collect()
    }

    fn close(a: f64, b: f64, tolerance: f64) {
        assert!((a - b).abs() <= tolerance, "{a} is not {b}");
    }

    #[test]
    fn the_parts_of_a_few_shots_are_those_of_their_flights() {
        let (base, cand) = (shots(7, 150.0, 2500.0, 240.0), shots(10, 156.0, 3100.0, 250.0));
        let found = figures(&base, &cand);
        for i in 0..VALUES {
            let of_pair = |pair: &Pairing| {
                let flights = split::shapley(&base[pair.from].values, &cand[pair.to].values, forward_yd);
                pair.weight * flights.expect("flies")[i]
            };
            close(found.values[i], split::pair_by_rank(7, 10).iter().map(of_pair).sum(), 1e-9);
        }
        close(found.gap, 10.0 + 1.5, 1e-9);
        close(found.values[..=REST].iter().sum(), found.gap, 1e-9);
        close(found.values[CLUB] + found.values[SMASH], found.values[0], 1e-9);
        let ball_speed = found.sized(0);
        close(ball_speed.high - ball_speed.value, found.reach[0], 1e-12);
        close(ball_speed.value - ball_speed.low, found.reach[0], 1e-12);
    }

    /// More pairs than are flown: every second one stands for its neighbor, and the quadratic for what they lack.
    #[test]
    fn of_many_shots_a_sample_is_flown_and_corrects_the_rest() {
        let (base, cand) = (shots(300, 150.0, 2500.0, 240.0), shots(300, 156.0, 3100.0, 240.0));
        let found = figures(&base, &cand);
        let of_flights = |i: usize| -> f64 {
            let part = |(from, to): (&Flown, &Flown)| split::shapley(&from.values, &to.values, forward_yd);
            base.iter().zip(&cand).map(|pair| part(pair).expect("flies")[i]).sum::<f64>() / 300.0
        };
        for i in 0..3 {
            close(found.values[i], of_flights(i), 0.02);
        }
        close(found.values[CLUB] + found.values[SMASH], found.values[0], 1e-9);
    }

    #[test]
    fn club_speed_is_worth_what_it_makes_at_the_average_smash() {
        let mut shots = shots(2, 150.0, 2500.0, 240.0);
        (shots[0].values[0], shots[0].club_speed) = (150.0, Some(100.0));
        (shots[1].values[0], shots[1].club_speed) = (159.0, Some(102.0));
        let all = with_club([12.0, 1.0, 2.0, 3.0, 4.0], 2.0, &shots[0], &shots[1]);
        // Smash 1.5 and 1.5588, 1.5294 between them: two miles an hour of the club are 3.0588 of the ball.
        close(all[CLUB], 6.117_647, 1e-6);
        close(all[SMASH], 12.0 - 6.117_647, 1e-6);
        assert_eq!(all[..VALUES], [12.0, 1.0, 2.0, 3.0, 4.0]);
        shots[1].club_speed = None;
        assert_eq!(with_club([12.0, 1.0, 2.0, 3.0, 4.0], 2.0, &shots[0], &shots[1])[CLUB..], [0.0, 0.0]);
    }

    /// Every launch alike: all of the gap is rest, and as open as the difference of two averages.
    #[test]
    fn the_interval_of_a_part_is_as_wide_as_its_shots_leave_it() {
        let alike = |n: usize, carry: f64, step: f64| {
            let mut shots = shots(n, 150.0, 2500.0, carry);
            let first = shots[0];
            for (at, shot) in shots.iter_mut().enumerate() {
                *shot = Flown { carry: carry + step * at as f64, ..first };
            }
            shots
        };
        let variance = |shots: &[Flown]| {
            let carries: Vec<f64> = shots.iter().map(|shot| shot.carry).collect();
            stats::describe::sum_of_squares(&carries) / (carries.len() - 1) as f64
        };
        for (n, m) in [(12, 15), (5, 5)] {
            let (base, cand) = (alike(n, 240.0, 2.0), alike(m, 244.0, 1.5));
            let found = figures(&base, &cand);
            let se = (variance(&base) / n as f64 + variance(&cand) / m as f64).sqrt();
            let wanted = t_upper(LEVEL.tail(), (n + m - 2) as f64) * WIDENING * se;
            close(found.reach[REST] / wanted, 1.0, 0.06);
            close(found.reach[0], 0.0, 1e-9);
            close(found.values[0], 0.0, 1e-9);
        }
    }
}
