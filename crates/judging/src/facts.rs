//! What is known of how a comparison came about: the facts that sentences about it are built from.
//!
//! 'Not known' is a value of its own everywhere, so that nobody is told what nobody said. Words, pictures and pages read
//! these, never the method of an estimate, a sign, or a printed number.

use crate::analysis::{Aspect, Comparison, Estimate, Method, Pair, PartOf, Rule};
use crate::settle::Asked;
use crate::verdict::Decision;
use serde::Serialize;
use session::measure::MeasureId;
use session::question::{Stopping, StoppingWord};
use session::{Order, Session};

/// What is known of the order in which two clubs were hit, and whether it could be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum HowHit {
    /// In turn, and compared within the rounds.
    InTurn,
    /// In turn, but too few rounds hold this measure for both clubs, or leave it any scatter, to compare within them.
    InTurnNotCompared,
    /// One club after the other.
    OneAfterTheOther,
    /// Nobody said it and the shots do not show it; of averages nobody can know.
    NotKnown,
}

/// Whether the interval leaves room for what warming up and tiring can do.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OrderAllowance {
    /// It has no need to: both clubs were met alike.
    NotNeeded,
    /// It does.
    Included,
    /// How far they move this measure is not known: it leaves room for a share of what its own shots scatter, a guess.
    SizeNotKnown,
    /// Hit in turn, but one club first in every lap: for what the start of a lap can do.
    StartOfLaps,
}

/// What an interval leaves room for: the one source of every sentence that says so.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AllowsFor {
    /// Luck, where nothing else has to be allowed for.
    Luck,
    /// Luck, and nothing for the order, though that is mixed up with the clubs.
    LuckAlone,
    /// Luck, warming up and tiring.
    LuckAndOrder,
    /// The same, where how far they move the measure is a guess.
    LuckAndAGuess,
    /// Luck and the cold start of each lap.
    LuckAndStarts,
}

/// What was said of the number of shots.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NumberOfShots {
    /// Fixed before the first one.
    SaidFixed,
    /// Not fixed, or looked at on the way without a plan.
    SaidNotFixed,
    /// Nobody was asked, or nobody knows.
    NotSaid,
    /// Planned in rounds.
    Planned {
        /// Rounds that were hit.
        round: u32,
        /// Rounds that were planned.
        planned: u32,
    },
    /// A plan was named, and these rounds are not of it: too many, or fewer than two.
    NotOfThePlan {
        /// Rounds that hold both clubs.
        rounds: u32,
        /// Rounds that were planned.
        planned: u32,
    },
}

/// What a comparison rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RestsOn {
    /// Single shots of both clubs.
    Shots,
    /// Averages of at least one of them.
    Averages,
}

/// Turns so long that only whole laps count: their length, and not the number of shots, is what another test has to change.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct OnlyWholeLaps {
    /// Laps that hold both clubs.
    pub laps: u32,
    /// Shots of the longest turn.
    pub longest_turn: u32,
}

/// What was set aside of two clubs, and the answer without it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct SetAside {
    /// Of the baseline.
    pub baseline: PartOf,
    /// Of the candidate.
    pub candidate: PartOf,
    /// Values of this measure among them that cannot be, and count in neither answer.
    pub slips: usize,
    /// What every shot decides.
    pub with_all: Decision,
    /// What the others decide.
    pub without: Decision,
    /// Size and uncertainty from the others; absent where nothing can be estimated.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub estimate_without: Option<Estimate>,
}

/// The facts of one comparison.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct PairFacts {
    /// How the two were hit.
    pub order: HowHit,
    /// Whether the interval leaves room for it.
    pub order_allowance: OrderAllowance,
    /// What was said of the number of shots.
    pub number: NumberOfShots,
    /// What it rests on.
    pub rests_on: RestsOn,
    /// Whether averages came without a deviation, so that the scatter of single shots is assumed.
    pub scatter_is_assumed: bool,
    /// Whether it cannot be told because the interval is wider than the measure can plausibly differ by.
    pub says_next_to_nothing: bool,
    /// The laps that count, where the turns are so long that only whole laps do.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub only_whole_laps: Option<OnlyWholeLaps>,
    /// The other measures on which the same two differ, by enough to matter or perhaps so.
    pub differs_on: Vec<MeasureId>,
    /// What learning the candidate can have cost on this measure, where it is the worse and that could be why.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub learning_costs: Option<f64>,
    /// What was set aside; absent when nothing was.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub set_aside: Option<SetAside>,
}

impl PairFacts {
    /// What is known before anything is decided.
    pub(crate) fn of(
        session: &Session,
        stopping: &Stopping,
        rule: Rule,
        shared_rounds: u32,
        pair: &Pair,
        asked: &Asked,
    ) -> Self {
        let comparison = pair.comparison.as_ref().ok();
        let rests_on = rests_on(comparison);
        let order = how_hit(session, shared_rounds, pair, rests_on);
        Self {
            order,
            order_allowance: order_allowance(order, comparison, asked),
            number: number(stopping, rule, shared_rounds),
            rests_on,
            scatter_is_assumed: comparison.is_some_and(|c| c.method == Method::SummaryAssumedSpread),
            says_next_to_nothing: false,
            only_whole_laps: None,
            differs_on: Vec::new(),
            learning_costs: None,
            set_aside: None,
        }
    }

    /// Rounds of a plan that are still to be hit; `None` without a plan, and at its end.
    #[must_use]
    pub fn rounds_to_go(&self) -> Option<u32> {
        match self.number {
            NumberOfShots::Planned { round, planned } => planned.checked_sub(round).filter(|&left| left > 0),
            _ => None,
        }
    }

    /// What an interval with this allowance for the order leaves room for.
    #[must_use]
    pub fn allows_for(&self, allowance: f64) -> AllowsFor {
        match self.order_allowance {
            OrderAllowance::NotNeeded => AllowsFor::Luck,
            OrderAllowance::Included => AllowsFor::LuckAndOrder,
            OrderAllowance::SizeNotKnown if allowance > 0.0 => AllowsFor::LuckAndAGuess,
            OrderAllowance::SizeNotKnown => AllowsFor::LuckAlone,
            OrderAllowance::StartOfLaps => AllowsFor::LuckAndStarts,
        }
    }

    /// Whether a difference that was found is a hint, not proof: of averages where clubs and time are mixed up, and of
    /// scatter, for which no interval leaves room, where one club was not hit in turn with the other as far as is known.
    #[must_use]
    pub fn is_a_hint(&self) -> bool {
        self.order_is_mixed_up() || matches!(self.order, HowHit::OneAfterTheOther | HowHit::NotKnown)
    }

    /// Whether order and club are mixed up, as far as is known.
    #[must_use]
    pub fn order_is_mixed_up(&self) -> bool {
        matches!(self.order_allowance, OrderAllowance::Included | OrderAllowance::SizeNotKnown)
    }
}

fn rests_on(comparison: Option<&Comparison>) -> RestsOn {
    match comparison.map(|c| c.method) {
        Some(Method::SummaryWithAllowance | Method::SummaryAssumedSpread) => RestsOn::Averages,
        _ => RestsOn::Shots,
    }
}

/// In turn over all builds, but not for these two, is one after the other for them.
fn how_hit(session: &Session, shared_rounds: u32, pair: &Pair, rests_on: RestsOn) -> HowHit {
    match session.order {
        _ if rests_on == RestsOn::Averages => HowHit::NotKnown,
        Order::Unknown => HowHit::NotKnown,
        _ if shared_rounds == 0 => HowHit::OneAfterTheOther,
        _ if pair.turns.is_some() => HowHit::InTurn,
        _ => HowHit::InTurnNotCompared,
    }
}

/// Scatter is compared as it lies: what moves an average along hardly moves it.
fn order_allowance(order: HowHit, comparison: Option<&Comparison>, asked: &Asked) -> OrderAllowance {
    let Some(comparison) = comparison else { return OrderAllowance::NotNeeded };
    match (order, asked.aspect()) {
        (HowHit::InTurn, Aspect::Average) if comparison.allowance() > 0.0 => OrderAllowance::StartOfLaps,
        (HowHit::InTurn, _) | (_, Aspect::Spread) => OrderAllowance::NotNeeded,
        _ if asked.measure.usual().is_some() => OrderAllowance::Included,
        _ => OrderAllowance::SizeNotKnown,
    }
}

fn number(stopping: &Stopping, rule: Rule, rounds: u32) -> NumberOfShots {
    match (stopping, rule) {
        (_, Rule::Planned { round, planned }) => NumberOfShots::Planned { round, planned },
        (Stopping::Planned { planned_rounds, .. }, _) => {
            NumberOfShots::NotOfThePlan { rounds, planned: *planned_rounds }
        }
        (Stopping::Word(StoppingWord::Fixed), _) => NumberOfShots::SaidFixed,
        (Stopping::Word(StoppingWord::NotFixed), _) => NumberOfShots::SaidNotFixed,
        (Stopping::Word(StoppingWord::Unknown), _) => NumberOfShots::NotSaid,
    }
}
