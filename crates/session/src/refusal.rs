//! A refusal as whoever asked gets it: a stable kind, the place in the request, and words already made.

use serde::Serialize;

/// Why a request cannot be worked on at all.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Refusal {
    /// Stable name of the kind, `snake_case`.
    pub kind: String,
    /// Path into the request, such as `question.baseline`.
    pub place: String,
    /// What is wrong, in plain words.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

impl Refusal {
    /// From borrowed parts.
    #[must_use]
    pub fn new(kind: &str, place: &str, message: &str, remedy: &str) -> Self {
        Self { kind: kind.into(), place: place.into(), message: message.into(), remedy: remedy.into() }
    }
}
