//! What warming up, tiring and the usual spread can amount to: the constants of ours that stand in
//! for what a session did not control.
//!
//! The allowances for carry, ball speed and club speed are measured by simulation: 6 yd is what a
//! strongly drifting session needs so that a plain comparison of two blocks keeps its error rate
//! (a typically drifting one needs 2.5 yd), and 0.45 and 0.31 mph go with each of those yards.
//! Those of offline and spin are judgement; for every other measure it is half the default
//! worthwhile difference, judgement too. A column outside the trade's list gets none: nothing is
//! known of how it drifts, and the words say how little drift would explain the lead.

use crate::measure::{self, MeasureId};
use libm::exp;

/// Widening of a half-width by the drift that order alone can cause, in the measure's unit.
#[must_use]
pub fn order_allowance(id: &MeasureId) -> f64 {
    let Some(usual) = measure::usual(id) else { return 0.0 };
    match usual.id {
        "carry" | "total" | "offline" => 6.0,
        "ball_speed" => 2.7,
        "club_speed" => 1.9,
        "spin_rate" => 150.0,
        _ => usual.margin / 2.0,
    }
}

/// The high end of the usual standard deviation of single shots, taken when averages come without one.
///
/// Ranges are common practice, no source; launch angle and club speed are our assumption.
/// `None` where no usual spread is known: then averages without a deviation give no verdict.
#[must_use]
pub fn largest_usual_sd(id: &MeasureId) -> Option<f64> {
    match measure::usual(id)?.id {
        "carry" | "total" => Some(14.0),
        "offline" => Some(20.0),
        "ball_speed" => Some(4.0),
        "club_speed" => Some(2.2),
        "spin_rate" => Some(600.0),
        "launch_angle" => Some(2.5),
        _ => None,
    }
}

/// The usual standard deviation of single shots: low, middle and high end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsualSpread {
    /// Of a golfer who scatters little.
    pub low: f64,
    /// What a plan takes when nothing is known.
    pub middle: f64,
    /// Of one who scatters much; see [`largest_usual_sd`].
    pub high: f64,
}

/// What is usual among amateurs with a driver; `None` where no usual spread is known.
///
/// Source: as for [`largest_usual_sd`]; the middle is about halfway.
#[must_use]
pub fn usual_spread(id: &MeasureId) -> Option<UsualSpread> {
    let high = largest_usual_sd(id)?;
    let (low, middle) = match id.0.as_str() {
        "carry" | "total" => (8.0, 11.0),
        "offline" => (13.0, 16.0),
        "ball_speed" => (2.5, 3.0),
        "club_speed" => (1.2, 1.6),
        "spin_rate" => (250.0, 400.0),
        _ => (1.2, 1.8),
    };
    Some(UsualSpread { low, middle, high })
}

/// The usual kurtosis of single shots (3 for a normal distribution), which decides how many shots a comparison of
/// scatters takes. Assumed: that of the invented shots, see `cargo xtask simulate`; 4 where none were invented.
#[must_use]
pub fn usual_kurtosis(id: &MeasureId) -> f64 {
    match id.0.as_str() {
        "carry" | "total" | "spin_rate" => 8.0,
        "offline" => 4.5,
        "ball_speed" => 5.5,
        _ => 4.0,
    }
}

/// Deficit of the first shot against a warm golfer's, yards of carry. Assumed, common practice, no source.
const WARM_UP_YD: f64 = 6.0;
/// Shots after which about a third of the deficit is left. Assumed, common practice, no source.
const WARM_UP_SHOTS: f64 = 8.0;

/// Deficit that ordinary warming up leaves on the shot at this position of the session (from 0), in yards of carry.
#[must_use]
pub fn warm_up_deficit_yd(position: usize) -> f64 {
    WARM_UP_YD * exp(-(position as f64) / WARM_UP_SHOTS)
}

/// What one yard of carry lost to warming up costs on this measure; `None` where that is not known.
#[must_use]
pub fn per_yard_of_carry(id: &MeasureId) -> Option<f64> {
    match measure::usual(id)?.id {
        "carry" | "total" => Some(1.0),
        "ball_speed" => Some(0.45),
        "club_speed" => Some(0.31),
        _ => None,
    }
}
