//! Whether an answer hangs on a few shots: taken from the ends that turn it soonest, in either direction, three at most.

use crate::made::{around, blocks, decided, rounds, set_aside, with_margin};
use crate::support::{answer, asking};
use judging::verdict::{Decision, DecisionKind};
use session::Session;
use session::question::Question;

/// Carry in six rounds of three: the baseline around 250, the candidate `lead` yards ahead, and one shot far off.
fn session(lead: f64, far: Option<(usize, f64)>) -> Session {
    let sets = |r: usize| vec![around(250.0, 4.0, 3, 5 * r), around(250.0 + lead, 4.0, 3, 5 * r + 2)];
    let mut session = rounds("carry", &(0..6).map(sets).collect::<Vec<_>>());
    if let Some((build, by)) = far {
        let shot = session.shots.iter_mut().rfind(|shot| shot.build == build).expect("shots");
        shot.values[0] = shot.values[0].map(|value| value + by);
    }
    session
}

fn removals(session: &Session, question: Question) -> Option<usize> {
    answer(session.clone(), question).removals_to_flip
}

/// Without a build's lowest or highest shot.
fn cut(session: &Session, build: usize, lowest: bool) -> Session {
    let mut rest = session.clone();
    let value = |at: &usize| rest.shots[*at].values[0].map_or(f64::NAN, |v| if lowest { v } else { -v });
    let of_build = (0..rest.shots.len()).filter(|&at| rest.shots[at].build == build);
    let end = of_build.min_by(|a, b| value(a).total_cmp(&value(b))).expect("shots");
    rest.shots.remove(end);
    rest
}

fn other(one: &Decision, two: &Decision) -> bool {
    (one.kind, one.direction) != (two.kind, two.direction)
}

/// Shots taken out one after the other, each from the end that turns the answer sooner, until it turns; up to four.
fn step_by_step(session: &Session, question: &Question) -> Option<usize> {
    let whole = answer(session.clone(), question.clone());
    let ahead = whole.answer.estimate.as_ref().is_some_and(|e| e.value > 0.0);
    // A difference is taken away, an answer that is none is brought nearer to one.
    let take_away = whole.answer.decision.kind == DecisionKind::Different;
    let cut_lowest = ahead != take_away;
    let mut rest = session.clone();
    (1..=4).find(|_| {
        let tried = [cut(&rest, 1, cut_lowest), cut(&rest, 0, !cut_lowest)];
        let chance = |session: &Session| {
            let estimate = answer(session.clone(), question.clone()).answer.estimate;
            estimate.map_or(1.0, |e| if take_away { -e.chance_if_same } else { e.chance_if_same })
        };
        let [of_candidate, of_baseline] = tried;
        rest = if chance(&of_candidate) < chance(&of_baseline) { of_candidate } else { of_baseline };
        other(&decided(&rest, question.clone()), &whole.answer.decision)
    })
}

/// Leads from none to ten yards, on either side.
fn leads() -> impl Iterator<Item = f64> {
    (0..=20).flat_map(|step| [0.5 * f64::from(step), -0.5 * f64::from(step)])
}

#[test]
fn the_end_that_helps_most_is_taken_again_and_again_and_four_are_too_many() {
    let mut counted = [0; 5];
    for far in [None, Some((1, 9.0)), Some((1, -9.0)), Some((0, 9.0)), Some((0, -9.0))] {
        for lead in leads() {
            let session = session(lead, far);
            let expected = step_by_step(&session, &asking("carry"));
            counted[expected.unwrap_or(0)] += 1;
            let found = removals(&session, asking("carry"));
            assert_eq!(found, expected.filter(|&count| count <= 3), "{lead} {far:?}");
        }
    }
    assert!(counted.iter().all(|&count| count > 0), "every case came up: {counted:?}");
}

#[test]
fn removal_for_cannot_tell_goes_toward_the_nearer_answer() {
    // One shot far off hides a lead of either build, whichever build hit it.
    for (lead, far) in [(5.0, (1, -30.0)), (5.0, (0, 30.0)), (-5.0, (1, 30.0)), (-5.0, (0, -30.0))] {
        let session = session(lead, Some(far));
        let question = || with_margin("carry", 1.0);
        assert_eq!(decided(&session, question()).kind, DecisionKind::CannotTell, "{lead} {far:?}");
        assert_eq!(removals(&session, question()), Some(1), "{lead} {far:?}");
    }
}

#[test]
fn removal_for_different_takes_the_lead_away() {
    for way in [1.0, -1.0] {
        // The smallest lead that shows.
        let step = (0..400).find(|&step| {
            decided(&session(way * 0.05 * f64::from(step), None), asking("carry")).kind
                == DecisionKind::Different
        });
        let lead = way * 0.05 * f64::from(step.expect("a lead that shows"));
        assert_eq!(removals(&session(lead, None), asking("carry")), Some(1));
        assert_eq!(removals(&session(3.0 * lead, None), asking("carry")), None);
    }
}

#[test]
fn removal_for_the_same_goes_away_from_zero() {
    let question = || with_margin("carry", 6.0);
    let mut turned = 0;
    for lead in leads() {
        let session = session(lead, None);
        if decided(&session, question()).kind != DecisionKind::Same {
            continue;
        }
        let expected = step_by_step(&session, &question()).filter(|&count| count <= 3);
        assert_eq!(removals(&session, question()), expected, "{lead}");
        turned += usize::from(expected == Some(1));
    }
    assert!(turned > 0, "some hang on one shot: {turned}");
}

#[test]
fn shots_set_aside_are_tried_like_all_others() {
    // A clear lead hangs on no three shots; without all that were set aside there would be none left to take away.
    for way in [1.0, -1.0] {
        let whole = session(8.0 * way, None);
        assert_eq!(removals(&whole, asking("carry")), None);
        let mut marked = whole.clone();
        set_aside(&mut marked, |_, shot| {
            let over = shot.values[0].map_or(0.0, |v| (v - 250.0 - 8.0 * way * shot.build as f64) * way);
            if shot.build == 1 { over > -1.0 } else { over < 1.0 }
        });
        assert_ne!(decided(&marked, asking("carry")).kind, DecisionKind::Different, "they were needed");
        assert_eq!(removals(&marked, asking("carry")), None);
    }
    let hangs = session(5.0, Some((1, -30.0)));
    let mut marked = hangs.clone();
    set_aside(&mut marked, |at, _| at % 7 == 3);
    assert_eq!(removals(&marked, asking("carry")), removals(&hangs, asking("carry")));
}

#[test]
fn scatter_is_not_tried() {
    let session = blocks("carry", &[around(250.0, 4.0, 12, 0), around(250.0, 9.0, 12, 5)]);
    let question = Question { goal: Some(session::question::Goal::Tighter), ..asking("carry") };
    assert_eq!(removals(&session, question), None);
}
