//! Which comparison a session allows, and at what number of shots, turns and rounds it changes.

use crate::made::{
    also, around, blocks, close, decided, finding, mean, noise, rounds, set_aside, summary, with_goal,
};
use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::analysis::{Estimate, Method};
use judging::facts::HowHit;
use judging::verdict::{DecisionKind, Why};
use session::question::{Goal, Question};
use session::{Order, Session, SummaryOf};
use telling::report::{OverlayKind, Report};

fn estimate(report: &Report) -> &Estimate {
    report.answer.estimate.as_ref().expect("an estimate")
}

fn half(report: &Report) -> f64 {
    (estimate(report).high - estimate(report).low) / 2.0
}

/// Shots of one turn that scatter by this much around exactly this average.
fn set_of(average: f64, scatter: f64, shots: usize, from: usize) -> Vec<f64> {
    let values: Vec<f64> = (0..shots).map(|i| scatter * noise(from + 5 * i)).collect();
    let middle = values.iter().sum::<f64>() / shots as f64;
    values.iter().map(|v| average + v - middle).collect()
}

/// Three rounds of turns this long whose differences are 0, 3 and 6 yd, with much scatter within each turn: the sets
/// do not disagree beyond luck, and yet whole rounds say far less than single shots.
fn turns_of(shots: usize) -> Session {
    let set =
        |r: usize| vec![set_of(250.0, 14.0, shots, r), set_of(250.0 + 3.0 * r as f64, 14.0, shots, r + 7)];
    rounds("carry", &(0..3).map(set).collect::<Vec<_>>())
}

/// Half the 95 % interval of whole rounds that differ by 0, 3 and 6 yd: t of two degrees of freedom times 3/√3.
const WHOLE_ROUNDS: f64 = 4.302_653 * 1.732_051;

/// Half the interval of single shots within rounds, widened for turns of five: by a tenth for three, and 0.07 of its square
/// for each shot more.
fn of_shots(report: &Report) -> f64 {
    let round = report.findings[0].numbers.round.expect("hit in turn");
    (1.10_f64.powi(2) + 2.0 * 0.07).sqrt() * (round.high - round.diff)
}

#[test]
fn turns_too_long_fall_back_to_a_blocked_comparison() {
    // Between the two, single shots would promise more than whole rounds can keep.
    for shots in [12, 24, 36] {
        let report = answer(turns_of(shots), asking("carry"));
        assert_eq!(estimate(&report).method, Method::Rounds);
        close(half(&report), WHOLE_ROUNDS.max(of_shots(&report)), 1e-4);
    }
    let longest = answer(turns_of(36), asking("carry"));
    assert!(of_shots(&longest) < WHOLE_ROUNDS - 0.5, "{}", of_shots(&longest));
}

/// Six rounds of turns this long whose differences lie a little farther apart than shots would put them.
fn mild_turns_of(shots: [usize; 2]) -> Session {
    let set = |r: usize| {
        let lead = if r.is_multiple_of(2) { 3.3 } else { -3.3 };
        vec![set_of(250.0, 5.0, shots[0], 5 * r), set_of(253.0 + lead, 5.0, shots[1], 5 * r + 3)]
    };
    rounds("carry", &(0..6).map(set).collect::<Vec<_>>())
}

/// Half the 95 % interval with whole rounds as the unit, each weighted by its shots.
fn whole_rounds(session: &Session, t: f64) -> f64 {
    let (mut weights, mut differences) = (Vec::new(), Vec::new());
    for round in 1..=6 {
        let of = |build| {
            let here = session.shots.iter().filter(|s| s.round == Some(round) && s.build == build);
            here.filter_map(|s| s.values[0]).collect::<Vec<f64>>()
        };
        let (base, cand) = (of(0), of(1));
        let average = |values: &[f64]| values.iter().sum::<f64>() / values.len() as f64;
        weights.push((base.len() * cand.len()) as f64 / (base.len() + cand.len()) as f64);
        differences.push(average(&cand) - average(&base));
    }
    let all: f64 = weights.iter().sum();
    let middle = weights.iter().zip(&differences).map(|(w, d)| w * d).sum::<f64>() / all;
    let squares: f64 = weights.iter().zip(&differences).map(|(w, d)| w * (d - middle) * (d - middle)).sum();
    t * (squares / 5.0 / all).sqrt()
}

#[test]
fn turns_of_five_rest_on_shots_and_turns_just_longer_on_whole_rounds() {
    // t of five degrees of freedom.
    let t = 2.570_582;
    for (shots, falls_back) in
        [([5, 5], false), ([4, 6], false), ([5, 6], true), ([6, 5], true), ([6, 6], true)]
    {
        let session = mild_turns_of(shots);
        let report = answer(session.clone(), asking("carry"));
        let (rounds, single) = (whole_rounds(&session, t), of_shots(&report));
        assert!(rounds > single + 0.05, "else the test would say nothing: {rounds} {single} {shots:?}");
        close(half(&report), if falls_back { rounds } else { single }, 1e-4);
    }
}

#[test]
fn sets_that_disagree_fall_back_to_whole_rounds_however_short_the_turns() {
    let set = |r: usize| {
        let lead = if r.is_multiple_of(2) { 9.0 } else { -9.0 };
        vec![around(250.0, 3.0, 3, 5 * r), around(253.0 + lead, 3.0, 3, 5 * r + 3)]
    };
    let session = rounds("carry", &(0..6).map(set).collect::<Vec<_>>());
    let report = answer(session.clone(), asking("carry"));
    close(half(&report), whole_rounds(&session, 2.570_582), 1e-4);
}

#[test]
fn with_three_builds_and_sets_of_different_sizes_the_fallback_stays_around_the_difference_of_all_rounds() {
    let set = |r: usize| {
        let lead = if r.is_multiple_of(2) { 9.0 } else { -7.0 };
        let n = if r < 3 { 4 } else { 2 };
        vec![
            around(250.0, 3.0, 6 - n, 5 * r),
            around(253.0 + lead, 3.0, n, 5 * r + 3),
            around(251.0 - 0.5 * lead, 3.0, 2 + r % 3, 5 * r + 7),
        ]
    };
    let session = rounds("carry", &(0..6).map(set).collect::<Vec<_>>());
    let report = answer(session, Question { candidate: Some(1), ..asking("carry") });
    let round = finding(&report, 1, "carry").numbers.round.expect("hit in turn");
    close(estimate(&report).value, round.diff, 1e-9);
    close(estimate(&report).value - estimate(&report).low, estimate(&report).high - round.diff, 1e-9);
    assert!(half(&report) > 1.10 * (round.high - round.diff), "it fell back");
}

#[test]
fn two_rounds_in_turn_are_enough_and_one_is_not() {
    let method = |n| estimate(&answer(in_turn("carry", n, &[250.0, 252.0], 5.0), asking("carry"))).method;
    assert_eq!(method(2), Method::Rounds);
    assert_eq!(method(1), Method::WelchWithAllowance);
    let report = answer(in_turn("carry", 2, &[250.0, 252.0], 5.0), asking("carry"));
    assert_eq!(report.rounds, 2);
    assert_eq!(answer(in_turn("carry", 1, &[250.0, 252.0], 5.0), asking("carry")).rounds, 0);
}

#[test]
fn three_shots_of_each_in_the_rounds_that_hold_both_are_enough_and_two_are_not() {
    // Rounds with a shot of each build, and two more with a shot of one: as many shots as any verdict needs, but not of both.
    let one =
        |base: Option<f64>, cand: Option<f64>| vec![base.into_iter().collect(), cand.into_iter().collect()];
    let mut sets = vec![
        one(Some(250.0), Some(256.0)),
        one(Some(252.0), Some(255.0)),
        one(Some(251.0), None),
        one(None, Some(254.0)),
    ];
    let report = answer(rounds("carry", &sets), asking("carry"));
    assert_eq!(estimate(&report).method, Method::WelchWithAllowance);
    assert!(report.findings[0].numbers.round.is_none());
    let facts = report.answer.facts.expect("facts");
    assert_eq!(facts.order, HowHit::InTurnNotCompared);
    assert!(
        report.answer.words.next.contains("so that it can be compared lap by lap"),
        "{}",
        report.answer.words.next
    );
    sets.push(one(Some(249.0), Some(252.0)));
    let report = answer(rounds("carry", &sets), asking("carry"));
    assert_eq!(estimate(&report).method, Method::Rounds);
    let round = report.findings[0].numbers.round.expect("hit in turn");
    close(round.df, 2.0, 0.0);
    close(round.diff, 4.0, 1e-12);
}

#[test]
fn rounds_that_hold_the_measure_of_one_build_only_are_not_shared() {
    // Ball speed of the candidate was read in the first of four rounds and, after them, alone.
    let mut session = in_turn("carry", 5, &[250.0, 252.0, 251.0], 5.0);
    session.shots.retain(|shot| shot.round != Some(5) || shot.build == 1);
    also(&mut session, "ball_speed", |at, shot| {
        let read = shot.build != 1 || shot.round == Some(1) || shot.round == Some(5);
        read.then(|| 150.0 + noise(at))
    });
    let report = answer(session, Question { candidate: Some(1), ..asking("ball_speed") });
    let of = |measure| finding(&report, 1, measure).estimate.as_ref().map(|e| e.method);
    assert_eq!(of("carry"), Some(Method::Rounds));
    assert_eq!(of("ball_speed"), Some(Method::WelchWithAllowance));
}

#[test]
fn rounds_named_count_only_where_the_builds_were_hit_in_turn() {
    let session = in_turn("carry", 4, &[250.0, 252.0], 5.0);
    for order in [Order::Blocked, Order::Unknown] {
        let report = answer(Session { order, ..session.clone() }, asking("carry"));
        assert_eq!((estimate(&report).method, report.rounds), (Method::WelchWithAllowance, 0), "{order:?}");
    }
}

#[test]
fn rounds_that_are_named_are_taken_as_named() {
    // Hit as AB AB AB AB, named as two rounds of two passes each.
    let mut session = in_turn("carry", 4, &[250.0, 252.0], 5.0);
    session.shots.iter_mut().for_each(|shot| shot.round = shot.round.map(|r| r.div_ceil(2)));
    assert_eq!(answer(session.clone(), asking("carry")).rounds, 2);
    // One that is not named leaves them to the order.
    session.shots[7].round = None;
    assert_eq!(answer(session, asking("carry")).rounds, 4);
}

#[test]
fn fewer_than_three_shots_are_refused_on_either_side_and_three_are_not() {
    let why = |counts: [usize; 2]| {
        decided(&one_after_the_other("carry", &counts, &[250.0, 255.0], 5.0), asking("carry")).why
    };
    for few in [1, 2] {
        assert_eq!(why([few, 9]), Some(Why::TooFewShots), "{few}");
        assert_eq!(why([9, few]), Some(Why::TooFewShots), "{few}");
    }
    for counts in [[3, 9], [9, 3], [3, 3]] {
        assert_eq!(why(counts), None, "{counts:?}");
    }
}

#[test]
fn scatter_takes_five_shots_on_either_side() {
    let why = |counts: [usize; 2]| {
        let session = blocks("carry", &[around(250.0, 5.0, counts[0], 0), around(250.0, 5.0, counts[1], 4)]);
        decided(&session, with_goal("carry", Goal::Tighter)).why
    };
    assert_eq!(why([4, 12]), Some(Why::TooFewShots));
    assert_eq!(why([12, 4]), Some(Why::TooFewShots));
    assert_eq!(why([4, 4]), Some(Why::TooFewShots));
    for counts in [[5, 12], [12, 5], [5, 5]] {
        assert_eq!(why(counts), None, "{counts:?}");
    }
    // Enough shots, all alike: what is missing is scatter, not shots.
    let still = |n: [usize; 2], scatter: [f64; 2]| {
        let session =
            blocks("carry", &[around(250.0, scatter[0], n[0], 0), around(250.0, scatter[1], n[1], 4)]);
        decided(&session, with_goal("carry", Goal::Tighter)).why
    };
    assert_eq!(still([5, 5], [0.0, 5.0]), Some(Why::NoScatter));
    assert_eq!(still([5, 5], [5.0, 0.0]), Some(Why::NoScatter));
    assert_eq!(still([5, 4], [0.0, 5.0]), Some(Why::TooFewShots));
}

#[test]
fn scatter_has_no_allowance_for_order_and_no_drift_to_explain() {
    let session = blocks("carry", &[around(250.0, 9.0, 24, 0), around(270.0, 2.0, 24, 5)]);
    let report = answer(session, with_goal("carry", Goal::Tighter));
    close(estimate(&report).order_allowance, 0.0, 0.0);
    assert!(!report.overlays.iter().any(|o| o.kind == OverlayKind::OrderMixedUp));
}

#[test]
fn what_was_hit_in_turn_needs_no_drift_to_explain_it() {
    let report = answer(in_turn("carry", 5, &[250.0, 262.0], 5.0), asking("carry"));
    assert_eq!(report.answer.decision.kind, DecisionKind::Different);
    close(estimate(&report).order_allowance, 0.0, 0.0);
    assert!(report.overlays.is_empty());
}

#[test]
fn a_lead_that_plain_averages_would_believe_is_said_to_be_one_either_way() {
    const PLAIN: &str =
        "At the usual 95 %, comparing the plain averages would have called this a difference.";
    for way in [1.0, -1.0] {
        let detail = |lead: f64| {
            let builds = [around(250.0, 5.0, 12, 0), around(250.0 + way * lead, 5.0, 12, 4)];
            let report = answer(blocks("carry", &builds), asking("carry"));
            assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell, "{lead}");
            let overlay = report.overlays.iter().find(|o| o.kind == OverlayKind::OrderMixedUp);
            overlay.expect("not hit in turn").detail.clone()
        };
        assert!(detail(8.0).contains(PLAIN), "{}", detail(8.0));
        assert!(!detail(2.0).contains(PLAIN), "{}", detail(2.0));
    }
}

/// Whether the answer hangs on shots that were set aside, and what is said of a drift from one club to the other.
fn drift_told(session: &Session) -> (bool, String) {
    let report = answer(session.clone(), asking("carry"));
    let overlay = report.overlays.iter().find(|o| o.kind == OverlayKind::OrderMixedUp).expect("not in turn");
    let hangs = report.answer.decision.why == Some(Why::DependsOnLeftOut);
    (hangs, overlay.detail.rsplit_once(". ").expect("several sentences").1.to_owned())
}

#[test]
fn a_drift_larger_than_order_is_allowed_is_never_called_only_that_much() {
    for way in [1.0, -1.0] {
        let session =
            |lead: f64| blocks("carry", &[around(250.0, 5.0, 12, 0), around(250.0 + way * lead, 5.0, 12, 4)]);
        // Found on all shots, and not without the candidate's best.
        let mut clear = session(13.0);
        assert!(drift_told(&clear).1.starts_with("Only with a drift of 8"), "{:?}", drift_told(&clear));
        set_aside(&mut clear, |_, shot| {
            shot.build == 1 && way * (shot.values[0].unwrap_or(0.0) - 250.0) > 12.0
        });
        let (hangs, told) = drift_told(&clear);
        assert!(hangs && told.starts_with("Only with a drift of 8"), "{told}");
        // Not found on all shots, and found without the candidate's worst: the allowance alone hides it.
        let mut hidden = session(9.5);
        set_aside(&mut hidden, |_, shot| {
            shot.build == 1 && way * (shot.values[0].unwrap_or(0.0) - 250.0) < 9.5
        });
        let (hangs, told) = drift_told(&hidden);
        assert!(hangs && told.starts_with("With a drift of only 6"), "{told}");
    }
}

#[test]
fn a_group_of_two_has_a_deviation_and_of_one_has_none() {
    let sd = |n: usize| {
        let report = answer(one_after_the_other("carry", &[9, n], &[250.0, 255.0], 5.0), asking("carry"));
        report.findings[0].numbers.candidate.expect("shots").sd
    };
    assert_eq!(sd(1), None);
    assert!(sd(2).is_some_and(|sd| sd > 0.0));
    let (one, other) = (250.0, 254.0);
    let two = blocks("carry", &[around(250.0, 5.0, 9, 0), vec![one, other]]);
    let found = answer(two, asking("carry")).findings[0].numbers.candidate.expect("shots").sd;
    close(found.expect("two shots"), (other - one) / 2.0_f64.sqrt(), 1e-12);
}

#[test]
fn shots_needed_grow_with_the_candidates_and_fill_their_last_turn() {
    let settle = |averages: &[f64], goal| {
        let builds: Vec<Vec<f64>> =
            averages.iter().enumerate().map(|(i, a)| around(*a, 5.0, 24, 5 * i)).collect();
        let question = Question { candidate: Some(1), ..with_goal("carry", goal) };
        estimate(&answer(blocks("carry", &builds), question)).shots_to_settle.expect("a margin")
    };
    for goal in [Goal::Higher, Goal::Tighter] {
        let (one, four) = (settle(&[250.0; 2], goal), settle(&[250.0; 5], goal));
        assert!(four > one, "{goal:?}: {four} {one}");
        assert!(one % 3 == 0 && four % 3 == 0, "{goal:?}");
    }
}

#[test]
fn an_average_of_the_best_beside_shots_is_refused_on_either_side() {
    for shots_of in [0, 1] {
        let mut session = blocks("carry", &[around(250.0, 5.0, 12, 0), Vec::new()]);
        session.shots.iter_mut().for_each(|shot| shot.build = shots_of);
        session.summaries =
            vec![summary(1 - shots_of, "carry", mean(260.0, Some(5.0)), Some(12), SummaryOf::Best)];
        assert_eq!(decided(&session, asking("carry")).why, Some(Why::OnlyTheBest), "{shots_of}");
    }
}
