//! Before and after: a second thing that changed during the session, beside the build.
//!
//! A lesson, another ball, another tee. What the build does is the answer's, judged once and told as it stands there; what
//! the condition does on average over both builds, and whether the one depends on the other, come from a model of two
//! builds by two conditions, held to the answer's level and widened by 1.10. What came later in the session gets the
//! allowance for order, since warming up and tiring look the same; where turns are long, as much wider as the answer. Averages only.

mod model;

pub use model::Cell;

use crate::analysis::{Aspect, Basis, Levels, Method, TextbookTest};
use crate::facts::PairFacts;
use crate::interval::Interval;
use crate::judge::{Judgment, judge};
use crate::next_to_nothing::says_next_to_nothing;
use crate::settle::settle;
use crate::verdict::{Decision, DecisionKind, Why, decide};
use model::{Fitted, cells, coded, is_in_turn};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::{Margin, MeasureId};
use session::question::{BuildPlace, Goal, Misfit, Question};
use stats::choices::WIDENING;
use stats::{CautiousDifference, Level, TDifference};

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
    /// Whether it cannot be told because the interval is wider than the measure can plausibly differ by.
    pub says_next_to_nothing: bool,
    /// Part of each half-width that stands for warming up and tiring.
    pub order_allowance: f64,
    /// As a textbook prints it: standard error, degrees of freedom, two-sided p.
    pub se: f64,
    /// Degrees of freedom.
    pub df: f64,
    /// Two-sided p, unwidened.
    pub p: f64,
}

/// Which of the two did more.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DidMore {
    /// The change: the least that it did is more than the most that the club can have done.
    Change,
    /// The club, in the same way.
    Club,
    /// The two intervals have sizes in common.
    NotSettled,
}

/// Build and condition side by side.
#[derive(Debug, Clone, PartialEq)]
pub struct SecondFacts {
    /// The measure.
    pub measure: MeasureId,
    /// The smallest difference that matters on it; `None` where nothing is known of that.
    pub margin: Option<f64>,
    /// Names of the conditions.
    pub names: [String; 2],
    /// Baseline and candidate, each in both conditions.
    pub cells: Vec<Cell>,
    /// Candidate − baseline, as the answer has it.
    pub build: Effect,
    /// What is known of how the two builds were hit.
    pub pair: PairFacts,
    /// Second − first condition, averaged over both builds.
    pub condition: Effect,
    /// Whether the conditions came in turn, so that warming up and tiring lie on both alike.
    pub condition_in_turn: bool,
    /// How much more the candidate gains on the baseline in the second condition than in the first.
    pub interaction: Effect,
    /// Which of the two did more.
    pub did_more: DidMore,
}

/// Why build and condition cannot be held side by side.
#[derive(Debug, Clone, PartialEq, Eq)]
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
    /// The question cannot be asked of this session.
    Misfit(Misfit),
    /// The answer cannot say what the build does, and this is why.
    NoAnswer(Why),
}

/// Holds the effect of the build beside that of a second condition.
///
/// # Errors
/// [`SecondRefused`] for builds or a measure that are not there, for fewer than three shots in any of the four cells, for
/// shots without scatter, and where the answer about the two builds cannot be given.
pub fn second(request: &SecondRequest) -> Result<SecondFacts, SecondRefused> {
    let SecondRequest { session, question, is_second, names } = request;
    there(session, BuildPlace::Baseline, question.baseline)?;
    let candidate = question
        .candidate
        .or_else(|| only_other(session, question.baseline))
        .ok_or(SecondRefused::NoCandidate)?;
    there(session, BuildPlace::Candidate, candidate)?;
    let shots = coded(session, question, candidate, is_second);
    let cells = cells(&shots, question.baseline, candidate);
    if candidate == question.baseline || cells.iter().any(|cell| cell.n < FEWEST) {
        return Err(SecondRefused::TooFewShots);
    }
    let judgment = answered(session, question, candidate)?;
    let build = of_build(&judgment)?;
    let fitted = Fitted::of(&shots).ok_or(SecondRefused::NoScatter)?;
    let drift = question.measure.usual().map_or(0.0, |m| m.facts().order_allowance);
    let condition_in_turn = is_in_turn(session, [question.baseline, candidate], is_second);
    let by_condition = if condition_in_turn { 0.0 } else { drift };
    // Hit in turn, both clubs share what a session does between before and after.
    let by_both = if judgment.facts.order_is_mixed_up() { by_condition } else { 0.0 };
    let margin = judgment.margin.map(Margin::value);
    let factor = WIDENING * by_whole_rounds(&judgment);
    let effect = |term: &TDifference, allowance, mixed_up: bool| {
        let nothing_allowed = mixed_up && question.measure.usual().is_none();
        let careful = CautiousDifference::with_factor(term, factor, allowance);
        of_model(term, &careful, nothing_allowed, &question.measure, &judgment.levels, margin)
    };
    let condition = effect(&fitted.condition, by_condition, !condition_in_turn);
    let both_mixed_up = !condition_in_turn && judgment.facts.order_is_mixed_up();
    Ok(SecondFacts {
        measure: question.measure.clone(),
        margin,
        names: names.clone().unwrap_or_else(|| ["before".into(), "after".into()]),
        cells,
        did_more: did_more(&condition, &build),
        build,
        condition,
        condition_in_turn,
        interaction: effect(&fitted.interaction, by_both, both_mixed_up),
        pair: judgment.facts,
    })
}

fn there(session: &Session, place: BuildPlace, got: usize) -> Result<(), SecondRefused> {
    let builds = session.builds.len();
    if got < builds { Ok(()) } else { Err(SecondRefused::NoSuchBuild { place, got, builds }) }
}

/// The answer about the two builds on the measure asked for, as strict as it stands on the page. Where scatter was asked
/// for, the averages are judged in its place: nothing else here speaks of scatter.
fn answered(session: &Session, question: &Question, candidate: usize) -> Result<Judgment, SecondRefused> {
    let of_averages = match question.goal_on(&question.measure) {
        Goal::Tighter => Question { goal: Some(Goal::Different), margin: None, ..question.clone() },
        _ => question.clone(),
    };
    let mut settled = settle(&of_averages, session).map_err(SecondRefused::Misfit)?;
    // The measure asked for keeps the whole error rate, whatever else was measured.
    settled.measures.truncate(1);
    let judged = judge(settled);
    judged.of(candidate).cloned().ok_or(SecondRefused::NoAnswer(Why::NotMeasured))
}

fn of_build(judgment: &Judgment) -> Result<Effect, SecondRefused> {
    let refused = || SecondRefused::NoAnswer(judgment.decision.why.unwrap_or(Why::NotMeasured));
    let estimate = judgment.estimate.as_ref().ok_or_else(refused)?;
    let numbers = &judgment.pair.numbers;
    let by_round = numbers.round.filter(|_| estimate.method == Method::Rounds);
    let TextbookTest { se, df, p, .. } = by_round.or(numbers.welch).ok_or_else(refused)?;
    Ok(Effect {
        value: estimate.value,
        range: estimate.decided_by,
        decision: judgment.decision,
        says_next_to_nothing: judgment.facts.says_next_to_nothing,
        order_allowance: estimate.order_allowance,
        se,
        df,
        p,
    })
}

/// By how much the answer is wider than its shots alone would make it where turns are long: it rests on whole rounds then, and
/// so does what a change did. That sets of a build disagree is no reason here: the change may be what they disagree by.
fn by_whole_rounds(judgment: &Judgment) -> f64 {
    if !judgment.pair.turns.is_some_and(|turns| turns.are_too_long) {
        return 1.0;
    }
    let Some(Basis::Difference(careful)) = judgment.comparison().map(|comparison| comparison.basis) else {
        return 1.0;
    };
    let level = judgment.levels.different;
    careful.wider(level).half_width(level) / careful.widened.half_width(level)
}

fn of_model(
    term: &TDifference,
    careful: &CautiousDifference,
    nothing_allowed: bool,
    measure: &MeasureId,
    levels: &Levels,
    margin: Option<f64>,
) -> Effect {
    let at = |level: Level| Interval::from(careful.interval(level));
    let (different, same) = (at(levels.different), at(levels.same));
    let decided = decide(&different, &same, margin);
    let decision = if nothing_allowed { decided.with_nothing_allowed_for_order() } else { decided };
    let range = if decision.is_inside_the_margin() { same } else { different };
    Effect {
        value: term.diff,
        says_next_to_nothing: says_next_to_nothing(&decision, &range, measure, Aspect::Average),
        decision,
        range,
        order_allowance: careful.allowance,
        se: term.se,
        df: term.df,
        p: term.p_value(),
    }
}

/// Read from the two intervals as they are told, so that nobody who holds them against each other finds another answer.
fn did_more(condition: &Effect, build: &Effect) -> DidMore {
    let hangs = build.decision.why == Some(Why::DependsOnLeftOut);
    let more = |one: &Effect, other: &Effect| {
        one.decision.kind == DecisionKind::Different && one.least() > other.most() && !hangs
    };
    match () {
        () if more(condition, build) => DidMore::Change,
        () if more(build, condition) => DidMore::Club,
        () => DidMore::NotSettled,
    }
}

impl Effect {
    /// The smallest size in its interval, either way.
    fn least(&self) -> f64 {
        self.range.low.max(-self.range.high).max(0.0)
    }

    /// The largest size in its interval, either way.
    fn most(&self) -> f64 {
        self.range.high.max(-self.range.low)
    }
}

/// With two builds nothing is left open by naming one.
#[must_use]
pub fn only_other(session: &Session, baseline: usize) -> Option<usize> {
    (session.builds.len() == 2).then_some(usize::from(baseline == 0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_did_more_where_its_least_is_more_than_the_most_of_the_other() {
        let effect = |low: f64, high: f64| {
            let range = Interval { low, high, level: 0.95 };
            let decision = decide(&range, &range, None);
            Effect {
                value: 0.5 * (low + high),
                range,
                decision,
                says_next_to_nothing: false,
                order_allowance: 0.0,
                se: 1.0,
                df: 20.0,
                p: 0.01,
            }
        };
        for (condition, build, more) in [
            (effect(8.1, 12.0), effect(-8.0, 3.0), DidMore::Change),
            (effect(-12.0, -8.1), effect(3.0, 8.0), DidMore::Change),
            (effect(8.0, 12.0), effect(3.0, 8.0), DidMore::NotSettled),
            (effect(-8.0, 3.0), effect(-12.0, -8.1), DidMore::Club),
            (effect(-2.0, 3.0), effect(-2.0, 3.0), DidMore::NotSettled),
        ] {
            assert_eq!(did_more(&condition, &build), more, "{:?} {:?}", condition.range, build.range);
        }
    }
}
