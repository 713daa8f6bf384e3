//! A question is settled once: no unit of display, no goal and no second reading of its gaps changes what is decided.

use crate::dice::Dice;
use crate::made::{around, noise, rounds};
use crate::support::{answer, asking, empty, push};
use judging::second::SecondRequest;
use judging::trust::Seen;
use judging::verdict::{Decision, DecisionKind};
use session::question::{Goal, Question};
use session::{Order, Session};
use telling::check::{CheckRequest, check};
use telling::report::Report;
use telling::second::{Effect, second};
use text::{Language, Units, Voice};

fn meters() -> Voice {
    Voice::new(Language::english(), Units::Meters)
}

/// The same request, told in yards and in meters.
fn in_both_units(request: &CheckRequest) -> [Report; 2] {
    [Voice::english(), meters()].map(|voice| check(request, &voice).expect("a usable request"))
}

/// 144 shots in turn whose averages differ by this many yards.
fn gap(yards: f64) -> Session {
    let mut dice = Dice::seeded(7);
    let mut session = empty("carry", 2);
    session.order = Order::Interleaved;
    for round in 0..24 {
        for build in 0..2 {
            for _ in 0..3 {
                let average = 250.0 + if build == 1 { yards } else { 0.0 };
                push(&mut session, build, Some(round + 1), average + 6.0 * dice.normal());
            }
        }
    }
    session
}

#[test]
fn a_margin_nobody_chose_decides_alike_in_yards_and_meters() {
    let told = |tenths: i32, goal| {
        let question = Question { goal, ..asking("carry") };
        in_both_units(&CheckRequest { session: gap(f64::from(tenths) / 10.0), question })
    };
    for goal in [None, Some(Goal::Different), Some(Goal::Lower)] {
        let both: Vec<[Report; 2]> = (0..90).map(|tenths| told(tenths, goal)).collect();
        let differ = both.iter().filter(|[yards, meters]| yards.answer.decision != meters.answer.decision);
        assert_eq!(differ.count(), 0, "gaps of 90 that are decided by the units");
        assert!(both.iter().all(|[yards, meters]| yards.asked.margin == meters.asked.margin));
        assert!(both.iter().all(|[yards, meters]| yards.removals_to_flip == meters.removals_to_flip));
    }
}

/// Carry before and after, build by build in turn.
fn before_and_after(build: f64, condition: f64, question: Question) -> SecondRequest {
    let mut dice = Dice::seeded(11);
    let mut session = empty("carry", 2);
    session.order = Order::Interleaved;
    let mut is_second = Vec::new();
    for shot in 0..80 {
        let (candidate, after) = (shot % 2 == 1, (shot / 4) % 2 == 1);
        let value = 250.0 + if candidate { build } else { 0.0 } + if after { condition } else { 0.0 };
        push(&mut session, usize::from(candidate), None, value + 5.0 * dice.normal());
        is_second.push(Some(after));
    }
    SecondRequest { session, question: Question { candidate: Some(1), ..question }, is_second, names: None }
}

fn decisions(request: &SecondRequest, voice: &Voice) -> Vec<Decision> {
    let found = second(request, voice).expect("enough shots");
    let effects: [&Effect; 3] = [&found.build, &found.condition, &found.interaction];
    effects.map(|effect| effect.facts.decision).to_vec()
}

#[test]
fn a_ratio_of_scatter_is_not_taken_for_yards_by_before_and_after() {
    let english = Voice::english();
    for lead in [1.0, 2.5, 4.0, 5.5, 7.0] {
        let plain = decisions(&before_and_after(lead, -lead, asking("carry")), &english);
        let tighter = Question { goal: Some(Goal::Tighter), margin: Some(1.25), ..asking("carry") };
        assert_eq!(decisions(&before_and_after(lead, -lead, tighter), &english), plain, "{lead} yd");
    }
}

#[test]
fn before_and_after_uses_the_usual_margin_that_the_headline_uses_whatever_the_units() {
    for lead in [1.0, 2.5, 3.85, 4.0, 5.5, 7.0] {
        let request = before_and_after(lead, 0.0, asking("carry"));
        assert_eq!(decisions(&request, &meters()), decisions(&request, &Voice::english()), "{lead} yd");
        let headline = CheckRequest { session: request.session.clone(), question: asking("carry") };
        let [yards, meters] = in_both_units(&headline);
        assert_eq!(yards.answer.decision, meters.answer.decision, "{lead} yd");
    }
}

/// Six rounds of turns whose differences lie a little farther apart than shots would put them, so that an answer that
/// rests on whole rounds is wider than one that rests on shots.
fn in_turns_of(shots: usize) -> Session {
    let set_of = |average: f64, from: usize| -> Vec<f64> {
        let values: Vec<f64> = (0..shots).map(|i| 5.0 * noise(from + 5 * i)).collect();
        let middle = values.iter().sum::<f64>() / shots as f64;
        values.iter().map(|v| average + v - middle).collect()
    };
    let lead = |r: usize| if r.is_multiple_of(2) { 3.3 } else { -3.3 };
    let set = |r: usize| vec![set_of(250.0, 5 * r), set_of(253.0 + lead(r), 5 * r + 3)];
    rounds("carry", &(0..6).map(set).collect::<Vec<_>>())
}

/// Whether the analysis rests on whole rounds, seen by an interval wider than that of shots, and whether trust warns.
fn fell_back_and_warned(session: Session, shots: usize) -> [bool; 2] {
    let report = answer(session, asking("carry"));
    let estimate = report.answer.estimate.as_ref().expect("an estimate");
    let round = report.findings[0].numbers.round.expect("hit in turn");
    // A tenth wider for turns of three, and 0.07 of its square for each shot more.
    let usual = (1.10_f64.powi(2) + 0.07 * (shots.min(5) - 3) as f64).sqrt();
    let fell_back = estimate.high - estimate.value > usual * (round.high - round.diff) + 1e-6;
    [fell_back, report.trust.iter().any(|f| matches!(f.seen, Seen::LongTurns { .. }))]
}

#[test]
fn trust_warns_of_long_turns_exactly_when_the_analysis_fell_back() {
    for shots in 4..=8 {
        assert_eq!(fell_back_and_warned(in_turns_of(shots), shots), [shots > 5; 2], "{shots}");
    }
    // Shots after the rounds, with one build: no turn that was shared grew longer.
    let mut after = in_turns_of(5);
    for value in around(250.0, 5.0, 40, 0) {
        push(&mut after, 1, Some(7), value);
    }
    assert_eq!(fell_back_and_warned(after, 5), [false; 2]);
    // Shots on which the measure was not read: no turn that counts grew longer.
    let mut unread = in_turns_of(5);
    for round in 1..=6 {
        for build in 0..2 {
            for _ in 0..3 {
                push(&mut unread, build, Some(round), 0.0);
                unread.shots.last_mut().expect("a shot").values[0] = None;
            }
        }
    }
    assert_eq!(fell_back_and_warned(unread, 5), [false; 2]);
}

#[test]
fn three_rounds_of_three_and_then_twenty_of_one_build_are_no_long_turns() {
    let set = |r: usize| vec![around(250.0, 5.0, 3, 5 * r), around(253.0, 5.0, 3, 5 * r + 3)];
    let mut session = rounds("carry", &(0..3).map(set).collect::<Vec<_>>());
    for value in around(250.0, 5.0, 20, 0) {
        push(&mut session, 0, Some(4), value);
    }
    assert!(!fell_back_and_warned(session, 5)[1]);
}

/// The numbers of a text, as they are printed.
fn printed(text: &str) -> Vec<&str> {
    text.split(|c: char| !c.is_ascii_digit() && c != '.')
        .map(|number| number.trim_matches('.'))
        .filter(|number| !number.is_empty())
        .collect()
}

#[test]
fn an_end_near_zero_does_not_set_the_digits_of_the_other() {
    let mut near_zero = 0;
    for hundredths in 0..900 {
        let session = gap(f64::from(hundredths) / 100.0);
        for report in in_both_units(&CheckRequest { session, question: asking("carry") }) {
            let estimate = report.answer.estimate.as_ref().expect("an estimate");
            let (low, high) =
                (estimate.low.abs().min(estimate.high.abs()), estimate.low.abs().max(estimate.high.abs()));
            if report.answer.decision.kind != DecisionKind::Different || low > 0.05 || high < 1.0 {
                continue;
            }
            near_zero += 1;
            for number in printed(&report.answer.words.headline) {
                let decimals = number.split_once('.').map_or(0, |(_, after)| after.len());
                let large = number.parse::<f64>().is_ok_and(|size| size >= 1.0);
                assert!(!large || decimals <= 1, "{number} in '{}'", report.answer.words.headline);
            }
        }
    }
    assert!(near_zero > 0, "some ends stand near zero");
}
