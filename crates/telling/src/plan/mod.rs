//! A fair test in words: what it is and what it will show, and where one under way stands.

mod checklist;
mod follow;
mod names;
mod words;

pub use checklist::ToRecord;
pub use follow::{FollowWords, Progress, follow};
pub use judging::plan::limits as plan_limits;
pub use words::PlanWords;

use crate::refusals;
use judging::plan::{FoundFacts, PlanFacts, Power, PowerFacts};
use serde::Serialize;
use session::plan::PlanRequest;
use session::refusal::Refusal;
use text::Voice;

/// How often a test like this finds a true difference of some size.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Found {
    /// The size and the chance.
    #[serde(flatten)]
    pub facts: FoundFacts,
    /// In words: `10 yd: 5 times in 10`.
    pub words: String,
}

/// What a plan will show.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanPower {
    /// For the margin, twice and three times as much.
    pub seen: Vec<Found>,
    /// The rest.
    #[serde(flatten)]
    pub facts: PowerFacts,
}

/// Everything that is decided before the first ball.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Plan {
    /// Names of the builds; the first is the one the others are held against.
    pub builds: Vec<String>,
    /// What was decided.
    #[serde(flatten)]
    pub facts: PlanFacts,
    /// What the test will show; null where the spread is not known.
    pub power: Option<PlanPower>,
    /// What to write down.
    pub record: Vec<ToRecord>,
    /// What to mind.
    pub cautions: Vec<String>,
    /// The plan in words.
    pub words: PlanWords,
}

/// Makes a plan.
///
/// # Errors
/// A [`Refusal`] with the field and the remedy: too few or too many builds, rounds or shots in a row, two builds of
/// one name, a measure that is not in the list, a margin or a spread that is none, a look outside the plan.
pub fn plan(request: &PlanRequest, voice: &Voice) -> Result<Plan, Refusal> {
    let planned = judging::plan::plan(request).map_err(|refused| refusals::plan(&refused, voice))?;
    let words = words::words(&planned, voice);
    let power = planned.power.map(|Power { seen, facts }| PlanPower {
        seen: seen
            .into_iter()
            .map(|found| Found { facts: found, words: words::seen(&planned.settled, &found, voice) })
            .collect(),
        facts,
    });
    Ok(Plan {
        builds: names::names(&planned.settled, voice),
        cautions: checklist::cautions(&planned.facts, voice),
        facts: planned.facts,
        power,
        record: checklist::checklist(planned.settled.measure, voice),
        words,
    })
}
