//! The best of several clubs looks better than it is: what to expect of its lead.
//!
//! Shrinkage and the expected best of equal clubs are those of `stats`; here they meet the session's own averages.

use crate::analysis::{Basis, Group};
use crate::judge::{Judged, Judgment};
use serde::Serialize;
use session::measure::MeasureId;
use session::question::Goal;

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

/// Whether no other candidate gains more on the baseline than this one, and this one something.
fn leads(judged: &Judged<'_>, headline: &Judgment) -> bool {
    let gain = |judgment: &Judgment| {
        let value = judgment.comparison().map_or(0.0, |comparison| comparison.value());
        match headline.goal {
            Goal::Higher => value,
            Goal::Lower => -value,
            _ => value.abs(),
        }
    };
    let own = gain(headline);
    own > 0.0 && judged.asked().all(|other| gain(other) <= own)
}

/// How far true averages of builds are taken to differ, as a standard deviation.
#[must_use]
pub fn usual_spread_of_builds(measure: &MeasureId, shot_sd: f64) -> f64 {
    let experience = measure.known().and_then(|known| known.facts().builds_differ_by);
    experience.unwrap_or_else(|| stats::usual_prior_sd(shot_sd))
}

/// The honest lead of the candidate spoken of; `None` with a single candidate, without averages to compare, and where another
/// one leads.
#[must_use]
pub fn honest_lead(judged: &Judged<'_>) -> Option<HonestLead> {
    let headline = judged.headline()?;
    let Basis::Difference(careful) = headline.comparison()?.basis else { return None };
    let candidates: Vec<Group> = judged.asked().filter_map(|j| j.pair.numbers.candidate).collect();
    let groups: Vec<Group> =
        headline.pair.numbers.baseline.into_iter().chain(candidates.iter().copied()).collect();
    if candidates.len() < 2 || !leads(judged, headline) {
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
