//! How much carry a little speed, launch or spin is worth at one shot.
//!
//! Partial derivatives: each with the others held. A change of club moves launch and spin together,
//! so these are not the effects of a club.

use crate::conditions::Conditions;
use crate::error::{LaunchError, Quantity};
use crate::launch::Launch;
use crate::limits::limits;
use crate::trajectory::{Flight, TimeStep, fly};
use std::f64::consts::PI;

/// Half a mile per hour, m/s.
const SPEED_STEP_MPS: f64 = 0.223_52;
/// Half a degree.
const ANGLE_STEP_RAD: f64 = 0.5 * PI / 180.0;
/// Fifty revolutions per minute, rad/s.
const SPIN_STEP_RADPS: f64 = 50.0 * PI / 30.0;
/// The launch angle must stay above the ground.
const LOWEST_LAUNCH_RAD: f64 = 1e-3;

/// Derivatives of the forward carry, and of the curve, at one launch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sensitivities {
    /// Carry per ball speed, m per m/s.
    pub carry_per_speed_s: f64,
    /// Carry per launch angle, m/rad.
    pub carry_per_elevation_mprad: f64,
    /// Second derivative of carry by launch angle, m/rad²: how the one above fades.
    pub carry_elevation_curvature_mprad2: f64,
    /// Carry per spin, m per rad/s.
    pub carry_per_spin_ms: f64,
    /// Carry per tilt of the spin axis, m/rad; 0 for a straight shot.
    pub carry_per_axis_mprad: f64,
    /// Curve per tilt of the spin axis, m/rad.
    pub curve_per_axis_mprad: f64,
}

/// Derivatives by central differences over ±0.5 mph, ±0.5 deg and ±50 rpm.
///
/// (f(x + h) − f(x − h))/2h and (f(x + h) − 2f(x) + f(x − h))/h². The steps are wide enough to be what
/// a golfer means by 'a bit more'. Next to a hard limit the three points are moved inside it.
/// Accuracy: 1 % of the derivative or 1e-3 yd per mph, deg or 100 rpm.
///
/// # Errors
/// As [`fly`].
pub fn sensitivities(
    launch: &Launch,
    conditions: &Conditions,
    step: TimeStep,
) -> Result<Sensitivities, LaunchError> {
    fly(launch, conditions, step)?;
    let at = |changed: Launch| fly(&changed, conditions, step);
    let speed = Stencil::new(launch.speed_mps, SPEED_STEP_MPS, Quantity::BallSpeed);
    let elevation = Stencil::new(launch.elevation_rad, ANGLE_STEP_RAD, Quantity::Elevation);
    let spin = Stencil::new(launch.spin_radps, SPIN_STEP_RADPS, Quantity::Spin);
    let axis = Stencil::new(launch.spin_axis_rad, ANGLE_STEP_RAD, Quantity::SpinAxis);

    let by_speed = speed.fly(|speed_mps| at(Launch { speed_mps, ..*launch }))?;
    let by_elevation = elevation.fly(|elevation_rad| at(Launch { elevation_rad, ..*launch }))?;
    let by_spin = spin.fly(|spin_radps| at(Launch { spin_radps, ..*launch }))?;
    let by_axis = axis.fly(|spin_axis_rad| at(Launch { spin_axis_rad, ..*launch }))?;

    let forward = |flight: &Flight| flight.forward_m;
    Ok(Sensitivities {
        carry_per_speed_s: speed.slope(&by_speed, forward),
        carry_per_elevation_mprad: elevation.slope(&by_elevation, forward),
        carry_elevation_curvature_mprad2: elevation.curvature(&by_elevation, forward),
        carry_per_spin_ms: spin.slope(&by_spin, forward),
        carry_per_axis_mprad: axis.slope(&by_axis, forward),
        curve_per_axis_mprad: axis.slope(&by_axis, |flight| flight.curve_m),
    })
}

/// Three places, `step` apart, around one value and inside its limits.
struct Stencil {
    middle: f64,
    step: f64,
}

impl Stencil {
    fn new(value: f64, step: f64, quantity: Quantity) -> Self {
        let allowed = limits(quantity);
        let lowest = match quantity {
            Quantity::Elevation => LOWEST_LAUNCH_RAD,
            _ => allowed.low,
        };
        Self { middle: value.min(allowed.high - step).max(lowest + step), step }
    }

    fn fly(&self, at: impl Fn(f64) -> Result<Flight, LaunchError>) -> Result<[Flight; 3], LaunchError> {
        Ok([at(self.middle - self.step)?, at(self.middle)?, at(self.middle + self.step)?])
    }

    fn slope(&self, [low, _, high]: &[Flight; 3], of: impl Fn(&Flight) -> f64) -> f64 {
        (of(high) - of(low)) / (2.0 * self.step)
    }

    fn curvature(&self, [low, middle, high]: &[Flight; 3], of: impl Fn(&Flight) -> f64) -> f64 {
        (of(high) - 2.0 * of(middle) + of(low)) / (self.step * self.step)
    }
}
