//! Smash, spin loft and face to path: definitions, no model behind them.

use crate::error::Quantity;
use crate::limits::limits;
use libm::{asin, cos, sin};

/// Above this a smash is doubted: the cap of a light driver at no spin loft is about 1.49.
/// Common practice, no source.
const HIGH_SMASH: f64 = 1.52;

/// What a smash says about the two speeds it was made from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SmashVerdict {
    /// Within 0.70 to 1.52.
    Ordinary,
    /// Above 1.52, up to 1.56: one of the two speeds is probably off.
    High,
    /// Outside 0.70 to 1.56, or no number: the speeds do not belong together.
    Impossible,
}

/// Ball speed over club speed; `None` without two positive finite speeds.
#[must_use]
pub fn smash(ball_speed_mps: f64, club_speed_mps: f64) -> Option<f64> {
    let usable = |speed: f64| speed.is_finite() && speed > 0.0;
    if !(usable(ball_speed_mps) && usable(club_speed_mps)) {
        return None;
    }
    Some(ball_speed_mps / club_speed_mps).filter(|ratio| ratio.is_finite())
}

/// Judges a smash by the hard limits.
#[must_use]
pub fn judge_smash(smash: f64) -> SmashVerdict {
    let allowed = limits(Quantity::Smash);
    // Written so that 'no number' is impossible.
    if smash >= allowed.low && smash <= HIGH_SMASH {
        SmashVerdict::Ordinary
    } else if smash > HIGH_SMASH && smash <= allowed.high {
        SmashVerdict::High
    } else {
        SmashVerdict::Impossible
    }
}

/// Face angle minus club path, rad; positive when the face points right of the path.
#[must_use]
pub fn face_to_path_rad(face_rad: f64, path_rad: f64) -> f64 {
    face_rad - path_rad
}

/// Angle between the club's direction and the normal of its face, rad.
///
/// cos(sl) = cos L cos A cos(F − P) + sin L sin A, with dynamic loft L, attack A, face F, path P.
/// It equals L − A only if face and path agree (see [`plane_spin_loft_rad`]). Never negative.
/// Evaluated by its half angle, 2 asin √(sin²((L−A)/2) + cos L cos A sin²((F−P)/2)), which keeps its
/// digits where the cosine is near 1. A value that is no number stays no number.
#[must_use]
pub fn spin_loft_rad(dynamic_loft_rad: f64, attack_rad: f64, face_rad: f64, path_rad: f64) -> f64 {
    let upright = sin(0.5 * (dynamic_loft_rad - attack_rad));
    let sideways = sin(0.5 * face_to_path_rad(face_rad, path_rad));
    let squared = upright * upright + cos(dynamic_loft_rad) * cos(attack_rad) * sideways * sideways;
    2.0 * asin(squared.clamp(0.0, 1.0).sqrt())
}

/// Spin loft in the vertical plane, rad: dynamic loft minus attack.
#[must_use]
pub fn plane_spin_loft_rad(dynamic_loft_rad: f64, attack_rad: f64) -> f64 {
    dynamic_loft_rad - attack_rad
}
