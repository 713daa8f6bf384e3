//! Measures, units, builds, shots and what is asked of them: the ground on which reading, judging and telling stand.
//!
//! Plain data and what follows from a table alone; no text is read here, nothing is estimated, nothing is said.
//! A difference is always *candidate − baseline*, in canonical units (yd, mph, rpm, deg, s, mm, right positive).

#![warn(clippy::disallowed_methods)]

pub mod columns;
pub mod digits;
pub mod few;
pub mod known;
pub mod measure;
pub mod names;
pub mod plan;
pub mod question;
pub mod refusal;
mod rounds;
mod scale;
mod second_and_weather;
mod session_error;
mod stopping;
pub mod units;
mod visit;
pub mod wire;

pub use rounds::infer_rounds;
pub use second_and_weather::{Conditions, MOST_SECOND, SecondFactor, TemperatureUnit};
pub use visit::{Build, CustomMeasure, Order, Session, Shot, Summary, SummaryOf, SummaryValue};

/// More builds than this are no fitting session; each would need its own row of findings.
pub const MOST_BUILDS: usize = 50;
