//! The language that a package speaks. Every package has this function, and a table of its own memory: each is told.

use wasm_bindgen::prelude::*;

/// Words everything in another language from here on: its table, as it stands beside the packages
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
