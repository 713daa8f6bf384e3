//! The question and its answer: the verdict, what to bet, how far luck reaches, and what is given away of it.

use crate::call::answered;
use crate::objects::to_js;
use crate::voice::heard;
use crate::whole;
use wasm_bindgen::prelude::*;

/// The trade's measures.
///
/// # Errors
/// A `Refusal` when the voice is none.
#[wasm_bindgen(unchecked_return_type = "Measure[]")]
pub fn measures(
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    to_js(&telling::measures::measures(&heard(voice)?))
}

/// Answers a question from a session's shots.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Report")]
pub fn check(
    #[wasm_bindgen(unchecked_param_type = "CheckRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::check::check)
}

/// Says what to bet where a verdict is out of reach or says too much; it decides nothing.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Bet")]
pub fn bet(
    #[wasm_bindgen(unchecked_param_type = "CheckRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::bet::bet)
}

/// The typical shot: a second question beside the average, decided as strictly.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Typical")]
pub fn typical(
    #[wasm_bindgen(unchecked_param_type = "CheckRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::typical::typical)
}

/// Shows how far luck reaches: what a few of the session's own shots could have shown.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Luck")]
pub fn luck(
    #[wasm_bindgen(unchecked_param_type = "LuckRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::luck::luck)
}

/// The answer made ready to give away: link, words to paste, lines of a picture, the report as a file.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Shared")]
pub fn share(
    #[wasm_bindgen(unchecked_param_type = "ShareRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, whole::share)
}

/// Holds the effect of a build beside that of a second thing that changed.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Second")]
pub fn second(
    #[wasm_bindgen(unchecked_param_type = "SecondRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, telling::second::second)
}
