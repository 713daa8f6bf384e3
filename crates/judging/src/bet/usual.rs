//! How far builds usually differ: what a bet takes for granted before the shots. A choice of this project, in this one place.
//!
//! Nobody has published how far true averages of clubs in one golfer's hands lie apart, so these are judgement, made before
//! anything was measured with them: with the same head and another shaft, two of three true gaps in carry lie within 2 yd,
//! with another head within 4 (what the honest lead takes too), against an old club within 8. The page says so, lets the
//! golfer say which it is, and gives every chance as a range over what may be usual, never as one number.

use serde::Serialize;
use session::measure::MeasureId;
use session::question::Differs;

/// Standard deviations of true gaps, as shares of the smallest difference that usually matters: 2, 4 and 8 yd of 5 for carry.
/// That margin is already what a measure is worth in yards ([`session::known`]), so that one scale serves all of them.
const SHAFT: f64 = 0.4;
const HEAD: f64 = 0.8;
const OLD_CLUB: f64 = 1.6;

/// Where the golfer said what differs, the gap may still be usual for half a step less or more: √2 to either side.
const HALF_A_STEP: f64 = std::f64::consts::SQRT_2;

/// Standard deviations of true gaps of a measure by what differs, in its unit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct UsualFor {
    /// Another shaft in the same head.
    pub shaft: f64,
    /// Another head.
    pub head: f64,
    /// A new club against an old one.
    pub old_club: f64,
}

/// The smallest difference that usually matters: one scale for what is usual of every measure.
///
/// A column of the golfer's own has no usual margin: another head is worth `stats::choices::PRIOR_SHARE` of a single shot's
/// scatter there, as everywhere else where experience is lacking.
pub(crate) fn matters_usually(measure: &MeasureId, shot_sd: f64) -> f64 {
    measure.usual().map_or_else(|| stats::usual_prior_sd(shot_sd) / HEAD, |known| known.facts().margin)
}

impl UsualFor {
    /// As shares of the smallest difference that usually matters.
    pub(super) fn of(measure: &MeasureId, shot_sd: f64) -> Self {
        let unit = matters_usually(measure, shot_sd);
        Self { shaft: SHAFT * unit, head: HEAD * unit, old_club: OLD_CLUB * unit }
    }

    /// Where this differs.
    #[must_use]
    pub fn of_change(self, differs: Differs) -> f64 {
        match differs {
            Differs::Shaft => self.shaft,
            Differs::Head => self.head,
            Differs::OldClub => self.old_club,
        }
    }
}

/// Standard deviations of true gaps that a bet is made over, the least first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Usual {
    pub(super) least: f64,
    pub(super) middle: f64,
    pub(super) most: f64,
}

impl Usual {
    /// Around what was said to differ; over all three kinds of change where nobody said it.
    pub(super) fn of(usual: UsualFor, differs: Option<Differs>) -> Self {
        match differs.map(|differs| usual.of_change(differs)) {
            None => Self { least: usual.shaft, middle: usual.head, most: usual.old_club },
            Some(middle) => Self { least: middle / HALF_A_STEP, middle, most: middle * HALF_A_STEP },
        }
    }

    pub(super) fn each(self) -> [f64; 3] {
        [self.least, self.middle, self.most]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn usual(id: &str, differs: Option<Differs>) -> [f64; 3] {
        Usual::of(UsualFor::of(&id.into(), 10.0), differs).each()
    }

    fn is_close(got: [f64; 3], wanted: [f64; 3]) -> bool {
        got.iter().zip(wanted).all(|(got, wanted)| (got - wanted).abs() < 1e-12)
    }

    #[test]
    fn carry_differs_by_2_4_and_8_yards() {
        assert!(is_close(usual("carry", None), [2.0, 4.0, 8.0]));
        let root = std::f64::consts::SQRT_2;
        assert!(is_close(usual("carry", Some(Differs::Shaft)), [root, 2.0, 2.0 * root]));
        assert!(is_close(usual("carry", Some(Differs::OldClub)), [4.0 * root, 8.0, 8.0 * root]));
    }

    #[test]
    fn other_measures_go_by_what_usually_matters_and_own_columns_by_their_scatter() {
        assert!(is_close(usual("ball_speed", None), [0.6, 1.2, 2.4]));
        assert!(is_close(usual("weight", None), [1.75, 3.5, 7.0]));
    }
}
