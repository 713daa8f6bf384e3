//! A pile's answer as values.

use super::not_pooled::NotPooled;
use super::question::Sent;
use crate::bet::Tens;
use crate::interval::Interval;
use crate::verdict::{Decision, Direction};
use serde::Serialize;
use session::measure::MeasureId;
use session::question::Goal;
use std::collections::BTreeMap;

/// A number with where it lies.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ValueFound {
    /// The number.
    pub value: f64,
    /// Where it lies.
    pub interval: Interval,
}

/// The share of golfers who truly gain enough.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Share {
    /// The chance that the next one does.
    pub value: f64,
    /// Where the share lies.
    pub interval: Interval,
    /// That in tens, as it is told.
    pub of_ten: Tens,
}

/// What a fitting here brings, candidate − baseline.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Brings {
    /// The mean of the true gaps.
    pub mean: ValueFound,
    /// How far they lie apart from golfer to golfer, as a standard deviation; 0 where the errors of the sessions explain it.
    pub spread: ValueFound,
    /// The true gap of the next session like these.
    pub next: Interval,
    /// The share of true gaps that lie toward the goal by the margin or more; absent without a margin.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub enough: Option<Share>,
    /// The share of true gaps that lie the other way.
    pub worse: Share,
    /// What the order of hitting may add to all of it one way; it is in the intervals.
    pub allowance: f64,
}

/// How many leads were luck.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Findings {
    /// Pooled sessions that are called different by themselves.
    pub different: usize,
    /// Of them, those that lie toward the goal.
    pub better: usize,
    /// Of them, those that lie the other way.
    pub worse: usize,
    /// So many would be called different if no club differed from any other: 5 in 100 of all pooled.
    pub by_luck_alone: f64,
    /// The part of a list that may be luck.
    pub rate: f64,
    /// Sessions on that list.
    pub listed: usize,
}

/// What became of what was promised.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ClaimsFound {
    /// Pooled sessions with a promise.
    pub claims: usize,
    /// What was promised on average.
    pub promised: f64,
    /// What was found of these sessions on average.
    pub found: f64,
    /// The share of what was promised that was found again; absent with fewer than two.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub share: Option<f64>,
    /// Where that share lies; absent where the promises add up to next to nothing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub interval: Option<Interval>,
}

/// How many sessions are not pooled for one reason.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct NotPooledCount {
    /// The reason.
    pub why: NotPooled,
    /// How many.
    pub sessions: usize,
}

/// A gap pulled toward what fittings in the pile bring.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PulledTo {
    /// What to believe of the true gap.
    pub value: f64,
    /// Where it lies.
    pub interval: Interval,
}

/// One session of the pile.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct OneOfMany {
    /// Where it was found; more than one for copies.
    pub places: Vec<String>,
    /// Name of the golfer's own club; empty where nobody knows which it is.
    pub baseline: String,
    /// Name of the fitting's club.
    pub candidate: String,
    /// Its own answer.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub decision: Option<Decision>,
    /// Its own gap, by the interval that is told.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gap: Option<ValueFound>,
    /// The gap pulled; absent where it is not pooled.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pulled: Option<PulledTo>,
    /// The smallest part of luck at which a list holds it; absent where it is not pooled.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub listed_from: Option<f64>,
    /// Whether it is on the list.
    pub is_listed: bool,
    /// What was promised.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub claimed: Option<f64>,
    /// Why it is not pooled; absent where it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub not_pooled: Option<NotPooled>,
}

/// A whole pile, answered.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Many {
    /// The measure.
    pub measure: MeasureId,
    /// What better means.
    pub goal: Goal,
    /// Which way a gain lies.
    pub toward: Direction,
    /// The smallest gap that matters.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin: Option<f64>,
    /// How the sessions came to be sent.
    pub sent: Sent,
    /// Sessions, copies counted once.
    pub sessions: usize,
    /// Of them, those that are pooled.
    pub pooled: usize,
    /// Copies that were left away.
    pub copies: usize,
    /// What a fitting here brings; absent with fewer than two pooled sessions.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub brings: Option<Brings>,
    /// How many leads were luck.
    pub findings: Findings,
    /// What became of what was promised; absent where nothing was.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub claims: Option<ClaimsFound>,
    /// What is not pooled, by its reason.
    pub not_pooled: Vec<NotPooledCount>,
    /// Names that a table could say something of, with the number of sessions that wait for it.
    pub names: BTreeMap<String, usize>,
    /// Every session, in the order of its first place.
    pub each: Vec<OneOfMany>,
}
