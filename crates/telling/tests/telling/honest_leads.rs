//! What is left of the best of several: worked out by hand from the averages, for leads and for lags.

use crate::made::{around, blocks, close, finding, mean, summary, with_goal};
use crate::support::{answer, asking, empty};
use judging::analysis::Group;
use judging::honest_lead::HonestLead;
use session::question::{Goal, Question};
use session::{Session, SummaryOf};
use telling::report::Report;

/// The largest of two and of three standard normal values, on average: 1/√π and 3/(2√π).
const BEST_OF_TWO: f64 = 0.564_189_583_547_756;
const BEST_OF_THREE: f64 = 0.846_284_375_321_634_5;

/// Builds of different sizes, so that no number of shots can stand for another.
fn session(measure: &str, averages: &[f64]) -> Session {
    let builds: Vec<Vec<f64>> = (0..averages.len())
        .map(|b| around(averages[b], [3.0, 5.0, 4.0, 6.0][b], [10, 24, 14, 36][b], 5 * b))
        .collect();
    blocks(measure, &builds)
}

fn groups(report: &Report, measure: &str, builds: usize) -> Vec<Group> {
    let of = |candidate| &finding(report, candidate, measure).numbers;
    let candidates = (1..builds).map(|c| of(c).candidate.expect("shots"));
    of(1).baseline.into_iter().chain(candidates).collect()
}

/// The same by hand: three builds' worth of experience that differ by `prior` scatters or yards.
fn expected(
    report: &Report,
    measure: &str,
    builds: usize,
    best: f64,
    prior: impl Fn(f64) -> f64,
) -> HonestLead {
    let groups = groups(report, measure, builds);
    let spoken = report.answer.candidate.expect("a candidate");
    let variance = |group: &Group| group.sd.expect("a deviation").powi(2);
    let shot_variance = (variance(&groups[0]) + variance(&groups[spoken])) / 2.0;
    let of_mean = groups.iter().map(|g| shot_variance / g.n as f64).sum::<f64>() / builds as f64;
    let middle = groups.iter().map(|g| g.mean).sum::<f64>() / builds as f64;
    let squares: f64 = groups.iter().map(|g| (g.mean - middle).powi(2)).sum();
    let prior = prior(shot_variance.sqrt()).powi(2);
    let between = ((squares + 3.0 * (prior + of_mean)) / (builds as f64 - 1.0 + 3.0) - of_mean).max(0.0);
    let shown = groups[spoken].mean - groups[0].mean;
    HonestLead {
        candidates: builds - 1,
        shown,
        honest: shown * between / (between + of_mean),
        by_luck: best * of_mean.sqrt(),
    }
}

fn alike(got: &HonestLead, expected: &HonestLead) {
    assert_eq!(got.candidates, expected.candidates);
    close(got.shown, expected.shown, 1e-9);
    close(got.honest, expected.honest, 1e-9);
    close(got.by_luck, expected.by_luck, 1e-9);
}

#[test]
fn the_honest_lead_of_carry_is_tempered_by_builds_that_differ_by_four_yards() {
    for measure in ["carry", "total"] {
        let three = answer(session(measure, &[250.0, 253.0, 254.5]), asking(measure));
        alike(
            &three.honest_lead.expect("two candidates"),
            &expected(&three, measure, 3, BEST_OF_TWO, |_| 4.0),
        );
        let four = answer(session(measure, &[250.0, 253.0, 254.5, 248.0]), asking(measure));
        alike(
            &four.honest_lead.expect("three candidates"),
            &expected(&four, measure, 4, BEST_OF_THREE, |_| 4.0),
        );
    }
}

#[test]
fn on_other_measures_builds_are_taken_to_differ_by_a_share_of_the_scatter() {
    let report = answer(session("ball_speed", &[150.0, 152.0, 153.0]), asking("ball_speed"));
    let by_hand = expected(&report, "ball_speed", 3, BEST_OF_TWO, |sd| 0.35 * sd);
    alike(&report.honest_lead.expect("two candidates"), &by_hand);
}

#[test]
fn a_lead_downward_shrinks_as_one_upward_does_and_a_lag_is_none() {
    let report = answer(session("carry", &[250.0, 246.0, 248.0]), with_goal("carry", Goal::Lower));
    let lag = report.honest_lead.expect("two candidates");
    assert!(lag.shown < lag.honest && lag.honest < 0.0 && lag.by_luck > 0.0);
    alike(&lag, &expected(&report, "carry", 3, BEST_OF_TWO, |_| 4.0));
    // Asked about one that does not lead.
    for averages in [[250.0, 246.0, 258.0], [250.0, 252.0, 258.0]] {
        let question = Question { candidate: Some(1), ..asking("carry") };
        assert_eq!(answer(session("carry", &averages), question).honest_lead, None);
    }
}

#[test]
fn one_candidate_has_no_luck_of_being_picked_and_two_have() {
    let honest = |averages: &[f64]| answer(session("carry", averages), asking("carry")).honest_lead;
    assert_eq!(honest(&[250.0, 255.0]), None);
    assert!(honest(&[250.0, 255.0, 252.0]).is_some());
}

#[test]
fn a_second_measure_makes_no_second_candidate() {
    let mut session = session("carry", &[250.0, 255.0]);
    crate::made::also(&mut session, "ball_speed", |at, _| Some(150.0 + crate::made::noise(at)));
    assert_eq!(answer(session.clone(), asking("carry")).honest_lead, None);
    let mut three = self::session("carry", &[250.0, 253.0, 254.5]);
    let alone = answer(three.clone(), asking("carry")).honest_lead;
    crate::made::also(&mut three, "ball_speed", |at, _| Some(150.0 + crate::made::noise(at)));
    assert_eq!(answer(three, asking("carry")).honest_lead, alone);
}

#[test]
fn averages_have_an_honest_lead_and_scatter_has_none() {
    let mut of_averages = empty("carry", 3);
    let means = [250.0, 255.0, 252.0];
    of_averages.summaries =
        (0..3).map(|b| summary(b, "carry", mean(means[b], Some(8.0)), Some(20), SummaryOf::All)).collect();
    let lead = answer(of_averages, asking("carry")).honest_lead.expect("two candidates");
    close(lead.by_luck, BEST_OF_TWO * 8.0 / 20.0_f64.sqrt(), 1e-9);
    let scatter = answer(session("carry", &[250.0, 253.0, 254.0]), with_goal("carry", Goal::Tighter));
    assert_eq!(scatter.honest_lead, None);
}
