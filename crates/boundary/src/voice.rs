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
  /** What distances and speeds are shown in; left out, yards and miles an hour. "meters" goes with kilometers an hour. */
  units?: "yards" | "meters" | "meters_and_mph" | null;
  /** Whether decimals follow a point, whatever the language's own mark: in Mexico Spanish has one, in Spain a comma. */
  point?: boolean | null;
  /** Whose shots are spoken of; left out, those of who reads it. */
  whose?: "own" | "sender" | null;
};
"#;

/// What a caller says of the voice.
#[derive(Default, Deserialize)]
#[serde(default, deny_unknown_fields)]
struct Wanted {
    table: Option<String>,
    units: Option<WantedUnits>,
    point: Option<bool>,
    whose: Option<WantedWhose>,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum WantedWhose {
    Own,
    Sender,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum WantedUnits {
    Yards,
    Meters,
    MetersAndMph,
}

/// The voice that a caller wants; English in yards where nothing is said.
pub(crate) fn heard(voice: JsValue) -> Result<Voice, JsValue> {
    if voice.is_null() || voice.is_undefined() {
        return Ok(Voice::english());
    }
    let Wanted { table, units, point, whose } = understood(voice, "voice", &Voice::english())?;
    let units = match units {
        Some(WantedUnits::Meters) => Units::Meters,
        Some(WantedUnits::MetersAndMph) => Units::MetersAndMph,
        Some(WantedUnits::Yards) | None => Units::Yards,
    };
    let language = match table.as_deref().map(Language::from_table) {
        None => Language::english(),
        Some(Ok(language)) => language,
        Some(Err(_)) => return Err(thrown(&of_another_version())),
    };
    let voice = Voice::new(language, units).with_point(point.unwrap_or(false));
    Ok(match whose {
        Some(WantedWhose::Sender) => voice.of_the_sender(),
        Some(WantedWhose::Own) | None => voice,
    })
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
