//! A plain value: what objects and JSON are made of.

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use std::fmt;

/// A plain value.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum Value {
    /// Nothing, or not there.
    #[default]
    Null,
    /// Yes or no.
    Bool(bool),
    /// A number; may be none.
    Number(f64),
    /// A text.
    Text(String),
    /// Values in a row.
    List(Vec<Value>),
    /// Numbers in a row, handed over whole; one that is no number stands for nothing.
    Numbers(Vec<f64>),
    /// Values by name, in the order they came.
    Object(Vec<(String, Value)>),
}

struct AnyValue;

impl<'de> Visitor<'de> for AnyValue {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a plain value")
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_none<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_some<D: Deserializer<'de>>(self, inner: D) -> Result<Value, D::Error> {
        Value::deserialize(inner)
    }

    fn visit_bool<E>(self, yes: bool) -> Result<Value, E> {
        Ok(Value::Bool(yes))
    }

    // Requests hold counts, indices and sizes: none needs more than the 53 bits that a page's numbers have.
    fn visit_i64<E>(self, number: i64) -> Result<Value, E> {
        Ok(Value::Number(number as f64))
    }

    fn visit_u64<E>(self, number: u64) -> Result<Value, E> {
        Ok(Value::Number(number as f64))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Value, E> {
        Ok(Value::Number(number))
    }

    fn visit_str<E>(self, text: &str) -> Result<Value, E> {
        Ok(Value::Text(text.to_owned()))
    }

    fn visit_string<E>(self, text: String) -> Result<Value, E> {
        Ok(Value::Text(text))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(Value::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut fields: A) -> Result<Value, A::Error> {
        let mut object = Vec::new();
        while let Some(field) = fields.next_entry()? {
            object.push(field);
        }
        Ok(Value::Object(object))
    }
}

impl<'de> Deserialize<'de> for Value {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(AnyValue)
    }
}
