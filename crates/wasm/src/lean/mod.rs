//! The same way in and out as `boundary`, in a third of its bytes, for the package that every visitor waits for.
//!
//! `serde-wasm-bindgen` explains whatever a caller may send wrongly and converts every type there is. The page's own
//! requests are of their type, and the session and the report are records, lists, texts and numbers only: these alone
//! are converted here, into the very same objects (`tests/node/packages.test.mjs` holds both together).

mod give;
mod take;

use fitting::check::Refusal;
use serde::Serialize;
use serde::de::DeserializeOwned;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../../types.d.ts");

/// Hands a request on and its answer back; whatever is refused is thrown as a `Refusal`.
pub(crate) fn answered<Q: DeserializeOwned, A: Serialize>(
    request: JsValue,
    answer: impl FnOnce(&Q) -> Result<A, Refusal>,
) -> Result<JsValue, JsValue> {
    let Ok(request) = take::understood(request) else {
        return Err(give::object(&Refusal {
            kind: "not_understood".into(),
            place: "request".into(),
            message: "The request is not of its type.".into(),
            remedy: "Send an object of the type that the declarations name.".into(),
        }));
    };
    answer(&request).map(|answer| give::object(&answer)).map_err(|refusal| give::object(&refusal))
}

/// A plain object.
pub(crate) fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    Ok(give::object(value))
}
