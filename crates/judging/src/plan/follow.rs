//! A test under way: the shots so far, whose turn it is, and whether the answer may be looked at.

use super::hour::rests;
use super::looks::{LookTaken, question, stopping};
use super::order::{Turn, turns};
use super::refused::{FollowRefused, TurnPlace};
use super::settle::settle_plan;
use super::settled::SettledPlan;
use serde::{Deserialize, Serialize};
use session::measure::MeasureId;
use session::plan::PlanRequest;
use session::question::{Question, Stopping};
use session::{Build, Order, Session, Shot};
use std::collections::BTreeMap;

/// One shot as it was written down in the bay.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LoggedShot {
    /// Index of the set it belongs to, in the plan's order.
    pub turn: usize,
    /// In canonical units; null or absent where nothing was read.
    pub values: BTreeMap<MeasureId, Option<f64>>,
    /// What the golfer said of it, such as `mishit`. It counts all the same.
    #[serde(default)]
    pub note: Option<String>,
}

/// What [`follow`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct FollowRequest {
    /// The plan, as it was asked for.
    pub plan: PlanRequest,
    /// The shots in the order hit.
    #[serde(default)]
    pub shots: Vec<LoggedShot>,
    /// Sets ended before their last shot.
    #[serde(default)]
    pub ended: Vec<usize>,
    /// Looks at the answer, in their order.
    #[serde(default)]
    pub looks: Vec<LookTaken>,
}

/// Whose turn it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct NowTurn {
    /// Index of the set in the plan.
    pub index: usize,
    /// Index of the build.
    pub build: usize,
    /// The round, from 1.
    pub round: u32,
    /// The shot of the set that is next, from 1.
    pub shot: u32,
    /// Shots of the set.
    pub of: u32,
    /// Whether a club is taken in hand for this shot.
    pub change: bool,
    /// Whether a rest is due before it.
    pub rest: bool,
}

/// Where a test stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ProgressFacts {
    /// What is next; null when all is hit.
    pub turn: Option<NowTurn>,
    /// Shots that count so far.
    pub hit: usize,
    /// Shots of the whole plan.
    pub of: usize,
    /// Shots so far with each build.
    pub by_build: Vec<usize>,
    /// Rounds that are complete.
    pub rounds_complete: u32,
    /// Whether a look that the plan holds is due now and not taken yet.
    pub look_due: bool,
    /// The next round after which the plan holds a look; null when none is left.
    pub next_look: Option<u32>,
    /// The look that would be taken now.
    pub look_now: LookTaken,
    /// Whether a look was taken that the plan did not hold.
    pub looked_early: bool,
    /// What is asked of the shots, with the looks taken so far.
    pub question: Question,
}

/// What looks cost that were taken, or would be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LookCost {
    /// Nothing more: the plan holds them.
    Counted,
    /// Their part of the error from then on.
    Stricter,
    /// The levels for looking whenever one likes: no plan covers them.
    Strictest,
}

/// A test under way with everything that its words are made of.
#[derive(Debug, Clone, PartialEq)]
pub struct Followed {
    /// The plan, every gap filled.
    pub settled: SettledPlan,
    /// Where it stands.
    pub facts: ProgressFacts,
    /// Whether the look at the end of the last round was taken.
    pub looked_now: bool,
    /// What a look at this moment would cost.
    pub early: LookCost,
    /// What the looks that were taken cost.
    pub taken: LookCost,
    /// Shots with a note, by build.
    pub noted: Vec<usize>,
    /// The shots so far; nothing is called by a name in it yet.
    session: Session,
}

impl Followed {
    /// The shots so far as a session of builds with these names.
    #[must_use]
    pub fn session(&self, names: &[String]) -> Session {
        let builds = names.iter().map(|name| Build { name: name.clone() }).collect();
        Session { builds, ..self.session.clone() }
    }
}

/// Says where a test stands.
///
/// # Errors
/// A [`FollowRefused`] for a plan that is none, and for a shot or an end of a set that is not in the plan.
pub fn follow(request: &FollowRequest) -> Result<Followed, FollowRefused> {
    let FollowRequest { plan, shots, ended, looks } = request;
    let settled = settle_plan(plan)?;
    let turns = turns(&settled);
    all_in_the_plan(request, turns.len())?;
    let hit_in = |turn: usize| shots.iter().filter(|shot| shot.turn == turn).map(|_| 1).sum::<u32>();
    let is_over = |turn: usize| hit_in(turn) >= turns[turn].shots || ended.contains(&turn);
    let next = (0..turns.len()).find(|&turn| !is_over(turn));
    let rounds_complete = next.map_or(settled.rounds, |turn| turns[turn].round - 1);
    let within_a_round =
        next.is_some_and(|turn| shots.iter().any(|shot| turns[shot.turn].round == turns[turn].round));
    let look_now = LookTaken { after_round: rounds_complete, within_a_round };
    let looked_now = !within_a_round && looks.contains(&look_now);
    let look_due = !within_a_round && settled.looks.contains(&rounds_complete) && !looked_now;
    let taken = cost(&settled, looks);
    let by_build = |counts: &dyn Fn(&LoggedShot) -> bool| -> Vec<usize> {
        let of = |build| shots.iter().filter(|shot| turns[shot.turn].build == build && counts(shot)).count();
        (0..settled.builds()).map(of).collect()
    };
    let facts = ProgressFacts {
        turn: next.map(|index| now(&settled, &turns, index, hit_in(index))),
        hit: shots.len(),
        of: turns.iter().map(|turn| turn.shots as usize).sum(),
        by_build: by_build(&|_| true),
        rounds_complete,
        look_due,
        next_look: settled
            .looks
            .iter()
            .copied()
            .find(|&round| round > rounds_complete || (round == rounds_complete && look_due)),
        look_now,
        looked_early: taken != LookCost::Counted,
        question: question(plan, settled.rounds, looks),
    };
    Ok(Followed {
        facts,
        looked_now,
        early: cost(&settled, &[look_now]),
        taken,
        noted: by_build(&|shot| shot.note.is_some()),
        session: session(&settled, &turns, shots),
        settled,
    })
}

fn all_in_the_plan(request: &FollowRequest, turns: usize) -> Result<(), FollowRefused> {
    let shots = request.shots.iter().enumerate().map(|(i, shot)| (TurnPlace::Shot(i), shot.turn));
    let ended = request.ended.iter().enumerate().map(|(i, &turn)| (TurnPlace::Ended(i), turn));
    match shots.chain(ended).find(|&(_, turn)| turn >= turns) {
        Some((place, turn)) => Err(FollowRefused::NoSuchTurn { place, turn, turns }),
        None => Ok(()),
    }
}

/// The set whose turn it is, with so many of its shots hit.
fn now(settled: &SettledPlan, turns: &[Turn], index: usize, hit: u32) -> NowTurn {
    let Turn { build, round, shots } = turns[index];
    let first = index == 0 || turns[index - 1].build != build;
    let opens_round = index > 0 && turns[index - 1].round != round;
    NowTurn {
        index,
        build,
        round,
        shot: hit + 1,
        of: shots,
        change: first && hit == 0,
        rest: opens_round && hit == 0 && rests(settled, settled.rounds).contains(&(round - 1)),
    }
}

/// What these looks cost.
fn cost(settled: &SettledPlan, looks: &[LookTaken]) -> LookCost {
    let is_planned = |look: &LookTaken| !look.within_a_round && settled.looks.contains(&look.after_round);
    match stopping(settled.rounds, looks) {
        _ if looks.iter().all(is_planned) => LookCost::Counted,
        Stopping::Planned { .. } => LookCost::Stricter,
        Stopping::Word(_) => LookCost::Strictest,
    }
}

fn session(settled: &SettledPlan, turns: &[Turn], logged: &[LoggedShot]) -> Session {
    let mut measures = vec![MeasureId::from(settled.measure)];
    for id in logged.iter().flat_map(|shot| shot.values.keys()) {
        if !measures.contains(id) {
            measures.push(id.clone());
        }
    }
    let shot = |(number, shot): (u32, &LoggedShot)| Shot {
        build: turns[shot.turn].build,
        round: Some(turns[shot.turn].round),
        number: Some(number),
        values: measures
            .iter()
            .map(|id| shot.values.get(id).copied().flatten().filter(|v| v.is_finite()))
            .collect(),
        note: shot.note.clone().filter(|note| !note.is_empty()),
        ..Shot::default()
    };
    let shots: Vec<Shot> = (1..).zip(logged).map(shot).collect();
    // Hit in turn as soon as two builds share two rounds; the first round alone is one build after the other.
    let order =
        if shots.iter().any(|shot| shot.round > Some(1)) { Order::Interleaved } else { Order::Blocked };
    Session { measures, shots, order, ..Session::default() }
}
