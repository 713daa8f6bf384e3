//! Where a decision turns: ends exactly at zero and at the margin, from both sides and in both directions, and whose
//! margin and goal hold for which measure.

use crate::made::{
    also, around, blocks, close, decided, finding, noise, rounds, set_aside, with_goal, with_margin, without,
};
use crate::support::{answer, asking, averages, in_turn};
use judging::analysis::Method;
use judging::verdict::{Decision, DecisionKind, Direction, Matters, Why};
use session::question::{Goal, Question};
use session::{Session, SummaryOf};
use telling::report::Report;

/// Averages of 20 shots each without a deviation: how wide their interval is does not depend on them, so that its end
/// can be put where it is wanted.
fn averages_apart(candidate: f64) -> Session {
    averages(SummaryOf::All, Some(20), None, [0.0, candidate])
}

fn estimate(report: &Report) -> &judging::analysis::Estimate {
    report.answer.estimate.as_ref().expect("an estimate")
}

/// Half the width of the interval that decides 'different', and of the one that decides 'the same'.
fn half_widths() -> (f64, f64) {
    let report = answer(averages_apart(0.0), asking("carry"));
    (estimate(&report).high, estimate(&report).equivalence.high)
}

#[test]
fn an_interval_that_begins_at_zero_does_not_exclude_it_and_one_just_above_does() {
    let (half, _) = half_widths();
    let at = answer(averages_apart(half), asking("carry"));
    assert!(estimate(&at).low.abs() < f64::MIN_POSITIVE, "the end stands at zero");
    assert_eq!(at.answer.decision.kind, DecisionKind::CannotTell);
    let above = decided(&averages_apart(half.next_up()), asking("carry"));
    assert_eq!((above.kind, above.direction), (DecisionKind::Different, Some(Direction::Higher)));
}

#[test]
fn an_interval_that_ends_at_zero_does_not_exclude_it_and_one_just_below_does() {
    let (half, _) = half_widths();
    let at = answer(averages_apart(-half), asking("carry"));
    assert!(estimate(&at).high.abs() < f64::MIN_POSITIVE, "the end stands at zero");
    assert_eq!(at.answer.decision.kind, DecisionKind::CannotTell);
    let below = decided(&averages_apart(-half.next_up()), asking("carry"));
    assert_eq!((below.kind, below.direction), (DecisionKind::Different, Some(Direction::Lower)));
}

#[test]
fn an_interval_that_reaches_the_margin_is_not_within_it_above_and_below() {
    let (_, same) = half_widths();
    for lead in [3.0, -3.0] {
        let session = averages_apart(lead);
        let report = answer(session.clone(), asking("carry"));
        let within = &estimate(&report).equivalence;
        let far = if lead > 0.0 { within.high } else { -within.low };
        close(far, 3.0 + same, 1e-9);
        assert_eq!(decided(&session, with_margin("carry", far)).kind, DecisionKind::CannotTell, "{lead}");
        assert_eq!(decided(&session, with_margin("carry", far.next_up())).kind, DecisionKind::Same, "{lead}");
    }
}

#[test]
fn a_lead_that_is_at_least_the_margin_matters_and_one_just_short_of_it_may() {
    for lead in [25.0, -25.0] {
        let session = averages_apart(lead);
        let report = answer(session.clone(), asking("carry"));
        let near = if lead > 0.0 { estimate(&report).low } else { -estimate(&report).high };
        let matters = |margin| decided(&session, with_margin("carry", margin)).matters;
        assert_eq!(matters(near), Some(Matters::Yes), "{lead}");
        assert_eq!(matters(near.next_up()), Some(Matters::Maybe), "{lead}");
    }
}

#[test]
fn a_real_lead_matters_not_only_when_the_interval_for_same_lies_within_the_margin() {
    for lead in [25.0, -25.0] {
        let session = averages_apart(lead);
        let report = answer(session.clone(), asking("carry"));
        let within = &estimate(&report).equivalence;
        let far = within.high.abs().max(within.low.abs());
        // The interval for 'different' is wider and reaches past this margin.
        assert!(far < estimate(&report).high.abs().max(estimate(&report).low.abs()));
        let matters = |margin| decided(&session, with_margin("carry", margin)).matters;
        assert_eq!(matters(far), Some(Matters::Maybe), "{lead}");
        assert_eq!(matters(far.next_up()), Some(Matters::No), "{lead}");
    }
}

#[test]
fn a_ratio_within_the_margin_is_the_same_and_at_the_margin_it_is_not() {
    let session = blocks("carry", &[around(250.0, 5.0, 24, 0), around(250.0, 5.2, 24, 0)]);
    let report = answer(session.clone(), with_goal("carry", Goal::Tighter));
    let far = estimate(&report).equivalence.high.max(1.0 / estimate(&report).equivalence.low);
    let kind = |margin| {
        decided(&session, Question { margin: Some(margin), ..with_goal("carry", Goal::Tighter) }).kind
    };
    assert_eq!(kind(far * (1.0 - 1e-12)), DecisionKind::CannotTell);
    assert_eq!(kind(far * (1.0 + 1e-12)), DecisionKind::Same);
}

/// Carry and ball speed: carry differs by about 7 yd, ball speed by exactly 3 mph with hardly any scatter.
fn carry_and_speed() -> Session {
    let mut session = in_turn("carry", 6, &[250.0, 256.0], 5.0);
    also(&mut session, "ball_speed", |at, shot| {
        Some(150.0 + if shot.build == 1 { 3.0 } else { 0.0 } + 0.1 * noise(at))
    });
    session
}

#[test]
fn the_golfers_margin_holds_for_the_measure_asked_for_alone() {
    let matters = |margin| {
        let report = answer(carry_and_speed(), with_margin("carry", margin));
        (report.answer.decision.matters, finding(&report, 1, "ball_speed").decision.matters)
    };
    // 12 yd would make 3 mph too small to matter, a tenth of a yard 7 yd certain to.
    assert_eq!(matters(12.0), (Some(Matters::No), Some(Matters::Yes)));
    assert_eq!(matters(0.1), (Some(Matters::Yes), Some(Matters::Yes)));
    let report = answer(carry_and_speed(), with_margin("ball_speed", 9.0));
    assert_eq!(report.answer.decision.matters, Some(Matters::No));
    assert_eq!(finding(&report, 1, "carry").decision.matters, Some(Matters::Maybe));
}

#[test]
fn the_golfers_goal_holds_for_the_measure_asked_for_alone() {
    let report = answer(carry_and_speed(), with_goal("carry", Goal::Tighter));
    assert_eq!(finding(&report, 1, "carry").estimate.as_ref().map(|e| e.method), Some(Method::SpreadRatio));
    assert_eq!(finding(&report, 1, "ball_speed").estimate.as_ref().map(|e| e.method), Some(Method::Rounds));
}

#[test]
fn scatter_has_no_unit_and_an_average_has() {
    let unit = |goal| estimate(&answer(carry_and_speed(), with_goal("carry", goal))).unit.clone();
    assert_eq!(unit(Goal::Tighter), "");
    assert_eq!(unit(Goal::Higher), "yd");
}

/// The candidate fifteen yards behind, but for shots far ahead that are set aside: more than half of its shots.
fn turned_round_by_left_out(way: f64) -> Session {
    let round = |r: usize| {
        let at = |i: usize| 0.3 * noise(4 * r + i);
        let base: Vec<f64> = (0..3).map(|i| 250.0 + at(i)).collect();
        let cand =
            vec![250.0 + way * (-4.0 + at(3)), 250.0 + way * (12.0 + at(4)), 250.0 + way * (12.0 + at(5))];
        vec![base, cand]
    };
    rounds("carry", &(0..8).map(round).collect::<Vec<_>>())
}

#[test]
fn left_out_shots_that_turn_the_winner_round_are_no_verdict() {
    for (way, with_all, rest) in
        [(1.0, Direction::Higher, Direction::Lower), (-1.0, Direction::Lower, Direction::Higher)]
    {
        let mut session = turned_round_by_left_out(way);
        let far = |_: usize, shot: &session::Shot| (shot.values[0].unwrap_or(0.0) - 250.0).abs() > 8.0;
        let all = decided(&session, asking("carry"));
        assert_eq!((all.kind, all.direction), (DecisionKind::Different, Some(with_all)));
        let few = decided(&without(&session, far), asking("carry"));
        assert_eq!((few.kind, few.direction), (DecisionKind::Different, Some(rest)));
        set_aside(&mut session, far);
        let found = decided(&session, asking("carry"));
        assert_eq!((found.kind, found.why), (DecisionKind::CannotTell, Some(Why::DependsOnLeftOut)));
        assert_eq!((found.direction, found.matters), (None, None));
    }
}

#[test]
fn left_out_shots_that_change_only_how_much_it_matters_leave_the_decision_on_all_shots() {
    let mut session = in_turn("carry", 6, &[250.0, 260.0], 3.0);
    session.shots[4].values[0] = Some(225.0);
    assert_eq!(session.shots[4].build, 1);
    let mishit = |at: usize, _: &session::Shot| at == 4;
    let all = decided(&session, asking("carry"));
    let rest = decided(&without(&session, mishit), asking("carry"));
    assert_eq!((all.kind, rest.kind), (DecisionKind::Different, DecisionKind::Different));
    assert_eq!((all.matters, rest.matters), (Some(Matters::Maybe), Some(Matters::Yes)));
    set_aside(&mut session, mishit);
    assert_eq!(decided(&session, asking("carry")), all);
}

#[test]
fn one_left_out_shot_of_either_build_is_enough_for_an_answer_to_hang_on() {
    for (build, far) in [(1, 215.0), (0, 292.0)] {
        let mut session = in_turn("carry", 5, &[250.0, 257.0], 5.0);
        let at = session.shots.iter().rposition(|shot| shot.build == build).expect("shots");
        session.shots[at].values[0] = Some(far);
        set_aside(&mut session, |here, _| here == at);
        assert_eq!(decided(&session, asking("carry")).why, Some(Why::DependsOnLeftOut), "{build}");
    }
}

#[test]
fn shots_of_a_third_build_set_aside_change_nothing_for_a_pair_that_has_none() {
    // The third build's wild shots widen the scatter that all builds share; set aside they would narrow it.
    let mut session = in_turn("carry", 5, &[250.0, 255.0, 250.0], 5.0);
    for (at, shot) in session.shots.iter_mut().enumerate().filter(|(_, shot)| shot.build == 2) {
        shot.values[0] = Some(250.0 + 14.0 * noise(at));
    }
    let wild = |at: usize, shot: &session::Shot| shot.build == 2 && noise(at).abs() > 0.55;
    let question = || Question { candidate: Some(1), ..asking("carry") };
    let all = decided(&session, question());
    let rest = decided(&without(&session, wild), question());
    assert_ne!(all.kind, rest.kind, "else the test would say nothing");
    set_aside(&mut session, wild);
    assert_eq!(decided(&session, question()), all);
    let report = answer(session, asking("carry"));
    assert_eq!(finding(&report, 1, "carry").decision, all);
}

#[test]
fn scatter_is_judged_as_scatter_also_without_what_was_left_out() {
    let tight = || {
        let mut session = blocks("carry", &[around(250.0, 9.0, 24, 0), around(250.0, 2.0, 24, 5)]);
        set_aside(&mut session, |at, _| at == 30);
        session
    };
    let found = decided(&tight(), with_goal("carry", Goal::Tighter));
    let tighter = Decision { matters: found.matters, ..found };
    assert_eq!((tighter.kind, tighter.direction), (DecisionKind::Different, Some(Direction::Lower)));
    assert_eq!(found.why, None);
}
