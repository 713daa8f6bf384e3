//! What a measure is: its id, its unit, which way is better, and the smallest difference that matters.
//!
//! The trade's own measures stand one row each in [`crate::known`]; any other column keeps its own heading.

use crate::known::{Facts, Known};
pub use crate::scale::{Better, Plausible, Unit};
use serde::{Deserialize, Serialize};
use std::borrow::Borrow;
use std::cmp::Ordering;

/// The id of a measure: one of the trade's list, or made from the heading of a column of the golfer's own.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(as = "String"))]
#[serde(from = "String", into = "String")]
pub enum MeasureId {
    /// One of the trade's list.
    Known(Known),
    /// A column of the golfer's own, by its id. Made by [`MeasureId::from`], which knows the trade's.
    Own(String),
}

impl MeasureId {
    /// As it stands in requests, files and links.
    #[must_use]
    pub fn as_str(&self) -> &str {
        match self {
            Self::Known(known) => known.id(),
            Self::Own(id) => id,
        }
    }

    /// The trade's measure, `None` for a column of the golfer's own.
    #[must_use]
    pub fn known(&self) -> Option<Known> {
        match self {
            Self::Known(known) => Some(*known),
            Self::Own(_) => None,
        }
    }

    /// The trade's measure whose margin, direction and drift hold for this one: itself, and carry for carry brought
    /// to standard air.
    #[must_use]
    pub fn usual(&self) -> Option<Known> {
        match self {
            Self::Own(id) if id == STANDARD_AIR_CARRY => Some(Known::Carry),
            _ => self.known(),
        }
    }
}

/// Id of carry brought to standard air, a measure that the flight model adds.
pub const STANDARD_AIR_CARRY: &str = "carry_standard_air";

impl From<Known> for MeasureId {
    fn from(known: Known) -> Self {
        Self::Known(known)
    }
}

impl From<&str> for MeasureId {
    fn from(id: &str) -> Self {
        Known::of(id).map_or_else(|| Self::Own(id.to_owned()), Self::Known)
    }
}

impl From<String> for MeasureId {
    fn from(id: String) -> Self {
        Known::of(&id).map_or(Self::Own(id), Self::Known)
    }
}

impl From<MeasureId> for String {
    fn from(id: MeasureId) -> Self {
        match id {
            MeasureId::Known(known) => known.id().to_owned(),
            MeasureId::Own(id) => id,
        }
    }
}

impl PartialEq<Known> for MeasureId {
    fn eq(&self, other: &Known) -> bool {
        self.known() == Some(*other)
    }
}

/// In the order of their texts, whether known or not: files and objects are keyed by them.
impl Ord for MeasureId {
    fn cmp(&self, other: &Self) -> Ordering {
        self.as_str().cmp(other.as_str())
    }
}

impl PartialOrd for MeasureId {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Borrow<str> for MeasureId {
    fn borrow(&self) -> &str {
        self.as_str()
    }
}

impl std::fmt::Display for MeasureId {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.as_str())
    }
}

/// The smallest difference that matters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Margin {
    /// Of two averages, in the measure's canonical unit.
    Difference(f64),
    /// Of two scatters, as a ratio above 1.
    Ratio(f64),
}

impl Margin {
    /// The bare number, as requests and reports hold it.
    #[must_use]
    pub const fn value(self) -> f64 {
        match self {
            Self::Difference(size) | Self::Ratio(size) => size,
        }
    }
}

/// All facts of the trade's measure with this id, `None` for a column of the golfer's own.
#[must_use]
pub fn known(id: &MeasureId) -> Option<&'static Facts> {
    id.known().map(Known::facts)
}

/// The facts that hold for a measure, see [`MeasureId::usual`].
#[must_use]
pub fn usual(id: &MeasureId) -> Option<&'static Facts> {
    id.usual().map(Known::facts)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_id_of_the_trades_list_is_known_however_it_is_made() {
        for known in Known::ALL {
            assert_eq!(MeasureId::from(known.id()), MeasureId::Known(known));
            assert_eq!(MeasureId::from(known.id().to_owned()), MeasureId::Known(known));
        }
        assert_eq!(MeasureId::from("tempo").known(), None);
        assert_eq!(MeasureId::from(STANDARD_AIR_CARRY).usual(), Some(Known::Carry));
        assert_eq!(MeasureId::from(STANDARD_AIR_CARRY).known(), None);
    }

    #[test]
    fn an_id_is_written_and_read_as_a_text() {
        let ids: Vec<MeasureId> = serde_json::from_str(r#"["carry", "tempo"]"#).expect("ids");
        assert_eq!(ids, [MeasureId::Known(Known::Carry), MeasureId::Own("tempo".into())]);
        assert_eq!(serde_json::to_string(&ids).expect("JSON"), r#"["carry","tempo"]"#);
        assert!(
            MeasureId::from("apex") < MeasureId::from("b") && MeasureId::from("b") < MeasureId::from("carry")
        );
    }
}
