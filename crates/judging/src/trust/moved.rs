//! A build hit on both sides of a change, a lesson say, that moved with it: then it is not only clubs that differ.
//!
//! Welch's comparison of its own shots on the two sides, widened, at the level of the answer. What else came with time,
//! warming up say, moves it as well: the words do not tell one from the other.

use super::seen::Seen;
use crate::interval::Interval;
use crate::judge::Judgment;
use session::Session;
use stats::{CautiousDifference, Sample};

/// Fewest shots of the build on each side.
const FEWEST: usize = 3;

/// Every build that moved on the measure of the headline, between the first two values of what changed.
pub(super) fn moved(session: &Session, headline: &Judgment) -> Vec<Seen> {
    let Some(second) = session.second.as_ref().filter(|second| second.values.len() >= 2) else {
        return Vec::new();
    };
    (0..session.builds.len())
        .filter_map(|build| {
            let [before, after] = [0, 1].map(|side| values(session, headline, build, side));
            if before.len() < FEWEST || after.len() < FEWEST {
                return None;
            }
            let (before, after) = (Sample::new(before).ok()?, Sample::new(after).ok()?);
            let found = stats::welch(&after, &before).ok()?;
            let ends = CautiousDifference::new(&found, 0.0).interval(headline.levels.different);
            let change = Interval { low: ends.low, high: ends.high, level: ends.level.coverage() };
            (change.low > 0.0 || change.high < 0.0).then(|| Seen::Moved {
                build,
                names: [second.values[0].clone(), second.values[1].clone()],
                before: before.summary().mean(),
                after: after.summary().mean(),
                change,
            })
        })
        .collect()
}

/// What a build's shots on one side hold of the measure.
fn values(session: &Session, headline: &Judgment, build: usize, side: u32) -> Vec<f64> {
    let Some(index) = session.measure_index(&headline.measure) else { return Vec::new() };
    let own = session.shots.iter().filter(|shot| shot.build == build && shot.second == Some(side));
    own.filter_map(|shot| shot.values.get(index).copied().flatten()).collect()
}
