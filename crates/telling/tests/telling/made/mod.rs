//! Sessions written out shot by shot, for tests that hold a boundary from both sides.

#![allow(dead_code, reason = "each test file uses its own part")]

use crate::support::{answer, asking, empty, push};
use judging::verdict::Decision;
use session::few::Map;
use session::measure::MeasureId;
use session::question::{Goal, Question};
use session::{Order, Session, Shot, Summary, SummaryOf, SummaryValue};
use telling::report::{Finding, Report};

/// Three builds' worth of small deviations that do not repeat: mean zero over twelve, scatter about one.
pub(crate) const NOISE: [f64; 12] = [0.4, -1.1, 0.9, -0.6, 1.3, -0.2, 0.1, -1.2, 0.7, -1.4, 0.6, 0.5];

/// One value out of the deviations, for the shot at this place.
pub(crate) fn noise(at: usize) -> f64 {
    NOISE[at % NOISE.len()]
}

/// All shots of the first build, then all of the next.
pub(crate) fn blocks(measure: &str, builds: &[Vec<f64>]) -> Session {
    let mut session = empty(measure, builds.len());
    session.order = Order::Blocked;
    for (build, values) in builds.iter().enumerate() {
        for &value in values {
            push(&mut session, build, None, value);
        }
    }
    session
}

/// `n` shots around an average; `from` chooses which deviations.
pub(crate) fn around(average: f64, scatter: f64, n: usize, from: usize) -> Vec<f64> {
    (from..from + n).map(|at| average + scatter * noise(at)).collect()
}

/// Rounds in turn, each with these values of each build, turned round every second time.
pub(crate) fn rounds(measure: &str, rounds: &[Vec<Vec<f64>>]) -> Session {
    let mut session = rounds_begun_alike(measure, rounds);
    let mut turned: Vec<Shot> = Vec::new();
    for round in session.shots.chunk_by(|a, b| a.round == b.round) {
        let mut sets: Vec<&[Shot]> = round.chunk_by(|a, b| a.build == b.build).collect();
        if round[0].round.is_some_and(|round| round % 2 == 0) {
            sets.reverse();
        }
        turned.extend(sets.into_iter().flatten().cloned());
    }
    session.shots = turned;
    session
}

/// The same with the first build first in every round.
pub(crate) fn rounds_begun_alike(measure: &str, rounds: &[Vec<Vec<f64>>]) -> Session {
    let mut session = empty(measure, rounds.first().map_or(0, Vec::len));
    session.order = Order::Interleaved;
    for (round, sets) in (1..).zip(rounds) {
        for (build, values) in sets.iter().enumerate() {
            for &value in values {
                push(&mut session, build, Some(round), value);
            }
        }
    }
    session
}

/// One more measure, told for each shot by its place.
pub(crate) fn also(session: &mut Session, measure: &str, value: impl Fn(usize, &Shot) -> Option<f64>) {
    session.measures.push(measure.into());
    for (at, shot) in session.shots.iter_mut().enumerate() {
        let value = value(at, shot);
        shot.values.push(value);
    }
}

/// Sets the shots aside that are chosen by their place.
pub(crate) fn set_aside(session: &mut Session, chosen: impl Fn(usize, &Shot) -> bool) {
    for (at, shot) in session.shots.iter_mut().enumerate() {
        if chosen(at, shot) {
            shot.left_out = Some("mishit".into());
        }
    }
}

/// The session as it would be without the shots chosen by their place.
pub(crate) fn without(session: &Session, chosen: impl Fn(usize, &Shot) -> bool) -> Session {
    let mut rest = session.clone();
    let mut at = 0;
    rest.shots.retain(|shot| {
        at += 1;
        !chosen(at - 1, shot)
    });
    rest
}

/// Averages of one build on one measure.
pub(crate) fn summary(
    build: usize,
    measure: &str,
    value: SummaryValue,
    n: Option<u32>,
    of: SummaryOf,
) -> Summary {
    Summary { build, n, of, values: Map::from([(measure.into(), value)]), line: None }
}

/// An average, with a deviation or without.
pub(crate) fn mean(mean: f64, sd: Option<f64>) -> SummaryValue {
    SummaryValue { mean: Some(mean), sd, low: None, high: None }
}

/// What was decided of the candidate on the measure asked for.
pub(crate) fn decided(session: &Session, question: Question) -> Decision {
    answer(session.clone(), question).answer.decision
}

/// A question about one measure with one's own margin.
pub(crate) fn with_margin(measure: &str, margin: f64) -> Question {
    Question { margin: Some(margin), ..asking(measure) }
}

/// A question about one measure with one's own goal.
pub(crate) fn with_goal(measure: &str, goal: Goal) -> Question {
    Question { goal: Some(goal), ..asking(measure) }
}

/// The finding of one candidate on one measure.
pub(crate) fn finding<'a>(report: &'a Report, candidate: usize, measure: &str) -> &'a Finding {
    let measure = MeasureId::from(measure);
    let found = report.findings.iter().find(|f| f.candidate == candidate && f.measure == measure);
    found.expect("a finding for every candidate and measure")
}

pub(crate) fn close(a: f64, b: f64, tolerance: f64) {
    assert!((a - b).abs() <= tolerance, "{a} is not {b}");
}
