//! What a plan is asked for, and the same with every gap filled or refused.

use super::length::usual_rounds;
use super::looks::LookAfter;
use crate::analysis::allowance::usual_spread;
use crate::analysis::levels::MOST_PLANNED_ROUNDS;
use crate::check::Refusal;
use crate::measure::{self, Measure, MeasureId};
use crate::question::{Goal, Question, Stopping, StoppingWord};
use crate::session::Session;
use serde::{Deserialize, Serialize};
use text::plan as say;

/// Most builds of a plan: with more, an hour is not enough for any of them.
pub const MOST_BUILDS: usize = 8;
/// Most shots with one build in a row: longer sets are blocks in small, see `stats::choices::LONGEST_TURN`.
pub const LONGEST_SET: u32 = 5;
/// Most warm-up shots.
const MOST_WARM_UP: u32 = 100;
/// Shots in a row with one build when nothing else is said.
const USUAL_SET: u32 = 3;
/// Shots that do not count before the first that does. Judgement, no source.
const USUAL_WARM_UP: u32 = 10;

/// Where the spread of a plan comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SpreadFrom {
    /// The golfer said so.
    Given,
    /// An earlier session.
    Earlier,
    /// What is usual.
    Usual,
}

/// How far single shots with one build scatter.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanSpread {
    /// Standard deviation.
    pub value: f64,
    /// Where it comes from.
    pub from: SpreadFrom,
}

/// A request with every gap filled.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Settled {
    pub(super) builds: Vec<String>,
    pub(super) known: &'static Measure,
    pub(super) measure: MeasureId,
    pub(super) goal: Goal,
    pub(super) margin: f64,
    pub(super) margin_is_default: bool,
    pub(super) spread: Option<PlanSpread>,
    pub(super) set: u32,
    pub(super) rounds: u32,
    pub(super) seed: Option<u32>,
    pub(super) warm_up: u32,
    pub(super) looks: Vec<u32>,
    pub(super) look_after: LookAfter,
    pub(super) same_club: bool,
}

impl Settled {
    pub(super) fn candidates(&self) -> usize {
        self.builds.len() - 1
    }

    /// Builds, for arithmetic with shots.
    pub(super) fn clubs(&self) -> u32 {
        self.builds.iter().map(|_| 1).sum()
    }
}

/// Fills the gaps.
pub(super) fn settle(request: &PlanRequest) -> Result<Settled, Refusal> {
    let builds = builds(request)?;
    let measure = request.measure.clone();
    let known = measure::known(&measure).ok_or_else(|| {
        Refusal::new("no_such_measure", "measure", &say::no_such_measure(), &say::no_such_measure_remedy())
    })?;
    let set = within("set", "set", request.set.unwrap_or(USUAL_SET), 1, LONGEST_SET)?;
    let usual = usual_rounds(builds.len(), set);
    let rounds = within("rounds", "rounds", request.rounds.unwrap_or(usual), 2, MOST_PLANNED_ROUNDS)?;
    let warm_up = within("warm_up", "warm-up", request.warm_up.unwrap_or(USUAL_WARM_UP), 0, MOST_WARM_UP)?;
    let question = opening_question(request);
    let goal = crate::judge::goal(&question, &measure);
    let least = if goal == Goal::Tighter { 1.0 } else { 0.0 };
    let usual_margin =
        if goal == Goal::Tighter { crate::judge::WORTHWHILE_RATIO } else { known.usual_margin() };
    let margin = request.margin.unwrap_or(usual_margin);
    if !(margin.is_finite() && margin > least) {
        return Err(Refusal::new(
            "not_a_margin",
            "margin",
            &say::not_a_margin(),
            &text::check::not_a_margin_remedy(),
        ));
    }
    let look_after = request.looks.clone().unwrap_or_default();
    let looks = look_after.rounds(rounds).ok_or_else(|| {
        Refusal::new(
            "not_a_look",
            "looks",
            &say::look_out_of_range(&rounds.to_string()),
            &say::look_out_of_range_remedy(),
        )
    })?;
    let spread = spread(request)?;
    let (seed, same_club, margin_is_default) = (request.seed, request.same_club, request.margin.is_none());
    Ok(Settled {
        builds,
        known,
        measure,
        goal,
        margin,
        margin_is_default,
        spread,
        set,
        rounds,
        seed,
        warm_up,
        looks,
        look_after,
        same_club,
    })
}

/// The same request with every choice that was left open written out.
pub(crate) fn written_out(request: &PlanRequest) -> Result<PlanRequest, Refusal> {
    let settled = settle(request)?;
    Ok(PlanRequest {
        // Of one club under two labels the golfer keeps the names typed before.
        builds: request.builds.iter().take(MOST_BUILDS).map(|name| name.trim().to_owned()).collect(),
        measure: settled.measure,
        goal: Some(settled.goal),
        margin: Some(settled.margin),
        spread: settled.spread.map(|spread| spread.value),
        earlier: None,
        set: Some(settled.set),
        rounds: Some(settled.rounds),
        seed: settled.seed,
        warm_up: Some(settled.warm_up),
        looks: Some(settled.look_after),
        same_club: settled.same_club,
    })
}

/// The question as far as it can be asked before the first shot.
pub(super) fn opening_question(request: &PlanRequest) -> Question {
    Question {
        baseline: 0,
        candidate: None,
        measure: request.measure.clone(),
        goal: request.goal,
        margin: request.margin,
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
    }
}

fn builds(request: &PlanRequest) -> Result<Vec<String>, Refusal> {
    let mut names: Vec<String> = request.builds.iter().map(|name| name.trim().to_owned()).collect();
    if let Some(at) = names.iter().position(String::is_empty) {
        return Err(Refusal::new(
            "no_name",
            &format!("builds.{at}"),
            &say::no_name(),
            &say::no_name_remedy(),
        ));
    }
    if request.same_club {
        let name = names.first().cloned().unwrap_or_else(say::some_club);
        return Ok(["A", "B"].map(|label| say::labeled(&name, label)).into());
    }
    if !(2..=MOST_BUILDS).contains(&names.len()) {
        return Err(Refusal::new(
            "number_of_builds",
            "builds",
            &say::how_many_clubs(&MOST_BUILDS.to_string(), &names.len().to_string()),
            &say::how_many_clubs_remedy(),
        ));
    }
    names.sort();
    if names.windows(2).any(|pair| pair[0] == pair[1]) {
        return Err(Refusal::new(
            "same_name",
            "builds",
            &say::same_name_twice(),
            &say::same_name_twice_remedy(),
        ));
    }
    Ok(request.builds.iter().map(|name| name.trim().to_owned()).collect())
}

fn spread(request: &PlanRequest) -> Result<Option<PlanSpread>, Refusal> {
    if let Some(value) = request.spread {
        if !(value.is_finite() && value > 0.0) {
            return Err(Refusal::new(
                "not_a_spread",
                "spread",
                &say::not_a_scatter(),
                &say::not_a_scatter_remedy(),
            ));
        }
        return Ok(Some(PlanSpread { value, from: SpreadFrom::Given }));
    }
    let earlier = request.earlier.as_ref().and_then(|session| seen_spread(session, &request.measure));
    if let Some(value) = earlier {
        return Ok(Some(PlanSpread { value, from: SpreadFrom::Earlier }));
    }
    let usual = usual_spread(&request.measure);
    Ok(usual.map(|usual| PlanSpread { value: usual.middle, from: SpreadFrom::Usual }))
}

/// Standard deviation of the shots around the average of their build, all builds together.
fn seen_spread(session: &Session, measure: &MeasureId) -> Option<f64> {
    let at = session.measure_index(measure)?;
    let (mut squares, mut df) = (0.0, 0.0);
    for build in 0..session.builds.len() {
        let own = session.shots.iter().filter(|shot| shot.build == build);
        let values: Vec<f64> = own.filter_map(|shot| shot.values.get(at).copied().flatten()).collect();
        if values.len() >= 2 {
            squares += stats::describe::sum_of_squares(&values);
            df += (values.len() - 1) as f64;
        }
    }
    // Fewer shots say too little about scatter to plan by.
    const FEWEST: f64 = 8.0;
    let sd = (squares / df).sqrt();
    (df >= FEWEST && sd.is_finite() && sd > 0.0).then_some(sd)
}

fn within(place: &str, what: &str, got: u32, least: u32, most: u32) -> Result<u32, Refusal> {
    if (least..=most).contains(&got) {
        return Ok(got);
    }
    let message = say::out_of_range(&least.to_string(), &most.to_string(), what, &got.to_string());
    Err(Refusal::new("out_of_range", place, &message, &say::out_of_range_remedy()))
}
