//! A fair test, decided before the first ball: who hits what when, when one may look, and what it will show.
//!
//! [`plan`] is pure: the same request gives the same plan, so the request alone needs keeping. [`follow`] takes the
//! shots hit so far and says whose turn it is, whether the answer may be looked at, and what is asked of it.
//! Limits: 2 to 8 builds, sets of 1 to 5 shots, 2 to 60 rounds.

mod chance;
mod checklist;
mod follow;
mod length;
mod looks;
mod order;
mod request;
mod words;

pub use chance::{Found, PlanPower};
pub use checklist::ToRecord;
pub use follow::{FollowRequest, FollowWords, LoggedShot, NowTurn, Progress, follow};
pub use length::Length;
pub use looks::{LookAfter, LookTaken, LookWord, PlannedLook, stopping};
pub use order::{balanced, cycle};
pub(crate) use request::written_out;
pub use request::{LONGEST_SET, MOST_BUILDS, PlanRequest, PlanSpread, SpreadFrom};
pub use words::PlanWords;

use crate::check::Refusal;
use crate::measure::MeasureId;
use crate::question::{Goal, Question};
use chance::Chances;
use libm::pow;
use request::{Settled, settle};
use serde::Serialize;

/// One set: a build, a few shots in a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Turn {
    /// Index of the build.
    pub build: usize,
    /// The pass through the builds, from 1.
    pub round: u32,
    /// Shots of the set.
    pub shots: u32,
}

/// Everything that is decided before the first ball.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Plan {
    /// Names of the builds; the first is the one the others are held against.
    pub builds: Vec<String>,
    /// What will be asked of the shots.
    pub question: Question,
    /// The measure.
    pub measure: MeasureId,
    /// What better means.
    pub goal: Goal,
    /// The smallest difference that matters.
    pub margin: f64,
    /// Whether that is the usual one.
    pub margin_is_default: bool,
    /// How far single shots scatter; null where nobody knows.
    pub spread: Option<PlanSpread>,
    /// Shots in a row.
    pub set: u32,
    /// Passes through the builds.
    pub rounds: u32,
    /// Seed of a drawn order; null for the balanced one.
    pub seed: Option<u32>,
    /// Shots before the first that counts.
    pub warm_up: u32,
    /// The sets in the order of hitting.
    pub turns: Vec<Turn>,
    /// Rounds after which to rest.
    pub rests: Vec<u32>,
    /// When the answer may be looked at.
    pub looks: Vec<PlannedLook>,
    /// Balls with the warm-up.
    pub balls: u32,
    /// About so many minutes.
    pub minutes: u32,
    /// What the test will show; null where the spread is not known.
    pub power: Option<PlanPower>,
    /// What shorter and longer tests would show.
    pub lengths: Vec<Length>,
    /// What to write down.
    pub record: Vec<ToRecord>,
    /// What to mind.
    pub cautions: Vec<String>,
    /// One build under two labels.
    pub same_club: bool,
    /// The plan in words.
    pub words: PlanWords,
}

/// Makes a plan.
///
/// # Errors
/// A [`Refusal`] with the field and the remedy: too few or too many builds, rounds or shots in a row, two builds of
/// one name, a measure that is not in the list, a margin or a spread that is none, a look outside the plan.
pub fn plan(request: &PlanRequest) -> Result<Plan, Refusal> {
    let settled = settle(request)?;
    let (rounds, balls, minutes) =
        (settled.rounds, length::balls(&settled, settled.rounds), length::minutes(&settled, settled.rounds));
    let lengths = length::wanted(rounds);
    let invented = chance::invented(&settled, lengths.last().copied().unwrap_or(rounds));
    let chances = Chances::of(&settled, rounds, invented.as_ref());
    let seen: Vec<(f64, f64)> = (1..=3)
        .map(|n| times(&settled, n))
        .map(|difference| (difference, chances.found(difference)))
        .collect();
    let power = seen.iter().all(|(_, chance)| chance.is_finite()).then(|| PlanPower {
        seen: seen
            .iter()
            .map(|&(difference, chance)| Found {
                difference,
                chance,
                words: words::seen_words(&settled, difference, chance),
            })
            .collect(),
        same: chances.same(),
        detectable: chances.detectable(),
        average_rounds: chances.average_rounds(settled.margin),
    });
    let levels = looks::look_levels(rounds, &settled.looks).different;
    Ok(Plan {
        question: question(request, &settled, &[]),
        words: words::words(&settled, &seen, chances.same(), balls, minutes),
        turns: turns(&settled),
        rests: length::rests(&settled, rounds),
        looks: settled
            .looks
            .iter()
            .zip(levels)
            .map(|(&after_round, level)| PlannedLook {
                after_round,
                level: level.coverage(),
                nominal_p: level.alpha(),
            })
            .collect(),
        balls,
        minutes,
        power,
        lengths: length::lengths(&settled, &lengths, invented.as_ref()),
        record: checklist::checklist(&settled.measure),
        cautions: checklist::cautions(),
        measure: settled.measure,
        goal: settled.goal,
        margin: settled.margin,
        margin_is_default: settled.margin_is_default,
        spread: settled.spread,
        set: settled.set,
        rounds,
        seed: settled.seed,
        warm_up: settled.warm_up,
        same_club: settled.same_club,
        builds: settled.builds,
    })
}

/// The margin so many times over; a ratio to that power.
fn times(settled: &Settled, n: i32) -> f64 {
    if settled.goal == Goal::Tighter {
        pow(settled.margin, f64::from(n))
    } else {
        settled.margin * f64::from(n)
    }
}

fn turns(settled: &Settled) -> Vec<Turn> {
    let (builds, rounds) = (settled.builds.len(), settled.rounds as usize);
    let orders = match settled.seed {
        Some(seed) => stats::drawn_orders(builds, rounds, u64::from(seed)),
        None => balanced(builds, rounds),
    };
    let set = |(round, order): (u32, Vec<usize>)| {
        order.into_iter().map(move |build| Turn { build, round, shots: settled.set })
    };
    (1..=settled.rounds).zip(orders).flat_map(set).collect()
}

/// The question of the plan, with the looks taken so far.
fn question(request: &PlanRequest, settled: &Settled, taken: &[LookTaken]) -> Question {
    Question { stopping: stopping(settled.rounds, taken), ..request::opening_question(request) }
}
