//! Refusals as exceptions of Python, with kind, place, message and remedy.

use ::session::refusal::Refusal;
use files::Unread;
use pyo3::prelude::*;

/// What was not read or cannot be asked, as `straight_answer.Refused`.
pub(crate) fn unread(py: Python<'_>, unread: &Unread) -> PyErr {
    let Unread { kind, place, message, remedy } = unread;
    raised(py, [kind, place, message, remedy])
}

/// A refusal, with the place in the request.
pub(crate) fn refusal(py: Python<'_>, refusal: &Refusal) -> PyErr {
    let Refusal { kind, place, message, remedy } = refusal;
    raised(py, [kind, place, message, remedy])
}

/// The exception itself is a class of Python, so that it goes from process to process.
fn raised(py: Python<'_>, [kind, place, message, remedy]: [&String; 4]) -> PyErr {
    let made = || {
        let class = py.import("straight_answer._refused")?.getattr("Refused")?;
        class.call1((kind, place, message, remedy))
    };
    made().map_or_else(|error| error, PyErr::from_value)
}
