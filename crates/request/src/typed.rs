//! A plain value handed to whatever type is asked for, the path kept for who has to be told where it failed.

use crate::value::Value;
use crate::wrong::{Step, What, Wrong};
use serde::de::value::StrDeserializer;
use serde::de::{
    DeserializeSeed, Deserializer, EnumAccess, Error, IntoDeserializer, MapAccess, SeqAccess, Unexpected,
    VariantAccess, Visitor,
};
use serde::forward_to_deserialize_any;

/// Whole numbers up to here are exact as doubles.
const MOST_EXACT: f64 = 9_007_199_254_740_992.0;

/// A value as a source of whatever type is asked for.
#[derive(Clone, Copy)]
pub(crate) struct Typed<'de>(pub(crate) &'de Value);

impl<'de> Deserializer<'de> for Typed<'de> {
    type Error = Wrong;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.0 {
            Value::Null => visitor.visit_unit(),
            Value::Bool(yes) => visitor.visit_bool(*yes),
            Value::Number(number) => visit_number(*number, visitor),
            Value::Text(text) => visitor.visit_borrowed_str(text),
            Value::List(items) => visitor.visit_seq(Items { items: items.iter().enumerate() }),
            Value::Numbers(numbers) => visitor.visit_seq(Row { numbers: numbers.iter().enumerate() }),
            Value::Object(fields) => visitor.visit_map(Fields { fields: fields.iter(), open: None }),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.0 {
            Value::Null => visitor.visit_none(),
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Wrong> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Wrong> {
        match self.0 {
            Value::Text(word) => visitor.visit_enum(Variant { word, holds: &Value::Null }),
            Value::Object(fields) => match fields.as_slice() {
                [(word, holds)] => visitor.visit_enum(Variant { word, holds }),
                _ => Err(Wrong::invalid_type(
                    Unexpected::Map,
                    &"one word, or one word with what belongs to it",
                )),
            },
            _ => Err(Wrong::invalid_type(Unexpected::Other("no word"), &"a string")),
        }
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        visitor.visit_unit()
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit unit_struct seq tuple
        tuple_struct map struct identifier
    }
}

/// Whole numbers as such, so that counts and indices take them; what is no number is refused wherever it stands.
fn visit_number<'de, V: Visitor<'de>>(number: f64, visitor: V) -> Result<V::Value, Wrong> {
    if !number.is_finite() {
        return Err(Wrong::here(What::NotFinite));
    }
    let is_whole = number.trunc().to_bits() == number.to_bits() && number.abs() <= MOST_EXACT;
    if !is_whole || number.is_sign_negative() && number.abs() < 1.0 {
        return visitor.visit_f64(number);
    }
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole, and within what both hold exactly"
    )]
    if number < 0.0 { visitor.visit_i64(number as i64) } else { visitor.visit_u64(number as u64) }
}

struct Items<'de> {
    items: std::iter::Enumerate<std::slice::Iter<'de, Value>>,
}

impl<'de> SeqAccess<'de> for Items<'de> {
    type Error = Wrong;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Wrong> {
        let Some((at, item)) = self.items.next() else { return Ok(None) };
        seed.deserialize(Typed(item)).map(Some).map_err(|wrong| wrong.below(Step::Item(at)))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.items.len())
    }
}

/// Numbers that came as one.
struct Row<'de> {
    numbers: std::iter::Enumerate<std::slice::Iter<'de, f64>>,
}

impl<'de> SeqAccess<'de> for Row<'de> {
    type Error = Wrong;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Wrong> {
        let Some((at, number)) = self.numbers.next() else { return Ok(None) };
        seed.deserialize(OfRow(*number)).map(Some).map_err(|wrong| wrong.below(Step::Item(at)))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.numbers.len())
    }
}

/// A number of a row, or nothing.
struct OfRow(f64);

impl<'de> Deserializer<'de> for OfRow {
    type Error = Wrong;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        if self.0.is_nan() { visitor.visit_unit() } else { visit_number(self.0, visitor) }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        if self.0.is_nan() { visitor.visit_none() } else { visitor.visit_some(self) }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit unit_struct newtype_struct
        seq tuple tuple_struct map struct enum identifier ignored_any
    }
}

struct Fields<'de> {
    fields: std::slice::Iter<'de, (String, Value)>,
    open: Option<&'de (String, Value)>,
}

impl<'de> MapAccess<'de> for Fields<'de> {
    type Error = Wrong;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Wrong> {
        self.open = self.fields.next();
        let Some((name, _)) = self.open else { return Ok(None) };
        let key: StrDeserializer<'_, Wrong> = name.as_str().into_deserializer();
        seed.deserialize(key).map(Some).map_err(|wrong| wrong.below(Step::Field(name.clone())))
    }

    fn next_value_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<T::Value, Wrong> {
        let Some((name, value)) = self.open.take() else {
            return Err(Wrong::custom("a value without a name"));
        };
        seed.deserialize(Typed(value)).map_err(|wrong| wrong.below(Step::Field(name.clone())))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.fields.len())
    }
}

struct Variant<'de> {
    word: &'de str,
    holds: &'de Value,
}

impl<'de> EnumAccess<'de> for Variant<'de> {
    type Error = Wrong;
    type Variant = Self;

    fn variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<(T::Value, Self), Wrong> {
        let word: StrDeserializer<'_, Wrong> = self.word.into_deserializer();
        Ok((seed.deserialize(word)?, self))
    }
}

impl<'de> VariantAccess<'de> for Variant<'de> {
    type Error = Wrong;

    fn unit_variant(self) -> Result<(), Wrong> {
        match self.holds {
            Value::Null => Ok(()),
            _ => {
                Err(Wrong::invalid_type(Unexpected::Map, &"a string")
                    .below(Step::Field(self.word.to_owned())))
            }
        }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Wrong> {
        seed.deserialize(Typed(self.holds)).map_err(|wrong| wrong.below(Step::Field(self.word.to_owned())))
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Wrong> {
        Typed(self.holds)
            .deserialize_any(visitor)
            .map_err(|wrong| wrong.below(Step::Field(self.word.to_owned())))
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Wrong> {
        self.tuple_variant(0, visitor)
    }
}
