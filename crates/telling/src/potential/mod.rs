//! What a ball speed could carry: what is asked, and what is told of it.

mod words;

pub use words::{GroupWords, PotentialWords};

use crate::refusals;
use crate::units::offered;
use judging::potential::{CarryMap, Gain, GroupFacts, LINE_SPACING};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::Unit;
use session::refusal::Refusal;
use text::Voice;

/// What [`potential`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct PotentialRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// Index of the baseline.
    pub baseline: usize,
    /// Place of the group whose ball speed the map is drawn for; left open, that of the baseline.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub map_for: Option<usize>,
}

/// Shots that are looked at together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SpeedGroup {
    /// What they carry, and could.
    #[serde(flatten)]
    pub facts: GroupFacts,
    /// What of it is named, and drawn.
    pub gain: Gain,
    /// Sentences.
    pub words: GroupWords,
}

/// What a ball speed could carry.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Potential {
    /// Each build, then the best third.
    pub groups: Vec<SpeedGroup>,
    /// The largest gap in average carry that any build made to the baseline, yd; null with one build.
    pub largest_change: Option<f64>,
    /// Whether this looks like an iron, where carry is not everything.
    pub is_iron: bool,
    /// Carry over launch and spin.
    pub map: CarryMap,
    /// Sentences.
    pub words: PotentialWords,
}

/// Shows what the ball speeds of a session could carry.
///
/// # Errors
/// A [`Refusal`] for a build or a group that is not there, and without three shots of the baseline that have carry, ball
/// speed, launch angle and spin.
pub fn potential(request: &PotentialRequest, voice: &Voice) -> Result<Potential, Refusal> {
    let PotentialRequest { session, baseline, map_for } = request;
    let spacing = offered(Unit::Yd, LINE_SPACING, voice);
    let facts = judging::potential::potential(session, *baseline, *map_for, spacing)
        .map_err(|refused| refusals::potential(refused, voice))?;
    let (of_groups, words) = words::words(session, &facts, voice);
    let groups = facts.groups.into_iter().zip(of_groups);
    Ok(Potential {
        groups: groups.map(|(facts, words)| SpeedGroup { gain: facts.gain(), facts, words }).collect(),
        largest_change: facts.largest_change,
        is_iron: facts.is_iron,
        map: facts.map,
        words,
    })
}
