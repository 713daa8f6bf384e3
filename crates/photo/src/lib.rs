//! A photo of a table of numbers into rows, columns and doubts.
//!
//! Pixels in, texts with their places out: what the numbers mean is decided where all text is read. Two models find and
//! read the texts; everything else is geometry, and what a table says of its own numbers. Knows no golf and no browser.

#![allow(
    clippy::cast_possible_truncation,
    reason = "pixels: numbers between limits become whole ones everywhere"
)]

mod doubts;
mod find;
#[cfg(test)]
mod grids;
mod headings;
mod hull;
mod layout;
mod lines;
mod models;
mod number;
mod picture;
mod places;
mod quad;
mod read;
mod reading;
mod recognize;
mod signs;
mod tiles;
mod token;
mod work;

pub use models::{BadModels, Models};
pub use picture::Picture;
pub use quad::Quad;
pub use read::{FINDER_LONGEST, FINDER_SMALL, LONGEST, read};
pub use reading::{Cell, Column, Cut, Doubt, Progress, Reading, Refused};
