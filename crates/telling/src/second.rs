//! Before and after, in words: what the build did, what the other change did, and which of the two did more.

use crate::ends::{Printed, printed_difference};
use crate::format::Subject;
use crate::phrases::phrase_for;
use crate::refusals;
use judging::second::{self, Cell, SecondFacts, SecondRequest, only_other};
use judging::verdict::{Decision, DecisionKind, Direction};
use serde::Serialize;
use session::Session;
use session::measure::MeasureId;
use session::names::short_name;
use session::question::Question;
use session::refusal::Refusal;
use text::second as say;
use text::{Voice, capital};

/// An effect, told.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Effect {
    /// The figures.
    #[serde(flatten)]
    pub facts: second::Effect,
    /// Its interval as it is printed.
    pub printed: Printed,
    /// In words.
    pub words: String,
}

/// Build and condition side by side, told.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Second {
    /// The measure.
    pub measure: MeasureId,
    /// Names of the conditions.
    pub names: [String; 2],
    /// Baseline and candidate, each in both conditions.
    pub cells: Vec<Cell>,
    /// Candidate − baseline, averaged over both conditions.
    pub build: Effect,
    /// Second − first condition, averaged over both builds.
    pub condition: Effect,
    /// How much more the candidate gains on the baseline in the second condition than in the first.
    pub interaction: Effect,
    /// Size of the condition's effect − size of the build's.
    pub condition_over_build: Effect,
    /// Sentences.
    pub words: SecondWords,
}

/// Holds the effect of the build beside that of a second condition.
///
/// # Errors
/// A [`Refusal`] for builds or a measure that are not there, for fewer than three shots in any of the four cells, and for
/// shots without scatter.
pub fn second(request: &SecondRequest, voice: &Voice) -> Result<Second, Refusal> {
    let facts = second::second(request).map_err(|refused| refusals::second(&refused, voice))?;
    let SecondRequest { session, question, .. } = request;
    let candidate = question.candidate.or_else(|| only_other(session, question.baseline)).unwrap_or_default();
    Ok(said(session, question, candidate, facts, voice))
}

/// Sentences about build and condition.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SecondWords {
    /// Which of the two did more, or that it is not settled.
    pub headline: String,
    /// What it rests on.
    pub detail: String,
    /// What to keep in mind.
    pub note: String,
}

fn said(
    session: &Session,
    question: &Question,
    candidate: usize,
    found: SecondFacts,
    voice: &Voice,
) -> Second {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let (own, other) = (name(question.baseline), name(candidate));
    let subject = Subject::of(&found.measure, session, voice);
    let [first, second] = found.names.each_ref().map(|name| short_name(name));
    let printed =
        |effect: &second::Effect| printed_difference(effect.value, &effect.range, found.margin, &subject);
    let of_effect = |effect: &second::Effect, who: &str, whom: &str| {
        let phrase = phrase_for(&found.measure, voice);
        let way = if effect.value > 0.0 { &phrase.more } else { &phrase.less };
        let Printed { value, low, high, level } = printed(effect);
        match effect.decision.kind {
            DecisionKind::Different => {
                say::different(voice, who, &subject.amount(effect.value), way, whom, &low, &high, &level)
            }
            DecisionKind::Same => say::same(voice, who, whom, &low, &high, &level),
            _ => say::not_settled(voice, who, whom, &value, &low, &high, &level),
        }
    };
    let build = of_effect(&found.build, &other, &own);
    let condition = of_effect(&found.condition, &capital(&second), &first);
    let interaction = match found.interaction.decision.kind {
        DecisionKind::Different => {
            say::depends(voice, &other, &subject.signed(found.interaction.value), &own, &second, &first)
        }
        DecisionKind::Same => say::same_in_both(voice),
        _ => say::depends_not_settled(voice),
    };
    let n = |at: usize| found.cells.get(at).map_or(0, |cell| cell.n).to_string();
    let in_each = say::in_each(voice, &n(0), &first, &n(1), &second);
    let detail = say::counts(voice, &own, &in_each, &other, &n(2), &n(3));
    let words = SecondWords {
        headline: headline(&subject, &second, &other, &found),
        detail,
        note: if found.condition.order_allowance > 0.0 {
            say::order_allowed_for(voice, &subject.chosen(found.condition.order_allowance))
        } else {
            String::new()
        },
    };
    let told = |facts: second::Effect, words: String| Effect { printed: printed(&facts), facts, words };
    Second {
        measure: found.measure,
        names: found.names,
        cells: found.cells,
        build: told(found.build, build),
        condition: told(found.condition, condition),
        interaction: told(found.interaction, interaction),
        condition_over_build: told(found.condition_over_build, String::new()),
        words,
    }
}

fn headline(subject: &Subject<'_>, second: &str, other: &str, found: &SecondFacts) -> String {
    let change = capital(second);
    let moved = |effect: &second::Effect| effect.decision.kind == DecisionKind::Different;
    let over: Decision = found.condition_over_build.decision;
    let name = &subject.name;
    let condition_size = subject.amount(found.condition.value);
    let build_size = subject.amount(found.build.value);
    match (moved(&found.condition), moved(&found.build), over.kind, over.direction) {
        (true, _, DecisionKind::Different, Some(Direction::Higher)) => {
            say::change_moved_more(subject.voice, second, name, other, &condition_size, &build_size)
        }
        (_, true, DecisionKind::Different, Some(Direction::Lower)) => {
            say::club_moved_more(subject.voice, other, name, second, &build_size, &condition_size)
        }
        (true, true, ..) => say::both_moved(subject.voice, name, &condition_size, &build_size),
        (true, false, ..) => say::change_moved(subject.voice, second, name, other),
        (false, true, ..) => say::club_moved(subject.voice, other, name, second),
        (false, false, ..) => say::neither_moved(subject.voice, &change, other, name),
    }
}
