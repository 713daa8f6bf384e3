//! The language and the units in which the core says what it says, from one call to the next.

use wasm_bindgen::prelude::*;

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

/// Shows distances in meters and speeds in kilometers an hour from here on, or yards and miles an hour again: in words
/// alone. The numbers of requests and reports stay in yards and miles an hour; margins that nobody named are round in the
/// units shown.
#[wasm_bindgen]
pub fn show_metric(metric: bool) {
    fitting::shown::show_metric(metric);
}
