//! The hard limits: outside them a number is a wrong unit or a wrong column, not a golf shot.
//!
//! Common practice, no source: ball 15 to 235 mph, launch −5 to 60 deg, spin 0 to 15 000 rpm,
//! axis within ±60 deg, smash 0.7 to 1.56. The ranges of air are those of its formulas.

use crate::error::{ConditionsError, LaunchError, Quantity};
use std::f64::consts::PI;

/// A closed range of allowed values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Lowest allowed.
    pub low: f64,
    /// Highest allowed.
    pub high: f64,
}

const MPS_PER_MPH: f64 = 0.447_04; // exact
const RADPS_PER_RPM: f64 = PI / 30.0;
const RAD_PER_DEG: f64 = PI / 180.0;

/// The hard limits of a quantity, in its SI unit.
#[must_use]
pub const fn limits(quantity: Quantity) -> Limits {
    let (low, high) = match quantity {
        Quantity::BallSpeed => (15.0 * MPS_PER_MPH, 235.0 * MPS_PER_MPH),
        Quantity::Elevation => (-5.0 * RAD_PER_DEG, 60.0 * RAD_PER_DEG),
        Quantity::Azimuth => (-PI, PI),
        Quantity::Spin => (0.0, 15_000.0 * RADPS_PER_RPM),
        Quantity::SpinAxis => (-60.0 * RAD_PER_DEG, 60.0 * RAD_PER_DEG),
        Quantity::Carry => (0.0, 500.0),
        Quantity::Temperature => (223.15, 328.15),
        Quantity::Pressure => (40_000.0, 110_000.0),
        Quantity::Altitude => (-500.0, 6_000.0),
        Quantity::Humidity => (0.0, 1.0),
        Quantity::Wind => (-30.0, 30.0),
        Quantity::TimeStep => (1e-4, 0.5),
        Quantity::Velocity => (0.0, f64::MAX),
        Quantity::Smash => (0.7, 1.56),
    };
    Limits { low, high }
}

enum Fault {
    NotFinite,
    Outside(Limits),
}

/// Degrees and revolutions per minute rarely convert to the last bit: a value on a limit, typed in
/// another unit, must not fall outside it.
const ROUNDING: f64 = 1e-12;

fn fault(quantity: Quantity, value: f64) -> Option<Fault> {
    if !value.is_finite() {
        return Some(Fault::NotFinite);
    }
    let allowed = limits(quantity);
    let slack = ROUNDING * allowed.low.abs().max(allowed.high.abs());
    let inside = value >= allowed.low - slack && value <= allowed.high + slack;
    if inside { None } else { Some(Fault::Outside(allowed)) }
}

pub(crate) fn check_launch(quantity: Quantity, value: f64) -> Result<(), LaunchError> {
    match fault(quantity, value) {
        None => Ok(()),
        Some(Fault::NotFinite) => Err(LaunchError::NotFinite { quantity }),
        Some(Fault::Outside(Limits { low, high })) => {
            Err(LaunchError::Outside { quantity, value, low, high })
        }
    }
}

pub(crate) fn check_conditions(quantity: Quantity, value: f64) -> Result<(), ConditionsError> {
    match fault(quantity, value) {
        None => Ok(()),
        Some(Fault::NotFinite) => Err(ConditionsError::NotFinite { quantity }),
        Some(Fault::Outside(Limits { low, high })) => {
            Err(ConditionsError::Outside { quantity, value, low, high })
        }
    }
}
