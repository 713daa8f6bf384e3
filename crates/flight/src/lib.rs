//! A launch and the air in, in SI units; a trajectory out.
//!
//! A point mass with spin flies through still or uniformly moving air of constant density. The
//! model is good to about ±3 % of carry for a modern ball (one sigma about 2 %); the ball alone
//! moves a driver's carry by about ±9 m. Use it for differences, ratios, sensitivities and gross
//! errors, never to overwrite a measured carry. Roll is not modeled: turf decides it.
//!
//! Axes are right-handed: x to the target, y up, z to the right. Right is positive for azimuth,
//! spin axis, side spin, curve and lateral. Every function is total: bad numbers are a typed
//! error, and no flight runs longer than [`LONGEST_FLIGHT_S`].
//!
//! ```
//! use flight::{fly, Conditions, Launch, TimeStep};
//! let launch = Launch {
//!     speed_mps: 74.65,
//!     elevation_rad: 0.190,
//!     azimuth_rad: 0.0,
//!     spin_radps: 281.7,
//!     spin_axis_rad: 0.0,
//! };
//! let flight = fly(&launch, &Conditions::STANDARD, TimeStep::FINE)?;
//! assert!((flight.carry_m - 247.6).abs() < 0.5);
//! # Ok::<(), flight::LaunchError>(())
//! ```

#![warn(clippy::disallowed_methods)]

mod aerodynamics;
mod air;
mod conditions;
mod error;
mod hermite;
pub mod impact;
mod launch;
mod limits;
mod motion;
mod normalize;
mod optimum;
mod plausibility;
mod search;
mod sensitivity;
mod trajectory;
mod validity;
mod vector;
mod window;

pub use aerodynamics::{Aerodynamics, Calibrated, Constant};
pub use air::{Air, Station, station_pressure_pa};
pub use conditions::{BALL, Ball, Conditions, Medium, STANDARD_GRAVITY_MPS2, Wind};
pub use error::{ConditionsError, LaunchError, Quantity};
pub use launch::{Launch, Spin};
pub use limits::{Limits, limits};
pub use normalize::{StandardCarry, standard_carry};
pub use optimum::{BAND_M, Band, Best, Optimum, best_launch, best_spin, window_optimum};
pub use plausibility::{
    CHECK_BAND, Hypothesis, OK_BAND, Plausibility, Verdict, plausibility, unit_hypotheses,
};
pub use sensitivity::{Sensitivities, sensitivities};
pub use trajectory::{
    Apex, Flight, LONGEST_FLIGHT_S, PathPoint, Start, TimeStep, Track, fly, simulate, simulate_path, track,
};
pub use validity::Validity;
pub use vector::Vec3;
pub use window::{Window, WindowError};
