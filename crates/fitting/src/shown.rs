//! In which units distances and speeds are shown; inside and in every number of a report they stay canonical.
//!
//! Like the language, it is set once before the first call and holds for everything said after it on this thread.

use crate::measure::Unit;
use crate::units::{KM_PER_MILE, M_PER_YD};
use std::cell::Cell;

thread_local! {
    static METRIC: Cell<bool> = const { Cell::new(false) };
}

/// Shows meters and kilometers an hour from here on, or yards and miles an hour again.
pub fn show_metric(metric: bool) {
    METRIC.set(metric);
}

impl Unit {
    /// As it is shown: the label, and what one canonical unit is in it. Exact factors, as in [`crate::units`].
    #[must_use]
    pub fn shown(self) -> (&'static str, f64) {
        match (self, METRIC.get()) {
            (Self::Yd, true) => ("m", M_PER_YD),
            (Self::Mph, true) => ("km/h", KM_PER_MILE),
            _ => (self.label(), 1.0),
        }
    }

    /// The label of the canonical unit, empty for a plain ratio.
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::Yd => "yd",
            Self::Mph => "mph",
            Self::Rpm => "rpm",
            Self::Deg => "deg",
            Self::S => "s",
            Self::Mm => "mm",
            Self::Ratio => "",
        }
    }

    /// The usual size that matters where this one is usual in canonical units: as round a number in the units shown,
    /// so that nobody is told that a difference starts to matter at 4.572 m.
    pub(crate) fn as_round(self, size: f64) -> f64 {
        let (_, scale) = self.shown();
        match (self, METRIC.get()) {
            (Self::Mph, true) => (size * scale * 2.0).round() / 2.0 / scale,
            (Self::Yd, true) => size / scale,
            _ => size,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::MEASURES;

    #[test]
    fn meters_are_shown_only_when_asked_for() {
        assert_eq!(Unit::Yd.shown(), ("yd", 1.0));
        show_metric(true);
        assert_eq!(Unit::Yd.shown(), ("m", 0.9144));
        assert_eq!(Unit::Rpm.shown(), ("rpm", 1.0));
        show_metric(false);
        assert_eq!(Unit::Mph.shown(), ("mph", 1.0));
    }

    #[test]
    fn usual_margins_are_round_in_either() {
        show_metric(true);
        for measure in &MEASURES {
            let shown = measure.unit.as_round(measure.margin) * measure.unit.shown().1 * 200.0;
            assert!((shown - shown.round()).abs() < 1e-9, "{}: {shown}", measure.id);
        }
        show_metric(false);
    }
}
