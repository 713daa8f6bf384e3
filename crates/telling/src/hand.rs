//! The golfer's hand: it decides what a ball that goes right is called.

use serde::{Deserialize, Serialize};

/// Which hand the golfer plays with, for the words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Hand {
    /// Right-handed: a slice goes right.
    Right,
    /// Left-handed: a slice goes left.
    Left,
}
