//! Club or swing: a gap in carry split over how the ball left the club, and over what the swing did that day.
//!
//! The split is exact over the flight model at the builds' own shots (see `split`); what the model does not explain is a
//! part of its own, so that the parts add up to the measured gap. Intervals: bootstrap of whole shots, 1.10 · t · se,
//! with the flight model as a quadratic (see `quick`). Nothing here is a cause by itself: a part says through which
//! number the gap came, and only a test with the builds in turn says that it was the club.

mod delivery;
mod figures;
mod findings;
mod quick;
mod split;
mod two;

pub use delivery::{MovedFacts, SpinSourceFacts};
pub use findings::{Covers, Unmeasured};

use crate::flying::{Columns, Flown, NEEDED, NoSuchBuild, VALUES, check_build, flown};
use figures::{CLUB, DRAWS, REST, SEED, SMASH};
use serde::Serialize;
use session::Session;
use session::known::Known;
use session::question::BuildPlace;
use two::Two;

/// Fewest shots with each build that can be flown.
const FEWEST: usize = 5;

/// Why a gap cannot be split.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CauseRefused {
    /// It names a build that is not there.
    NoSuchBuild(NoSuchBuild),
    /// Baseline and candidate are one build.
    SameBuildTwice,
    /// Too few shots of one of the two can be flown.
    TooFew {
        /// How many of each it takes.
        fewest: usize,
    },
    /// The session lacks what a flight, or a gap in carry, is made of.
    NotMeasured {
        /// What it lacks.
        missing: Vec<Known>,
    },
}

impl From<NoSuchBuild> for CauseRefused {
    fn from(refused: NoSuchBuild) -> Self {
        Self::NoSuchBuild(refused)
    }
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

impl Factor {
    /// The measure that it is, `None` for what the flight model does not explain.
    #[must_use]
    pub fn measure(self) -> Option<Known> {
        Some(match self {
            Self::BallSpeed => Known::BallSpeed,
            Self::LaunchAngle => Known::LaunchAngle,
            Self::SpinRate => Known::SpinRate,
            Self::LaunchDirection => Known::LaunchDirection,
            Self::SpinAxis => Known::SpinAxis,
            Self::ClubSpeed => Known::ClubSpeed,
            Self::Smash => Known::Smash,
            Self::Rest => return None,
        })
    }
}

/// The factors of a flight in the order of [`crate::flying::FACTORS`].
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
    #[must_use]
    pub fn is_clear(&self) -> bool {
        self.low > 0.0 || self.high < 0.0
    }
}

/// One part of the gap.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PartFacts {
    /// Through what.
    pub factor: Factor,
    /// Carry, yd.
    pub yards: Span,
    /// Whether it is clear even as one of five parts that were looked at.
    pub is_sure: bool,
    /// Whose doing.
    pub belongs: Belongs,
    /// By what the two builds differed, in the unit of the measure; `None` where they cannot be compared on it.
    #[serde(skip)]
    pub differed: Option<Span>,
}

/// What was split, and from which shots.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Split {
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
    /// The clear part that goes the way of the gap and is largest; null when none is.
    pub main: Option<Factor>,
    /// Resamples behind each interval.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
}

/// A gap in carry and where it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct CauseFacts {
    /// What was split, and from which shots.
    pub split: Split,
    /// Adds up to the gap; the rest is last.
    pub parts: Vec<PartFacts>,
    /// The part of ball speed once more, as club speed and smash; empty without club speed.
    pub ball_speed: Vec<PartFacts>,
    /// What the club did on its way to the ball, where that was measured.
    pub swing: Vec<MovedFacts>,
    /// What of a difference in spin or curve the delivery explains, roughly.
    pub spin: Vec<SpinSourceFacts>,
    /// What was not measured and would tell more.
    pub unmeasured: Vec<Unmeasured>,
}

/// Splits the gap in carry between two builds.
///
/// # Errors
/// A [`CauseRefused`] for builds that are not there or are one, and for fewer than five shots of each with carry, ball
/// speed, launch angle and spin.
pub fn cause(session: &Session, baseline: usize, candidate: usize) -> Result<CauseFacts, CauseRefused> {
    check_build(session, BuildPlace::Baseline, baseline)?;
    check_build(session, BuildPlace::Candidate, candidate)?;
    if baseline == candidate {
        return Err(CauseRefused::SameBuildTwice);
    }
    let columns = Columns::of(session);
    let shots = flown(session, &columns);
    let of = |build: usize| -> Vec<Flown> { shots.iter().filter(|s| s.build == build).copied().collect() };
    let (base, cand) = (split::ranked(&of(baseline)), split::ranked(&of(candidate)));
    if base.len() < FEWEST || cand.len() < FEWEST {
        return Err(too_few(session, &columns));
    }
    let figures = figures::figures(&base, &cand);
    let two = Two::of(session, baseline, candidate);
    let part = |at: usize, factor: Factor, belongs| PartFacts {
        factor,
        yards: figures.sized(at),
        is_sure: figures.is_sure(at),
        belongs,
        differed: factor.measure().and_then(|known| two.difference(known)),
    };
    let mut parts: Vec<PartFacts> =
        (0..VALUES).filter(|&i| columns.has(i)).map(|i| part(i, OF_FLIGHT[i], Belongs::Both)).collect();
    parts.push(part(REST, Factor::Rest, Belongs::Unexplained));
    let ball_speed = if columns.has_club_speed() {
        vec![part(CLUB, Factor::ClubSpeed, Belongs::Swing), part(SMASH, Factor::Smash, Belongs::Both)]
    } else {
        Vec::new()
    };
    let gap = figures.gap;
    let explains =
        |part: &&PartFacts| part.factor != Factor::Rest && part.is_sure && part.yards.value * gap > 0.0;
    let main =
        parts.iter().filter(explains).max_by(|a, b| a.yards.value.abs().total_cmp(&b.yards.value.abs()));
    let hit = session.shots.iter().filter(|s| s.build == baseline || s.build == candidate).count();
    Ok(CauseFacts {
        split: Split {
            baseline,
            candidate,
            gap,
            baseline_shots: base.len(),
            candidate_shots: cand.len(),
            not_flown: hit - base.len() - cand.len(),
            main: main.map(|part| part.factor),
            draws: DRAWS,
            seed: SEED,
        },
        parts,
        ball_speed,
        swing: delivery::moved(&two),
        spin: delivery::spin_sources(&two),
        unmeasured: findings::unmeasured(&two, &columns),
    })
}

fn too_few(session: &Session, columns: &Columns) -> CauseRefused {
    if columns.can_fly() {
        return CauseRefused::TooFew { fewest: FEWEST };
    }
    let lacks = |known: &Known| session.measure_index(&(*known).into()).is_none();
    let missing = NEEDED.into_iter().chain([Known::Carry]).filter(lacks).collect();
    CauseRefused::NotMeasured { missing }
}
