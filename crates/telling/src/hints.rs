//! Why a difference is a hint and not proof: what is told alike of averages and of scatter.

use crate::case::Case;
use judging::facts::{HowHit, RestsOn};
use text::answer as say;

/// What no allowance covers where one club was hit after the other.
pub(crate) fn between_the_blocks(case: &Case) -> String {
    match case.judgment.facts.order {
        HowHit::OneAfterTheOther => say::between_the_blocks(case.voice),
        HowHit::NotKnown | HowHit::InTurn | HowHit::InTurnNotCompared => String::new(),
    }
}

/// Why a difference is a hint, as far as the order is known.
pub(crate) fn hint_no_proof(case: &Case) -> String {
    let (voice, allowed) = (case.voice, case.order_is_allowed_for());
    match (case.judgment.facts.order, case.judgment.facts.rests_on) {
        (HowHit::InTurn | HowHit::InTurnNotCompared, _) => {
            say::hint_not_compared(voice, &case.subject.the(), allowed)
        }
        (HowHit::OneAfterTheOther, _) => say::hint_no_proof(voice, allowed),
        (HowHit::NotKnown, RestsOn::Shots) => say::hint_order_not_known(voice, allowed),
        (HowHit::NotKnown, RestsOn::Averages) => say::hint_averages(voice, allowed),
    }
}
