//! What a plan will show beside the average of one visit: of the typical shot, and of two such visits put together.
//!
//! The typical shot finds a difference as the average finds one that is larger by its sharpness, measured on invented shots and
//! a fact of the measure. Two visits are pairs of invented tests, apart by what a gap usually does from day to day, each put
//! through what answers for days together. `cargo xtask calibrate` (31) holds both against invented golf shots.
//! Limits: nothing of a measure whose shots were not invented, and of clubs changed after every shot: there a fit of typical shots
//! has too little to go by; the typical shot of two clubs only, since the page tells that of one pair; both visits whole.

use super::settled::SettledPlan;
use crate::analysis::typical_takes;
use crate::together::{gap_over_days, usual_spread_of_days};
use stats::{Level, TurnsPaths, TwoVisits, VisitAgain};

/// A true difference of the averages that is found as often as this one of the typical shots; `None` where that is not known.
pub(super) fn as_sharp_as(settled: &SettledPlan, difference: f64) -> Option<f64> {
    settled.spread_of_averages()?;
    let sharpness = settled.measure.facts().typical_sharpness?;
    let rounds = settled.rounds as usize;
    let is_told = settled.candidates() == 1
        && settled.set > 1
        && typical_takes(settled.builds() * settled.set as usize * rounds, rounds);
    is_told.then_some(difference * sharpness)
}

/// The plan hit on two days; `None` where scatters are compared, or the spread is not known.
pub(super) fn two_visits(settled: &SettledPlan, invented: Option<&TurnsPaths>) -> Option<TwoVisits> {
    let shot_sd = settled.spread_of_averages()?.value;
    let level = Level::P95.shared_by(settled.candidates());
    let usual = usual_spread_of_days(&settled.measure.into(), shot_sd);
    let again = VisitAgain { rounds: settled.rounds as usize, level, shot_sd, between: usual.median };
    Some(TwoVisits::new(invented?, again, |days| Some(gap_over_days(days, usual.scale)?.interval(level))))
}
