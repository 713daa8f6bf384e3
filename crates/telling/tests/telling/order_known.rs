//! What is said of the order of hitting is what is known of it, and what nobody said is not said of anybody.

use crate::made::{also, around, blocks, noise, rounds, rounds_begun_alike};
use crate::support::{answer, asking, averages, in_turn, one_after_the_other};
use judging::claim::{ClaimKind, Claimed};
use judging::facts::{HowHit, NumberOfShots, OrderAllowance};
use judging::trust::{Seen, Weight};
use session::question::{LookedAfter, Question, Stopping, StoppingWord};
use session::{Order, Session, SummaryOf};
use telling::claim::{ClaimRequest, claim};
use telling::report::{Ask, OverlayKind, Report};
use text::Voice;

/// Everything that a report says.
fn said(report: &Report) -> String {
    let mut text: Vec<&str> = Vec::new();
    for words in report.findings.iter().map(|f| &f.words).chain([&report.answer.words]) {
        text.extend([&words.headline, &words.line, &words.detail, &words.next].map(String::as_str));
    }
    text.extend(report.overlays.iter().flat_map(|o| [o.headline.as_str(), o.detail.as_str()]));
    text.extend(report.trust.iter().flat_map(|f| [f.what.as_str(), f.why.as_str(), f.next.as_str()]));
    text.join("\n")
}

/// How far the shots of the two clubs scatter.
fn facts_of(report: &Report) -> (f64, f64) {
    let numbers = &report.findings[0].numbers;
    (
        numbers.baseline.and_then(|b| b.sd).expect("shots"),
        numbers.candidate.and_then(|c| c.sd).expect("shots"),
    )
}

fn overlay(report: &Report, kind: OverlayKind) -> &telling::report::Overlay {
    report.overlays.iter().find(|o| o.kind == kind).expect("this overlay")
}

/// Six rounds in turn of carry, with a spin that a device read in the first round alone.
fn spin_read_on_few() -> Session {
    let mut session = in_turn("carry", 6, &[250.0, 252.0], 6.0);
    also(&mut session, "spin_rate", |at, shot| (shot.round == Some(1)).then(|| 2600.0 + 90.0 * noise(at)));
    session
}

#[test]
fn clubs_hit_in_turn_are_never_said_to_have_been_hit_one_after_the_other() {
    let report = answer(spin_read_on_few(), asking("spin_rate"));
    let facts = report.answer.facts.as_ref().expect("facts");
    assert_eq!((facts.order, facts.order_allowance), (HowHit::InTurnNotCompared, OrderAllowance::Included));
    let text = said(&report);
    assert!(text.contains("in turn, in 6 laps"), "{text}");
    assert!(!text.contains("one after the other,") && !text.contains("not hit in turn"), "{text}");
    assert!(text.contains("Spin rate could not be compared lap by lap."), "{text}");
    // Of carry, which was read on every shot, nothing of the kind.
    let carry = answer(spin_read_on_few(), asking("carry"));
    assert_eq!(carry.answer.facts.as_ref().expect("facts").order, HowHit::InTurn);
    assert!(carry.overlays.iter().all(|o| o.kind != OverlayKind::OrderMixedUp));
}

#[test]
fn a_measure_of_ones_own_keeps_the_orders_caveat_and_is_allowed_a_guess_for_it() {
    let session = blocks("Weight", &[around(10.0, 0.4, 12, 0), around(13.0, 0.4, 12, 5)]);
    let report = answer(session, asking("Weight"));
    let facts = report.answer.facts.as_ref().expect("facts");
    assert_eq!(
        (facts.order, facts.order_allowance),
        (HowHit::OneAfterTheOther, OrderAllowance::SizeNotKnown)
    );
    let told = overlay(&report, OverlayKind::OrderMixedUp);
    assert!(told.detail.contains("As a guess of ours, three quarters"), "{}", told.detail);
    assert!(told.detail.contains("the wind, a lesson"), "{}", told.detail);
    let words = &report.answer.words;
    assert_eq!(words.lead, "The clubs were hit one after the other, so this is a hint, not proof.");
    assert!(words.detail.contains("hit in this order could"), "{}", words.detail);
    let shot_sd = 0.5 * (facts_of(&report).0 + facts_of(&report).1);
    let allowed = report.answer.estimate.as_ref().expect("an estimate").order_allowance;
    assert!((allowed / shot_sd - 0.75).abs() < 0.01, "{allowed} of {shot_sd}");
    // A guess is not said to be known.
    assert!(!words.headline.contains("beyond what warming up"), "{}", words.headline);
}

#[test]
fn an_order_that_nobody_knows_is_not_said_to_be_a_bad_one() {
    let blocked = || one_after_the_other("carry", &[12, 12], &[250.0, 262.0], 5.0);
    for (lead, order_asked) in [(250.5, true), (256.0, true), (275.0, true)] {
        let session = one_after_the_other("carry", &[12, 12], &[250.0, lead], 5.0);
        let report = answer(Session { order: Order::Unknown, ..session }, asking("carry"));
        let text = said(&report);
        assert!(!text.contains("not hit in turn") && !text.contains("one after the other, not"), "{text}");
        assert!(!text.contains("hit in this order"), "{text}");
        assert!(!text.contains("were hit one after the other"), "{text}");
        assert_eq!(overlay(&report, OverlayKind::OrderMixedUp).asks == Some(Ask::Order), order_asked);
    }
    let known = said(&answer(blocked(), asking("carry")));
    assert!(known.contains("were hit one after the other"), "{known}");
}

#[test]
fn of_averages_nobody_can_know_the_order() {
    for gap in [3.0, 9.0, 30.0] {
        let report =
            answer(averages(SummaryOf::All, Some(15), Some(9.0), [250.0, 250.0 + gap]), asking("carry"));
        assert_eq!(report.answer.facts.as_ref().expect("facts").order, HowHit::NotKnown);
        let text = said(&report);
        assert!(!text.contains("not hit in turn") && !text.contains("hit in this order"), "{text}");
        assert!(!text.contains("were hit one after the other"), "{text}");
    }
}

#[test]
fn nobody_who_was_not_asked_is_said_to_have_fixed_nothing() {
    let ask = |stopping| Question { stopping, ..asking("carry") };
    let of = |stopping| answer(in_turn("carry", 5, &[250.0, 262.0], 5.0), ask(stopping));
    let open = of(Stopping::default());
    let told = overlay(&open, OverlayKind::LookedAtBefore);
    assert!(told.headline.starts_with("You didn’t say"), "{}", told.headline);
    assert_eq!(told.asks, Some(Ask::NumberOfShots));
    assert!(!said(&open).contains("was not fixed before"), "{}", said(&open));
    let not = of(Stopping::Word(StoppingWord::NotFixed));
    let told = overlay(&not, OverlayKind::LookedAtBefore);
    assert!(told.headline.contains("was not fixed before") && told.asks.is_none());
    assert_eq!(open.answer.estimate, not.answer.estimate, "what nobody said is taken as not fixed");
    let past = of(Stopping::Planned { planned_rounds: 4, looked_after: LookedAfter::EveryRoundTo(4) });
    let number = past.answer.facts.as_ref().expect("facts").number;
    assert_eq!(number, NumberOfShots::NotOfThePlan { rounds: 5, planned: 4 });
    assert!(!said(&past).contains("didn’t say") && !said(&past).contains("was not fixed"), "{}", said(&past));
}

#[test]
fn a_look_on_the_way_that_cannot_tell_says_go_on() {
    let planned = |planned_rounds| Question {
        stopping: Stopping::Planned { planned_rounds, looked_after: LookedAfter::EveryRoundTo(3) },
        ..asking("carry")
    };
    let session = || in_turn("carry", 3, &[250.0, 252.0], 6.0);
    assert_eq!(answer(session(), planned(8)).answer.words.next, "Go on: 5 laps of the plan remain.");
    assert_eq!(answer(session(), planned(4)).answer.words.next, "Go on: 1 lap of the plan remains.");
    assert!(!answer(session(), planned(3)).answer.words.next.contains("Go on"));
}

#[test]
fn the_club_that_always_opens_a_round_is_named_and_not_praised() {
    let set = |r: usize| vec![around(250.0, 5.0, 3, 5 * r), around(252.0, 5.0, 3, 5 * r + 3)];
    let always = rounds_begun_alike("carry", &(0..6).map(set).collect::<Vec<_>>());
    // Its interval leaves room for the start of the laps, of which the sentences tell, and is no hint for that.
    let report = answer(always.clone(), asking("carry"));
    let facts = report.answer.facts.as_ref().expect("facts");
    assert_eq!((facts.order, facts.order_allowance), (HowHit::InTurn, OrderAllowance::StartOfLaps));
    let allowed = report.answer.estimate.as_ref().expect("an estimate").order_allowance;
    assert!((allowed - 2.35).abs() < 0.01, "{allowed}");
    assert!(said(&report).contains("the same one first in every lap"), "{}", said(&report));
    assert!(report.overlays.iter().all(|o| o.kind != OverlayKind::OrderMixedUp));
    let turned = answer(rounds("carry", &(0..6).map(set).collect::<Vec<_>>()), asking("carry"));
    assert!(turned.answer.estimate.as_ref().is_some_and(|estimate| estimate.order_allowance.abs() < 1e-12));
    let order = |session: Session| {
        let trust = answer(session, asking("carry")).trust;
        trust.into_iter().find(|f| matches!(f.seen, Seen::Order { .. })).expect("the order")
    };
    let told = order(always);
    assert_eq!(told.seen, Seen::Order { order: Order::Interleaved, rounds: 6, always_first: Some(0) });
    assert_eq!(told.weight, Weight::Note);
    assert!(told.what.contains("Own driver first in every one") && !told.why.contains("alike"), "{told:?}");
    let turned = order(in_turn("carry", 6, &[250.0, 252.0], 5.0));
    assert_eq!(turned.seen, Seen::Order { order: Order::Interleaved, rounds: 6, always_first: None });
    assert_eq!(turned.weight, Weight::Good);
}

#[test]
fn what_is_in_the_file_is_not_asked_for() {
    let told = |measures: &[&str]| {
        let mut session = in_turn("carry", 4, &[250.0, 252.0], 5.0);
        measures.iter().for_each(|measure| also(&mut session, measure, |at, _| Some(95.0 + noise(at))));
        let trust = answer(session, asking("carry")).trust;
        trust
            .into_iter()
            .find(|f| matches!(f.seen, Seen::NoSwingOrStrike { .. }))
            .expect("one is missing")
            .next
    };
    assert!(!told(&["club_speed"]).contains("club speed"), "{}", told(&["club_speed"]));
    assert!(!told(&["strike_height"]).contains("face"), "{}", told(&["strike_height"]));
    assert!(told(&[]).contains("club speed") && told(&[]).contains("face"));
}

#[test]
fn one_figure_for_warming_up_stands_beside_the_other() {
    let report = answer(one_after_the_other("carry", &[12, 12], &[250.0, 252.0], 5.0), asking("carry"));
    let cold = report.trust.iter().find(|f| matches!(f.seen, Seen::ColdStart { .. })).expect("a cold start");
    let allowed = "6\u{a0}yd";
    assert!(overlay(&report, OverlayKind::OrderMixedUp).detail.contains(allowed));
    assert!(cold.why.contains("alone") && cold.why.contains(allowed), "{}", cold.why);
}

#[test]
fn a_claim_is_not_told_how_its_clubs_were_hit_and_a_retest_in_turn_not_to_hit_in_turn() {
    let held = |session| {
        let claimed =
            Claimed { gain: Some(20.0), shots_before: Some(5), shots_after: Some(5), ..Claimed::default() };
        claim(&ClaimRequest { claimed, session, question: asking("carry") }, &Voice::english())
            .expect("a claim")
    };
    let in_turn_next = held(in_turn("carry", 6, &[250.0, 251.0], 12.0));
    assert_eq!(in_turn_next.facts.kind, ClaimKind::Contradicted);
    let words = in_turn_next.words;
    assert!(!words.detail.contains("one club after the other") && !words.detail.contains("made up"));
    assert!(words.detail.contains("if they were not"), "{}", words.detail);
    assert!(!words.next.contains("hit both"), "{}", words.next);
    let blocked = one_after_the_other("carry", &[40, 40], &[250.0, 251.0], 6.0);
    let unknown = held(Session { order: Order::Unknown, ..blocked.clone() }).words;
    assert!(held(blocked).words.next.starts_with("The retest was hit one club after the other"));
    assert!(unknown.next.contains("is not known") && unknown.next.contains("hit both"), "{}", unknown.next);
}
