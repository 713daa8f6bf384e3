//! The language and the units in which a call is answered: an argument of every function that says something.

use crate::objects::{thrown, understood};
use serde::Deserialize;
use session::refusal::Refusal;
use text::{Language, Units, Voice, request};
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPE: &str = r#"
/** In which language and in which units something is said. It changes words, never a number or a decision. */
export type Voice = {
  /** The table of a language, as it stands beside the package (`straight_answer_es.txt`); left out, English. */
  table?: string | null;
  /** What distances and speeds are shown in; left out, yards and miles an hour. */
  units?: "yards" | "meters" | null;
};
"#;

/// What a caller says of the voice.
#[derive(Default, Deserialize)]
#[serde(default, deny_unknown_fields)]
struct Wanted {
    table: Option<String>,
    units: Option<WantedUnits>,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum WantedUnits {
    Yards,
    Meters,
}

/// The voice that a caller wants; English in yards where nothing is said.
pub(crate) fn heard(voice: JsValue) -> Result<Voice, JsValue> {
    if voice.is_null() || voice.is_undefined() {
        return Ok(Voice::english());
    }
    let Wanted { table, units } = understood(voice, "voice", &Voice::english())?;
    let units = match units {
        Some(WantedUnits::Meters) => Units::Meters,
        Some(WantedUnits::Yards) | None => Units::Yards,
    };
    let language = match table.as_deref().map(Language::from_table) {
        None => Language::english(),
        Some(Ok(language)) => language,
        Some(Err(_)) => return Err(thrown(&of_another_version())),
    };
    Ok(Voice::new(language, units))
}

/// Said in English: the other language is what could not be taken.
fn of_another_version() -> Refusal {
    let voice = Voice::english();
    Refusal::new(
        "table_of_another_version",
        "voice.table",
        &request::other_version(&voice),
        &request::other_version_remedy(&voice),
    )
}
