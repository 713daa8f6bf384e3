//! Carries that belong to their own launch, for the demo: what the parts about the flight say of a session must be
//! what is true of it. The generator's own carry follows ball speed alone, which is all that error rates need.

use super::model::Values;
use super::{MEASURES, Random};
use anyhow::{Result, anyhow};
use flight::{Conditions, Launch, TimeStep, fly};
use rand_distr::{Distribution, StandardNormal};

const MPS_PER_MPH: f64 = 0.447_04;
const METERS_PER_YARD: f64 = 0.9144;
const RADPS_PER_RPM: f64 = std::f64::consts::PI / 30.0;

/// Standard deviation of carry that a shot's own launch does not explain (ball, air, curve, reading), yd. Assumed.
const REST_SD: f64 = 4.0;

/// Puts the flight's carry in the place of the generator's: from ball speed, launch and spin of the shot, in standard
/// air, and a rest.
///
/// # Errors
/// A shot that cannot fly.
pub(crate) fn with_flown_carry(shots: &mut [Values], random: &mut Random) -> Result<()> {
    for shot in shots {
        let rest: f64 = StandardNormal.sample(random);
        shot[0] = flown_carry(shot)? + REST_SD * rest;
    }
    Ok(())
}

/// Carry of a shot by its own numbers, yd.
fn flown_carry(shot: &Values) -> Result<f64> {
    let value = |id: &str| {
        let column = MEASURES.iter().position(|measure| *measure == id);
        column.map(|column| shot[column]).ok_or_else(|| anyhow!("{id} is not simulated"))
    };
    let launch = Launch {
        speed_mps: value("ball_speed")? * MPS_PER_MPH,
        elevation_rad: value("launch_angle")?.to_radians(),
        azimuth_rad: 0.0,
        spin_radps: value("spin_rate")? * RADPS_PER_RPM,
        spin_axis_rad: 0.0,
    };
    Ok(fly(&launch, &Conditions::STANDARD, TimeStep::FINE)?.carry_m / METERS_PER_YARD)
}
