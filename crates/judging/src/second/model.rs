//! Two clubs by two conditions, fitted: what the condition does on average over both, and whether the one depends on the
//! other.
//!
//! Least squares with effect coding. Source: standard two-way analysis of variance, each effect as one degree of freedom.

use serde::Serialize;
use session::few::Set;
use session::question::Question;
use session::{Order, Session, infer_rounds};
use stats::TDifference;
use stats::linear_model::{Intercept, linear_model};

/// One of the four cells.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Cell {
    /// Index of the build.
    pub build: usize,
    /// Whether it is the second condition.
    pub is_second: bool,
    /// Shots.
    pub n: usize,
    /// Their average.
    pub mean: f64,
}

/// A shot as the model needs it: +½ for candidate and second, −½ for baseline and first.
pub(super) struct Coded {
    build: f64,
    condition: f64,
    value: f64,
}

pub(super) fn coded(
    session: &Session,
    question: &Question,
    candidate: usize,
    is_second: &[Option<bool>],
) -> Vec<Coded> {
    let Some(index) = session.measure_index(&question.measure) else { return Vec::new() };
    let half = |yes: bool| if yes { 0.5 } else { -0.5 };
    let of_pair = |build: usize| build == question.baseline || build == candidate;
    session
        .shots
        .iter()
        .zip(is_second)
        .filter(|(shot, _)| of_pair(shot.build))
        .filter_map(|(shot, second)| {
            let value = shot.values.get(index).copied().flatten()?;
            Some(Coded { build: half(shot.build == candidate), condition: half((*second)?), value })
        })
        .collect()
}

pub(super) fn cells(shots: &[Coded], baseline: usize, candidate: usize) -> Vec<Cell> {
    let cell = |(is_candidate, is_second): (bool, bool)| {
        let own =
            shots.iter().filter(|s| (s.build > 0.0) == is_candidate && (s.condition > 0.0) == is_second);
        let values: Vec<f64> = own.map(|shot| shot.value).collect();
        let build = if is_candidate { candidate } else { baseline };
        Cell { build, is_second, n: values.len(), mean: stats::describe::mean(&values) }
    };
    [(false, false), (false, true), (true, false), (true, true)].into_iter().map(cell).collect()
}

/// What the condition does, and how it works together with the build.
pub(super) struct Fitted {
    pub(super) condition: TDifference,
    pub(super) interaction: TDifference,
}

impl Fitted {
    /// y = m + b·build + c·condition + i·build·condition; `None` for shots without scatter.
    pub(super) fn of(shots: &[Coded]) -> Option<Self> {
        let y: Vec<f64> = shots.iter().map(|shot| shot.value).collect();
        let column = |of: &dyn Fn(&Coded) -> f64| shots.iter().map(of).collect::<Vec<f64>>();
        let columns = [
            column(&|shot| shot.build),
            column(&|shot| shot.condition),
            column(&|shot| shot.build * shot.condition),
        ];
        let fit = linear_model(&y, &columns, Intercept::Fitted).ok()?;
        let [_, _, condition, interaction] = fit.terms.get(..4)? else { return None };
        Some(Self { condition: *condition, interaction: *interaction })
    }
}

/// Whether the conditions came in turn with each of the two builds, as for builds: at least two rounds of its own shots
/// hold both, so that warming up and tiring lie on both alike. Of the session as a whole that proves nothing: a build
/// changed halfway and then the other one, each hold a before and an after.
pub(super) fn is_in_turn(session: &Session, pair: [usize; 2], is_second: &[Option<bool>]) -> bool {
    session.order != Order::Unknown
        && pair.into_iter().all(|build| {
            let own = session.shots.iter().zip(is_second).filter(|(shot, _)| shot.build == build);
            let known: Vec<usize> = own.filter_map(|(_, second)| second.map(usize::from)).collect();
            rounds_with_both(&known) >= 2
        })
}

fn rounds_with_both(conditions: &[usize]) -> usize {
    let rounds = infer_rounds(conditions);
    let sides: Set<(u32, usize)> = rounds.iter().copied().zip(conditions.iter().copied()).collect();
    let all: Set<u32> = rounds.iter().copied().collect();
    all.iter().filter(|&&round| sides.contains(&(round, 0)) && sides.contains(&(round, 1))).count()
}
