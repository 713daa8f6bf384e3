//! The golfer's own say, asked before any number is shown, set beside what the shots say.
//!
//! Feel is not corrected: where the shots cannot tell or say the same, it is the best reason to choose. What was
//! felt is held only against a measure that was recorded, of the felt build against every other one.

use crate::bet;
use crate::choice::{Choice, choice};
use crate::judge::{Judged, Judgment, judge};
use crate::settle::settle;
use crate::verdict::{DecisionKind, Direction, Matters, Nearer};
use serde::{Deserialize, Serialize};
use session::known::Known;
use session::measure::MeasureId;
use session::question::{Goal, Question};

/// Which build it was for each question; null where the golfer felt no difference or did not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct OwnSay {
    /// Felt straighter.
    pub straighter: Option<usize>,
    /// Felt longer.
    pub longer: Option<usize>,
    /// Felt easier to hit.
    pub easier: Option<usize>,
    /// Its look is liked best.
    pub look: Option<usize>,
    /// Its sound is liked best.
    pub sound: Option<usize>,
}

/// How a feeling and the shots lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Agreement {
    /// The shots show it.
    Shown,
    /// The shots show the opposite.
    Opposite,
    /// The shots say the same for both.
    Same,
    /// The shots cannot tell.
    NotShown,
    /// Nothing was recorded that could show it.
    NotMeasured,
}

/// What was felt of a build.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Feeling {
    /// Straighter.
    Straighter,
    /// Longer.
    Longer,
    /// Easier to hit.
    Easier,
}

impl Feeling {
    /// The measures that can show it, the first that was recorded.
    const fn shown_by(self) -> &'static [Known] {
        match self {
            Self::Straighter => &[Known::Offline],
            Self::Longer => &[Known::Carry, Known::Total],
            Self::Easier => &[],
        }
    }

    /// What its measure has to be asked for, where the question asks another thing of it: 'longer' is of averages, and
    /// 'straighter' of how near to the line, or of how tight where that was asked.
    fn another_goal(self, asked: Goal) -> Option<Goal> {
        match (self, asked) {
            (Self::Longer, Goal::Tighter) => Some(Goal::Higher),
            (Self::Straighter, Goal::Higher | Goal::Lower | Goal::Different) => Some(Goal::NearerZero),
            _ => None,
        }
    }
}

/// One feeling beside the shots.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FeltFacts {
    /// The build it was said of.
    pub build: usize,
    /// What was felt.
    pub feeling: Feeling,
    /// How it lies with the shots.
    pub agreement: Agreement,
    /// Whether the order of hitting leaves that a hint.
    pub is_hint: bool,
}

/// Why the shots leave the choice to feel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeftOpen {
    /// The builds are the same for the golfer's purpose.
    Same,
    /// The shots cannot tell, and nothing is bet on them.
    CannotTell,
    /// The shots cannot tell, and a bet says what is likely.
    CannotTellBet,
    /// The difference is too small to matter.
    TooSmall,
}

/// The golfer's say beside the verdict.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FeelFacts {
    /// One for each thing felt.
    pub felt: Vec<FeltFacts>,
    /// Why feel may choose; `None` where it may not.
    pub left_open: Option<LeftOpen>,
    /// What stays open where feel may choose freely.
    pub stays_open: Option<MeasureId>,
}

/// Why a say cannot be set beside the shots.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FeelRefused {
    /// It speaks of a build that is not in the session.
    NoSuchBuild {
        /// The index it names.
        got: usize,
    },
}

/// Sets the golfer's say beside what the shots say.
///
/// # Errors
/// A [`FeelRefused`] for a build that is not there.
pub fn feel(say: &OwnSay, judged: &Judged<'_>) -> Result<FeelFacts, FeelRefused> {
    let builds = judged.settled.session.builds.len();
    let said = [say.straighter, say.longer, say.easier, say.look, say.sound];
    if let Some(got) = said.into_iter().flatten().find(|&build| build >= builds) {
        return Err(FeelRefused::NoSuchBuild { got });
    }
    let feelings =
        [(Feeling::Straighter, say.straighter), (Feeling::Longer, say.longer), (Feeling::Easier, say.easier)];
    let felt = feelings.into_iter().filter_map(|(feeling, build)| {
        let build = build?;
        let (agreement, is_hint) = agreement(judged, build, feeling);
        Some(FeltFacts { build, feeling, agreement, is_hint })
    });
    let (left_open, stays_open) = left_open(judged).map_or((None, None), |(open, stays)| (Some(open), stays));
    Ok(FeelFacts { felt: felt.collect(), left_open, stays_open })
}

/// As the answer leaves the choice; where it cannot tell, not where the two differ on another measure, nor while the rounds
/// of a plan that could still tell remain. Beside it what stays open where anybody may choose freely.
fn left_open(judged: &Judged<'_>) -> Option<(LeftOpen, Option<MeasureId>)> {
    let judgment = judged.headline()?;
    match (judgment.decision.kind, choice(judged, judgment)) {
        (DecisionKind::Same, Some(Choice::Freely { open })) => Some((LeftOpen::Same, open)),
        (DecisionKind::Different, Some(Choice::Freely { open })) => Some((LeftOpen::TooSmall, open)),
        (DecisionKind::CannotTell, _) => {
            let facts = &judgment.facts;
            let open = if bet::is_made(judged) { LeftOpen::CannotTellBet } else { LeftOpen::CannotTell };
            (facts.differs_on.is_empty() && facts.rounds_to_go().is_none()).then_some((open, None))
        }
        (DecisionKind::Same | DecisionKind::Different | DecisionKind::CannotAnswer, _) => None,
    }
}

/// The felt build against every other one: shown if it is for all of them; and whether the order of hitting leaves it a hint.
fn agreement(judged: &Judged<'_>, build: usize, feeling: Feeling) -> (Agreement, bool) {
    let recorded = |id: &MeasureId| judged.settled.session.measures.contains(id);
    let Some(measure) = feeling.shown_by().iter().map(|&known| MeasureId::from(known)).find(recorded) else {
        return (Agreement::NotMeasured, false);
    };
    let pairs = against_every_other(judged, build, feeling, &measure);
    let any = |kind| pairs.iter().any(|(agreement, _)| *agreement == kind);
    let all = |kind| !pairs.is_empty() && pairs.iter().all(|(agreement, _)| *agreement == kind);
    let agreement = match () {
        () if any(Agreement::Opposite) => Agreement::Opposite,
        () if all(Agreement::Shown) => Agreement::Shown,
        () if any(Agreement::NotShown) || any(Agreement::Shown) => Agreement::NotShown,
        () if any(Agreement::Same) => Agreement::Same,
        () => Agreement::NotMeasured,
    };
    (agreement, pairs.iter().any(|(of_pair, is_hint)| *of_pair == agreement && *is_hint))
}

/// The pairs of a build with every other one, on what the feeling means. What was judged holds them when the build is its
/// baseline, or one of two: a pair turned round says the same. Of one candidate among several the session was never asked.
fn against_every_other(
    judged: &Judged<'_>,
    build: usize,
    feeling: Feeling,
    measure: &MeasureId,
) -> Vec<(Agreement, bool)> {
    let (session, question) = (judged.settled.session, judged.settled.question);
    let another_goal = feeling.another_goal(question.goal_on(measure));
    let asked = match another_goal {
        Some(goal) => Question {
            measure: measure.clone(),
            goal: Some(goal),
            margin: None,
            first_margin: None,
            ..question.clone()
        },
        None if question.baseline == build || session.builds.len() == 2 => {
            return of_measure(judged, build, feeling, measure);
        }
        None => question.clone(),
    };
    let asked = Question { baseline: build, candidate: None, ..asked };
    settle(&asked, session)
        .map_or_else(|_| Vec::new(), |asked| of_measure(&judge(asked), build, feeling, measure))
}

fn of_measure(
    judged: &Judged<'_>,
    build: usize,
    feeling: Feeling,
    measure: &MeasureId,
) -> Vec<(Agreement, bool)> {
    let judgments = judged.judgments.iter().filter(|judgment| judgment.measure == *measure);
    judgments.map(|judgment| (of_pair(judgment, build, feeling), judgment.facts.is_a_hint())).collect()
}

/// One pair, as whoever felt something of this build of it sees it.
fn of_pair(judgment: &Judgment, build: usize, feeling: Feeling) -> Agreement {
    let is_candidate = judgment.candidate == build;
    let decision = &judgment.decision;
    let towards = |wanted| (decision.direction == Some(wanted)) == is_candidate;
    let is_so = match (feeling, judgment.goal) {
        (Feeling::Straighter, Goal::NearerZero) => {
            (decision.nearer == Some(Nearer::Candidate)) == is_candidate
        }
        (Feeling::Straighter, _) => towards(Direction::Lower),
        (Feeling::Longer | Feeling::Easier, _) => towards(Direction::Higher),
    };
    match decision.kind {
        DecisionKind::CannotAnswer => Agreement::NotMeasured,
        DecisionKind::CannotTell => Agreement::NotShown,
        DecisionKind::Same => Agreement::Same,
        DecisionKind::Different if decision.matters == Some(Matters::No) => Agreement::Same,
        DecisionKind::Different if decision.nearer == Some(Nearer::NotSettled) => Agreement::NotShown,
        DecisionKind::Different if is_so => Agreement::Shown,
        DecisionKind::Different => Agreement::Opposite,
    }
}
