//! What a longer or a shorter test would buy.

use super::chance::Chances;
use super::hour::{balls, minutes};
use super::limits::limits;
use super::settled::SettledPlan;
use serde::Serialize;
use stats::TurnsPaths;

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

/// The rounds of the plan among fewer and more, ascending.
pub(super) fn wanted(own: u32) -> Vec<u32> {
    let wanted = [own / 2, own * 3 / 4, own, own * 3 / 2, own * 2, own * 3];
    arrange::distinct(wanted.into_iter().filter(|&rounds| limits().rounds.holds(rounds)))
}

/// What tests of these lengths would show.
pub(super) fn lengths(settled: &SettledPlan, rounds: &[u32], invented: Option<&TurnsPaths>) -> Vec<Length> {
    let known = |chance: f64| chance.is_finite().then_some(chance);
    let length = |rounds: u32| {
        let chances = Chances::of(settled, rounds, invented);
        Length {
            rounds,
            balls: balls(settled, rounds),
            minutes: minutes(settled, rounds),
            margin_found: known(chances.found(settled.margin.value())),
            double_found: known(chances.found(settled.margin_times(2))),
            same: chances.same(),
            is_plan: rounds == settled.rounds,
        }
    };
    rounds.iter().map(|&rounds| length(rounds)).collect()
}

#[cfg(test)]
mod tests {
    use super::wanted;

    #[test]
    fn lengths_go_from_half_a_plan_to_three_times_as_far_as_a_plan_can() {
        assert_eq!(wanted(8), [4, 6, 8, 12, 16, 24]);
        assert_eq!(wanted(7), [3, 5, 7, 10, 14, 21]);
        assert_eq!(wanted(2), [2, 3, 4, 6], "one round compares nothing");
        assert_eq!(wanted(40), [20, 30, 40, 60]);
    }
}
