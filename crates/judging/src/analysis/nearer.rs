//! Which of two builds is nearer to zero, decided by intervals: for a goal of 'straighter'.

use super::estimate::{Group, Numbers};
use super::levels::Levels;
use crate::verdict::{Decision, DecisionKind, Direction, Nearer};
use stats::{CautiousDifference, Summary};

/// Which of two that differ is nearer to zero.
///
/// |b| − |a| has the sign of (b − a)(b + a). The sign of b − a was decided with the difference; that of b + a is by its
/// own interval, widened alike and at the same level. Both must be settled, so that the error is at most that of one.
/// The sum is Welch's over all shots, whether or not they were hit in turn: rounds move both averages alike.
#[must_use]
pub fn nearer(decision: &Decision, numbers: &Numbers, levels: &Levels) -> Option<Nearer> {
    let direction = decision.direction.filter(|_| decision.kind == DecisionKind::Different)?;
    let both = numbers.candidate.zip(numbers.baseline);
    let sum = both
        .and_then(|(candidate, baseline)| sum(&candidate, &baseline))
        .map(|sum| sum.interval(levels.different));
    let candidate_is_higher = direction == Direction::Higher;
    Some(match sum {
        Some(sum) if sum.low > 0.0 && candidate_is_higher => Nearer::Baseline,
        Some(sum) if sum.low > 0.0 => Nearer::Candidate,
        Some(sum) if sum.high < 0.0 && candidate_is_higher => Nearer::Candidate,
        Some(sum) if sum.high < 0.0 => Nearer::Baseline,
        _ => Nearer::NotSettled,
    })
}

/// The sum of two averages, as the difference of one from the other turned around.
fn sum(candidate: &Group, baseline: &Group) -> Option<CautiousDifference> {
    let candidate = Summary::new(candidate.n, candidate.mean, candidate.sd?).ok()?;
    let turned = Summary::new(baseline.n, -baseline.mean, baseline.sd?).ok()?;
    Some(CautiousDifference::new(&stats::welch_from_summaries(&candidate, &turned).ok()?, 0.0))
}
