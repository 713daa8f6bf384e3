//! How long a test takes: balls, minutes, rests, and what a longer or a shorter one would buy.
//!
//! Times are what a quiet hour in a bay takes: judgement, no source.

use super::chance::Chances;
use super::request::Settled;
use crate::analysis::levels::MOST_PLANNED_ROUNDS;
use serde::Serialize;
use stats::TurnsPaths;

/// From one ball to the next, with a look at where it went.
const SECONDS_A_SHOT: u32 = 40;
/// A ball to warm up with.
const SECONDS_A_WARM_UP_SHOT: u32 = 20;
/// Putting one club down and taking the next.
const SECONDS_A_CHANGE: u32 = 30;
/// A rest between sets.
const SECONDS_A_REST: u32 = 120;
/// Balls after which a rest is due.
const BALLS_BEFORE_A_REST: u32 = 20;
/// Balls that count and fit into about an hour.
const BALLS_AN_HOUR: u32 = 60;
/// A test of fewer rounds says too little to be planned by default.
const FEWEST_USUAL_ROUNDS: u32 = 4;

/// One length of a test.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Length {
    /// Passes through the builds.
    pub rounds: u32,
    /// Balls with the warm-up.
    pub balls: u32,
    /// About so many minutes.
    pub minutes: u32,
    /// Share of tests that find a difference of the margin; null where the spread is not known.
    pub margin_found: Option<f64>,
    /// The same for twice the margin; for the goal `tighter` its square.
    pub double_found: Option<f64>,
    /// Share of tests that call equal builds the same.
    pub same: Option<f64>,
    /// Whether it is the plan's own length.
    pub is_plan: bool,
}

/// Rounds when nothing else is said: about an hour.
pub(super) fn usual_rounds(builds: usize, set: u32) -> u32 {
    let round = u32::try_from(builds).unwrap_or(2).max(1) * set.max(1);
    (BALLS_AN_HOUR / round).clamp(FEWEST_USUAL_ROUNDS, 20)
}

/// Rounds after which a rest is due.
pub(super) fn rests(settled: &Settled, rounds: u32) -> Vec<u32> {
    let a_round = settled.clubs() * settled.set;
    let mut since = 0;
    let mut due = Vec::new();
    for round in 1..rounds {
        since += a_round;
        if since >= BALLS_BEFORE_A_REST {
            due.push(round);
            since = 0;
        }
    }
    due
}

pub(super) fn balls(settled: &Settled, rounds: u32) -> u32 {
    settled.warm_up + settled.clubs() * settled.set * rounds
}

/// Minutes, to the next five.
pub(super) fn minutes(settled: &Settled, rounds: u32) -> u32 {
    let changes = settled.clubs() * rounds;
    let seconds = settled.warm_up * SECONDS_A_WARM_UP_SHOT
        + (balls(settled, rounds) - settled.warm_up) * SECONDS_A_SHOT
        + changes * SECONDS_A_CHANGE
        + SECONDS_A_REST * rests(settled, rounds).iter().map(|_| 1).sum::<u32>();
    (seconds / 60).div_ceil(5) * 5
}

/// The rounds of the plan among fewer and more, ascending.
pub(super) fn wanted(own: u32) -> Vec<u32> {
    let wanted = [own / 2, own * 3 / 4, own, own * 3 / 2, own * 2, own * 3];
    stats::arrange::distinct(wanted.into_iter().filter(|r| (2..=MOST_PLANNED_ROUNDS).contains(r)))
}

/// What tests of these lengths would show.
pub(super) fn lengths(settled: &Settled, rounds: &[u32], invented: Option<&TurnsPaths>) -> Vec<Length> {
    let known = |chance: f64| chance.is_finite().then_some(chance);
    let length = |rounds: u32| {
        let chances = Chances::of(settled, rounds, invented);
        Length {
            rounds,
            balls: balls(settled, rounds),
            minutes: minutes(settled, rounds),
            margin_found: known(chances.found(settled.margin)),
            double_found: known(chances.found(super::times(settled, 2))),
            same: chances.same(),
            is_plan: rounds == settled.rounds,
        }
    };
    rounds.iter().map(|&rounds| length(rounds)).collect()
}
