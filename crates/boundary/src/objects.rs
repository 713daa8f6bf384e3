//! Plain objects in and out: the one place where values of the core and of the host become each other.

use fitting::check::Refusal;
use serde::Serialize;
use serde::de::DeserializeOwned;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

/// Hands a request on and its answer back; whatever is refused is thrown as a `Refusal`.
pub(crate) fn answered<Q: DeserializeOwned, A: Serialize>(
    request: JsValue,
    answer: impl FnOnce(&Q) -> Result<A, Refusal>,
) -> Result<JsValue, JsValue> {
    match answer(&understood(request, "request")?) {
        Ok(answer) => to_js(&answer),
        Err(refusal) => Err(thrown(&refusal)),
    }
}

/// A value of its type, or the refusal that names its place.
pub(crate) fn understood<Q: DeserializeOwned>(value: JsValue, place: &str) -> Result<Q, JsValue> {
    serde_wasm_bindgen::from_value(value).map_err(|error| {
        thrown(&Refusal {
            kind: "not_understood".into(),
            place: place.into(),
            message: error.to_string(),
            remedy: "Send an object of the type that the declarations name.".into(),
        })
    })
}

/// What may be left out.
pub(crate) fn given<Q: DeserializeOwned + Default>(value: JsValue, place: &str) -> Result<Q, JsValue> {
    if value.is_null() || value.is_undefined() { Ok(Q::default()) } else { understood(value, place) }
}

/// A plain object.
pub(crate) fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}

/// A refusal as it is thrown.
pub(crate) fn thrown(refusal: &Refusal) -> JsValue {
    to_js(refusal).unwrap_or_else(|error| error)
}
