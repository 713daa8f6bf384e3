//! What a flight can refuse, with the numbers that were refused.
//!
//! Words and units for golfers belong to the callers; `Display` is for developers.

use std::fmt;

/// What a refused number was meant to be. Each has one SI unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Quantity {
    /// Ball speed, m/s.
    BallSpeed,
    /// Launch angle above the horizontal, rad.
    Elevation,
    /// Launch direction, right positive, rad.
    Azimuth,
    /// Total spin, rad/s.
    Spin,
    /// Tilt of the spin axis, right positive, rad.
    SpinAxis,
    /// Carry as measured, m.
    Carry,
    /// Air temperature, K.
    Temperature,
    /// Station pressure, Pa.
    Pressure,
    /// Altitude above sea level, m.
    Altitude,
    /// Relative humidity, 0 to 1.
    Humidity,
    /// A component of the wind, m/s.
    Wind,
    /// Integration step, s.
    TimeStep,
    /// Starting velocity of a free simulation, m/s.
    Velocity,
    /// Ball speed over club speed.
    Smash,
}

/// Why there is no flight for a launch.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum LaunchError {
    /// A value is infinite or no number.
    NotFinite {
        /// Which value.
        quantity: Quantity,
    },
    /// A value lies outside the hard limits: a wrong unit or a wrong column.
    Outside {
        /// Which value.
        quantity: Quantity,
        /// As given.
        value: f64,
        /// Lowest allowed.
        low: f64,
        /// Highest allowed.
        high: f64,
    },
    /// The ball does not leave level ground.
    NotUpward {
        /// Launch angle as given, rad.
        elevation_rad: f64,
    },
    /// The ball was still in the air when the simulation was stopped.
    StillFlying {
        /// Time of the stop, s.
        after_s: f64,
    },
    /// The numbers overflowed on the way; cannot happen inside the hard limits.
    Overflow {
        /// Time of the last finite state, s.
        after_s: f64,
    },
    /// The modeled ball comes down level with the tee or behind it, so a ratio of carries means nothing.
    NoForwardCarry {
        /// Modeled forward carry, m.
        forward_m: f64,
    },
}

/// Why air, wind or a time step could not be made.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum ConditionsError {
    /// A value is infinite or no number.
    NotFinite {
        /// Which value.
        quantity: Quantity,
    },
    /// A value lies outside the range in which the formulas hold.
    Outside {
        /// Which value.
        quantity: Quantity,
        /// As given.
        value: f64,
        /// Lowest allowed.
        low: f64,
        /// Highest allowed.
        high: f64,
    },
}

impl fmt::Display for LaunchError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::NotFinite { quantity } => write!(f, "{quantity:?} is not a finite number"),
            Self::Outside { quantity, value, low, high } => outside(f, quantity, value, low, high),
            Self::NotUpward { elevation_rad } => {
                write!(f, "a launch of {elevation_rad} rad does not leave level ground")
            }
            Self::StillFlying { after_s } => write!(f, "still in the air after {after_s} s"),
            Self::Overflow { after_s } => write!(f, "the numbers overflow after {after_s} s"),
            Self::NoForwardCarry { forward_m } => {
                write!(f, "the modeled forward carry is {forward_m} m: no ratio can be formed")
            }
        }
    }
}

impl fmt::Display for ConditionsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::NotFinite { quantity } => write!(f, "{quantity:?} is not a finite number"),
            Self::Outside { quantity, value, low, high } => outside(f, quantity, value, low, high),
        }
    }
}

impl std::error::Error for LaunchError {}
impl std::error::Error for ConditionsError {}

fn outside(f: &mut fmt::Formatter<'_>, quantity: Quantity, value: f64, low: f64, high: f64) -> fmt::Result {
    write!(f, "{quantity:?} is {value}, outside {low} to {high} (SI units)")
}
