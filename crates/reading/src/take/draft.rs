//! The session while it is being read: builds and measures by name, shots with their lines.

use crate::hints::Hints;
use crate::lexicon::clock::Moment;
use crate::limits::MAX_NAME;
use crate::trim::{is_unseen, named};
use crate::understand::column::Column;
use session::few::Map;
use session::measure::{self, MeasureId};
use session::{Build, CustomMeasure, Session, Shot};
use std::borrow::Cow;
use std::collections::HashMap;
use std::hash::{BuildHasherDefault, DefaultHasher};
use text::Voice;

/// Room for so many values there is for every text, however short.
pub(crate) const LEAST_SLOTS: usize = 500_000;

/// Most measures of one session.
const MOST_MEASURES: usize = 200;

/// A name as it looks: without what nobody sees in it, and with single spaces.
fn as_seen(name: &str) -> Cow<'_, str> {
    let is_plain = name.bytes().all(|b| b.is_ascii_graphic() || b == b' ')
        && !name.as_bytes().windows(2).any(|two| two == b"  ");
    if is_plain && name.len() <= MAX_NAME {
        return Cow::Borrowed(name);
    }
    let kept: String =
        name.chars().filter(|c| c.is_whitespace() || !is_unseen(*c) && !c.is_control()).collect();
    Cow::Owned(named(&kept.split_whitespace().collect::<Vec<_>>().join(" ")))
}

/// A session in the making.
#[derive(Debug, Default)]
pub(crate) struct Draft {
    pub(crate) session: Session,
    /// There may be as many as rows. Looked up only, never gone through: the order is that of `session`.
    builds: HashMap<String, usize, BuildHasherDefault<DefaultHasher>>,
    measures: Map<MeasureId, usize>,
    /// Line of each shot.
    pub(crate) lines: Vec<u32>,
    /// Time of each shot; as long as the shots only when every shot so far has one.
    pub(crate) moments: Vec<Moment>,
    /// Finest step in which each measure is written, in the canonical unit.
    pub(crate) steps: Vec<f64>,
    /// Values and gaps between them so far, in all shots.
    pub(crate) slots: usize,
    most_slots: usize,
    no_room: bool,
}

impl Draft {
    /// Index of the build with this name, new ones behind the others.
    pub(crate) fn build(&mut self, name: &str, hints: &Hints) -> usize {
        let seen = as_seen(name);
        let name = hints.names.get(seen.as_ref()).map_or(seen.as_ref(), String::as_str);
        if let Some(&index) = self.builds.get(name) {
            return index;
        }
        let index = self.session.builds.len();
        self.session.builds.push(Build { name: name.to_owned() });
        self.builds.insert(name.to_owned(), index);
        index
    }

    /// Index of a build that is already there.
    pub(crate) fn known_build(&self, name: &str, hints: &Hints) -> Option<usize> {
        let seen = as_seen(name);
        let name = hints.names.get(seen.as_ref()).map_or(seen.as_ref(), String::as_str);
        self.builds.get(name).copied()
    }

    /// Makes builds one, under the name of the first of them.
    pub(crate) fn become_one(&mut self, builds: &[usize]) {
        let Some((&first, others)) = builds.split_first() else { return };
        let before = |at: usize| others.iter().filter(|&&other| other < at).count();
        let moved = |at: usize| {
            let at = if others.contains(&at) { first } else { at };
            at - before(at)
        };
        let session = &mut self.session;
        session.shots.iter_mut().for_each(|shot| shot.build = moved(shot.build));
        session.summaries.iter_mut().for_each(|summary| summary.build = moved(summary.build));
        let mut at = 0;
        session.builds.retain(|_| {
            at += 1;
            !others.contains(&(at - 1))
        });
    }

    /// Position of a column's measure; `None` when the column holds none.
    pub(crate) fn measure(&mut self, column: &Column<'_>, voice: &Voice) -> Option<usize> {
        let id = column.measure()?;
        if let Some(&index) = self.measures.get(id) {
            return Some(index);
        }
        let index = self.session.measures.len();
        if index >= MOST_MEASURES {
            self.no_room = true;
            return None;
        }
        self.session.measures.push(id.clone());
        self.measures.insert(id.clone(), index);
        self.steps.push(f64::INFINITY);
        if measure::known(id).is_none() {
            let name = if column.heading_is_build {
                text::reading::value(voice)
            } else if column.heading.is_empty() {
                text::reading::column(voice, &(column.index + 1).to_string())
            } else {
                named(&column.heading)
            };
            self.session.custom.push(CustomMeasure { id: id.clone(), name, unit: column.unit_label.clone() });
        }
        Some(index)
    }

    /// For a text of so many bytes: what is kept of it must not be far larger.
    pub(crate) fn for_text(bytes: usize) -> Self {
        Self { most_slots: (bytes / 2).max(LEAST_SLOTS), ..Self::default() }
    }

    /// Position of a column's measure for one more value; `None` also where there is no room.
    pub(crate) fn room(&mut self, column: &Column<'_>, voice: &Voice) -> Option<usize> {
        let at = self.measure(column, voice)?;
        let fits = at < 8 || self.slots + at < self.most_slots;
        self.no_room |= !fits;
        fits.then_some(at)
    }

    /// Sets aside the measures with the fewest values while the session would be far larger than
    /// its text: a wide table with hardly a filled cell. Gives back whether anything is missing.
    pub(crate) fn drop_sparse(&mut self) -> bool {
        let most = (self.most_slots / self.session.shots.len().max(1)).max(8);
        let width = self.session.measures.len();
        if width <= most {
            return self.no_room;
        }
        let mut filled = vec![0_usize; width];
        for shot in &self.session.shots {
            for (count, value) in filled.iter_mut().zip(&shot.values) {
                *count += usize::from(value.is_some());
            }
        }
        let mut order = arrange::positions(width, &|a, b| filled[b].cmp(&filled[a]));
        order.truncate(most);
        arrange::sort(&mut order);
        for shot in &mut self.session.shots {
            shot.values = order.iter().map(|&at| shot.values.get(at).copied().flatten()).collect();
        }
        let keep = |at: &usize| self.session.measures.get(*at).cloned();
        let kept: Vec<MeasureId> = order.iter().filter_map(keep).collect();
        self.session.custom.retain(|c| kept.contains(&c.id));
        for summary in &mut self.session.summaries {
            summary.values.retain(|id, _| kept.contains(id));
        }
        self.session.measures = kept;
        true
    }

    pub(crate) fn push(&mut self, shot: Shot, line: u32, moment: Option<Moment>) {
        if let Some(moment) = moment.filter(|_| self.moments.len() == self.lines.len()) {
            self.moments.push(moment);
        }
        self.lines.push(line);
        self.session.shots.push(shot);
    }

    /// Notes the finest step of a measure.
    pub(crate) fn note_step(&mut self, measure: usize, step: f64) {
        if let Some(finest) = self.steps.get_mut(measure) {
            *finest = finest.min(step);
        }
    }

    /// The session, with every shot as wide as the list of measures.
    pub(crate) fn into_session(mut self) -> Session {
        let width = self.session.measures.len();
        for shot in &mut self.session.shots {
            shot.values.resize(width, None);
        }
        self.session
    }
}
