//! The best of several clubs looks better than it is: what to expect of its lead.
//!
//! Shrinkage and the expected best of equal clubs are those of `stats`; here they meet the session's own averages.

use crate::analysis::{Basis, Group};
use crate::judge::Judgment;
use crate::measure::MeasureId;
use serde::Serialize;

/// What is left of the shown lead of one candidate among several, and what luck alone would show.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct HonestLead {
    /// Candidates held against the baseline.
    pub candidates: usize,
    /// Candidate − baseline as the shots show it.
    pub shown: f64,
    /// What to expect of it, after the luck of being looked at among several is taken out.
    pub honest: f64,
    /// The lead over the baseline that the best of as many equal clubs would show on average.
    pub by_luck: f64,
}

/// True averages of builds are taken to differ by this much from each other, yd of carry, where experience has
/// to help out; on other measures by the same share of a shot's scatter. Assumed, see `stats::choices`.
const USUAL_SPREAD_OF_BUILDS_YD: f64 = 4.0;

/// How far true averages of builds are taken to differ, as a standard deviation.
pub(crate) fn usual_spread_of_builds(measure: &MeasureId, shot_sd: f64) -> f64 {
    match measure.0.as_str() {
        "carry" | "total" => USUAL_SPREAD_OF_BUILDS_YD,
        _ => stats::usual_prior_sd(shot_sd),
    }
}

/// The honest lead of the candidate spoken of; `None` with a single candidate or without averages to compare.
pub(crate) fn honest_lead(judgments: &[Judgment], headline: &Judgment) -> Option<HonestLead> {
    let Basis::Difference(careful) = headline.comparison()?.basis else { return None };
    let asked: Vec<&Judgment> = judgments.iter().filter(|j| j.measure == headline.measure).collect();
    let candidates: Vec<Group> = asked.iter().filter_map(|j| j.pair.numbers.candidate).collect();
    let groups: Vec<Group> =
        headline.pair.numbers.baseline.into_iter().chain(candidates.iter().copied()).collect();
    if candidates.len() < 2 {
        return None;
    }
    let shot_sd = headline.comparison()?.shot_sd;
    let variance_of_mean =
        groups.iter().map(|g| shot_sd * shot_sd / g.n.max(1) as f64).sum::<f64>() / groups.len() as f64;
    let means: Vec<f64> = groups.iter().map(|g| g.mean).collect();
    let prior = usual_spread_of_builds(&headline.measure, shot_sd);
    let shrinkage = stats::shrinkage(&means, variance_of_mean, prior)?;
    Some(HonestLead {
        candidates: candidates.len(),
        shown: careful.diff(),
        honest: shrinkage.honest(careful.diff()),
        by_luck: stats::expected_best(candidates.len()) * variance_of_mean.sqrt(),
    })
}
