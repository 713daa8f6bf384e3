//! Where they land: each build's shots on the ground, its center, where its next shots would fall, and the chance to hit a fairway of a
//! chosen width, as aimed and with the best aim.
//!
//! First stands how many were counted, as a share with its interval (see `counted`); beside it the chance of a normal
//! scatter with the shots' own center and deviation, whose interval comes from a bootstrap of whole shots (see `chances`):
//! it alone can say what another aim would do. Carry only: where a ball rolls to is not known.
//! Aiming elsewhere moves every shot sideways by the same amount, which is right to a yard or two for shots about
//! equally long. What is gained is held to what the answer is held to: the word on the number of shots, and several clubs.

mod chances;
mod counted;
mod facts;
mod finding;
mod hundred;
mod shots;
mod strip;

pub use chances::{BestAim, HitChance, LandingPair};
pub use facts::{BuildFacts, Ground, LandingFacts, LandingLimits};
pub use finding::LandingFinding;
pub use hundred::{InHundred, hundredths};
pub use shots::{FEWEST_FOR_OVALS, Landed, Oval, Spot};
pub use strip::{Strip, StripPlace, USUAL_FAIRWAY};

use crate::analysis::{Aspect, Include, ShotTable, compare, levels};
use crate::flying::{NoSuchBuild, check_build};
use crate::verdict::Why;
use session::known::Known;
use session::measure::MeasureId;
use session::question::{BuildPlace, Stopping};
use session::{MOST_BUILDS, Order, Session};
use shots::{Group, landed};
use stats::Level;
use strip::{FAIRWAYS, FARTHEST_AIM};

/// Why it cannot be shown where shots land.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LandingRefused {
    /// It names a build that is not there.
    NoSuchBuild(NoSuchBuild),
    /// A fairway or an aim that is not worth asking for.
    Outside {
        /// Which of the two.
        place: StripPlace,
        /// Lowest that is, yd.
        low: f64,
        /// Highest that is, yd.
        high: f64,
    },
    /// No shot has both carry and offline.
    NothingLanded,
}

impl From<NoSuchBuild> for LandingRefused {
    fn from(refused: NoSuchBuild) -> Self {
        Self::NoSuchBuild(refused)
    }
}

/// Finds where the shots land and how often they would hit a strip.
///
/// # Errors
/// A [`LandingRefused`] for a build that is not there, a fairway or an aim outside its range, and a session without
/// carry and offline of the same shots.
pub fn landing(
    session: &Session,
    baseline: usize,
    candidate: Option<usize>,
    strip: Strip,
    stopping: &Stopping,
) -> Result<LandingFacts, LandingRefused> {
    check_build(session, BuildPlace::Baseline, baseline)?;
    if let Some(candidate) = candidate {
        check_build(session, BuildPlace::Candidate, candidate)?;
    }
    let Strip { fairway, aim } = strip;
    check_within(StripPlace::Fairway, fairway, FAIRWAYS)?;
    check_within(StripPlace::Aim, aim, [-FARTHEST_AIM, FARTHEST_AIM])?;
    let shots = landed(session);
    let groups: Vec<Group> = (0..session.builds.len().min(MOST_BUILDS))
        .map(|build| Group::of(build, &shots))
        .filter(|group| !group.offline.is_empty())
        .collect();
    if groups.is_empty() {
        return Err(LandingRefused::NothingLanded);
    }
    let decides = level(session, baseline, candidate, stopping);
    let mut found = chances::chances(&groups, baseline, candidate, strip, decides);
    let compared = Held::of(session, baseline, candidate);
    if let Some(pair) = found.pair.as_mut().filter(|_| compared.no_scatter.is_some()) {
        pair.chance_if_same = None;
    }
    let builds = groups
        .iter()
        .zip(found.builds)
        .map(|(group, chances)| BuildFacts {
            build: group.build,
            n: group.offline.len(),
            center: group.center(),
            ovals: if compared.no_scatter.is_none() { group.ovals() } else { Vec::new() },
            counted: group.landed(aim, fairway),
            counted_share: counted::share(group.landed(aim, fairway), group.offline.len()),
            of_100: counted::in_hundred(group.landed(aim, fairway), group.offline.len()),
            counted_as_aimed: group.landed(0.0, fairway) as f64 / group.offline.len() as f64,
            at_aim: chances.at_aim,
            as_aimed: chances.as_aimed,
            best: chances.best,
        })
        .collect();
    let ground = Ground {
        fairway,
        aim,
        limits: LandingLimits { narrowest: FAIRWAYS[0], widest: FAIRWAYS[1], farthest_aim: FARTHEST_AIM },
        shots,
        pair: found.pair,
        level: decides.coverage(),
        order: order(session, baseline, candidate),
        long_turns: compared.long_turns,
        no_scatter: compared.no_scatter,
        draws: chances::DRAWS,
        seed: chances::SEED,
    };
    Ok(LandingFacts { ground, builds })
}

/// As strict as the answer is at first, with several clubs: Holm's rule asks that much of the one that leads.
fn level(session: &Session, baseline: usize, candidate: Option<usize>, stopping: &Stopping) -> Level {
    let rounds = candidate.map_or(0, |other| ShotTable::new(session).shared_rounds(baseline, other));
    levels(stopping, rounds).different.shared_by(session.builds.len().saturating_sub(1))
}

/// What the answer about the two numbers of the builds found of how they can be held against each other.
#[derive(Default)]
struct Held {
    long_turns: bool,
    no_scatter: Option<MeasureId>,
}

impl Held {
    fn of(session: &Session, baseline: usize, candidate: Option<usize>) -> Self {
        let Some(candidate) = candidate.filter(|other| *other != baseline) else { return Self::default() };
        let table = ShotTable::new(session);
        let mut held = Self::default();
        for known in [Known::Carry, Known::Offline] {
            let pair =
                compare(&table.measured(&known.into(), Include::All), baseline, candidate, Aspect::Average);
            held.long_turns |= pair.turns.is_some_and(|turns| turns.are_too_long);
            if matches!(pair.comparison, Err(Why::NoScatter | Why::NoScatterInRounds)) {
                held.no_scatter = held.no_scatter.or_else(|| Some(known.into()));
            }
        }
        held
    }
}

/// In turn over all builds, but not for these two, is one after the other for them.
fn order(session: &Session, baseline: usize, candidate: Option<usize>) -> Order {
    let shares_rounds =
        candidate.is_some_and(|other| ShotTable::new(session).shared_rounds(baseline, other) > 0);
    match session.order {
        Order::Interleaved if !shares_rounds => Order::Blocked,
        order => order,
    }
}

fn check_within(place: StripPlace, value: f64, [low, high]: [f64; 2]) -> Result<(), LandingRefused> {
    let is_within = value >= low && value <= high;
    if is_within { Ok(()) } else { Err(LandingRefused::Outside { place, low, high }) }
}
