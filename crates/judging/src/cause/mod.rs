//! Club or swing: a gap in carry split over how the ball left the club, and over what the swing did that day.
//!
//! The split is exact over the flight model at the builds' own shots (see `split`); what the model does not explain is a
//! part of its own, so that the parts add up to the measured gap. Intervals: bootstrap of whole shots, 1.10 · t · se,
//! with the flight model as a quadratic (see `quick`). Nothing here is a cause by itself: a part says through which
//! number the gap came, and only a test with the builds in turn says that it was the club.

mod delivery;
mod facts;
mod figures;
mod findings;
mod part;
mod quick;
mod split;
mod two;

pub use delivery::{MovedFacts, SpinSourceFacts};
pub use facts::{CauseFacts, Split, Unmeasured};
pub use findings::Covers;
pub use part::{Belongs, Factor, PartFacts, Span};

use crate::analysis::{Aspect, Include, ShotTable, compare};
use crate::flying::{Columns, Flown, NEEDED, NoSuchBuild, VALUES, all_carry_the_same, check_build, flown};
use figures::{CLUB, DRAWS, REST, SEED, SMASH};
use session::Session;
use session::known::Known;
use session::question::BuildPlace;
use two::Two;

/// Fewest shots with each build that can be flown.
const FEWEST: usize = 5;

/// Why a gap cannot be split.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CauseRefused {
    /// It names a build that is not there.
    NoSuchBuild(NoSuchBuild),
    /// Baseline and candidate are one build.
    SameBuildTwice,
    /// Too few shots of one of the two can be flown.
    TooFew {
        /// How many of each it takes.
        fewest: usize,
    },
    /// Every shot of each of the two has the same carry.
    SameCarry,
    /// The session lacks what a flight, or a gap in carry, is made of.
    NotMeasured {
        /// What it lacks.
        missing: Vec<Known>,
    },
}

impl From<NoSuchBuild> for CauseRefused {
    fn from(refused: NoSuchBuild) -> Self {
        Self::NoSuchBuild(refused)
    }
}

/// The factors of a flight in the order of [`crate::flying::FACTORS`].
const OF_FLIGHT: [Factor; VALUES] =
    [Factor::BallSpeed, Factor::LaunchAngle, Factor::SpinRate, Factor::LaunchDirection, Factor::SpinAxis];

/// Splits the gap in carry between two builds.
///
/// # Errors
/// A [`CauseRefused`] for builds that are not there or are one, for carries that are all alike, and for fewer than five shots of each with carry, ball
/// speed, launch angle and spin.
pub fn cause(session: &Session, baseline: usize, candidate: usize) -> Result<CauseFacts, CauseRefused> {
    check_build(session, BuildPlace::Baseline, baseline)?;
    check_build(session, BuildPlace::Candidate, candidate)?;
    if baseline == candidate {
        return Err(CauseRefused::SameBuildTwice);
    }
    let columns = Columns::of(session);
    let shots = flown(session, &columns);
    let of = |build: usize| -> Vec<Flown> { shots.iter().filter(|s| s.build == build).copied().collect() };
    let (base, cand) = (split::ranked(&of(baseline)), split::ranked(&of(candidate)));
    if base.len() < FEWEST || cand.len() < FEWEST {
        return Err(too_few(session, &columns));
    }
    if [&base, &cand].iter().all(|shots| all_carry_the_same(shots)) {
        return Err(CauseRefused::SameCarry);
    }
    let figures = figures::figures(&base, &cand);
    let two = Two::of(session, baseline, candidate);
    let part = |at: usize, factor: Factor, belongs| {
        let yards = figures.sized(at);
        let differed = factor.measure().and_then(|known| two.difference(known));
        PartFacts { factor, yards, is_sure: yards.is_clear(), belongs, differed }
    };
    let mut parts: Vec<PartFacts> =
        (0..VALUES).filter(|&i| columns.has(i)).map(|i| part(i, OF_FLIGHT[i], Belongs::Both)).collect();
    parts.push(part(REST, Factor::Rest, Belongs::Unexplained));
    let ball_speed = if columns.has_club_speed() {
        vec![part(CLUB, Factor::ClubSpeed, Belongs::Swing), part(SMASH, Factor::Smash, Belongs::Both)]
    } else {
        Vec::new()
    };
    let gap = figures.gap;
    let explains =
        |part: &&PartFacts| part.factor != Factor::Rest && part.is_sure && part.yards.value * gap > 0.0;
    let largest = |parts: &[PartFacts]| {
        let clear = parts.iter().filter(explains);
        clear.max_by(|a, b| a.yards.value.abs().total_cmp(&b.yards.value.abs())).map(|part| part.factor)
    };
    // Ball speed as a whole may leave open what club speed or smash factor alone shows.
    let main = largest(&parts).or_else(|| largest(&ball_speed));
    let hit = session.shots.iter().filter(|s| s.build == baseline || s.build == candidate).count();
    Ok(CauseFacts {
        split: Split {
            baseline,
            candidate,
            gap,
            baseline_shots: base.len(),
            candidate_shots: cand.len(),
            not_flown: hit - base.len() - cand.len(),
            main,
            draws: DRAWS,
            seed: SEED,
        },
        parts,
        ball_speed,
        swing: delivery::moved(&two),
        spin: delivery::spin_sources(&two),
        unmeasured: findings::unmeasured(&two, &columns),
        turns_too_long: turns_too_long(session, baseline, candidate),
    })
}

/// As the comparison of carry counts turns.
fn turns_too_long(session: &Session, baseline: usize, candidate: usize) -> bool {
    let (table, carry) = (ShotTable::new(session), Known::Carry.into());
    let pair = compare(&table.measured(&carry, Include::All), baseline, candidate, Aspect::Average);
    pair.turns.is_some_and(|turns| turns.are_too_long)
}

fn too_few(session: &Session, columns: &Columns) -> CauseRefused {
    if columns.can_fly() {
        return CauseRefused::TooFew { fewest: FEWEST };
    }
    let lacks = |known: &Known| session.measure_index(&(*known).into()).is_none();
    let missing = NEEDED.into_iter().chain([Known::Carry]).filter(lacks).collect();
    CauseRefused::NotMeasured { missing }
}
