//! Before and after, in words: what the build did, what the other change did, and which of the two did more.

use super::{Effect, Second};
use crate::question::Question;
use crate::session::Session;
use crate::verdict::{Decision, DecisionKind, Direction};
use crate::words::{Subject, phrase_for, short_name};
use serde::Serialize;
use text::second as say;

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
    let said = |effect: &Effect, who: &str, whom: &str| {
        let phrase = phrase_for(&found.measure);
        let way = if effect.value > 0.0 { &phrase.more } else { &phrase.less };
        let (low, high) = (subject.signed(effect.range.low), subject.signed(effect.range.high));
        match effect.decision.kind {
            DecisionKind::Different => {
                say::different(who, &subject.amount(effect.value), way, whom, &low, &high)
            }
            DecisionKind::Same => say::same(who, whom, &low, &high),
            _ => say::not_settled(who, whom, &subject.signed(effect.value), &low, &high),
        }
    };
    let build = said(&found.build, &other, &own);
    let condition = said(&found.condition, &crate::words::capital(&second), &first);
    let interaction = match found.interaction.decision.kind {
        DecisionKind::Different => {
            say::depends(&other, &subject.signed(found.interaction.value), &own, &second, &first)
        }
        DecisionKind::Same => say::same_in_both(),
        _ => say::depends_not_settled(),
    };
    let n = |at: usize| found.cells.get(at).map_or(0, |cell| cell.n).to_string();
    let in_each = say::in_each(&n(0), &first, &n(1), &second);
    let detail = say::counts(&own, &in_each, &other, &n(2), &n(3));
    found.words = SecondWords {
        headline: headline(&subject, &second, &other, found),
        detail,
        note: if found.condition.order_allowance > 0.0 {
            say::order_allowed_for(&subject.chosen(found.condition.order_allowance))
        } else {
            String::new()
        },
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
    let condition_size = subject.amount(found.condition.value);
    let build_size = subject.amount(found.build.value);
    match (moved(&found.condition), moved(&found.build), over.kind, over.direction) {
        (true, _, DecisionKind::Different, Some(Direction::Higher)) => {
            say::change_moved_more(second, name, other, &condition_size, &build_size)
        }
        (_, true, DecisionKind::Different, Some(Direction::Lower)) => {
            say::club_moved_more(other, name, second, &build_size, &condition_size)
        }
        (true, true, ..) => say::both_moved(name, &condition_size, &build_size),
        (true, false, ..) => say::change_moved(second, name, other),
        (false, true, ..) => say::club_moved(other, name, second),
        (false, false, ..) => say::neither_moved(&change, other, name),
    }
}
