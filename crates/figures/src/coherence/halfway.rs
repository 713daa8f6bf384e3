//! Before and after, asked of the second half of each club's shots; and what is true of it.

use super::fact::{Fact, Scope};
use super::sessions::Asked;
use super::truth::decision_word;
use judging::second::SecondRequest;
use judging::{Judged, Judgment};
use session::question::{Goal, Question};

/// The second half of each club's shots after a change, of the two clubs that the answer speaks of, as the page asks it.
pub(crate) fn changed_halfway(asked: &Asked, judged: &Judged<'_>) -> SecondRequest {
    let Asked { session, question, .. } = asked;
    let of = |build: usize| session.shots.iter().filter(|shot| shot.build == build).count();
    let mut seen = vec![0; session.builds.len()];
    let is_second = session.shots.iter().map(|shot| {
        seen[shot.build] += 1;
        Some(2 * seen[shot.build] > of(shot.build))
    });
    let is_second = is_second.collect();
    let candidate = Some(judged.headline().map_or(1, |headline| headline.candidate));
    let question = Question { candidate, ..question.clone() };
    SecondRequest { session: session.clone(), question, is_second, names: None }
}

/// The page's answer about the two clubs of before and after; none where scatter was asked for, of which that part says
/// nothing.
pub(crate) fn answered<'a>(judged: &'a Judged<'_>) -> Option<&'a Judgment> {
    judged.headline().filter(|judgment| judgment.goal != Goal::Tighter)
}

/// What is true of before and after.
pub(crate) fn truths(asked: &Asked, judged: &Judged<'_>) -> Vec<Fact> {
    let Ok(told) = judging::second::second(&changed_halfway(asked, judged)) else { return Vec::new() };
    let mut facts = Vec::new();
    let mut add = |scope: Scope, key, value: &str| facts.push(Fact::truth(scope, key, value));
    // What the club does is the page's own answer about it.
    let of_club = answered(judged).map_or(told.build.decision.kind, |judgment| judgment.decision.kind);
    let (of_change, of_both) = (told.condition.decision.kind, told.interaction.decision.kind);
    for (part, kind) in [("build", of_club), ("condition", of_change), ("interaction", of_both)] {
        add(Scope::Part(part.to_owned()), "is.decision", decision_word(kind));
    }
    add(Scope::Session, "is.club", decision_word(of_club));
    add(Scope::Session, "is.change", decision_word(of_change));
    add(Scope::Session, "is.interaction", decision_word(of_both));
    let yes_or_no = |in_turn: bool| if in_turn { "yes" } else { "no" };
    add(Scope::Session, "is.change_in_turn", yes_or_no(told.condition_in_turn));
    add(Scope::Session, "is.club_in_turn", yes_or_no(!told.pair.order_is_mixed_up()));
    facts
}
