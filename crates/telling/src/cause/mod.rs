//! Club or swing: what is asked, and what is told of it.

mod part;
mod told;
mod words;

pub use told::{Moved, Part, SpinSource};
pub use words::CauseWords;

use crate::hand::Hand;
use crate::refusals;
use judging::cause::{PartFacts, SpinSourceFacts, Split};
use part::Speech;
use serde::{Deserialize, Serialize};
use session::Session;
use session::refusal::Refusal;
use text::Voice;

/// What [`cause`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct CauseRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// Which hand the golfer plays with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hand: Option<Hand>,
}

/// A gap in carry and where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Cause {
    /// What was split, and from which shots.
    #[serde(flatten)]
    pub split: Split,
    /// Adds up to the gap; the rest is last.
    pub parts: Vec<Part>,
    /// The part of ball speed once more, as club speed and smash; empty without club speed.
    pub ball_speed: Vec<Part>,
    /// What the club did on its way to the ball, where that was measured.
    pub swing: Vec<Moved>,
    /// What of a difference in spin or curve the delivery explains, roughly.
    pub spin: Vec<SpinSource>,
    /// Sentences.
    pub words: CauseWords,
}

/// Splits the gap in carry between two builds.
///
/// # Errors
/// A [`Refusal`] for builds that are not there or are one, and for fewer than five shots of each with carry, ball speed,
/// launch angle and spin.
pub fn cause(request: &CauseRequest, voice: &Voice) -> Result<Cause, Refusal> {
    let CauseRequest { session, baseline, candidate, hand } = request;
    let facts = judging::cause::cause(session, *baseline, *candidate)
        .map_err(|refused| refusals::cause(refused, voice))?;
    let speech = Speech::of(session, &facts, voice);
    let moved: Vec<Moved> =
        facts.swing.iter().map(|facts| Moved { words: speech.moved(facts), facts: facts.clone() }).collect();
    let source = |facts: &SpinSourceFacts| SpinSource { words: speech.source(facts), facts: facts.clone() };
    let parts = |parts: &[PartFacts]| parts.iter().map(|facts| speech.part(facts)).collect();
    Ok(Cause {
        split: facts.split,
        parts: parts(&facts.parts),
        ball_speed: parts(&facts.ball_speed),
        words: words::words(&speech, &moved, *hand),
        swing: moved,
        spin: facts.spin.iter().map(source).collect(),
    })
}
