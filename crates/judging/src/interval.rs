//! Two ends at a level: the shape in which every uncertainty is handed on.

use serde::{Deserialize, Serialize};

/// Two ends at a level.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Interval {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Coverage it is made for, between 0 and 1.
    pub level: f64,
}

impl From<stats::Interval> for Interval {
    fn from(stats::Interval { low, high, level }: stats::Interval) -> Self {
        Self { low, high, level: level.coverage() }
    }
}
