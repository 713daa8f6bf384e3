//! What readers of some hundred generated answers stumbled over: each sentence beside the session it was false of.

use crate::made::{also, noise};
use crate::support::{answer, asking, empty, in_turn, one_after_the_other, push};
use judging::claim::{ClaimKind, Claimed};
use judging::facts::HowHit;
use judging::feel::OwnSay;
use judging::luck::Showing;
use judging::trust::{DriftShared, Odd, Seen, Weight};
use judging::verdict::{DecisionKind, Matters, Why};
use session::known::Known;
use session::question::{Goal, LookedAfter, Question, Stopping};
use session::{CustomMeasure, Order, Session};
use telling::cause::{CauseRequest, cause};
use telling::claim::{ClaimRequest, claim};
use telling::consistency::{ConsistencyRequest, consistency};
use telling::feel::{FeelRequest, feel};
use telling::luck::{LuckRequest, luck};
use telling::report::{Ask, OverlayKind, Report};
use telling::share::{ShareRequest, share};
use text::{Language, Units, Voice};

fn found(report: &Report, wanted: impl Fn(&Seen) -> bool) -> Option<String> {
    let finding = report.trust.iter().find(|finding| wanted(&finding.seen))?;
    Some(format!("{} {} {}", finding.what, finding.why, finding.next))
}

/// Turns of so many shots with each of two clubs, the other one first in every second lap.
fn turns(laps: u32, shots: usize) -> Session {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for lap in 0..laps {
        for build in if lap % 2 == 0 { [0, 1] } else { [1, 0] } {
            for at in 0..shots {
                let value = 250.0 + 4.0 * build as f64 + [3.0, -4.0, 1.0, -1.5, 2.5][(at + build) % 5];
                push(&mut session, build, Some(lap + 1), value + f64::from(lap));
            }
        }
    }
    session
}

#[test]
fn one_far_shot_with_each_is_not_most_of_them_with_one() {
    let mut session = in_turn("carry", 6, &[250.0, 255.0], 5.0);
    let of = |build: usize, session: &Session| session.shots.iter().position(|s| s.build == build).unwrap();
    for build in [0, 1] {
        let at = of(build, &session);
        session.shots[at].values[0] = Some(190.0);
    }
    let told =
        found(&answer(session.clone(), asking("carry")), |s| matches!(s, Seen::FarShots { .. })).unwrap();
    assert!(told.starts_with("2 shots lie far from the rest: 1 with "), "{told}");
    let second = session.shots.iter().rposition(|s| s.build == 0).unwrap();
    session.shots[second].values[0] = Some(188.0);
    let first = of(1, &session);
    session.shots[first].values[0] = Some(255.0);
    let told = found(&answer(session, asking("carry")), |s| matches!(s, Seen::FarShots { .. })).unwrap();
    assert!(told.starts_with("2 shots lie far from the rest, both with "), "{told}");
}

#[test]
fn long_turns_are_counted_as_they_were_hit_and_not_praised() {
    let report = answer(turns(3, 12), asking("carry"));
    let told = found(&report, |s| matches!(s, Seen::LongTurns { .. })).expect("long turns");
    // 12, 24, 24, 12.
    assert!(told.contains("turns of up to 24 shots"), "{told}");
    assert_eq!(found(&report, |s| matches!(s, Seen::Order { .. })), None, "in turn, and no praise");
}

#[test]
fn a_drift_that_blocks_do_not_share_is_serious() {
    let drifting = |session: Session| {
        let shots = session.shots.into_iter().enumerate();
        let shots = shots.map(|(at, mut shot)| {
            shot.values[0] = shot.values[0].map(|value| value - 1.5 * at as f64);
            shot
        });
        Session { shots: shots.collect(), ..session }
    };
    let blocked = drifting(one_after_the_other("carry", &[12, 12], &[250.0, 256.0], 4.0));
    let report = answer(blocked, asking("carry"));
    let told =
        found(&report, |s| matches!(s, Seen::Drift { shared: DriftShared::Not, .. })).expect("a drift");
    assert!(told.contains("do not share it"), "{told}");
    let weight = report.trust.iter().find(|f| matches!(f.seen, Seen::Drift { .. })).map(|f| f.weight);
    assert_eq!(weight, Some(Weight::Serious));
    let shared = drifting(in_turn("carry", 6, &[250.0, 256.0], 4.0));
    let told = found(&answer(shared, asking("carry")), |s| {
        matches!(s, Seen::Drift { shared: DriftShared::Alike, .. })
    });
    assert!(told.expect("a drift").contains("Clubs hit in turn share it."));
}

#[test]
fn a_plan_that_nobody_looked_at_is_complete_and_says_so() {
    let planned = |looks: &[u32]| Question {
        stopping: Stopping::Planned { planned_rounds: 6, looked_after: LookedAfter::Rounds(looks.to_vec()) },
        ..asking("carry")
    };
    let told = |looks: &[u32]| {
        let report = answer(in_turn("carry", 6, &[250.0, 255.0], 5.0), planned(looks));
        found(&report, |s| matches!(s, Seen::PlannedLooks { .. })).expect("a plan")
    };
    assert!(
        told(&[]).ends_with("Nobody looked before the end of the plan. The plan is complete."),
        "{}",
        told(&[])
    );
    assert!(told(&[3]).contains("Looking on the way was planned"), "{}", told(&[3]));
}

#[test]
fn a_slip_on_another_measure_leaves_the_answer_worth_what_it_is() {
    let mut session = in_turn("carry", 6, &[250.0, 255.0], 5.0);
    session.measures.push("ball_speed".into());
    for (at, shot) in session.shots.iter_mut().enumerate() {
        shot.values.push(Some(if at == 4 { 1_583.0 } else { 158.0 + (at % 3) as f64 }));
    }
    let report = answer(session, asking("carry"));
    let told = &report.overlays.iter().find(|o| o.kind == OverlayKind::OddValue).expect("asked about").detail;
    assert!(told.contains("the answer on carry does not use it"), "{told}");
    assert!(!told.contains("if the ball was hit so"), "{told}");
}

#[test]
fn a_feeling_that_blocks_seem_to_show_is_no_proof() {
    let session = one_after_the_other("carry", &[14, 14], &[240.0, 275.0], 4.0);
    let say = OwnSay { longer: Some(1), ..OwnSay::default() };
    let request = FeelRequest { session, question: asking("carry"), say };
    let words = feel(&request, &Voice::english()).expect("a say").felt[0].words.clone();
    assert!(words.contains("warming up or tiring may play a part"), "{words}");
}

#[test]
fn shots_without_the_measure_do_not_count_for_it_on_the_card() {
    let mut session = in_turn("carry", 6, &[250.0, 255.0], 5.0);
    for at in [0, 1, 2, 3, 4, 5, 6, 7] {
        session.shots[at].values[0] = None;
    }
    let request = ShareRequest {
        session,
        question: asking("carry"),
        view: session::question::View::default(),
        address: "https://example.org/".into(),
    };
    let shared = share(&request, Some("packed"), &Voice::english()).expect("a usable request");
    assert!(shared.card.counts.contains(" of them measured"), "{}", shared.card.counts);
}

#[test]
fn an_interval_wider_than_the_measure_is_no_interval() {
    let session = turns(2, 14);
    let mut session = Session { measures: vec!["launch_angle".into()], ..session };
    for (at, shot) in session.shots.iter_mut().enumerate() {
        let lap_of_the_club = if (shot.build == 1) == (at < 28) { 9.0 } else { -9.0 };
        shot.values[0] = Some(14.0 + lap_of_the_club + (at % 5) as f64 / 5.0);
    }
    let words = answer(session, asking("launch_angle")).answer.words;
    assert_eq!(words.line, "Cannot tell: too few shots or laps.");
    assert!(words.detail.contains("say next to nothing"), "{}", words.detail);
    assert!(words.step.contains("turns of up to 28"), "{words:?}");
}

#[test]
fn printed_averages_differ_by_the_gap_that_is_printed() {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for lap in 1..=6_u32 {
        for (build, base) in [(0, 254.4), (1, 271.6)] {
            for (at, scatter) in [(0, -3.0), (1, 0.5), (2, 2.5)] {
                push(&mut session, build, Some(lap), base + scatter + f64::from((lap + at) % 2) - 0.5);
            }
        }
    }
    let detail = answer(session, asking("carry")).answer.words.detail;
    assert!(detail.contains("271.6\u{a0}yd") && detail.contains("254.4\u{a0}yd"), "{detail}");
}

/// A measure of the golfer's own, as if its name stood over a column.
fn own_measure(order: Order, gap: f64) -> Session {
    let mut session = one_after_the_other("tempo", &[12, 12], &[3.0, 3.0 + gap], 0.1);
    session.custom = vec![CustomMeasure { id: "tempo".into(), name: "Tempo".into(), unit: String::new() }];
    Session { order, ..session }
}

#[test]
fn a_measure_of_ones_own_whose_order_nobody_can_allow_for_is_never_the_same() {
    for order in [Order::Blocked, Order::Unknown] {
        let question = Question { margin: Some(0.4), ..asking("tempo") };
        let alike = answer(own_measure(order, 0.0), question.clone());
        let decision = alike.answer.decision;
        assert_eq!((decision.kind, decision.why), (DecisionKind::CannotTell, Some(Why::OrderNotAllowedFor)));
        assert_eq!(
            alike.answer.words.headline,
            "How far warming up or tiring moves Tempo is not known, so these shots cannot tell whether Own driver and Driver B are the same."
        );
        assert!(
            alike.answer.words.detail.contains("by a guess, for warming up and tiring"),
            "{}",
            alike.answer.words.detail
        );
        let apart = answer(own_measure(order, 0.9), question);
        assert_eq!(
            apart.answer.decision.matters,
            Some(Matters::Maybe),
            "how much is the order's is not known"
        );
        let headline = apart.answer.words.headline;
        assert!(
            headline.contains("in these shots") && headline.ends_with("tiring is not known."),
            "{headline}"
        );
    }
    let in_turn = Session {
        custom: own_measure(Order::Interleaved, 0.0).custom,
        ..in_turn("tempo", 6, &[3.0, 3.0], 0.1)
    };
    let told = answer(in_turn, Question { margin: Some(0.4), ..asking("tempo") });
    assert_eq!(told.answer.decision.kind, DecisionKind::Same);
}

#[test]
fn a_claim_about_such_a_measure_is_not_settled_by_blocks() {
    let request = ClaimRequest {
        claimed: Claimed { gain: Some(0.9), ..Claimed::default() },
        session: own_measure(Order::Blocked, 0.9),
        question: Question { margin: Some(0.4), goal: Some(Goal::Higher), ..asking("tempo") },
    };
    let told = claim(&request, &Voice::english()).expect("a claim");
    assert_eq!(told.facts.kind, ClaimKind::NotSettled);
}

/// Carry alike, and another measure beside it.
fn alike_in_carry(rounds: u32) -> Session {
    in_turn("carry", rounds, &[250.0, 250.0], 1.0)
}

#[test]
fn nobody_chooses_freely_while_the_measure_asked_for_is_open() {
    let mut session = alike_in_carry(8);
    session.measures.push("spin_rate".into());
    for (at, shot) in session.shots.iter_mut().enumerate() {
        shot.values.push(Some(2_600.0 + 400.0 * ((at * 7 % 11) as f64 - 5.0)));
    }
    let open = answer(session.clone(), asking("spin_rate"));
    assert_eq!(open.answer.decision.kind, DecisionKind::CannotTell);
    let of_carry = open.findings.iter().find(|f| f.measure == Known::Carry).expect("carry");
    assert_eq!(of_carry.decision.kind, DecisionKind::Same);
    assert_eq!(
        of_carry.words.next,
        "Carry does not decide between them, and spin rate is not settled: settle that before choosing."
    );
    let settled = answer(session, asking("carry"));
    assert_eq!(settled.answer.words.next, "Choose by feel, look or price.");
}

#[test]
fn nobody_chooses_freely_by_an_answer_that_hangs_on_a_few_shots() {
    let same = |scatter: f64| answer(in_turn("carry", 4, &[250.0, 250.0], scatter), asking("carry"));
    let hangs = (20..60).map(|tenths| same(f64::from(tenths) / 10.0)).find(|report| {
        report.answer.decision.kind == DecisionKind::Same && report.removals_to_flip.is_some()
    });
    let hangs = hangs.expect("an answer near its margin");
    let next = &hangs.answer.words.next;
    assert!(next.starts_with("Before choosing, check it with a new test: taking out "), "{next}");
    assert!(next.ends_with("would change the answer on carry."), "{next}");
    assert_eq!(same(1.0).answer.words.next, "Choose by feel, look or price.");
}

#[test]
fn a_measure_that_could_not_be_compared_lap_by_lap_is_no_praise() {
    let mut session = in_turn("carry", 6, &[250.0, 252.0], 6.0);
    also(&mut session, "spin_rate", |at, shot| (shot.round == Some(1)).then(|| 2600.0 + 90.0 * noise(at)));
    let report = answer(session, asking("spin_rate"));
    let facts = report.answer.facts.as_ref().expect("facts");
    assert_eq!(facts.order, HowHit::InTurnNotCompared);
    assert_eq!(found(&report, |s| matches!(s, Seen::Order { .. })), None);
    let told = found(&report, |s| matches!(s, Seen::NotCompared { .. })).expect("said instead");
    assert!(told.contains("spin rate could not be compared lap by lap"), "{told}");
}

/// Shots that can be flown, all with one carry.
fn one_carry_for_all() -> Session {
    let mut session = in_turn("ball_speed", 6, &[150.0, 153.0], 2.0);
    for (known, value) in [(Known::LaunchAngle, 12.0), (Known::SpinRate, 2_700.0), (Known::Carry, 250.0)] {
        session.measures.push(known.into());
        for (at, shot) in session.shots.iter_mut().enumerate() {
            let scatter = if known == Known::Carry { 0.0 } else { (at % 5) as f64 / 5.0 };
            shot.values.push(Some(value + scatter));
        }
    }
    session
}

#[test]
fn carries_that_are_all_one_are_read_for_nothing() {
    let (session, voice) = (one_carry_for_all(), Voice::english());
    let request = LuckRequest {
        session: session.clone(),
        question: asking("carry"),
        shown: None,
        showing: Showing::Picked,
    };
    let of_luck = luck(&request, &voice).expect_err("no luck to show");
    assert_eq!(of_luck.message, "With Driver B every shot has the same carry, so luck has nothing to show.");
    let request = CauseRequest { session: session.clone(), baseline: 0, candidate: 1, hand: None };
    let of_cause = cause(&request, &voice).expect_err("no gap to split");
    let of_launch = consistency(&ConsistencyRequest { session }, &voice).expect_err("nothing seen");
    for refused in [of_cause, of_launch] {
        assert_eq!(
            refused.message,
            "Every shot of a club has the same carry, so nothing can be read from it."
        );
        assert_eq!(refused.kind, "no_scatter");
    }
}

#[test]
fn a_point_that_slipped_within_the_range_is_asked_about() {
    let mut session = in_turn("ball_speed", 6, &[150.0, 153.0], 2.0);
    session.shots[4].values[0] = Some(15.4);
    let report = answer(session.clone(), asking("ball_speed"));
    let top = &report.overlays[0];
    assert_eq!((top.kind, top.asks), (OverlayKind::OddValue, Some(Ask::Shot { shot: 4 })));
    assert!(
        top.detail.contains("about a tenth of that, as if a decimal point had slipped"),
        "{}",
        top.detail
    );
    // A ball hit badly is no slip.
    session.shots[4].values[0] = Some(70.0);
    let report = answer(session, asking("ball_speed"));
    assert!(
        report
            .trust
            .iter()
            .all(|finding| !matches!(finding.seen, Seen::OddValue { because: Odd::PointSlipped { .. }, .. }))
    );
}

#[test]
fn a_number_of_shots_names_the_gap_that_it_tells() {
    let open = answer(in_turn("carry", 4, &[250.0, 252.0], 9.0), asking("carry"));
    assert_eq!(open.answer.decision.kind, DecisionKind::CannotTell);
    assert!(open.answer.words.next.contains("a gap of 5\u{a0}yd from none"), "{}", open.answer.words.next);
}

#[test]
fn usual_reasons_are_told_in_the_language_spoken() {
    let mut session = in_turn("carry", 6, &[250.0, 255.0], 5.0);
    session.shots[0].left_out = Some("Thin".into());
    session.shots[9].left_out = Some("wind gust".into());
    let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Meters);
    let told = |session: &Session, voice: &Voice| {
        let request = ShareRequest {
            session: session.clone(),
            question: asking("carry"),
            view: session::question::View::default(),
            address: "https://example.org/".into(),
        };
        share(&request, Some("packed"), voice).expect("a usable request").card.left_out
    };
    assert!(told(&session, &spanish).ends_with("(filazo: 1, wind gust: 1)."), "{}", told(&session, &spanish));
    session.shots[0].left_out = Some("filazo".into());
    assert!(told(&session, &Voice::english()).ends_with("(1 thin, 1 wind gust)."));
}

#[test]
fn spanish_sets_thousands_apart_so_that_nobody_reads_a_decimal() {
    let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Meters);
    assert_eq!(text::with_marks(&spanish, "12850.5"), "12\u{202f}850,5");
    assert_eq!(text::with_marks(&spanish, "2850"), "2850");
}

#[test]
fn nobody_chooses_freely_beside_a_third_club_that_differs() {
    let mut session = in_turn("carry", 8, &[250.0, 250.0, 250.0], 1.0);
    also(&mut session, "spin_rate", |at, shot| {
        Some(2_600.0 + 60.0 * noise(at) + if shot.build == 2 { 900.0 } else { 0.0 })
    });
    let report = answer(session, asking("carry"));
    let told = |candidate: usize| {
        let of = report.findings.iter().find(|f| f.candidate == candidate && f.measure == Known::Carry);
        of.expect("a finding").words.next.clone()
    };
    assert_eq!(told(1), "Carry does not decide between these two: look at Driver C before choosing.");
    assert!(told(2).contains("they differ in spin rate"), "{}", told(2));
}

#[test]
fn an_odd_value_names_its_side() {
    let mut session = in_turn("offline", 6, &[3.0, -2.0], 6.0);
    session.shots[5].values[0] = Some(-101.0);
    let report = answer(session, asking("offline"));
    assert!(
        report.overlays[0].headline.ends_with("offline 101\u{a0}yd left."),
        "{}",
        report.overlays[0].headline
    );
}
