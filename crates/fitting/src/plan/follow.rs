//! A test under way: the shots so far, whose turn it is, and whether the answer may be looked at.

use super::looks::{LookTaken, stopping};
use super::request::{PlanRequest, Settled, settle};
use super::{Turn, length, question, turns, words};
use crate::check::Refusal;
use crate::measure::MeasureId;
use crate::question::{Question, Stopping};
use crate::session::{Build, Order, Session, Shot};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use text::plan as say;

/// One shot as it was written down in the bay.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
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

/// Sentences for the card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FollowWords {
    /// `Round 2 of 6, shot 1 of 3`, or that all is hit.
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
    /// The shots, for `check`.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// What is asked of them, with the looks taken so far.
    pub question: Question,
    /// In words.
    pub words: FollowWords,
}

/// Says where a test stands.
///
/// # Errors
/// A [`Refusal`] for a plan that is none, and for a shot or an end of a set that is not in the plan.
pub fn follow(request: &FollowRequest) -> Result<Progress, Refusal> {
    let settled = settle(&request.plan)?;
    let turns = turns(&settled);
    for (place, turn) in
        (request.shots.iter().enumerate().map(|(i, shot)| (format!("shots.{i}.turn"), shot.turn)))
            .chain(request.ended.iter().enumerate().map(|(i, &turn)| (format!("ended.{i}"), turn)))
    {
        if turn >= turns.len() {
            let message = say::no_such_set(&turn.to_string(), &turns.len().to_string());
            return Err(Refusal::new("no_such_turn", &place, &message, &say::no_such_set_remedy()));
        }
    }
    let hit_in = |turn: usize| request.shots.iter().filter(|shot| shot.turn == turn).map(|_| 1).sum::<u32>();
    let is_over = |turn: usize| hit_in(turn) >= turns[turn].shots || request.ended.contains(&turn);
    let next = (0..turns.len()).find(|&turn| !is_over(turn));
    let rounds_complete = next.map_or(settled.rounds, |turn| turns[turn].round - 1);
    let within_a_round =
        next.is_some_and(|turn| request.shots.iter().any(|shot| turns[shot.turn].round == turns[turn].round));
    let look_now = LookTaken { after_round: rounds_complete, within_a_round };
    let taken = request.looks.contains(&look_now);
    let look_due = !within_a_round && settled.looks.contains(&rounds_complete) && !taken;
    let looked_early =
        request.looks.iter().any(|look| look.within_a_round || !settled.looks.contains(&look.after_round));
    let rests = length::rests(&settled, settled.rounds);
    let turn = next.map(|index| {
        let Turn { build, round, shots } = turns[index];
        let (first, hit) = (index == 0 || turns[index - 1].build != build, hit_in(index));
        let opens_round = index > 0 && turns[index - 1].round != round;
        NowTurn {
            index,
            build,
            round,
            shot: hit + 1,
            of: shots,
            change: first && hit == 0,
            rest: opens_round && hit == 0 && rests.contains(&(round - 1)),
        }
    });
    let by_build = (0..settled.builds.len())
        .map(|build| request.shots.iter().filter(|shot| turns[shot.turn].build == build).count())
        .collect();
    let next_look = settled
        .looks
        .iter()
        .copied()
        .find(|&round| round > rounds_complete || (round == rounds_complete && look_due));
    let words = FollowWords {
        place: place(&settled, turn.as_ref()),
        look: look_words(&settled, look_due, next_look, taken && !within_a_round),
        early: early_words(&settled, look_now),
        stricter: stricter_words(&settled, &request.looks, looked_early),
        notes: note_words(&settled, &turns, &request.shots),
    };
    Ok(Progress {
        turn,
        hit: request.shots.len(),
        of: turns.iter().map(|turn| turn.shots as usize).sum(),
        by_build,
        rounds_complete,
        look_due,
        next_look,
        look_now,
        looked_early,
        session: session(&settled, &turns, &request.shots),
        question: question(&request.plan, &settled, &request.looks),
        words,
    })
}

fn session(settled: &Settled, turns: &[Turn], logged: &[LoggedShot]) -> Session {
    let mut measures = vec![settled.measure.clone()];
    measures.extend(
        logged.iter().flat_map(|shot| shot.values.keys()).filter(|id| **id != settled.measure).cloned(),
    );
    let mut distinct: Vec<MeasureId> = Vec::new();
    for id in measures {
        if !distinct.contains(&id) {
            distinct.push(id);
        }
    }
    let shot = |(number, shot): (u32, &LoggedShot)| Shot {
        build: turns[shot.turn].build,
        round: Some(turns[shot.turn].round),
        number: Some(number),
        values: distinct
            .iter()
            .map(|id| shot.values.get(id).copied().flatten().filter(|v| v.is_finite()))
            .collect(),
        note: shot.note.clone().filter(|note| !note.is_empty()),
        ..Shot::default()
    };
    let shots: Vec<Shot> = (1..).zip(logged).map(shot).collect();
    // Hit in turn as soon as two builds share two rounds; before that nothing can be compared within rounds.
    let order =
        if shots.iter().any(|shot| shot.round > Some(1)) { Order::Interleaved } else { Order::Unknown };
    Session {
        builds: settled.builds.iter().map(|name| Build { name: name.clone() }).collect(),
        measures: distinct,
        shots,
        order,
        ..Session::default()
    }
}

fn place(settled: &Settled, turn: Option<&NowTurn>) -> String {
    match turn {
        Some(turn) => say::position(
            &turn.round.to_string(),
            &settled.rounds.to_string(),
            &turn.shot.to_string(),
            &turn.of.to_string(),
        ),
        None => say::all_hit(&settled.rounds.to_string()),
    }
}

fn look_words(settled: &Settled, due: bool, next: Option<u32>, taken: bool) -> String {
    if due {
        return say::look_is_due();
    }
    match next {
        Some(round) if round == settled.rounds => say::covered_until_all(&round.to_string()),
        Some(round) => say::covered_until_round(&round.to_string()),
        None if taken => say::over_and_looked(),
        None => say::over(),
    }
}

fn early_words(settled: &Settled, now: LookTaken) -> String {
    match stopping(settled.rounds, &[now]) {
        Stopping::Planned { .. } if settled.looks.contains(&now.after_round) => String::new(),
        Stopping::Planned { .. } => say::early_planned(&now.after_round.to_string()),
        Stopping::Word(_) => say::early_unplanned(),
    }
}

fn stricter_words(settled: &Settled, looks: &[LookTaken], looked_early: bool) -> String {
    if !looked_early {
        return String::new();
    }
    match stopping(settled.rounds, looks) {
        Stopping::Planned { .. } => say::stricter_planned(),
        Stopping::Word(_) => say::stricter_unplanned(),
    }
}

fn note_words(settled: &Settled, turns: &[Turn], logged: &[LoggedShot]) -> String {
    let noted = |build: usize| {
        logged.iter().filter(|shot| turns[shot.turn].build == build && shot.note.is_some()).count()
    };
    if logged.iter().all(|shot| shot.note.is_none()) {
        return String::new();
    }
    let counts: Vec<String> = (0..settled.builds.len())
        .map(|build| say::with_club(&noted(build).to_string(), &words::name(settled, build)))
        .collect();
    let all = logged.iter().filter(|shot| shot.note.is_some()).count();
    say::mishits(all, &counts.join(", "))
}
