//! How strict each comparison must be: planned looks, rounds past the plan, several candidates and several measures.

use crate::made::{also, around, close, finding, noise, rounds};
use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::analysis::Estimate;
use judging::trust::Seen;
use judging::verdict::{DecisionKind, Why};
use session::Session;
use session::question::{Goal, LookedAfter, Question, Stopping, StoppingWord};
use telling::report::Report;

fn estimate(report: &Report) -> &Estimate {
    report.answer.estimate.as_ref().expect("an estimate")
}

fn planned(planned_rounds: u32, looked_after: LookedAfter) -> Question {
    Question { stopping: Stopping::Planned { planned_rounds, looked_after }, ..asking("carry") }
}

/// Levels of the intervals for 'different' and for 'the same' after this many rounds.
fn levels(rounds: u32, question: Question) -> (f64, f64) {
    let report = answer(in_turn("carry", rounds, &[250.0, 252.0], 5.0), question);
    (estimate(&report).level, estimate(&report).equivalence.level)
}

fn alike(a: (f64, f64), b: (f64, f64)) {
    close(a.0, b.0, 1e-15);
    close(a.1, b.1, 1e-15);
}

const OPEN: (f64, f64) = (0.99, 0.98);

#[test]
fn the_last_planned_round_still_belongs_to_the_plan_and_the_next_does_not() {
    let none = || LookedAfter::Rounds(Vec::new());
    let last = levels(6, planned(6, none()));
    close(last.0, 0.95, 1e-9);
    close(last.1, 0.90, 1e-9);
    alike(levels(7, planned(6, none())), OPEN);
    alike(levels(2, planned(2, none())), last);
    assert!(levels(3, planned(60, none())).0 > 0.999, "of sixty rounds three are hardly begun");
}

#[test]
fn what_was_not_hit_in_turn_has_no_plan_to_keep() {
    let session = one_after_the_other("carry", &[12, 12], &[250.0, 252.0], 5.0);
    let report = answer(session, planned(6, LookedAfter::EveryRoundTo(3)));
    alike((estimate(&report).level, estimate(&report).equivalence.level), OPEN);
    assert!(report.trust.iter().any(|f| f.seen == Seen::NotOfThePlan { rounds: 0, planned: 6 }));
}

#[test]
fn looks_that_lie_ahead_or_before_the_second_round_do_not_count() {
    let every = |to| LookedAfter::EveryRoundTo(to);
    let after = |rounds: &[u32]| LookedAfter::Rounds(rounds.to_vec());
    let kept = levels(3, planned(6, every(3)));
    alike(levels(3, planned(6, every(9))), kept);
    alike(levels(3, planned(6, after(&[2, 3, 4, 6]))), kept);
    alike(levels(3, planned(6, after(&[0, 1, 2]))), kept);
    alike(levels(3, planned(6, after(&[2, 2, 3]))), kept);
    alike(levels(3, planned(6, after(&[2]))), kept);
}

#[test]
fn every_round_to_one_begins_with_the_second_and_ends_with_it() {
    let four = |looks| levels(4, planned(6, looks));
    let of = |rounds: &[u32]| four(LookedAfter::Rounds(rounds.to_vec()));
    alike(four(LookedAfter::EveryRoundTo(3)), of(&[2, 3]));
    alike(four(LookedAfter::EveryRoundTo(2)), of(&[2]));
    alike(four(LookedAfter::EveryRoundTo(1)), of(&[]));
    assert!(of(&[2, 3]).0 > of(&[2]).0 && of(&[2]).0 > of(&[]).0, "each look costs");
    assert!(of(&[2, 3]).1 > of(&[]).1 && of(&[]).1 > 0.90, "also for the same");
}

#[test]
fn looks_are_sorted_before_they_are_counted() {
    let of = |rounds: &[u32]| levels(5, planned(6, LookedAfter::Rounds(rounds.to_vec())));
    alike(of(&[4, 2]), of(&[2, 4]));
}

#[test]
fn the_plan_and_the_round_are_told_in_their_places() {
    let session = in_turn("carry", 4, &[250.0, 252.0], 5.0);
    let seen = answer(session, planned(6, LookedAfter::EveryRoundTo(2))).trust;
    assert!(
        seen.iter().any(
            |f| f.seen == Seen::PlannedLooks { round: 4, planned: 6, is_unfinished: false, looked: true }
        )
    );
    assert!(!seen.iter().any(|f| f.seen == Seen::NotFixed));
}

#[test]
fn an_open_end_is_told_and_a_fixed_one_is_not() {
    let session = || in_turn("carry", 4, &[250.0, 252.0], 5.0);
    let open = Question { stopping: Stopping::Word(StoppingWord::Unknown), ..asking("carry") };
    let not = Question { stopping: Stopping::Word(StoppingWord::NotFixed), ..asking("carry") };
    let told = |question, seen| answer(session(), question).trust.iter().any(|f| f.seen == seen);
    // Nobody said it is not the same as somebody saying no.
    assert!(told(open.clone(), Seen::FixedNotSaid) && !told(open, Seen::NotFixed));
    assert!(told(not.clone(), Seen::NotFixed) && !told(not, Seen::FixedNotSaid));
    assert!(!told(asking("carry"), Seen::NotFixed) && !told(asking("carry"), Seen::FixedNotSaid));
}

#[test]
fn each_candidate_is_as_strict_as_the_rounds_it_shares() {
    // The third build joins after the third of six planned rounds.
    let mut session = in_turn("carry", 6, &[250.0, 252.0, 251.0], 5.0);
    session.shots.retain(|shot| shot.build != 2 || shot.round > Some(3));
    let report = answer(session, planned(6, LookedAfter::Rounds(Vec::new())));
    let level = |c| finding(&report, c, "carry").estimate.as_ref().expect("an estimate").level;
    assert!(level(2) > level(1) + 0.01, "{} {}", level(2), level(1));
    assert_eq!(report.rounds, if report.answer.candidate == Some(1) { 6 } else { 3 });
}

/// One minus the level of each candidate's interval on carry.
fn missing(averages: &[f64]) -> Vec<f64> {
    let report = answer(in_turn("carry", 6, averages, 5.0), asking("carry"));
    (1..averages.len())
        .map(|c| 1.0 - finding(&report, c, "carry").estimate.as_ref().expect("an estimate").level)
        .collect()
}

#[test]
fn the_first_of_several_candidates_pays_for_all_and_the_next_for_those_left() {
    for way in [1.0, -1.0] {
        let found = missing(&[250.0, 250.0 + 25.0 * way, 250.0 + 18.0 * way, 250.0]);
        for (got, expected) in found.iter().zip([0.05 / 3.0, 0.05 / 2.0, 0.05]) {
            close(*got, expected, 1e-12);
        }
    }
}

#[test]
fn after_the_first_that_fails_no_later_one_has_it_easier() {
    let found = missing(&[250.0, 250.5, 275.0, 251.0, 250.2]);
    close(found[1], 0.05 / 4.0, 1e-12);
    for later in [0, 2, 3] {
        close(found[later], 0.05 / 3.0, 1e-12);
    }
}

#[test]
fn one_that_fails_for_being_looked_at_early_makes_it_no_easier_for_later_ones() {
    // The second build was hit in the first three of six rounds only: far ahead, and yet too early to say.
    let mut session = in_turn("carry", 6, &[250.0, 253.8, 254.0, 253.3], 5.0);
    session.shots.retain(|shot| shot.build != 1 || shot.round <= Some(3));
    let report = answer(session, planned(6, LookedAfter::Rounds(Vec::new())));
    let of = |c| finding(&report, c, "carry");
    let estimate = |c| of(c).estimate.as_ref().expect("an estimate");
    assert!(estimate(1).chance_if_same < estimate(2).chance_if_same);
    assert!(estimate(2).chance_if_same < estimate(3).chance_if_same);
    assert_eq!(of(1).decision.kind, DecisionKind::CannotTell);
    assert_eq!(of(2).decision.kind, DecisionKind::Different);
    close(estimate(2).level, 1.0 - 0.05 / 3.0, 1e-9);
    close(estimate(3).level, 1.0 - 0.05 / 3.0, 1e-9);
}

#[test]
fn scatter_looked_at_far_too_early_says_nothing() {
    // Two rounds of sixty: no interval at all can be given for a ratio from six shots each.
    let sets = |r: usize| vec![around(250.0, 1.0, 3, 5 * r), around(250.0, 12.0, 3, 5 * r + 3)];
    let session = rounds("carry", &(0..2).map(sets).collect::<Vec<_>>());
    let question = Question { goal: Some(Goal::Tighter), ..planned(60, LookedAfter::Rounds(Vec::new())) };
    let report = answer(session, question);
    assert_eq!(report.answer.decision.kind, DecisionKind::CannotTell);
    assert!(estimate(&report).low < f64::MIN_POSITIVE && estimate(&report).high.is_infinite());
}

#[test]
fn a_candidate_that_cannot_be_compared_costs_the_others_nothing() {
    let mut session = in_turn("carry", 6, &[250.0, 251.0, 251.0], 5.0);
    let mut left = 2;
    session.shots.retain(|shot| {
        left -= i32::from(shot.build == 2);
        shot.build != 2 || left >= 0
    });
    let report = answer(session, asking("carry"));
    assert_eq!(finding(&report, 2, "carry").decision.why, Some(Why::TooFewShots));
    close(finding(&report, 1, "carry").estimate.as_ref().expect("an estimate").level, 0.95, 1e-12);
}

/// Carry that shows nothing or very much, and spin that shows nothing or very much.
fn two_measures(carry: f64, spin: f64) -> Session {
    let mut session = in_turn("carry", 6, &[250.0, 250.0 + carry], 5.0);
    also(&mut session, "spin_rate", |at, shot| {
        Some(2500.0 + if shot.build == 1 { spin } else { 0.0 } + 100.0 * noise(at + at / 12))
    });
    session
}

#[test]
fn while_the_measure_asked_for_shows_nothing_the_others_share_half_the_error() {
    let missing = |carry, spin| {
        let report = answer(two_measures(carry, spin), asking("carry"));
        ["carry", "spin_rate"]
            .map(|m| 1.0 - finding(&report, 1, m).estimate.as_ref().expect("an estimate").level)
    };
    let expect = |got: [f64; 2], expected: [f64; 2]| {
        close(got[0], expected[0], 1e-12);
        close(got[1], expected[1], 1e-12);
    };
    expect(missing(0.5, 900.0), [0.05, 0.05 / 2.0 / 2.0]);
    expect(missing(0.5, 5.0), [0.05, 0.05 / 2.0 / 2.0]);
    // Once it shows something, nothing has been spent in vain.
    expect(missing(20.0, 5.0), [0.05, 0.05]);
    expect(missing(-20.0, 5.0), [0.05, 0.05]);
    // Of two that show something, the clearer one pays for both.
    expect(missing(20.0, 900.0), [0.05, 0.05 / 2.0]);
}

#[test]
fn dividing_the_error_of_different_leaves_that_of_the_same_alone() {
    let report = answer(in_turn("carry", 6, &[250.0, 250.5, 251.0, 250.2], 5.0), asking("carry"));
    for candidate in 1..4 {
        let estimate = finding(&report, candidate, "carry").estimate.as_ref().expect("an estimate");
        close(estimate.equivalence.level, 0.90, 1e-12);
    }
}
