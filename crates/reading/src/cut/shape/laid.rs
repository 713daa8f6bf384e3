//! A table laid out anew, and the measure of one that has no heading for it.

use crate::cut::grid::Grid;
use session::measure::MeasureId;
use session::units::SourceUnit;

/// The one measure of a table that has no heading for it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Single {
    pub(crate) measure: MeasureId,
    pub(crate) unit: Option<SourceUnit>,
    pub(crate) guessed: bool,
}

/// A grid with one row for each shot, made of one that had none.
#[derive(Debug)]
pub(crate) struct Laid {
    pub(crate) grid: Grid,
    /// The measure that stands over the whole table, where it is one.
    pub(crate) single: Option<Single>,
}
