//! The fewest shots that the rooms beside the answer take, and what they tell of a gap that is none.

use crate::support::{also, around, asking, blocks, in_turn, judged, push};
use judging::cause::{CauseRefused, cause};
use judging::potential::potential;
use judging::second::{SecondRefused, SecondRequest, second};
use session::Session;
use session::question::Question;

/// Shots of two builds with launches of their own: the second one is faster and spins more.
fn launched(shots: [usize; 2], carries: [f64; 2]) -> Session {
    let carry = |build: usize| around(carries[build], 4.0, shots[build], 3);
    let mut session = blocks("carry", &[carry(0), carry(1)]);
    let bent = |at: usize, by: f64| by * (at % 5) as f64;
    also(&mut session, "ball_speed", |at, shot| Some(150.0 + 4.0 * shot.build as f64 + bent(at, 0.3)));
    also(&mut session, "launch_angle", |at, _| Some(12.0 + bent(at * 2, 0.2)));
    also(&mut session, "spin_rate", |at, shot| Some(2500.0 + 900.0 * shot.build as f64 + bent(at * 3, 40.0)));
    session
}

#[test]
fn a_gap_is_split_from_five_shots_of_each_on() {
    for (shots, split) in [([5, 5], true), ([4, 5], false), ([5, 4], false), ([12, 4], false)] {
        let found = cause(&launched(shots, [240.0, 246.0]), 0, 1);
        assert_eq!(found.is_ok(), split, "{shots:?}");
        assert!(split || matches!(found, Err(CauseRefused::TooFew { .. })), "{shots:?}");
    }
}

#[test]
fn of_no_gap_nothing_is_the_main_part_however_clear() {
    let none = cause(&launched([12, 12], [240.0, 240.0]), 0, 1).expect("can be split");
    assert!(none.split.gap.abs() < 1e-12 && none.parts.iter().any(|part| part.is_sure));
    assert_eq!(none.split.main, None);
}

#[test]
fn a_group_of_a_ball_speed_is_three_shots() {
    let groups = |shots| potential(&launched(shots, [240.0, 246.0]), 1, None, 5.0).expect("enough").groups;
    assert_eq!(groups([3, 3]).iter().filter(|group| group.build == Some(0)).count(), 1);
    assert_eq!(groups([2, 3]).iter().filter(|group| group.build == Some(0)).count(), 0);
    assert!(potential(&launched([3, 2], [240.0, 246.0]), 1, None, 5.0).is_err());
}

fn before_and_after(session: Session, is_second: impl Fn(usize) -> bool) -> SecondRequest {
    let is_second = (0..session.shots.len()).map(|at| Some(is_second(at))).collect();
    SecondRequest {
        session,
        question: Question { candidate: Some(1), ..asking("carry") },
        is_second,
        names: None,
    }
}

#[test]
fn three_shots_of_each_club_on_each_side_of_a_change_are_enough() {
    let halves = |n| blocks("carry", &[around(250.0, 5.0, n, 0), around(254.0, 5.0, n, 5)]);
    assert!(second(&before_and_after(halves(6), |at| at % 6 >= 3)).is_ok());
    assert_eq!(second(&before_and_after(halves(5), |at| at % 5 >= 3)), Err(SecondRefused::TooFewShots));
}

#[test]
fn the_club_beside_a_change_is_told_as_the_answer_tells_it() {
    for session in [
        in_turn("carry", 8, &[250.0, 256.0], 5.0),
        blocks("carry", &[around(250.0, 5.0, 12, 0), around(256.0, 5.0, 12, 5)]),
    ] {
        let request = before_and_after(session.clone(), |at| at % 12 >= 6);
        let question = request.question.clone();
        let judged = judged(&session, &question);
        let numbers = &judged.headline().expect("a pair").pair.numbers;
        let told = second(&request).expect("enough").build;
        let test = numbers.round.or(numbers.welch).expect("a test");
        assert_eq!((told.se, told.df, told.p), (test.se, test.df, test.p));
    }
}

/// Baseline before and after, candidate before and after: another number of shots in each, around another average.
#[test]
fn every_shot_is_counted_in_its_own_cell() {
    let cells = [(0, false, 3, 250.0), (0, true, 4, 260.0), (1, false, 5, 270.0), (1, true, 6, 280.0)];
    let mut session = blocks("carry", &[vec![], vec![]]);
    let mut second_of = Vec::new();
    for (build, is_second, n, average) in cells {
        for at in 0..n {
            push(&mut session, build, None, average + (at % 3) as f64);
            second_of.push(is_second);
        }
    }
    let found = second(&before_and_after(session, |at| second_of[at])).expect("enough").cells;
    for (cell, (build, is_second, n, average)) in found.iter().zip(cells) {
        assert_eq!((cell.build, cell.is_second, cell.n), (build, is_second, n));
        let mean = (0..n).map(|at| average + (at % 3) as f64).sum::<f64>() / n as f64;
        assert!((cell.mean - mean).abs() < 1e-9, "{} is not {mean}", cell.mean);
    }
}

#[test]
fn a_change_came_in_turn_only_where_it_did_with_both_clubs() {
    // Twelve shots of each club; the third one's change about all the time.
    let in_turn = |period: [usize; 3]| {
        let session = in_turn("carry", 4, &[250.0, 254.0, 252.0], 5.0);
        let mut hit = [0; 3];
        let second_of: Vec<bool> = session
            .shots
            .iter()
            .map(|shot| {
                hit[shot.build] += 1;
                (hit[shot.build] - 1) / period[shot.build] % 2 == 1
            })
            .collect();
        second(&before_and_after(session, |at| second_of[at])).expect("enough").condition_in_turn
    };
    assert!(in_turn([3, 3, 6]) && in_turn([3, 3, 3]));
    assert!(!in_turn([6, 6, 1]) && !in_turn([3, 6, 1]) && !in_turn([6, 3, 1]));
}
