//! Before and after, in words: what the build did, what the other change did, and which of the two did more.

use crate::answer::without_a_pair;
use crate::ends::{Printed, printed_difference};
use crate::format::Subject;
use crate::phrases::phrase_for;
use crate::refusals;
use crate::words::sentences;
use judging::facts::HowHit;
use judging::second::{self, Cell, DidMore, SecondFacts, SecondRefused, SecondRequest, only_other};
use judging::verdict::{Decision, DecisionKind, Why};
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
    /// Candidate − baseline, as the answer has it.
    pub build: Effect,
    /// Second − first condition, averaged over both builds.
    pub condition: Effect,
    /// How much more the candidate gains on the baseline in the second condition than in the first.
    pub interaction: Effect,
    /// Which of the two did more.
    pub did_more: DidMore,
    /// Sentences.
    pub words: SecondWords,
}

/// Holds the effect of the build beside that of a second condition.
///
/// # Errors
/// A [`Refusal`] for builds or a measure that are not there, for fewer than three shots in any of the four cells, for
/// shots without scatter, and where the answer about the two builds cannot be given.
pub fn second(request: &SecondRequest, voice: &Voice) -> Result<Second, Refusal> {
    let SecondRequest { session, question, .. } = request;
    let facts = second::second(request).map_err(|refused| match refused {
        SecondRefused::NoAnswer(why) => {
            // In the answer's own words.
            let words = without_a_pair(session, &question.measure, &Decision::cannot_answer(why), voice);
            Refusal::new("no_answer", "question.measure", &words.headline, &words.next)
        }
        other => refusals::second(&other, voice),
    })?;
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
    let [first, second] = found.names.each_ref().map(|name| short_name(name));
    let speech = Speech {
        voice,
        subject: Subject::of(&found.measure, session, voice),
        own: name(question.baseline),
        other: name(candidate),
        first,
        second,
        found: &found,
    };
    let build = speech.effect(&found.build, &speech.other, &speech.own);
    let condition = speech.effect(&found.condition, &capital(&speech.second), &speech.first);
    let words = SecondWords {
        headline: speech.headline(),
        detail: speech.detail(),
        note: sentences(&[speech.order_of_the_change(), speech.order_of_the_clubs()]),
    };
    let told = |facts: &second::Effect, words| Effect {
        printed: speech.printed(facts),
        facts: facts.clone(),
        words,
    };
    Second {
        build: told(&found.build, build),
        condition: told(&found.condition, condition),
        interaction: told(&found.interaction, speech.interaction()),
        did_more: found.did_more,
        words,
        measure: found.measure.clone(),
        names: found.names.clone(),
        cells: found.cells.clone(),
    }
}

struct Speech<'a> {
    voice: &'a Voice,
    subject: Subject<'a>,
    own: String,
    other: String,
    first: String,
    second: String,
    found: &'a SecondFacts,
}

impl Speech<'_> {
    fn printed(&self, effect: &second::Effect) -> Printed {
        printed_difference(effect.value, &effect.range, self.found.margin, &self.subject)
    }

    /// `more` or `less`, in the measure's own way.
    fn way(&self, effect: &second::Effect) -> String {
        let phrase = phrase_for(&self.found.measure, self.voice);
        if effect.value > 0.0 { phrase.more } else { phrase.less }
    }

    fn effect(&self, effect: &second::Effect, who: &str, whom: &str) -> String {
        let (voice, way) = (self.voice, self.way(effect));
        let Printed { value, low, high, level } = self.printed(effect);
        match effect.decision.kind {
            DecisionKind::Different => {
                let size = self.subject.amount(effect.value);
                say::different(voice, who, &size, &way, whom, &low, &high, &level)
            }
            DecisionKind::Same => say::same(voice, who, whom, &low, &high, &level),
            _ if effect.decision.why == Some(Why::DependsOnLeftOut) => {
                say::hangs_on_left_out(voice, who, whom, &value, &low, &high, &level)
            }
            _ if effect.says_next_to_nothing => say::next_to_nothing(voice, who, whom, &value),
            _ => say::not_settled(voice, who, whom, &value, &low, &high, &level),
        }
    }

    fn interaction(&self) -> String {
        let effect = &self.found.interaction;
        match effect.decision.kind {
            DecisionKind::Different => say::depends(
                self.voice,
                &self.own,
                &self.other,
                &self.subject.amount(effect.value),
                &self.way(effect),
                &self.second,
                &self.first,
            ),
            DecisionKind::Same => say::same_in_both(self.voice, &self.first, &self.second),
            _ => say::depends_not_settled(self.voice, &self.second, &self.first),
        }
    }

    fn detail(&self) -> String {
        let n = |at: usize| self.found.cells.get(at).map_or(0, |cell| cell.n).to_string();
        let in_each = say::in_each(self.voice, &n(0), &self.first, &n(1), &self.second);
        say::counts(self.voice, &self.own, &in_each, &self.other, &n(2), &n(3))
    }

    /// That what came later is mixed up with warming up and tiring, and what follows for the change.
    fn order_of_the_change(&self) -> String {
        let (voice, condition) = (self.voice, &self.found.condition);
        if self.found.condition_in_turn {
            return String::new();
        }
        let mixed_up = if condition.order_allowance > 0.0 {
            say::order_allowed_for(voice, &self.subject.chosen(condition.order_allowance))
        } else {
            say::order_not_allowed_for(voice, &self.subject.the())
        };
        let hint = if moved(condition) { say::change_hint(voice) } else { String::new() };
        sentences(&[mixed_up, hint])
    }

    /// The answer's own reservation about the clubs.
    fn order_of_the_clubs(&self) -> String {
        let (voice, other) = (self.voice, &self.other);
        if !moved(&self.found.build) || !self.found.pair.order_is_mixed_up() {
            return String::new();
        }
        match self.found.pair.order {
            HowHit::OneAfterTheOther => say::club_hint_one_after_the_other(voice, other),
            HowHit::NotKnown => say::club_hint_order_not_known(voice, other),
            HowHit::InTurn | HowHit::InTurnNotCompared => {
                say::club_hint_not_compared(voice, &self.subject.the(), other)
            }
        }
    }

    fn headline(&self) -> String {
        use DecisionKind::{Different, Same};
        let (voice, measure) = (self.voice, &self.subject.the());
        let (first, second, own, other) = (&self.first, &self.second, &self.own, &self.other);
        let SecondFacts { condition, build, interaction, did_more, .. } = self.found;
        // What came later, or after the other club, is mixed up with warming up and tiring.
        let (change_hint, club_hint) = (!self.found.condition_in_turn, self.found.pair.order_is_mixed_up());
        let (of_change, of_club) = (self.subject.amount(condition.value), self.subject.amount(build.value));
        match (did_more, condition.decision.kind, build.decision.kind) {
            (DidMore::Change, ..) => {
                say::change_moved_more(voice, second, change_hint, measure, other, &of_change, &of_club)
            }
            (DidMore::Club, ..) => {
                say::club_moved_more(voice, other, club_hint, measure, second, &of_club, &of_change)
            }
            // What the club does was altered: no sentence about one of the two on average passes over that.
            (_, of_condition, of_build)
                if moved(interaction) && [of_condition, of_build] != [Different, Different] =>
            {
                let size = self.subject.amount(interaction.value);
                say::altered(voice, other, measure, own, &size, &self.way(interaction), second, first)
            }
            (_, Different, Different) => {
                say::both_moved(voice, change_hint || club_hint, measure, &of_change, &of_club)
            }
            (_, Different, Same) => {
                say::change_moved_club_same(voice, second, change_hint, measure, other, own)
            }
            (_, Same, Different) => {
                say::club_moved_change_same(voice, other, club_hint, measure, first, second)
            }
            (_, Different, _) => say::change_moved(voice, second, change_hint, measure, other),
            (_, _, Different) => say::club_moved(voice, other, club_hint, measure, second),
            (_, Same, Same) => say::neither_matters(voice, second, other, measure),
            (_, of_condition, of_build)
                if (condition.says_next_to_nothing || build.says_next_to_nothing)
                    && [of_condition, of_build].iter().all(|kind| *kind == DecisionKind::CannotTell) =>
            {
                say::nothing_said(voice, second, other, measure)
            }
            _ => say::neither_moved(voice, second, other, measure),
        }
    }
}

fn moved(effect: &second::Effect) -> bool {
    effect.decision.kind == DecisionKind::Different
}
