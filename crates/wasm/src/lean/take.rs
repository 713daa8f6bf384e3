//! From plain objects to a value of a type: a field that is missing or undefined is missing, null is none.

use serde::de::value::{BorrowedStrDeserializer, StringDeserializer};
use serde::de::{
    DeserializeOwned, DeserializeSeed, Deserializer, Error, IntoDeserializer, MapAccess, SeqAccess, Visitor,
};
use std::fmt;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_name = Object)]
    type Record;
    #[wasm_bindgen(static_method_of = Record, js_class = "Object")]
    fn keys(of: &JsValue) -> Vec<String>;
    #[wasm_bindgen(method, structural, indexing_getter)]
    fn get(this: &Record, key: &str) -> JsValue;

    #[wasm_bindgen(js_name = Array)]
    type List;
    #[wasm_bindgen(static_method_of = List, js_class = "Array", js_name = isArray)]
    fn is_list(value: &JsValue) -> bool;
    #[wasm_bindgen(method, getter)]
    fn length(this: &List) -> u32;
    #[wasm_bindgen(method, structural, indexing_getter)]
    fn get(this: &List, at: u32) -> JsValue;
}

/// A value of its type.
pub(super) fn understood<T: DeserializeOwned>(value: JsValue) -> Result<T, NotUnderstood> {
    T::deserialize(Take(value))
}

/// That something is not of its type, without words for what.
#[derive(Debug)]
pub(super) struct NotUnderstood;

impl fmt::Display for NotUnderstood {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not of its type")
    }
}

impl std::error::Error for NotUnderstood {}

impl Error for NotUnderstood {
    fn custom<T: fmt::Display>(_: T) -> Self {
        Self
    }

    fn invalid_type(_: serde::de::Unexpected<'_>, _: &dyn serde::de::Expected) -> Self {
        Self
    }

    fn invalid_value(_: serde::de::Unexpected<'_>, _: &dyn serde::de::Expected) -> Self {
        Self
    }

    fn invalid_length(_: usize, _: &dyn serde::de::Expected) -> Self {
        Self
    }

    fn unknown_variant(_: &str, _: &'static [&'static str]) -> Self {
        Self
    }

    fn unknown_field(_: &str, _: &'static [&'static str]) -> Self {
        Self
    }

    fn missing_field(_: &'static str) -> Self {
        Self
    }

    fn duplicate_field(_: &'static str) -> Self {
        Self
    }
}

struct Take(JsValue);

impl Take {
    fn number(&self) -> Result<f64, NotUnderstood> {
        self.0.as_f64().ok_or(NotUnderstood)
    }

    fn text(&self) -> Result<String, NotUnderstood> {
        self.0.as_string().ok_or(NotUnderstood)
    }

    /// A whole number, as far as the page's numbers are exact.
    fn whole(&self) -> Result<i64, NotUnderstood> {
        const EXACT: f64 = 9_007_199_254_740_992.0;
        let number = self.number()?;
        let whole = number.trunc();
        #[expect(clippy::cast_possible_truncation, reason = "whole and within 2^53")]
        let value = whole as i64;
        if whole.total_cmp(&number).is_eq() && number.abs() <= EXACT { Ok(value) } else { Err(NotUnderstood) }
    }

    fn record(self) -> Result<Record, NotUnderstood> {
        if self.0.is_object() { Ok(self.0.unchecked_into()) } else { Err(NotUnderstood) }
    }

    fn list(self) -> Result<Elements, NotUnderstood> {
        if !List::is_list(&self.0) {
            return Err(NotUnderstood);
        }
        let list: List = self.0.unchecked_into();
        Ok(Elements { length: list.length(), list, next: 0 })
    }

    fn entries(self) -> Result<Entries, NotUnderstood> {
        let record = self.record()?;
        Ok(Entries { keys: Record::keys(&record).into_iter(), record, value: JsValue::UNDEFINED })
    }
}

/// Numbers of each size, refused when they are not whole or do not fit.
macro_rules! whole_numbers {
    ($($name:ident $visit:ident $type:ty,)*) => {
        $(fn $name<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
            visitor.$visit(<$type>::try_from(self.whole()?).map_err(|_| NotUnderstood)?)
        })*
    };
}

impl<'de> Deserializer<'de> for Take {
    type Error = NotUnderstood;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        if let Ok(number) = self.whole() {
            visitor.visit_i64(number)
        } else if let Ok(text) = self.text() {
            visitor.visit_str(&text)
        } else if List::is_list(&self.0) {
            visitor.visit_seq(self.list()?)
        } else {
            visitor.visit_map(self.entries()?)
        }
    }

    whole_numbers! {
        deserialize_i8 visit_i8 i8,
        deserialize_i16 visit_i16 i16,
        deserialize_i32 visit_i32 i32,
        deserialize_i64 visit_i64 i64,
        deserialize_u8 visit_u8 u8,
        deserialize_u16 visit_u16 u16,
        deserialize_u32 visit_u32 u32,
        deserialize_u64 visit_u64 u64,
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_bool(self.0.as_bool().ok_or(NotUnderstood)?)
    }

    fn deserialize_f32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        self.deserialize_f64(visitor)
    }

    fn deserialize_f64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_f64(self.number()?)
    }

    fn deserialize_char<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        self.deserialize_str(visitor)
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        self.deserialize_string(visitor)
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_string(self.text()?)
    }

    fn deserialize_bytes<V: Visitor<'de>>(self, _: V) -> Result<V::Value, NotUnderstood> {
        Err(NotUnderstood)
    }

    fn deserialize_byte_buf<V: Visitor<'de>>(self, _: V) -> Result<V::Value, NotUnderstood> {
        Err(NotUnderstood)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        if self.0.is_null() || self.0.is_undefined() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_unit<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_unit()
    }

    fn deserialize_unit_struct<V: Visitor<'de>>(
        self,
        _: &str,
        visitor: V,
    ) -> Result<V::Value, NotUnderstood> {
        visitor.visit_unit()
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &str,
        visitor: V,
    ) -> Result<V::Value, NotUnderstood> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_seq(self.list()?)
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, NotUnderstood> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_tuple_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: usize,
        visitor: V,
    ) -> Result<V::Value, NotUnderstood> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_map(self.entries()?)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, NotUnderstood> {
        visitor.visit_map(Fields { record: self.record()?, names: fields.iter(), value: JsValue::UNDEFINED })
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, NotUnderstood> {
        let name: StringDeserializer<NotUnderstood> = self.text()?.into_deserializer();
        visitor.visit_enum(name)
    }

    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        self.deserialize_string(visitor)
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, NotUnderstood> {
        visitor.visit_unit()
    }
}

struct Elements {
    list: List,
    length: u32,
    next: u32,
}

impl<'de> SeqAccess<'de> for Elements {
    type Error = NotUnderstood;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, NotUnderstood> {
        if self.next == self.length {
            return Ok(None);
        }
        let element = self.list.get(self.next);
        self.next += 1;
        seed.deserialize(Take(element)).map(Some)
    }
}

/// The entries of an object whose keys are not known beforehand.
struct Entries {
    record: Record,
    keys: std::vec::IntoIter<String>,
    value: JsValue,
}

impl<'de> MapAccess<'de> for Entries {
    type Error = NotUnderstood;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, NotUnderstood> {
        let Some(key) = self.keys.next() else { return Ok(None) };
        self.value = self.record.get(&key);
        seed.deserialize(key.into_deserializer()).map(Some)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, NotUnderstood> {
        seed.deserialize(Take(std::mem::take(&mut self.value)))
    }
}

/// The fields of a record that are there.
struct Fields {
    record: Record,
    names: std::slice::Iter<'static, &'static str>,
    value: JsValue,
}

impl<'de> MapAccess<'de> for Fields {
    type Error = NotUnderstood;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, NotUnderstood> {
        for name in self.names.by_ref() {
            self.value = self.record.get(name);
            if !self.value.is_undefined() {
                return seed.deserialize(BorrowedStrDeserializer::new(name)).map(Some);
            }
        }
        Ok(None)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, NotUnderstood> {
        seed.deserialize(Take(std::mem::take(&mut self.value)))
    }
}
