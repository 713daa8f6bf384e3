//! The golfer's own say beside what the shots say, in words. Nothing is corrected: feel may choose where shots leave it open.

use crate::format::Subject;
use crate::refusals;
use crate::words::sentences;
use judging::feel::{Agreement, Feeling, FeltFacts, LeftOpen, OwnSay};
use judging::{judge, settle};
use serde::{Deserialize, Serialize};
use session::Session;
use session::names::short_name;
use session::question::Question;
use session::refusal::Refusal;
use text::Voice;
use text::answer::stays_open;
use text::feel as say;

/// What [`feel`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FeelRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
    /// What was felt.
    pub say: OwnSay,
}

/// One feeling beside the shots.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Felt {
    /// The build it was said of.
    pub build: usize,
    /// How it lies with the shots.
    pub agreement: Agreement,
    /// In one sentence.
    pub words: String,
}

/// The golfer's say beside the verdict.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Feel {
    /// One for each thing felt.
    pub felt: Vec<Felt>,
    /// How to choose where the shots leave it open; empty where they do not.
    pub choose: String,
}

/// Sets the golfer's say beside what the shots say.
///
/// # Errors
/// A [`Refusal`] for a build that is not there, and for everything that `check` refuses.
pub fn feel(request: &FeelRequest, voice: &Voice) -> Result<Feel, Refusal> {
    let FeelRequest { session, question, say } = request;
    let settled = settle(question, session).map_err(|misfit| refusals::misfit(&misfit, voice))?;
    let facts =
        judging::feel::feel(say, &judge(settled)).map_err(|refused| refusals::feel(refused, voice))?;
    // What the shots show the opposite of is nothing to go by.
    let opposite = facts.felt.iter().any(|felt| felt.agreement == Agreement::Opposite);
    let open = facts.left_open.map_or_else(String::new, |open| {
        let stays = facts.stays_open.map(|id| stays_open(voice, &Subject::of(&id, session, voice).the()));
        sentences(&[choose(open, opposite, voice), stays.unwrap_or_default()])
    });
    Ok(Feel {
        felt: facts.felt.into_iter().map(|felt| told(session, felt, voice)).collect(),
        choose: if open.is_empty() { open } else { sentences(&[open, liked(session, say, voice)]) },
    })
}

fn told(session: &Session, felt: FeltFacts, voice: &Voice) -> Felt {
    let FeltFacts { build, feeling, agreement, is_hint } = felt;
    let name = name(session, build);
    let feeling = match feeling {
        Feeling::Straighter => say::Feeling::Straighter,
        Feeling::Longer => say::Feeling::Longer,
        Feeling::Easier => return Felt { build, agreement, words: say::easier(voice, &name) },
    };
    let words = match agreement {
        Agreement::Shown => say::shown(voice, &name, feeling, is_hint),
        Agreement::Opposite => say::opposite(voice, &name, feeling, is_hint),
        Agreement::Same => say::same(voice, &name, feeling),
        Agreement::NotShown => say::not_shown(voice, &name, feeling),
        Agreement::NotMeasured => say::not_measured(voice, &name, feeling),
    };
    Felt { build, agreement, words }
}

fn choose(open: LeftOpen, opposite: bool, voice: &Voice) -> String {
    match open {
        LeftOpen::Same => say::choose_same(voice),
        LeftOpen::CannotTell => say::choose_cannot_tell(voice, opposite),
        LeftOpen::CannotTellBet => say::choose_cannot_tell_bet(voice),
        LeftOpen::TooSmall => say::choose_too_small(voice),
    }
}

fn liked(session: &Session, own: &OwnSay, voice: &Voice) -> String {
    match (own.look, own.sound) {
        (None, None) => String::new(),
        (Some(look), None) => say::likes_look(voice, &name(session, look)),
        (None, Some(sound)) => say::likes_sound(voice, &name(session, sound)),
        (Some(look), Some(sound)) => say::likes_both(voice, &name(session, look), &name(session, sound)),
    }
}

fn name(session: &Session, build: usize) -> String {
    short_name(session.builds.get(build).map_or("", |b| b.name.as_str()))
}
