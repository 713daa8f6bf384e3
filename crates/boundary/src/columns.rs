//! Sessions whose shots cross as columns: a file of a hundred thousand rows would otherwise be as many objects.

use crate::objects::to_js;
use js_sys::{Array, Float64Array, Object, Reflect};
use reading::ReadResult;
use session::Session;
use session::columns::{Column, Columns};
use wasm_bindgen::{JsCast, JsValue};

/// Whether a host's session holds its shots as columns.
pub(crate) fn has_columns(session: &JsValue) -> bool {
    session.is_object() && Reflect::has(session, &"columns".into()).unwrap_or(false)
}

/// What was read, the shots of its session as columns.
pub(crate) fn read_to_js(mut result: ReadResult) -> Result<JsValue, JsValue> {
    let columns = Columns::of(&result.session);
    result.session.shots.clear();
    let object = to_js(&result)?;
    put(&Reflect::get(&object, &"session".into())?, &columns)?;
    Ok(object)
}

/// A session, its shots as columns.
pub(crate) fn session_to_js(mut session: Session) -> Result<JsValue, JsValue> {
    let columns = Columns::of(&session);
    session.shots.clear();
    let object = to_js(&session)?;
    put(&object, &columns)?;
    Ok(object)
}

fn put(session: &JsValue, columns: &Columns) -> Result<(), JsValue> {
    let values = Object::new();
    for (id, column) in columns.values.iter() {
        set(&values, id.as_str(), &numbers(column))?;
    }
    let object = Object::new();
    for (name, column) in [
        ("build", &columns.build),
        ("round", &columns.round),
        ("number", &columns.number),
        ("second", &columns.second),
    ] {
        set(&object, name, &numbers(column))?;
    }
    set(&object, "values", &values)?;
    set(&object, "left_out", &to_js(&columns.left_out)?)?;
    set(&object, "notes", &to_js(&columns.notes)?)?;
    set(session.unchecked_ref(), "columns", &object)
}

fn set(object: &Object, name: &str, value: &JsValue) -> Result<(), JsValue> {
    Reflect::set(object, &name.into(), value).map(|_| ())
}

fn numbers(column: &Column) -> JsValue {
    Float64Array::from(column.0.as_slice()).into()
}

/// Whether any of several sessions holds its shots as columns.
pub(crate) fn any_has_columns(sessions: &JsValue) -> bool {
    Array::is_array(sessions) && sessions.unchecked_ref::<Array>().iter().any(|session| has_columns(&session))
}
