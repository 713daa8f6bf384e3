//! A launch flown, and carries brought to standard air, with what that is worth.

use crate::format::Subject;
use crate::refusals;
use judging::flying::{self, FlightOf, Launch, StandardAir};
use serde::{Deserialize, Serialize};
use session::known::Known;
use session::refusal::Refusal;
use session::{Conditions, Session};
use text::Voice;
use text::flying as say;

/// What [`fly`] is asked.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct FlyRequest {
    /// The launch.
    pub launch: Launch,
    /// Air and wind; left open, standard still air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub conditions: Option<Conditions>,
}

/// What [`in_standard_air`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct AirRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// Air and wind of the session.
    pub conditions: Conditions,
}

/// A session with the carry in standard air as one more measure.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct InStandardAir {
    /// The session, and what the air does to it.
    #[serde(flatten)]
    pub facts: StandardAir,
    /// In words.
    pub words: String,
    /// What that is worth.
    pub note: String,
}

/// Flies one launch.
///
/// # Errors
/// A [`Refusal`] for a number outside what golf balls do, or a ball that does not leave the ground.
pub fn fly(request: &FlyRequest, voice: &Voice) -> Result<FlightOf, Refusal> {
    let conditions = request.conditions.unwrap_or_default();
    flying::fly(&request.launch, &conditions).map_err(|refused| refusals::fly(refused, voice))
}

/// Adds the carry in standard air to every shot that can be flown.
///
/// # Errors
/// A [`Refusal`] for weather outside the formulas, and for shots without ball speed, launch angle, spin and carry.
pub fn in_standard_air(request: &AirRequest, voice: &Voice) -> Result<InStandardAir, Refusal> {
    let AirRequest { session, conditions } = request;
    let facts = flying::in_standard_air(session, conditions, &say::standard_air_carry(voice))
        .map_err(|refused| refusals::standard_air(refused, voice))?;
    Ok(InStandardAir { words: would_carry(facts.average_change, voice), note: say::note(voice), facts })
}

/// A session that was read, with the carry in standard air wherever its weather is known; `None` where nothing is added.
#[must_use]
pub fn with_standard_air(session: &Session, voice: &Voice) -> Option<Session> {
    flying::with_standard_air(session, &say::standard_air_carry(voice))
}

fn would_carry(change: f64, voice: &Voice) -> String {
    let carry = Subject::of(&Known::Carry.into(), &Session::default(), voice);
    let how = match change {
        _ if carry.prints_as_zero(change) => say::How::Same,
        more if more > 0.0 => say::How::Farther,
        _ => say::How::Less,
    };
    say::would_carry(voice, how, &carry.amount(change))
}
