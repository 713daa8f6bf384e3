//! A value that is probably a slip is asked about, at the top and with its row; a club's ordinary bad shot is not.

use crate::made::{also, mean, noise, summary};
use crate::support::{answer, asking, empty, in_turn};
use judging::trust::{Odd, Seen, Weight};
use session::{Session, SummaryOf};
use telling::report::{Ask, OverlayKind, Report};
use text::{Language, Units, Voice};

fn odd(report: &Report) -> Vec<&Seen> {
    report.trust.iter().map(|f| &f.seen).filter(|seen| matches!(seen, Seen::OddValue { .. })).collect()
}

/// Five rounds of three, with one shot of the candidate mistyped.
fn with_value(value: f64) -> (Session, usize) {
    let mut session = in_turn("carry", 5, &[242.0, 250.0], 6.0);
    let at = session.shots.iter().rposition(|shot| shot.build == 1).expect("a shot");
    session.shots[at].values[0] = Some(value);
    (session, at)
}

#[test]
fn a_value_that_no_ball_flies_is_the_first_thing_said() {
    let (session, at) = with_value(2420.0);
    let report = answer(session, asking("carry"));
    let first = report.trust.first().expect("findings");
    assert_eq!(first.weight, Weight::Serious);
    assert!(
        matches!(first.seen, Seen::OddValue { shot: Some(shot), because: Odd::OutOfRange { .. }, .. } if shot == at)
    );
    let top = report.overlays.first().expect("a warning at the top");
    assert_eq!((top.kind, top.asks), (OverlayKind::OddValue, Some(Ask::Shot { shot: at })));
    assert_eq!(top.headline, format!("Is this right? Shot {}, Driver B: carry 2,420\u{a0}yd.", at + 1));
    assert!(top.detail.starts_with("Carry lies between 0\u{a0}yd and 400\u{a0}yd"), "{}", top.detail);
}

#[test]
fn nobody_is_sent_to_hit_more_shots_than_can_be_hit() {
    let (session, _) = with_value(2420.0);
    let words = answer(session, asking("carry")).answer.words;
    assert!(words.next.contains("check the value in doubt"), "{}", words.next);
    assert!(!words.next.contains("000") && !words.next.contains(','), "{}", words.next);
    // Scatter that no slip makes.
    let wide = in_turn("carry", 4, &[240.0, 241.0], 90.0);
    let words = answer(wide, asking("carry")).answer.words;
    assert!(words.next.contains("more shots than anybody can hit"), "{}", words.next);
    assert!(!words.next.contains("000") && !words.next.contains(','), "{}", words.next);
}

#[test]
fn a_shot_that_alone_moves_the_answer_by_more_than_matters_is_asked_about() {
    let (session, at) = with_value(142.0);
    let found = answer(session.clone(), asking("carry"));
    let [Seen::OddValue { shot, because: Odd::MovesTheAnswer { by, margin }, others: 0, .. }] =
        odd(&found)[..]
    else {
        panic!("one value: {:?}", odd(&found));
    };
    assert_eq!(*shot, Some(at));
    let mut rest = session;
    rest.shots.remove(at);
    let value = |report: &Report| report.answer.estimate.as_ref().expect("an estimate").value;
    let moved = (value(&found) - value(&answer(rest, asking("carry")))).abs();
    assert!((by - moved).abs() < 1e-9 && *by > *margin, "{by} {moved} {margin}");
    assert_eq!(found.overlays.first().map(|o| o.asks), Some(Some(Ask::Shot { shot: at })));
}

#[test]
fn an_ordinary_bad_shot_is_not_asked_about() {
    // Far from the rest, and yet one of fifteen moves an average by little.
    let (session, _) = with_value(195.0);
    let report = answer(session, asking("carry"));
    assert!(report.trust.iter().any(|f| matches!(f.seen, Seen::FarShots { count: 1, .. })));
    assert!(odd(&report).is_empty(), "{:?}", odd(&report));
    assert!(odd(&answer(in_turn("carry", 5, &[242.0, 250.0], 6.0), asking("carry"))).is_empty());
}

#[test]
fn a_slip_in_another_measure_is_not_vouched_for() {
    let mut session = in_turn("carry", 5, &[242.0, 250.0], 6.0);
    also(&mut session, "ball_speed", |at, _| {
        Some(if at == 7 || at == 9 { 1450.0 } else { 145.0 + noise(at) })
    });
    let report = answer(session, asking("carry"));
    assert!(
        matches!(odd(&report)[..], [Seen::OddValue { shot: Some(7), others: 1, .. }]),
        "{:?}",
        odd(&report)
    );
}

#[test]
fn an_average_that_cannot_be_is_asked_about_without_a_row() {
    let mut session = empty("carry", 2);
    let of = |build, carry| summary(build, "carry", mean(carry, Some(8.0)), Some(20), SummaryOf::All);
    session.summaries = vec![of(0, 250.0), of(1, 2580.0)];
    let report = answer(session, asking("carry"));
    let top = report.overlays.first().expect("a warning at the top");
    assert_eq!((top.kind, top.asks), (OverlayKind::OddValue, None));
    assert_eq!(top.headline, "Is this right? Average of Driver B: carry 2,580\u{a0}yd.");
}

#[test]
fn it_is_asked_in_the_units_shown() {
    let (session, _) = with_value(2420.0);
    let metric = Voice::new(Language::english(), Units::Meters);
    let request = telling::check::CheckRequest { session, question: asking("carry") };
    let report = telling::check::check(&request, &metric).expect("a report");
    assert!(report.overlays[0].headline.contains("2,213\u{a0}m"), "{}", report.overlays[0].headline);
}

#[test]
fn a_slip_that_was_set_aside_counts_in_neither_answer_and_is_asked_about_no_more() {
    let (mut session, at) = with_value(2420.0);
    session.shots[at].left_out = Some("slip of the keys".into());
    let report = answer(session.clone(), asking("carry"));
    assert!(odd(&report).is_empty());
    let told = report.overlays.first().expect("shots were left out");
    assert_eq!(told.kind, OverlayKind::LeftOut);
    assert!(told.detail.ends_with("1 value that cannot be counts in neither."), "{}", told.detail);
    let mut rest = session.clone();
    rest.shots[at].values[0] = None;
    assert_eq!(report.answer.estimate, answer(rest, asking("carry")).answer.estimate);
    // A mishit that was set aside counts all the same.
    session.shots[at].values[0] = Some(180.0);
    let counted = answer(session, asking("carry"));
    assert_eq!(counted.answer.estimate.expect("an estimate").n.candidate, 15);
}
