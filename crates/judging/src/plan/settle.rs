//! What a plan is asked for with every gap filled, or refused: what a question of the same words would mean, counts, looks,
//! and how far shots scatter.

use super::hour::usual_rounds;
use super::limits::{LeastAndMost, limits};
use super::looks::opening_question;
use super::refused::{PlanPart, PlanRefused};
use super::settled::{PlanSpread, SettledPlan, SpreadFrom};
use session::Session;
use session::known::Known;
use session::measure::{Margin, MeasureId};
use session::plan::{MOST_PLANNED_BUILDS, PlanRequest};

/// Fills every gap of a plan.
///
/// # Errors
/// A [`PlanRefused`] for what is no plan.
pub fn settle_plan(request: &PlanRequest) -> Result<SettledPlan, PlanRefused> {
    let names = names(request)?;
    let measure = request.measure.known().ok_or(PlanRefused::NoSuchMeasure)?;
    let limits = limits();
    let set = within(PlanPart::Set, request.set.unwrap_or(limits.usual_set), limits.set)?;
    let builds = if request.same_club { 2 } else { names.len() };
    let rounds = request.rounds.unwrap_or_else(|| usual_rounds(builds, set));
    let rounds = within(PlanPart::Rounds, rounds, limits.rounds)?;
    let warm_up = request.warm_up.unwrap_or(limits.usual_warm_up);
    let warm_up = within(PlanPart::WarmUp, warm_up, limits.warm_up)?;
    let question = opening_question(request);
    let margin = question.margin_on(&request.measure).filter(is_a_margin).ok_or(PlanRefused::NotAMargin)?;
    let look_after = request.looks.clone().unwrap_or_default();
    let looks = look_after.rounds(rounds).ok_or(PlanRefused::NotALook { rounds })?;
    Ok(SettledPlan {
        names,
        same_club: request.same_club,
        measure,
        goal: question.goal_on(&request.measure),
        margin,
        margin_is_default: request.margin.is_none(),
        spread: spread(request, measure)?,
        set,
        rounds,
        seed: request.seed,
        warm_up,
        looks,
        look_after,
    })
}

/// The same request with every choice that was left open written out.
///
/// # Errors
/// A [`PlanRefused`] for what is no plan.
pub fn written_out(request: &PlanRequest) -> Result<PlanRequest, PlanRefused> {
    let settled = settle_plan(request)?;
    Ok(PlanRequest {
        // Of one club under two labels the golfer keeps the names typed before.
        builds: settled.names.into_iter().take(MOST_PLANNED_BUILDS).collect(),
        measure: settled.measure.into(),
        goal: Some(settled.goal),
        margin: Some(settled.margin.value()),
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

/// The same request with the scatter of its earlier session in the place of that session.
#[must_use]
pub fn without_session(request: &PlanRequest) -> PlanRequest {
    let seen = request.earlier.as_ref().and_then(|session| seen_spread(session, &request.measure));
    PlanRequest { spread: request.spread.or(seen), earlier: None, ..request.clone() }
}

fn names(request: &PlanRequest) -> Result<Vec<String>, PlanRefused> {
    let names: Vec<String> = request.builds.iter().map(|name| name.trim().to_owned()).collect();
    if let Some(build) = names.iter().position(String::is_empty) {
        return Err(PlanRefused::NoName { build });
    }
    if request.same_club {
        return Ok(names);
    }
    if !limits().builds.holds(u32::try_from(names.len()).unwrap_or(u32::MAX)) {
        return Err(PlanRefused::NumberOfBuilds { got: names.len() });
    }
    if arrange::distinct(names.iter()).len() < names.len() {
        return Err(PlanRefused::SameName);
    }
    Ok(names)
}

fn within(part: PlanPart, got: u32, limits: LeastAndMost) -> Result<u32, PlanRefused> {
    let LeastAndMost { least, most } = limits;
    if limits.holds(got) { Ok(got) } else { Err(PlanRefused::OutOfRange { part, least, most, got }) }
}

/// A plan takes no margin of nothing: no test is long enough for it.
fn is_a_margin(margin: &Margin) -> bool {
    let least = match margin {
        Margin::Difference(_) => 0.0,
        Margin::Ratio(_) => 1.0,
    };
    margin.value().is_finite() && margin.value() > least
}

fn spread(request: &PlanRequest, measure: Known) -> Result<Option<PlanSpread>, PlanRefused> {
    if let Some(value) = request.spread {
        if !(value.is_finite() && value > 0.0) {
            return Err(PlanRefused::NotASpread);
        }
        return Ok(Some(PlanSpread { value, from: SpreadFrom::Given }));
    }
    let earlier = request.earlier.as_ref().and_then(|session| seen_spread(session, &request.measure));
    if let Some(value) = earlier {
        return Ok(Some(PlanSpread { value, from: SpreadFrom::Earlier }));
    }
    let usual = measure.facts().scatter;
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
