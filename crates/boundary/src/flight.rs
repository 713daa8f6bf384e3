//! What rests on the flight of the ball: where shots land, and why.

use crate::objects::answered;
use wasm_bindgen::prelude::*;

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

/// Shows where the shots land and how often they would hit a fairway.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Landing")]
pub fn landing(
    #[wasm_bindgen(unchecked_param_type = "LandingRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::landing::landing)
}

/// Splits the gap in carry between two builds.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Cause")]
pub fn cause(
    #[wasm_bindgen(unchecked_param_type = "CauseRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::cause::cause)
}

/// Shows what the ball speeds of a session could carry.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Potential")]
pub fn potential(
    #[wasm_bindgen(unchecked_param_type = "PotentialRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::potential::potential)
}

/// Holds every carry against its own launch.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Consistency")]
pub fn consistency(
    #[wasm_bindgen(unchecked_param_type = "ConsistencyRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::consistency::consistency)
}

/// Adds the carry in standard air to a session's shots.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "InStandardAir")]
pub fn in_standard_air(
    #[wasm_bindgen(unchecked_param_type = "AirRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::flying::in_standard_air)
}
