//! What a golfer may choose by where a measure does not decide: advice on one measure reads the whole question.

use crate::fragile::removals_to_flip;
use crate::judge::{Judged, Judgment};
use crate::verdict::DecisionKind;
use session::measure::MeasureId;

/// What to choose by, once a measure says that two builds are the same or differ by too little.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Choice {
    /// By anything: the measure asked for is settled, no other one differs, and no few shots decide.
    Freely,
    /// By the other measures, on which the two differ by enough to matter, or perhaps so.
    After(Vec<MeasureId>),
    /// Not yet: the measure asked for is open.
    NotSettled {
        /// The measure asked for.
        asked: MeasureId,
    },
    /// Not before another build is looked at, which is not the same.
    LookAt {
        /// Index of that build.
        build: usize,
    },
    /// Not before the answer is checked: it hangs on a few shots.
    AfterACheck {
        /// The fewest whose removal would change it.
        shots: usize,
        /// The measure asked for.
        asked: MeasureId,
    },
}

/// The build that the answer speaks of, where that is no settled 'same'; else one that differs on any measure.
fn another_to_look_at(judged: &Judged<'_>, headline: &Judgment) -> Option<usize> {
    if !headline.decision.is_inside_the_margin() {
        return Some(headline.candidate);
    }
    let differs = |judgment: &&Judgment| {
        judgment.decision.kind == DecisionKind::Different && !judgment.decision.is_inside_the_margin()
    };
    judged.judgments.iter().find(differs).map(|judgment| judgment.candidate)
}

/// What a judgment leaves to choose by; `None` where its measure decides, or nothing was decided.
#[must_use]
pub fn choice(judged: &Judged<'_>, judgment: &Judgment) -> Option<Choice> {
    let headline = judged.headline().filter(|_| judgment.decision.is_inside_the_margin())?;
    let asked = || headline.measure.clone();
    let is_open = |judgment: &Judgment| !judgment.decision.is_inside_the_margin();
    Some(if !judgment.facts.differs_on.is_empty() {
        Choice::After(judgment.facts.differs_on.clone())
    } else if judged.of(judgment.candidate).is_some_and(is_open) {
        Choice::NotSettled { asked: asked() }
    } else if let Some(build) = another_to_look_at(judged, headline) {
        Choice::LookAt { build }
    } else if let Some(shots) = removals_to_flip(judged) {
        Choice::AfterACheck { shots, asked: asked() }
    } else {
        Choice::Freely
    })
}
