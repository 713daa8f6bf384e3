//! JSON in and out, and the words that languages and units are named by.

use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use serde::Serialize;
use serde::de::DeserializeOwned;
use text::{Language, Units, Voice};

/// The voice of a language and of units.
pub(crate) fn voice(language: &str, unit: &str) -> PyResult<Voice> {
    let wrong = |what: &str, word: &str| PyValueError::new_err(format!("{what} {word:?} is not known"));
    let language = match language {
        "en" => Language::english(),
        // The table is of this very build.
        "es" => Language::from_table(text::SPANISH).unwrap_or_default(),
        other => return Err(wrong("language", other)),
    };
    let units = match unit {
        "yards" => Units::Yards,
        "meters" => Units::Meters,
        "mixed" => Units::MetersAndMph,
        other => return Err(wrong("unit", other)),
    };
    Ok(Voice::new(language, units))
}

/// A value as JSON.
pub(crate) fn json(value: &impl Serialize) -> PyResult<String> {
    serde_json::to_string(value).map_err(|error| PyValueError::new_err(error.to_string()))
}

/// A value of JSON; `what` is its name in the message where it is none.
pub(crate) fn taken<T: DeserializeOwned>(text: &str, what: &str) -> PyResult<T> {
    serde_json::from_str(text).map_err(|error| PyValueError::new_err(format!("{what}: {error}")))
}
