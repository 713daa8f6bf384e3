//! What is asked about and what is told of a session, from both sides of every end.

use crate::support::{around, averages, blocks, judged, push, with_margin};
use judging::trust::{Odd, Seen, trust};
use session::{Build, SecondFactor, Session, SummaryOf};

fn seen(session: &Session, margin: f64) -> Vec<Seen> {
    trust(&judged(session, &with_margin("carry", margin)), None)
}

fn odd(session: &Session, margin: f64) -> Vec<(Option<usize>, Odd, usize)> {
    let odd = |seen| match seen {
        Seen::OddValue { shot, because, others, .. } => Some((shot, because, others)),
        _ => None,
    };
    seen(session, margin).into_iter().filter_map(odd).collect()
}

/// A third build, which nobody asked about: the pair is the first two.
fn with_third(mut session: Session, values: &[f64]) -> Session {
    session.builds.push(Build { name: "Driver C".into() });
    values.iter().for_each(|&value| push(&mut session, 2, None, value));
    session
}

#[test]
fn a_value_at_the_end_of_what_can_be_is_not_outside() {
    for (value, outside) in [(400.0, false), (400.1, true), (0.0, false), (-0.1, true)] {
        let mut session = blocks("carry", &[around(250.0, 4.0, 12, 0), around(252.0, 4.0, 12, 5)]);
        session.shots[3].values[0] = Some(value);
        let found = odd(&session, 500.0);
        let out_of_range = |odd: &(Option<usize>, Odd, usize)| matches!(odd.1, Odd::OutOfRange { .. });
        assert_eq!(found.iter().any(out_of_range), outside, "{value}: {found:?}");
    }
}

#[test]
fn averages_are_asked_about_where_they_are_of_all_shots_of_the_pair() {
    let of = |build: usize, of: SummaryOf| {
        let mut session = blocks("carry", &[around(250.0, 4.0, 12, 0), around(254.0, 4.0, 12, 5)]);
        session = with_third(session, &around(240.0, 4.0, 12, 2));
        let mut summary = averages("carry", &[(Some(12), 900.0, None)]).summaries.remove(0);
        (summary.build, summary.of) = (build, of);
        session.summaries.push(summary);
        odd(&session, 5.0).len()
    };
    assert_eq!((of(0, SummaryOf::All), of(1, SummaryOf::All), of(2, SummaryOf::All)), (1, 1, 0));
    assert_eq!(of(0, SummaryOf::Best), 0);
}

#[test]
fn a_far_shot_of_another_club_is_nobodys_slip() {
    let far = |third: f64, second: f64| {
        let mut values = around(254.0, 3.0, 12, 5);
        values[2] = second;
        let session = blocks("carry", &[around(250.0, 3.0, 12, 0), values]);
        let mut values = around(200.0, 3.0, 12, 2);
        values[4] = third;
        odd(&with_third(session, &values), 5.0).iter().map(|odd| odd.0).collect::<Vec<_>>()
    };
    assert_eq!(far(200.0, 150.0), [Some(14)]);
    assert!(far(90.0, 254.0).is_empty());
}

#[test]
fn more_than_eight_far_shots_are_no_slips() {
    for (far, told) in [(8, true), (9, false)] {
        let mut values = around(254.0, 2.0, 60, 5);
        (0..far).for_each(|at| values[at * 5] = 150.0 - at as f64);
        let session = blocks("carry", &[around(250.0, 2.0, 60, 0), values]);
        let found = odd(&session, 1.0);
        assert_eq!(found.len(), usize::from(told), "{far}");
        assert!(found.iter().all(|odd| odd.2 == far - 1), "{found:?}");
    }
}

/// The candidate's shots before and after a lesson.
fn moved(before: Vec<f64>, after: Vec<f64>) -> Vec<(usize, f64)> {
    let sides = [before.len(), after.len()];
    let mut session = blocks("carry", &[around(250.0, 3.0, 12, 0), [before, after].concat()]);
    session.second =
        Some(SecondFactor { values: vec!["before".into(), "after".into()], ..SecondFactor::default() });
    for (at, shot) in session.shots.iter_mut().skip(12).enumerate() {
        shot.second = Some(u32::from(at >= sides[0]));
    }
    let moved = |seen| match seen {
        Seen::Moved { build, before, after, .. } => Some((build, after - before)),
        _ => None,
    };
    seen(&session, 5.0).into_iter().filter_map(moved).collect()
}

#[test]
fn a_club_that_moved_with_a_change_is_told_from_three_shots_on_each_side_on() {
    let around = |average: f64, n| around(average, 1.0, n, 3);
    for (before, after, told) in [(3, 3, true), (2, 9, false), (9, 2, false), (9, 3, true), (3, 9, true)] {
        let up = moved(around(250.0, before), around(280.0, after));
        assert_eq!(up.iter().any(|&(build, by)| build == 1 && by > 20.0), told, "{before} {after}");
        let down = moved(around(280.0, before), around(250.0, after));
        assert_eq!(down.iter().any(|&(build, by)| build == 1 && by < -20.0), told, "{before} {after}");
    }
    assert!(moved(around(250.0, 9), around(250.2, 9)).is_empty());
}
