//! The boundary: plain objects in, plain objects out, no state, no arithmetic, no wording.
//!
//! What a page needs for its first answer stands here; everything else in `complete`, which a page that starts
//! small leaves out at first (`--no-default-features`).

#[cfg(feature = "complete")]
mod complete;

#[cfg(feature = "complete")]
pub use complete::*;

use serde::Serialize;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}

fn refusal(place: &str, error: &serde_wasm_bindgen::Error) -> JsValue {
    let refusal = fitting::check::Refusal {
        kind: "not_understood".into(),
        place: place.into(),
        message: error.to_string(),
        remedy: "Send an object of the type that the declarations name.".into(),
    };
    to_js(&refusal).unwrap_or_else(|error| error)
}

/// The trade's measures.
///
/// # Errors
/// Never in practice: only if the host cannot make objects.
#[wasm_bindgen(unchecked_return_type = "Measure[]")]
pub fn measures() -> Result<JsValue, JsValue> {
    to_js(&fitting::measure::MEASURES)
}

/// Reads a plain table of shots: the result of `read` without hints, or nothing when it takes `read` itself.
///
/// # Errors
/// Never in practice: only if the host cannot make objects.
#[wasm_bindgen(unchecked_return_type = "ReadResult | undefined")]
pub fn read_plain(text: &str) -> Result<JsValue, JsValue> {
    match fitting::read::read_plain(text) {
        Some(result) => to_js(&result),
        None => Ok(JsValue::UNDEFINED),
    }
}

/// Answers a question from a session's shots.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Report")]
pub fn check(
    #[wasm_bindgen(unchecked_param_type = "CheckRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    let request = serde_wasm_bindgen::from_value(request).map_err(|e| refusal("request", &e))?;
    match fitting::check::check(&request) {
        Ok(report) => to_js(&report),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}
