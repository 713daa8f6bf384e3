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
    /// The shots of a turn hang together so much that the interval of the averages was widened for it.
    pub streaks: Option<Streaks>,
}

/// Shots that lean on those before them more than is usual.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Streaks {
    /// Of what a shot is off by, the share that goes on in the next.
    pub memory: f64,
    /// The interval's width over what it would be with what is usual.
    pub widened: f64,
}

impl Streaks {
    /// Memory from which on streaks are worth a word: half of what a shot is off by.
    const MEMORY: f64 = 0.5;
    /// An interval less than a tenth wider is not worth one.
    const WIDENED: f64 = 1.1;

    /// What is worth a word.
    pub(super) fn of(memory: f64, widened: f64) -> Option<Self> {
        (memory >= Self::MEMORY && widened >= Self::WIDENED).then_some(Self { memory, widened })
    }
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
