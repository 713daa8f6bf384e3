//! Do carry and launch belong together: what is asked, and what is told of it.

mod words;

pub use words::ConsistencyWords;

use crate::refusals;
use judging::consistency::{DoubtFacts, WholeSession};
use serde::{Deserialize, Serialize};
use session::Session;
use session::refusal::Refusal;
use text::Voice;

/// What [`consistency`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ConsistencyRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
}

/// A row whose numbers do not belong together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Doubt {
    /// Which row, how far off, and what would explain it.
    #[serde(flatten)]
    pub facts: DoubtFacts,
    /// In words.
    pub words: String,
}

/// Whether carry and launch belong together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Consistency {
    /// The session as a whole.
    #[serde(flatten)]
    pub whole: WholeSession,
    /// Rows that do not fit the others.
    pub doubts: Vec<Doubt>,
    /// Sentences.
    pub words: ConsistencyWords,
}

/// Holds every carry against its own launch.
///
/// # Errors
/// A [`Refusal`] when no shot has carry, ball speed, launch angle and spin.
pub fn consistency(request: &ConsistencyRequest, voice: &Voice) -> Result<Consistency, Refusal> {
    let session = &request.session;
    let facts = judging::consistency::consistency(session)
        .map_err(|refused| refusals::consistency(refused, voice))?;
    let words = words::words(&facts, voice);
    let told = |facts: DoubtFacts| Doubt { words: words::of_row(session, &facts, voice), facts };
    Ok(Consistency { whole: facts.whole, doubts: facts.doubts.into_iter().map(told).collect(), words })
}
