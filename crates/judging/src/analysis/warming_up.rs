//! What warming up can amount to: the shape that stands in for what a session did not control.
//!
//! How much of it every measure gets stands in its row, [`session::known`].

use libm::exp;

/// Deficit of the first shot against a warm golfer's, yards of carry. Assumed, common practice, no source.
const WARM_UP_YD: f64 = 6.0;
/// Shots after which about a third of the deficit is left. Assumed, common practice, no source.
const WARM_UP_SHOTS: f64 = 8.0;

/// Deficit that ordinary warming up leaves on the shot at this position of the session (from 0), in yards of carry.
#[must_use]
pub fn warm_up_deficit_yd(position: usize) -> f64 {
    WARM_UP_YD * exp(-(position as f64) / WARM_UP_SHOTS)
}

/// What the first shot of a lap loses after a rest or a walk, as a share of what order can move a measure by: 5 yd of
/// carry, of 6. Assumed, no source.
const START_OF_LAP: f64 = 5.0 / 6.0;
/// Shots of a lap after which about a third of that is left. Assumed, no source.
const START_OF_LAP_SHOTS: f64 = 3.0;

/// What is lost on the shot at this place of its lap (from 0), as that share.
#[must_use]
pub fn start_of_lap(place: usize) -> f64 {
    START_OF_LAP * exp(-(place as f64) / START_OF_LAP_SHOTS)
}
