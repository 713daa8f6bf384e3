//! What rests on the flight of the ball: where shots land, and why.

use crate::call::answered;
use wasm_bindgen::prelude::*;

/// Flies one launch.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "FlightOf")]
pub fn fly(
    #[wasm_bindgen(unchecked_param_type = "FlyRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::flying::fly)
}

/// Shows where the shots land and how often they would hit a fairway.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Landing")]
pub fn landing(
    #[wasm_bindgen(unchecked_param_type = "LandingRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::landing::landing)
}

/// Splits the gap in carry between two builds.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Cause")]
pub fn cause(
    #[wasm_bindgen(unchecked_param_type = "CauseRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::cause::cause)
}

/// Shows what the ball speeds of a session could carry.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Potential")]
pub fn potential(
    #[wasm_bindgen(unchecked_param_type = "PotentialRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::potential::potential)
}

/// Holds every carry against its own launch.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Consistency")]
pub fn consistency(
    #[wasm_bindgen(unchecked_param_type = "ConsistencyRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::consistency::consistency)
}

/// Adds the carry in standard air to a session's shots.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "InStandardAir")]
pub fn in_standard_air(
    #[wasm_bindgen(unchecked_param_type = "AirRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::flying::in_standard_air)
}
