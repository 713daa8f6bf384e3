//! Where they land: each build's shots on the ground, its center and ellipses, and the chance to hit a fairway of a
//! chosen width, as aimed and with the best aim.
//!
//! A chance is that of a normal scatter with the shots' own center and deviation; its interval comes from a bootstrap of
//! whole shots (see `chances`); beside it stands how many were counted. Carry only: where a ball rolls to is not known.
//! Aiming elsewhere moves every shot sideways by the same amount, which is right to a yard or two for shots about
//! equally long.

mod chances;
mod finding;

pub use chances::{BestAim, HitChance, LandingPair};
pub use finding::LandingFinding;

use crate::flying::{NoSuchBuild, check_build};
use serde::Serialize;
use session::known::Known;
use session::question::BuildPlace;
use session::{MOST_BUILDS, Session, Shot};
use stats::points::{Ellipse, Points};

/// Width of a fairway when nobody said another, yd; as many meters where meters are shown. Common practice, no source.
pub const USUAL_FAIRWAY: f64 = 30.0;
/// Narrowest and widest strip worth asking for, yd.
const FAIRWAYS: [f64; 2] = [5.0, 100.0];
/// Farthest aim to either side, yd.
const FARTHEST_AIM: f64 = 60.0;
/// Fewest shots with both numbers before an ellipse is drawn.
const FEWEST_FOR_ELLIPSE: usize = 4;

/// What is shown where the shots of a session land.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strip {
    /// Width of the fairway, yd.
    pub fairway: f64,
    /// Aim, yd right of its middle.
    pub aim: f64,
}

/// Which number of a [`Strip`] a refusal speaks of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StripPlace {
    /// Its width.
    Fairway,
    /// Where it is aimed.
    Aim,
}

/// Why it cannot be shown where shots land.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LandingRefused {
    /// It names a build that is not there.
    NoSuchBuild(NoSuchBuild),
    /// A fairway or an aim that is not worth asking for.
    Outside {
        /// Which of the two.
        place: StripPlace,
        /// Lowest that is, yd.
        low: f64,
        /// Highest that is, yd.
        high: f64,
    },
    /// No shot has both carry and offline.
    NothingLanded,
}

impl From<NoSuchBuild> for LandingRefused {
    fn from(refused: NoSuchBuild) -> Self {
        Self::NoSuchBuild(refused)
    }
}

/// A place on the ground.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Spot {
    /// Right of the target line, yd.
    pub offline: f64,
    /// From the tee, yd.
    pub carry: f64,
}

/// A shot on the ground, as hit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Landed {
    /// Its place in the session.
    pub shot: usize,
    /// Index of its build.
    pub build: usize,
    /// Where it landed.
    pub place: Spot,
    /// Whether it was set aside; it counts all the same.
    pub left_out: bool,
}

/// Where a normal scatter like this puts a share of its shots.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Oval {
    /// Share inside, 0 to 1.
    pub share: f64,
    /// Half the longer axis, yd.
    pub major: f64,
    /// Half the shorter axis, yd.
    pub minor: f64,
    /// Angle of the longer axis, degrees from 'to the right' toward 'away from the tee'.
    pub angle: f64,
}

/// One build on the ground.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BuildFacts {
    /// Index of the build.
    pub build: usize,
    /// Shots with carry and offline.
    pub n: usize,
    /// Average place, as hit.
    pub center: Spot,
    /// Half and nine tenths of the shots; empty for too few shots.
    pub ovals: Vec<Oval>,
    /// Shots on the fairway at this aim, counted.
    pub counted: usize,
    /// Chance at this aim; null for too few shots.
    pub at_aim: Option<HitChance>,
    /// Chance as aimed on the day; null for too few shots.
    pub as_aimed: Option<HitChance>,
    /// The aim that would hit most; null for too few shots.
    pub best: Option<BestAim>,
}

/// What can be asked for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LandingLimits {
    /// Narrowest fairway, yd.
    pub narrowest: f64,
    /// Widest fairway, yd.
    pub widest: f64,
    /// Farthest aim to either side, yd.
    pub farthest_aim: f64,
}

/// The shots on the ground, and the two builds asked about.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Ground {
    /// Width of the fairway, yd.
    pub fairway: f64,
    /// Aim, yd right of its middle.
    pub aim: f64,
    /// What can be asked for.
    pub limits: LandingLimits,
    /// Every shot with carry and offline, in the order hit.
    pub shots: Vec<Landed>,
    /// The two builds asked about; null when one of them has too few shots.
    pub pair: Option<LandingPair>,
    /// Resamples behind each interval.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
}

/// Where they land.
#[derive(Debug, Clone, PartialEq)]
pub struct LandingFacts {
    /// The shots on the ground, and the two builds asked about.
    pub ground: Ground,
    /// Builds that have such shots.
    pub builds: Vec<BuildFacts>,
}

/// Finds where the shots land and how often they would hit a strip.
///
/// # Errors
/// A [`LandingRefused`] for a build that is not there, a fairway or an aim outside its range, and a session without
/// carry and offline of the same shots.
pub fn landing(
    session: &Session,
    baseline: usize,
    candidate: Option<usize>,
    strip: Strip,
) -> Result<LandingFacts, LandingRefused> {
    check_build(session, BuildPlace::Baseline, baseline)?;
    if let Some(candidate) = candidate {
        check_build(session, BuildPlace::Candidate, candidate)?;
    }
    let Strip { fairway, aim } = strip;
    check_within(StripPlace::Fairway, fairway, FAIRWAYS)?;
    check_within(StripPlace::Aim, aim, [-FARTHEST_AIM, FARTHEST_AIM])?;
    let shots = landed(session);
    let groups: Vec<Group> = (0..session.builds.len().min(MOST_BUILDS))
        .map(|build| Group::of(build, &shots))
        .filter(|group| !group.offline.is_empty())
        .collect();
    if groups.is_empty() {
        return Err(LandingRefused::NothingLanded);
    }
    let found = chances::chances(&groups, baseline, candidate, fairway, aim);
    let builds = groups
        .iter()
        .zip(found.builds)
        .map(|(group, chances)| BuildFacts {
            build: group.build,
            n: group.offline.len(),
            center: group.center(),
            ovals: group.ovals(),
            counted: group.offline.iter().filter(|x| (*x + aim).abs() <= 0.5 * fairway).count(),
            at_aim: chances.at_aim,
            as_aimed: chances.as_aimed,
            best: chances.best,
        })
        .collect();
    let ground = Ground {
        fairway,
        aim,
        limits: LandingLimits { narrowest: FAIRWAYS[0], widest: FAIRWAYS[1], farthest_aim: FARTHEST_AIM },
        shots,
        pair: found.pair,
        draws: chances::DRAWS,
        seed: chances::SEED,
    };
    Ok(LandingFacts { ground, builds })
}

/// The shots of one build with both numbers.
struct Group {
    build: usize,
    offline: Vec<f64>,
    carry: Vec<f64>,
}

impl Group {
    fn of(build: usize, shots: &[Landed]) -> Self {
        let own = || shots.iter().filter(|shot| shot.build == build);
        Self {
            build,
            offline: own().map(|shot| shot.place.offline).collect(),
            carry: own().map(|shot| shot.place.carry).collect(),
        }
    }

    fn center(&self) -> Spot {
        let mean = stats::describe::mean;
        Spot { offline: mean(&self.offline), carry: mean(&self.carry) }
    }

    fn points(&self) -> Option<Points> {
        Points::new(&self.offline, &self.carry).ok()
    }

    fn ovals(&self) -> Vec<Oval> {
        let Some(points) = self.points().filter(|points| points.n() >= FEWEST_FOR_ELLIPSE) else {
            return Vec::new();
        };
        let oval = |share: f64| {
            let Ellipse { major, minor, angle_deg, .. } = points.ellipse(share)?;
            Some(Oval { share, major, minor, angle: angle_deg })
        };
        [0.5, 0.9].into_iter().filter_map(oval).collect()
    }
}

fn landed(session: &Session) -> Vec<Landed> {
    let place = |known: Known| session.measure_index(&known.into());
    let (Some(carry), Some(offline)) = (place(Known::Carry), place(Known::Offline)) else {
        return Vec::new();
    };
    let landed = |(shot, hit): (usize, &Shot)| {
        let value = |index: usize| hit.values.get(index).copied().flatten();
        let place = Spot { offline: value(offline)?, carry: value(carry)? };
        Some(Landed { shot, build: hit.build, place, left_out: hit.left_out.is_some() })
    };
    session.shots.iter().enumerate().filter_map(landed).collect()
}

fn check_within(place: StripPlace, value: f64, [low, high]: [f64; 2]) -> Result<(), LandingRefused> {
    let is_within = value >= low && value <= high;
    if is_within { Ok(()) } else { Err(LandingRefused::Outside { place, low, high }) }
}
