//! Can this session be trusted? What was seen that makes a comparison lie, each finding with its size.
//!
//! Findings are values; words are made of them elsewhere. None of them changes the verdict: what has to
//! widen an interval has widened it already (see [`crate::analysis`]).

mod learning;
mod look;
mod moved;
mod odd;
mod seen;

pub use odd::has_impossible_value;
pub use seen::{Odd, Seen, Weight};

use crate::judge::Judged;

/// Everything worth knowing about a session for the pair and measure of the headline, the most serious first.
#[must_use]
pub fn trust(judged: &Judged<'_>, removals_to_flip: Option<usize>) -> Vec<Seen> {
    let Some(headline) = judged.headline() else { return Vec::new() };
    let mut seen = odd::odd_values(&judged.settled, headline);
    seen.extend(moved::moved(judged.settled.session, headline));
    seen.extend(learning::learning(&judged.settled, headline));
    seen.extend(look::look(&judged.settled, headline));
    seen.extend(removals_to_flip.map(|shots| Seen::FewShotsDecide { shots }));
    arrange::sort_by_key(&mut seen, Seen::weight);
    seen
}
