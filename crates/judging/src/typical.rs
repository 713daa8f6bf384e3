//! The typical shot: a second question beside the average, decided as strictly, and never in its place.
//!
//! An average counts every mishit and pays for it: with typical drift a true gap of 8 yd is found by averages in 40 of 100 sessions
//! of 15 shots each, by typical shots in 55. Both are true of a club; where they differ, what lies between them is how often
//! and how badly it is mishit, and that is counted beside it.
//! Limits: averages of shots alone, so nothing where only averages were given; no scatter.

use crate::analysis::{Aspect, Basis, FarBelow, Include, Method, typical_gap};
use crate::facts::{OrderAllowance, RestsOn};
use crate::interval::Interval;
use crate::judge::{Judged, Judgment, reported_unit};
use crate::next_to_nothing::says_next_to_nothing;
use crate::trust::has_value_in_doubt;
use crate::verdict::{Decision, DecisionKind, Direction, decide};
use serde::Serialize;
use session::measure::{Margin, MeasureId};
use session::question::Goal;
use stats::{CautiousDifference, Counted, Level, counts_differ};

/// Counts of mishits that differ by luck alone as seldom as this are told apart.
const TOLD_APART: f64 = 0.05;

/// Below so many shots with either club its typical shot is hardly more than its middle one. Own choice.
const FEWEST: usize = 8;

/// The gap between the typical shots. Candidate − baseline, in the unit of the measure.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TypicalEstimate {
    /// The gap.
    pub value: f64,
    /// The interval that decided.
    pub decided_by: Interval,
    /// Part of its half-width that stands for warming up and tiring.
    pub order_allowance: f64,
}

/// Shots of one club that fell far short of its typical one.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct MishitRate {
    /// How many.
    pub found: usize,
    /// Of so many.
    pub of: usize,
    /// Between which shares the club's own rate lies.
    pub share: Interval,
}

/// Which of the two was mishit more often in these shots.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum MoreMishits {
    /// The candidate.
    Candidate,
    /// The baseline.
    Baseline,
    /// Neither.
    Alike,
}

/// Mishits of both clubs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Mishits {
    /// Of the baseline.
    pub baseline: MishitRate,
    /// Of the candidate.
    pub candidate: MishitRate,
    /// Which of the two had the larger share here.
    pub more: MoreMishits,
    /// Whether that is more than luck.
    pub told_apart: bool,
    /// A shot this far below the typical one counts as one.
    pub below: f64,
}

/// The typical shot beside the average.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Beside {
    /// Both say the same.
    Agree,
    /// Only the typical shots differ.
    OnlyTypical,
    /// Only the averages differ.
    OnlyAverage,
    /// Only the averages differ for sure, and the typical shots lie about as far apart.
    SameGapLessSurely,
    /// Both differ, to opposite sides.
    Opposite,
    /// Neither differs, and one of them says that they are the same.
    OneIsTheSame,
}

/// The typical shot of the candidate that the headline speaks of.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TypicalFacts {
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// The measure.
    pub measure: MeasureId,
    /// Unit of every gap here.
    pub unit: String,
    /// What was decided of the typical shots.
    pub decision: Decision,
    /// Whether they cannot be told apart because the interval is wider than the measure can plausibly differ by.
    pub says_next_to_nothing: bool,
    /// How large and how sure.
    pub estimate: TypicalEstimate,
    /// How it stands to the answer.
    pub beside: Beside,
    /// Whether part of a gap that only the averages show may lie in the bad shots: it matters, or may, and the shorter club was
    /// mishit more often by more than luck.
    pub in_the_bad_shots: bool,
    /// Mishits, where more is wanted of the measure; null elsewhere.
    pub mishits: Option<Mishits>,
}

/// Why nothing is said of the typical shot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NoTypical {
    /// Nothing could be compared: the answer says why.
    NothingCompared,
    /// Scatter was asked for.
    Scatter,
    /// Only averages were given.
    Averages,
    /// A value cannot be, and was not confirmed.
    ValueInDoubt,
    /// Too many shots, or more than half of them on one value.
    CannotBeFitted,
}

/// Decides on the typical shots of the candidate that the headline speaks of, as strictly as on its average.
///
/// # Errors
/// [`NoTypical`], with the reason.
pub fn typical(judged: &Judged<'_>) -> Result<TypicalFacts, NoTypical> {
    let headline = judged.headline().ok_or(NoTypical::NothingCompared)?;
    let (method, plain) = comparable(judged, headline)?;
    let measured = judged.settled.table.measured(&headline.measure, Include::All);
    let found = typical_gap(&measured, headline.baseline, headline.candidate, method, &plain)
        .ok_or(NoTypical::CannotBeFitted)?;
    let too_few = headline.estimate.as_ref().is_some_and(|e| e.n.baseline.min(e.n.candidate) < FEWEST);
    let says_too_little = too_few || headline.facts.says_next_to_nothing;
    let decision = if says_too_little { Decision::undecided() } else { decided(&found.careful, headline) };
    let level =
        if decision.is_inside_the_margin() { headline.levels.same } else { headline.levels.different };
    let mishits = found.far_below.filter(|_| headline.goal == Goal::Higher).map(mishits);
    let gap = found.careful.diff();
    let bad_shots = mishits.is_some_and(|mishits| cost_the_average(&mishits, &headline.with_all));
    let beside = match beside(&decision, &headline.with_all) {
        _ if says_too_little => Beside::Agree,
        Beside::OnlyAverage if !bad_shots && is_about_as_far(gap, &decision, headline) => {
            Beside::SameGapLessSurely
        }
        beside => beside,
    };
    let decided_by: Interval = found.careful.interval(level).into();
    Ok(TypicalFacts {
        baseline: headline.baseline,
        candidate: headline.candidate,
        measure: headline.measure.clone(),
        unit: reported_unit(&headline.measure, judged.settled.session),
        beside,
        in_the_bad_shots: beside == Beside::OnlyAverage && bad_shots,
        says_next_to_nothing: says_too_little
            || says_next_to_nothing(&decision, &decided_by, &headline.measure, Aspect::Average),
        decision,
        estimate: TypicalEstimate { value: gap, decided_by, order_allowance: found.careful.allowance },
        mishits,
    })
}

fn comparable(judged: &Judged<'_>, headline: &Judgment) -> Result<(Method, CautiousDifference), NoTypical> {
    if judged.settled.asked().aspect() == Aspect::Spread {
        return Err(NoTypical::Scatter);
    }
    let comparison = headline.comparison().ok_or(NoTypical::NothingCompared)?;
    let Basis::Difference(plain) = comparison.basis else { return Err(NoTypical::Scatter) };
    if headline.facts.rests_on == RestsOn::Averages {
        return Err(NoTypical::Averages);
    }
    let builds = [headline.baseline, headline.candidate];
    if has_value_in_doubt(judged.settled.session, &headline.measure, builds) {
        return Err(NoTypical::ValueInDoubt);
    }
    Ok((comparison.method, plain))
}

fn decided(careful: &CautiousDifference, headline: &Judgment) -> Decision {
    let interval = |level: Level| Interval::from(careful.interval(level));
    let margin = headline.margin.and_then(|margin| match margin {
        Margin::Difference(size) => Some(size),
        Margin::Ratio(_) => None,
    });
    let decided = decide(&interval(headline.levels.different), &interval(headline.levels.same), margin);
    match headline.facts.order_allowance {
        OrderAllowance::SizeNotKnown => decided.with_nothing_allowed_for_order(),
        OrderAllowance::NotNeeded | OrderAllowance::Included | OrderAllowance::StartOfLaps => decided,
    }
}

fn cost_the_average(mishits: &Mishits, average: &Decision) -> bool {
    let shorter = match average.direction {
        Some(Direction::Higher) => MoreMishits::Baseline,
        Some(Direction::Lower) => MoreMishits::Candidate,
        None => return false,
    };
    mishits.told_apart && mishits.more == shorter && !average.is_inside_the_margin()
}

/// Whether typical shots that cannot be told apart lie as far apart as the interval of the averages says that those do.
fn is_about_as_far(gap: f64, typical: &Decision, headline: &Judgment) -> bool {
    let average = headline.comparison().map(|comparison| comparison.interval(headline.levels.different));
    let lies_in_it = average.is_some_and(|interval| interval.low <= gap && gap <= interval.high);
    typical.kind == DecisionKind::CannotTell && lies_in_it
}

fn beside(typical: &Decision, average: &Decision) -> Beside {
    let differs = |decision: &Decision| decision.kind == DecisionKind::Different;
    match (differs(typical), differs(average)) {
        (true, true) if typical.direction != average.direction => Beside::Opposite,
        (true, false) => Beside::OnlyTypical,
        (false, true) => Beside::OnlyAverage,
        (false, false) if typical.kind != average.kind => Beside::OneIsTheSame,
        _ => Beside::Agree,
    }
}

fn mishits(FarBelow { counted: [baseline, candidate], below }: FarBelow) -> Mishits {
    let rate = |counted: Counted| {
        let share = counted.interval(Level::P95).into();
        MishitRate { found: counted.found, of: counted.of, share }
    };
    // Shares of whole numbers, held against each other without a rounding.
    let (one, other) = (candidate.found * baseline.of, baseline.found * candidate.of);
    let more = match one.cmp(&other) {
        std::cmp::Ordering::Greater => MoreMishits::Candidate,
        std::cmp::Ordering::Less => MoreMishits::Baseline,
        std::cmp::Ordering::Equal => MoreMishits::Alike,
    };
    let told_apart = counts_differ(candidate, baseline) < TOLD_APART;
    Mishits { baseline: rate(baseline), candidate: rate(candidate), more, told_apart, below }
}

impl Mishits {
    /// How many more of them the club with the larger share had.
    #[must_use]
    pub fn more_by(&self) -> usize {
        let (candidate, baseline) = (self.candidate.found, self.baseline.found);
        match self.more {
            MoreMishits::Candidate => candidate.saturating_sub(baseline),
            MoreMishits::Baseline => baseline.saturating_sub(candidate),
            MoreMishits::Alike => 0,
        }
    }
}

impl TypicalFacts {
    /// Whether mishits are why the average does not say what the typical shot says: that leads toward more, and the same club
    /// was mishit more often here. `None` where that is not so, and where both say the same.
    #[must_use]
    pub fn longer_with_more_mishits(&self) -> Option<MoreMishits> {
        let more = self.mishits?.more;
        if !matches!(self.beside, Beside::OnlyTypical | Beside::Opposite) {
            return None;
        }
        match (self.decision.direction?, more) {
            (Direction::Higher, MoreMishits::Candidate) | (Direction::Lower, MoreMishits::Baseline) => {
                Some(more)
            }
            _ => None,
        }
    }
}
