//! The sheets of a workbook as text, for the reader of `fitting` to understand.
//!
//! A package of its own, loaded only when somebody chooses such a file. Two open formats: `.xlsx`
//! and `.ods`. Knows no golf: what a cell means is decided where all text is read.

mod cell;
mod sheets;
#[path = "../../wasm/src/speech.rs"]
mod speech;

pub use sheets::{LARGEST_FILE, MOST_ROWS, MOST_UNPACKED, Refusal, Sheet, sheets};
pub use speech::speak;

use serde::Serialize;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

/// Reads the sheets of a workbook.
///
/// # Errors
/// A `Refusal` for files that are too large, locked, broken or no workbook.
#[wasm_bindgen(js_name = sheets, unchecked_return_type = "Sheet[]")]
pub fn sheets_of(bytes: Vec<u8>) -> Result<JsValue, JsValue> {
    match sheets(bytes) {
        Ok(sheets) => to_js(&sheets),
        Err(refusal) => Err(to_js(&refusal)?),
    }
}

fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}
