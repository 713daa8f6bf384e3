//! A plain value into a typed request, or a refusal that names the place where it went wrong, in the caller's language.
//!
//! Every way in hands its requests over as a [`Value`], whatever they came as: objects of a page, JSON of a program. A
//! field that no request has is refused with the nearest one that is known, a wrong type with what it should be, and so is
//! a number that is none.
//!
//! ```
//! use request::{Value, understood};
//! use session::question::Question;
//! use text::Voice;
//!
//! let value: Value = serde_json::from_str(r#"{"baseline": 0, "measure": "carry", "margn": 5}"#)?;
//! let refused = understood::<Question>(&value, "question", &Voice::english()).expect_err("no such field");
//! assert_eq!(refused.place, "question.margn");
//! assert_eq!(refused.remedy, "Did you mean `margin`?");
//! # Ok::<(), serde_json::Error>(())
//! ```

mod nearest;
mod typed;
mod value;
mod words;
mod wrong;

pub use value::Value;
pub use wrong::{Expected, Step, What, Wrong};

use serde::de::DeserializeOwned;
use session::refusal::Refusal;
use text::Voice;

/// A request of its type.
///
/// # Errors
/// [`Wrong`], with the path from the top of the value to the place.
pub fn typed<T: DeserializeOwned>(value: &Value) -> Result<T, Wrong> {
    T::deserialize(typed::Typed(value))
}

/// A request of its type, or the refusal as whoever asked gets it. `root` is what the value is called.
///
/// # Errors
/// A [`Refusal`] of the kind `not_understood`, its place the path such as `request.question.margin`.
pub fn understood<T: DeserializeOwned>(value: &Value, root: &str, voice: &Voice) -> Result<T, Refusal> {
    typed(value).map_err(|wrong| words::refusal(&wrong, root, voice))
}
