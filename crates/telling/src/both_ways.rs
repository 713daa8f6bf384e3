//! An answer with every shot and without those set aside: both decisions, with their sizes and their intervals.

use crate::case::Case;
use crate::ends::{Printed, printed};
use judging::analysis::Estimate;
use judging::interval::Interval;
use judging::verdict::{Decision, DecisionKind};
use text::Voice;
use text::overlay as say;

/// A decision for the middle of a sentence.
pub(crate) fn in_short(voice: &Voice, decision: &Decision) -> String {
    match decision.kind {
        DecisionKind::Different => say::short_different(voice),
        DecisionKind::Same => say::short_same(voice, voice.is_of_the_sender()),
        DecisionKind::CannotTell => say::short_cannot_tell(voice),
        DecisionKind::CannotAnswer => say::short_cannot_answer(voice),
    }
}

/// A decision with its size: `cannot tell, +7 yd (−2 yd to +16 yd, 95 % interval)`.
pub(crate) fn result(case: &Case, estimate: Option<&Estimate>, decision: &Decision) -> String {
    let short = in_short(case.voice, decision);
    estimate.map_or_else(
        || short.clone(),
        |estimate| say::result(case.voice, &short, &figures_of(case, estimate, decision)),
    )
}

/// A size and the interval by which a decision was made, which need not be the one that stands.
fn figures_of(case: &Case, estimate: &Estimate, decision: &Decision) -> String {
    figures(case, &decided_so(estimate, decision))
}

/// An estimate with the interval by which this decision was made.
pub(crate) fn decided_so(estimate: &Estimate, decision: &Decision) -> Estimate {
    let decided_by = match decision.kind {
        DecisionKind::Same => estimate.equivalence,
        _ => Interval { low: estimate.low, high: estimate.high, level: estimate.level },
    };
    Estimate { decided_by, ..estimate.clone() }
}

/// A size and the interval that decided.
pub(crate) fn figures(case: &Case, estimate: &Estimate) -> String {
    let Printed { value, low, high, level } = printed(estimate, case.judgment.margin, &case.subject);
    say::figures(case.voice, &value, &low, &high, &level)
}
