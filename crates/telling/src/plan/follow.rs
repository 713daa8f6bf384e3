//! A test under way in words: whose turn it is, whether the answer may be looked at, what looks cost.

use super::names::names;
use crate::refusals;
use judging::plan::{FollowRequest, Followed, LookCost, ProgressFacts};
use serde::Serialize;
use session::Session;
use session::names::short_name;
use session::refusal::Refusal;
use text::Voice;
use text::plan as say;

/// Sentences for the card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FollowWords {
    /// `Set 2 of 6, Driver A, shot 1 of 3`, or that all is hit.
    pub place: String,
    /// Why the answer is covered, or that it may be looked at.
    pub look: String,
    /// What looking at this moment would do.
    pub early: String,
    /// How strict the answer is, once a look was taken that the plan did not hold; else empty.
    pub stricter: String,
    /// Notes on shots, by build; empty when there are none.
    pub notes: String,
}

/// Where a test stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Progress {
    /// Whose turn it is, and the looks.
    #[serde(flatten)]
    pub facts: ProgressFacts,
    /// The shots, for `check`.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// In words.
    pub words: FollowWords,
}

/// Says where a test stands.
///
/// # Errors
/// A [`Refusal`] for a plan that is none, and for a shot or an end of a set that is not in the plan.
pub fn follow(request: &FollowRequest, voice: &Voice) -> Result<Progress, Refusal> {
    let followed = judging::plan::follow(request).map_err(|refused| refusals::follow(&refused, voice))?;
    let names = names(&followed.settled, voice);
    let words = FollowWords {
        place: place(&followed, &names, voice),
        look: look(&followed, voice),
        early: early(&followed, voice),
        stricter: stricter(followed.taken, voice),
        notes: notes(&followed.noted, &names, voice),
    };
    Ok(Progress { session: followed.session(&names), facts: followed.facts, words })
}

/// A set is a club's shots in a row: each lap has one for each build.
fn place(followed: &Followed, names: &[String], voice: &Voice) -> String {
    let rounds = followed.settled.rounds;
    match &followed.facts.turn {
        Some(turn) => say::position(
            voice,
            &(turn.index + 1).to_string(),
            &(rounds as usize * names.len()).to_string(),
            &short_name(names.get(turn.build).map_or("", String::as_str)),
            &turn.shot.to_string(),
            &turn.of.to_string(),
        ),
        None => say::all_hit(voice, &rounds.to_string()),
    }
}

fn look(followed: &Followed, voice: &Voice) -> String {
    if followed.facts.look_due {
        return say::look_is_due(voice);
    }
    match followed.facts.next_look {
        Some(round) if round == followed.settled.rounds => say::covered_until_all(voice, &round.to_string()),
        Some(round) => say::covered_until_round(voice, &round.to_string()),
        None if followed.looked_now => say::over_and_looked(voice),
        None => say::over(voice),
    }
}

fn early(followed: &Followed, voice: &Voice) -> String {
    match followed.early {
        LookCost::Counted => String::new(),
        LookCost::Stricter => say::early_planned(voice, &followed.facts.look_now.after_round.to_string()),
        LookCost::Strictest => say::early_unplanned(voice),
    }
}

fn stricter(taken: LookCost, voice: &Voice) -> String {
    match taken {
        LookCost::Counted => String::new(),
        LookCost::Stricter => say::stricter_planned(voice),
        LookCost::Strictest => say::stricter_unplanned(voice),
    }
}

fn notes(noted: &[usize], names: &[String], voice: &Voice) -> String {
    let all = noted.iter().sum();
    if all == 0 {
        return String::new();
    }
    let counts: Vec<String> = noted
        .iter()
        .zip(names)
        .map(|(count, name)| say::with_club(voice, &count.to_string(), &short_name(name)))
        .collect();
    say::mishits(voice, all, &counts.join(", "))
}
