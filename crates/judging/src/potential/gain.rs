//! How much more a group could carry, as far as a size is named: what is drawn and told first.

use super::{GroupFacts, Unused};
use serde::Serialize;

/// What a group could carry more, as far as a size is named: from what one change alone brings to what both do.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Gain {
    /// Less than what counts as a gain.
    Nothing,
    /// More, but the search ended before the flight did.
    NotNamed,
    /// One change brings that, yd; both together bring no more, or how much is not named.
    Alone {
        /// Yd.
        size: f64,
    },
    /// No single change is worth naming, both together bring that.
    Both {
        /// Yd.
        size: f64,
    },
    /// One change alone, and both.
    Range {
        /// The better single change, yd.
        low: f64,
        /// Both at their best, yd.
        high: f64,
    },
}

impl GroupFacts {
    /// How much of it is named, and from where to where.
    #[must_use]
    pub fn gain(&self) -> Gain {
        let unused = self.unused();
        let alone = match unused {
            Unused::InLaunch(size) | Unused::InSpin(size) => Some(size),
            Unused::Nothing | Unused::AtTheEdge(_) => None,
        };
        let both = (!self.best.is_nothing() && !self.best.at_edge).then_some(self.best.gain);
        match (alone, both) {
            (Some(low), Some(high)) if high > low => Gain::Range { low, high },
            (Some(size), _) => Gain::Alone { size },
            (None, Some(size)) => Gain::Both { size },
            (None, None) if unused == Unused::Nothing && self.best.is_nothing() => Gain::Nothing,
            (None, None) => Gain::NotNamed,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::group;
    use super::Gain;

    #[test]
    fn a_gain_is_named_as_far_as_the_flight_and_not_the_window_set_it() {
        let of = |launch: (f64, bool), spin: (f64, bool), best: (f64, bool)| {
            let mut group = group((14.0, launch.0, launch.1), (2000.0, spin.0, spin.1));
            (group.best.gain, group.best.at_edge) = best;
            group.gain()
        };
        let no = (1.9, false);
        assert_eq!(of(no, no, no), Gain::Nothing);
        assert_eq!(of((3.0, false), (4.0, false), (9.0, false)), Gain::Range { low: 4.0, high: 9.0 });
        assert_eq!(of((3.0, false), (4.0, false), (9.0, true)), Gain::Alone { size: 4.0 });
        assert_eq!(of((3.0, false), (4.0, false), (3.5, false)), Gain::Alone { size: 4.0 });
        assert_eq!(of(no, no, (2.0, false)), Gain::Both { size: 2.0 });
        assert_eq!(of((5.0, true), (4.0, false), (9.0, false)), Gain::Both { size: 9.0 });
        assert_eq!(of((5.0, true), no, (9.0, true)), Gain::NotNamed);
        assert_eq!(of(no, no, (9.0, true)), Gain::NotNamed);
        assert_eq!(of((5.0, true), no, no), Gain::NotNamed);
    }
}
