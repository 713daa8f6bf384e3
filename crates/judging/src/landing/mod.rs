//! Where they land: each build's shots on the ground, its center and ellipses, and the chance to hit a fairway of a
//! chosen width, as aimed and with the best aim.
//!
//! First stands how many were counted, as a share with its interval (see `counted`); beside it the chance of a normal
//! scatter with the shots' own center and deviation, whose interval comes from a bootstrap of whole shots (see `chances`):
//! it alone can say what another aim would do. Carry only: where a ball rolls to is not known.
//! Aiming elsewhere moves every shot sideways by the same amount, which is right to a yard or two for shots about
//! equally long.

mod chances;
mod counted;
mod facts;
mod finding;
mod shots;

pub use chances::{BestAim, HitChance, LandingPair};
pub use facts::{BuildFacts, Ground, LandingFacts, LandingLimits};
pub use finding::LandingFinding;
pub use shots::{Landed, Oval, Spot};

use crate::flying::{NoSuchBuild, check_build};
use session::question::BuildPlace;
use session::{MOST_BUILDS, Session};
use shots::{Group, landed};

/// Width of a fairway when nobody said another, yd; as many meters where meters are shown. Common practice, no source.
pub const USUAL_FAIRWAY: f64 = 30.0;
/// Narrowest and widest strip worth asking for, yd.
const FAIRWAYS: [f64; 2] = [5.0, 100.0];
/// Farthest aim to either side, yd.
const FARTHEST_AIM: f64 = 60.0;
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
            counted: group.landed(aim, fairway),
            counted_share: counted::share(group.landed(aim, fairway), group.offline.len()),
            counted_as_aimed: group.landed(0.0, fairway) as f64 / group.offline.len() as f64,
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

fn check_within(place: StripPlace, value: f64, [low, high]: [f64; 2]) -> Result<(), LandingRefused> {
    let is_within = value >= low && value <= high;
    if is_within { Ok(()) } else { Err(LandingRefused::Outside { place, low, high }) }
}
