//! A comparison as it is reported, once the decision is known: which interval decided, and what more shots would do.

use super::comparison::Comparison;
use super::estimate::Estimate;
use super::levels::Levels;
use super::more_shots::{Hit, more_shots};
use crate::verdict::Decision;
use session::measure::Margin;

/// What was asked of a comparison, beside its shots.
#[derive(Debug, Clone, Copy)]
pub struct AskedOf<'a> {
    /// How strict the answer had to be.
    pub levels: &'a Levels,
    /// The unit of its numbers, empty for a plain ratio.
    pub unit: &'a str,
    /// The smallest difference that matters.
    pub margin: Option<Margin>,
    /// Builds held against the baseline.
    pub candidates: usize,
    /// Of single shots of the measure: 3 for normal ones.
    pub kurtosis: f64,
}

/// The estimate as this decision saw it.
#[must_use]
pub fn estimate(comparison: &Comparison, decision: &Decision, asked: &AskedOf<'_>) -> Estimate {
    let AskedOf { levels, unit, margin, candidates, kurtosis } = *asked;
    let (different, equivalence) = (comparison.interval(levels.different), comparison.interval(levels.same));
    let shots_to_settle = margin.and_then(|m| comparison.shots_to_settle(m.value(), candidates));
    let hit = Hit { comparison, levels, candidates, kurtosis };
    Estimate {
        value: comparison.value(),
        low: different.low,
        high: different.high,
        level: different.level,
        equivalence,
        decided_by: if decision.is_inside_the_margin() { equivalence } else { different },
        unit: unit.to_owned(),
        n: comparison.n,
        method: comparison.method,
        order_allowance: comparison.allowance(),
        chance_if_same: comparison.chance_if_same(),
        detectable: comparison.detectable(levels.different),
        shots_to_settle,
        more_shots: shots_to_settle.and_then(|shots| more_shots(decision, shots, &hit)),
    }
}
