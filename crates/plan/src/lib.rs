//! The boundary of the coach's hour: plain objects in, plain objects out, no state, no arithmetic, no wording.
//!
//! A package of its own, loaded only when somebody plans a test, checks a claim or puts days together.

use fitting::check::Refusal;
use serde::Serialize;
use serde::de::DeserializeOwned;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../../wasm/types.d.ts");

/// Plans a test before the first ball.
///
/// # Errors
/// A `Refusal` with the field and the remedy.
#[wasm_bindgen(unchecked_return_type = "Plan")]
pub fn plan(
    #[wasm_bindgen(unchecked_param_type = "PlanRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::plan::plan)
}

/// Says where a test under way stands: whose turn it is, whether the answer may be looked at.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Progress")]
pub fn follow(
    #[wasm_bindgen(unchecked_param_type = "FollowRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::plan::follow)
}

/// Sets what a fitting claimed against a retest.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "ClaimReport")]
pub fn claim(
    #[wasm_bindgen(unchecked_param_type = "ClaimRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::claim::claim)
}

/// Puts several sessions of the same builds together.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "TogetherPair[]")]
pub fn together(
    #[wasm_bindgen(unchecked_param_type = "TogetherRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::together::together)
}

/// Sets what the golfer felt beside what the shots show.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Feel")]
pub fn beside(
    #[wasm_bindgen(unchecked_param_type = "FeelRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::feel::beside)
}

/// Writes a session as CSV that a spreadsheet opens and that `read` reads back identical.
///
/// # Errors
/// A `Refusal` when it is no session.
#[wasm_bindgen]
pub fn write_csv(
    #[wasm_bindgen(unchecked_param_type = "Session")] session: JsValue,
) -> Result<String, JsValue> {
    Ok(fitting::write::write_csv(&understood(session)?))
}

fn answered<Q: DeserializeOwned, A: Serialize>(
    request: JsValue,
    answer: impl Fn(&Q) -> Result<A, Refusal>,
) -> Result<JsValue, JsValue> {
    match answer(&understood(request)?) {
        Ok(answer) => to_js(&answer),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}

fn understood<Q: DeserializeOwned>(request: JsValue) -> Result<Q, JsValue> {
    serde_wasm_bindgen::from_value(request).map_err(|error| {
        let refusal = Refusal {
            kind: "not_understood".into(),
            place: "request".into(),
            message: error.to_string(),
            remedy: "Send an object of the type that the declarations name.".into(),
        };
        to_js(&refusal).unwrap_or_else(|error| error)
    })
}

fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}
