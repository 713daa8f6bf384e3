//! Maps keyed by column position or line, as they come from a browser.
//!
//! A plain object's keys are always text, so a position arrives as "3" there and as 3 from a
//! typed map. Both are taken; anything else is refused with what was found.

use serde::de::{Error, MapAccess, Visitor};
use serde::{Deserialize, Deserializer};
use session::few::Map;
use std::fmt;
use std::marker::PhantomData;

/// Reads a map whose keys are column positions or lines, written as numbers or as text.
///
/// # Errors
/// When a key is no position or a value is not of its type.
pub(crate) fn keyed<'de, D, K, V>(deserializer: D) -> Result<Map<K, V>, D::Error>
where
    D: Deserializer<'de>,
    K: TryFrom<usize> + Ord,
    V: Deserialize<'de>,
{
    deserializer.deserialize_map(Keyed(PhantomData))
}

struct Keyed<K, V>(PhantomData<(K, V)>);

impl<'de, K: TryFrom<usize> + Ord, V: Deserialize<'de>> Visitor<'de> for Keyed<K, V> {
    type Value = Map<K, V>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a map keyed by column position, from 0")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
        let mut read = Map::default();
        while let Some((Position(at), value)) = map.next_entry()? {
            let at = K::try_from(at).map_err(|_| A::Error::custom("a position or line is too large"))?;
            read.insert(at, value);
        }
        Ok(read)
    }
}

#[derive(Debug)]
struct Position(usize);

impl<'de> Deserialize<'de> for Position {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(PositionVisitor)
    }
}

struct PositionVisitor;

impl Visitor<'_> for PositionVisitor {
    type Value = Position;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a column position, from 0")
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Position, E> {
        text.parse().map(Position).map_err(|_| E::invalid_value(serde::de::Unexpected::Str(text), &self))
    }

    fn visit_u64<E: Error>(self, at: u64) -> Result<Position, E> {
        usize::try_from(at)
            .map(Position)
            .map_err(|_| E::invalid_value(serde::de::Unexpected::Unsigned(at), &self))
    }

    fn visit_i64<E: Error>(self, at: i64) -> Result<Position, E> {
        usize::try_from(at)
            .map(Position)
            .map_err(|_| E::invalid_value(serde::de::Unexpected::Signed(at), &self))
    }
}

#[cfg(test)]
mod tests {
    use crate::{Hints, Role};
    use session::measure::MeasureId;

    #[test]
    fn a_position_may_be_written_as_text() {
        let hints: Hints = serde_json::from_str(
            r#"{"columns": {"0": "build", "2": {"measure": "carry"}}, "units": {"2": "m"}}"#,
        )
        .expect("plain-object keys are text");
        assert_eq!(hints.columns.get(&0), Some(&Role::Build));
        assert_eq!(hints.columns.get(&2), Some(&Role::Measure(MeasureId::from("carry"))));
        assert_eq!(hints.units.get(&2).map(String::as_str), Some("m"));
    }

    #[test]
    fn a_key_that_is_no_position_is_refused_by_name() {
        let refused = serde_json::from_str::<Hints>(r#"{"columns": {"carry": "build"}}"#);
        let said = refused.expect_err("a heading is no position").to_string();
        assert!(said.contains("carry") && said.contains("position"), "{said}");
    }
}
