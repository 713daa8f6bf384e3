//! What a measure is counted in, which way of it is wanted, and what it can be.

use serde::{Deserialize, Serialize};

/// Which way of a measure is usually wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Better {
    /// More is usually wanted.
    Higher,
    /// Less is usually wanted.
    Lower,
    /// Nearer to zero is usually wanted.
    NearerZero,
    /// It depends on the golfer.
    Depends,
}

/// The canonical unit of a measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    /// Yards.
    Yd,
    /// Miles per hour.
    Mph,
    /// Revolutions per minute.
    Rpm,
    /// Degrees.
    Deg,
    /// Seconds.
    S,
    /// Millimetres.
    Mm,
    /// A plain ratio.
    #[serde(rename = "")]
    Ratio,
}

impl Unit {
    /// The label of the canonical unit, empty for a plain ratio.
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::Yd => "yd",
            Self::Mph => "mph",
            Self::Rpm => "rpm",
            Self::Deg => "deg",
            Self::S => "s",
            Self::Mm => "mm",
            Self::Ratio => "",
        }
    }
}

/// The values a measure can take on a range.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Plausible {
    /// Lowest plausible value.
    pub low: f64,
    /// Highest plausible value.
    pub high: f64,
}
