//! What a plan will show beside the average of one visit: of the typical shot, and of two such visits put together.
//!
//! The typical shot finds a difference as the average finds one that is larger by its sharpness, measured on invented shots and
//! a fact of the measure. Two visits are pairs of invented tests, apart by what a gap usually does from day to day, each put
//! through what answers for days together. `cargo xtask calibrate` (31) holds both against invented golf shots.
//! Limits: nothing of a measure whose shots were not invented, and of clubs changed after every shot: there a fit of typical shots
//! has too little to go by; nothing below 15 shots each; the typical shot of two clubs only, since the page tells that of one pair; both visits whole.

use super::limits::USUAL_SET;
use super::settled::SettledPlan;
use crate::analysis::typical_takes;
use crate::together::{gap_over_days, usual_spread_of_days};
use stats::{Level, TurnsPaths, TwoVisits, VisitAgain, turn_widening};

/// Shots with each build from which on the sharpness was measured: of fewer it promises up to six points too much.
const FEWEST_SHOTS: u32 = 15;

/// A true difference of the averages that is found as often as this one of the typical shots; `None` where that is not known.
pub(super) fn as_sharp_as(settled: &SettledPlan, difference: f64) -> Option<f64> {
    settled.spread_of_averages()?;
    let sharpness = settled.measure.facts().typical_sharpness?;
    let rounds = settled.rounds as usize;
    let is_told = settled.candidates() == 1
        && settled.set > 1
        && settled.set * settled.rounds >= FEWEST_SHOTS
        && typical_takes(settled.builds() * settled.set as usize * rounds, rounds);
    // Longer turns widen the average's interval alone.
    let by_turns = turn_widening(f64::from(settled.set)) / turn_widening(f64::from(USUAL_SET));
    is_told.then_some(difference * sharpness * by_turns)
}

/// The plan hit on two days; `None` where scatters are compared, or the spread is not known.
pub(super) fn two_visits(settled: &SettledPlan, invented: Option<&TurnsPaths>) -> Option<TwoVisits> {
    let shot_sd = settled.spread_of_averages()?.value;
    let level = Level::P95.shared_by(settled.candidates());
    let usual = usual_spread_of_days(&settled.measure.into(), shot_sd);
    let again = VisitAgain { rounds: settled.rounds as usize, level, shot_sd, between: usual.median };
    TwoVisits::new(invented?, again, |days| Some(gap_over_days(days, usual.scale)?.interval(level)))
}

#[cfg(test)]
mod tests {
    use super::super::{FoundFacts, plan};
    use session::plan::PlanRequest;
    use session::question::Goal;

    fn asked(builds: usize, measure: &str) -> PlanRequest {
        let names = (0..builds).map(|build| format!("Driver {build}")).collect();
        PlanRequest { set: Some(3), rounds: Some(8), ..PlanRequest::of(names, measure.into()) }
    }

    fn seen(request: &PlanRequest) -> Vec<FoundFacts> {
        plan(request).expect("a plan").power.expect("a known spread").seen
    }

    #[test]
    fn typical_shots_show_more_where_they_are_sharper_and_less_where_they_are_not() {
        let typical = |found: &FoundFacts| found.typical.expect("told");
        assert!(seen(&asked(2, "carry"))[..2].iter().all(|found| typical(found) > found.chance + 0.02));
        assert!(seen(&asked(2, "offline"))[..2].iter().all(|found| typical(found) < found.chance));
    }

    #[test]
    fn nothing_is_said_of_typical_shots_that_nobody_measured_or_that_the_page_will_not_tell() {
        let none = |request: PlanRequest| seen(&request).iter().all(|found| found.typical.is_none());
        assert!(none(asked(2, "total")));
        assert!(none(asked(3, "carry")));
        assert!(none(PlanRequest { set: Some(1), ..asked(2, "carry") }));
        // Twelve shots each, and fifteen.
        assert!(none(PlanRequest { rounds: Some(4), ..asked(2, "carry") }));
        assert!(!none(PlanRequest { rounds: Some(5), ..asked(2, "carry") }));
        // As many shots as are fitted at all.
        assert!(!none(PlanRequest { set: Some(5), rounds: Some(60), ..asked(2, "carry") }));
    }

    #[test]
    fn scatter_has_neither() {
        let found = seen(&PlanRequest { goal: Some(Goal::Tighter), ..asked(2, "carry") });
        assert!(found.iter().all(|found| found.typical.is_none() && found.two_visits.is_none()));
    }

    /// A gap of one day is found more surely than the same gap over days, which moves from one to the next.
    #[test]
    fn two_visits_find_more_of_larger_gaps_and_never_surely_what_days_may_move_by() {
        let visits: Vec<f64> =
            seen(&asked(2, "carry")).iter().map(|found| found.two_visits.expect("told")).collect();
        assert!(visits.windows(2).all(|pair| pair[0] < pair[1]), "{visits:?}");
        assert!(visits[0] < 0.5 && visits[2] > 0.6, "{visits:?}");
    }

    #[test]
    fn with_more_clubs_two_visits_are_held_to_more() {
        let of = |builds| seen(&asked(builds, "carry"))[1].two_visits.expect("told");
        assert!(of(4) < of(2));
    }
}
