//! How wide an interval may be and still say something: one limit for each measure.
//!
//! An interval of two laps, or of three shots at a strict level, can reach farther than any two clubs lie apart: its ends are
//! right, and whoever reads 'anything between 135 yd less and 130 yd more' was told nothing. The limit is a choice of ours, with
//! no study behind it. It counts in usual margins, so that it stands for every measure: ten of them to either side, 50 yd of
//! carry, are more than six times what two of three true gaps against an old club stay below. The golfer's own margin
//! does not move it. Of scatter a margin is a ratio, and ten of them are nine times as much or as little.
//! Limits: of averages of a column of the golfer's own nobody knows how far clubs differ; none is called so wide.

use crate::analysis::Aspect;
use crate::interval::Interval;
use crate::verdict::{Decision, DecisionKind};
use libm::{log as ln, pow};
use session::measure::MeasureId;
use session::question::WORTHWHILE_RATIO;

/// Usual margins to either side that an interval may reach and still say something.
pub const WIDEST_IN_MARGINS: f64 = 10.0;

/// Half of the widest interval of a difference of averages that says something; `None` of a measure nobody knows.
#[must_use]
pub fn widest(measure: &MeasureId) -> Option<f64> {
    Some(WIDEST_IN_MARGINS * measure.usual()?.facts().margin)
}

/// Whether the interval of something that cannot be told is wider than what the measure can plausibly differ by.
#[must_use]
pub fn says_next_to_nothing(
    decision: &Decision,
    decided_by: &Interval,
    measure: &MeasureId,
    aspect: Aspect,
) -> bool {
    let Interval { low, high, .. } = *decided_by;
    let is_beyond = match aspect {
        Aspect::Average => widest(measure).is_some_and(|widest| 0.5 * (high - low) > widest),
        Aspect::Spread => {
            high / low > pow(WORTHWHILE_RATIO, 2.0 * WIDEST_IN_MARGINS) || ln(low).is_infinite()
        }
    };
    decision.kind == DecisionKind::CannotTell && is_beyond
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::verdict::decide;
    use session::known::Known;

    fn says_little(low: f64, high: f64, known: Known) -> bool {
        let interval = Interval { low, high, level: 0.95 };
        let decision = decide(&interval, &interval, Some(1.0));
        says_next_to_nothing(&decision, &interval, &known.into(), Aspect::Average)
    }

    #[test]
    fn ten_usual_margins_to_either_side_are_the_limit_whatever_the_golfer_asks() {
        assert!(!says_little(-50.0, 50.0, Known::Carry));
        assert!(says_little(-50.1, 50.0, Known::Carry));
        assert!(says_little(-1.0, 99.2, Known::Carry));
        assert!(!says_little(-15.0, 14.0, Known::ClubSpeed));
        assert!(says_little(-24.4, 25.0, Known::ClubSpeed));
        assert!(!says_little(-2_089.0, 2_233.0, Known::SpinRate));
    }

    #[test]
    fn what_is_told_says_something_however_wide_it_is() {
        assert!(!says_little(3.0, 300.0, Known::Carry));
    }

    #[test]
    fn a_column_of_ones_own_has_no_limit_and_scatter_one_of_its_own() {
        let interval = Interval { low: -1e6, high: 1e6, level: 0.95 };
        let own = MeasureId::from("tempo");
        assert!(!says_next_to_nothing(&Decision::undecided(), &interval, &own, Aspect::Average));
        for (low, high, little) in [(0.3, 3.0, false), (0.05, 3.0, false), (0.1, 9.4, true), (0.0, 2.0, true)]
        {
            let interval = Interval { low, high, level: 0.95 };
            let found = says_next_to_nothing(&Decision::undecided(), &interval, &own, Aspect::Spread);
            assert_eq!(found, little, "{low} to {high}");
        }
    }
}
