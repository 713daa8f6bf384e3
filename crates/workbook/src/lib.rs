//! The sheets of a workbook as text, for `reading` to understand.
//!
//! A package of its own, loaded only when somebody chooses such a file. Two open formats: `.xlsx`
//! and `.ods`. Knows no golf: what a cell means is decided where all text is read.

mod cell;
mod refused;
mod sheets;

pub use refused::{Refusal, Unreadable};
pub use sheets::{LARGEST_FILE, MOST_ROWS, MOST_UNPACKED, Sheet, sheets};

use serde::Serialize;
use text::{Language, Units, Voice};
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../types.d.ts");

/// Reads the sheets of a workbook. What is refused is said in the language of `table`, a text as it stands beside the
/// package; in English where there is none, or when it belongs to another version.
///
/// # Errors
/// A `Refusal` for files that are too large, locked, broken or no workbook.
#[wasm_bindgen(js_name = sheets, unchecked_return_type = "Sheet[]")]
pub fn sheets_of(bytes: Vec<u8>, table: Option<String>) -> Result<JsValue, JsValue> {
    match sheets(bytes) {
        Ok(sheets) => to_js(&sheets),
        Err(unreadable) => {
            let language = table.and_then(|table| Language::from_table(&table).ok()).unwrap_or_default();
            Err(to_js(&unreadable.words(&Voice::new(language, Units::default())))?)
        }
    }
}

fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).map_err(JsValue::from)
}
