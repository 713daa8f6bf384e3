//! Sessions made by hand for links: invented shots, and a question about them.

#![allow(dead_code, reason = "each test file uses its own part")]

pub(crate) mod fitting_session;

use session::measure::MeasureId;
use session::question::{Question, Stopping, StoppingWord};
use session::{Build, Order, Session, Shot};

/// Deviations of single shots, in units of a set's scatter: no trend, no outlier, mean zero over nine.
const SCATTER: [f64; 9] = [0.4, -1.1, 0.9, -0.6, 1.3, -0.2, 0.1, -1.2, 0.4];

/// Shots of one measure hit in rounds of three, build after build in each round, turned round every second time.
pub(crate) fn in_turn(measure: &str, rounds: u32, averages: &[f64], scatter: f64) -> Session {
    let mut session = empty(measure, averages.len());
    session.order = Order::Interleaved;
    for round in 0..rounds {
        let mut builds: Vec<usize> = (0..averages.len()).collect();
        if round % 2 == 1 {
            builds.reverse();
        }
        for build in builds {
            for shot in 0..3 {
                // Another place in the pattern for every set, so that no two sets are copies.
                let i = (round as usize * 5 + build * 4 + shot * (1 + build)) % SCATTER.len();
                push(&mut session, build, Some(round + 1), averages[build] + scatter * SCATTER[i]);
            }
        }
    }
    session
}

/// A session with builds and one measure but no shots.
pub(crate) fn empty(measure: &str, builds: usize) -> Session {
    let names = ["Own driver", "Driver B", "Driver C", "Driver D", "Driver E"];
    Session {
        builds: names.iter().take(builds).map(|name| Build { name: (*name).into() }).collect(),
        measures: vec![measure.into()],
        ..Session::default()
    }
}

pub(crate) fn push(session: &mut Session, build: usize, round: Option<u32>, value: f64) {
    session.shots.push(Shot { build, round, number: None, values: vec![Some(value)], ..Shot::default() });
}

/// A question about one measure, with the number of shots fixed before.
pub(crate) fn asking(measure: &str) -> Question {
    Question {
        baseline: 0,
        candidate: None,
        measure: MeasureId::from(measure),
        goal: None,
        margin: None,
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
        differs: None,
    }
}
