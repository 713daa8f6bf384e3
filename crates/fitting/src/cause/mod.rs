//! Club or swing: a gap in carry split over how the ball left the club, and over what the swing did that day.
//!
//! The split is exact over the flight model at the builds' own shots (see `split`); what the model does not explain is a
//! part of its own, so that the parts add up to the measured gap. Intervals: bootstrap of whole shots, 1.10 · t · se,
//! with the flight model as a quadratic (see `quick`). Nothing here is a cause by itself: a part says through which
//! number the gap came, and only a test with the builds in turn says that it was the club.

mod delivery;
mod figures;
mod quick;
mod split;
mod words;

pub use delivery::{Moved, SpinSource};
pub use words::CauseWords;

use crate::analysis::{Aspect, Include, ShotTable, compare};
use crate::check::Refusal;
use crate::flying::{Columns, FACTORS, Flown, VALUES, cannot_fly, check_build, flown};
use crate::measure::MeasureId;
use crate::session::Session;
use figures::{CLUB, DRAWS, REST, SEED, SMASH};
use serde::{Deserialize, Serialize};
use stats::Level;
use text::flying as say;

/// Fewest shots with each build that can be flown.
const FEWEST: usize = 5;

/// What [`cause`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct CauseRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// Which hand the golfer plays with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hand: Option<crate::landing::Hand>,
}

/// Through what a part of the gap came.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Factor {
    /// Ball speed.
    BallSpeed,
    /// Launch angle.
    LaunchAngle,
    /// Spin.
    SpinRate,
    /// Where the ball started.
    LaunchDirection,
    /// Tilt of the spin axis: how the ball curved.
    SpinAxis,
    /// What the flight model does not explain.
    Rest,
    /// Of ball speed: how fast the club was swung.
    ClubSpeed,
    /// Of ball speed: how much of that reached the ball.
    Smash,
}

/// The factors of a flight in the order of [`FACTORS`].
const OF_FLIGHT: [Factor; VALUES] =
    [Factor::BallSpeed, Factor::LaunchAngle, Factor::SpinRate, Factor::LaunchDirection, Factor::SpinAxis];

/// Whose doing a part is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Belongs {
    /// The swing that day; a club can only invite it.
    Swing,
    /// Club and swing together: these numbers cannot separate them.
    Both,
    /// Nobody's: ball, air, device, luck.
    Unexplained,
}

/// A size with its 95 % interval.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Span {
    /// Candidate − baseline.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Span {
    /// Whether the interval lies to one side of zero.
    pub(crate) fn is_clear(&self) -> bool {
        self.low > 0.0 || self.high < 0.0
    }
}

/// One part of the gap.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Part {
    /// Through what.
    pub factor: Factor,
    /// Carry, yd.
    pub yards: Span,
    /// Whether it is clear even as one of five parts that were looked at.
    pub is_sure: bool,
    /// Whose doing.
    pub belongs: Belongs,
    /// Short name for the picture.
    pub name: String,
    /// What differed, in its own unit, and what it was worth.
    pub words: String,
}

/// A gap in carry and where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Cause {
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// Gap in measured carry of the shots that can be flown, yd.
    pub gap: f64,
    /// Shots with the baseline that can be flown.
    pub baseline_shots: usize,
    /// Shots with the candidate that can be flown.
    pub candidate_shots: usize,
    /// Shots of the two that cannot.
    pub not_flown: usize,
    /// Adds up to the gap; the rest is last.
    pub parts: Vec<Part>,
    /// The part of ball speed once more, as club speed and smash; empty without club speed.
    pub ball_speed: Vec<Part>,
    /// The clear part that goes the way of the gap and is largest; null when none is.
    pub main: Option<Factor>,
    /// What the club did on its way to the ball, where that was measured.
    pub swing: Vec<Moved>,
    /// What of a difference in spin or curve the delivery explains, roughly.
    pub spin: Vec<SpinSource>,
    /// Resamples behind each interval.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
    /// Sentences.
    pub words: CauseWords,
}

/// Splits the gap in carry between two builds.
///
/// # Errors
/// A [`Refusal`] for builds that are not there or are one, and for fewer than five shots of each with carry, ball speed,
/// launch angle and spin.
pub fn cause(request: &CauseRequest) -> Result<Cause, Refusal> {
    let CauseRequest { session, baseline, candidate, .. } = request;
    check_build(session, "baseline", *baseline)?;
    check_build(session, "candidate", *candidate)?;
    if baseline == candidate {
        return Err(Refusal {
            kind: "same_build_twice".into(),
            place: "candidate".into(),
            message: say::same_build_twice(),
            remedy: say::same_build_twice_remedy(),
        });
    }
    let columns = Columns::of(session);
    let shots = flown(session, &columns);
    let of = |build: usize| -> Vec<Flown> { shots.iter().filter(|s| s.build == build).copied().collect() };
    let (base, cand) = (split::ranked(&of(*baseline)), split::ranked(&of(*candidate)));
    if base.len() < FEWEST || cand.len() < FEWEST {
        return Err(too_few(session, &columns));
    }
    let figures = figures::figures(&base, &cand);
    let part = |at: usize, factor, belongs| Part {
        is_sure: figures.is_sure(at),
        ..words::part(session, request, factor, belongs, figures.sized(at))
    };
    let mut parts: Vec<Part> =
        (0..VALUES).filter(|&i| columns.has(i)).map(|i| part(i, OF_FLIGHT[i], Belongs::Both)).collect();
    parts.push(part(REST, Factor::Rest, Belongs::Unexplained));
    let ball_speed = if columns.has_club_speed() {
        vec![part(CLUB, Factor::ClubSpeed, Belongs::Swing), part(SMASH, Factor::Smash, Belongs::Both)]
    } else {
        Vec::new()
    };
    let gap = figures.gap;
    let explains = |part: &&Part| part.factor != Factor::Rest && part.is_sure && part.yards.value * gap > 0.0;
    let main =
        parts.iter().filter(explains).max_by(|a, b| a.yards.value.abs().total_cmp(&b.yards.value.abs()));
    let hit = session.shots.iter().filter(|s| s.build == *baseline || s.build == *candidate).count();
    let mut found = Cause {
        baseline: *baseline,
        candidate: *candidate,
        gap,
        baseline_shots: base.len(),
        candidate_shots: cand.len(),
        not_flown: hit - base.len() - cand.len(),
        main: main.map(|part| part.factor),
        parts,
        ball_speed,
        swing: delivery::moved(session, *baseline, *candidate),
        spin: delivery::spin_sources(session, *baseline, *candidate),
        draws: DRAWS,
        seed: SEED,
        words: CauseWords::default(),
    };
    found.words = words::words(request, &columns, &found);
    Ok(found)
}

/// Candidate − baseline on one measure as the answer would give it, without the order allowance.
pub(crate) fn difference(session: &Session, id: &str, baseline: usize, candidate: usize) -> Option<Span> {
    let table = ShotTable::new(session);
    let measure = MeasureId::from(id);
    let pair = compare(&table.measured(&measure, Include::All), baseline, candidate, Aspect::Average);
    let comparison = pair.comparison.ok()?;
    let range = comparison.range(Level::P95);
    let allowed = comparison.allowance();
    Some(Span { value: comparison.value(), low: range.low + allowed, high: range.high - allowed })
}

fn too_few(session: &Session, columns: &Columns) -> Refusal {
    if columns.can_fly() {
        return cannot_fly(say::too_few_to_split(&FEWEST.to_string()), say::too_few_to_split_remedy());
    }
    let missing: Vec<String> = FACTORS
        .iter()
        .take(3)
        .chain(&["carry"])
        .filter(|id| session.measure_index(&MeasureId::from(**id)).is_none())
        .map(|id| text::measure::name(id))
        .collect();
    cannot_fly(say::not_measured(&missing.join(", ")), say::add_columns())
}
