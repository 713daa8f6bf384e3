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

#[cfg(test)]
mod tests {
    use super::*;
    use session::{Build, Order, Shot};

    /// The same numbers as carry, which has an allowance for order, and as a smash factor, whose own is another.
    #[test]
    fn a_difference_is_told_without_the_allowance_for_order() {
        let span = |order: Order, known: Known| {
            let shot = |at: usize| {
                let value = 1.4 + 0.05 * (at / 12) as f64 + 0.01 * ((at * 7) % 12) as f64;
                Shot { build: at / 12, values: vec![Some(value)], ..Shot::default() }
            };
            let session = Session {
                builds: ["Own", "B"].map(|name| Build { name: name.into() }).into(),
                measures: vec![known.into()],
                shots: (0..24).map(shot).collect(),
                order,
                ..Session::default()
            };
            Two::of(&session, 0, 1).difference(known).expect("a difference")
        };
        let [carry, smash] = [Known::Carry, Known::Smash].map(|known| span(Order::Blocked, known));
        let same = |a: f64, b: f64| assert!((a - b).abs() < 1e-9, "{a} {b}");
        same(carry.value, 0.05);
        same(carry.low, smash.low);
        same(carry.high, smash.high);
        assert!(carry.high - carry.low < 0.1, "{carry:?}");
    }
}
