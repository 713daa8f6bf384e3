//! What the golfer says about the text; every part overrules the guess of the same name.

use crate::doubt::Settled;
use crate::outcome::{Delimiter, Layout, LineIs, Role};
use serde::{Deserialize, Serialize};
use session::few::Map;
use session::measure::MeasureId;
use session::{Conditions, Order};

/// What the golfer says about the text; overrules every guess. All of it may be left out.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default, deny_unknown_fields)]
pub struct Hints {
    /// How cells are set apart.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub delimiter: Option<Delimiter>,
    /// How shots lie in the text.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub layout: Option<Layout>,
    /// "." or ",", for every column that `decimal_marks` does not name.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub decimal_mark: Option<String>,
    /// "." or "," by column position.
    #[cfg_attr(
        feature = "typescript",
        ts(optional, as = "Option<std::collections::BTreeMap<usize, String>>")
    )]
    #[serde(deserialize_with = "crate::position::keyed")]
    pub decimal_marks: Map<usize, String>,
    /// What columns hold, by position.
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<std::collections::BTreeMap<usize, Role>>"))]
    #[serde(deserialize_with = "crate::position::keyed")]
    pub columns: Map<usize, Role>,
    /// Units by column position, in the words of `ColumnReading.units`.
    #[cfg_attr(
        feature = "typescript",
        ts(optional, as = "Option<std::collections::BTreeMap<usize, String>>")
    )]
    #[serde(deserialize_with = "crate::position::keyed")]
    pub units: Map<usize, String>,
    /// What lines are, by line number.
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<std::collections::BTreeMap<u32, LineIs>>"))]
    #[serde(deserialize_with = "crate::position::keyed")]
    pub lines: Map<u32, LineIs>,
    /// Name of the build that all shots without one belong to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub build: Option<String>,
    /// Other names for builds, by the name as read; two builds given one name become one.
    #[cfg_attr(
        feature = "typescript",
        ts(optional, as = "Option<std::collections::BTreeMap<String, String>>")
    )]
    pub names: Map<String, String>,
    /// The measure of a table with one column for each build.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub single_measure: Option<MeasureId>,
    /// How the shots were hit, when the golfer knows.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub order: Option<Order>,
    /// The weather, for carry in standard air; an empty one takes back what the text says.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub weather: Option<Conditions>,
    /// Read the letters O, l, I, S and B in numbers as the digits 0, 1, 1, 5 and 8.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub letters_as_digits: Option<bool>,
    /// Names of the builds of the texts that this one will be joined to: one spelled otherwise here is asked about.
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<Vec<String>>"))]
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub others: Vec<String>,
    /// What was said to doubts, by their keys.
    #[cfg_attr(
        feature = "typescript",
        ts(optional, as = "Option<std::collections::BTreeMap<String, Settled>>")
    )]
    #[serde(skip_serializing_if = "Map::is_empty")]
    pub settled: Map<String, Settled>,
}
