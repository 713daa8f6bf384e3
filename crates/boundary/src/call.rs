//! The one way of a call: a request and a voice in, an answer out.

use crate::objects::{given_back, understood};
use crate::voice::heard;
use serde::Serialize;
use serde::de::DeserializeOwned;
use session::refusal::Refusal;
use text::Voice;
use wasm_bindgen::prelude::*;

/// Hands a request on and its answer back; whatever is refused is thrown as a `Refusal`.
pub(crate) fn answered<Q: DeserializeOwned, A: Serialize>(
    request: JsValue,
    voice: JsValue,
    answer: impl FnOnce(&Q, &Voice) -> Result<A, Refusal>,
) -> Result<JsValue, JsValue> {
    let voice = heard(voice)?;
    given_back(answer(&understood(request, "request", &voice)?, &voice))
}
