//! The parts of a gap, the numbers of the delivery and the sources of spin, each with its words.

use judging::cause::{MovedFacts, PartFacts, SpinSourceFacts};
use serde::Serialize;

/// One part of the gap.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Part {
    /// Through what, how much, and whose doing.
    #[serde(flatten)]
    pub facts: PartFacts,
    /// Short name for the picture.
    pub name: String,
    /// What differed, in its own unit, and what it was worth.
    pub words: String,
}

/// A number of the delivery that was measured with both builds.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Moved {
    /// Which, by how much, and whose doing.
    #[serde(flatten)]
    pub facts: MovedFacts,
    /// In words.
    pub words: String,
}

/// What one number of the delivery does to spin (rpm) or to the tilt of its axis (deg), roughly.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SpinSource {
    /// What is explained, by what, and how much of it.
    #[serde(flatten)]
    pub facts: SpinSourceFacts,
    /// In words.
    pub words: String,
}
