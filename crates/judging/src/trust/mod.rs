//! Can this session be trusted? What was seen that makes a comparison lie, each finding with its size.
//!
//! Findings are values; words are made of them elsewhere. None of them changes the verdict: what has to
//! widen an interval has widened it already (see [`crate::analysis`]).

mod learning;
mod look;
mod moved;
mod odd;
mod seen;

pub use odd::{has_value_in_doubt, is_asked_about};
pub(crate) use seen::Moving;
pub use seen::{AllowedFor, DriftShared, Odd, Pushes, Seen, Weight};

use crate::analysis::{Basis, Include, typical_can_be_fitted};
use crate::facts::RestsOn;
use crate::judge::{Judged, Judgment};
use crate::verdict::Direction;

/// Everything worth knowing about a session for the pair and measure of the headline, the most serious first.
#[must_use]
pub fn trust(judged: &Judged<'_>, removals_to_flip: Option<usize>) -> Vec<Seen> {
    let Some(headline) = judged.headline() else { return Vec::new() };
    let mut seen = odd::odd_values(judged, headline);
    seen.extend(moved::moved(judged.settled.session, headline));
    seen.extend(learning::learning(&judged.settled, headline));
    let in_doubt: Vec<f64> = seen.iter().filter_map(|seen| seen.in_doubt_on(&headline.measure)).collect();
    seen.extend(look::look(&judged.settled, headline, &in_doubt, typical_is_told(judged, headline)));
    let rounds_to_go = headline.facts.rounds_to_go();
    seen.extend(removals_to_flip.map(|shots| Seen::FewShotsDecide { shots, rounds_to_go }));
    arrange::sort_by_key(&mut seen, Seen::weight);
    seen
}

/// Which way the drift that these shots show pushes the gap of the two, where they do not share it; `None` where none is found.
pub(crate) fn drift_pushes(judged: &Judged<'_>, headline: &Judgment) -> Option<Direction> {
    let Seen::Drift { pushes, .. } = look::drift(&judged.settled, headline)? else { return None };
    pushes.map(|pushes| pushes.toward)
}

/// Whether anything is told of the typical shot of the two, as far as that is known without working it out.
fn typical_is_told(judged: &Judged<'_>, headline: &Judgment) -> bool {
    let Judgment { baseline, candidate, measure, facts, .. } = headline;
    let settled = &judged.settled;
    headline.comparison().is_some_and(|comparison| {
        matches!(comparison.basis, Basis::Difference(_))
            && facts.rests_on == RestsOn::Shots
            && !has_value_in_doubt(settled.session, measure, [*baseline, *candidate])
            && typical_can_be_fitted(
                &settled.table.measured(measure, Include::All),
                *baseline,
                *candidate,
                comparison.method,
            )
    })
}
