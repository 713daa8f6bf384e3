//! What comes after a first answer, or when a text is no plain table.

use super::boundary::{answered, to_js, understood};
use wasm_bindgen::prelude::*;

/// Reads shots from text.
///
/// # Errors
/// A `Refusal` when the hints are not of their type. Text itself is never refused.
#[wasm_bindgen(unchecked_return_type = "ReadResult")]
pub fn read(
    text: &str,
    #[wasm_bindgen(unchecked_optional_param_type = "Hints | null")] hints: JsValue,
) -> Result<JsValue, JsValue> {
    let hints = if hints.is_null() || hints.is_undefined() {
        fitting::read::Hints::default()
    } else {
        understood(hints, "hints")?
    };
    to_js(&fitting::weather::read(text, &hints))
}

/// Joins sessions of texts added one after another: builds of one name become one, measures align.
///
/// # Errors
/// A `Refusal` when the sessions or the order are not of their type.
#[wasm_bindgen(unchecked_return_type = "Session")]
pub fn join(
    #[wasm_bindgen(unchecked_param_type = "Session[]")] sessions: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Order | null")] order: JsValue,
) -> Result<JsValue, JsValue> {
    let sessions: Vec<fitting::session::Session> = understood(sessions, "sessions")?;
    let order = understood(order, "order")?;
    to_js(&fitting::read::join(&sessions, order))
}

/// Writes a session as CSV that a spreadsheet opens and that `read` gives back identical.
///
/// # Errors
/// A `Refusal` when the session is not of its type.
#[wasm_bindgen]
pub fn write_csv(
    #[wasm_bindgen(unchecked_param_type = "Session")] session: JsValue,
) -> Result<String, JsValue> {
    let session = understood(session, "session")?;
    Ok(fitting::write::write_csv(&session))
}

/// Shows how far luck reaches: what a few of the session's own shots could have shown.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Luck")]
pub fn luck(
    #[wasm_bindgen(unchecked_param_type = "LuckRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::luck::luck)
}

/// A session and its question as a short text for an address.
///
/// # Errors
/// A `Refusal` when the question does not belong to the session, or the session is too large for any address.
#[wasm_bindgen]
pub fn pack(
    #[wasm_bindgen(unchecked_param_type = "PackRequest")] request: JsValue,
) -> Result<String, JsValue> {
    let request = understood(request, "request")?;
    fitting::link::pack(&request).or_else(|refusal| Err(to_js(&refusal)?))
}

/// What a link's text, or a whole address with it, holds.
///
/// # Errors
/// A `Refusal` that says whether the text is no link, was damaged, or needs a later version.
#[wasm_bindgen(unchecked_return_type = "Unpacked")]
pub fn unpack(text: &str) -> Result<JsValue, JsValue> {
    match fitting::link::unpack(text) {
        Ok(unpacked) => to_js(&unpacked),
        Err(error) => Err(to_js(&fitting::check::Refusal::from(error))?),
    }
}

/// The answer made ready to give away: link, words to paste, lines of a picture, the report as a file.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Shared")]
pub fn share(
    #[wasm_bindgen(unchecked_param_type = "ShareRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::share::share)
}

/// Plans a fair test.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Plan")]
pub fn plan(
    #[wasm_bindgen(unchecked_param_type = "PlanRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::plan::plan)
}

/// Flies one launch.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "FlightOf")]
pub fn fly(
    #[wasm_bindgen(unchecked_param_type = "FlyRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::flying::fly)
}
