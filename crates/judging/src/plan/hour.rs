//! What an hour in a bay holds: balls, minutes, rests, and how many rounds are usual.
//!
//! Times are what a quiet hour in a bay takes: judgement, no source.

use super::settled::SettledPlan;

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
/// More balls than this, or more minutes, are too much for one day. Golfers' rule of thumb; no study behind it.
const MOST_BALLS_A_DAY: u32 = 100;
const MOST_MINUTES_A_DAY: u32 = 90;
/// A test of fewer rounds says too little to be planned by default.
const FEWEST_USUAL_ROUNDS: u32 = 4;
/// More rounds than this are a morning of changing clubs.
const MOST_USUAL_ROUNDS: u32 = 20;

/// Rounds when nothing else is said: about an hour.
pub(super) fn usual_rounds(builds: usize, set: u32) -> u32 {
    let round = u32::try_from(builds).unwrap_or(2).max(1) * set.max(1);
    (BALLS_AN_HOUR / round).clamp(FEWEST_USUAL_ROUNDS, MOST_USUAL_ROUNDS)
}

/// Rounds after which a rest is due.
pub(super) fn rests(settled: &SettledPlan, rounds: u32) -> Vec<u32> {
    let mut since = 0;
    let mut due = Vec::new();
    for round in 1..rounds {
        since += settled.round();
        if since >= BALLS_BEFORE_A_REST {
            due.push(round);
            since = 0;
        }
    }
    due
}

/// Balls with the warm-up.
pub(super) fn balls(settled: &SettledPlan, rounds: u32) -> u32 {
    settled.warm_up + settled.round() * rounds
}

/// Over how many days so many balls and minutes are to be split, by whole rounds.
#[must_use]
pub fn days(balls: u32, minutes: u32) -> u32 {
    balls.div_ceil(MOST_BALLS_A_DAY).max(minutes.div_ceil(MOST_MINUTES_A_DAY)).max(1)
}

/// Minutes, to the next five.
pub(super) fn minutes(settled: &SettledPlan, rounds: u32) -> u32 {
    let changes: u32 = (0..settled.builds()).map(|_| rounds).sum();
    let seconds = settled.warm_up * SECONDS_A_WARM_UP_SHOT
        + (balls(settled, rounds) - settled.warm_up) * SECONDS_A_SHOT
        + changes * SECONDS_A_CHANGE
        + SECONDS_A_REST * rests(settled, rounds).iter().map(|_| 1).sum::<u32>();
    (seconds / 60).div_ceil(5) * 5
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn more_than_a_hundred_balls_or_ninety_minutes_is_more_than_a_day() {
        for (balls, minutes, wanted) in
            [(70, 60, 1), (100, 90, 1), (101, 90, 2), (100, 95, 2), (310, 270, 4), (610, 525, 7), (0, 0, 1)]
        {
            assert_eq!(days(balls, minutes), wanted, "{balls} balls, {minutes} minutes");
        }
    }
}
