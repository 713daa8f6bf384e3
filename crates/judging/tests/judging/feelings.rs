//! When the shots leave the choice to feel, and what a feeling is held against.

use crate::support::{also, around, asking, blocks, in_turn, judged, push, with_margin};
use judging::feel::{Agreement, FeltFacts, LeftOpen, OwnSay, feel};
use session::question::{Goal, LookedAfter, Question, Stopping};
use session::{Order, Session};

fn left_open(session: &Session, question: &Question) -> Option<LeftOpen> {
    feel(&OwnSay::default(), &judged(session, question)).expect("builds that are there").left_open
}

fn longer(session: &Session, question: &Question, build: usize) -> FeltFacts {
    let say = OwnSay { longer: Some(build), ..OwnSay::default() };
    feel(&say, &judged(session, question)).expect("builds that are there").felt[0]
}

#[test]
fn feel_chooses_only_when_no_round_of_the_plan_is_left() {
    let session = in_turn("carry", 4, &[250.0, 252.0], 9.0);
    let planned = |planned_rounds| Question {
        stopping: Stopping::Planned { planned_rounds, looked_after: LookedAfter::Rounds(vec![]) },
        ..asking("carry")
    };
    assert_eq!(left_open(&session, &planned(5)), None);
    assert_eq!(left_open(&session, &planned(4)), Some(LeftOpen::CannotTellBet));
}

#[test]
fn what_was_felt_is_all_there_is_to_go_by_only_where_nothing_is_bet() {
    let session = in_turn("offline", 4, &[4.0, 6.0], 9.0);
    let nearer = Question { goal: Some(Goal::NearerZero), ..asking("offline") };
    assert_eq!(left_open(&session, &nearer), Some(LeftOpen::CannotTell), "nothing is bet on nearer to zero");
    let left = Question { goal: Some(Goal::Lower), ..asking("offline") };
    assert_eq!(left_open(&session, &left), Some(LeftOpen::CannotTellBet));
}

#[test]
fn a_difference_too_small_to_matter_is_left_to_feel_and_counts_as_none() {
    let session = in_turn("carry", 8, &[250.0, 258.0], 4.0);
    for (margin, open, felt) in
        [(40.0, Some(LeftOpen::TooSmall), Agreement::Same), (2.0, None, Agreement::Shown)]
    {
        let question = with_margin("carry", margin);
        assert_eq!(left_open(&session, &question), open, "{margin}");
        assert_eq!(longer(&session, &question, 1).agreement, felt, "{margin}");
    }
}

#[test]
fn a_difference_on_another_measure_leaves_nothing_to_feel() {
    let mut session = in_turn("carry", 6, &[250.0, 250.0], 4.0);
    assert!(left_open(&session, &with_margin("carry", 30.0)).is_some());
    also(&mut session, "spin_rate", |at, shot| Some(2500.0 + 900.0 * shot.build as f64 + (at % 5) as f64));
    assert_eq!(left_open(&session, &with_margin("carry", 30.0)), None);
}

/// The longer club scatters less, the shorter one more: a question about scatter does not turn 'longer' into 'tighter'.
#[test]
fn longer_is_of_averages_whatever_was_asked_of_carry() {
    for (averages, felt) in [([250.0, 285.0], Agreement::Shown), ([285.0, 250.0], Agreement::Opposite)] {
        for scatter in [[12.0, 3.0], [3.0, 12.0]] {
            let of = |build: usize| around(averages[build], scatter[build], 24, 5 * build);
            let session = blocks("carry", &[of(0), of(1)]);
            let tighter = Question { goal: Some(Goal::Tighter), ..asking("carry") };
            assert_eq!(longer(&session, &tighter, 1).agreement, felt, "{averages:?} {scatter:?}");
            assert_eq!(longer(&session, &tighter, 1), longer(&session, &asking("carry"), 1));
        }
    }
}

/// Which way it missed says nothing of how straight it was.
#[test]
fn straighter_is_nearer_to_the_line_and_tighter_where_that_was_asked() {
    let straighter = |session: &Session, question: &Question, build| {
        let say = OwnSay { straighter: Some(build), ..OwnSay::default() };
        feel(&say, &judged(session, question)).expect("builds that are there").felt[0].agreement
    };
    let session = blocks("offline", &[around(-30.0, 3.0, 24, 0), around(-4.0, 12.0, 24, 5)]);
    for goal in [None, Some(Goal::NearerZero), Some(Goal::Higher), Some(Goal::Lower), Some(Goal::Different)] {
        let question = Question { goal, ..asking("offline") };
        let felt = [0, 1].map(|build| straighter(&session, &question, build));
        assert_eq!(felt, [Agreement::Opposite, Agreement::Shown], "{goal:?}");
    }
    let tighter = Question { goal: Some(Goal::Tighter), ..asking("offline") };
    let felt = [0, 1].map(|build| straighter(&session, &tighter, build));
    assert_eq!(felt, [Agreement::Shown, Agreement::Opposite]);
}

#[test]
fn too_few_shots_measure_no_feeling() {
    let session = blocks("carry", &[vec![250.0, 251.0], vec![260.0, 262.0]]);
    assert_eq!(longer(&session, &asking("carry"), 1).agreement, Agreement::NotMeasured);
}

/// The felt club is shorter than one that was hit in turn with it, and longer than one that was hit after both: the
/// order of the second pair says nothing of what the first one shows.
#[test]
fn what_one_pair_shows_is_no_hint_for_the_order_of_another() {
    let mut session = in_turn("carry", 6, &[250.0, 280.0], 4.0);
    session.builds.push(session::Build { name: "Driver C".into() });
    (0..12).for_each(|at| push(&mut session, 2, Some(7), 200.0 + f64::from(at % 4)));
    assert_eq!(session.order, Order::Interleaved);
    let felt = longer(&session, &asking("carry"), 0);
    assert_eq!((felt.agreement, felt.is_hint), (Agreement::Opposite, false));
}

#[test]
fn the_club_in_question_is_held_against_every_other_one() {
    let session = in_turn("carry", 6, &[250.0, 252.0, 290.0], 4.0);
    let question = Question { candidate: Some(2), ..asking("carry") };
    assert_eq!(longer(&session, &question, 2).agreement, Agreement::Shown);
}
