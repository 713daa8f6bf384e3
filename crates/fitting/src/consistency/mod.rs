//! Do carry and launch belong together? Each row's carry against the flight of its own ball speed, launch and spin.
//!
//! What counts is a row's ratio beside the session's middle ratio, which takes ball, air and device out. Nothing is ever
//! corrected: a row that does not fit is shown with the unit mistakes that would explain it, and more than one may.
//! Meters read as yards (ratio 0.914) are within what balls and devices do, and cannot be told on one row.

mod computed;
mod words;

pub use words::ConsistencyWords;

use crate::check::Refusal;
use crate::flying::{Columns, Flown, cannot_fly, flown, launch_of};
use crate::session::Session;
use crate::units::{KM_PER_MILE, M_PER_YD, MPS_PER_MPH};
use flight::{CHECK_BAND, Conditions, OK_BAND, TimeStep, unit_hypotheses};
use serde::{Deserialize, Serialize};
use stats::describe::{MAD_TO_SD, mad, median};
use text::flying as say;

/// Fewest rows that make a middle of their own; with fewer the model itself is the yardstick.
const FEWEST_FOR_MIDDLE: usize = 5;
/// A row is not doubted while it lies within so many deviations of the others.
const DEVIATIONS: f64 = 4.0;

/// What a speed may have been, and the factor from there to mph.
const SPEEDS: [(&str, f64); 3] = [("mph", 1.0), ("m/s", 1.0 / MPS_PER_MPH), ("km/h", 1.0 / KM_PER_MILE)];
/// What a carry may have been, and the factor from there to yards.
const CARRIES: [(&str, f64); 3] = [("yards", 1.0), ("meters", 1.0 / M_PER_YD), ("feet", 1.0 / 3.0)];

/// What [`consistency`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ConsistencyRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct UnitStory {
    /// What the ball speed would be in; null for as read.
    pub speed: Option<String>,
    /// What the carry would be in; null for as read.
    pub carry: Option<String>,
}

/// A row whose numbers do not belong together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Doubt {
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
    /// In words.
    pub words: String,
}

/// Whether carry and launch belong together.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Consistency {
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
    /// Rows that do not fit the others.
    pub doubts: Vec<Doubt>,
    /// Sentences.
    pub words: ConsistencyWords,
}

/// Holds every carry against its own launch.
///
/// # Errors
/// A [`Refusal`] when no shot has carry, ball speed, launch angle and spin.
pub fn consistency(request: &ConsistencyRequest) -> Result<Consistency, Refusal> {
    let session = &request.session;
    let rows: Vec<Flown> =
        flown(session, &Columns::of(session)).into_iter().filter(|row| row.modeled > 1.0).collect();
    let ratios: Vec<f64> = rows.iter().map(|row| row.carry / row.modeled).collect();
    let (Some(middle_ratio), Some(spread)) = (median(&ratios), mad(&ratios)) else {
        return Err(cannot_fly(say::nothing_to_hold(), say::nothing_to_hold_remedy()));
    };
    let yardstick = if rows.len() >= FEWEST_FOR_MIDDLE { middle_ratio } else { 1.0 };
    let allowed =
        if rows.len() >= FEWEST_FOR_MIDDLE { DEVIATIONS * MAD_TO_SD * spread / yardstick } else { 0.0 };
    let doubts =
        rows.iter().zip(&ratios).filter_map(|(row, ratio)| doubt(row, ratio / yardstick, yardstick, allowed));
    let fit = if rows.len() >= FEWEST_FOR_MIDDLE { fit_of(middle_ratio - 1.0) } else { Fit::Fits };
    let mut found = Consistency {
        rows: rows.len(),
        middle_ratio,
        fit,
        stories: whole_session(&rows, middle_ratio, fit),
        is_computed: computed::is_computed(&rows),
        doubts: doubts.collect(),
        words: ConsistencyWords::default(),
    };
    words::fill(session, &mut found);
    Ok(found)
}

fn fit_of(off: f64) -> Fit {
    match off.abs() {
        off if off <= OK_BAND => Fit::Fits,
        off if off <= CHECK_BAND => Fit::Doubtful,
        _ => Fit::DoesNotFit,
    }
}

fn doubt(row: &Flown, relative: f64, yardstick: f64, allowed: f64) -> Option<Doubt> {
    let (off, fit) = ((relative - 1.0).abs(), fit_of(relative - 1.0));
    if fit == Fit::Fits || off <= allowed {
        return None;
    }
    let stories = if fit == Fit::DoesNotFit { stories(row, yardstick) } else { Vec::new() };
    let expected = yardstick * row.modeled;
    Some(Doubt {
        shot: row.shot,
        build: row.build,
        carry: row.carry,
        expected,
        fit,
        stories,
        words: String::new(),
    })
}

/// The row with the middle ratio stands for the session.
fn whole_session(rows: &[Flown], middle: f64, fit: Fit) -> Vec<UnitStory> {
    if fit == Fit::Fits {
        return Vec::new();
    }
    let away = |row: &&Flown| (row.carry / row.modeled - middle).abs();
    let typical = rows.iter().min_by(|a, b| away(a).total_cmp(&away(b)));
    let found = typical.map_or_else(Vec::new, |row| stories(row, 1.0));
    if found.is_empty() && (middle * CARRIES[1].1 - 1.0).abs() < (middle - 1.0).abs() {
        return vec![UnitStory { speed: None, carry: Some(CARRIES[1].0.to_owned()) }];
    }
    found
}

fn stories(row: &Flown, yardstick: f64) -> Vec<UnitStory> {
    let factors = |units: &[(&str, f64)]| units.iter().map(|unit| unit.1).collect::<Vec<_>>();
    let found = unit_hypotheses(
        row.carry * M_PER_YD / yardstick,
        &launch_of(&row.values),
        &factors(&SPEEDS),
        &factors(&CARRIES),
        &Conditions::STANDARD,
        TimeStep::COARSE,
    );
    let named =
        |units: &[(&str, f64)], at: usize| (at > 0).then(|| units.get(at).map(|u| u.0.to_owned())).flatten();
    found
        .iter()
        .map(|story| UnitStory { speed: named(&SPEEDS, story.speed), carry: named(&CARRIES, story.carry) })
        .collect()
}
