//! An answer with every shot and without those set aside: both decisions, with their sizes and their intervals.

use crate::case::Case;
use crate::format::number;
use judging::analysis::Estimate;
use judging::interval::Interval;
use judging::verdict::{Decision, DecisionKind};
use session::question::Goal;
use text::Voice;
use text::overlay as say;

/// A decision for the middle of a sentence.
pub(crate) fn in_short(voice: &Voice, decision: &Decision) -> String {
    match decision.kind {
        DecisionKind::Different => say::short_different(voice),
        DecisionKind::Same => say::short_same(voice),
        DecisionKind::CannotTell => say::short_cannot_tell(voice),
        DecisionKind::CannotAnswer => say::short_cannot_answer(voice),
    }
}

/// A decision with its size: `cannot tell, +7 yd (−2 yd to +16 yd, 95 % interval)`.
pub(crate) fn result(case: &Case, estimate: Option<&Estimate>, decision: &Decision) -> String {
    let short = in_short(case.voice, decision);
    estimate.map_or_else(
        || short.clone(),
        |estimate| say::result(case.voice, &short, &figures(case, estimate, decision)),
    )
}

/// A size and the interval that decided.
pub(crate) fn figures(case: &Case, estimate: &Estimate, decision: &Decision) -> String {
    let Interval { low, high, level } = match decision.kind {
        DecisionKind::Same => estimate.equivalence,
        _ => Interval { low: estimate.low, high: estimate.high, level: estimate.level },
    };
    let print = |x: f64| match case.judgment.goal {
        Goal::Tighter => hundredths(case.voice, x),
        _ => case.subject.signed(x),
    };
    let level = percent(case.voice, level);
    say::figures(case.voice, &print(estimate.value), &print(low), &print(high), &level)
}

/// A ratio of scatters as hundredths more or less.
fn hundredths(voice: &Voice, ratio: f64) -> String {
    let size = number(voice, ((ratio - 1.0) * 100.0).abs(), 0);
    if size == "0" { text::paste::the_same(voice) } else { text::spread::end(voice, &size, ratio < 1.0) }
}

/// A level with the digits it takes to stay below 100 %.
fn percent(voice: &Voice, level: f64) -> String {
    let missing = (1.0 - level) * 100.0;
    let decimals = (0..6).find(|&d| missing * session::digits::power_of_ten(d) >= 0.5).unwrap_or(6);
    number(voice, level * 100.0, decimals)
}
