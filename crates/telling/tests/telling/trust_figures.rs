//! What is seen in the figures themselves: averages that are not of these shots, shots far from the rest, numbers
//! that jump; each held at its bound from both sides.

use crate::made::{around, blocks, mean, summary};
use crate::support::{answer, asking, one_after_the_other};
use judging::trust::{Seen, Weight};
use session::{Session, SummaryOf};

fn seen(session: &Session, measure: &str) -> Vec<Seen> {
    answer(session.clone(), asking(measure)).trust.into_iter().map(|f| f.seen).collect()
}

/// Builds of a measure whose averages are known exactly: all builds alike, around 250.
fn exact(measure: &str, builds: usize) -> Session {
    let values = vec![246.0, 248.0, 250.0, 250.0, 252.0, 254.0];
    blocks(measure, &vec![values; builds])
}

/// Builds and printed averages that are said to disagree with the shots.
fn disagrees(measure: &str, build: usize, printed: f64, of: SummaryOf) -> bool {
    let mut session = exact(measure, 3);
    session.summaries = vec![summary(build, measure, mean(printed, None), Some(6), of)];
    let question = session::question::Question { candidate: Some(1), ..asking(measure) };
    let report = answer(session, question);
    let found = report.trust.iter().find(|f| matches!(f.seen, Seen::SummaryDisagrees { .. }));
    if let Some(found) = found {
        assert_eq!(found.weight, Weight::Serious);
    }
    found.is_some()
}

#[test]
fn a_printed_average_may_be_off_by_one_of_its_last_digit_and_not_by_more() {
    for (measure, digit) in
        [("carry", 1.0), ("ball_speed", 0.1), ("spin_rate", 1.0), ("smash", 0.01), ("my_own", 0.01)]
    {
        for way in [1.0, -1.0] {
            let off = |digits: f64| disagrees(measure, 0, 250.0 + way * digits * digit, SummaryOf::All);
            assert!(!off(0.95), "{measure} {way}");
            assert!(off(1.05), "{measure} {way}");
        }
    }
    assert!(!disagrees("carry", 0, 251.0, SummaryOf::All), "one yard exactly is rounding");
    assert!(!disagrees("carry", 0, 249.0, SummaryOf::All), "one yard exactly is rounding");
}

#[test]
fn averages_of_the_best_or_of_chosen_shots_are_not_held_against_all_shots() {
    assert!(disagrees("carry", 0, 262.0, SummaryOf::All));
    assert!(!disagrees("carry", 0, 262.0, SummaryOf::Best));
    assert!(!disagrees("carry", 0, 262.0, SummaryOf::Chosen));
}

#[test]
fn averages_of_the_pair_are_held_against_its_shots_and_others_are_not() {
    assert!(disagrees("carry", 0, 262.0, SummaryOf::All), "the baseline");
    assert!(disagrees("carry", 1, 262.0, SummaryOf::All), "the candidate");
    assert!(!disagrees("carry", 2, 262.0, SummaryOf::All), "another build");
}

#[test]
fn what_disagrees_is_told_with_the_shots_read_and_those_claimed() {
    let mut session = exact("carry", 2);
    session.summaries = vec![summary(1, "carry", mean(255.0, None), Some(9), SummaryOf::All)];
    let expected = Seen::SummaryDisagrees {
        build: 1,
        measure: "carry".into(),
        printed: 255.0,
        of_shots: 250.0,
        n: 6,
        claimed: Some(9),
    };
    assert!(seen(&session, "carry").contains(&expected));
}

fn far(session: &Session) -> Option<(usize, usize)> {
    seen(session, "offline").into_iter().find_map(|s| match s {
        Seen::FarShots { count, build, .. } => Some((count, build)),
        _ => None,
    })
}

/// Offline around zero with a median of 0 and a median distance of 1, and one shot this far off.
fn with_one_at(at: f64) -> Vec<f64> {
    vec![-1.0, 1.0, -1.0, 1.0, 0.0, 0.5, -0.5, 1.5, -1.5, at, -at / 100.0]
}

#[test]
fn a_shot_is_far_beyond_three_and_a_half_robust_deviations_on_either_side() {
    let plain = with_one_at(0.0);
    assert_eq!(far(&blocks("offline", &[plain.clone(), plain.clone()])), None);
    // 1.4826 makes the median distance a deviation.
    let bound = 3.5 * 1.4826;
    for way in [1.0, -1.0] {
        for build in [0, 1] {
            let at = |share: f64| {
                let mut builds = vec![plain.clone(), plain.clone()];
                builds[build] = with_one_at(way * share * bound);
                far(&blocks("offline", &builds))
            };
            assert_eq!(at(0.99), None, "{way} {build}");
            assert_eq!(at(1.0), None, "{way} {build}: at the bound it is not beyond it");
            assert_eq!(at(1.01), Some((1, build)), "{way} {build}");
        }
    }
}

#[test]
fn far_shots_are_counted_together_and_told_of_the_build_with_more_of_them() {
    let (none, one) = (with_one_at(0.0), with_one_at(9.0));
    let two = [with_one_at(9.0), vec![-12.0]].concat();
    let of = |builds: [&Vec<f64>; 2]| far(&blocks("offline", &builds.map(Clone::clone)));
    assert_eq!(of([&two, &one]), Some((3, 0)));
    assert_eq!(of([&one, &two]), Some((3, 1)));
    assert_eq!(of([&one, &one]), Some((2, 0)), "of as many, the baseline");
    assert_eq!(of([&none, &two]), Some((2, 1)));
}

#[test]
fn where_most_shots_are_alike_none_is_far() {
    let same = vec![3.0, 3.0, 3.0, 3.0, 3.0, 3.0, 40.0];
    assert_eq!(far(&blocks("offline", &[same, around(0.0, 5.0, 12, 0)])), None);
}

/// Two blocks whose shots bear these numbers.
fn numbered(numbers: &[u32]) -> Option<(usize, u32)> {
    let half = numbers.len() / 2;
    let mut session = one_after_the_other("carry", &[half, numbers.len() - half], &[250.0, 252.0], 5.0);
    for (shot, number) in session.shots.iter_mut().zip(numbers) {
        shot.number = Some(*number);
    }
    seen(&session, "carry").into_iter().find_map(|s| match s {
        Seen::NumbersMissing { missing, first } => Some((missing, first)),
        _ => None,
    })
}

#[test]
fn the_first_missing_number_is_told_and_all_are_counted() {
    assert_eq!(numbered(&[1, 2, 3, 4, 5, 6, 7, 8]), None);
    assert_eq!(numbered(&[1, 2, 4, 5, 6, 9, 10, 11]), Some((3, 3)));
    assert_eq!(numbered(&[11, 10, 9, 6, 5, 4, 2, 1]), Some((3, 3)), "whatever the order they stand in");
    // Numbered for each build anew.
    assert_eq!(numbered(&[1, 2, 3, 4, 1, 2, 4, 5]), Some((1, 3)));
    assert_eq!(numbered(&[1, 2, 3, 4, 1, 2, 3, 4]), None);
}

#[test]
fn numbers_that_miss_more_than_twice_themselves_are_no_count_of_shots() {
    // Eight shots: sixteen missing are told, seventeen are not.
    assert_eq!(numbered(&[1, 2, 3, 4, 5, 6, 7, 24]), Some((16, 8)));
    assert_eq!(numbered(&[1, 2, 3, 4, 5, 6, 7, 25]), None);
}
