//! One launch flown.

use super::standard_air::weather;
use super::{FlyRefused, RAD_PER_DEG, RADPS_PER_RPM, launch_of};
use flight::TimeStep;
use serde::{Deserialize, Serialize};
use session::Conditions;
use session::units::{M_PER_YD, MPS_PER_MPH};

/// How a ball leaves the club, in the units of the measures.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Launch {
    /// mph.
    pub ball_speed: f64,
    /// Degrees above the ground.
    pub launch_angle: f64,
    /// rpm, back and side spin together.
    pub spin_rate: f64,
    /// Degrees right of the target.
    #[serde(default)]
    pub launch_direction: f64,
    /// Degrees; positive curves to the right.
    #[serde(default)]
    pub spin_axis: f64,
}

/// What became of a launch, as the model flies it over level ground.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FlightOf {
    /// Carry along the target line, yd.
    pub carry: f64,
    /// Landing right of the target line, yd.
    pub offline: f64,
    /// Landing right of the line on which the ball started, yd.
    pub curve: f64,
    /// Peak height, yd.
    pub apex: f64,
    /// Degrees at landing; 3 to 4 degrees biased.
    pub descent_angle: f64,
    /// Seconds in the air.
    pub hang_time: f64,
    /// Speed at landing, mph.
    pub landing_speed: f64,
    /// Spin at landing, rpm.
    pub landing_spin: f64,
    /// True where the coefficients were never compared with measurements.
    pub extrapolated: bool,
}

/// Flies one launch.
///
/// # Errors
/// A [`FlyRefused`] for a number outside what golf balls do, or a ball that does not leave the ground.
pub fn fly(launch: &Launch, conditions: &Conditions) -> Result<FlightOf, FlyRefused> {
    let Launch { ball_speed, launch_angle, spin_rate, launch_direction, spin_axis } = *launch;
    let conditions = weather(conditions)?;
    let launch = launch_of(&[ball_speed, launch_angle, spin_rate, launch_direction, spin_axis]);
    let flight = flight::fly(&launch, &conditions, TimeStep::FINE)?;
    Ok(FlightOf {
        carry: flight.forward_m / M_PER_YD,
        offline: flight.lateral_m / M_PER_YD,
        curve: flight.curve_m / M_PER_YD,
        apex: flight.apex.height_m / M_PER_YD,
        descent_angle: flight.descent_rad / RAD_PER_DEG,
        hang_time: flight.time_s,
        landing_speed: flight.landing_speed_mps / MPS_PER_MPH,
        landing_spin: flight.landing_spin_radps / RADPS_PER_RPM,
        extrapolated: flight.validity.is_extrapolated(),
    })
}
