//! What warming up can amount to: the shape that stands in for what a session did not control.
//!
//! How much of it every measure gets stands in its row, [`session::known`].

use libm::exp;
use session::known::Known;

/// Deficit of the first shot against a warm golfer's, yards of carry. Assumed, common practice, no source.
const WARM_UP_YD: f64 = 6.0;
/// Shots after which about a third of the deficit is left. Assumed, common practice, no source.
const WARM_UP_SHOTS: f64 = 8.0;

/// Carry that a club new in the hand misses on its first shot, yards. Assumed, no source.
const UNLEARNED_YD: f64 = 10.0;
/// Shots with it after which about a third of that is left. Assumed, no source.
const LEARNING_SHOTS: f64 = 6.0;

/// What is left to learn on a club's own shot of this number (from 0), as a share of what there was on its first.
#[must_use]
pub fn unlearned(own_shot: usize) -> f64 {
    exp(-(own_shot as f64) / LEARNING_SHOTS)
}

/// What learning a club can cost on average over its first `shots`, in yards of carry.
#[must_use]
pub fn learning_cost_yd(shots: usize) -> f64 {
    UNLEARNED_YD * (0..shots).map(unlearned).sum::<f64>() / shots.max(1) as f64
}

/// Deficit that ordinary warming up leaves on the shot at this position of the session (from 0), in yards of carry.
#[must_use]
pub fn warm_up_deficit_yd(position: usize) -> f64 {
    WARM_UP_YD * exp(-(position as f64) / WARM_UP_SHOTS)
}

/// The same as a share of what order can move a measure by.
#[must_use]
pub fn warm_up_share(position: usize) -> f64 {
    warm_up_deficit_yd(position) / Known::Carry.facts().order_allowance
}

/// What the first shot of a lap loses after a rest or a walk, yards of carry. Assumed, no source.
const START_OF_LAP_YD: f64 = 5.0;
/// Shots of a lap after which about a third of that is left. Assumed, no source.
const START_OF_LAP_SHOTS: f64 = 3.0;

/// What is lost on the shot at this place of its lap (from 0), as a share of what order can move a measure by.
#[must_use]
pub fn start_of_lap(place: usize) -> f64 {
    START_OF_LAP_YD / Known::Carry.facts().order_allowance * exp(-(place as f64) / START_OF_LAP_SHOTS)
}
