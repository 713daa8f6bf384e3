//! Targets that go through the planner: what a plan promises, and what its looks cost.
//!
//! Sessions are hit in the order of `judging::plan`, written down shot by shot and followed as the page follows
//! them; the question with its stopping rule is the planner's own.

use super::effort::{Effort, seed, sessions};
use super::rate::{Limit, Row, rate};
use super::sessions::{BALL_SPEED, CARRY, OFFLINE, SPIN_RATE, answer};
use crate::simulate::model::{NONE, Parameters};
use crate::simulate::{Effects, MEASURES, Turn, random, session};
use judging::plan::{FollowRequest, LoggedShot, LookTaken};
use judging::verdict::DecisionKind;
use session::Session;
use session::plan::{LookAfter, LookWord, PlanRequest};
use session::question::Question;
use session::refusal::Refusal;
use telling::plan::{Plan, follow, plan};
use telling::report::Report;
use text::Voice;

/// A test that was planned, and how it is hit.
#[derive(Debug, Clone)]
pub(super) struct Planned {
    pub(super) request: PlanRequest,
    pub(super) plan: Plan,
    turns: Vec<Turn>,
    pub(super) measure: usize,
    pub(super) level: Parameters,
    pub(super) effects: Vec<Effects>,
    pub(super) seed: u64,
}

/// What a request for a plan needs to say in a simulation.
pub(super) struct Wanted {
    pub(super) builds: usize,
    pub(super) measure: usize,
    pub(super) rounds: u32,
    pub(super) set: u32,
    pub(super) looks: LookWord,
    pub(super) spread: Option<f64>,
    pub(super) margin: Option<f64>,
}

impl Planned {
    pub(super) fn new(wanted: &Wanted, level: Parameters, seed: u64) -> Self {
        let builds = (0..wanted.builds).map(|b| format!("Build {b}")).collect();
        let request = PlanRequest {
            margin: wanted.margin,
            spread: wanted.spread,
            set: Some(wanted.set),
            rounds: Some(wanted.rounds),
            looks: Some(LookAfter::Word(wanted.looks)),
            ..PlanRequest::of(builds, MEASURES[wanted.measure].into())
        };
        let plan = made(plan(&request, &Voice::english()));
        let mut turns = Vec::new();
        for (pick_up, turn) in plan.facts.turns.iter().enumerate() {
            let shot = Turn { build: turn.build, round: turn.round as usize - 1, pick_up };
            turns.extend(std::iter::repeat_n(shot, turn.shots as usize));
        }
        Self { request, plan, turns, measure: wanted.measure, level, effects: Vec::new(), seed }
    }

    /// The same with something added to the last build.
    pub(super) fn with_shift(mut self, shift: f64) -> Self {
        self.effects.resize(self.plan.builds.len(), Effects::default());
        if let Some(last) = self.effects.last_mut() {
            last.shift[self.measure] = shift;
        }
        self
    }

    /// The whole log of the session of this number.
    fn log(&self, number: u64) -> Vec<LoggedShot> {
        let values = session(&self.turns, &self.level, &self.effects, &mut random(self.seed, number));
        let id = || MEASURES[self.measure].into();
        self.turns
            .iter()
            .zip(values)
            .map(|(turn, values)| LoggedShot {
                turn: turn.pick_up,
                values: [(id(), Some(values[self.measure]))].into(),
                note: None,
            })
            .collect()
    }

    /// The report at each look, in turn; `within` makes the looks ones that no plan covers.
    pub(super) fn at_looks(&self, number: u64, rounds: &[u32], within: bool) -> impl Iterator<Item = Report> {
        self.asked_at_looks(number, rounds, within, 0.0).map(|(session, question)| answer(session, question))
    }

    /// What is asked of which shots at each look, in turn, with so much more on every shot of the last build.
    pub(super) fn asked_at_looks(
        &self,
        number: u64,
        rounds: &[u32],
        within: bool,
        more: f64,
    ) -> impl Iterator<Item = (Session, Question)> {
        let mut log = self.log(number);
        let last = self.plan.builds.len() - 1;
        for shot in log.iter_mut().filter(|shot| self.plan.facts.turns[shot.turn].build == last) {
            shot.values.values_mut().flatten().for_each(|value| *value += more);
        }
        let looks: Vec<LookTaken> =
            rounds.iter().map(|&after_round| LookTaken { after_round, within_a_round: within }).collect();
        (0..looks.len()).map(move |look| {
            let shots = log
                .iter()
                .filter(|shot| self.plan.facts.turns[shot.turn].round <= looks[look].after_round)
                .cloned()
                .collect();
            let (plan, looks) = (self.request.clone(), looks[..=look].to_vec());
            let progress =
                made(follow(&FollowRequest { plan, shots, ended: Vec::new(), looks }, &Voice::english()));
            (progress.session, progress.facts.question)
        })
    }

    /// Whether any look finds this kind of answer for any candidate.
    pub(super) fn ever(&self, number: u64, rounds: &[u32], within: bool, wanted: DecisionKind) -> bool {
        self.at_looks(number, rounds, within).any(|report| report.answer.decision.kind == wanted)
    }

    /// Rounds after which the plan itself looks.
    pub(super) fn own_looks(&self) -> Vec<u32> {
        self.plan.facts.looks.iter().map(|look| look.after_round).collect()
    }

    /// Whether any of the plan's own looks finds the last build different.
    fn finds_the_last(&self, number: u64) -> bool {
        let looks = self.own_looks();
        let last = self.plan.builds.len() - 1;
        self.at_looks(number, &looks, false).any(|report| {
            report.findings.iter().any(|f| f.candidate == last && f.decision.kind == DecisionKind::Different)
        })
    }
}

/// Looks after every round from the second.
pub(super) fn every_round(rounds: u32) -> Vec<u32> {
    (2..=rounds).collect()
}

fn made<T>(result: Result<T, Refusal>) -> T {
    match result {
        Ok(made) => made,
        Err(refusal) => unreachable!("an invented plan was refused: {refusal:?}"),
    }
}

/// How far measured may lie from promised.
const POINTS: f64 = 0.03;

/// Target 17: a plan promises what it keeps, over margins, spreads, rounds, builds and looks.
pub(super) fn promises(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    let designs = [(2, 4, 3), (2, 6, 3), (2, 10, 3), (2, 6, 5), (3, 6, 3), (4, 5, 3), (2, 12, 1), (8, 3, 3)];
    for (i, (builds, rounds, set)) in designs.into_iter().enumerate() {
        for (j, looks) in [LookWord::AtEnd, LookWord::Halfway, LookWord::EveryRound].into_iter().enumerate() {
            // Measures and scatters take turns, so that the grid stays short.
            let (measure, sd) = SHOT_SD[(i + j) % SHOT_SD.len()];
            let factor = [0.7, 1.0, 1.4][(i + 2 * j) % 3];
            for size in [0.6, 1.1] {
                let (sd, difference) = (sd * factor, size * sd * factor);
                let wanted = Wanted {
                    builds,
                    measure,
                    rounds,
                    set,
                    looks,
                    spread: Some(sd),
                    margin: Some(difference),
                };
                let mut planned = Planned::new(&wanted, NONE, seed(17, rows.len()));
                planned.effects = vec![Effects::default(); builds];
                planned.effects.iter_mut().for_each(|build| build.spread[measure] = factor);
                rows.push(promise(&planned.with_shift(difference), difference, effort));
            }
        }
    }
    rows
}

/// Measures with the deviations of their invented shots, as `cargo xtask simulate --level none` prints them.
pub(super) const SHOT_SD: [(usize, f64); 4] =
    [(CARRY, 11.48), (OFFLINE, 15.65), (BALL_SPEED, 3.0), (SPIN_RATE, 382.0)];

pub(super) fn in_words(measure: usize) -> (&'static str, &'static str) {
    match measure {
        CARRY => ("carry", "yd"),
        OFFLINE => ("offline", "yd"),
        BALL_SPEED => ("ball speed", "mph"),
        _ => ("spin rate", "rpm"),
    }
}

fn promise(planned: &Planned, difference: f64, effort: Effort) -> Row {
    let plan = &planned.plan;
    let promised = plan.power.as_ref().map_or(f64::NAN, |power| power.seen[0].facts.chance);
    // As it is printed.
    let promised = (promised * 100.0).round() / 100.0;
    let found = rate(sessions(4_000, effort), |number| planned.finds_the_last(number));
    let looks = if plan.facts.looks.len() == 1 {
        "1 look".into()
    } else {
        format!("{} looks", plan.facts.looks.len())
    };
    let (measure, unit) = in_words(planned.measure);
    let what = format!(
        "plan of {} clubs, {} laps of {}, {looks}, {measure} {difference:.1} {unit} apart: found",
        plan.builds.len(),
        plan.facts.rounds,
        plan.facts.set,
    );
    let limit = Limit::Between(promised - POINTS, promised + POINTS);
    Row::of_rate(17, what, found, limit, effort).promised_found(promised)
}
