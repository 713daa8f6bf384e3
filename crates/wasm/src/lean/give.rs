//! From a value to plain objects: records and maps become objects, sequences arrays, what is missing null.

use serde::ser::{
    Error, Impossible, Serialize, SerializeMap, SerializeSeq, SerializeStruct, SerializeStructVariant,
    SerializeTuple, Serializer,
};
use std::fmt;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_name = Object)]
    type Record;
    #[wasm_bindgen(constructor, js_class = "Object")]
    fn new() -> Record;
    #[wasm_bindgen(method, structural, indexing_setter)]
    fn set(this: &Record, key: &str, value: &JsValue);

    #[wasm_bindgen(js_name = Array)]
    type List;
    #[wasm_bindgen(constructor, js_class = "Array")]
    fn new() -> List;
    #[wasm_bindgen(method)]
    fn push(this: &List, value: &JsValue);
}

/// A value as a plain object.
pub(super) fn object<T: Serialize + ?Sized>(value: &T) -> JsValue {
    value.serialize(Give).unwrap_or_else(|never| match never {})
}

/// There is no value of it: what is given away has records, lists, texts and numbers only, and each can be written.
#[derive(Debug)]
enum Never {}

impl fmt::Display for Never {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl std::error::Error for Never {}

impl Error for Never {
    fn custom<T: fmt::Display>(_: T) -> Self {
        unreachable!("a value that cannot be written")
    }
}

type Written = Result<JsValue, Never>;

struct Give;

impl Serializer for Give {
    type Ok = JsValue;
    type Error = Never;
    type SerializeSeq = Elements;
    type SerializeTuple = Elements;
    type SerializeTupleStruct = Impossible<JsValue, Never>;
    type SerializeTupleVariant = Impossible<JsValue, Never>;
    type SerializeMap = Entries;
    type SerializeStruct = Fields;
    type SerializeStructVariant = Fields;

    fn serialize_bool(self, value: bool) -> Written {
        Ok(JsValue::from_bool(value))
    }

    fn serialize_i8(self, value: i8) -> Written {
        self.serialize_f64(value.into())
    }

    fn serialize_i16(self, value: i16) -> Written {
        self.serialize_f64(value.into())
    }

    fn serialize_i32(self, value: i32) -> Written {
        self.serialize_f64(value.into())
    }

    #[expect(clippy::cast_precision_loss, reason = "a number of the page: counts and seeds stay below 2^53")]
    fn serialize_i64(self, value: i64) -> Written {
        self.serialize_f64(value as f64)
    }

    fn serialize_u8(self, value: u8) -> Written {
        self.serialize_f64(value.into())
    }

    fn serialize_u16(self, value: u16) -> Written {
        self.serialize_f64(value.into())
    }

    fn serialize_u32(self, value: u32) -> Written {
        self.serialize_f64(value.into())
    }

    #[expect(clippy::cast_precision_loss, reason = "a number of the page: counts and seeds stay below 2^53")]
    fn serialize_u64(self, value: u64) -> Written {
        self.serialize_f64(value as f64)
    }

    fn serialize_f32(self, value: f32) -> Written {
        self.serialize_f64(value.into())
    }

    fn serialize_f64(self, value: f64) -> Written {
        Ok(JsValue::from_f64(value))
    }

    fn serialize_char(self, value: char) -> Written {
        self.serialize_str(value.encode_utf8(&mut [0; 4]))
    }

    fn serialize_str(self, value: &str) -> Written {
        Ok(JsValue::from_str(value))
    }

    fn serialize_bytes(self, value: &[u8]) -> Written {
        self.collect_seq(value)
    }

    fn serialize_none(self) -> Written {
        Ok(JsValue::NULL)
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Written {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Written {
        Ok(JsValue::NULL)
    }

    fn serialize_unit_struct(self, _: &'static str) -> Written {
        self.serialize_unit()
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Written {
        self.serialize_str(variant)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Written {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Written {
        let record = Record::new();
        record.set(variant, &object(value));
        Ok(record.into())
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Elements, Never> {
        Ok(Elements(List::new()))
    }

    fn serialize_tuple(self, _: usize) -> Result<Elements, Never> {
        self.serialize_seq(None)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Self::SerializeTupleStruct, Never> {
        unreachable!("a tuple with a name")
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeTupleVariant, Never> {
        unreachable!("a tuple with a name")
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Entries, Never> {
        Ok(Entries { record: Record::new(), key: String::new() })
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Fields, Never> {
        Ok(Fields { record: Record::new(), variant: None })
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<Fields, Never> {
        Ok(Fields { record: Record::new(), variant: Some(variant) })
    }
}

struct Elements(List);

impl SerializeSeq for Elements {
    type Ok = JsValue;
    type Error = Never;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        self.0.push(&object(value));
        Ok(())
    }

    fn end(self) -> Written {
        Ok(self.0.into())
    }
}

impl SerializeTuple for Elements {
    type Ok = JsValue;
    type Error = Never;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        SerializeSeq::serialize_element(self, value)
    }

    fn end(self) -> Written {
        SerializeSeq::end(self)
    }
}

struct Entries {
    record: Record,
    /// Of the value that comes next.
    key: String,
}

impl SerializeMap for Entries {
    type Ok = JsValue;
    type Error = Never;

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), Never> {
        self.key = object(key).as_string().unwrap_or_default();
        Ok(())
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        self.record.set(&self.key, &object(value));
        Ok(())
    }

    fn end(self) -> Written {
        Ok(self.record.into())
    }
}

struct Fields {
    record: Record,
    /// Of an enum: the record stands under its name.
    variant: Option<&'static str>,
}

impl Fields {
    fn finish(self) -> JsValue {
        let Some(variant) = self.variant else { return self.record.into() };
        let outer = Record::new();
        outer.set(variant, &self.record);
        outer.into()
    }
}

impl SerializeStruct for Fields {
    type Ok = JsValue;
    type Error = Never;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, key: &'static str, value: &T) -> Result<(), Never> {
        self.record.set(key, &object(value));
        Ok(())
    }

    fn end(self) -> Written {
        Ok(self.finish())
    }
}

impl SerializeStructVariant for Fields {
    type Ok = JsValue;
    type Error = Never;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, key: &'static str, value: &T) -> Result<(), Never> {
        SerializeStruct::serialize_field(self, key, value)
    }

    fn end(self) -> Written {
        Ok(self.finish())
    }
}
