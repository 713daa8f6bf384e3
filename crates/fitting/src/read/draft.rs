//! The session while it is being read: builds and measures by name, shots with their lines.

use super::clock::Moment;
use super::columns::Column;
use super::hints::Hints;
use crate::measure::{self, MeasureId};
use crate::session::{Build, CustomMeasure, Session, Shot};
use std::collections::BTreeMap;

/// A session in the making.
#[derive(Debug, Default)]
pub(super) struct Draft {
    pub(super) session: Session,
    builds: BTreeMap<String, usize>,
    measures: BTreeMap<MeasureId, usize>,
    /// Line of each shot.
    pub(super) lines: Vec<u32>,
    /// Time of each shot; as long as the shots only when every shot so far has one.
    pub(super) moments: Vec<Moment>,
    /// Finest step in which each measure is written, in the canonical unit.
    pub(super) steps: Vec<f64>,
}

impl Draft {
    /// Index of the build with this name, new ones behind the others.
    pub(super) fn build(&mut self, name: &str, hints: &Hints) -> usize {
        let name = hints.names.get(name).map_or(name, String::as_str);
        if let Some(&index) = self.builds.get(name) {
            return index;
        }
        let index = self.session.builds.len();
        self.session.builds.push(Build { name: name.to_owned() });
        self.builds.insert(name.to_owned(), index);
        index
    }

    /// Index of a build that is already there.
    pub(super) fn known_build(&self, name: &str, hints: &Hints) -> Option<usize> {
        let name = hints.names.get(name).map_or(name, String::as_str);
        self.builds.get(name).copied()
    }

    /// Position of a column's measure; `None` when the column holds none.
    pub(super) fn measure(&mut self, column: &Column<'_>) -> Option<usize> {
        let id = column.measure()?;
        if let Some(&index) = self.measures.get(id) {
            return Some(index);
        }
        let index = self.session.measures.len();
        self.session.measures.push(id.clone());
        self.measures.insert(id.clone(), index);
        self.steps.push(f64::INFINITY);
        if measure::known(id).is_none() {
            let name = if column.heading.is_empty() {
                format!("Column {}", column.index + 1)
            } else {
                column.heading.clone()
            };
            self.session.custom.push(CustomMeasure { id: id.clone(), name, unit: column.unit_label.clone() });
        }
        Some(index)
    }

    pub(super) fn push(&mut self, shot: Shot, line: u32, moment: Option<Moment>) {
        if let Some(moment) = moment.filter(|_| self.moments.len() == self.lines.len()) {
            self.moments.push(moment);
        }
        self.lines.push(line);
        self.session.shots.push(shot);
    }

    /// Notes the finest step of a measure.
    pub(super) fn note_step(&mut self, measure: usize, step: f64) {
        if let Some(finest) = self.steps.get_mut(measure) {
            *finest = finest.min(step);
        }
    }
}
