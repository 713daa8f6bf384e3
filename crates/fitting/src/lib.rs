//! A session of golf shots in, a verdict in plain words out.
//!
//! Text becomes a [`session::Session`] in [`read::read`]; a session and a
//! [`question::Question`] become a [`report::Report`] in [`check::check`]. Every
//! function is total: bad input is a value with a place and a remedy.
//!
//! Knows no clocks, no random devices and no browser. The difference is always
//! *candidate − baseline*, in canonical units (yd, mph, rpm, deg, s, mm, right positive).

#![warn(clippy::disallowed_methods)]

pub mod analysis;
pub mod cause;
pub mod check;
pub mod claim;
pub mod consistency;
mod digits;
mod families;
pub mod feel;
pub mod few;
pub mod flying;
mod fragile;
pub mod honest_lead;
mod judge;
pub mod landing;
pub mod link;
pub mod luck;
pub mod measure;
pub mod plan;
pub mod potential;
pub mod question;
pub mod read;
pub mod report;
pub mod second;
pub mod session;
pub mod share;
pub mod shown;
pub mod together;
pub mod trust;
pub mod units;
pub mod verdict;
pub mod weather;
pub mod words;
pub mod write;
