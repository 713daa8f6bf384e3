//! The coach's hour: a test planned and followed, a claim held against a retest, days together, what was felt; and what
//! a fitting can show by how it was done.

use crate::call::answered;
use crate::objects::{given_back, text_of, to_js};
use crate::voice::heard;
use crate::whole;
use wasm_bindgen::prelude::*;

/// Plans a test before the first ball.
///
/// # Errors
/// A `Refusal` with the field and the remedy.
#[wasm_bindgen(unchecked_return_type = "Plan")]
pub fn plan(
    #[wasm_bindgen(unchecked_param_type = "PlanRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::plan::plan)
}

/// Says where a test under way stands: whose turn it is, whether the answer may be looked at.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Progress")]
pub fn follow(
    #[wasm_bindgen(unchecked_param_type = "FollowRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::plan::follow)
}

/// Sets what a fitting claimed against a retest.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "ClaimReport")]
pub fn claim(
    #[wasm_bindgen(unchecked_param_type = "ClaimRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::claim::claim)
}

/// Puts several sessions of the same builds together.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "TogetherPair[]")]
pub fn together(
    #[wasm_bindgen(unchecked_param_type = "TogetherRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::together::together)
}

/// Sets what the golfer felt beside what the shots show.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Feel")]
pub fn feel(
    #[wasm_bindgen(unchecked_param_type = "FeelRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::feel::feel)
}

/// Says what a fitting can show and what it cannot, by how it was done; null where nothing is said of it.
///
/// # Errors
/// A `Refusal` for a line that is not there.
#[wasm_bindgen(unchecked_return_type = "FittingReport | null")]
pub fn fitting(
    #[wasm_bindgen(unchecked_param_type = "FittingSeen")] seen: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(seen, voice, |seen, voice| Ok(telling::fitting::fitting(seen, voice)))
}

/// A plan as a text for the part of an address that no server sees: `plan=` and letters.
///
/// # Errors
/// A `Refusal` with the field and the remedy.
#[wasm_bindgen(unchecked_return_type = "string")]
pub fn pack_plan(
    #[wasm_bindgen(unchecked_param_type = "PlanToShare")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, whole::pack_plan)
}

/// What such a text, or a whole address with it, holds.
///
/// # Errors
/// A `Refusal` that says whether the text is no link, was damaged, or needs a later version.
#[wasm_bindgen(unchecked_return_type = "SharedPlan")]
pub fn unpack_plan(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    let voice = heard(voice)?;
    given_back(whole::unpack_plan(&text_of(text, &voice)?, &voice))
}

/// Within what a plan can be made, and what is usual where nothing is said.
///
/// # Errors
/// Never in practice: only if the host cannot make objects.
#[wasm_bindgen(unchecked_return_type = "PlanLimits")]
pub fn plan_limits() -> Result<JsValue, JsValue> {
    to_js(&judging::plan::limits())
}
