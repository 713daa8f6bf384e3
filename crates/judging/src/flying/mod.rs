//! From shots as measured to flights: canonical units into SI and back, which shots can be flown, and one
//! launch flown for whoever asks.
//!
//! What the flight model is good for, and for what not, stands in `crates/flight`: differences and gross errors, never
//! a replacement of a measured carry.

mod columns;
mod one;
mod refused;
mod standard_air;

pub(crate) use columns::{Columns, FACTORS, Flown, NEEDED, VALUES, all_carry_the_same, flown};
pub use one::{FlightOf, Launch, fly};
pub(crate) use refused::check_build;
pub use refused::{AirRefused, FlyRefused, NoSuchBuild, NotConditions, WeatherFigure};
pub use standard_air::{StandardAir, in_standard_air, with_standard_air, without_standard_air};

use session::units::{M_PER_YD, MPS_PER_MPH};

/// Revolutions per minute to radians per second.
pub(crate) const RADPS_PER_RPM: f64 = std::f64::consts::PI / 30.0;
/// Degrees to radians.
pub(crate) const RAD_PER_DEG: f64 = std::f64::consts::PI / 180.0;

/// A launch in canonical units, in the order of [`FACTORS`], as the flight model takes it.
pub(crate) fn launch_of(values: &[f64; VALUES]) -> flight::Launch {
    let [speed, launch, spin, direction, axis] = *values;
    flight::Launch {
        speed_mps: speed * MPS_PER_MPH,
        elevation_rad: launch * RAD_PER_DEG,
        azimuth_rad: direction * RAD_PER_DEG,
        spin_radps: spin * RADPS_PER_RPM,
        spin_axis_rad: axis * RAD_PER_DEG,
    }
}

/// Carry along the target line in standard still air, yd; `None` for a ball that does not fly.
pub(crate) fn forward_yd(values: &[f64; VALUES]) -> Option<f64> {
    let conditions = flight::Conditions::STANDARD;
    let flight = flight::fly(&launch_of(values), &conditions, flight::TimeStep::COARSE).ok()?;
    Some(flight.forward_m / M_PER_YD)
}
