//! What a gap in carry was split into.

use super::delivery::{MovedFacts, SpinSourceFacts};
use super::part::{Factor, PartFacts};
use serde::Serialize;

/// What was split, and from which shots.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Split {
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// Gap in measured carry of the shots that can be flown, yd.
    pub gap: f64,
    /// Shots with the baseline that can be flown.
    pub baseline_shots: usize,
    /// Shots with the candidate that can be flown.
    pub candidate_shots: usize,
    /// Shots of the two that cannot.
    pub not_flown: usize,
    /// The clear part that goes the way of the gap and is largest; null when none is.
    pub main: Option<Factor>,
    /// Resamples behind each interval.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
}

/// A gap in carry and where it comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct CauseFacts {
    /// What was split, and from which shots.
    pub split: Split,
    /// Adds up to the gap; the rest is last.
    pub parts: Vec<PartFacts>,
    /// The part of ball speed once more, as club speed and smash; empty without club speed.
    pub ball_speed: Vec<PartFacts>,
    /// What the club did on its way to the ball, where that was measured.
    pub swing: Vec<MovedFacts>,
    /// What of a difference in spin or curve the delivery explains, roughly.
    pub spin: Vec<SpinSourceFacts>,
    /// What was not measured and would tell more.
    pub unmeasured: Vec<Unmeasured>,
    /// Whether the two were hit in turns so long that each is a small block: the intervals here count shots, and the answer
    /// counts whole rounds.
    pub turns_too_long: bool,
}

/// What was not measured, and would tell more.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unmeasured {
    /// Launch direction or spin axis.
    Direction,
    /// Club speed.
    ClubSpeed,
    /// Loft and attack angle at impact.
    Loft,
    /// Where on the face the ball was struck.
    Strike,
}
