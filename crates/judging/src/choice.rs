//! What a golfer may choose by where a measure does not decide, and what keeps an answer from standing: advice on one measure
//! reads the whole question.

use crate::fragile::removals_to_flip;
use crate::judge::{Judged, Judgment};
use crate::trust::is_asked_about;
use crate::verdict::{DecisionKind, Direction, Matters, Nearer, Why};
use session::known::Known;
use session::measure::MeasureId;
use session::question::Goal;

/// A measure that advice speaks of, and what of it was asked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Meant {
    /// The measure.
    pub measure: MeasureId,
    /// Whether it is how far shots scatter in it, and not its average.
    pub is_scatter: bool,
}

impl Meant {
    fn of(judgment: &Judgment) -> Self {
        Self { measure: judgment.measure.clone(), is_scatter: judgment.goal == Goal::Tighter }
    }
}

/// What to choose by, once a measure says that two builds are the same or differ by too little; and what comes first where
/// an answer hangs on a few shots, or on a value that the golfer is asked about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Choice {
    /// By anything: the measure asked for is settled, no other one differs, and no few shots decide.
    Freely {
        /// Where the ball comes down to the side, if that was measured and these shots cannot tell it: it takes so many of them
        /// that nobody is held up by it, and nobody is told that nothing is open.
        open: Option<MeasureId>,
    },
    /// By the other measures, on which the two differ by enough to matter, or perhaps so.
    After {
        /// Those measures, scatter last.
        others: Vec<Meant>,
        /// Whether the order of hitting leaves that a hint.
        is_hint: bool,
    },
    /// Not yet: the measure asked for is open, or how far the ball goes.
    NotSettled {
        /// The measure that is open.
        open: Meant,
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
        /// Rounds of a plan that are still to be hit, and are that check.
        rounds_to_go: Option<u32>,
    },
    /// Not before a value is looked at that the golfer is asked about: it alone moves an answer that cannot be told.
    AfterALook,
}

/// What the others are a means to: how far the ball goes.
const HOW_FAR: [Known; 2] = [Known::Carry, Known::Total];

/// Where it comes down to the side.
const WHERE_TO: [Known; 1] = [Known::Offline];

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
fn how_far_is_open(judged: &Judged<'_>, judgment: &Judgment) -> Option<Meant> {
    open_on(judged, judgment, &HOW_FAR).map(Meant::of)
}

/// The first of these measures that these shots cannot tell of this build.
fn open_on<'a>(judged: &'a Judged<'_>, judgment: &Judgment, of: &[Known]) -> Option<&'a Judgment> {
    judged.judgments.iter().find(|other| {
        other.candidate == judgment.candidate
            && other.decision.kind == DecisionKind::CannotTell
            && of.iter().any(|known| other.measure == *known)
    })
}

/// What keeps the answer to the question from being acted on as it stands; `None` where nothing does, and for any other measure.
fn before_the_answer(judged: &Judged<'_>, judgment: &Judgment) -> Option<Choice> {
    let headline = judged.headline().filter(|headline| std::ptr::eq(*headline, judgment))?;
    let decision = &headline.decision;
    match (decision.kind, decision.matters) {
        (DecisionKind::CannotTell, _) if decision.why != Some(Why::DependsOnLeftOut) => {
            is_asked_about(judged).then_some(Choice::AfterALook)
        }
        (DecisionKind::Different, Some(Matters::Yes) | None) if !headline.facts.is_a_hint() => {
            after_a_check(judged, headline)
        }
        _ => None,
    }
}

fn after_a_check(judged: &Judged<'_>, headline: &Judgment) -> Option<Choice> {
    let (asked, rounds_to_go) = (headline.measure.clone(), headline.facts.rounds_to_go());
    removals_to_flip(judged).map(|shots| Choice::AfterACheck { shots, asked, rounds_to_go })
}

/// What a judgment leaves to choose by, or what comes before it is acted on; `None` where its measure decides, or nothing
/// was decided, and nothing stands in the way.
#[must_use]
pub fn choice(judged: &Judged<'_>, judgment: &Judgment) -> Option<Choice> {
    if !judgment.decision.is_inside_the_margin() {
        return before_the_answer(judged, judgment);
    }
    let headline = judged.headline()?;
    let is_open = |judgment: &&Judgment| !judgment.decision.is_inside_the_margin();
    let asked_is_open = judged.of(judgment.candidate).filter(is_open).map(Meant::of);
    Some(if !judgment.facts.differs_on.is_empty() {
        let differs = |other: &&Judgment| {
            other.candidate == judgment.candidate && judgment.facts.differs_on.contains(&other.measure)
        };
        let of_others = || judged.judgments.iter().filter(differs);
        let mut others: Vec<Meant> = of_others().map(Meant::of).collect();
        // Only the measure asked for can be meant so, and it stands first.
        if others.first().is_some_and(|meant| meant.is_scatter) {
            let scatter = others.remove(0);
            others.push(scatter);
        }
        Choice::After { others, is_hint: of_others().any(|other| other.facts.is_a_hint()) }
    } else if let Some(open) = asked_is_open.or_else(|| how_far_is_open(judged, judgment)) {
        match judgment.facts.rounds_to_go() {
            Some(rounds) => Choice::GoOn { rounds },
            None => Choice::NotSettled { open },
        }
    } else if let Some(build) = another_to_look_at(judged, headline) {
        Choice::LookAt { build }
    } else {
        after_a_check(judged, headline).unwrap_or_else(|| Choice::Freely {
            open: open_on(judged, judgment, &WHERE_TO).map(|other| other.measure.clone()),
        })
    })
}
