//! In which units a package shows what it says.

use wasm_bindgen::prelude::*;

/// Shows distances in meters and speeds in kilometers an hour from here on, or yards and miles an hour again: in words
/// alone. The numbers of requests and reports stay in yards and miles an hour; margins that nobody named are round in the
/// units shown.
#[wasm_bindgen]
pub fn show_metric(metric: bool) {
    fitting::shown::show_metric(metric);
}
