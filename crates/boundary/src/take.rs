//! Whatever a host hands over, as a plain value.

use js_sys::{Array, Float64Array, Object};
use request::Value;
use wasm_bindgen::{JsCast, JsValue};

/// Objects within objects beyond this are no request; a host's object may hold itself.
const DEEPEST: usize = 64;

/// An object of the host as a plain value. What no request can hold, such as a function, is nothing.
pub(crate) fn taken(value: &JsValue) -> Value {
    within(value, DEEPEST)
}

fn within(value: &JsValue, depth: usize) -> Value {
    if let Some(number) = value.as_f64() {
        return Value::Number(number);
    }
    if let Some(text) = value.as_string() {
        return Value::Text(text);
    }
    if let Some(yes) = value.as_bool() {
        return Value::Bool(yes);
    }
    if depth == 0 || value.is_function() {
        return Value::Null;
    }
    if let Some(numbers) = value.dyn_ref::<Float64Array>() {
        return Value::Numbers(numbers.to_vec());
    }
    if Array::is_array(value) {
        let items: &Array = value.unchecked_ref();
        return Value::List(items.iter().map(|item| within(&item, depth - 1)).collect());
    }
    match value.dyn_ref::<Object>() {
        Some(object) => Value::Object(fields(object, depth - 1)),
        None => Value::Null,
    }
}

/// The fields of an object; one without a value is as if it were not there.
fn fields(object: &Object, depth: usize) -> Vec<(String, Value)> {
    let entries = Object::entries(object);
    let mut fields = Vec::with_capacity(entries.length() as usize);
    for entry in entries.iter() {
        let entry: &Array = entry.unchecked_ref();
        let (name, value) = (entry.get(0), entry.get(1));
        if let Some(name) = name.as_string().filter(|_| !value.is_undefined()) {
            fields.push((name, within(&value, depth)));
        }
    }
    fields
}
