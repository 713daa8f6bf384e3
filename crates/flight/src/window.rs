//! The launches and spins among which an optimum is looked for.
//!
//! An optimum means nothing without its window: the unconstrained one lies at 23–30 deg and about
//! 1500 rpm, which nobody delivers and the coefficients hardly cover.

use std::f64::consts::PI;

const RAD_PER_DEG: f64 = PI / 180.0;
const RADPS_PER_RPM: f64 = PI / 30.0;

/// A range of launch angles and a range of spins.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    launch_low_rad: f64,
    launch_high_rad: f64,
    spin_low_radps: f64,
    spin_high_radps: f64,
}

/// Why a window could not be made: every bound must be finite, positive and within the hard limits,
/// and each low bound below its high bound.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindowError {
    /// The low bound of the faulty pair.
    pub low: f64,
    /// The high bound of the faulty pair.
    pub high: f64,
    /// Lowest bound allowed.
    pub least: f64,
    /// Highest bound allowed.
    pub most: f64,
}

impl std::fmt::Display for WindowError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self { low, high, least, most } = self;
        write!(f, "a window from {low} to {high} must rise and lie within {least} to {most} (SI units)")
    }
}

impl std::error::Error for WindowError {}

const LAUNCH_LEAST_RAD: f64 = RAD_PER_DEG;
const LAUNCH_MOST_RAD: f64 = 60.0 * RAD_PER_DEG;
const SPIN_LEAST_RADPS: f64 = 100.0 * RADPS_PER_RPM;
const SPIN_MOST_RADPS: f64 = 15_000.0 * RADPS_PER_RPM;

impl Window {
    /// What a golfer can deliver with a driver, and the default: launch to 17 deg, spin from 1500 rpm.
    /// Common practice, no source.
    pub const DELIVERABLE: Self = Self {
        launch_low_rad: LAUNCH_LEAST_RAD,
        launch_high_rad: 17.0 * RAD_PER_DEG,
        spin_low_radps: 1500.0 * RADPS_PER_RPM,
        spin_high_radps: SPIN_MOST_RADPS,
    };

    /// Everything the model can fly. For information only: see the module.
    pub const UNCONSTRAINED: Self = Self {
        launch_low_rad: LAUNCH_LEAST_RAD,
        launch_high_rad: LAUNCH_MOST_RAD,
        spin_low_radps: SPIN_LEAST_RADPS,
        spin_high_radps: SPIN_MOST_RADPS,
    };

    /// A window of one's own: launch within 1 to 60 deg, spin within 100 to 15 000 rpm.
    ///
    /// # Errors
    /// A range that is empty, not finite, or beyond those bounds.
    pub fn new(launch_rad: [f64; 2], spin_radps: [f64; 2]) -> Result<Self, WindowError> {
        check(launch_rad, LAUNCH_LEAST_RAD, LAUNCH_MOST_RAD)?;
        check(spin_radps, SPIN_LEAST_RADPS, SPIN_MOST_RADPS)?;
        let [launch_low_rad, launch_high_rad] = launch_rad;
        let [spin_low_radps, spin_high_radps] = spin_radps;
        Ok(Self { launch_low_rad, launch_high_rad, spin_low_radps, spin_high_radps })
    }

    /// Lowest and highest launch angle, rad.
    #[must_use]
    pub fn launch_rad(&self) -> [f64; 2] {
        [self.launch_low_rad, self.launch_high_rad]
    }

    /// Lowest and highest spin, rad/s.
    #[must_use]
    pub fn spin_radps(&self) -> [f64; 2] {
        [self.spin_low_radps, self.spin_high_radps]
    }

    /// Whether a launch angle and a spin lie inside.
    #[must_use]
    pub fn contains(&self, launch_rad: f64, spin_radps: f64) -> bool {
        (self.launch_low_rad..=self.launch_high_rad).contains(&launch_rad)
            && (self.spin_low_radps..=self.spin_high_radps).contains(&spin_radps)
    }
}

impl Default for Window {
    fn default() -> Self {
        Self::DELIVERABLE
    }
}

fn check([low, high]: [f64; 2], least: f64, most: f64) -> Result<(), WindowError> {
    // Bounds typed in degrees or rpm may miss the last bit.
    let slack = 1e-12 * most;
    // A bound that is no number fails every comparison.
    if low >= least - slack && high <= most + slack && low < high {
        return Ok(());
    }
    Err(WindowError { low, high, least, most })
}
