//! What is said of more shots: a number that tells, where one does; how far they narrow a size, where none settles it.

use crate::made::with_margin;
use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::analysis::MoreShots;
use judging::verdict::{DecisionKind, Matters};
use session::Session;
use telling::report::Answer;

fn asked(session: Session, margin: f64) -> Answer {
    answer(session, with_margin("carry", margin)).answer
}

fn more_shots(answer: &Answer) -> MoreShots {
    answer.estimate.as_ref().expect("an estimate").more_shots.expect("more shots are called for")
}

#[test]
fn near_the_margin_no_number_of_shots_is_promised_to_settle_it() {
    let open = asked(in_turn("carry", 5, &[250.0, 257.0], 6.0), 5.0);
    assert_eq!((open.decision.kind, open.decision.matters), (DecisionKind::Different, Some(Matters::Maybe)));
    let MoreShots::Narrow { shots, half_width } = more_shots(&open) else {
        panic!("the size is open: {:?}", open.estimate)
    };
    let next = &open.words.next;
    assert!(
        next.contains(&format!("{shots} shots")) && next.contains("would narrow it to \u{b1} "),
        "{next}"
    );
    assert!(next.contains("no number of shots settles whether it reaches that"), "{next}");
    let estimate = open.estimate.expect("an estimate");
    assert!(half_width < 0.9 * 0.5 * (estimate.high - estimate.low), "it narrows");
}

#[test]
fn a_long_session_with_an_open_size_is_not_sent_to_the_same_test_again() {
    let open = asked(in_turn("carry", 24, &[250.0, 256.0], 6.0), 6.0);
    assert_eq!(open.decision.matters, Some(Matters::Maybe));
    assert_eq!(more_shots(&open), MoreShots::HardlyNarrow);
    assert!(open.words.next.contains("not surely narrow it by much"), "{}", open.words.next);
}

#[test]
fn a_number_that_tells_says_how_often_it_does() {
    let open = asked(in_turn("carry", 4, &[250.0, 251.0], 9.0), 7.0);
    assert_eq!(open.decision.kind, DecisionKind::CannotTell);
    let MoreShots::Tell { shots } = more_shots(&open) else { panic!("{:?}", open.estimate) };
    assert!(open.words.next.contains(&format!("About {shots} shots")), "{}", open.words.next);
    assert!(open.words.next.contains("8 of 10 such tests"), "{}", open.words.next);
    assert!(!open.words.next.contains("settle"), "{}", open.words.next);
}

#[test]
fn five_rounds_of_three_are_promised_nothing_and_the_number_that_tells_is_named() {
    // A lead that the order could explain, and one beyond it.
    for (lead, kind) in [(9.0, DecisionKind::CannotTell), (30.0, DecisionKind::Different)] {
        let told = asked(one_after_the_other("carry", &[15, 15], &[250.0, 250.0 + lead], 6.0), 10.0);
        assert_eq!(told.decision.kind, kind, "{}", told.words.headline);
        let MoreShots::Tell { shots } = more_shots(&told) else { panic!("{:?}", told.estimate) };
        assert!(told.words.next.contains(&format!("about {shots} shots")), "{}", told.words.next);
        assert!(!told.words.next.contains("5 laps of 3"), "{}", told.words.next);
    }
    // More than a visit holds: the plan says how many.
    let many = asked(one_after_the_other("carry", &[15, 15], &[250.0, 259.0], 9.0), 2.0);
    assert!(matches!(more_shots(&many), MoreShots::TooMany { .. }), "{:?}", many.estimate);
    assert!(many.words.next.contains("The plan of a fair test says"), "{}", many.words.next);
}

#[test]
fn fifteen_shots_are_not_called_useful() {
    let few = answer(one_after_the_other("carry", &[2, 2], &[250.0, 259.0], 9.0), asking("carry")).answer;
    assert_eq!(few.decision.kind, DecisionKind::CannotAnswer);
    assert!(!few.words.next.contains("15"), "{}", few.words.next);
}
