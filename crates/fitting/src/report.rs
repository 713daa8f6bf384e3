//! The answer as values: what was decided, how large, how sure, from how many shots, in which words.
//!
//! Everything a page shows stands here; a page reads it and computes nothing.

use crate::measure::MeasureId;
use crate::question::{Goal, Stopping};
use crate::session::Order;
use serde::Serialize;

/// What was decided, once, from the interval and the smallest difference that matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DecisionKind {
    /// The interval excludes zero.
    Different,
    /// The equivalence interval lies inside the margin.
    Same,
    /// Neither: these shots do not settle it.
    CannotTell,
    /// This session cannot answer the question at all.
    CannotAnswer,
}

/// Whether a real difference is as large as the golfer asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Matters {
    /// The whole interval lies beyond the margin.
    Yes,
    /// The interval straddles the margin.
    Maybe,
    /// Real, and certainly smaller than the margin.
    No,
}

/// Which way the candidate differs from the baseline.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Direction {
    /// Candidate minus baseline is above zero (for spread: the ratio is above one).
    Higher,
    /// Candidate minus baseline is below zero (for spread: the ratio is below one).
    Lower,
}

/// Why there is no plain answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// Nothing was read.
    NoShots,
    /// Only one build in the session.
    OneBuild,
    /// A build has too few shots with this measure.
    TooFewShots,
    /// The measure was not recorded for both builds.
    NotMeasured,
    /// Averages without a number of shots.
    CountsMissing,
    /// Averages of the best or of chosen shots.
    OnlyTheBest,
    /// Every shot has the same value: the numbers were probably rounded or copied.
    NoScatter,
    /// The answer changes with the shots that were left out.
    DependsOnLeftOut,
}

/// A decision with its reasons.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Decision {
    /// What was decided.
    pub kind: DecisionKind,
    /// For `different` with a margin: is it large enough?
    #[serde(skip_serializing_if = "Option::is_none")]
    pub matters: Option<Matters>,
    /// For `different`: which way.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub direction: Option<Direction>,
    /// For `cannot_answer`, and for `cannot_tell` with a special cause.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub why: Option<Why>,
}

/// Number of shots behind an estimate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Counts {
    /// Shots with the baseline.
    pub baseline: usize,
    /// Shots with the candidate.
    pub candidate: usize,
}

/// How an estimate was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Method {
    /// Round by round, widened.
    Rounds,
    /// Welch, widened, plus the order allowance.
    WelchWithAllowance,
    /// Welch from averages, widened, plus the order allowance.
    SummaryWithAllowance,
    /// Averages without a deviation: the largest usual deviation was taken.
    SummaryAssumedSpread,
    /// Ratio of standard deviations.
    SpreadRatio,
}

/// Two ends at a level.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Range {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Coverage it is made for, between 0 and 1.
    pub level: f64,
}

/// The headline difference, candidate − baseline, as the decision saw it: widened, with its allowance.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Estimate {
    /// Difference of averages (or ratio of spreads).
    pub value: f64,
    /// Lower end of the interval that decides `different`.
    pub low: f64,
    /// Upper end of it.
    pub high: f64,
    /// Its level.
    pub level: f64,
    /// The interval that decides `same`.
    pub equivalence: Range,
    /// Unit of all of them, empty for a plain ratio.
    pub unit: String,
    /// Shots behind it.
    pub n: Counts,
    /// How it was made.
    pub method: Method,
    /// Part of each half-width that stands for warming up and tiring, 0 when hit in turn.
    pub order_allowance: f64,
    /// How often two identical builds would show a gap at least this large in a session like this.
    pub chance_if_same: f64,
    /// Smallest true difference that a session like this shows in 8 of 10 cases.
    pub detectable: f64,
    /// Shots with each build that a planned test in turns would need to settle the margin.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shots_to_settle: Option<u32>,
}

/// Sentences for the golfer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Words {
    /// The answer in one sentence.
    pub headline: String,
    /// How large, how sure, from how many shots.
    pub detail: String,
    /// What to do, or what would settle it.
    pub next: String,
}

/// Average and spread of one build on one measure; all its shots.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Group {
    /// Number of shots.
    pub n: usize,
    /// Average.
    pub mean: f64,
    /// Standard deviation, null with fewer than two shots.
    pub sd: Option<f64>,
}

/// A textbook comparison of two groups, unwidened.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TextbookTest {
    /// Candidate − baseline.
    pub diff: f64,
    /// Standard error.
    pub se: f64,
    /// diff / se.
    pub t: f64,
    /// Degrees of freedom.
    pub df: f64,
    /// Two-sided.
    pub p: f64,
    /// Lower end of the 95 % interval.
    pub low: f64,
    /// Upper end of it.
    pub high: f64,
}

/// The numbers behind a finding, as a textbook would print them: no widening, no allowance.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Numbers {
    /// The baseline's shots.
    pub baseline: Option<Group>,
    /// The candidate's shots.
    pub candidate: Option<Group>,
    /// Welch's comparison of the averages.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub welch: Option<TextbookTest>,
    /// Yuen's comparison of the 20 % trimmed averages: the typical shot, mishits set aside.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub yuen: Option<TextbookTest>,
    /// The comparison within rounds, where rounds exist.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub round: Option<TextbookTest>,
}

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
    /// Sentences for it.
    pub words: Words,
    /// Textbook results.
    pub numbers: Numbers,
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
}

/// What stands over a verdict and changes how it must be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OverlayKind {
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
    pub rounds: usize,
    /// The headline.
    pub answer: Answer,
    /// What stands over it.
    pub overlays: Vec<Overlay>,
    /// Every candidate on every measure.
    pub findings: Vec<Finding>,
}
