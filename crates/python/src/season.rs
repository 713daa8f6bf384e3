//! A pile of sessions: filled here or in other processes, put together in any order and any number of times.

use crate::refused::refusal;
use crate::said::{json, taken, voice};
use crate::session::Session;
use files::{AboutSeason, Claims, walk};
use judging::many::{ManyQuestion, RoleOfName};
use pyo3::exceptions::PyRuntimeError;
use pyo3::prelude::*;
use reading::Hints;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::num::NonZero;
use std::path::PathBuf;
use std::sync::{Mutex, MutexGuard};

/// What is known of all sessions together, as JSON.
#[derive(Clone, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
struct About {
    names: BTreeMap<String, RoleOfName>,
    claims: BTreeMap<String, f64>,
    hints: Option<Hints>,
}

/// A pile with what is known of all of it, as it crosses.
#[derive(Serialize, Deserialize)]
struct Packed<S, A> {
    season: S,
    about: A,
}

/// A pile of sessions.
#[pyclass(frozen, module = "straight_answer._native")]
pub(crate) struct Season {
    season: Mutex<files::Season>,
    about: About,
    known: AboutSeason,
}

impl Season {
    fn of(season: files::Season, about: About) -> Self {
        let known = AboutSeason {
            names: about.names.clone().into(),
            claims: Claims::from(about.claims.clone()),
            hints: about.hints.clone(),
        };
        Self { season: Mutex::new(season), about, known }
    }

    fn season(&self) -> PyResult<MutexGuard<'_, files::Season>> {
        let failed = || PyRuntimeError::new_err("another thread failed in the middle of this season");
        self.season.lock().map_err(|_| failed())
    }
}

#[pymethods]
impl Season {
    #[new]
    fn new(py: Python<'_>, question: &str, about: &str) -> PyResult<Self> {
        let question: ManyQuestion = taken(question, "question")?;
        let season = files::Season::new(question, &voice("en", "yards")?).map_err(|why| refusal(py, &why))?;
        Ok(Self::of(season, taken(about, "about")?))
    }

    /// From what `packed` gave.
    #[staticmethod]
    fn unpacked(packed: &str) -> PyResult<Self> {
        let Packed { season, about } = taken(packed, "season")?;
        Ok(Self::of(season, about))
    }

    /// The whole of it as a text, for another process.
    fn packed(&self, py: Python<'_>) -> PyResult<String> {
        py.detach(|| json(&Packed { season: &*self.season()?, about: &self.about }))
    }

    /// Judges a session that was read.
    #[pyo3(signature = (session, claimed=None))]
    fn take(&self, py: Python<'_>, session: &Session, claimed: Option<f64>) -> PyResult<()> {
        let voice = voice("en", "yards")?;
        py.detach(|| {
            let mut season = self.season()?;
            match claimed {
                Some(claimed) => season.take_promised(&session.0, &self.known, claimed, &voice),
                None => season.take(Ok(session.0.clone()), &self.known, &voice),
            }
            Ok(())
        })
    }

    /// Keeps that something was not read.
    fn take_unread(&self, place: &str, kind: &str, message: &str, remedy: &str) -> PyResult<()> {
        let unread = files::Unread::new(place, kind, message.to_owned(), remedy.to_owned());
        self.season()?.take_unread(vec![unread]);
        Ok(())
    }

    /// Reads and judges files and folders, on so many threads.
    #[pyo3(signature = (paths, threads=None))]
    fn take_paths(
        &self,
        py: Python<'_>,
        paths: Vec<PathBuf>,
        threads: Option<NonZero<usize>>,
    ) -> PyResult<()> {
        let voice = voice("en", "yards")?;
        py.detach(|| {
            let (files, unread) = walk(&paths, &voice);
            let mut season = self.season()?;
            season.take_unread(unread);
            season.take_files(&files, &self.known, threads, &voice, &|_| {});
            Ok(())
        })
    }

    /// Puts another one in; twice is the same as once.
    fn merge(&self, py: Python<'_>, other: &Self) -> PyResult<()> {
        let voice = voice("en", "yards")?;
        // One lock at a time: a season may be put into itself.
        let merged = py.detach(|| {
            let other = other.season()?.clone();
            Ok::<_, PyErr>(self.season()?.merge(other, &voice))
        })?;
        merged.map_err(|why| refusal(py, &why))
    }

    /// The answer as JSON.
    #[pyo3(signature = (language="en", unit="yards"))]
    fn answer(&self, py: Python<'_>, language: &str, unit: &str) -> PyResult<String> {
        let voice = voice(language, unit)?;
        py.detach(|| json(&self.season()?.answer(&voice)))
    }

    fn __len__(&self) -> PyResult<usize> {
        Ok(self.season()?.len())
    }
}
