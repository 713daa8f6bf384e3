//! What readers of some hundred generated answers stumbled over: each sentence beside the session it was false of.

use crate::support::{answer, asking, empty, in_turn, one_after_the_other, push};
use judging::feel::OwnSay;
use judging::trust::{Seen, Weight};
use session::question::{LookedAfter, Question, Stopping};
use session::{Order, Session};
use telling::feel::{FeelRequest, feel};
use telling::report::{OverlayKind, Report};
use telling::share::{ShareRequest, share};
use text::Voice;

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
    assert!(told.starts_with("2 shots lie far from the rest, all with "), "{told}");
}

#[test]
fn long_turns_are_counted_as_they_were_hit_and_not_praised() {
    let report = answer(turns(3, 12), asking("carry"));
    let told = found(&report, |s| matches!(s, Seen::LongTurns { .. })).expect("long turns");
    // 12, 24, 24, 12.
    assert!(told.contains("18 shots"), "{told}");
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
    let told = found(&report, |s| matches!(s, Seen::Drift { in_turn: false, .. })).expect("a drift");
    assert!(told.contains("do not share it"), "{told}");
    let weight = report.trust.iter().find(|f| matches!(f.seen, Seen::Drift { .. })).map(|f| f.weight);
    assert_eq!(weight, Some(Weight::Serious));
    let shared = drifting(in_turn("carry", 6, &[250.0, 256.0], 4.0));
    let told = found(&answer(shared, asking("carry")), |s| matches!(s, Seen::Drift { in_turn: true, .. }));
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
    assert!(shared.card.counts.contains("18 shots, measured on "), "{}", shared.card.counts);
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
