//! What was not read, and why: the same as a refusal, which crosses from process to process.

use serde::{Deserialize, Serialize};
use session::refusal::Refusal;

/// A file that was not read.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Unread {
    /// The file.
    pub place: String,
    /// Stable name of the kind, `snake_case`.
    pub kind: String,
    /// What is wrong, in plain words.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

impl Unread {
    /// A file of this name, and what is wrong with it.
    #[must_use]
    pub fn new(place: &str, kind: &str, message: String, remedy: String) -> Self {
        Self { place: place.to_owned(), kind: kind.to_owned(), message, remedy }
    }

    /// A refusal, with the file in the place of the field it names.
    #[must_use]
    pub fn of(place: &str, refusal: Refusal) -> Self {
        let Refusal { kind, message, remedy, .. } = refusal;
        Self { place: place.to_owned(), kind, message, remedy }
    }
}
