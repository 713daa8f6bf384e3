//! The best of several clubs looks better than it is: what to expect of its lead.
//!
//! The pull is the bet's ([`crate::bet`]), so that a page tells one gap to expect and not two. It needs no more for having
//! been picked among several: what was large by luck is pulled, however it came to be looked at; the other clubs say how far
//! clubs lie apart here. The expected best of equal clubs is that of `stats`; here it meets the session's own averages.

use crate::analysis::{Basis, Group};
use crate::bet::expected_gap;
use crate::judge::{Judged, Judgment};
use serde::Serialize;
use session::question::Goal;

/// What is left of the shown lead of the candidate spoken of, and what luck alone would show.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct HonestLead {
    /// Candidates held against the baseline.
    pub candidates: usize,
    /// Candidate − baseline as the shots show it.
    pub shown: f64,
    /// What to expect of it: pulled toward what clubs usually differ by.
    pub honest: f64,
    /// The lead over the baseline that the best of as many equal clubs would show on average; 0 for one.
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

/// The honest lead of the candidate spoken of; `None` without averages to compare, and where another one or the baseline
/// leads.
#[must_use]
pub fn honest_lead(judged: &Judged<'_>) -> Option<HonestLead> {
    let headline = judged.headline()?;
    let Basis::Difference(careful) = headline.comparison()?.basis else { return None };
    let candidates: Vec<Group> = judged.asked().filter_map(|j| j.pair.numbers.candidate).collect();
    let groups: Vec<Group> =
        headline.pair.numbers.baseline.into_iter().chain(candidates.iter().copied()).collect();
    if !leads(judged, headline) {
        return None;
    }
    let shot_sd = headline.comparison()?.shot_sd;
    let variance_of_mean =
        groups.iter().map(|g| shot_sd * shot_sd / g.n.max(1) as f64).sum::<f64>() / groups.len() as f64;
    Some(HonestLead {
        candidates: candidates.len(),
        shown: careful.diff(),
        honest: expected_gap(judged, headline)?,
        by_luck: stats::expected_best(candidates.len()) * variance_of_mean.sqrt(),
    })
}
