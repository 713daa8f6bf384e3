//! Who leads among several, and whose lead is told honestly.

use crate::support::{asking, in_turn, judged};
use judging::honest_lead::honest_lead;
use session::question::{Goal, Question};

#[test]
fn a_club_that_falls_behind_has_no_lead_however_far_it_falls() {
    // Far behind the baseline, and farther from it than the club that is ahead.
    for (goal, averages, leads) in [
        (Goal::Higher, [250.0, 230.0, 255.0], false),
        (Goal::Higher, [250.0, 270.0, 255.0], true),
        (Goal::Lower, [250.0, 270.0, 245.0], false),
        (Goal::Lower, [250.0, 230.0, 245.0], true),
        (Goal::Different, [250.0, 230.0, 255.0], true),
    ] {
        let session = in_turn("carry", 6, &averages, 5.0);
        let question = Question { goal: Some(goal), candidate: Some(1), ..asking("carry") };
        let judged = judged(&session, &question);
        assert_eq!(honest_lead(&judged).is_some(), leads, "{goal:?} {averages:?}");
    }
}

#[test]
fn the_headline_is_the_candidate_farthest_toward_the_goal() {
    for (measure, goal, averages, leader) in [
        ("carry", Goal::Higher, [250.0, 258.0, 262.0], 2),
        ("carry", Goal::Lower, [250.0, 258.0, 262.0], 1),
        ("carry", Goal::Different, [250.0, 240.0, 255.0], 1),
        // Not the one with the largest difference, nor the one farthest to one side.
        ("offline", Goal::NearerZero, [30.0, -12.0, 4.0], 2),
        ("offline", Goal::NearerZero, [-30.0, -4.0, 12.0], 1),
    ] {
        let session = in_turn(measure, 6, &averages, 5.0);
        let question = Question { goal: Some(goal), ..asking(measure) };
        let judged = judged(&session, &question);
        assert_eq!(judged.headline().expect("a candidate").candidate, leader, "{goal:?} {averages:?}");
    }
}
