//! A session and a question in, a report out.

use crate::question::Question;
use crate::report::Report;
use crate::session::Session;
use serde::{Deserialize, Serialize};

/// What [`check`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct CheckRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
}

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

/// Answers the question from the session's shots.
///
/// # Errors
/// A [`Refusal`] when the question names a build that is not there or a margin that is no number.
/// A session that holds too little is no error: the report says what is missing.
pub fn check(request: &CheckRequest) -> Result<Report, Refusal> {
    Err(Refusal {
        kind: "not_built_yet".into(),
        place: String::new(),
        message: format!("{} shots", request.session.shots.len()),
        remedy: String::new(),
    })
}
