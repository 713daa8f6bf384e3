//! For a goal of 'straighter' it is decided which of the two is nearer to the line, or said that it is not.

use crate::made::with_goal;
use crate::support::{answer, in_turn};
use judging::verdict::{DecisionKind, Nearer};
use session::question::Goal;
use telling::report::Answer;

fn straighter(own: f64, candidate: f64) -> Answer {
    answer(in_turn("offline", 8, &[own, candidate], 6.0), with_goal("offline", Goal::NearerZero)).answer
}

#[test]
fn seven_right_against_ten_left_differ_and_neither_is_called_the_nearer() {
    for (own, candidate) in [(7.0, -10.0), (-10.0, 7.0), (10.0, -7.0)] {
        let told = straighter(own, candidate);
        assert_eq!(told.decision.kind, DecisionKind::Different, "{}", told.words.headline);
        assert_eq!(told.decision.nearer, Some(Nearer::NotSettled), "{own} {candidate}");
        assert!(
            told.words.headline.ends_with("It stays open which of the two is nearer to zero."),
            "{}",
            told.words.headline
        );
        assert!(!told.words.detail.contains("nearer"), "{}", told.words.detail);
    }
}

#[test]
fn one_that_is_clearly_nearer_is_named_on_either_side() {
    let rows = [
        (25.0, 4.0, Nearer::Candidate),
        (-25.0, -4.0, Nearer::Candidate),
        (-4.0, -25.0, Nearer::Baseline),
        (4.0, 25.0, Nearer::Baseline),
        (30.0, -4.0, Nearer::Candidate),
        (-30.0, 4.0, Nearer::Candidate),
        (4.0, -30.0, Nearer::Baseline),
    ];
    for (own, candidate, nearer) in rows {
        let told = straighter(own, candidate);
        assert_eq!(told.decision.nearer, Some(nearer), "{own} {candidate}");
        let club = if nearer == Nearer::Candidate { "Driver B" } else { "Own driver" };
        assert!(
            told.words.headline.ends_with(&format!("{club} is nearer to zero.")),
            "{}",
            told.words.headline
        );
    }
}

#[test]
fn nearness_is_decided_only_where_it_was_asked_for() {
    let session = in_turn("offline", 8, &[25.0, 4.0], 6.0);
    let told = answer(session, with_goal("offline", Goal::Different)).answer;
    assert_eq!(told.decision.nearer, None);
}
