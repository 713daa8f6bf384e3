//! What was judged, in plain words: decisions and numbers in, sentences out, in the language and the units of a voice.
//!
//! Every sentence a golfer reads is made here, by reading a decision and its numbers. Nothing here compares a number with
//! a threshold to find out what is true; only how it is said. [`check::check`] goes the whole way from a session and a
//! question to a report.

#![warn(clippy::disallowed_methods)]

mod answer;
mod case;
pub mod cause;
pub mod check;
pub mod claim;
pub mod consistency;
pub mod feel;
pub mod flying;
mod format;
pub mod hand;
pub mod landing;
mod left_out;
pub mod luck;
pub mod measures;
mod overlay;
mod paste;
mod phrases;
pub mod plan;
pub mod potential;
pub mod refusals;
pub mod report;
pub mod second;
pub mod share;
mod spread;
pub mod together;
pub mod trust;
pub mod units;
mod words;

pub use paste::{CardWords, PasteWords};
pub use words::Words;
