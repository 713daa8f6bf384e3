//! Where they land: each build's shots on the ground, its center and ellipses, and the chance to hit a fairway of a
//! chosen width, as aimed and with the best aim.
//!
//! A chance is that of a normal scatter with the shots' own center and deviation; its interval comes from a bootstrap of
//! whole shots (see `chances`); beside it stands how many were counted. Carry only: where a ball rolls to is not known. Aiming elsewhere moves every shot sideways by the same amount, which is right to a yard or two for shots
//! about equally long.

mod chances;
mod words;

pub use chances::{BestAim, HitChance, LandingPair};
pub use words::{BuildWords, LandingWords};

use crate::check::{MOST_BUILDS, Refusal};
use crate::flying::check_build;
use crate::measure::{MeasureId, Unit};
use crate::session::Session;
use crate::words::Subject;
use serde::{Deserialize, Serialize};
use stats::points::{Ellipse, Points};
use text::flying as say;

/// Width of a fairway when nobody said another, yd; as many meters where meters are shown. Common practice, no source.
const USUAL_FAIRWAY: f64 = 30.0;
/// Narrowest and widest strip worth asking for, yd.
const FAIRWAYS: [f64; 2] = [5.0, 100.0];
/// Farthest aim to either side, yd.
const FARTHEST_AIM: f64 = 60.0;
/// Fewest shots with both numbers before an ellipse is drawn.
const FEWEST_FOR_ELLIPSE: usize = 4;

/// Which hand the golfer plays with, for the words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Hand {
    /// Right-handed: a slice goes right.
    Right,
    /// Left-handed: a slice goes left.
    Left,
}

/// What [`landing`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct LandingRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the build held against it; left open, none is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub candidate: Option<usize>,
    /// Width of the fairway, yd; left open, a usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fairway: Option<f64>,
    /// Aim, yd right of the middle of the fairway; left open, as aimed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub aim: Option<f64>,
    /// Which hand the golfer plays with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hand: Option<Hand>,
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
pub struct BuildLanding {
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
    /// HitChance at this aim; null for too few shots.
    pub at_aim: Option<HitChance>,
    /// HitChance as aimed on the day; null for too few shots.
    pub as_aimed: Option<HitChance>,
    /// The aim that would hit most; null for too few shots.
    pub best: Option<BestAim>,
    /// Sentences.
    pub words: BuildWords,
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

/// Where they land.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Landing {
    /// Width of the fairway, yd.
    pub fairway: f64,
    /// Aim, yd right of its middle.
    pub aim: f64,
    /// What can be asked for.
    pub limits: LandingLimits,
    /// Every shot with carry and offline, in the order hit.
    pub shots: Vec<Landed>,
    /// Builds that have such shots.
    pub builds: Vec<BuildLanding>,
    /// The two builds asked about; null when one of them has too few shots.
    pub pair: Option<LandingPair>,
    /// Resamples behind each interval.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
    /// Sentences.
    pub words: LandingWords,
}

/// Shows where the shots land and how often they would hit a fairway.
///
/// # Errors
/// A [`Refusal`] for a build that is not there, a fairway or an aim outside its range, and a session without carry and
/// offline of the same shots.
pub fn landing(request: &LandingRequest) -> Result<Landing, Refusal> {
    let session = &request.session;
    check_build(session, "baseline", request.baseline)?;
    if let Some(candidate) = request.candidate {
        check_build(session, "candidate", candidate)?;
    }
    let usual = Unit::Yd.as_round(USUAL_FAIRWAY);
    let fairway = within(session, request.fairway.unwrap_or(usual), FAIRWAYS, "fairway")?;
    let aim = within(session, request.aim.unwrap_or(0.0), [-FARTHEST_AIM, FARTHEST_AIM], "aim")?;
    let shots = landed(session);
    let groups: Vec<Group> = (0..session.builds.len().min(MOST_BUILDS))
        .map(|build| Group::of(build, &shots))
        .filter(|group| !group.offline.is_empty())
        .collect();
    if groups.is_empty() {
        return Err(nothing_landed());
    }
    let found = chances::chances(&groups, request.baseline, request.candidate, fairway, aim);
    let builds = groups
        .iter()
        .zip(found.builds)
        .map(|(group, chances)| BuildLanding {
            build: group.build,
            n: group.offline.len(),
            center: group.center(),
            ovals: group.ovals(),
            counted: group.offline.iter().filter(|x| (*x + aim).abs() <= 0.5 * fairway).count(),
            at_aim: chances.at_aim,
            as_aimed: chances.as_aimed,
            best: chances.best,
            words: BuildWords::default(),
        })
        .collect();
    let limits = LandingLimits { narrowest: FAIRWAYS[0], widest: FAIRWAYS[1], farthest_aim: FARTHEST_AIM };
    let mut landing = Landing {
        fairway,
        aim,
        limits,
        shots,
        builds,
        pair: found.pair,
        draws: chances::DRAWS,
        seed: chances::SEED,
        words: LandingWords::default(),
    };
    words::fill(request, &mut landing);
    Ok(landing)
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
    let place = |id: &str| session.measure_index(&MeasureId::from(id));
    let (Some(carry), Some(offline)) = (place("carry"), place("offline")) else { return Vec::new() };
    let landed = |(shot, hit): (usize, &crate::session::Shot)| {
        let value = |index: usize| hit.values.get(index).copied().flatten();
        let place = Spot { offline: value(offline)?, carry: value(carry)? };
        Some(Landed { shot, build: hit.build, place, left_out: hit.left_out.is_some() })
    };
    session.shots.iter().enumerate().filter_map(landed).collect()
}

fn within(session: &Session, value: f64, [low, high]: [f64; 2], place: &str) -> Result<f64, Refusal> {
    if value >= low && value <= high {
        return Ok(value);
    }
    let yards = Subject::of(&"offline".into(), session);
    Err(Refusal {
        kind: "outside".into(),
        place: place.into(),
        message: say::cannot_be_shown(place),
        remedy: say::cannot_be_shown_remedy(&yards.value(low), &yards.value(high)),
    })
}

fn nothing_landed() -> Refusal {
    Refusal {
        kind: "not_measured".into(),
        place: "session.shots".into(),
        message: say::nothing_landed(),
        remedy: say::nothing_landed_remedy(),
    }
}
