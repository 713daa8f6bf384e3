//! A fair test, decided before the first ball: who hits what when, when one may look, and what it will show.
//!
//! [`plan`] is pure: the same request gives the same plan, so the request alone needs keeping. [`follow`] takes the
//! shots hit so far and says whose turn it is, whether the answer may be looked at, and what is asked of it.
//! Limits: 2 to 8 builds, sets of 1 to 5 shots, 2 to 60 rounds; [`limits`] hands them out.

mod beside;
mod chance;
mod follow;
mod hour;
mod length;
mod limits;
mod looks;
mod order;
mod refused;
mod settle;
mod settled;

pub use chance::{FoundFacts, Power, PowerFacts};
pub use follow::{FollowRequest, Followed, LoggedShot, LookCost, NowTurn, ProgressFacts, follow};
pub use hour::days;
pub use length::Length;
pub use limits::{LONGEST_SET, LeastAndMost, PlanLimits, limits};
pub use looks::{LookTaken, PlannedLook, opening_question, stopping};
pub use order::{Turn, balanced, cycle};
pub use refused::{FollowRefused, PlanPart, PlanRefused, TurnPlace};
pub use settle::{settle_plan, without_session, written_out};
pub use settled::{PlanSpread, SettledPlan, SpreadFrom};

use chance::Chances;
use serde::Serialize;
use session::measure::MeasureId;
use session::plan::PlanRequest;
use session::question::{Goal, Question};

/// Everything that is decided before the first ball.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanFacts {
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
    /// What shorter and longer tests would show.
    pub lengths: Vec<Length>,
    /// One build under two labels.
    pub same_club: bool,
}

/// A plan with everything that its words are made of.
#[derive(Debug, Clone, PartialEq)]
pub struct Planned {
    /// What was asked for, every gap filled.
    pub settled: SettledPlan,
    /// What was decided.
    pub facts: PlanFacts,
    /// What it will show; `None` where the spread is not known.
    pub power: Option<Power>,
    /// Between two labels of one build: the gap that luck sets on average; `None` where the spread is not known.
    pub gap_by_luck: Option<f64>,
}

/// Makes a plan.
///
/// # Errors
/// A [`PlanRefused`]: too few or too many builds, rounds or shots in a row, two builds of one name, a measure that is not
/// in the list, a margin or a spread that is none, a look outside the plan.
pub fn plan(request: &PlanRequest) -> Result<Planned, PlanRefused> {
    let settled = settle_plan(request)?;
    let rounds = settled.rounds;
    let lengths = length::wanted(rounds);
    let invented = chance::invented(&settled, lengths.last().copied().unwrap_or(rounds));
    let chances = Chances::of(&settled, rounds, invented.as_ref());
    let power = chances.power(beside::two_visits(&settled, invented.as_ref()).as_ref());
    let levels = looks::look_levels(rounds, &settled.looks).different;
    let facts = PlanFacts {
        question: looks::question(request, rounds, &[]),
        measure: settled.measure.into(),
        goal: settled.goal,
        margin: settled.margin.value(),
        margin_is_default: settled.margin_is_default,
        spread: settled.spread,
        set: settled.set,
        rounds,
        seed: settled.seed,
        warm_up: settled.warm_up,
        turns: order::turns(&settled),
        rests: hour::rests(&settled, rounds),
        looks: looks::planned(&settled.looks, &levels),
        balls: hour::balls(&settled, rounds),
        minutes: hour::minutes(&settled, rounds),
        lengths: length::lengths(&settled, &lengths, invented.as_ref()),
        same_club: settled.same_club,
    };
    let gap_by_luck = gap_by_luck(&settled);
    Ok(Planned { facts, power, gap_by_luck, settled })
}

/// Mean of the size of a normal gap with standard deviation s√(2/n).
fn gap_by_luck(settled: &SettledPlan) -> Option<f64> {
    let each = f64::from(settled.rounds * settled.set);
    let spread = settled.spread_of_averages()?.value;
    Some(spread * (2.0 / each).sqrt() * (2.0 / std::f64::consts::PI).sqrt())
}
