//! How the ball leaves the club face: speed, direction and spin.

use crate::error::{LaunchError, Quantity};
use crate::limits::check_launch;
use crate::vector::Vec3;
use libm::{atan2, cos, hypot, sin, sincos};

/// A ball at the moment it leaves the club face. The spin axis is perpendicular to the flight: no
/// rifle spin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Launch {
    /// Ball speed, m/s.
    pub speed_mps: f64,
    /// Launch angle above the horizontal, rad.
    pub elevation_rad: f64,
    /// Launch direction, right of the target positive, rad.
    pub azimuth_rad: f64,
    /// Total spin, rad/s.
    pub spin_radps: f64,
    /// Tilt of the spin axis, rad; positive curves to the right.
    pub spin_axis_rad: f64,
}

/// Spin as its rate and the tilt of its axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spin {
    /// Total spin, rad/s.
    pub total_radps: f64,
    /// Tilt of the axis, rad; positive curves to the right.
    pub axis_rad: f64,
}

impl Spin {
    /// From back spin and side spin, rad/s; side spin to the right is positive.
    ///
    /// total = √(back² + side²),  axis = atan2(side, back).
    #[must_use]
    pub fn from_components(backspin_radps: f64, sidespin_radps: f64) -> Self {
        Self {
            total_radps: hypot(backspin_radps, sidespin_radps),
            axis_rad: atan2(sidespin_radps, backspin_radps),
        }
    }

    /// Back spin, rad/s: total · cos(axis).
    #[must_use]
    pub fn backspin_radps(&self) -> f64 {
        self.total_radps * cos(self.axis_rad)
    }

    /// Side spin, rad/s: total · sin(axis).
    #[must_use]
    pub fn sidespin_radps(&self) -> f64 {
        self.total_radps * sin(self.axis_rad)
    }
}

impl Launch {
    /// Spin of the launch.
    #[must_use]
    pub fn spin(&self) -> Spin {
        Spin { total_radps: self.spin_radps, axis_rad: self.spin_axis_rad }
    }

    /// Whether every value lies within the hard limits (see [`crate::limits()`]).
    ///
    /// A launch at or below the horizontal may be within them: a topped ball is a golf shot.
    ///
    /// # Errors
    /// The first value that is not finite or lies outside.
    pub fn check(&self) -> Result<(), LaunchError> {
        check_launch(Quantity::BallSpeed, self.speed_mps)?;
        check_launch(Quantity::Elevation, self.elevation_rad)?;
        check_launch(Quantity::Azimuth, self.azimuth_rad)?;
        check_launch(Quantity::Spin, self.spin_radps)?;
        check_launch(Quantity::SpinAxis, self.spin_axis_rad)
    }

    /// v₀ = V (cos θ cos φ, sin θ, cos θ sin φ).
    pub(crate) fn velocity_mps(&self) -> Vec3 {
        let (up, level) = sincos(self.elevation_rad);
        let (right, ahead) = sincos(self.azimuth_rad);
        Vec3::new(level * ahead, up, level * right) * self.speed_mps
    }

    /// ω = ω (cos a r̂ − sin a n̂),  r̂ = (−sin φ, 0, cos φ),  n̂ = r̂ × v̂₀.
    pub(crate) fn spin_vector_radps(&self) -> Vec3 {
        let frame = SpinFrame::of(self.elevation_rad, self.azimuth_rad);
        let (side, back) = sincos(self.spin_axis_rad);
        (frame.right * back - frame.normal * side) * self.spin_radps
    }
}

/// The two directions, perpendicular to a velocity, in which back spin and side spin are counted.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SpinFrame {
    /// Level, to the right of the flight.
    pub(crate) right: Vec3,
    /// Perpendicular to the flight and to `right`, upward.
    pub(crate) normal: Vec3,
}

impl SpinFrame {
    pub(crate) fn of(elevation_rad: f64, azimuth_rad: f64) -> Self {
        let (up, level) = sincos(elevation_rad);
        let (right, ahead) = sincos(azimuth_rad);
        let rightward = Vec3::new(-right, 0.0, ahead);
        let along = Vec3::new(level * ahead, up, level * right);
        Self { right: rightward, normal: rightward.cross(along) }
    }
}
