//! Shots that do not belong to their plan, in words.

use super::plan;
use judging::plan::{FollowRefused, TurnPlace};
use session::refusal::Refusal;
use text::Voice;
use text::plan as say;

/// A test under way that cannot be followed.
#[must_use]
pub fn refused(refused: &FollowRefused, voice: &Voice) -> Refusal {
    match refused {
        FollowRefused::Plan(why) => plan::refused(why, voice),
        FollowRefused::NoSuchTurn { place, turn, turns } => {
            let place = match place {
                TurnPlace::Shot(at) => format!("shots.{at}.turn"),
                TurnPlace::Ended(at) => format!("ended.{at}"),
            };
            let message = say::no_such_set(voice, &turn.to_string(), &turns.to_string());
            Refusal::new("no_such_turn", &place, &message, &say::no_such_set_remedy(voice))
        }
    }
}
