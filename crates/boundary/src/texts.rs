//! Files and texts into sessions, and sessions into a file or a link.

use crate::call::answered;
use crate::columns::{any_has_columns, read_to_js, session_to_js};
use crate::objects::{given, given_back, text_of, thrown, to_js, understood};
use crate::voice::heard;
use crate::whole;
use reading::FileIs;
use session::Session;
use session::question::Question;
use wasm_bindgen::prelude::*;
use web_sys::TextDecoder;

/// The text of a file from its bytes, by the host's decoders; nothing when it is a workbook, which has a package of
/// its own.
///
/// # Errors
/// A `Refusal` with the file's name as its place when the bytes are neither.
#[wasm_bindgen]
pub fn decode(
    bytes: &[u8],
    name: &str,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<Option<String>, JsValue> {
    match reading::recognize(bytes) {
        Ok(FileIs::Workbook) => Ok(None),
        Ok(FileIs::Text(encoding)) => {
            TextDecoder::new_with_label(encoding.label())?.decode_with_u8_array(bytes).map(Some)
        }
        Err(not_text) => Err(thrown(&not_text.words(name, &heard(voice)?))),
    }
}

/// Reads shots from text.
///
/// # Errors
/// A `Refusal` when the hints are not of their type, or the text is none. Text itself is never refused.
#[wasm_bindgen(unchecked_return_type = "ReadResult")]
pub fn read(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Hints | null")] hints: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    let voice = heard(voice)?;
    let text = text_of(text, &voice)?;
    to_js(&whole::read(&text, &given(hints, "hints", &voice)?, &voice))
}

/// Reads shots from text as `read` does; the shots of its session are columns. For texts of thousands of rows.
///
/// # Errors
/// A `Refusal` when the hints are not of their type. Text itself is never refused.
#[wasm_bindgen(unchecked_return_type = "ReadResult")]
pub fn read_in_columns(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Hints | null")] hints: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    let voice = heard(voice)?;
    let text = text_of(text, &voice)?;
    read_to_js(whole::read(&text, &given(hints, "hints", &voice)?, &voice))
}

/// Joins sessions of texts added one after another: builds of one name become one, measures align. Sessions given in
/// columns come back in columns.
///
/// # Errors
/// A `Refusal` when the sessions or the order are not of their type.
#[wasm_bindgen(unchecked_return_type = "Session")]
pub fn join(
    #[wasm_bindgen(unchecked_param_type = "Session[]")] sessions: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Order | null")] order: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    let voice = heard(voice)?;
    let in_columns = any_has_columns(&sessions);
    let sessions: Vec<Session> = understood(sessions, "sessions", &voice)?;
    let joined = reading::join(&sessions, understood(order, "order", &voice)?);
    if in_columns { session_to_js(joined) } else { to_js(&joined) }
}

/// Writes a session as CSV that a spreadsheet opens and that `read` gives back identical, with what was asked of it where
/// that is given.
///
/// # Errors
/// A `Refusal` when the session or the question is not of its type.
#[wasm_bindgen]
pub fn write_csv(
    #[wasm_bindgen(unchecked_param_type = "Session")] session: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Question | null")] question: JsValue,
) -> Result<String, JsValue> {
    let voice = heard(voice)?;
    let session: Session = understood(session, "session", &voice)?;
    let question: Option<Question> = given(question, "question", &voice)?;
    Ok(question.map_or_else(
        || reading::write_csv(&session),
        |question| reading::write_csv_asked(&session, &question),
    ))
}

/// A session and its question as a short text for an address.
///
/// # Errors
/// A `Refusal` when the question does not belong to the session, or the session is too large for any address.
#[wasm_bindgen(unchecked_return_type = "string")]
pub fn pack(
    #[wasm_bindgen(unchecked_param_type = "PackRequest")] request: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, voice, whole::pack)
}

/// The shots that a link still holds that was cut off: columns that stand whole before the cut. Nothing of one that is whole,
/// was changed, or is none.
///
/// # Errors
/// A `Refusal` when it is no text.
#[wasm_bindgen(unchecked_return_type = "Session | undefined")]
pub fn left_of_link(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    let left = reading::link::left_of(&text_of(text, &heard(voice)?)?);
    left.map_or(Ok(JsValue::UNDEFINED), |session| to_js(&session))
}

/// What a link's text, or a whole address with it, holds.
///
/// # Errors
/// A `Refusal` that says whether the text is no link, was damaged, or needs a later version.
#[wasm_bindgen(unchecked_return_type = "Unpacked")]
pub fn unpack(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "Voice | null")] voice: JsValue,
) -> Result<JsValue, JsValue> {
    let voice = heard(voice)?;
    given_back(whole::unpack(&text_of(text, &voice)?, &voice))
}
