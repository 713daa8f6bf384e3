//! How far luck reaches: with these very shots, what a chosen few of each build could have shown.
//!
//! One pair, one measure, n shots of each build: how far two equal clubs would lie apart by chance, what the best
//! choice of shots would show, and which share of all choices would speak for which build. No test and no verdict:
//! the answer beside it counts every shot.
//! Limits: averages only, not scatter; a run is n shots of one build in a row, whatever was hit in between.

mod histogram;
mod limits;

pub use histogram::{Bin, Histogram};
pub use limits::{FEWEST_SHOWN, LuckRefused, MOST_SHOWN, ShownLimits};

use crate::analysis::{Counts, Include};
use crate::judge::{Judged, Judgment, reported_unit};
use crate::verdict::{Direction, Why};
use serde::{Deserialize, Serialize};
use session::measure::{Margin, MeasureId};
use session::question::Goal;
use session::{Session, Shot};
use stats::Sample;
use stats::subsets::{Figure, Taken, chance_gaps, deals, picks, runs, share_of_pairs};

/// Gaps drawn for the distribution of chance: a share of them is right to half a shot in a hundred.
const CHANCE_DRAWS: u32 = 10_000;
/// Choices of any shots drawn for each build; every one of a build is held against every one of the other.
const PICKS_DRAWN: u32 = 4_000;
/// Deals that can be watched one by one.
const DEALS: u32 = 20;
/// Where the draws begin: any number would do, and always the same one gives everybody the same picture.
const SEED: u32 = 1;

/// How the shots shown were chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Showing {
    /// Shots of one build one after the other, as hit.
    InARow,
    /// Any shots of one build.
    Picked,
}

/// What is compared of the shots shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Compared {
    /// Averages.
    Average,
    /// How far averages lie from zero, for who wants it straighter.
    DistanceFromZero,
}

/// Gaps that chance alone gives between two equal clubs.
///
/// Both are one club here: the shots of both builds, each less its build's average, are one pool that n and n are
/// drawn from, with replacement; see [`chance_gaps`].
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Chance {
    /// Every drawn gap counted to both sides.
    pub histogram: Histogram,
    /// Pairs of averages drawn.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
    /// Half of all gaps are smaller than this.
    pub usual: f64,
    /// Share of gaps that reach the margin, to either side; null without a margin.
    pub beyond_margin: Option<f64>,
}

/// What choosing could do for one build. Gaps are candidate − baseline, whichever build it is for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ForBuild {
    /// Index of the build.
    pub build: usize,
    /// Its best choice against the other's worst.
    pub best: f64,
    /// Its best choice against all shots of the other.
    pub against_all: f64,
    /// Share of all pairs of choices that speak for it by the margin or more; without a margin, at all.
    pub share: f64,
}

/// How the choices behind the shares came about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Pairs {
    /// Choices of the baseline.
    pub baseline: usize,
    /// Choices of the candidate.
    pub candidate: usize,
    /// Whether these are all there are, of both.
    pub all: bool,
}

/// How far luck reaches with these shots.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LuckFacts {
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// The measure.
    pub measure: MeasureId,
    /// Unit of every gap here.
    pub unit: String,
    /// The margin that shares are counted by; null for a measure without one.
    pub margin: Option<f64>,
    /// What better means.
    pub goal: Goal,
    /// What is compared.
    pub compared: Compared,
    /// Which way a gap speaks for the candidate.
    pub toward: Direction,
    /// Shots shown of each build.
    pub shown: u32,
    /// How few and how many could be.
    pub limits: ShownLimits,
    /// How they were chosen.
    pub showing: Showing,
    /// What chance alone does.
    pub chance: Chance,
    /// What choosing could do for the candidate.
    pub for_candidate: ForBuild,
    /// What choosing could do for the baseline.
    pub for_baseline: ForBuild,
    /// The choices that the shares are of.
    pub pairs: Pairs,
    /// Gaps of shots dealt blindly, as many as shown of each build, in the order dealt.
    pub deals: Vec<f64>,
    /// Gap between the averages of all shots.
    pub gap: f64,
    /// Shots behind it.
    pub n: Counts,
}

/// Shows how far luck reaches for `shown` shots of each build; left open, five, or as many as there are.
///
/// # Errors
/// [`LuckRefused`] for one build, for fewer than three shots with a build, for shots that are all alike, for a number of
/// shots that cannot be shown, and for a goal of less scatter.
pub fn luck(judged: &Judged<'_>, shown: Option<u32>, showing: Showing) -> Result<LuckFacts, LuckRefused> {
    let headline = judged.headline().ok_or(LuckRefused::OneBuild)?;
    let pair = Pair::of(judged, headline)?;
    let limits = limits::limits(&pair.base, &pair.cand);
    let shown = shown.unwrap_or_else(|| limits.usual());
    let measured = limits.hold(shown).then(|| measured(&pair, shown, showing)).flatten();
    let Measured { chance, for_candidate, for_baseline, pairs, deals } =
        measured.ok_or(LuckRefused::CannotShow { shown, limits })?;
    Ok(LuckFacts {
        baseline: pair.baseline,
        candidate: pair.candidate,
        measure: headline.measure.clone(),
        unit: reported_unit(&headline.measure, judged.settled.session),
        margin: pair.margin,
        goal: headline.goal,
        compared: pair.compared,
        toward: pair.toward,
        shown,
        limits,
        showing,
        chance,
        for_candidate,
        for_baseline,
        pairs,
        deals,
        gap: pair.figure().of(pair.cand.values()) - pair.figure().of(pair.base.values()),
        n: Counts { baseline: pair.base.n(), candidate: pair.cand.n() },
    })
}

/// The two builds with their shots, and what speaks for the candidate.
struct Pair {
    baseline: usize,
    candidate: usize,
    base: Sample,
    cand: Sample,
    compared: Compared,
    toward: Direction,
    margin: Option<f64>,
}

impl Pair {
    fn of(judged: &Judged<'_>, headline: &Judgment) -> Result<Self, LuckRefused> {
        let (compared, toward) = match headline.goal {
            Goal::Tighter => return Err(LuckRefused::Scatter),
            Goal::NearerZero => (Compared::DistanceFromZero, Direction::Lower),
            Goal::Lower => (Compared::Average, Direction::Lower),
            Goal::Higher | Goal::Different => (Compared::Average, Direction::Higher),
        };
        let table = &judged.settled.table;
        let index = judged.settled.session.measure_index(&headline.measure);
        let shots = |build| {
            let values = index.map_or_else(Vec::new, |index| table.values(build, index, Include::All));
            limits::enough(build, values)
        };
        let (baseline, candidate) = (headline.baseline, headline.candidate);
        let (base, cand) = (shots(baseline)?, shots(candidate)?);
        if [&base, &cand].iter().all(|shots| !scatters(shots.values())) {
            return Err(LuckRefused::NoScatter { build: candidate });
        }
        if headline.decision.why == Some(Why::NoScatterInRounds) {
            return Err(LuckRefused::NoScatterInRounds);
        }
        let margin = headline.margin.map(Margin::value);
        Ok(Self { baseline, candidate, base, cand, compared, toward, margin })
    }

    fn figure(&self) -> Figure {
        match self.compared {
            Compared::Average => Figure::Mean,
            Compared::DistanceFromZero => Figure::DistanceFromZero,
        }
    }
}

struct Measured {
    chance: Chance,
    for_candidate: ForBuild,
    for_baseline: ForBuild,
    pairs: Pairs,
    deals: Vec<f64>,
}

/// Whether there is more than one value.
fn scatters(values: &[f64]) -> bool {
    values.windows(2).any(|two| (two[0] - two[1]).abs() > 0.0)
}

/// Everything that depends on how many shots are shown; `None` for more than there are, or none.
fn measured(pair: &Pair, shown: u32, showing: Showing) -> Option<Measured> {
    let (n, figure) = (shown as usize, pair.figure());
    let choose = |build: usize, shots: &Sample| match showing {
        Showing::InARow => runs(shots, n, figure),
        // A stream of its own for each build, so that swapping their roles changes nothing.
        Showing::Picked => picks(shots, n, figure, PICKS_DRAWN, u64::from(SEED) + 1 + build as u64),
    };
    let (base, cand) = (choose(pair.baseline, &pair.base)?, choose(pair.candidate, &pair.cand)?);
    // Streams apart from those of the picks, and one for each build as there.
    let deal = |build: usize, shots: &Sample| {
        deals(shots, n, figure, DEALS, u64::from(SEED) + (1 << 32) + build as u64)
    };
    let (dealt_base, dealt_cand) = (deal(pair.baseline, &pair.base)?, deal(pair.candidate, &pair.cand)?);
    let gaps = chance_gaps(&pair.cand, &pair.base, n, figure, CHANCE_DRAWS, u64::from(SEED))?;
    let (all_base, all_cand) = (figure.of(pair.base.values()), figure.of(pair.cand.values()));
    let at_least = pair.margin.unwrap_or(0.0);
    let up = ForBuild {
        build: pair.candidate,
        best: cand.most - base.least,
        against_all: cand.most - all_base,
        share: share_of_pairs(&cand, &base, at_least),
    };
    let down = ForBuild {
        build: pair.candidate,
        best: cand.least - base.most,
        against_all: cand.least - all_base,
        share: share_of_pairs(&base, &cand, at_least),
    };
    let for_baseline =
        |against_all: f64, same_side: ForBuild| ForBuild { build: pair.baseline, against_all, ..same_side };
    // What speaks for the baseline is a gap to the other side.
    let (for_candidate, for_baseline) = match pair.toward {
        Direction::Higher => (up, for_baseline(all_cand - base.most, down)),
        Direction::Lower => (down, for_baseline(all_cand - base.least, up)),
    };
    let all = base.taken == Taken::Listed && cand.taken == Taken::Listed;
    Some(Measured {
        chance: Chance {
            histogram: Histogram::of(&gaps.sizes, pair.margin),
            draws: CHANCE_DRAWS,
            seed: SEED,
            usual: stats::describe::quantile_of_sorted(&gaps.sizes, 0.5).unwrap_or_default(),
            beyond_margin: pair.margin.map(|margin| gaps.share_at_least(margin)),
        },
        for_candidate,
        for_baseline,
        pairs: Pairs { baseline: base.figures.len(), candidate: cand.figures.len(), all },
        deals: dealt_cand.iter().zip(&dealt_base).map(|(cand, base)| cand - base).collect(),
    })
}

/// The session with one measure: all that this question looks at, so that judging it costs no more than it must.
#[must_use]
pub fn only(session: &Session, measure: &MeasureId) -> Session {
    let index = session.measure_index(measure);
    let shot = |shot: &Shot| Shot {
        values: index.map(|i| shot.values.get(i).copied().flatten()).into_iter().collect(),
        ..shot.clone()
    };
    Session {
        measures: index.map(|_| measure.clone()).into_iter().collect(),
        shots: session.shots.iter().map(shot).collect(),
        builds: session.builds.clone(),
        custom: session.custom.clone(),
        summaries: session.summaries.clone(),
        order: session.order,
        ..Session::default()
    }
}
