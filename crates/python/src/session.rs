//! A session as it was read, and its answer.

use crate::refused::unread;
use crate::said::{json, taken, voice};
use ::session::measure::MeasureId;
use ::session::question::{Goal, Stopping};
use files::{Asking, SessionRead, answer, read_bytes, session_of};
use pyo3::prelude::*;
use serde::{Deserialize, Serialize};

/// A text, or the bytes of a file.
#[derive(FromPyObject)]
pub(crate) enum Source {
    #[pyo3(transparent)]
    Text(String),
    #[pyo3(transparent)]
    Bytes(Vec<u8>),
}

/// What is said of the question, as JSON.
#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
struct Asked {
    baseline: Option<String>,
    candidate: Option<String>,
    measure: Option<MeasureId>,
    goal: Option<Goal>,
    margin: Option<f64>,
    stopping: Option<Stopping>,
}

/// A session as it was read.
#[pyclass(frozen, module = "straight_answer._native")]
pub(crate) struct Session(pub(crate) SessionRead);

/// Reads a text, or the bytes of a file.
#[pyfunction]
#[pyo3(signature = (source, place, hints=None, language="en", unit="yards"))]
pub(crate) fn read(
    py: Python<'_>,
    source: Source,
    place: &str,
    hints: Option<&str>,
    language: &str,
    unit: &str,
) -> PyResult<Session> {
    let voice = voice(language, unit)?;
    let hints = hints.map(|hints| taken(hints, "hints")).transpose()?;
    let read = py.detach(|| match source {
        Source::Text(text) => session_of(&text, place, hints.as_ref(), &voice),
        Source::Bytes(bytes) => read_bytes(bytes, place, hints.as_ref(), &voice),
    });
    read.map(Session).map_err(|why| unread(py, &why))
}

#[pymethods]
impl Session {
    /// Where it was found.
    #[getter]
    fn place(&self) -> &str {
        &self.0.place
    }

    /// The session as JSON.
    fn session(&self) -> PyResult<String> {
        json(&self.0.session)
    }

    /// What is worth knowing of the reading, as JSON: the question, problems, notices and doubts.
    fn about(&self) -> PyResult<String> {
        #[derive(Serialize)]
        struct About<'a> {
            question: &'a Option<::session::question::Question>,
            problems: &'a [reading::Problem],
            notices: &'a [reading::Notice],
            doubts: &'a [reading::Doubt],
        }
        let SessionRead { question, problems, notices, doubts, .. } = &self.0;
        json(&About { question, problems, notices, doubts })
    }

    /// The tool's own CSV.
    fn csv(&self) -> String {
        let question = self.0.question.as_ref();
        question.map_or_else(
            || reading::write_csv(&self.0.session),
            |question| reading::write_csv_asked(&self.0.session, question),
        )
    }

    /// The report as JSON.
    #[pyo3(signature = (asked, language="en", unit="yards"))]
    fn check(&self, py: Python<'_>, asked: &str, language: &str, unit: &str) -> PyResult<String> {
        let voice = voice(language, unit)?;
        let Asked { baseline, candidate, measure, goal, margin, stopping } = taken(asked, "question")?;
        let asking = Asking { baseline, candidate, measure, goal, margin, stopping };
        let report = py.detach(|| answer(&self.0, &asking, &voice)).map_err(|why| unread(py, &why))?;
        json(&report)
    }
}
