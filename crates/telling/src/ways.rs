//! The answer with every shot and without those set aside, to be drawn as two bars.

use crate::both_ways::decided_so;
use crate::case::Case;
use crate::ends::{Printed, printed};
use crate::left_out::of_both;
use judging::analysis::Estimate;
use judging::interval::Interval;
use judging::verdict::Decision;
use serde::Serialize;
use text::overlay as say;

/// One of the two answers, to be drawn.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Way {
    /// Which shots it counts: `every shot`.
    pub name: String,
    /// The difference.
    pub value: f64,
    /// The interval that decided it.
    pub interval: Interval,
    /// Part of each half-width that stands for warming up and tiring.
    pub allowance: f64,
    /// The same as texts.
    pub printed: Printed,
}

/// Both answers where shots were set aside and something can be estimated with and without them.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BothWays {
    /// With every shot.
    pub every: Way,
    /// Without those set aside.
    pub without: Way,
}

/// What there is to draw of both answers.
pub(crate) fn both_ways(case: &Case) -> Option<BothWays> {
    let set_aside = case.judgment.facts.set_aside.as_ref()?;
    let way = |name: String, estimate: &Estimate, decision: &Decision| {
        let decided = decided_so(estimate, decision);
        Way {
            name,
            value: decided.value,
            interval: decided.decided_by,
            allowance: decided.order_allowance,
            printed: printed(&decided, case.judgment.margin, &case.subject),
        }
    };
    let voice = case.voice;
    let without = say::without_some(voice, &of_both(case, set_aside));
    Some(BothWays {
        every: way(say::every_shot(voice), case.judgment.estimate.as_ref()?, &set_aside.with_all),
        without: way(without, set_aside.estimate_without.as_ref()?, &set_aside.without),
    })
}
