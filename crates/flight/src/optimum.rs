//! What a ball speed could carry: best launch at a shot's own spin, best spin at its own launch,
//! and the best of a window.
//!
//! The two one-dimensional answers are the safer ones to show. The windowed
//! optimum is flat: two yards of carry span about ±450 rpm, so show the band, not the point. What is
//! maximized is the forward carry, with the launch's own direction and spin axis.

use crate::conditions::Conditions;
use crate::error::{LaunchError, Quantity};
use crate::launch::Launch;
use crate::limits::check_launch;
use crate::search::{Found, highest, reach};
use crate::trajectory::{Flight, TimeStep, fly};
use crate::window::Window;
use libm::{exp, log as ln};

/// How far below the best a carry still counts as the same, m: 2 yd.
pub const BAND_M: f64 = 1.828_8;

/// To about 0.03 deg: a carry within 1e-3 yd of the best.
const LAUNCH_TOLERANCE_RAD: f64 = 5e-4;
/// To 0.3 % of the spin, searched by its logarithm: a carry within 1e-3 yd of the best.
const SPIN_TOLERANCE_LN: f64 = 3e-3;

/// Carry against launch has one hump.
const LAUNCH_SCAN: usize = 5;
/// Carry against spin has one hump in the range of the coefficients, but slow balls may have a second
/// one near the highest spins, where the lift is extrapolated: a closer scan tells which is higher.
const SPIN_SCAN: usize = 9;

/// The best along one variable.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Best {
    /// The launch that does it.
    pub launch: Launch,
    /// Its flight.
    pub flight: Flight,
    /// True when the window, not the flight, set the answer.
    pub at_edge: bool,
}

/// How far launch and spin, each alone, can move before [`BAND_M`] of carry is lost; cut off at the
/// edges of the window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// Lowest launch at the best spin, rad.
    pub launch_low_rad: f64,
    /// Highest launch at the best spin, rad.
    pub launch_high_rad: f64,
    /// Lowest spin at the best launch, rad/s.
    pub spin_low_radps: f64,
    /// Highest spin at the best launch, rad/s.
    pub spin_high_radps: f64,
}

/// The best of a window, with the window and the band around it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Optimum {
    /// The window in which it was looked for; part of the answer.
    pub window: Window,
    /// The launch that does it.
    pub launch: Launch,
    /// Its flight.
    pub flight: Flight,
    /// True when the launch lies on the window's edge, as it does for a driver.
    pub launch_at_edge: bool,
    /// True when the spin lies on the window's edge.
    pub spin_at_edge: bool,
    /// Launches and spins that carry the same for practical purposes.
    pub band: Band,
}

/// The launch angle within the window that carries farthest at the shot's own speed and spin.
///
/// The shot's own launch may lie outside the window; then the best may carry less than the shot.
/// Accuracy: launch ±0.03 deg, carry 1e-3 yd below the true best at worst.
///
/// # Errors
/// As [`fly`]; the shot's own elevation only has to be within the hard limits.
pub fn best_launch(
    shot: &Launch,
    conditions: &Conditions,
    window: &Window,
    step: TimeStep,
) -> Result<Best, LaunchError> {
    shot.check()?;
    let range = window.launch_rad();
    let found = launch_search(shot, conditions, range, step)?;
    Ok(Best {
        launch: Launch { elevation_rad: found.at, ..*shot },
        flight: found.made,
        at_edge: is_edge(found.at, range),
    })
}

/// The spin within the window that carries farthest at the shot's own speed and launch.
///
/// Accuracy: spin ±0.3 %, carry 1e-3 yd below the true best at worst; below 60 mph of ball speed, where
/// a second hump of extrapolated lift can be as high, 0.1 yd. Look at the flight's validity there.
///
/// # Errors
/// As [`fly`].
pub fn best_spin(
    shot: &Launch,
    conditions: &Conditions,
    window: &Window,
    step: TimeStep,
) -> Result<Best, LaunchError> {
    shot.check()?;
    let range = window.spin_radps();
    let (launch, flight) = spin_search(shot, conditions, range, step)?;
    Ok(Best { launch, flight, at_edge: is_edge(launch.spin_radps, range) })
}

/// The launch and spin within the window that carry farthest at a ball speed: straight at the
/// target, without tilt of the spin axis.
///
/// At each launch the best spin is found, then the best launch among those: about 100 flights where the
/// window caps the launch, twice that where it does not.
///
/// # Errors
/// A speed outside the hard limits.
pub fn window_optimum(
    speed_mps: f64,
    conditions: &Conditions,
    window: &Window,
    step: TimeStep,
) -> Result<Optimum, LaunchError> {
    check_launch(Quantity::BallSpeed, speed_mps)?;
    let launches = window.launch_rad();
    let spins = window.spin_radps();
    let straight = |elevation_rad: f64, spin_radps: f64| Launch {
        speed_mps,
        elevation_rad,
        azimuth_rad: 0.0,
        spin_radps,
        spin_axis_rad: 0.0,
    };
    let best =
        highest::<LAUNCH_SCAN, _, _>(launches[0], launches[1], LAUNCH_TOLERANCE_RAD, |elevation_rad| {
            let (launch, flight) = spin_search(&straight(elevation_rad, spins[0]), conditions, spins, step)?;
            Ok((flight.forward_m, (launch, flight)))
        })?;
    let (launch, flight) = best.made;
    let floor_m = flight.forward_m - BAND_M;
    let forward = |elevation_rad: f64, spin_radps: f64| {
        fly(&straight(elevation_rad, spin_radps), conditions, step).map(|flight| flight.forward_m)
    };
    let launch_to = |edge| reach(launch.elevation_rad, edge, floor_m, |at| forward(at, launch.spin_radps));
    let spin_to = |edge| reach(launch.spin_radps, edge, floor_m, |at| forward(launch.elevation_rad, at));
    let band = Band {
        launch_low_rad: launch_to(launches[0])?,
        launch_high_rad: launch_to(launches[1])?,
        spin_low_radps: spin_to(spins[0])?,
        spin_high_radps: spin_to(spins[1])?,
    };
    Ok(Optimum {
        window: *window,
        launch,
        flight,
        launch_at_edge: is_edge(launch.elevation_rad, launches),
        spin_at_edge: is_edge(launch.spin_radps, spins),
        band,
    })
}

fn launch_search(
    shot: &Launch,
    conditions: &Conditions,
    [low, high]: [f64; 2],
    step: TimeStep,
) -> Result<Found<Flight>, LaunchError> {
    highest::<LAUNCH_SCAN, _, _>(low, high, LAUNCH_TOLERANCE_RAD, |elevation_rad| {
        let flight = fly(&Launch { elevation_rad, ..*shot }, conditions, step)?;
        Ok((flight.forward_m, flight))
    })
}

/// Searched by the logarithm: 100 rpm matter at 1500, not at 9000.
fn spin_search(
    shot: &Launch,
    conditions: &Conditions,
    [low, high]: [f64; 2],
    step: TimeStep,
) -> Result<(Launch, Flight), LaunchError> {
    let found = highest::<SPIN_SCAN, _, _>(ln(low), ln(high), SPIN_TOLERANCE_LN, |ln_spin| {
        // The logarithm may miss the window's edge by its last bit.
        let launch = Launch { spin_radps: snap(exp(ln_spin), [low, high]), ..*shot };
        let flight = fly(&launch, conditions, step)?;
        Ok((flight.forward_m, (launch, flight)))
    })?;
    Ok(found.made)
}

fn snap(value: f64, [low, high]: [f64; 2]) -> f64 {
    if is_edge(value, [low, high]) { if value < 0.5 * (low + high) { low } else { high } } else { value }
}

fn is_edge(value: f64, [low, high]: [f64; 2]) -> bool {
    let slack = 1e-9 * high;
    value <= low + slack || value >= high - slack
}

#[cfg(test)]
mod tests {
    use super::{is_edge, snap};

    #[test]
    fn the_last_digits_do_not_keep_a_value_off_its_edge() {
        for [low, high] in [[0.017, 0.297], [157.0, 1571.0]] {
            let slack = 1e-9 * high;
            for (value, edge) in
                [(low + 0.9 * slack, low), (low, low), (high - 0.9 * slack, high), (high, high)]
            {
                assert!(is_edge(value, [low, high]), "{value}");
                assert_eq!(snap(value, [low, high]).to_bits(), edge.to_bits());
            }
            for value in [low + 1.1 * slack, 0.5 * (low + high), high - 1.1 * slack] {
                assert!(!is_edge(value, [low, high]), "{value}");
                assert_eq!(snap(value, [low, high]).to_bits(), value.to_bits());
            }
        }
    }
}
