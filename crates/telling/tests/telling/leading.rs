//! Which candidate the answer speaks of, for every goal and in every tie, and which questions are refused at the edge.

use crate::made::{around, blocks, mean, summary, with_goal, with_margin};
use crate::support::{answer, asking, check, empty, in_turn};
use judging::verdict::Why;
use session::question::{Goal, LookedAfter, Question, Stopping};
use session::{Build, SummaryOf};
use telling::check::CheckRequest;

fn leads(averages: &[f64], goal: Goal) -> Option<usize> {
    answer(in_turn("offline", 4, averages, 4.0), with_goal("offline", goal)).answer.candidate
}

#[test]
fn for_straighter_the_club_nearest_to_zero_leads() {
    // Not the one nearest to the baseline, not the one farthest left, not the first, not the last.
    assert_eq!(leads(&[10.0, -20.0, 8.0, 3.0, 30.0], Goal::NearerZero), Some(3));
    assert_eq!(leads(&[-10.0, 20.0, -8.0, -3.0, -30.0], Goal::NearerZero), Some(3));
    assert_eq!(leads(&[10.0, 2.0, 8.0, 3.0, 30.0], Goal::NearerZero), Some(1));
}

#[test]
fn straighter_is_what_offline_is_asked_for_when_nothing_is_said() {
    let session = in_turn("offline", 4, &[10.0, 25.0, -2.0, 12.0], 4.0);
    let report = answer(session, asking("offline"));
    assert_eq!((report.asked.goal, report.answer.candidate), (Goal::NearerZero, Some(2)));
}

#[test]
fn for_any_difference_the_one_farthest_from_the_baseline_leads_on_either_side() {
    assert_eq!(leads(&[10.0, 14.0, -4.0, 20.0], Goal::Different), Some(2));
    assert_eq!(leads(&[10.0, 14.0, 24.0, 0.0], Goal::Different), Some(2));
}

#[test]
fn for_lower_and_for_higher_the_ends_lead() {
    assert_eq!(leads(&[10.0, 14.0, -4.0, 20.0], Goal::Lower), Some(2));
    assert_eq!(leads(&[10.0, 14.0, -4.0, 20.0], Goal::Higher), Some(3));
}

#[test]
fn for_tighter_the_one_that_scatters_least_leads() {
    let of = |scatter: [f64; 4]| {
        let builds: Vec<Vec<f64>> =
            scatter.iter().enumerate().map(|(i, s)| around(250.0, *s, 24, 5 * i)).collect();
        answer(blocks("carry", &builds), with_goal("carry", Goal::Tighter)).answer.candidate
    };
    assert_eq!(of([5.0, 9.0, 3.0, 4.0]), Some(2));
    assert_eq!(of([5.0, 9.0, 8.0, 7.0]), Some(3));
}

#[test]
fn of_those_that_lead_alike_the_first_is_spoken_of() {
    let same = around(255.0, 4.0, 12, 0);
    let session = blocks("carry", &[around(250.0, 4.0, 12, 3), same.clone(), same.clone(), same]);
    for goal in [Goal::Higher, Goal::Lower, Goal::NearerZero, Goal::Different, Goal::Tighter] {
        assert_eq!(answer(session.clone(), with_goal("carry", goal)).answer.candidate, Some(1), "{goal:?}");
    }
}

#[test]
fn one_that_cannot_be_compared_leads_only_when_none_can() {
    let (base, two) = (around(250.0, 4.0, 12, 3), vec![299.0, 301.0]);
    let none = blocks("carry", &[base.clone(), two.clone(), vec![250.0], two.clone()]);
    let report = answer(none, asking("carry"));
    assert_eq!((report.answer.candidate, report.answer.decision.why), (Some(1), Some(Why::TooFewShots)));
    let one = blocks("carry", &[base, two, around(240.0, 4.0, 12, 7)]);
    assert_eq!(answer(one, asking("carry")).answer.candidate, Some(2));
}

#[test]
fn the_lead_is_that_of_the_measure_asked_for() {
    let mut session = in_turn("carry", 4, &[250.0, 252.0, 256.0], 4.0);
    crate::made::also(&mut session, "ball_speed", |at, shot| {
        Some(150.0 + if shot.build == 1 { 40.0 } else { 0.0 } + crate::made::noise(at))
    });
    assert_eq!(answer(session.clone(), asking("carry")).answer.candidate, Some(2));
    assert_eq!(answer(session, asking("ball_speed")).answer.candidate, Some(1));
}

#[test]
fn averages_of_one_club_alone_are_one_build_and_not_no_shots() {
    let mut session = empty("carry", 1);
    session.summaries = vec![summary(0, "carry", mean(250.0, Some(8.0)), Some(12), SummaryOf::All)];
    assert_eq!(answer(session, asking("carry")).answer.decision.why, Some(Why::OneBuild));
}

fn refused(builds: usize, question: Question) -> bool {
    let mut session = in_turn("carry", 3, &[250.0, 255.0], 5.0);
    session.builds.extend((2..builds).map(|i| Build { name: i.to_string() }));
    check(&CheckRequest { session, question }).is_err()
}

#[test]
fn fifty_builds_are_a_session_and_one_more_is_not() {
    assert!(!refused(50, asking("carry")));
    assert!(refused(51, asking("carry")));
}

#[test]
fn the_last_build_can_be_asked_about_and_the_one_after_it_cannot() {
    let about = |baseline, candidate| Question { baseline, candidate: Some(candidate), ..asking("carry") };
    assert!(!refused(4, about(0, 3)));
    assert!(refused(4, about(0, 4)));
    assert!(!refused(4, about(3, 0)));
    assert!(refused(4, about(4, 0)));
}

#[test]
fn a_margin_of_nothing_is_a_margin_and_less_is_not() {
    assert!(!refused(2, with_margin("carry", 0.0)));
    assert!(refused(2, with_margin("carry", -f64::MIN_POSITIVE)));
    assert!(refused(2, with_margin("carry", f64::INFINITY)));
    let first = |margin| Question { first_margin: Some(margin), ..asking("carry") };
    assert!(!refused(2, first(0.0)));
    assert!(refused(2, first(-f64::MIN_POSITIVE)));
}

#[test]
fn a_margin_of_scatter_is_more_than_one_and_of_averages_may_be_less() {
    let tighter = |margin| Question { margin: Some(margin), ..with_goal("carry", Goal::Tighter) };
    assert!(refused(2, tighter(1.0)));
    assert!(!refused(2, tighter(1.0_f64.next_up())));
    assert!(!refused(2, with_margin("carry", 0.5)));
    let first = |margin| Question { first_margin: Some(margin), ..with_goal("carry", Goal::Tighter) };
    assert!(refused(2, first(1.0)) && !refused(2, first(1.1)));
}

#[test]
fn a_plan_has_from_two_to_sixty_rounds() {
    let planned = |planned_rounds| {
        let stopping = Stopping::Planned { planned_rounds, looked_after: LookedAfter::Rounds(Vec::new()) };
        refused(2, Question { stopping, ..asking("carry") })
    };
    assert_eq!([1, 2, 60, 61].map(planned), [true, false, false, true]);
}

#[test]
fn what_was_asked_says_whether_the_margin_was_chosen() {
    let session = || in_turn("carry", 4, &[250.0, 255.0], 4.0);
    assert!(answer(session(), asking("carry")).asked.margin_is_default);
    let chosen = answer(session(), with_margin("carry", 5.0)).asked;
    assert!(!chosen.margin_is_default && chosen.margin.is_some_and(|m| m.to_bits() == 5.0_f64.to_bits()));
}
