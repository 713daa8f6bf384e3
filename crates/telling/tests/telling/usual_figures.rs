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
fn the_order_may_move_carry_by_six_yards_and_speeds_by_what_keeps_their_error_as_low() {
    for (measure, by) in [("carry", 6.0), ("total", 6.0), ("offline", 6.0), ("spin_rate", 150.0)] {
        close(allowance(measure), by, 1e-12);
    }
    // More than the 0.45 and 0.31 mph that go with each yard: beside their drift they scatter less than carry does.
    for (measure, rate, by) in [("ball_speed", 0.45, 3.8), ("club_speed", 0.31, 3.0)] {
        close(allowance(measure), by, 1e-12);
        assert!(by > 6.0 * rate);
    }
}

#[test]
fn on_every_other_measure_the_order_may_move_half_of_what_matters_and_of_ones_own_three_quarters_of_a_shots_deviation()
 {
    let told = ["carry", "total", "offline", "spin_rate", "ball_speed", "club_speed"];
    for measure in Known::ALL.iter().map(|known| known.facts()).filter(|m| !told.contains(&m.id)) {
        close(allowance(measure.id), measure.margin / 2.0, 1e-12);
    }
    let session = blocks("my_own", &[around(20.0, 1.0, 12, 0), around(20.0, 1.0, 12, 5)]);
    let numbers = answer(session, asking("my_own")).findings[0].numbers.clone();
    let [one, other] =
        [numbers.baseline, numbers.candidate].map(|group| group.and_then(|g| g.sd).expect("shots"));
    close(allowance("my_own"), 0.75 * (0.5 * (one * one + other * other)).sqrt(), 1e-9);
    // Averages have no shots to guess from.
    let averages = telling_averages();
    close(averages, 0.0, 0.0);
}

/// What the order may move a measure of one's own by, of which there are averages alone.
fn telling_averages() -> f64 {
    let mut session = empty("my_own", 2);
    session.summaries = (0..2)
        .map(|build| summary(build, "my_own", mean(20.0, Some(1.0)), Some(12), SummaryOf::All))
        .collect();
    estimate(session, "my_own").expect("an estimate").order_allowance
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
