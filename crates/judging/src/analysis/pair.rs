//! What is known of one candidate beside the baseline on one measure, from shots or from averages.

use super::comparison::Comparison;
use super::estimate::{Counts, Numbers, TextbookTest};
use crate::verdict::Why;
use libm::hypot;
use stats::{Level, TDifference};

/// What of a measure is compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Aspect {
    /// The averages.
    Average,
    /// How far single shots scatter.
    Spread,
}

/// Everything known of one pair on one measure.
#[derive(Debug, Clone, PartialEq)]
pub struct Pair {
    /// Textbook results.
    pub numbers: Numbers,
    /// The careful difference, or why there is none.
    pub comparison: Result<Comparison, Why>,
    /// The averages of what was compared, where they are not those of all shots: within the rounds that hold both.
    pub compared: Option<Compared>,
    /// How often the builds changed hands, where they were hit in turn and compared round by round.
    pub turns: Option<Turns>,
}

/// The averages that a comparison within rounds rests on; their gap is its difference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compared {
    /// The baseline's average over the rounds that hold both.
    pub baseline: f64,
    /// The candidate's.
    pub candidate: f64,
    /// Shots of both in these rounds.
    pub n: Counts,
    /// How many rounds those are.
    pub rounds: u32,
}

/// The turns of two builds, over the rounds that both share.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turns {
    /// So many that the comparison could not rest on single shots, see `stats::choices::LONGEST_TURN`.
    pub are_too_long: bool,
}

/// Root mean square of the two deviations: what a plan with equal numbers of shots needs.
pub(super) fn pooled_sd(one: &stats::Summary, other: &stats::Summary) -> f64 {
    hypot(one.sd(), other.sd()) / std::f64::consts::SQRT_2
}

pub(super) fn textbook(d: &TDifference) -> TextbookTest {
    let interval = d.interval(Level::P95);
    TextbookTest {
        diff: d.diff,
        se: d.se,
        t: d.t(),
        df: d.df,
        p: d.p_value(),
        low: interval.low,
        high: interval.high,
    }
}
