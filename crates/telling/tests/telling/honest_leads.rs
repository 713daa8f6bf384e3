//! What is left of the best of several: what a bet names, and the luck of the best by hand, for leads and for lags.

use crate::made::{around, blocks, close, finding, mean, summary, with_goal};
use crate::support::{answer, asking, empty};
use judging::analysis::Group;
use judging::honest_lead::HonestLead;
use session::question::{Differs, Goal, Question};
use session::{Session, SummaryOf};
use telling::bet::bet;
use telling::check::CheckRequest;
use telling::report::Report;
use text::Voice;

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

/// What the bet on the same shots names as most likely, and the luck of the best by hand.
fn expected(asked: (Session, Question), report: &Report, builds: usize, best: f64) -> HonestLead {
    let (session, question) = asked;
    let groups = groups(report, question.measure.as_str(), builds);
    let spoken = report.answer.candidate.expect("a candidate");
    let variance = |group: &Group| group.sd.expect("a deviation").powi(2);
    let shot_variance = (variance(&groups[0]) + variance(&groups[spoken])) / 2.0;
    let of_mean = groups.iter().map(|g| shot_variance / g.n as f64).sum::<f64>() / builds as f64;
    let bet =
        bet(&CheckRequest { session, question }, &Voice::english()).expect("fits").facts.expect("a bet");
    HonestLead {
        candidates: builds - 1,
        shown: bet.gap.shown,
        honest: bet.gap.value,
        by_luck: best * of_mean.sqrt(),
    }
}

fn alike(got: &HonestLead, expected: &HonestLead) {
    assert_eq!(got.candidates, expected.candidates);
    close(got.shown, expected.shown, 1e-9);
    close(got.honest, expected.honest, 1e-9);
    close(got.by_luck, expected.by_luck, 1e-9);
}

/// The page names one gap to expect: two would be one too many.
#[test]
fn the_honest_lead_is_what_the_bet_names() {
    for (measure, averages) in [
        ("carry", [250.0, 253.0, 254.5, 248.0]),
        ("total", [250.0, 253.0, 254.5, 248.0]),
        ("ball_speed", [150.0, 152.0, 153.0, 151.0]),
    ] {
        for (builds, best) in [(2, 0.0), (3, BEST_OF_TWO), (4, BEST_OF_THREE)] {
            for differs in [None, Some(Differs::Shaft), Some(Differs::OldClub)] {
                let question = Question { differs, ..asking(measure) };
                let asked = (session(measure, &averages[..builds]), question);
                let report = answer(asked.0.clone(), asked.1.clone());
                let lead = report.honest_lead.expect("a lead");
                assert!(0.0 < lead.honest && lead.honest < lead.shown);
                alike(&lead, &expected(asked, &report, builds, best));
            }
        }
    }
}

#[test]
fn a_lead_downward_shrinks_as_one_upward_does_and_a_lag_is_none() {
    let asked = (session("carry", &[250.0, 246.0, 248.0]), with_goal("carry", Goal::Lower));
    let report = answer(asked.0.clone(), asked.1.clone());
    let lag = report.honest_lead.expect("two candidates");
    assert!(lag.shown < lag.honest && lag.honest < 0.0 && lag.by_luck > 0.0);
    alike(&lag, &expected(asked, &report, 3, BEST_OF_TWO));
    // Asked about one that does not lead.
    for averages in [[250.0, 246.0, 258.0], [250.0, 252.0, 258.0]] {
        let question = Question { candidate: Some(1), ..asking("carry") };
        assert_eq!(answer(session("carry", &averages), question).honest_lead, None);
    }
}

#[test]
fn one_candidate_has_no_luck_of_being_picked_and_is_pulled_all_the_same() {
    let honest = |averages: &[f64]| answer(session("carry", averages), asking("carry")).honest_lead;
    let one = honest(&[250.0, 255.0]).expect("a lead");
    assert!((one.candidates, one.by_luck) == (1, 0.0) && one.honest < one.shown);
    assert!(honest(&[250.0, 255.0, 252.0]).expect("a lead").by_luck > 0.0);
    assert_eq!(honest(&[250.0, 245.0]), None, "a lag is no lead");
}

#[test]
fn a_second_measure_makes_no_second_candidate() {
    let mut session = session("carry", &[250.0, 255.0]);
    crate::made::also(&mut session, "ball_speed", |at, _| Some(150.0 + crate::made::noise(at)));
    assert_eq!(answer(session.clone(), asking("carry")).honest_lead.map(|lead| lead.candidates), Some(1));
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
