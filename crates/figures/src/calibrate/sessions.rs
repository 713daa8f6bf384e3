//! Invented sessions as the product sees them, and the questions put to them.

use crate::simulate::model::Parameters;
use crate::simulate::{Effects, MEASURES, Turns, blocked, in_laps, in_turns, random, session, written_down};
use judging::verdict::DecisionKind;
use session::few::Map;
use session::question::{Question, Stopping, StoppingWord};
use session::{Order, Session, Summary, SummaryOf, SummaryValue};
use telling::check::{CheckRequest, check};
use telling::report::Report;
use text::Voice;

/// Positions in [`MEASURES`].
pub(crate) const CARRY: usize = 0;
pub(crate) const OFFLINE: usize = 1;
pub(crate) const BALL_SPEED: usize = 2;
pub(crate) const SPIN_RATE: usize = 4;

/// The measures that rates are measured on, with their names.
pub(crate) const MEASURED: [(usize, &str); 4] =
    [(CARRY, "carry"), (OFFLINE, "offline"), (SPIN_RATE, "spin rate"), (BALL_SPEED, "ball speed")];

/// How the shots of a session are hit.
#[derive(Debug, Clone)]
pub(crate) enum Design {
    /// AB BA AB BA, in sets of this many.
    InTurn { builds: usize, each: usize, set: usize },
    /// Two builds in sets of these many.
    Laps { sets: [usize; 2], laps: usize, turns: Turns },
    /// One block per build.
    Blocked(Vec<usize>),
}

/// A kind of session: how it is hit, what drifts, what is true of the last build.
#[derive(Debug, Clone)]
pub(crate) struct Kind {
    pub(crate) design: Design,
    pub(crate) level: Parameters,
    /// Added to every shot of the last build.
    pub(crate) effects: Vec<Effects>,
    pub(crate) seed: u64,
}

impl Kind {
    /// Two equal builds hit in turn, three at a time.
    pub(crate) fn in_turn(level: Parameters, each: usize, seed: u64) -> Self {
        Self { design: Design::InTurn { builds: 2, each, set: 3 }, level, effects: Vec::new(), seed }
    }

    /// Equal builds hit one after the other.
    pub(crate) fn blocked(level: Parameters, counts: &[usize], seed: u64) -> Self {
        Self { design: Design::Blocked(counts.to_vec()), level, effects: Vec::new(), seed }
    }

    /// The same with something added to the second build.
    pub(crate) fn with_shift(mut self, measure: usize, shift: f64) -> Self {
        let mut last = Effects::default();
        last.shift[measure] = shift;
        self.effects = vec![Effects::default(), last];
        self
    }

    /// The session of this number, with these measures.
    pub(crate) fn session(&self, number: u64, measures: &[usize]) -> Session {
        let mut random = random(self.seed, number);
        let (turns, builds, order) = match &self.design {
            Design::InTurn { builds, each, set } => {
                (in_turns(*builds, *each, *set, Turns::Reversed, &mut random), *builds, Order::Interleaved)
            }
            Design::Laps { sets, laps, turns } => {
                (in_laps(sets, *laps, *turns, &mut random), sets.len(), Order::Interleaved)
            }
            Design::Blocked(counts) => (blocked(counts), counts.len(), Order::Blocked),
        };
        let shots = session(&turns, &self.level, &self.effects, &mut random);
        let names = (0..builds).map(|build| format!("Build {build}"));
        written_down(&turns, &shots, names, measures, order, |value| value)
    }
}

/// The question about one measure, asked as if the number of shots had been fixed before.
pub(crate) fn fixed(measure: usize) -> Question {
    Question {
        baseline: 0,
        candidate: None,
        measure: MEASURES[measure].into(),
        goal: None,
        margin: None,
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
        differs: None,
    }
}

/// The report on a session; invented sessions are never refused.
pub(crate) fn answer(session: Session, question: Question) -> Report {
    match check(&CheckRequest { session, question }, &Voice::english()) {
        Ok(report) => report,
        Err(refusal) => unreachable!("an invented session was refused: {refusal:?}"),
    }
}

/// What is left of a session when only averages and counts are written down.
pub(crate) fn averages_only(session: &Session) -> Session {
    let summaries = (0..session.builds.len())
        .map(|build| {
            let values: Vec<f64> =
                session.shots.iter().filter(|s| s.build == build).filter_map(|s| s.values[0]).collect();
            let value =
                SummaryValue { mean: Some(stats::describe::mean(&values)), ..SummaryValue::default() };
            Summary {
                build,
                n: u32::try_from(values.len()).ok(),
                of: SummaryOf::All,
                values: Map::from([(session.measures[0].clone(), value)]),
                line: None,
            }
        })
        .collect();
    Session { shots: Vec::new(), summaries, order: Order::Unknown, ..session.clone() }
}

/// Whether such a session is answered with `different`.
pub(crate) fn differs(kind: &Kind, number: u64, measure: usize) -> bool {
    answer(kind.session(number, &[measure]), fixed(measure)).answer.decision.kind == DecisionKind::Different
}
