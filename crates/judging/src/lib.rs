//! A session and a question in; what was decided, how sure, and why, out. Numbers and decisions only: no sentence, no
//! language, no unit of display.
//!
//! One way through: [`settle`](settle::settle) fills every gap of the question once, [`judge`](judge::judge) compares and
//! decides once; everything beside the verdict (trust, honest lead, what a few shots less would change) takes what was
//! judged and never judges again. Knows no clocks, no random devices and no browser.

#![warn(clippy::disallowed_methods)]

pub mod analysis;
pub mod cause;
pub mod claim;
pub mod consistency;
pub mod feel;
pub mod flying;
pub mod fragile;
mod holm;
pub mod honest_lead;
pub mod interval;
pub mod judge;
pub mod landing;
pub mod luck;
pub mod plan;
pub mod potential;
pub mod second;
pub mod settle;
pub mod together;
pub mod trust;
pub mod verdict;

pub use judge::{Judged, Judgment, judge};
pub use settle::{Asked, Settled, settle};
