//! The sentences of an answer, as values.

use serde::Serialize;

/// Sentences for the golfer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Words {
    /// The answer in one sentence.
    pub headline: String,
    /// The same in a few words, for a list of measures.
    pub line: String,
    /// How large, how sure, from how many shots.
    pub detail: String,
    /// What to do, or what would settle it.
    pub next: String,
}
