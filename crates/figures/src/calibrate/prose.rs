//! Target 22: the numbers that the methods page says in a sentence, most of them of methods that the answer does not use.

use super::effort::{Effort, seed, sessions};
use super::plans::{Planned, Wanted, every_round};
use super::rate::{ERROR, Limit, Row, rate, values};
use super::sessions::{CARRY, Kind, answer, fixed};
use crate::simulate::model::{NONE, STRONG};
use judging::verdict::DecisionKind;
use session::Session;
use session::plan::LookWord;
use session::question::{Goal, Question};
use stats::describe::{mad, mean, median};
use stats::{Sample, variance_ratio, welch};

const LEVEL: f64 = 0.05;
/// Median distance from the median to a standard deviation, for the bell curve.
const MAD_TO_SD: f64 = 1.4826;

/// Every figure of a sentence.
pub(super) fn sentences(effort: Effort) -> Vec<Row> {
    let mut rows = vec![watched(effort), textbook_scatter(effort), stopped_early(effort)];
    rows.extend(left_out(effort));
    rows.extend(dropped(effort));
    rows.extend(drifting_scatter(effort));
    rows
}

/// Carry of the second build and of the first, in the order hit.
fn carries(kind: &Kind, number: u64) -> [Vec<f64>; 2] {
    let session = kind.session(number, &[CARRY]);
    [1, 0].map(|build| of(&session, build))
}

fn of(session: &Session, build: usize) -> Vec<f64> {
    session.shots.iter().filter(|shot| shot.build == build).filter_map(|shot| shot.values[0]).collect()
}

/// By how much the second leads, where a plain comparison calls them different.
fn plain(candidate: &[f64], baseline: &[f64]) -> Option<f64> {
    let sample = |values: &[f64]| Sample::new(values.to_vec()).ok();
    let found = welch(&sample(candidate)?, &sample(baseline)?).ok()?;
    (found.p_value() < LEVEL).then_some(mean(candidate) - mean(baseline))
}

fn watched(effort: Effort) -> Row {
    let kind = Kind::in_turn(NONE, 30, seed(22, 0));
    let found = rate(sessions(8_000, effort), |number| {
        let [candidate, baseline] = carries(&kind, number);
        (2..=10).any(|lap| plain(&candidate[..lap * 3], &baseline[..lap * 3]).is_some())
    });
    let what = "for comparison, plain Welch looked at after each of 10 laps, no drift: carry ever different";
    Row::of_rate(22, what.to_owned(), found, Limit::Between(0.13, 0.16), effort)
}

fn textbook_scatter(effort: Effort) -> Row {
    let kind = Kind::in_turn(NONE, 30, seed(22, 1));
    let found = rate(sessions(8_000, effort), |number| {
        let [candidate, baseline] =
            carries(&kind, number).map(|values| Sample::new(values).map(|sample| sample.summary()));
        let (Ok(candidate), Ok(baseline)) = (candidate, baseline) else { return false };
        variance_ratio(&candidate, &baseline).is_ok_and(|ratio| ratio.p_value() < LEVEL)
    });
    let what = "for comparison, F test of scatter, equal clubs, 30 each, no drift: carry called different";
    Row::of_rate(22, what.to_owned(), found, Limit::Between(0.30, 0.34), effort)
}

/// What a plan shows of a true 8 yd at the look that ends it.
fn stopped_early(effort: Effort) -> Row {
    let wanted = Wanted {
        builds: 2,
        measure: CARRY,
        rounds: 10,
        set: 3,
        looks: LookWord::EveryRound,
        spread: None,
        margin: None,
    };
    let test = Planned::new(&wanted, NONE, seed(22, 2)).with_shift(8.0);
    let looks = every_round(wanted.rounds - 1);
    let leads = values(sessions(4_000, effort), |number| {
        test.at_looks(number, &looks, false)
            .find(|report| report.answer.decision.kind == DecisionKind::Different)
            .and_then(|report| report.answer.estimate)
            .map(|estimate| estimate.value)
    });
    let of_all = stats::describe::sum_of_squares(&leads) / (leads.len() as f64 - 1.0);
    let what = "8 yd apart, plan of 10 laps that a look ends early, no drift: lead shown then";
    let measured = (mean(&leads), (of_all / leads.len() as f64).sqrt());
    Row::of_value(22, what.to_owned(), measured, leads.len() as u64, Limit::Between(10.4, 10.9), effort)
        .in_unit("yd")
}

/// What is left out, how many of one club's worst and of the other's best may be, and where the figure lies.
type LeftOut = (&'static str, &'static [usize], &'static [usize], (f64, f64));

/// Leaving shots out that hurt the second club, and seeing it called the longer one.
fn left_out(effort: Effort) -> Vec<Row> {
    let kind = Kind::in_turn(NONE, 10, seed(22, 3));
    let leads = |number: u64, worst: &[usize], best: &[usize]| {
        let [mut candidate, mut baseline] = carries(&kind, number);
        candidate.sort_by(f64::total_cmp);
        baseline.sort_by(|a, b| b.total_cmp(a));
        worst.iter().any(|&low| {
            best.iter()
                .any(|&high| plain(&candidate[low..], &baseline[high..]).is_some_and(|lead| lead > 0.0))
        })
    };
    let cases: [LeftOut; 3] = [
        ("every shot counts", &[0], &[0], (0.0, 0.03)),
        ("the worst two shots of one club left out", &[2], &[0], (0.09, 0.12)),
        (
            "up to two of each club left out, whichever help one club most",
            &[0, 1, 2],
            &[0, 1, 2],
            (0.24, 0.28),
        ),
    ];
    let row = |(said, worst, best, (least, most)): LeftOut| {
        let found = rate(sessions(8_000, effort), |number| leads(number, worst, best));
        let what = format!(
            "for comparison, plain Welch, equal clubs, 10 each, {said}: carry of that club called longer"
        );
        Row::of_rate(22, what, found, Limit::Between(least, most), effort)
    };
    cases.into_iter().map(row).collect()
}

/// Shots far from the rest dropped by a rule, and the rest compared as if nothing had been.
fn dropped(effort: Effort) -> Vec<Row> {
    let near = |values: Vec<f64>, reach: f64| -> Vec<f64> {
        let (Some(middle), Some(spread)) = (median(&values), mad(&values)) else { return values };
        values.into_iter().filter(|value| (value - middle).abs() <= reach * MAD_TO_SD * spread).collect()
    };
    let row = |(i, (each, reach)): (usize, (usize, f64))| {
        let kind = Kind::in_turn(NONE, each, seed(22, 10 + i));
        let found = rate(sessions(8_000, effort), |number| {
            let [candidate, baseline] = carries(&kind, number).map(|values| near(values, reach));
            plain(&candidate, &baseline).is_some()
        });
        let what = format!(
            "for comparison, plain Welch, equal clubs, {each} each, shots beyond {reach} robust deviations dropped: carry called different"
        );
        Row::of_rate(22, what, found, Limit::Between(0.06, 0.15), effort)
    };
    [(10, 2.0), (10, 3.5), (30, 2.0), (30, 3.5)].into_iter().enumerate().map(row).collect()
}

/// The interval of scatter where the session drifts, which nothing widens it for.
fn drifting_scatter(effort: Effort) -> Vec<Row> {
    let kinds = [
        ("in turn, strong, 30 each", Kind::in_turn(STRONG, 30, seed(22, 20))),
        ("30 then 30, strong", Kind::blocked(STRONG, &[30, 30], seed(22, 21))),
    ];
    let row = |(said, kind): (&str, Kind)| {
        let found = rate(sessions(8_000, effort), |number| {
            let question = Question { goal: Some(Goal::Tighter), ..fixed(CARRY) };
            let estimate = answer(kind.session(number, &[CARRY]), question).answer.estimate;
            estimate.is_some_and(|e| e.low > 1.0 || e.high < 1.0)
        });
        let what = format!("scatter of carry, equal clubs, {said}: missed by the interval");
        Row::of_rate(22, what, found, Limit::AtMost(0.09), effort).promised_wrong_at_most(ERROR)
    };
    kinds.into_iter().map(row).collect()
}
