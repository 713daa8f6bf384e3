//! A measured carry brought to standard air.
//!
//! By ratio, so that the golfer's own ball and device stay in the number: only the change of air is
//! modeled. The result is a model estimate and must be labeled as one.

use crate::conditions::Conditions;
use crate::error::{LaunchError, Quantity};
use crate::launch::Launch;
use crate::limits::check_launch;
use crate::trajectory::{TimeStep, fly};

/// A carry in standard air, with the factor that brought it there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StandardCarry {
    /// In ISO 2533 sea-level air, calm, m.
    pub carry_m: f64,
    /// Modeled forward carry in standard air over that in the actual air.
    pub factor: f64,
}

/// Brings a measured carry to standard air.
///
/// carry_std = carry_measured · model(standard)/model(actual), forward components.
/// Accuracy: that of a model difference, far better than the model's ±3 % of carry.
///
/// # Errors
/// As [`fly`]; a measured carry outside 0 to 500 m; a modeled carry that is not forward.
pub fn standard_carry(
    measured_carry_m: f64,
    launch: &Launch,
    actual: &Conditions,
    step: TimeStep,
) -> Result<StandardCarry, LaunchError> {
    check_launch(Quantity::Carry, measured_carry_m)?;
    let standard_m = forward_carry_m(launch, &Conditions::STANDARD, step)?;
    let actual_m = forward_carry_m(launch, actual, step)?;
    let factor = standard_m / actual_m;
    Ok(StandardCarry { carry_m: measured_carry_m * factor, factor })
}

/// Shortest modeled forward carry, m, from which a ratio is formed: less is noise over noise.
const SHORTEST_CARRY_M: f64 = 0.1;

pub(crate) fn forward_carry_m(
    launch: &Launch,
    conditions: &Conditions,
    step: TimeStep,
) -> Result<f64, LaunchError> {
    let forward_m = fly(launch, conditions, step)?.forward_m;
    if forward_m >= SHORTEST_CARRY_M {
        return Ok(forward_m);
    }
    Err(LaunchError::NoForwardCarry { forward_m })
}
