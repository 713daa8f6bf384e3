//! The two builds between which a gap is split, on any measure.

use super::part::{LEVEL, Span};
use crate::analysis::{Aspect, Include, ShotTable, compare};
use session::Session;
use session::known::Known;
use session::measure::MeasureId;

/// The two builds, with the session's shots laid out once for all measures.
pub(super) struct Two<'a> {
    table: ShotTable<'a>,
    pub(super) baseline: usize,
    pub(super) candidate: usize,
}

impl<'a> Two<'a> {
    pub(super) fn of(session: &'a Session, baseline: usize, candidate: usize) -> Self {
        Self { table: ShotTable::new(session), baseline, candidate }
    }

    /// Candidate − baseline on one measure as the answer would give it, without the order allowance.
    pub(super) fn difference(&self, known: Known) -> Option<Span> {
        let measure = MeasureId::from(known);
        let measured = self.table.measured(&measure, Include::All);
        let pair = compare(&measured, self.baseline, self.candidate, Aspect::Average);
        let comparison = pair.comparison.ok()?;
        let interval = comparison.interval(LEVEL);
        let allowed = comparison.allowance();
        Some(Span { value: comparison.value(), low: interval.low + allowed, high: interval.high - allowed })
    }

    /// Average over the shots of both builds; `None` where not both have it.
    pub(super) fn average(&self, known: Known) -> Option<f64> {
        let index = self.table.session().measure_index(&known.into())?;
        let of = |build: usize| {
            let values = self.table.values(build, index, Include::All);
            (!values.is_empty()).then(|| stats::describe::mean(&values))
        };
        Some(0.5 * (of(self.baseline)? + of(self.candidate)?))
    }

    /// Whether the session has the measure at all.
    pub(super) fn has(&self, known: Known) -> bool {
        self.table.session().measure_index(&known.into()).is_some()
    }
}
