//! Before and after: a second thing that changed during the session, beside the build.
//!
//! A lesson, another ball, another tee. Two builds by two conditions: what the build does on average over both, what the
//! condition does on average over both builds, and whether the one depends on the other. Least squares with effect
//! coding, widened by 1.10; what came later in the session gets the allowance for order, since warming up and tiring
//! look the same. Averages only. Source: standard two-way analysis of variance, each effect as one degree of freedom.

use crate::analysis::levels;
use crate::interval::Interval;
use crate::settle::Asked;
use crate::verdict::{Decision, decide};
use serde::{Deserialize, Serialize};
use session::few::Set;
use session::measure::MeasureId;
use session::question::{BuildPlace, Question};
use session::{Order, Session, infer_rounds};
use stats::linear_model::{Intercept, linear_model};
use stats::{CautiousDifference, TDifference};

/// Fewest shots of each build in each condition.
const FEWEST: usize = 3;

/// What [`second`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct SecondRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// Builds, measure and margin; the candidate must be named.
    pub question: Question,
    /// For every shot in order, whether it belongs to the second condition; null where that is not known.
    pub is_second: Vec<Option<bool>>,
    /// What the two conditions are called; left open, before and after.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub names: Option<[String; 2]>,
}

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

/// An effect with its interval and verdict.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Effect {
    /// Its size, in the measure's unit.
    pub value: f64,
    /// The interval that decided: for 'the same' the one that lies inside the margin.
    pub range: Interval,
    /// What was decided.
    pub decision: Decision,
    /// Part of each half-width that stands for warming up and tiring.
    pub order_allowance: f64,
    /// As a textbook prints it: standard error, degrees of freedom, two-sided p.
    pub se: f64,
    /// Degrees of freedom.
    pub df: f64,
    /// Two-sided p, unwidened.
    pub p: f64,
}

/// Build and condition side by side.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SecondFacts {
    /// The measure.
    pub measure: MeasureId,
    /// The smallest difference that matters on it; `None` where nothing is known of that.
    pub margin: Option<f64>,
    /// Names of the conditions.
    pub names: [String; 2],
    /// Baseline and candidate, each in both conditions.
    pub cells: Vec<Cell>,
    /// Candidate − baseline, averaged over both conditions.
    pub build: Effect,
    /// Second − first condition, averaged over both builds.
    pub condition: Effect,
    /// How much more the candidate gains on the baseline in the second condition than in the first.
    pub interaction: Effect,
    /// Size of the condition's effect − size of the build's.
    pub condition_over_build: Effect,
}

/// Why build and condition cannot be held side by side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SecondRefused {
    /// A build that is not in the session.
    NoSuchBuild {
        /// Which of the two.
        place: BuildPlace,
        /// The index it names.
        got: usize,
        /// How many there are.
        builds: usize,
    },
    /// Of several candidates none was named.
    NoCandidate,
    /// Fewer than three shots in one of the four cells.
    TooFewShots,
    /// All shots alike.
    NoScatter,
}

/// Holds the effect of the build beside that of a second condition.
///
/// # Errors
/// [`SecondRefused`] for builds or a measure that are not there, for fewer than three shots in any of the four cells, and for
/// shots without scatter.
pub fn second(request: &SecondRequest) -> Result<SecondFacts, SecondRefused> {
    let SecondRequest { session, question, is_second, names } = request;
    there(session, BuildPlace::Baseline, question.baseline)?;
    let candidate = question
        .candidate
        .or_else(|| only_other(session, question.baseline))
        .ok_or(SecondRefused::NoCandidate)?;
    there(session, BuildPlace::Candidate, candidate)?;
    let shots = shots(session, question, candidate, is_second);
    let cells = cells(&shots, question.baseline, candidate);
    if candidate == question.baseline || cells.iter().any(|cell| cell.n < FEWEST) {
        return Err(SecondRefused::TooFewShots);
    }
    let fitted = Fitted::of(&shots).ok_or(SecondRefused::NoScatter)?;
    let levels = levels(&question.stopping, 0);
    let margin = Asked::of(question, &question.measure).margin_of_averages();
    let drift = question.measure.usual().map_or(0.0, |m| m.facts().order_allowance);
    let by_build = if session.order == Order::Interleaved { 0.0 } else { drift };
    let by_condition = if is_in_turn(session, is_second) { 0.0 } else { drift };
    let effect = |term: &TDifference, allowance: f64| {
        let careful = CautiousDifference::new(term, allowance);
        let range = |level: stats::Level| {
            let ends = careful.interval(level);
            Interval { low: ends.low, high: ends.high, level: level.coverage() }
        };
        let (different, same) = (range(levels.different), range(levels.same));
        let decision = decide(&different, &same, margin);
        Effect {
            value: term.diff,
            decision,
            range: if decision.is_inside_the_margin() { same } else { different },
            order_allowance: allowance,
            se: term.se,
            df: term.df,
            p: term.p_value(),
        }
    };
    Ok(SecondFacts {
        measure: question.measure.clone(),
        margin,
        names: names.clone().unwrap_or_else(|| ["before".into(), "after".into()]),
        cells,
        build: effect(&fitted.build, by_build),
        condition: effect(&fitted.condition, by_condition),
        interaction: effect(&fitted.interaction, 0.0),
        condition_over_build: effect(&fitted.over, by_condition + by_build),
    })
}

fn there(session: &Session, place: BuildPlace, got: usize) -> Result<(), SecondRefused> {
    let builds = session.builds.len();
    if got < builds { Ok(()) } else { Err(SecondRefused::NoSuchBuild { place, got, builds }) }
}

/// Whether the conditions came in turn, as for builds: at least two rounds hold both. Warming up and tiring then lie
/// on both alike.
fn is_in_turn(session: &Session, is_second: &[Option<bool>]) -> bool {
    if session.order == Order::Unknown {
        return false;
    }
    let known: Vec<usize> = is_second.iter().flatten().map(|&second| usize::from(second)).collect();
    let rounds = infer_rounds(&known);
    let sides: Set<(u32, usize)> = rounds.iter().copied().zip(known).collect();
    rounds
        .iter()
        .copied()
        .collect::<Set<u32>>()
        .iter()
        .filter(|&&round| sides.contains(&(round, 0)) && sides.contains(&(round, 1)))
        .count()
        >= 2
}

/// A shot as the model needs it: +½ for candidate and second, −½ for baseline and first.
struct Coded {
    build: f64,
    condition: f64,
    value: f64,
}

fn shots(session: &Session, question: &Question, candidate: usize, is_second: &[Option<bool>]) -> Vec<Coded> {
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

fn cells(shots: &[Coded], baseline: usize, candidate: usize) -> Vec<Cell> {
    let cell = |(is_candidate, is_second): (bool, bool)| {
        let own =
            shots.iter().filter(|s| (s.build > 0.0) == is_candidate && (s.condition > 0.0) == is_second);
        let values: Vec<f64> = own.map(|shot| shot.value).collect();
        let build = if is_candidate { candidate } else { baseline };
        Cell { build, is_second, n: values.len(), mean: stats::describe::mean(&values) }
    };
    [(false, false), (false, true), (true, false), (true, true)].into_iter().map(cell).collect()
}

struct Fitted {
    build: TDifference,
    condition: TDifference,
    interaction: TDifference,
    over: TDifference,
}

impl Fitted {
    /// y = m + b·build + c·condition + i·build·condition. A second fit with (build + s·condition) in place of build has
    /// c − s·b as the coefficient of condition, s being the sign of c·b.
    fn of(shots: &[Coded]) -> Option<Self> {
        let y: Vec<f64> = shots.iter().map(|shot| shot.value).collect();
        let column = |of: &dyn Fn(&Coded) -> f64| shots.iter().map(of).collect::<Vec<f64>>();
        let condition = column(&|shot| shot.condition);
        let both = column(&|shot| shot.build * shot.condition);
        let fit = |first: Vec<f64>| {
            linear_model(&y, &[first, condition.clone(), both.clone()], Intercept::Fitted).ok()
        };
        let plain = fit(column(&|shot| shot.build))?;
        let [_, build, by_condition, interaction] = plain.terms.get(..4)? else { return None };
        let sign = (build.diff * by_condition.diff).signum();
        let turned = fit(column(&|shot| shot.build + sign * shot.condition))?;
        let over = turned.terms.get(2)?;
        // In sizes: |c| − |b|.
        let over = TDifference::new(over.diff * by_condition.diff.signum(), over.se, over.df, 0.0).ok()?;
        Some(Self { build: *build, condition: *by_condition, interaction: *interaction, over })
    }
}

/// With two builds nothing is left open by naming one.
#[must_use]
pub fn only_other(session: &Session, baseline: usize) -> Option<usize> {
    (session.builds.len() == 2).then_some(usize::from(baseline == 0))
}
