//! What comes after a first answer, or when a text is no plain table.

use super::{refusal, to_js};
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
        serde_wasm_bindgen::from_value(hints).map_err(|e| refusal("hints", &e))?
    };
    to_js(&fitting::read::read(text, &hints))
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
    let sessions: Vec<fitting::session::Session> =
        serde_wasm_bindgen::from_value(sessions).map_err(|e| refusal("sessions", &e))?;
    let order = serde_wasm_bindgen::from_value(order).map_err(|e| refusal("order", &e))?;
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
    let session = serde_wasm_bindgen::from_value(session).map_err(|e| refusal("session", &e))?;
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
    let request = serde_wasm_bindgen::from_value(request).map_err(|e| refusal("request", &e))?;
    match fitting::luck::luck(&request) {
        Ok(luck) => to_js(&luck),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}

/// A session and its question as a short text for an address.
///
/// # Errors
/// A `Refusal` when the question does not belong to the session, or the session is too large for any address.
#[wasm_bindgen]
pub fn pack(
    #[wasm_bindgen(unchecked_param_type = "PackRequest")] request: JsValue,
) -> Result<String, JsValue> {
    let request = serde_wasm_bindgen::from_value(request).map_err(|e| refusal("request", &e))?;
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
    let request = serde_wasm_bindgen::from_value(request).map_err(|e| refusal("request", &e))?;
    match fitting::share::share(&request) {
        Ok(shared) => to_js(&shared),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}

/// Plans a fair test.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Plan")]
pub fn plan(
    #[wasm_bindgen(unchecked_param_type = "PlanRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    let request = serde_wasm_bindgen::from_value(request).map_err(|e| refusal("request", &e))?;
    match fitting::plan::plan(&request) {
        Ok(plan) => to_js(&plan),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}

/// Flies one launch.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "FlightOf")]
pub fn fly(
    #[wasm_bindgen(unchecked_param_type = "FlyRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    let request = serde_wasm_bindgen::from_value(request).map_err(|e| refusal("request", &e))?;
    match fitting::flying::fly(&request) {
        Ok(flight) => to_js(&flight),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}
