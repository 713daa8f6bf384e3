//! Averages without shots: what is refused, on either side alike, and which scatter counts.

use crate::made::{around, blocks, close, decided, mean, summary, with_goal};
use crate::support::{answer, asking, empty};
use judging::analysis::{Estimate, Method};
use judging::verdict::Why;
use session::question::Goal;
use session::{Session, SummaryOf, SummaryValue};

/// Averages of one build: average, deviation, number of shots, which shots.
type Side = (SummaryValue, Option<u32>, SummaryOf);

fn session(measure: &str, sides: [Side; 2]) -> Session {
    let mut session = empty(measure, 2);
    session.summaries =
        (0..2).zip(sides).map(|(b, (value, n, of))| summary(b, measure, value, n, of)).collect();
    session
}

fn carry(average: f64) -> Side {
    (mean(average, Some(8.0)), Some(20), SummaryOf::All)
}

fn why(sides: [Side; 2]) -> Option<Why> {
    decided(&session("carry", sides), asking("carry")).why
}

/// What is said with this side as the candidate and as the baseline.
fn either_way(side: Side) -> [Option<Why>; 2] {
    [why([carry(250.0), side]), why([side, carry(250.0)])]
}

fn estimate(session: Session, measure: &str) -> Estimate {
    answer(session, asking(measure)).answer.estimate.expect("an estimate")
}

#[test]
fn averages_of_the_best_or_of_chosen_shots_are_refused_on_either_side() {
    for of in [SummaryOf::Best, SummaryOf::Chosen] {
        let side = (mean(260.0, Some(8.0)), Some(20), of);
        assert_eq!(either_way(side), [Some(Why::OnlyTheBest); 2], "{of:?}");
    }
    assert_eq!(either_way(carry(260.0)), [None; 2]);
}

#[test]
fn fewer_than_three_shots_are_refused_on_either_side_and_three_are_not() {
    for few in [0, 1, 2] {
        let side = (mean(260.0, Some(8.0)), Some(few), SummaryOf::All);
        assert_eq!(either_way(side), [Some(Why::TooFewShots); 2], "{few}");
    }
    let three = (mean(260.0, Some(8.0)), Some(3), SummaryOf::All);
    assert_eq!(either_way(three), [None; 2]);
    assert_eq!(why([three, three]), None);
}

#[test]
fn an_unknown_number_of_shots_is_refused_on_either_side() {
    let side = (mean(260.0, Some(8.0)), None, SummaryOf::All);
    assert_eq!(either_way(side), [Some(Why::CountsMissing); 2]);
}

#[test]
fn an_average_that_is_missing_or_no_number_is_refused_on_either_side() {
    for average in [None, Some(f64::NAN), Some(f64::INFINITY)] {
        let side = (
            SummaryValue { mean: average, sd: Some(8.0), ..SummaryValue::default() },
            Some(20),
            SummaryOf::All,
        );
        assert_eq!(either_way(side), [Some(Why::NotMeasured); 2], "{average:?}");
    }
}

#[test]
fn what_is_refused_first_is_what_no_more_shots_would_mend() {
    // Chosen shots before a missing count, a missing count before too few.
    let chosen = (mean(260.0, None), None, SummaryOf::Chosen);
    assert_eq!(either_way(chosen), [Some(Why::OnlyTheBest); 2]);
    let few = (mean(260.0, Some(8.0)), Some(2), SummaryOf::All);
    let unknown = (mean(260.0, Some(8.0)), None, SummaryOf::All);
    assert_eq!(why([few, unknown]), Some(Why::CountsMissing));
}

#[test]
fn averages_hold_no_scatter_to_compare_unless_shots_stand_on_both_sides() {
    let tighter = |session| decided(&session, with_goal("carry", Goal::Tighter)).why;
    assert_eq!(tighter(session("carry", [carry(250.0), carry(260.0)])), Some(Why::OnlyAverages));
    for shots_of in [0, 1] {
        let mut mixed = session("carry", [carry(250.0), carry(260.0)]);
        mixed.shots = blocks("carry", &[around(250.0, 6.0, 12, 0)]).shots;
        mixed.shots.iter_mut().for_each(|shot| shot.build = shots_of);
        assert_eq!(tighter(mixed), Some(Why::OnlyAverages), "{shots_of}");
    }
}

/// Half the width of the 95 % interval, without the 6 yd for the order.
fn half(sides: [Side; 2]) -> f64 {
    let found = estimate(session("carry", sides), "carry");
    assert_eq!(found.method, Method::SummaryAssumedSpread);
    (found.high - found.low) / 2.0 - 6.0
}

const Z: f64 = 1.959_963_984_540_054;

#[test]
fn the_larger_of_measured_and_assumed_scatter_counts_on_either_side() {
    let none = (mean(250.0, None), Some(10), SummaryOf::All);
    let given = |sd| (mean(255.0, Some(sd)), Some(40), SummaryOf::All);
    let expected =
        |of_none: f64, of_given: f64| Z * (of_none * of_none / 10.0 + of_given * of_given / 40.0).sqrt();
    for (sd, counts) in [(30.0, 30.0), (14.5, 14.5), (14.0, 14.0), (13.5, 14.0), (3.0, 14.0), (0.0, 14.0)] {
        close(half([none, given(sd)]), expected(14.0, counts), 1e-6);
        close(half([given(sd), none]), expected(14.0, counts), 1e-6);
    }
}

#[test]
fn a_deviation_that_is_none_is_as_if_it_were_missing() {
    let none = (mean(250.0, None), Some(10), SummaryOf::All);
    for sd in [f64::NAN, f64::INFINITY, -3.0] {
        let odd = (mean(255.0, Some(sd)), Some(40), SummaryOf::All);
        close(half([none, odd]), Z * 14.0 * (1.0_f64 / 10.0 + 1.0 / 40.0).sqrt(), 1e-6);
        let both = answer(session("carry", [carry(250.0), odd]), asking("carry")).answer.estimate;
        assert_eq!(both.map(|e| e.method), Some(Method::SummaryAssumedSpread), "{sd}");
    }
}

#[test]
fn scatter_of_nothing_on_both_sides_is_no_comparison_and_on_one_it_is_one() {
    let still = |average| (mean(average, Some(0.0)), Some(20), SummaryOf::All);
    assert_eq!(why([still(250.0), still(260.0)]), Some(Why::NoScatter));
    assert_eq!(either_way(still(260.0)), [None; 2]);
}

#[test]
fn averages_without_scatter_of_a_measure_without_a_usual_one_are_refused_on_either_side() {
    let apex = |sd| (mean(30.0, sd), Some(20), SummaryOf::All);
    let why = |sides| decided(&session("apex", sides), asking("apex")).why;
    assert_eq!(why([apex(Some(3.0)), apex(None)]), Some(Why::SpreadMissing));
    assert_eq!(why([apex(None), apex(Some(3.0))]), Some(Why::SpreadMissing));
    assert_eq!(why([apex(Some(3.0)), apex(Some(3.0))]), None);
}

#[test]
fn the_order_is_allowed_for_also_where_only_averages_came() {
    let with = estimate(session("carry", [carry(250.0), carry(260.0)]), "carry");
    let without = estimate(session("carry", [(mean(250.0, None), Some(20), SummaryOf::All); 2]), "carry");
    close(with.order_allowance, 6.0, 0.0);
    close(without.order_allowance, 6.0, 0.0);
    assert_eq!(with.method, Method::SummaryWithAllowance);
    // Welch from averages, widened by a tenth: t of 38 degrees of freedom.
    close(with.high - 10.0 - 6.0, 1.10 * 2.024_394 * 8.0 * 0.1_f64.sqrt(), 1e-5);
}

#[test]
fn shots_needed_follow_the_scatter_of_both_sides_and_the_assumed_one_where_one_is_missing() {
    let settle = |sides| estimate(session("carry", sides), "carry").shots_to_settle.expect("a margin");
    let of = |sd| (mean(250.0, sd), Some(20), SummaryOf::All);
    let (small, large) = (settle([of(Some(4.0)), of(Some(4.0))]), settle([of(Some(12.0)), of(Some(12.0))]));
    let mixed = settle([of(Some(4.0)), of(Some(12.0))]);
    assert!(small < mixed && mixed < large);
    assert_eq!(settle([of(Some(12.0)), of(Some(4.0))]), mixed);
    // 14 is assumed, whatever the other side's deviation.
    let assumed = settle([of(Some(14.0)), of(Some(14.0))]);
    let mixed = [[of(Some(4.0)), of(None)], [of(None), of(Some(30.0))], [of(Some(30.0)), of(None)]];
    for sides in [[of(None); 2]].into_iter().chain(mixed) {
        assert_eq!(settle(sides), assumed);
    }
}

#[test]
fn shots_of_a_build_stand_before_its_averages_and_meet_the_averages_of_the_other() {
    let values = around(250.0, 6.0, 12, 0);
    let (n, average) = (values.len() as f64, values.iter().sum::<f64>() / values.len() as f64);
    let sd = (values.iter().map(|v| (v - average) * (v - average)).sum::<f64>() / (n - 1.0)).sqrt();
    for shots_of in [0, 1] {
        let mut mixed = session("carry", [carry(240.0), carry(270.0)]);
        mixed.shots = blocks("carry", std::slice::from_ref(&values)).shots;
        mixed.shots.iter_mut().for_each(|shot| shot.build = shots_of);
        let report = answer(mixed, asking("carry"));
        let numbers = &report.findings[0].numbers;
        let group = if shots_of == 0 { numbers.baseline } else { numbers.candidate }.expect("shots");
        assert_eq!(group.n, 12);
        close(group.mean, average, 1e-9);
        close(group.sd.expect("a deviation"), sd, 1e-9);
        let found = report.answer.estimate.expect("an estimate");
        assert_eq!(found.method, Method::SummaryWithAllowance);
        close(found.value, if shots_of == 0 { 270.0 - average } else { average - 240.0 }, 1e-9);
    }
}

#[test]
fn averages_are_those_of_their_own_build_and_the_first_that_hold_the_measure() {
    let mut several = session("carry", [carry(250.0), carry(260.0)]);
    let speed = summary(1, "ball_speed", mean(150.0, Some(2.0)), Some(20), SummaryOf::All);
    let later = summary(1, "carry", mean(290.0, Some(8.0)), Some(20), SummaryOf::All);
    several.summaries.insert(0, speed);
    several.summaries.push(later);
    several.summaries.reverse();
    close(estimate(several.clone(), "carry").value, 40.0, 1e-9);
    several.summaries.reverse();
    close(estimate(several, "carry").value, 10.0, 1e-9);
}
