//! Where a flight left the range in which the coefficients were compared with measurements.
//!
//! Outside, the model extrapolates: show the number, but say so.

use std::f64::consts::PI;

/// Slowest air speed that the coefficients cover, m/s (Re about 6e4).
const SLOWEST_AIR_SPEED_MPS: f64 = 20.0;
/// Lowest spin that the coefficients cover, rad/s (1500 rpm).
const LOWEST_SPIN_RADPS: f64 = 1500.0 * PI / 30.0;
/// Lowest spin ratio that the coefficients cover.
const LOWEST_SPIN_RATIO: f64 = 0.03;
/// Highest spin ratio that the coefficients cover.
const HIGHEST_SPIN_RATIO: f64 = 1.0;

/// What a flight asked of the coefficients, at its steps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Validity {
    /// Slowest speed through the air, m/s.
    pub slowest_air_speed_mps: f64,
    /// Spin at launch, rad/s.
    pub launch_spin_radps: f64,
    /// Lowest spin ratio.
    pub lowest_spin_ratio: f64,
    /// Highest spin ratio.
    pub highest_spin_ratio: f64,
}

impl Validity {
    /// True when any part of the flight lies outside the range of the coefficients.
    #[must_use]
    pub fn is_extrapolated(&self) -> bool {
        self.is_too_slow() || self.has_too_little_spin() || self.has_too_much_spin()
    }

    /// The ball was slower through the air than 20 m/s: drag may be quite different there.
    #[must_use]
    pub fn is_too_slow(&self) -> bool {
        self.slowest_air_speed_mps < SLOWEST_AIR_SPEED_MPS
    }

    /// Less than 1500 rpm at launch, or a spin ratio under 0.03: the lift is a guess there.
    #[must_use]
    pub fn has_too_little_spin(&self) -> bool {
        // 1500 rpm converted by a caller may miss the last bit.
        self.launch_spin_radps < LOWEST_SPIN_RADPS * (1.0 - 1e-12)
            || self.lowest_spin_ratio < LOWEST_SPIN_RATIO
    }

    /// A spin ratio over 1: the surface outran the ball.
    #[must_use]
    pub fn has_too_much_spin(&self) -> bool {
        self.highest_spin_ratio > HIGHEST_SPIN_RATIO
    }
}
