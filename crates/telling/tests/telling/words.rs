//! The words for every decision under every warning, for every measure, and for every reason not to answer.

use crate::support::{answer, asking, averages, in_turn, one_after_the_other};
use judging::verdict::{Direction, Matters};
use session::few::Map;
use session::question::{LookedAfter, Question, Stopping, StoppingWord};
use session::{Build, Order, Session, Summary, SummaryOf, SummaryValue};
use std::collections::BTreeSet;
use telling::report::Report;

/// Sessions for every decision, hit in turn unless the decision needs otherwise.
fn decisions() -> Vec<(&'static str, Session)> {
    vec![
        ("different, matters", in_turn("carry", 5, &[250.0, 264.0], 6.0)),
        ("different, may matter", in_turn("carry", 5, &[250.0, 257.0], 6.0)),
        ("different, too small", in_turn("carry", 8, &[250.0, 252.0], 2.0)),
        ("different, the other way", in_turn("carry", 5, &[264.0, 250.0], 6.0)),
        ("same", in_turn("carry", 8, &[250.0, 250.5], 4.0)),
        ("cannot tell", in_turn("carry", 4, &[250.0, 251.0], 9.0)),
        ("cannot answer", in_turn("carry", 1, &[250.0, 254.0], 9.0)),
    ]
}

type Warning = (&'static str, fn(Session, Question) -> (Session, Question));

/// What can stand over a decision.
fn warnings() -> Vec<Warning> {
    vec![
        ("no warning", |s, q| (s, q)),
        ("hit one after the other", |mut s, q| {
            s.shots.sort_by_key(|shot| shot.build);
            s.shots.iter_mut().for_each(|shot| shot.round = None);
            (Session { order: Order::Blocked, ..s }, q)
        }),
        ("order unknown", |s, q| (Session { order: Order::Unknown, ..s }, q)),
        ("two shots left out", |mut s, q| {
            for shot in s.shots.iter_mut().filter(|shot| shot.build == 1).take(2) {
                shot.left_out = Some("mishit".into());
            }
            (s, q)
        }),
        ("a third club", |mut s, q| {
            s.builds.push(Build { name: "Driver C".into() });
            let more: Vec<_> = s.shots.iter().filter(|shot| shot.build == 0).cloned().collect();
            for mut shot in more {
                shot.build = 2;
                s.shots.push(shot);
            }
            (s, q)
        }),
        ("not fixed before", |s, q| (s, Question { stopping: Stopping::Word(StoppingWord::Unknown), ..q })),
        ("an early look", |s, q| {
            let looked_after = LookedAfter::Rounds(vec![2]);
            (s, Question { stopping: Stopping::Planned { planned_rounds: 10, looked_after }, ..q })
        }),
        ("margin changed", |s, q| (s, Question { margin: Some(5.0), first_margin: Some(10.0), ..q })),
        ("averages only", |s, q| (in_averages(&s), q)),
    ]
}

/// The same session with nothing left but averages.
fn in_averages(session: &Session) -> Session {
    let summaries = (0..session.builds.len())
        .map(|build| {
            let values: Vec<f64> =
                session.shots.iter().filter(|s| s.build == build).filter_map(|s| s.values[0]).collect();
            let n = values.len() as f64;
            let mean = values.iter().sum::<f64>() / n;
            let sd = (values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt();
            let value = SummaryValue { mean: Some(mean), sd: Some(sd), low: None, high: None };
            Summary {
                build,
                n: u32::try_from(values.len()).ok(),
                of: SummaryOf::All,
                values: Map::from([(session.measures[0].clone(), value)]),
                line: None,
            }
        })
        .collect();
    Session { shots: Vec::new(), summaries, order: Order::Unknown, ..session.clone() }
}

fn told(report: &Report) -> String {
    let words = &report.answer.words;
    let mut text = format!("{}\n{}\n{}\n", words.headline, words.detail, words.next);
    for overlay in &report.overlays {
        text.push_str(&format!("  ! {}\n    {}\n", overlay.headline, overlay.detail));
    }
    text
}

#[test]
fn words_for_every_decision_under_every_warning() {
    let mut text = String::new();
    let mut kinds = BTreeSet::new();
    let mut overlays = BTreeSet::new();
    for (decision, session) in decisions() {
        for (warning, apply) in warnings() {
            let (session, question) = apply(session.clone(), asking("carry"));
            let report = answer(session, question);
            text.push_str(&format!("## {decision} + {warning}\n{}\n", told(&report)));
            kinds.insert(format!("{:?} {:?}", report.answer.decision.kind, report.answer.decision.matters));
            overlays.extend(report.overlays.iter().map(|o| format!("{:?}", o.kind)));
        }
    }
    for kind in
        ["Different Some(Yes)", "Different Some(Maybe)", "Different Some(No)", "Same None", "CannotTell None"]
    {
        assert!(kinds.contains(kind), "{kind} is missing among {kinds:?}");
    }
    assert_eq!(overlays.len(), 6, "every warning appears: {overlays:?}");
    insta::assert_snapshot!("decisions_under_warnings", text);
}

#[test]
fn words_for_every_measure_both_ways() {
    let mut text = String::new();
    for measure in session::known::Known::ALL.map(session::known::Known::facts) {
        let step = measure.margin;
        for sign in [1.0, -1.0] {
            let middle = if measure.plausible.low < 0.0 {
                0.0
            } else {
                (measure.plausible.low + measure.plausible.high) / 2.0
            };
            let session = in_turn(measure.id, 6, &[middle, middle + sign * 3.0 * step], step);
            let report = answer(session, asking(measure.id));
            let direction = if sign > 0.0 { Direction::Higher } else { Direction::Lower };
            assert_eq!(report.answer.decision.direction, Some(direction));
            assert_eq!(report.answer.decision.matters, Some(Matters::Yes), "{}", measure.id);
            let words = report.answer.words;
            text.push_str(&format!("{}\n{}\n{}\n", words.headline, words.line, words.detail));
        }
    }
    insta::assert_snapshot!("measures", text);
}

#[test]
fn words_for_every_reason_not_to_answer() {
    let all = SummaryOf::All;
    let mut own = in_turn("weight", 4, &[50.0, 56.0], 2.0);
    own.custom.push(session::CustomMeasure { id: "weight".into(), name: "Weight".into(), unit: "g".into() });
    let cases = [
        Session::default(),
        one_after_the_other("carry", &[5], &[250.0], 5.0),
        one_after_the_other("carry", &[5, 2], &[250.0, 255.0], 5.0),
        one_after_the_other("carry", &[5, 5], &[250.0, 255.0], 0.0),
        averages(all, None, Some(8.0), [240.0, 262.0]),
        averages(SummaryOf::Best, Some(5), Some(8.0), [240.0, 262.0]),
        averages(all, Some(20), None, [240.0, 262.0]),
    ];
    let mut text: String = cases.into_iter().map(|s| told(&answer(s, asking("carry"))) + "\n").collect();
    text.push_str(&told(&answer(in_turn("carry", 3, &[250.0, 252.0], 5.0), asking("smash"))));
    text.push_str("\n## A column of the golfer's own\n");
    text.push_str(&told(&answer(own, asking("weight"))));
    insta::assert_snapshot!("reasons", text);
}

#[test]
fn words_never_say_what_they_must_not() {
    for (_, session) in decisions() {
        for (_, apply) in warnings() {
            let (session, question) = apply(session.clone(), asking("carry"));
            let told = told(&answer(session, question)).to_lowercase();
            for word in ["significant", "p-value", "p =", "score", "nan", "inf", "null"] {
                assert!(!told.contains(word), "{word} in {told}");
            }
        }
    }
}

#[test]
fn two_sentences_stand_for_the_whole_of_it_on_a_small_screen() {
    for (decision, session) in decisions() {
        for (warning, with) in warnings() {
            let (session, question) = with(session.clone(), asking("carry"));
            let words = answer(session, question).answer.words;
            assert!(words.detail.contains(&words.lead), "{decision}, {warning}: {}", words.lead);
            assert!(words.next.contains(&words.step), "{decision}, {warning}: {}", words.step);
            assert!(!words.step.is_empty(), "{decision}, {warning}");
            let brief = format!("{} {}", words.lead, words.step);
            // One of an answer that depends on shots left out says both of its answers.
            let most = if words.detail.contains("With every shot:") { 3 } else { 2 };
            let sentences = brief.matches('.').count() - decimals(&brief);
            assert!(sentences <= most, "{decision}, {warning}: {brief}");
        }
    }
}

/// Points inside numbers.
fn decimals(text: &str) -> usize {
    let bytes = text.as_bytes();
    bytes.windows(3).filter(|w| w[1] == b'.' && w[0].is_ascii_digit() && w[2].is_ascii_digit()).count()
}
