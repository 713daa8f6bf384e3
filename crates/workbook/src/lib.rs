//! The sheets of a workbook as text, for the reader of `fitting` to understand.
//!
//! A package of its own, loaded only when somebody chooses such a file. Two open formats: `.xlsx`
//! and `.ods`. Knows no golf: what a cell means is decided where all text is read.

mod cell;
mod sheets;

pub use sheets::{LARGEST_FILE, MOST_ROWS, MOST_UNPACKED, Refusal, Sheet, sheets};

use serde::Serialize;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

/// Words everything in another language from here on: its table, as it stands beside the package
/// (`straight_answer_es.txt`). An empty text is English again. False, and nothing changes, for a table of another version.
#[wasm_bindgen]
#[must_use]
pub fn speak(table: &str) -> bool {
    if table.is_empty() {
        text::speak_english();
        return true;
    }
    text::speak(table).is_ok()
}

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
