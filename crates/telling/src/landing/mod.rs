//! Where they land: what is asked, and what is told of it.

mod words;

pub use words::{BuildWords, LandingWords};

use crate::hand::Hand;
use crate::refusals;
use crate::units::offered;
use judging::landing::{BuildFacts, Ground, Strip, USUAL_FAIRWAY};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::Unit;
use session::question::Stopping;
use session::refusal::Refusal;
use text::Voice;

/// What [`landing`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct LandingRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the build held against it; left open, none is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub candidate: Option<usize>,
    /// Width of the fairway, yd; left open, a usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fairway: Option<f64>,
    /// Aim, yd right of the middle of the fairway; left open, as aimed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub aim: Option<f64>,
    /// How it was decided when to stop; left open, it is not known, and the strictest level decides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stopping: Option<Stopping>,
    /// Which hand the golfer plays with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hand: Option<Hand>,
}

/// One build on the ground.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BuildLanding {
    /// Its shots, its ovals, its chances.
    #[serde(flatten)]
    pub facts: BuildFacts,
    /// Sentences.
    pub words: BuildWords,
}

/// Where they land.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Landing {
    /// The shots on the ground, and the two builds asked about.
    #[serde(flatten)]
    pub ground: Ground,
    /// Builds that have such shots.
    pub builds: Vec<BuildLanding>,
    /// Sentences.
    pub words: LandingWords,
}

/// Shows where the shots land and how often they would hit a fairway.
///
/// # Errors
/// A [`Refusal`] for a build that is not there, a fairway or an aim outside its range, and a session without carry and
/// offline of the same shots.
pub fn landing(request: &LandingRequest, voice: &Voice) -> Result<Landing, Refusal> {
    let LandingRequest { session, baseline, candidate, fairway, aim, stopping, hand } = request;
    let strip = Strip {
        fairway: fairway.unwrap_or_else(|| offered(Unit::Yd, USUAL_FAIRWAY, voice)),
        aim: aim.unwrap_or(0.0),
    };
    let stopping = stopping.clone().unwrap_or_default();
    let facts = judging::landing::landing(session, *baseline, *candidate, strip, &stopping)
        .map_err(|refused| refusals::landing(refused, voice))?;
    let (of_builds, words) = words::words(session, *hand, &facts, voice);
    let builds = facts.builds.into_iter().zip(of_builds);
    Ok(Landing {
        ground: facts.ground,
        builds: builds.map(|(facts, words)| BuildLanding { facts, words }).collect(),
        words,
    })
}
