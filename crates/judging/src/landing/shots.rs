//! The shots that landed, build by build: where, around which center, and within which ellipses the next would fall.

use serde::Serialize;
use session::known::Known;
use session::{Session, Shot};
use stats::points::{Ellipse, Points};

/// Fewest shots with both numbers before it is drawn where the next would fall: from fewer the oval of nine in ten is
/// more than half as wide again as the scatter that the shots show.
pub const FEWEST_FOR_OVALS: usize = 8;

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

/// Where the next shot falls with this chance, when middle and scatter are known from these shots alone.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Oval {
    /// Chance that the next shot falls inside, 0 to 1.
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
        let Some(points) = self.points().filter(|points| points.n() >= FEWEST_FOR_OVALS) else {
            return Vec::new();
        };
        let oval = |share: f64| {
            let Ellipse { major, minor, angle_deg, .. } = points.prediction_ellipse(share)?;
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

#[cfg(test)]
mod tests {
    use super::*;
    use stats::distributions::normal_upper;

    /// Even numbers of a linear congruential generator (Knuth's MMIX), as normal ones.
    struct Normal(u64);

    impl Normal {
        fn next(&mut self) -> f64 {
            self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            normal_upper(((self.0 >> 11) as f64 + 0.5) / (1_u64 << 53) as f64)
        }

        /// A shot that goes longer the farther right it goes.
        fn place(&mut self) -> Spot {
            let (a, b) = (self.next(), self.next());
            Spot { offline: 6.0 + 15.0 * a, carry: 250.0 + 4.0 * a + 10.0 * b }
        }
    }

    fn group(places: &[Spot]) -> Group {
        let landed =
            |(shot, place): (usize, &Spot)| Landed { shot, build: 0, place: *place, left_out: false };
        Group::of(0, &places.iter().enumerate().map(landed).collect::<Vec<_>>())
    }

    fn is_inside(oval: &Oval, center: Spot, place: Spot) -> bool {
        let (sin, cos) = libm::sincos(oval.angle.to_radians());
        let (x, y) = (place.offline - center.offline, place.carry - center.carry);
        libm::hypot((x * cos + y * sin) / oval.major, (y * cos - x * sin) / oval.minor) <= 1.0
    }

    /// The promise of the picture: of the shots not yet hit, as many as an oval says fall into it. Four standard errors
    /// of 4,000 sessions are allowed to both sides: 3.2 of a hundred for half, 1.9 for nine tenths.
    #[test]
    fn the_next_shot_falls_into_an_oval_as_often_as_it_says() {
        let sessions = 4000;
        for n in [8, 12, 30] {
            let mut normal = Normal(n as u64);
            let mut inside = [0_u32; 2];
            for _ in 0..sessions {
                let places: Vec<Spot> = (0..n).map(|_| normal.place()).collect();
                let (group, next) = (group(&places), normal.place());
                let ovals = group.ovals();
                assert_eq!(ovals.len(), 2);
                for (count, oval) in inside.iter_mut().zip(&ovals) {
                    *count += u32::from(is_inside(oval, group.center(), next));
                }
            }
            for (count, share) in inside.into_iter().zip([0.5_f64, 0.9]) {
                let found = f64::from(count) / f64::from(sessions);
                let reach = 4.0 * (share * (1.0 - share) / f64::from(sessions)).sqrt();
                assert!((found - share).abs() <= reach, "{found} of {share} with {n} shots");
            }
        }
    }

    #[test]
    fn ovals_begin_at_eight_shots() {
        let mut normal = Normal(3);
        let places: Vec<Spot> = (0..FEWEST_FOR_OVALS).map(|_| normal.place()).collect();
        assert!(group(&places[1..]).ovals().is_empty());
        assert_eq!(group(&places).ovals().iter().map(|oval| oval.share).collect::<Vec<_>>(), [0.5, 0.9]);
    }
}
