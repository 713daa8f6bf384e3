//! The shots that landed, build by build: where, around which center, and within which ellipses.

use serde::Serialize;
use session::known::Known;
use session::{Session, Shot};
use stats::points::{Ellipse, Points};

/// Fewest shots with both numbers before an ellipse is drawn.
pub(super) const FEWEST_FOR_ELLIPSE: usize = 4;

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

/// The shots of one build with both numbers.
pub(super) struct Group {
    pub(super) build: usize,
    pub(super) offline: Vec<f64>,
    carry: Vec<f64>,
}

impl Group {
    pub(super) fn of(build: usize, shots: &[Landed]) -> Self {
        let own = || shots.iter().filter(|shot| shot.build == build);
        Self {
            build,
            offline: own().map(|shot| shot.place.offline).collect(),
            carry: own().map(|shot| shot.place.carry).collect(),
        }
    }

    /// Shots on a fairway of this width, each moved to the right by the aim.
    pub(super) fn landed(&self, aim: f64, fairway: f64) -> usize {
        self.offline.iter().filter(|x| (*x + aim).abs() <= 0.5 * fairway).count()
    }

    pub(super) fn center(&self) -> Spot {
        let mean = stats::describe::mean;
        Spot { offline: mean(&self.offline), carry: mean(&self.carry) }
    }

    pub(super) fn points(&self) -> Option<Points> {
        Points::new(&self.offline, &self.carry).ok()
    }

    pub(super) fn ovals(&self) -> Vec<Oval> {
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

pub(super) fn landed(session: &Session) -> Vec<Landed> {
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
