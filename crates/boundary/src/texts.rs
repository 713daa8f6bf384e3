//! Files and texts into sessions, and sessions into a file or a link.

use crate::objects::{answered, given, thrown, to_js, understood};
use fitting::read::FileIs;
use fitting::session::Session;
use wasm_bindgen::prelude::*;
use web_sys::TextDecoder;

/// The text of a file from its bytes, by the host's decoders; nothing when it is a workbook, which has a package of
/// its own.
///
/// # Errors
/// A `Refusal` with the file's name as its place when the bytes are neither.
#[wasm_bindgen]
pub fn decode(bytes: &[u8], name: &str) -> Result<Option<String>, JsValue> {
    match fitting::read::recognize(bytes, name) {
        Ok(FileIs::Workbook) => Ok(None),
        Ok(FileIs::Text(encoding)) => {
            TextDecoder::new_with_label(encoding.label())?.decode_with_u8_array(bytes).map(Some)
        }
        Err(refusal) => Err(thrown(&refusal)),
    }
}

/// Reads shots from text.
///
/// # Errors
/// A `Refusal` when the hints are not of their type. Text itself is never refused.
#[wasm_bindgen(unchecked_return_type = "ReadResult")]
pub fn read(
    text: &str,
    #[wasm_bindgen(unchecked_optional_param_type = "Hints | null")] hints: JsValue,
) -> Result<JsValue, JsValue> {
    to_js(&fitting::weather::read(text, &given(hints, "hints")?))
}

/// Joins sessions of texts added one after another: builds of one name become one, measures align.
///
/// # Errors
/// A `Refusal` when the sessions or the order are not of their type.
#[wasm_bindgen(unchecked_return_type = "Session")]
pub fn join(
    #[wasm_bindgen(unchecked_param_type = "Session[]")] sessions: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Order | null")] order: JsValue,
) -> Result<JsValue, JsValue> {
    let sessions: Vec<Session> = understood(sessions, "sessions")?;
    to_js(&fitting::read::join(&sessions, understood(order, "order")?))
}

/// Writes a session as CSV that a spreadsheet opens and that `read` gives back identical.
///
/// # Errors
/// A `Refusal` when the session is not of its type.
#[wasm_bindgen]
pub fn write_csv(
    #[wasm_bindgen(unchecked_param_type = "Session")] session: JsValue,
) -> Result<String, JsValue> {
    Ok(fitting::write::write_csv(&understood(session, "session")?))
}

/// A session and its question as a short text for an address.
///
/// # Errors
/// A `Refusal` when the question does not belong to the session, or the session is too large for any address.
#[wasm_bindgen(unchecked_return_type = "string")]
pub fn pack(
    #[wasm_bindgen(unchecked_param_type = "PackRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::link::pack)
}

/// What a link's text, or a whole address with it, holds.
///
/// # Errors
/// A `Refusal` that says whether the text is no link, was damaged, or needs a later version.
#[wasm_bindgen(unchecked_return_type = "Unpacked")]
pub fn unpack(text: &str) -> Result<JsValue, JsValue> {
    match fitting::link::unpack(text) {
        Ok(unpacked) => to_js(&unpacked),
        Err(error) => Err(thrown(&error.into())),
    }
}
