//! What sentences hold, for a form that opens filled in: nobody's sentence is taken for a table without being seen.

use serde::Serialize;
use session::few::Map;
use session::measure::MeasureId;

/// Figures found in sentences, as the forms of the page hold them.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(tag = "kind", content = "rows", rename_all = "snake_case")]
pub enum Form {
    /// Averages, one row for each build.
    Averages(Vec<AveragesRow>),
    /// Shots, one row for each build; nothing says of which measure.
    List(Vec<ListRow>),
}

/// The averages of one build.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct AveragesRow {
    /// The build, as the sentence names it.
    pub name: String,
    /// The number of shots, null when it is not said.
    pub n: Option<u32>,
    /// Averages as written, by measure.
    #[cfg_attr(feature = "typescript", ts(as = "std::collections::BTreeMap<String, f64>"))]
    pub values: Map<MeasureId, f64>,
}

/// The shots of one build.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ListRow {
    /// The build, as the sentence names it.
    pub name: String,
    /// Shots as written.
    pub shots: Vec<f64>,
}
