//! Measures, units, builds, shots and what is asked of them: the ground on which reading, judging and telling stand.
//!
//! Plain data and what follows from a table alone; no text is read here, nothing is estimated, nothing is said.
//! A difference is always *candidate − baseline*, in canonical units (yd, mph, rpm, deg, s, mm, right positive).
//!
//! ```
//! use session::known::Known;
//! use session::measure::Margin;
//! use session::question::Question;
//!
//! let asked = |json: &str| serde_json::from_str::<Question>(json);
//! // The golfer's own margin holds on the measure asked for, the usual one on every other.
//! let own = asked(r#"{"baseline": 0, "measure": "carry", "margin": 8}"#)?;
//! assert_eq!(own.margin_on(&Known::Carry.into()), Some(Margin::Difference(8.0)));
//! assert_eq!(own.margin_on(&Known::BallSpeed.into()), Some(Margin::Difference(1.5)));
//! // How far shots scatter is held against a ratio.
//! let tighter = asked(r#"{"baseline": 0, "measure": "carry", "goal": "tighter"}"#)?;
//! assert_eq!(tighter.margin_on(&Known::Carry.into()), Some(Margin::Ratio(1.25)));
//! # Ok::<(), serde_json::Error>(())
//! ```

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
pub mod slipped_point;
mod stopping;
pub mod units;
mod visit;
pub mod wire;

pub use rounds::infer_rounds;
pub use second_and_weather::{Conditions, MOST_SECOND, SecondFactor, TemperatureUnit};
pub use visit::{Build, CustomMeasure, Order, Session, Shot, Summary, SummaryOf, SummaryValue};

/// More builds than this are no fitting session; each would need its own row of findings.
pub const MOST_BUILDS: usize = 50;
