//! Before and after, in words: what the build did, what the other change did, and which of the two did more.

use super::{Effect, Second};
use crate::question::Question;
use crate::session::Session;
use crate::verdict::{Decision, DecisionKind, Direction};
use crate::words::{Subject, phrase_for, sentences, short_name};
use serde::Serialize;

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

pub(super) fn fill(session: &Session, question: &Question, candidate: usize, found: &mut Second) {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let (own, other) = (name(question.baseline), name(candidate));
    let subject = Subject::of(&found.measure, session);
    let [first, second] = found.names.each_ref().map(|name| short_name(name));
    let say = |effect: &Effect, who: &str, whom: &str| {
        let phrase = phrase_for(&found.measure);
        let way = if effect.value > 0.0 { phrase.more } else { phrase.less };
        let ends = format!("{} to {}", subject.signed(effect.range.low), subject.signed(effect.range.high));
        match effect.decision.kind {
            DecisionKind::Different => {
                format!("{who}: {} {way} than {whom} ({ends}).", subject.amount(effect.value))
            }
            DecisionKind::Same => format!("{who} and {whom}: the same for your purpose ({ends})."),
            _ => format!(
                "{who} against {whom}: {} in these shots, not settled ({ends}).",
                subject.signed(effect.value)
            ),
        }
    };
    let build = say(&found.build, &other, &own);
    let condition = say(&found.condition, &crate::words::capital(&second), &first);
    let interaction = match found.interaction.decision.kind {
        DecisionKind::Different => format!(
            "What the club does depends on it: {} gains {} on {own} {second} of what it gains {first}.",
            other,
            subject.signed(found.interaction.value)
        ),
        DecisionKind::Same => "What the club does is the same in both.".to_owned(),
        _ => "Whether the club does more in one than in the other is not settled.".to_owned(),
    };
    let n = |at: usize| found.cells.get(at).map_or(0, |cell| cell.n);
    let detail =
        format!("Shots: {own} {} {first} and {} {second}, {other} {} and {}.", n(0), n(1), n(2), n(3));
    found.words = SecondWords {
        headline: headline(&subject, &second, &other, found),
        detail,
        note: sentences(&[if found.condition.order_allowance > 0.0 {
            format!(
                "What came later is mixed up with warming up and tiring: {} of each end stand for that.",
                subject.chosen(found.condition.order_allowance)
            )
        } else {
            String::new()
        }]),
    };
    found.build.words = build;
    found.condition.words = condition;
    found.interaction.words = interaction;
    found.condition_over_build.words = String::new();
}

fn headline(subject: &Subject, second: &str, other: &str, found: &Second) -> String {
    let change = crate::words::capital(second);
    let moved = |effect: &Effect| effect.decision.kind == DecisionKind::Different;
    let over: Decision = found.condition_over_build.decision;
    let name = &subject.name;
    let sizes =
        format!("{} against {}", subject.amount(found.condition.value), subject.amount(found.build.value));
    match (moved(&found.condition), moved(&found.build), over.kind, over.direction) {
        (true, _, DecisionKind::Different, Some(Direction::Higher)) => {
            format!("The change to '{second}' moved {name} more than {other} did: {sizes}.")
        }
        (_, true, DecisionKind::Different, Some(Direction::Lower)) => {
            format!(
                "{other} moved {name} more than the change to '{second}' did: {} against {}.",
                subject.amount(found.build.value),
                subject.amount(found.condition.value)
            )
        }
        (true, true, ..) => format!("Both moved {name}, and which of them more is not settled: {sizes}."),
        (true, false, ..) => {
            format!("The change to '{second}' moved {name}; whether {other} did is not settled.")
        }
        (false, true, ..) => {
            format!("{other} moved {name}; whether the change to '{second}' did is not settled.")
        }
        (false, false, ..) => format!("{change}: neither the change nor {other} clearly moved {name}."),
    }
}
