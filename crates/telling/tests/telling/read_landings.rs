//! What readers of generated answers found false of landings, and of shots that do not scatter.

use crate::made::{also, around, noise, rounds};
use crate::read_last::report;
use crate::support::{asking, empty, one_after_the_other, push};
use judging::luck::Showing;
use judging::trust::Seen;
use judging::verdict::DecisionKind;
use session::{Order, Session};
use telling::landing::{Landing, LandingRequest};
use telling::luck::LuckRequest;
use text::Voice;

fn landed(session: &Session) -> Landing {
    let session = session.clone();
    let request = LandingRequest {
        session,
        baseline: 0,
        candidate: Some(1),
        fairway: None,
        aim: None,
        stopping: None,
        hand: None,
    };
    telling::landing::landing(&request, &Voice::english()).expect("a landing")
}

/// The same gap in every lap, whatever else scatters.
fn without_scatter(laps: u32) -> Session {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for lap in 0..laps {
        for build in 0..2 {
            (0..3).for_each(|_| {
                push(&mut session, build, Some(lap + 1), f64::from(240 + 2 * lap) + 9.0 * build as f64)
            });
        }
    }
    also(&mut session, "offline", |at, _| Some(15.0 * noise(at)));
    session
}

#[test]
fn what_does_not_scatter_shows_no_drift_no_ovals_and_no_luck() {
    let session = without_scatter(5);
    let told = report(&session, &asking("carry"));
    assert_eq!(told.answer.decision.kind, DecisionKind::CannotAnswer);
    assert!(told.trust.iter().find(|found| matches!(found.seen, Seen::Drift { .. })).is_none());
    let request = LuckRequest {
        session: session.clone(),
        question: asking("carry"),
        shown: None,
        showing: Showing::Picked,
    };
    let refused = telling::luck::luck(&request, &Voice::english()).expect_err("no luck");
    assert!(refused.message.contains("Every lap shows the same gap in carry"), "{}", refused.message);
    let flat = landed(&session);
    assert!(flat.builds.iter().all(|build| build.facts.ovals.is_empty()));
    assert!(flat.words.ovals.contains("the carry of these shots does not scatter"), "{}", flat.words.ovals);
    assert!(!flat.words.centers.contains("Two identical clubs"), "{}", flat.words.centers);
    // Scatter brings all of them back.
    let mut session = session;
    session
        .shots
        .iter_mut()
        .enumerate()
        .for_each(|(at, shot)| shot.values[0] = shot.values[0].map(|v| v + noise(at)));
    let told = report(&session, &asking("carry"));
    assert!(told.trust.iter().find(|found| matches!(found.seen, Seen::Drift { .. })).is_some());
    let there = landed(&session);
    assert!(there.words.ovals.starts_with("Ovals:") && there.words.centers.contains("Two identical clubs"));
}

#[test]
fn a_landing_of_long_turns_keeps_the_caution_of_blocks() {
    let of = |turn: usize| {
        let set = |r: usize| {
            let carry = |build: usize| around(250.0 + 2.0 * build as f64, 6.0, turn, 3 * r + build);
            vec![carry(0), carry(1)]
        };
        let mut session = rounds("carry", &(0..36 / turn).map(set).collect::<Vec<_>>());
        also(&mut session, "offline", |at, shot| {
            Some(if shot.build == 0 { 0.0 } else { 28.0 } + 9.0 * noise(at))
        });
        landed(&session).words
    };
    let (long, short) = (of(12), of(3));
    assert!(long.centers.contains("changed so seldom") && !short.centers.contains("changed so seldom"));
    assert!(
        long.detail.contains("with nothing allowed for clubs being changed so seldom"),
        "{}",
        long.detail
    );
    assert!(!short.detail.contains("nothing allowed"), "{}", short.detail);
    assert!(
        long.headline.contains("in these shots") && !short.headline.contains("in these shots"),
        "{}",
        long.headline
    );
}

#[test]
fn a_landing_of_some_of_the_shots_says_of_how_many_and_stays_one_sentence() {
    let mut session = one_after_the_other("carry", &[10, 10], &[250.0, 252.0], 8.0);
    also(&mut session, "offline", |at, _| (at % 2 == 0).then(|| 9.0 * noise(at) + 4.0));
    let told = landed(&session);
    let miss = &told.builds[0].words.miss;
    assert!(miss.contains("on average over the 5 shots with both numbers"), "{miss}");
    let mut session = one_after_the_other("carry", &[10, 10], &[250.0, 252.0], 8.0);
    also(&mut session, "offline", |at, _| Some(if at % 2 == 0 { 9.0 } else { -9.0 }));
    let told = landed(&session);
    assert!(
        told.builds[0].words.miss.starts_with("In the middle on average, "),
        "{}",
        told.builds[0].words.miss
    );
    assert!(
        told.words.alternative.contains("Own driver: in the middle on average"),
        "{}",
        told.words.alternative
    );
}
