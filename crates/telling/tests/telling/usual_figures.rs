//! What stands in for what a session did not control: the figures that the methods page gives, each seen from outside.

use crate::made::{around, blocks, close, mean, summary};
use crate::support::{answer, asking, empty};
use judging::analysis::Estimate;
use session::SummaryOf;
use session::known::Known;

fn estimate(session: session::Session, measure: &str) -> Option<Estimate> {
    answer(session, asking(measure)).answer.estimate
}

/// What order alone may move this measure by, in a session hit one build after the other.
fn allowance(measure: &str) -> f64 {
    let session = blocks(measure, &[around(20.0, 1.0, 12, 0), around(20.0, 1.0, 12, 5)]);
    estimate(session, measure).expect("an estimate").order_allowance
}

#[test]
fn the_order_may_move_carry_by_six_yards_and_speed_by_what_goes_with_them() {
    for (measure, by) in [("carry", 6.0), ("total", 6.0), ("offline", 6.0), ("spin_rate", 150.0)] {
        close(allowance(measure), by, 1e-12);
    }
    // 0.45 and 0.31 mph for each yard, in tenths.
    for (measure, rate) in [("ball_speed", 0.45), ("club_speed", 0.31)] {
        close(allowance(measure), (6.0 * rate * 10.0_f64).round() / 10.0, 1e-12);
    }
}

#[test]
fn on_every_other_measure_the_order_may_move_half_of_what_matters_and_nothing_is_known_of_ones_own() {
    let told = ["carry", "total", "offline", "spin_rate", "ball_speed", "club_speed"];
    for measure in Known::ALL.iter().map(|known| known.facts()).filter(|m| !told.contains(&m.id)) {
        close(allowance(measure.id), measure.margin / 2.0, 1e-12);
    }
    close(allowance("my_own"), 0.0, 0.0);
}

#[test]
fn carry_in_standard_air_is_judged_as_carry_is() {
    close(allowance("carry_standard_air"), 6.0, 0.0);
    let session = blocks("carry_standard_air", &[around(250.0, 4.0, 12, 0), around(270.0, 4.0, 12, 5)]);
    let report = answer(session, asking("carry_standard_air"));
    close(report.asked.margin.expect("that of carry"), 5.0, 0.0);
    assert_eq!(report.asked.goal, session::question::Goal::Higher);
}

#[test]
fn the_scatter_assumed_for_averages_is_the_high_end_of_what_is_usual() {
    for (measure, sd) in [
        ("carry", 14.0),
        ("total", 14.0),
        ("offline", 20.0),
        ("ball_speed", 4.0),
        ("club_speed", 2.2),
        ("spin_rate", 600.0),
        ("launch_angle", 2.5),
    ] {
        let mut session = empty(measure, 2);
        session.summaries =
            (0..2).map(|b| summary(b, measure, mean(20.0, None), Some(8), SummaryOf::All)).collect();
        let found = estimate(session, measure).expect("an estimate");
        // Eight shots each: z·sd/2, and the allowance.
        close(found.high - found.order_allowance, 1.959_964 * sd / 2.0, 1e-4);
    }
}
