//! What lies under the verdict: scatter, the honest lead, and whether a few shots decide.

use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::trust::Seen;
use judging::verdict::{DecisionKind, Direction, Why};
use session::Session;
use session::question::{Goal, Question};
use telling::check::{CheckRequest, check};
use telling::report::{OverlayKind, Report};
use text::Voice;

fn close(a: f64, b: f64, tolerance: f64) {
    assert!((a - b).abs() <= tolerance, "{a} is not {b}");
}

fn tighter() -> Question {
    Question { goal: Some(Goal::Tighter), ..asking("carry") }
}

/// The candidate's shots pulled toward (or pushed from) its average.
fn scaled(mut session: Session, factor: f64) -> Session {
    let of_candidate: Vec<f64> =
        session.shots.iter().filter(|s| s.build == 1).filter_map(|s| s.values[0]).collect();
    let mean = of_candidate.iter().sum::<f64>() / of_candidate.len() as f64;
    for shot in session.shots.iter_mut().filter(|s| s.build == 1) {
        shot.values[0] = shot.values[0].map(|v| mean + factor * (v - mean));
    }
    session
}

#[test]
fn tighter_is_a_goal_with_a_verdict_of_its_own() {
    let fair = || in_turn("carry", 5, &[250.0, 250.0], 10.0);
    let equal = answer(fair(), tighter());
    let tight = answer(scaled(fair(), 0.3), tighter());
    let loose = answer(scaled(fair(), 3.0), tighter());
    assert_eq!(equal.answer.decision.kind, DecisionKind::CannotTell);
    assert_eq!(tight.answer.decision.direction, Some(Direction::Lower));
    assert_eq!(loose.answer.decision.direction, Some(Direction::Higher));
    let ratio = |r: &Report| r.answer.estimate.as_ref().expect("an estimate").value;
    close(ratio(&tight) / ratio(&equal), 0.3, 1e-9);
    // The averages do not matter to it, nor does the unit.
    let mut far = scaled(fair(), 0.3);
    for shot in far.shots.iter_mut().filter(|s| s.build == 1) {
        shot.values[0] = shot.values[0].map(|v| v + 100.0);
    }
    close(ratio(&answer(far, tighter())), ratio(&tight), 1e-9);
    let mut text = String::new();
    for report in [equal, tight, loose] {
        let w = report.answer.words;
        text.push_str(&format!("{}\n{}\n{}\n\n", w.headline, w.detail, w.next));
    }
    insta::assert_snapshot!("tighter", text);
}

#[test]
fn a_margin_of_scatter_changed_late_is_told_in_percent() {
    let question = Question { margin: Some(1.3), first_margin: Some(1.25), ..tighter() };
    let overlays = answer(in_turn("carry", 5, &[250.0, 250.0], 10.0), question).overlays;
    let changed = overlays.iter().find(|o| o.kind == OverlayKind::MarginChanged).expect("it is said");
    assert!(changed.detail.contains("It was 25 % first and is 30 % now."), "{}", changed.detail);
}

#[test]
fn scatter_needs_five_shots_and_single_ones() {
    let few = answer(one_after_the_other("carry", &[4, 9], &[250.0, 255.0], 5.0), tighter());
    assert_eq!(few.answer.decision.why, Some(Why::TooFewShots));
    let refused = check(
        &CheckRequest {
            session: in_turn("carry", 5, &[250.0, 250.0], 5.0),
            question: Question { margin: Some(0.9), ..tighter() },
        },
        &Voice::english(),
    );
    assert_eq!(refused.expect_err("no ratio above one").kind, "not_a_ratio");
}

#[test]
fn the_lead_among_several_is_told_honestly() {
    let report = answer(in_turn("carry", 5, &[250.0, 256.0, 251.0, 249.0], 8.0), asking("carry"));
    let lead = report.honest_lead.expect("three candidates");
    assert_eq!(lead.candidates, 3);
    assert!(lead.honest > 0.0 && lead.honest < lead.shown);
    // E[max of 3] = 0.846 standard errors of a mean of 15.
    let sd = 8.0 * lead.by_luck / lead.by_luck;
    assert!(
        lead.by_luck > 0.5 * 0.846 * sd / 15_f64.sqrt() && lead.by_luck < 1.5 * 0.846 * sd / 15_f64.sqrt()
    );
}

#[test]
fn an_answer_that_hangs_on_few_shots_says_on_how_many() {
    let mut session = in_turn("carry", 5, &[250.0, 255.0], 5.0);
    assert_eq!(answer(session.clone(), asking("carry")).answer.decision.kind, DecisionKind::Different);
    // One invented mishit hides the lead: taking it out brings the lead back.
    session.shots[4].values[0] = Some(205.0);
    let report = answer(session.clone(), asking("carry"));
    assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell);
    assert_eq!(report.removals_to_flip, Some(1));
    assert!(report.trust.iter().any(|f| f.seen == Seen::FewShotsDecide { shots: 1, rounds_to_go: None }));
    // It is the shot that the page names: left out, the answer depends on it.
    session.shots[4].left_out = Some("mishit".into());
    assert_eq!(answer(session, asking("carry")).answer.decision.why, Some(Why::DependsOnLeftOut));
    let solid = answer(in_turn("carry", 8, &[250.0, 275.0], 5.0), asking("carry"));
    assert_eq!(solid.removals_to_flip, None);
}

#[test]
fn drift_over_the_session_is_measured_and_a_level_session_has_none() {
    let mut session = in_turn("carry", 8, &[250.0, 252.0], 3.0);
    assert!(
        !answer(session.clone(), asking("carry")).trust.iter().any(|f| matches!(f.seen, Seen::Drift { .. }))
    );
    let last = session.shots.len() as f64 - 1.0;
    for (at, shot) in session.shots.iter_mut().enumerate() {
        shot.values[0] = shot.values[0].map(|v| v + 15.0 * at as f64 / last);
    }
    let report = answer(session, asking("carry"));
    let change = report.trust.iter().find_map(|f| match f.seen {
        Seen::Drift { change, .. } => Some(change),
        _ => None,
    });
    close(change.expect("a drift"), 15.0, 3.0);
}
