//! Do carry and launch belong together? Each row's carry against the flight of its own ball speed, launch and spin.
//!
//! What counts is a row's ratio beside the session's middle ratio, which takes ball, air and device out. Nothing is ever
//! corrected: a row that does not fit is shown with the unit mistakes that would explain it, and more than one may.
//! Meters read as yards (ratio 0.914) are within what balls and devices do, and cannot be told on one row.

mod computed;

use crate::flying::{Columns, Flown, all_carry_the_same, flown, launch_of};
use flight::{CHECK_BAND, Conditions, OK_BAND, TimeStep, unit_hypotheses};
use serde::Serialize;
use session::Session;
use session::units::{KM_PER_MILE, M_PER_YD, MPS_PER_MPH};
use stats::describe::{MAD_TO_SD, mad, median};

/// Fewest rows that make a middle of their own; with fewer the model itself is the yardstick.
const FEWEST_FOR_MIDDLE: usize = 5;
/// A row is not doubted while it lies within so many deviations of the others.
const DEVIATIONS: f64 = 4.0;

/// What a speed may have been, and the factor from there to mph.
const SPEEDS: [(Option<SpeedUnit>, f64); 3] = [
    (None, 1.0),
    (Some(SpeedUnit::MetersPerSecond), 1.0 / MPS_PER_MPH),
    (Some(SpeedUnit::KilometersPerHour), 1.0 / KM_PER_MILE),
];
/// What a carry may have been, and the factor from there to yards.
const CARRIES: [(Option<CarryUnit>, f64); 3] =
    [(None, 1.0), (Some(CarryUnit::Meters), YD_PER_M), (Some(CarryUnit::Feet), 1.0 / 3.0)];
const YD_PER_M: f64 = 1.0 / M_PER_YD;

/// What ball speeds may have been in, read as mph.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub enum SpeedUnit {
    /// Meters a second.
    #[serde(rename = "m/s")]
    MetersPerSecond,
    /// Kilometers an hour.
    #[serde(rename = "km/h")]
    KilometersPerHour,
}

/// What carries may have been in, read as yards.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum CarryUnit {
    /// Meters.
    Meters,
    /// Feet.
    Feet,
}

/// Why carries and launches cannot be held against each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ConsistencyRefused {
    /// No shot has carry, ball speed, launch angle and spin.
    NothingToHold,
    /// Every shot of each build has the same carry, whatever its launch.
    SameCarry,
}

/// How far a ratio of carries lies from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Fit {
    /// Within 8 %.
    Fits,
    /// 8 to 15 % off: worth a look.
    Doubtful,
    /// More than 15 % off: the numbers do not belong together.
    DoesNotFit,
}

/// A unit mistake that would make the numbers fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct UnitStory {
    /// What the ball speed would be in; null for as read.
    pub speed: Option<SpeedUnit>,
    /// What the carry would be in; null for as read.
    pub carry: Option<CarryUnit>,
}

/// A row whose numbers do not belong together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct DoubtFacts {
    /// Place of the shot in the session.
    pub shot: usize,
    /// Index of its build.
    pub build: usize,
    /// Carry as read, yd.
    pub carry: f64,
    /// Carry of its own launch, brought to this session's ball and device, yd.
    pub expected: f64,
    /// How far off.
    pub fit: Fit,
    /// Unit mistakes that would explain it, the likeliest first.
    pub stories: Vec<UnitStory>,
}

/// The session as a whole.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct WholeSession {
    /// Rows that could be looked at.
    pub rows: usize,
    /// Middle ratio of measured to modeled carry.
    pub middle_ratio: f64,
    /// How far that is off as a whole.
    pub fit: Fit,
    /// Unit mistakes that would explain the whole session.
    pub stories: Vec<UnitStory>,
    /// Whether the carries follow their launches too closely to have been seen.
    pub is_computed: bool,
}

/// Whether carry and launch belong together.
#[derive(Debug, Clone, PartialEq)]
pub struct ConsistencyFacts {
    /// The session as a whole.
    pub whole: WholeSession,
    /// Rows that do not fit the others.
    pub doubts: Vec<DoubtFacts>,
}

/// Holds every carry against its own launch.
///
/// # Errors
/// A [`ConsistencyRefused`] when no shot has carry, ball speed, launch angle and spin, and when carries are all alike.
pub fn consistency(session: &Session) -> Result<ConsistencyFacts, ConsistencyRefused> {
    let rows: Vec<Flown> =
        flown(session, &Columns::of(session)).into_iter().filter(|row| row.modeled > 1.0).collect();
    if are_alike(session, &rows) {
        return Err(ConsistencyRefused::SameCarry);
    }
    held(&rows).ok_or(ConsistencyRefused::NothingToHold)
}

/// Every row beside the others; `None` without any.
fn held(rows: &[Flown]) -> Option<ConsistencyFacts> {
    let ratios: Vec<f64> = rows.iter().map(|row| row.carry / row.modeled).collect();
    let (middle_ratio, spread) = (median(&ratios)?, mad(&ratios)?);
    let yardstick = if rows.len() >= FEWEST_FOR_MIDDLE { middle_ratio } else { 1.0 };
    let allowed =
        if rows.len() >= FEWEST_FOR_MIDDLE { DEVIATIONS * MAD_TO_SD * spread / yardstick } else { 0.0 };
    let doubts =
        rows.iter().zip(&ratios).filter_map(|(row, ratio)| doubt(row, ratio / yardstick, yardstick, allowed));
    let doubts = told_by_more_than_one(doubts.collect());
    let fit = if rows.len() >= FEWEST_FOR_MIDDLE { fit_of(middle_ratio - 1.0) } else { Fit::Fits };
    let whole = WholeSession {
        rows: rows.len(),
        middle_ratio,
        fit,
        stories: whole_session(rows, middle_ratio, fit),
        is_computed: computed::is_computed(rows),
    };
    Some(ConsistencyFacts { whole, doubts })
}

/// Whether every build has one carry for all its shots, of which there are enough to differ.
fn are_alike(session: &Session, rows: &[Flown]) -> bool {
    let of = |build: usize| -> Vec<Flown> { rows.iter().filter(|row| row.build == build).copied().collect() };
    let of_builds = (0..session.builds.len()).map(of).filter(|rows| !rows.is_empty());
    rows.len() >= FEWEST_FOR_MIDDLE && of_builds.into_iter().all(|rows| all_carry_the_same(&rows))
}

fn fit_of(off: f64) -> Fit {
    match off.abs() {
        off if off <= OK_BAND => Fit::Fits,
        off if off <= CHECK_BAND => Fit::Doubtful,
        _ => Fit::DoesNotFit,
    }
}

/// Two mistakes at once are a story of one row only where another row tells it too: among so many ways one fits by chance.
fn told_by_more_than_one(mut doubts: Vec<DoubtFacts>) -> Vec<DoubtFacts> {
    let told: Vec<UnitStory> = doubts.iter().flat_map(|doubt| doubt.stories.iter().copied()).collect();
    let is_believed = |story: &UnitStory| {
        let is_of_one = story.speed.is_none() || story.carry.is_none();
        is_of_one || told.iter().filter(|other| *other == story).count() > 1
    };
    doubts.iter_mut().for_each(|doubt| doubt.stories.retain(is_believed));
    doubts
}

fn doubt(row: &Flown, relative: f64, yardstick: f64, allowed: f64) -> Option<DoubtFacts> {
    let (off, fit) = ((relative - 1.0).abs(), fit_of(relative - 1.0));
    if fit == Fit::Fits || off <= allowed {
        return None;
    }
    let stories = if fit == Fit::DoesNotFit { stories(row, yardstick) } else { Vec::new() };
    let expected = yardstick * row.modeled;
    Some(DoubtFacts { shot: row.shot, build: row.build, carry: row.carry, expected, fit, stories })
}

/// The row with the middle ratio stands for the session.
fn whole_session(rows: &[Flown], middle: f64, fit: Fit) -> Vec<UnitStory> {
    if fit == Fit::Fits {
        return Vec::new();
    }
    let away = |row: &&Flown| (row.carry / row.modeled - middle).abs();
    let typical = rows.iter().min_by(|a, b| away(a).total_cmp(&away(b)));
    let found = typical.map_or_else(Vec::new, |row| stories(row, 1.0));
    if found.is_empty() && (middle * YD_PER_M - 1.0).abs() < (middle - 1.0).abs() {
        return vec![UnitStory { speed: None, carry: Some(CarryUnit::Meters) }];
    }
    found
}

fn stories(row: &Flown, yardstick: f64) -> Vec<UnitStory> {
    let found = unit_hypotheses(
        row.carry * M_PER_YD / yardstick,
        &launch_of(&row.values),
        &SPEEDS.map(|(_, factor)| factor),
        &CARRIES.map(|(_, factor)| factor),
        &Conditions::STANDARD,
        TimeStep::COARSE,
    );
    let speed = |at: usize| SPEEDS.get(at).and_then(|(unit, _)| *unit);
    let carry = |at: usize| CARRIES.get(at).and_then(|(unit, _)| *unit);
    found.iter().map(|story| UnitStory { speed: speed(story.speed), carry: carry(story.carry) }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::flying::forward_yd;

    /// Rows of one launch, with these ratios of measured to modeled carry.
    fn rows(ratios: &[f64]) -> Vec<Flown> {
        let values = [150.0, 12.0, 2600.0, 0.0, 0.0];
        let modeled = forward_yd(&values).expect("flies");
        let row = |(shot, ratio): (usize, &f64)| Flown {
            shot,
            build: 0,
            values,
            carry: ratio * modeled,
            modeled,
            club_speed: None,
        };
        ratios.iter().enumerate().map(row).collect()
    }

    fn doubted(ratios: &[f64]) -> Vec<usize> {
        held(&rows(ratios)).expect("rows").doubts.iter().map(|doubt| doubt.shot).collect()
    }

    /// The ratios scatter by 0.1 around their middle: four robust deviations are 0.593 of it.
    #[test]
    fn a_row_is_doubted_beyond_four_deviations_of_the_others_whatever_the_middle() {
        for middle in [1.0, 0.5, 0.9] {
            let ratios = [0.8, 0.9, 0.9, 1.0, 1.0, 1.1, 1.1, 1.58, 1.61].map(|ratio| ratio * middle);
            assert_eq!(doubted(&ratios), [8], "{middle}");
        }
        let found = held(&rows(&[0.5, 0.5, 0.5, 0.5, 0.5, 0.9])).expect("rows").doubts.remove(0);
        assert!((found.expected - found.carry * 0.5 / 0.9).abs() < 1e-9, "{}", found.expected);
    }

    #[test]
    fn fewer_than_five_rows_are_held_against_the_model_itself() {
        assert_eq!(doubted(&[0.8, 0.8, 0.8, 0.8]), [0, 1, 2, 3]);
        assert!(doubted(&[0.8, 0.8, 0.8, 0.8, 0.8]).is_empty());
        assert_eq!(held(&rows(&[0.8; 4])).expect("rows").whole.fit, Fit::Fits);
        assert_eq!(held(&rows(&[0.8; 5])).expect("rows").whole.fit, Fit::DoesNotFit);
    }

    #[test]
    fn eight_parts_in_a_hundred_fit_and_fifteen_are_doubtful_either_way() {
        use Fit::{DoesNotFit, Doubtful, Fits};
        for (off, fit) in [(0.0, Fits), (0.07, Fits), (0.09, Doubtful), (0.14, Doubtful), (0.16, DoesNotFit)]
        {
            for ratio in [1.0 - off, 1.0 + off] {
                assert_eq!(held(&rows(&[ratio; 5])).expect("rows").whole.fit, fit, "{ratio}");
                let doubts = held(&rows(&[ratio])).expect("a row").doubts;
                assert_eq!(doubts.first().map(|doubt| doubt.fit), (fit != Fits).then_some(fit), "{ratio}");
            }
        }
    }

    #[test]
    fn the_row_in_the_middle_stands_for_the_session() {
        let carry = |ratios: &[f64]| {
            let whole = held(&rows(ratios)).expect("rows").whole;
            whole.stories.first().map(|story| (story.speed, story.carry))
        };
        // Feet; the first row alone would be no unit at all.
        assert_eq!(carry(&[2.0, 3.05, 3.05, 3.05, 3.05]), Some((None, Some(CarryUnit::Feet))));
        assert_eq!(carry(&[3.05, 2.0, 2.0, 2.0, 2.0]), None);
    }

    #[test]
    fn a_session_that_meters_would_bring_nearer_may_be_in_meters() {
        let stories = |ratio: f64| held(&rows(&[ratio; 5])).expect("rows").whole.stories;
        assert_eq!(stories(0.9), [UnitStory { speed: None, carry: Some(CarryUnit::Meters) }]);
        assert!(stories(1.1).is_empty(), "meters would take it farther away");
        let told = stories(0.45);
        assert_eq!(
            told[0],
            UnitStory { speed: Some(SpeedUnit::KilometersPerHour), carry: None },
            "explains it"
        );
    }

    /// A device that reads a fifth short: what one row was in is asked beside the others.
    #[test]
    fn the_story_of_a_row_is_told_beside_the_middle_of_the_others() {
        let mut ratios = [0.8; 7];
        ratios[3] = 2.4;
        let found = held(&rows(&ratios)).expect("rows");
        assert_eq!(found.doubts[0].stories[0], UnitStory { speed: None, carry: Some(CarryUnit::Feet) });
    }
}
