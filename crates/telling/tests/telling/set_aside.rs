//! Shots set aside and shots that are missing: of which club, and the answer both ways, in every form.

use crate::made::set_aside;
use crate::support::{answer, asking, in_turn, one_after_the_other};
use session::Session;
use session::question::{Question, View};
use telling::report::{OverlayKind, Report};
use telling::share::{ShareRequest, Shared, share};
use text::Voice;

fn shared(session: &Session, question: &Question) -> Shared {
    let request = ShareRequest {
        session: session.clone(),
        question: question.clone(),
        view: View::default(),
        address: "https://example.org/".into(),
    };
    share(&request, Some("x"), &Voice::english()).expect("shared")
}

fn left_out(report: &Report) -> &telling::report::Overlay {
    report.overlays.iter().find(|o| o.kind == OverlayKind::LeftOut).expect("shots were left out")
}

/// Twelve shots each; two of the candidate's are far short and set aside.
fn two_short(lead: f64, short: f64) -> Session {
    let mut session = in_turn("carry", 4, &[250.0, 250.0 + lead], 6.0);
    let theirs: Vec<usize> =
        (0..session.shots.len()).filter(|&at| session.shots[at].build == 1).take(2).collect();
    theirs.iter().for_each(|&at| session.shots[at].values[0] = Some(short));
    set_aside(&mut session, |at, _| theirs.contains(&at));
    session
}

#[test]
fn shots_set_aside_are_named_by_their_club_and_both_answers_have_sizes() {
    let session = two_short(14.0, 245.0);
    let report = answer(session.clone(), asking("carry"));
    let told = left_out(&report);
    assert_eq!(told.headline, "Left out: 2 of 12 Driver B shots.");
    let facts = report.answer.facts.as_ref().expect("facts").set_aside.as_ref().expect("set aside");
    assert_eq!((facts.candidate.shots, facts.candidate.of, facts.baseline.shots), (2, 12, 0));
    let rest = Session {
        shots: session.shots.iter().filter(|shot| shot.left_out.is_none()).cloned().collect(),
        ..session.clone()
    };
    let alone = answer(rest, asking("carry")).answer.estimate;
    assert_eq!(facts.estimate_without, alone, "what is said of the others is what they say alone");
    assert_eq!(told.detail.matches("% interval)").count(), 2, "{}", told.detail);
    assert!(shared(&session, &asking("carry")).words.plain.contains(&told.detail));
}

#[test]
fn an_answer_that_depends_on_them_says_both_with_sizes_wherever_it_goes() {
    let session = two_short(8.0, 215.0);
    let report = answer(session.clone(), asking("carry"));
    assert!(report.answer.words.headline.contains("depends"), "{}", report.answer.words.headline);
    let detail = &report.answer.words.detail;
    assert!(detail.contains("Without 2 of 12 Driver B shots:"), "{detail}");
    assert_eq!(detail.matches("% interval)").count(), 2, "{detail}");
    assert!(shared(&session, &asking("carry")).words.plain.contains(detail.as_str()));
}

/// What is drawn of both answers is what their sentences say.
#[test]
fn both_answers_are_drawn_with_the_sizes_that_are_told() {
    for (lead, short) in [(14.0, 245.0), (8.0, 215.0)] {
        let report = answer(two_short(lead, short), asking("carry"));
        let finding = &report.findings[0];
        let both = finding.both_ways.as_ref().expect("shots were left out");
        assert_eq!(both.every.name, "Every shot");
        assert_eq!(both.without.name, "Without 2 of 12 Driver B shots");
        let facts = finding.facts.set_aside.as_ref().expect("set aside");
        assert!((both.every.value - finding.estimate.as_ref().expect("sizes").value).abs() < 1e-12);
        let rest = facts.estimate_without.as_ref().expect("sizes");
        assert!((both.without.value - rest.value).abs() < 1e-12 && both.every.value < both.without.value);
        let told = format!("{} {}", report.answer.words.detail, left_out(&report).detail);
        for way in [&both.every, &both.without] {
            let printed = &way.printed;
            let figures = format!(
                "{} ({} to {}, {} interval)",
                printed.value, printed.low, printed.high, printed.level
            );
            assert!(told.contains(&figures), "{figures} in {told}");
            assert!(way.interval.low < way.value && way.value < way.interval.high);
        }
    }
    let all = answer(in_turn("carry", 4, &[250.0, 256.0], 5.0), asking("carry"));
    assert_eq!(all.findings[0].both_ways, None);
}

#[test]
fn shots_missing_from_the_numbering_are_not_told_as_none_left_out() {
    let mut session = in_turn("carry", 4, &[250.0, 256.0], 5.0);
    for (at, shot) in (0..).zip(&mut session.shots) {
        shot.number = Some(if at < 10 { at + 1 } else { at + 3 });
    }
    let Shared { card, words, .. } = shared(&session, &asking("carry"));
    assert_eq!(
        card.left_out,
        "None is marked as left out. 2 shots are missing: the numbers jump, first at number 11."
    );
    assert!(words.plain.contains(&card.left_out) && card.alternative.contains(&card.left_out));
}

#[test]
fn serious_warnings_go_with_the_card_and_the_text() {
    let session = one_after_the_other("carry", &[12, 12], &[250.0, 252.0], 5.0);
    let report = answer(session.clone(), asking("carry"));
    let cold = report.trust.iter().find(|f| f.what.contains("was hit first")).expect("a cold start");
    let Shared { card, words, .. } = shared(&session, &asking("carry"));
    assert!(card.warnings.contains(&cold.what), "{:?}", card.warnings);
    assert!(words.plain.contains(&cold.what) && card.alternative.contains(&cold.what));
}
