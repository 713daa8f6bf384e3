//! What a golfer may choose by where a measure does not decide: advice on one measure reads the whole question.

use crate::fragile::removals_to_flip;
use crate::judge::{Judged, Judgment};
use crate::verdict::{DecisionKind, Direction, Nearer};
use session::known::Known;
use session::measure::MeasureId;
use session::question::Goal;

/// What to choose by, once a measure says that two builds are the same or differ by too little.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Choice {
    /// By anything: the measure asked for is settled, no other one differs, and no few shots decide.
    Freely,
    /// By the other measures, on which the two differ by enough to matter, or perhaps so.
    After {
        /// Those measures.
        others: Vec<MeasureId>,
        /// Whether the order of hitting leaves that a hint.
        is_hint: bool,
    },
    /// Not yet: the measure asked for is open, or how far the ball goes.
    NotSettled {
        /// The measure that is open.
        open: MeasureId,
    },
    /// Not yet, for the same reason, and rounds of a plan that may settle it remain.
    GoOn {
        /// How many.
        rounds: u32,
    },
    /// Not before another build is looked at, which is better or may be.
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

/// What the others are a means to: how far the ball goes.
const HOW_FAR: [Known; 2] = [Known::Carry, Known::Total];

/// The build that the answer speaks of, where that is open; else one that is better on any measure. Nobody is sent to a
/// build that is worse.
fn another_to_look_at(judged: &Judged<'_>, headline: &Judgment) -> Option<usize> {
    let is_open = |judgment: &Judgment| judgment.decision.kind == DecisionKind::CannotTell;
    if is_open(headline) {
        return Some(headline.candidate);
    }
    judged.judgments.iter().find(|judgment| is_better(judgment)).map(|judgment| judgment.candidate)
}

/// Whether a build differs from the baseline by what may matter, and not for the worse.
fn is_better(judgment: &Judgment) -> bool {
    let decision = &judgment.decision;
    if decision.kind != DecisionKind::Different || decision.is_inside_the_margin() {
        return false;
    }
    match judgment.goal {
        Goal::Higher => decision.direction == Some(Direction::Higher),
        Goal::Lower | Goal::Tighter => decision.direction == Some(Direction::Lower),
        Goal::NearerZero => decision.nearer != Some(Nearer::Baseline),
        Goal::Different => true,
    }
}

/// How far the ball goes with this build, where these shots cannot tell it.
fn how_far_is_open(judged: &Judged<'_>, judgment: &Judgment) -> Option<MeasureId> {
    let is_open = |other: &&Judgment| {
        other.candidate == judgment.candidate
            && other.decision.kind == DecisionKind::CannotTell
            && HOW_FAR.iter().any(|known| other.measure == *known)
    };
    judged.judgments.iter().find(is_open).map(|other| other.measure.clone())
}

/// What a judgment leaves to choose by; `None` where its measure decides, or nothing was decided.
#[must_use]
pub fn choice(judged: &Judged<'_>, judgment: &Judgment) -> Option<Choice> {
    let headline = judged.headline().filter(|_| judgment.decision.is_inside_the_margin())?;
    let asked = || headline.measure.clone();
    let is_open = |judgment: &Judgment| !judgment.decision.is_inside_the_margin();
    let asked_is_open = judged.of(judgment.candidate).is_some_and(is_open).then(asked);
    Some(if !judgment.facts.differs_on.is_empty() {
        let others = &judgment.facts.differs_on;
        let of_others = judged
            .judgments
            .iter()
            .filter(|other| other.candidate == judgment.candidate && others.contains(&other.measure));
        let is_hint = of_others.into_iter().any(|other| other.facts.order_is_mixed_up());
        Choice::After { others: others.clone(), is_hint }
    } else if let Some(open) = asked_is_open.or_else(|| how_far_is_open(judged, judgment)) {
        match judgment.facts.rounds_to_go() {
            Some(rounds) => Choice::GoOn { rounds },
            None => Choice::NotSettled { open },
        }
    } else if let Some(build) = another_to_look_at(judged, headline) {
        Choice::LookAt { build }
    } else if let Some(shots) = removals_to_flip(judged) {
        Choice::AfterACheck { shots, asked: asked() }
    } else {
        Choice::Freely
    })
}
