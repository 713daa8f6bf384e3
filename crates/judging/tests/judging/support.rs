//! Sessions written out shot by shot, whose answer can be foreseen.

use judging::{Judged, judge, settle};
use session::measure::MeasureId;
use session::question::{Question, Stopping, StoppingWord};
use session::{Build, Order, Session, Shot, Summary, SummaryOf, SummaryValue};

/// Small deviations that do not repeat: mean zero over twelve, scatter about one.
pub(crate) const NOISE: [f64; 12] = [0.4, -1.1, 0.9, -0.6, 1.3, -0.2, 0.1, -1.2, 0.7, -1.4, 0.6, 0.5];

/// `n` values around an average; `from` chooses which deviations.
pub(crate) fn around(average: f64, scatter: f64, n: usize, from: usize) -> Vec<f64> {
    (from..from + n).map(|at| average + scatter * NOISE[at % NOISE.len()]).collect()
}

/// Builds and one measure, but no shots.
pub(crate) fn empty(measure: &str, builds: usize) -> Session {
    let names = ["Own driver", "Driver B", "Driver C", "Driver D"];
    Session {
        builds: names.iter().take(builds).map(|name| Build { name: (*name).into() }).collect(),
        measures: vec![measure.into()],
        ..Session::default()
    }
}

pub(crate) fn push(session: &mut Session, build: usize, round: Option<u32>, value: f64) {
    session.shots.push(Shot { build, round, values: vec![Some(value)], ..Shot::default() });
}

/// All shots of the first build, then all of the next.
pub(crate) fn blocks(measure: &str, builds: &[Vec<f64>]) -> Session {
    let mut session = Session { order: Order::Blocked, ..empty(measure, builds.len()) };
    for (build, values) in builds.iter().enumerate() {
        values.iter().for_each(|&value| push(&mut session, build, None, value));
    }
    session
}

/// Rounds in turn with three shots of each build around its average.
pub(crate) fn in_turn(measure: &str, rounds: u32, averages: &[f64], scatter: f64) -> Session {
    let mut session = Session { order: Order::Interleaved, ..empty(measure, averages.len()) };
    for round in 1..=rounds {
        // AB BA: with one club always first the answer would leave room for the start of the laps.
        let mut order: Vec<(usize, f64)> = averages.iter().copied().enumerate().collect();
        if round % 2 == 0 {
            order.reverse();
        }
        for (build, average) in order {
            for value in around(average, scatter, 3, round as usize * 5 + build * 4) {
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

/// Averages of one measure, build by build: number of shots, average, deviation.
pub(crate) fn averages(measure: &str, builds: &[(Option<u32>, f64, Option<f64>)]) -> Session {
    let mut session = empty(measure, builds.len());
    for (build, &(n, mean, sd)) in builds.iter().enumerate() {
        let value = SummaryValue { mean: Some(mean), sd, ..SummaryValue::default() };
        session.summaries.push(Summary {
            build,
            n,
            of: SummaryOf::All,
            values: [(measure.into(), value)].into(),
            line: None,
        });
    }
    session
}

/// A question about one measure, with the number of shots fixed before.
pub(crate) fn asking(measure: &str) -> Question {
    Question {
        differs: None,
        baseline: 0,
        candidate: None,
        measure: MeasureId::from(measure),
        goal: None,
        margin: None,
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
    }
}

/// A question about one measure with one's own margin.
pub(crate) fn with_margin(measure: &str, margin: f64) -> Question {
    Question { margin: Some(margin), ..asking(measure) }
}

pub(crate) fn judged<'a>(session: &'a Session, question: &'a Question) -> Judged<'a> {
    judge(settle(question, session).expect("a question that fits"))
}
