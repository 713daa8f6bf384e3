//! The interval that is printed is the one that decided, with its level, and no end can be read as crossing a line.

use crate::made::with_margin;
use crate::support::{answer, asking, empty, in_turn, push};
use judging::second::SecondRequest;
use judging::verdict::DecisionKind;
use session::question::{Goal, LookedAfter, Question, Stopping, View};
use session::{Order, Session};
use telling::report::Report;
use telling::share::{ShareRequest, Shared};
use telling::together::TogetherRequest;
use text::Voice;

fn shared(session: &Session, question: Question) -> Shared {
    let (session, view) = (session.clone(), View::default());
    let request = ShareRequest { session, question, view, address: "https://example.org/".to_owned() };
    telling::share::share(&request, None, &Voice::english()).expect("a usable request")
}

/// A session that is the same within 5 yd by the 90 % interval, while the 95 % one reaches past 5.
fn the_same() -> Session {
    in_turn("carry", 8, &[250.0, 251.1], 8.0)
}

/// A margin that lies between the far ends of the two intervals of a session, and so decides by the narrower one alone.
fn margin_between(session: &Session) -> f64 {
    let report = answer(session.clone(), asking("carry"));
    let estimate = report.answer.estimate.expect("an estimate");
    let far = |low: f64, high: f64| high.abs().max(low.abs());
    0.5 * (far(estimate.low, estimate.high) + far(estimate.equivalence.low, estimate.equivalence.high))
}

fn decided_by(report: &Report) -> (f64, f64, f64) {
    let interval = report.answer.estimate.as_ref().expect("an estimate").decided_by;
    (interval.low, interval.high, interval.level)
}

/// Every number that stands before `unit`, with its sign.
fn numbers(text: &str, unit: &str) -> Vec<f64> {
    let mut found = Vec::new();
    for (at, _) in text.match_indices(&format!("\u{a0}{unit}")) {
        let number: Vec<char> =
            text[..at].chars().rev().take_while(|c| "0123456789.+\u{2212}".contains(*c)).collect();
        let number: String = number.into_iter().rev().collect();
        found.push(number.replace('\u{2212}', "-").parse().expect("a number"));
    }
    found
}

#[test]
fn the_same_is_told_by_the_interval_inside_the_margin_on_every_card() {
    let session = the_same();
    let question = with_margin("carry", margin_between(&session));
    let margin = question.margin.expect("a margin");
    let report = answer(session.clone(), question.clone());
    assert_eq!(report.answer.decision.kind, DecisionKind::Same);
    let (low, high, level) = decided_by(&report);
    assert!(low > -margin && high < margin && (level - 0.90).abs() < 1e-12, "{low} {high} {level}");
    let shared = shared(&session, question);
    for told in [&shared.card.difference, &shared.words.plain] {
        assert!(told.contains("(90\u{a0}% interval)") && !told.contains("95\u{a0}%"), "{told}");
    }
    for end in numbers(&shared.card.difference, "yd") {
        assert!(end.abs() < margin, "{end} of {margin}: {}", shared.card.difference);
    }
    let printed = report.findings[0].printed.as_ref().expect("an interval");
    assert_eq!(printed.level, "90\u{a0}%");
}

#[test]
fn a_difference_too_small_to_matter_prints_no_end_beyond_the_margin() {
    let session = in_turn("carry", 8, &[250.0, 252.0], 2.0);
    let question = with_margin("carry", margin_between(&session));
    let margin = question.margin.expect("a margin");
    let report = answer(session, question);
    assert_eq!(report.answer.decision.matters, Some(judging::verdict::Matters::No));
    assert!(decided_by(&report).1 < margin);
    let headline = &report.answer.words.headline;
    assert!(numbers(headline, "yd").iter().all(|end| *end < margin), "{margin}: {headline}");
}

#[test]
fn an_open_answer_does_not_print_an_end_on_the_margin() {
    let mut open = 0;
    for tenths in 10..60 {
        let session = in_turn("carry", 6, &[250.0, 250.5], 0.1 * f64::from(tenths));
        let report = answer(session.clone(), asking("carry"));
        // The narrower interval reaches the margin, the wider one goes a little beyond: often to what rounds to it.
        let margin = report.answer.estimate.expect("an estimate").equivalence.high;
        let report = answer(session, with_margin("carry", margin));
        if report.answer.decision.kind == DecisionKind::Different {
            continue;
        }
        open += 1;
        assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell);
        let printed = report.findings[0].printed.as_ref().expect("an interval");
        let [high] = numbers(&printed.high, "yd")[..] else { panic!("one number in {}", printed.high) };
        assert!(high > margin, "{high} of {margin}");
        let (end, detail) = (printed.high.trim_start_matches('+'), &report.answer.words.detail);
        assert!(detail.contains(&format!("{end} more (95\u{a0}% interval)")), "{end}: {detail}");
    }
    assert!(open > 30, "{open} were open");
}

#[test]
fn no_level_is_printed_as_all() {
    let session = in_turn("carry", 2, &[250.0, 290.0], 2.0);
    let looked_after = LookedAfter::Rounds(vec![2]);
    let question =
        Question { stopping: Stopping::Planned { planned_rounds: 10, looked_after }, ..asking("carry") };
    let told = shared(&session, question).words.plain;
    assert!(told.contains("99.9999\u{a0}% interval") && !told.contains("100\u{a0}%"), "{told}");
}

#[test]
fn a_level_is_a_property_of_an_interval_and_never_a_certainty() {
    for scatter in [2.0, 6.0, 12.0] {
        for gap in [0.2, 4.0, 9.0, 16.0] {
            let session = in_turn("carry", 6, &[250.0, 250.0 + gap], scatter);
            for goal in [Goal::Higher, Goal::Tighter] {
                let question = Question { goal: Some(goal), ..asking("carry") };
                let words = answer(session.clone(), question).answer.words;
                let told = [words.headline, words.detail, words.next].join(" ");
                for wrong in ["certain", "rule out", "rules out", "ruled out", "lies between", "Expect"] {
                    assert!(!told.contains(wrong), "{wrong}: {told}");
                }
            }
        }
    }
}

/// Two equal clubs before and after, so even that they are the same by the narrower interval alone.
fn before_and_after(margin: Option<f64>) -> telling::second::Second {
    let mut session = empty("carry", 2);
    session.order = Order::Interleaved;
    let mut is_second = Vec::new();
    for (at, round) in (1_u32..=6).enumerate() {
        for build in 0..2_usize {
            for shot in 0..3_usize {
                let noise = crate::made::noise(at * 5 + build * 4 + shot * (1 + build));
                push(&mut session, build, Some(round), 250.0 + 8.0 * noise);
                is_second.push(Some(at % 2 == 1));
            }
        }
    }
    let question = Question { candidate: Some(1), margin, ..asking("carry") };
    let request = SecondRequest { session, question, is_second, names: None };
    telling::second::second(&request, &Voice::english()).expect("fits")
}

#[test]
fn before_and_after_and_days_together_tell_the_interval_that_decided() {
    let build = before_and_after(Some(0.01)).build;
    // A margin that the narrower interval keeps and the wider one does not.
    let (middle, half) = (build.facts.value, 0.5 * (build.facts.range.high - build.facts.range.low));
    let margin = middle.abs() + 0.9 * half;
    let same = before_and_after(Some(margin)).build;
    assert_eq!(same.facts.decision.kind, DecisionKind::Same, "{}", same.words);
    assert!(same.words.contains("90\u{a0}% interval"), "{}", same.words);
    assert!(numbers(&same.words, "yd").iter().all(|end| end.abs() < margin), "{margin}: {}", same.words);

    let day = |shift: f64| in_turn("carry", 8, &[250.0, 250.4 + shift], 3.0);
    let sessions = vec![day(0.0), day(0.3), day(-0.3), day(0.1)];
    let ask = |margin: f64| {
        let request = TogetherRequest { sessions: sessions.clone(), question: with_margin("carry", margin) };
        telling::together::together(&request, &Voice::english()).expect("days").remove(0)
    };
    let combined = ask(5.0).combined.expect("days");
    let far = |low: f64, high: f64| high.abs().max(low.abs());
    let margin = 0.5
        * (far(combined.different.low, combined.different.high) + far(combined.same.low, combined.same.high));
    let told = ask(margin);
    assert_eq!(told.decision.expect("days").kind, DecisionKind::Same);
    assert!(told.headline.contains("90\u{a0}% interval"), "{}", told.headline);
    assert!(
        numbers(&told.headline, "yd").iter().all(|end| end.abs() < margin),
        "{margin}: {}",
        told.headline
    );
}
