//! The answer as values: what was decided, how large, how sure, from how many shots, in which words.
//!
//! Everything a page shows stands here; a page reads it and computes nothing.

use crate::ends::Printed;
use crate::trust::TrustFinding;
use crate::ways::BothWays;
use crate::words::Words;
use judging::analysis::{Estimate, Numbers};
use judging::facts::PairFacts;
use judging::honest_lead::HonestLead;
use judging::verdict::Decision;
use serde::Serialize;
use session::Order;
use session::measure::MeasureId;
use session::question::{Goal, Stopping};

/// One pair on one measure: decision, size, words and the numbers behind them.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Finding {
    /// Index of the build the candidate is held against.
    pub baseline: usize,
    /// Index of the build in question.
    pub candidate: usize,
    /// The measure.
    pub measure: MeasureId,
    /// What was decided.
    pub decision: Decision,
    /// Null when nothing can be estimated.
    pub estimate: Option<Estimate>,
    /// The interval that decided, as it is printed; null as `estimate`.
    pub printed: Option<Printed>,
    /// Both answers where shots were set aside; null otherwise.
    pub both_ways: Option<BothWays>,
    /// Sentences for it.
    pub words: Words,
    /// Textbook results.
    pub numbers: Numbers,
    /// What is known of how it came about.
    pub facts: PairFacts,
}

/// The answer to the question asked.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Answer {
    /// The candidate it speaks of; null when there is none.
    pub candidate: Option<usize>,
    /// What was decided.
    pub decision: Decision,
    /// Null when nothing can be estimated.
    pub estimate: Option<Estimate>,
    /// Sentences for it.
    pub words: Words,
    /// What is known of how it came about; null when there is no candidate.
    pub facts: Option<PairFacts>,
}

/// What stands over a verdict and changes how it must be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OverlayKind {
    /// A value is probably a slip of the keys or of the reading.
    OddValue,
    /// A club itself moved where something changed.
    Moved,
    /// Builds and time were mixed up.
    OrderMixedUp,
    /// Shots were left out.
    LeftOut,
    /// Several builds were tried.
    SeveralBuilds,
    /// The number of shots was not fixed before, or was looked at on the way.
    LookedAtBefore,
    /// The margin was changed after the answer was shown.
    MarginChanged,
    /// Only averages were given.
    AveragesOnly,
}

/// What only the golfer knows, and a tap can say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "about")]
pub enum Ask {
    /// Whether the number of shots was fixed before the first one.
    NumberOfShots,
    /// Whether the clubs were hit in turn.
    Order,
    /// Whether the value of a shot is right.
    Shot {
        /// Its place in the session, from 0.
        shot: usize,
    },
}

/// A plain warning beside the verdict.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Overlay {
    /// Which one.
    pub kind: OverlayKind,
    /// One line.
    pub headline: String,
    /// What it means for this session, in its own numbers.
    pub detail: String,
    /// What the golfer can say to it; null when there is nothing to say.
    pub asks: Option<Ask>,
}

/// The question with every default filled in, so that a link opened later says the same.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Asked {
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate, null when there is none.
    pub candidate: Option<usize>,
    /// The measure.
    pub measure: MeasureId,
    /// What better means.
    pub goal: Goal,
    /// The smallest difference that matters, null for a measure without a default.
    pub margin: Option<f64>,
    /// Whether the margin is the measure's default.
    pub margin_is_default: bool,
    /// How it was decided when to stop.
    pub stopping: Stopping,
}

/// Everything the page shows.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Report {
    /// The question with its defaults.
    pub asked: Asked,
    /// How builds and time lie, as the analysis took it.
    pub order: Order,
    /// Rounds that hold two builds or more.
    pub rounds: u32,
    /// The headline.
    pub answer: Answer,
    /// What stands over it.
    pub overlays: Vec<Overlay>,
    /// What to expect of the lead when several candidates were tried; null for one.
    pub honest_lead: Option<HonestLead>,
    /// The fewest shots whose removal would change the answer, if three or fewer would.
    pub removals_to_flip: Option<usize>,
    /// What makes this session more or less worth trusting, the most serious first.
    pub trust: Vec<TrustFinding>,
    /// Every candidate on every measure.
    pub findings: Vec<Finding>,
}
