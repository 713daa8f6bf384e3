//! What is true of the advice that an answer leaves, and of what may stand in its way.

use super::fact::{Fact, Scope};
use judging::choice::{Choice, choice};
use judging::facts::{HowHit, OrderAllowance};
use judging::feel::{Agreement, OwnSay, feel};
use judging::fragile::removals_to_flip;
use judging::trust::{Odd, Seen, trust};
use judging::verdict::{DecisionKind, Why};
use judging::{Judged, Judgment};
use session::known::Known;

/// Everything that is held against advice.
pub(crate) fn truths(judged: &Judged<'_>) -> Vec<Fact> {
    let Some(headline) = judged.headline() else { return Vec::new() };
    let mut facts = Vec::new();
    let mut add = |scope: Scope, key, value: &str| facts.push(Fact::truth(scope, key, value));
    let removals = removals_to_flip(judged);
    let seen = trust(judged, removals);
    if removals.is_some() {
        add(Scope::Pair(headline.candidate, 0), "is.asked_hangs", "on_few_shots");
    }
    if may_choose(choice(judged, headline).as_ref()) && side_is_open(judged, headline) {
        add(Scope::Session, "is.leaves_open", "direction");
    }
    let moves = |one: &Seen| matches!(one, Seen::OddValue { because: Odd::MovesTheAnswer { .. }, .. });
    let is_open = headline.decision.kind == DecisionKind::CannotTell
        && headline.decision.why != Some(Why::DependsOnLeftOut);
    if is_open && seen.iter().any(moves) {
        add(Scope::Session, "is.asked_about", "yes");
    }
    if seen.iter().any(|one| matches!(one, Seen::OddValue { .. })) {
        add(Scope::Session, "is.slip", "asked_about");
    }
    let is_told = headline.facts.order_allowance == OrderAllowance::Included
        && headline.facts.order == HowHit::OneAfterTheOther;
    let is_enough = |one: &Seen| matches!(one, Seen::Drift { pushes: Some(way), .. } if way.leaves_luck);
    if is_told && seen.iter().any(is_enough) {
        add(Scope::Session, "is.drift_found", "as_luck_needs");
    }
    if headline.measure.usual().is_some() {
        add(Scope::Session, "is.asked_drifts", "known");
    }
    let say =
        OwnSay { straighter: Some(headline.baseline), longer: Some(headline.candidate), ..OwnSay::default() };
    let felt = feel(&say, judged).map(|facts| facts.felt).unwrap_or_default();
    if felt.iter().any(|felt| felt.agreement == Agreement::Opposite) {
        add(Scope::Session, "is.felt", "opposite");
    }
    facts
}

const fn may_choose(choice: Option<&Choice>) -> bool {
    matches!(choice, Some(Choice::Freely { .. }))
}

/// Whether these shots cannot tell where the ball comes down to the side with this club.
fn side_is_open(judged: &Judged<'_>, headline: &Judgment) -> bool {
    judged.judgments.iter().any(|other| {
        other.candidate == headline.candidate
            && other.measure == Known::Offline
            && other.decision.kind == DecisionKind::CannotTell
    })
}
