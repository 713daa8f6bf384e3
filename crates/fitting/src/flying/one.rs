//! One launch flown: the contract's `fly`.

use super::{RAD_PER_DEG, RADPS_PER_RPM, launch_of};
use crate::check::Refusal;
use crate::session::Conditions;
use crate::units::{M_PER_YD, MPS_PER_MPH};
use flight::{LaunchError, Quantity, TimeStep};
use serde::{Deserialize, Serialize};
use text::flying as say;

/// How a ball leaves the club, in the units of the measures.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
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

/// What [`fly`] is asked.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct FlyRequest {
    /// The launch.
    pub launch: Launch,
    /// Air and wind; left open, standard still air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub conditions: Option<Conditions>,
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
/// A [`Refusal`] for a number outside what golf balls do, or a ball that does not leave the ground.
pub fn fly(request: &FlyRequest) -> Result<FlightOf, Refusal> {
    let Launch { ball_speed, launch_angle, spin_rate, launch_direction, spin_axis } = request.launch;
    let conditions = request.conditions.unwrap_or_default().flying()?;
    let launch = launch_of(&[ball_speed, launch_angle, spin_rate, launch_direction, spin_axis]);
    let flight = flight::fly(&launch, &conditions, TimeStep::FINE).map_err(|error| refused(&error))?;
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

fn refused(error: &LaunchError) -> Refusal {
    let (field, message) = match error {
        LaunchError::NotFinite { quantity } => (field(*quantity), say::no_number()),
        LaunchError::Outside { quantity, .. } => (field(*quantity), say::no_launch()),
        _ => ("launch_angle", say::no_flight()),
    };
    Refusal {
        kind: "not_a_launch".into(),
        place: format!("launch.{field}"),
        message,
        remedy: say::no_launch_remedy(),
    }
}

fn field(quantity: Quantity) -> &'static str {
    match quantity {
        Quantity::BallSpeed => "ball_speed",
        Quantity::Spin => "spin_rate",
        Quantity::SpinAxis => "spin_axis",
        Quantity::Azimuth => "launch_direction",
        _ => "launch_angle",
    }
}
