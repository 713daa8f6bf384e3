//! The boundary: plain objects in, plain objects out, no state, no arithmetic, no wording.
//!
//! What a page needs for its first answer stands here; everything else in `complete`, which a page that starts
//! small leaves out at first (`--no-default-features`).

#[cfg(feature = "complete")]
mod complete;

#[cfg(feature = "complete")]
pub use complete::*;

#[cfg(feature = "complete")]
mod boundary;
#[cfg(not(feature = "complete"))]
mod lean;
mod shown;
mod speech;

pub use shown::show_metric;
pub use speech::speak;

#[cfg(feature = "complete")]
use boundary::{answered, to_js};
use fitting::read::FileIs;
#[cfg(not(feature = "complete"))]
use lean::{answered, to_js};
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
        Err(refusal) => Err(to_js(&refusal)?),
    }
}

/// The trade's measures.
///
/// # Errors
/// Never in practice: only if the host cannot make objects.
#[wasm_bindgen(unchecked_return_type = "Measure[]")]
pub fn measures() -> Result<JsValue, JsValue> {
    to_js(&fitting::measure::measures())
}

/// Reads a plain table of shots: the result of `read` without hints, or nothing when it takes `read` itself.
///
/// # Errors
/// Never in practice: only if the host cannot make objects.
#[wasm_bindgen(unchecked_return_type = "ReadResult | undefined")]
pub fn read_plain(text: &str) -> Result<JsValue, JsValue> {
    match fitting::read::read_plain(text) {
        Some(result) => to_js(&result),
        None => Ok(JsValue::UNDEFINED),
    }
}

/// Answers a question from a session's shots.
///
/// # Errors
/// A `Refusal` with the place and the remedy.
#[wasm_bindgen(unchecked_return_type = "Report")]
pub fn check(
    #[wasm_bindgen(unchecked_param_type = "CheckRequest")] request: JsValue,
) -> Result<JsValue, JsValue> {
    answered(request, fitting::check::check)
}
