//! The verdict on sessions whose answer can be worked out by hand.

use crate::support::{answer, asking, averages, check, empty, in_turn, one_after_the_other, push};
use judging::analysis::Method;
use judging::verdict::{DecisionKind, Why};
use session::question::{Goal, LookedAfter, Question, Stopping};
use session::{Build, Order, Session, SummaryOf};
use telling::check::CheckRequest;
use telling::report::{OverlayKind, Report};

fn close(a: f64, b: f64, tolerance: f64) {
    assert!((a - b).abs() <= tolerance, "{a} is not {b}");
}

/// The worked session of the methods: rounds of three, AB BA AB BA.
fn worked_session() -> Session {
    let sets: [(usize, [f64; 3]); 8] = [
        (0, [251.0, 247.0, 255.0]),
        (1, [258.0, 262.0, 249.0]),
        (1, [266.0, 259.0, 261.0]),
        (0, [254.0, 250.0, 228.0]),
        (0, [257.0, 252.0, 260.0]),
        (1, [263.0, 255.0, 268.0]),
        (1, [261.0, 241.0, 264.0]),
        (0, [256.0, 253.0, 258.0]),
    ];
    let mut session = empty("carry", 2);
    session.order = Order::Interleaved;
    for (build, values) in sets {
        for value in values {
            push(&mut session, build, None, value);
        }
    }
    session
}

#[test]
fn the_worked_session_gives_its_published_figures() {
    let report = answer(worked_session(), asking("carry"));
    let numbers = &report.findings[0].numbers;
    let welch = numbers.welch.expect("both scatter");
    close(welch.diff, 7.166_667, 1e-6);
    close(welch.high - welch.diff, 6.731_278, 1e-6);
    close(welch.p, 0.037_978, 1e-6);
    close(welch.df, 21.805_106, 1e-6);
    let round = numbers.round.expect("rounds are read off the order");
    close(round.high - round.diff, 6.934_852, 1e-6);
    close(round.p, 0.043_499, 1e-6);
    let estimate = report.answer.estimate.expect("an estimate");
    assert_eq!(estimate.method, Method::Rounds);
    // Its shots lean on each other by 0.134 from one to the next: 1.258 times the variance, where 1.21 are usual (numpy,
    // matrices written out).
    close(estimate.high - estimate.value, 7.778_323, 1e-6);
    close(estimate.equivalence.high - estimate.value, 6.425_991, 1e-6);
    // Plain Welch would have said 'different'; the careful answer does not.
    assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell);
    assert_eq!(report.rounds, 4);
    let open = answer(worked_session(), Question { stopping: Stopping::default(), ..asking("carry") });
    let estimate = open.answer.estimate.expect("an estimate");
    close(estimate.high - estimate.value, 10.632_116, 1e-6);
}

#[test]
fn swapping_the_builds_mirrors_the_answer() {
    for shift in [0.0, 3.0, 9.0, 20.0] {
        let session = in_turn("carry", 5, &[250.0, 250.0 + shift], 6.0);
        let there = answer(session.clone(), asking("carry"));
        let back = answer(session, Question { baseline: 1, ..asking("carry") });
        let (a, b) = (there.answer.estimate.expect("one"), back.answer.estimate.expect("one"));
        close(a.value, -b.value, 1e-12);
        close(a.low, -b.high, 1e-12);
        assert_eq!(there.answer.decision.kind, back.answer.decision.kind);
        assert_eq!(there.answer.decision.matters, back.answer.decision.matters);
    }
}

#[test]
fn the_same_request_gives_the_same_report() {
    let ask = || answer(in_turn("carry", 6, &[250.0, 254.0, 251.0], 9.0), asking("carry"));
    assert_eq!(ask(), ask());
}

#[test]
fn one_block_after_the_other_needs_the_allowance_and_says_so() {
    // Ahead by about 9 yd: far enough for plain averages, not for plain averages after warming up.
    let session = one_after_the_other("carry", &[10, 10], &[250.0, 259.0], 6.0);
    let report = answer(session.clone(), asking("carry"));
    assert!(report.findings[0].numbers.welch.expect("welch").low > 0.0);
    assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell);
    assert_eq!(report.overlays[0].kind, OverlayKind::OrderMixedUp);
    let in_turn = answer(in_turn("carry", 4, &[250.0, 259.0], 6.0), asking("carry"));
    assert_eq!(in_turn.answer.decision.kind, DecisionKind::Different);
    assert!(in_turn.overlays.is_empty());
    // What is not known to have been hit in turn is treated the same way.
    let unknown = answer(Session { order: Order::Unknown, ..session }, asking("carry"));
    assert_eq!(unknown.answer.decision.kind, DecisionKind::CannotTell);
}

#[test]
fn a_candidate_hit_only_after_the_rounds_is_not_compared_within_them() {
    let mut session = in_turn("carry", 4, &[250.0, 252.0], 6.0);
    session.builds.push(Build { name: "Driver C".into() });
    for i in 0..12 {
        push(&mut session, 2, Some(5), 252.0 + f64::from(i % 5));
    }
    let report = answer(session, asking("carry"));
    let method = |candidate| {
        let finding = report.findings.iter().find(|f| f.candidate == candidate).expect("a finding");
        finding.estimate.as_ref().expect("an estimate").method
    };
    assert_eq!(method(1), Method::Rounds);
    assert_eq!(method(2), Method::WelchWithAllowance);
}

#[test]
fn left_out_shots_count_in_the_headline_and_a_hanging_answer_is_no_answer() {
    let mut session = in_turn("carry", 5, &[250.0, 258.0], 5.0);
    let alone = answer(session.clone(), asking("carry"));
    assert_eq!(alone.answer.decision.kind, DecisionKind::Different);
    // Two invented mishits with the candidate hide the lead; without them it is back.
    for i in [3, 27] {
        assert_eq!(session.shots[i].build, 1);
        session.shots[i].values[0] = Some(205.0);
    }
    let counted = answer(session.clone(), asking("carry"));
    assert_eq!(counted.answer.decision.kind, DecisionKind::CannotTell);
    for i in [3, 27] {
        session.shots[i].left_out = Some("mishit".into());
    }
    let report = answer(session, asking("carry"));
    assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell);
    assert_eq!(report.answer.decision.why, Some(Why::DependsOnLeftOut));
    let n = report.answer.estimate.expect("an estimate").n;
    assert_eq!((n.baseline, n.candidate), (15, 15));
    assert_eq!(report.overlays[0].kind, OverlayKind::LeftOut);
}

#[test]
fn trying_more_clubs_asks_more_of_each() {
    let two = answer(in_turn("carry", 4, &[250.0, 256.5], 5.0), asking("carry"));
    let five = answer(in_turn("carry", 4, &[250.0, 256.5, 250.0, 250.0, 250.0], 5.0), asking("carry"));
    let level = |r: &Report| r.answer.estimate.as_ref().expect("an estimate").level;
    assert_eq!(five.answer.candidate, Some(1), "the one that leads is spoken of");
    close(level(&two), 0.95, 1e-12);
    close(level(&five), 1.0 - 0.05 / 4.0, 1e-12);
    assert!(five.overlays.iter().any(|o| o.kind == OverlayKind::SeveralBuilds));
}

#[test]
fn other_measures_stand_in_a_family_of_their_own() {
    let mut session = in_turn("carry", 5, &[250.0, 258.0], 5.0);
    session.measures.push("spin_rate".into());
    for (i, shot) in session.shots.iter_mut().enumerate() {
        shot.values.push(Some(2500.0 + 10.0 * ((i * 7) % 11) as f64));
    }
    let report = answer(session, asking("carry"));
    let level = |i: usize| report.findings[i].estimate.as_ref().expect("an estimate").level;
    close(level(0), 0.95, 1e-12);
    assert!(report.findings[1].measure.as_str() == "spin_rate");
    // Second in line of two after carry, which passes: its divisor is one again.
    close(level(1), 0.95, 1e-12);
}

#[test]
fn a_goal_picks_the_candidate_that_leads_toward_it() {
    let averages = [250.0, 246.0, 262.0, 255.0];
    let ask = |goal| {
        answer(in_turn("carry", 4, &averages, 4.0), Question { goal: Some(goal), ..asking("carry") })
            .answer
            .candidate
    };
    assert_eq!(ask(Goal::Higher), Some(2));
    assert_eq!(ask(Goal::Lower), Some(1));
    assert_eq!(ask(Goal::Different), Some(2));
}

#[test]
fn averages_alone_say_what_they_can() {
    let all = SummaryOf::All;
    let ask = |session| answer(session, asking("carry")).answer;
    let clear = ask(averages(all, Some(20), Some(8.0), [240.0, 262.0]));
    assert_eq!(clear.decision.kind, DecisionKind::Different);
    assert_eq!(clear.estimate.expect("one").method, Method::SummaryWithAllowance);
    let assumed = ask(averages(all, Some(20), None, [240.0, 262.0]));
    assert_eq!(assumed.estimate.as_ref().expect("one").method, Method::SummaryAssumedSpread);
    // d ± z·14·√(1/20 + 1/20) and 6 yd for the order.
    let estimate = assumed.estimate.expect("one");
    close(estimate.low, 22.0 - 1.959_964 * 14.0 * 0.1_f64.sqrt() - 6.0, 1e-5);
    let why = |session| ask(session).decision.why;
    assert_eq!(why(averages(all, None, Some(8.0), [240.0, 262.0])), Some(Why::CountsMissing));
    assert_eq!(why(averages(SummaryOf::Best, Some(5), Some(8.0), [240.0, 262.0])), Some(Why::OnlyTheBest));
    assert_eq!(why(averages(SummaryOf::Chosen, Some(5), Some(8.0), [240.0, 262.0])), Some(Why::OnlyTheBest));
    assert_eq!(why(averages(all, Some(2), Some(8.0), [240.0, 262.0])), Some(Why::TooFewShots));
}

#[test]
fn a_session_that_holds_too_little_says_what_is_missing() {
    let why = |session: Session| answer(session, asking("carry")).answer.decision.why;
    assert_eq!(why(Session::default()), Some(Why::NoShots));
    assert_eq!(why(one_after_the_other("carry", &[5], &[250.0], 5.0)), Some(Why::OneBuild));
    assert_eq!(why(one_after_the_other("carry", &[5, 2], &[250.0, 255.0], 5.0)), Some(Why::TooFewShots));
    assert_eq!(why(one_after_the_other("carry", &[5, 1], &[250.0, 255.0], 5.0)), Some(Why::TooFewShots));
    assert_eq!(why(one_after_the_other("carry", &[5, 5], &[250.0, 255.0], 0.0)), Some(Why::NoScatter));
    let session = one_after_the_other("carry", &[5, 5], &[250.0, 255.0], 5.0);
    let report = answer(session, asking("ball_speed"));
    assert_eq!(report.answer.decision.why, Some(Why::NotMeasured));
}

#[test]
fn requests_that_cannot_be_meant_are_refused_with_place_and_remedy() {
    let session = in_turn("carry", 3, &[250.0, 255.0], 5.0);
    let question = asking("carry");
    let plan =
        |planned_rounds| Stopping::Planned { planned_rounds, looked_after: LookedAfter::EveryRoundTo(2) };
    let cases = [
        ("question.baseline", Question { baseline: 9, ..question.clone() }),
        ("question.candidate", Question { candidate: Some(2), ..question.clone() }),
        ("question.candidate", Question { candidate: Some(0), ..question.clone() }),
        ("question.measure", Question { measure: "no_such".into(), ..question.clone() }),
        ("question.margin", Question { margin: Some(f64::NAN), ..question.clone() }),
        ("question.margin", Question { margin: Some(-1.0), ..question.clone() }),
        ("question.first_margin", Question { first_margin: Some(f64::INFINITY), ..question.clone() }),
        ("question.stopping.planned_rounds", Question { stopping: plan(1), ..question.clone() }),
        ("question.stopping.planned_rounds", Question { stopping: plan(4_000_000_000), ..question.clone() }),
    ];
    for (place, question) in cases {
        let refusal = check(&CheckRequest { session: session.clone(), question }).expect_err(place);
        assert_eq!(refusal.place, place);
        assert!(!refusal.message.is_empty() && !refusal.remedy.is_empty());
    }
    let mut crowded = empty("carry", 2);
    crowded.builds = (0..51).map(|i| Build { name: i.to_string() }).collect();
    assert!(check(&CheckRequest { session: crowded, question }).is_err());
}
