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
