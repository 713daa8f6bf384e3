//! Plain objects in and out: the one place where values of the core and of the host become each other.

use crate::take::taken;
use serde::Serialize;
use serde::de::DeserializeOwned;
use session::refusal::Refusal;
use text::Voice;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

/// An answer as a plain object, a refusal thrown.
pub(crate) fn given_back<A: Serialize>(answer: Result<A, Refusal>) -> Result<JsValue, JsValue> {
    to_js(&answer.map_err(|refusal| thrown(&refusal))?)
}

/// A value of its type, or the refusal that names the place, what should stand there, and the nearest known name.
pub(crate) fn understood<Q: DeserializeOwned>(
    value: JsValue,
    root: &str,
    voice: &Voice,
) -> Result<Q, JsValue> {
    ::request::understood(&taken(&value), root, voice).map_err(|refusal| thrown(&refusal))
}

/// A text; anything else is refused, where the host would have handed it over as bytes of nothing.
pub(crate) fn text_of(value: JsValue, voice: &Voice) -> Result<String, JsValue> {
    match value.as_string() {
        Some(text) => Ok(text),
        None => understood(value, "text", voice),
    }
}

/// What may be left out.
pub(crate) fn given<Q: DeserializeOwned + Default>(
    value: JsValue,
    root: &str,
    voice: &Voice,
) -> Result<Q, JsValue> {
    if value.is_null() || value.is_undefined() { Ok(Q::default()) } else { understood(value, root, voice) }
}

/// A plain object.
pub(crate) fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}

/// A refusal as it is thrown.
pub(crate) fn thrown(refusal: &Refusal) -> JsValue {
    to_js(refusal).unwrap_or_else(|error| error)
}
