//! What to bet, where a verdict is out of reach or says too much: the gap pulled toward what clubs usually differ by, and
//! chances as a range over what is usual. It decides nothing, and no decision reads it.
//!
//! A gap that was found to differ is on average too large: it was found because luck helped. With true gaps that scatter by 4
//! yd, a session of 15 each that says 'different' shows 10.6 yd where 5.4 are true. Before the shots a true gap is taken as
//! normal around none (`usual`); the shots' error is the one that the verdict rests on, widened as there.
//! Limits: averages of single shots only, no scatter and no distance from zero, of which a larger gap is not the better one.

mod usual;

use crate::analysis::{Basis, Comparison, Counts, Include, Method};
use crate::facts::{OrderAllowance, RestsOn};
use crate::interval::Interval;
use crate::judge::{Judged, Judgment, reported_unit};
use crate::trust::{drift_pushes, has_value_in_doubt};
use crate::verdict::{Direction, Why};
use serde::Serialize;
use session::measure::{Margin, MeasureId};
use session::question::{Differs, Goal};
use stats::choices::WIDENING;
use stats::{
    CautiousDifference, Level, NormalMixture, Sample, TDifference, chance_above, pulled, pulled_among,
};
use usual::Usual;
pub use usual::UsualFor;
pub(crate) use usual::matters_usually;

/// Part of an order allowance. The allowance is what a strongly drifting session needs; which way it drifted nobody knows, and
/// it is no luck that evens out: warming up helps the club hit later, tiring the other. So what is believed is asked for a
/// drift of half of it to either side too, and what drift does beyond that is a normal error of the other half.
const DRIFT_OF_ALLOWANCE: f64 = 0.5;

/// The least and the most that something may be.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Range {
    /// The least.
    pub low: f64,
    /// The most.
    pub high: f64,
}

/// A chance as it is told: in tens, so many of ten to so many.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Tens {
    /// The least, 0 to 10.
    pub low: u8,
    /// The most, 0 to 10.
    pub high: u8,
}

/// A chance over what is usual.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ChanceRange {
    /// Between 0 and 1.
    pub chance: Range,
    /// As it is told.
    pub of_ten: Tens,
}

impl ChanceRange {
    /// Between two chances.
    pub(crate) fn of(low: f64, high: f64) -> Self {
        Self { chance: Range { low, high }, of_ten: Tens { low: of_ten(low), high: of_ten(high) } }
    }
}

/// Of pairs of shots, one with each club, in how many the candidate goes farther that way.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PairsOfShots {
    /// The share of all pairs of this session.
    pub share: f64,
    /// In how many pairs of all shots these two clubs would be hit with.
    pub interval: Interval,
    /// The share in tens.
    pub of_ten: u8,
    /// The interval in tens.
    pub range_of_ten: Tens,
}

/// What to believe of the gap.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PulledGap {
    /// As the shots show it.
    pub shown: f64,
    /// The one to expect, with all that may be usual counted alike.
    pub value: f64,
    /// Where it lies, whatever of that is usual: the outermost ends.
    pub interval: Interval,
}

/// A bet on one candidate. Gaps are candidate − baseline, in the unit of the measure.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BetFacts {
    /// Index of the baseline.
    pub baseline: usize,
    /// Index of the candidate.
    pub candidate: usize,
    /// The measure.
    pub measure: MeasureId,
    /// Unit of every gap here.
    pub unit: String,
    /// Which way the chances are counted: the one that the shots point.
    pub toward: Direction,
    /// The smallest difference that matters; null without one.
    pub margin: Option<f64>,
    /// What differs, as far as it was said; null where nobody did.
    pub differs: Option<Differs>,
    /// How far such builds are taken to differ, as standard deviations of true gaps: over this the chances range.
    pub usual: Range,
    /// The same for each kind of change.
    pub usual_for: UsualFor,
    /// The gap that is bet on.
    pub gap: PulledGap,
    /// Chance of any difference that way.
    pub at_all: ChanceRange,
    /// Chance of one of the margin or more; null without a margin above zero.
    pub by_margin: Option<ChanceRange>,
    /// Of ten pairs of shots.
    pub pairs: PairsOfShots,
    /// What the chances of a gap rest on, where that is less than the shots hit; null elsewhere.
    pub rests_on: Option<BetRestsOn>,
    /// Whether the error holds what warming up and tiring may do.
    pub order_in_it: bool,
    /// Whether a drift that these shots show pushes the gap the way they point.
    pub drift_points_there: bool,
}

/// What is bet on, where it is less than all the shots hit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BetRestsOn {
    /// The laps that hold both clubs, where they were compared lap by lap.
    pub laps: Option<u32>,
    /// The shots with this measure that count.
    pub n: Counts,
}

/// Why nothing is bet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NoBet {
    /// Nothing could be compared: the answer says why.
    NothingCompared,
    /// Scatter was asked for.
    Scatter,
    /// An average nearer to zero was asked for.
    NearerZero,
    /// Only averages were given.
    Averages,
    /// The clubs were not compared in turn, and how far warming up and tiring move the measure is not known.
    OrderUnknown,
    /// The answer hangs on the shots left out.
    DependsOnLeftOut,
    /// A value cannot be, and was not confirmed.
    ValueInDoubt,
    /// The interval is wider than the measure can plausibly differ by.
    NextToNothing,
}

/// Bets on the candidate that the headline speaks of.
///
/// # Errors
/// [`NoBet`], with the reason.
pub fn bet(judged: &Judged<'_>) -> Result<BetFacts, NoBet> {
    let headline = judged.headline().ok_or(NoBet::NothingCompared)?;
    let careful = may_be_bet_on(judged, headline)?;
    let pairs = pairs(judged, headline, careful.allowance).ok_or(NoBet::NothingCompared)?;
    let shot_sd = headline.comparison().map_or(f64::NAN, |comparison| comparison.shot_sd);
    let differs = judged.settled.question.differs;
    let usual_for = UsualFor::of(&headline.measure, shot_sd);
    let usual = Usual::of(usual_for, differs);
    let error = headline.comparison().map_or_else(|| careful.wider(Level::P95), |c| error_of(&careful, c));
    let believed = Believed::of(&careful, error, &others(judged, headline), usual);
    let believed = believed.ok_or(NoBet::NothingCompared)?;
    let toward = if careful.diff() < 0.0 { Direction::Lower } else { Direction::Higher };
    let chance = |size: f64| believed.chance(toward, size);
    let margin = headline.margin.map(Margin::value);
    Ok(BetFacts {
        baseline: headline.baseline,
        candidate: headline.candidate,
        measure: headline.measure.clone(),
        unit: reported_unit(&headline.measure, judged.settled.session),
        toward,
        margin,
        differs,
        usual: Range { low: usual.least, high: usual.most },
        usual_for,
        gap: believed.gap(careful.diff()),
        at_all: chance(0.0),
        by_margin: margin.filter(|margin| *margin > 0.0).map(chance),
        pairs: if toward == Direction::Higher { pairs } else { pairs.turned() },
        rests_on: rests_on(judged, headline),
        order_in_it: headline.facts.order_is_mixed_up(),
        drift_points_there: drift_pushes(judged, headline) == Some(toward),
    })
}

/// What counts of the shots hit with the two, where that is not all of them.
fn rests_on(judged: &Judged<'_>, headline: &Judgment) -> Option<BetRestsOn> {
    let hit = |build: usize| judged.settled.session.shots.iter().filter(|shot| shot.build == build).count();
    let Judgment { baseline, candidate, pair, .. } = headline;
    let compared = pair.compared.map(|compared| (Some(compared.rounds), compared.n));
    let (laps, n) = compared.or_else(|| {
        let n = Counts { baseline: pair.numbers.baseline?.n, candidate: pair.numbers.candidate?.n };
        Some((None, n))
    })?;
    let is_less = n.baseline < hit(*baseline) || n.candidate < hit(*candidate);
    is_less.then_some(BetRestsOn { laps, n })
}

/// Whether something is bet on the candidate that the headline speaks of.
#[must_use]
pub fn is_made(judged: &Judged<'_>) -> bool {
    judged.headline().is_some_and(|headline| may_be_bet_on(judged, headline).is_ok())
}

/// The gap to expect, as a bet names it as most likely, also where nothing else is bet.
pub(crate) fn expected_gap(judged: &Judged<'_>, headline: &Judgment) -> Option<f64> {
    let comparison = headline.comparison()?;
    let Basis::Difference(careful) = comparison.basis else { return None };
    let usual_for = UsualFor::of(&headline.measure, comparison.shot_sd);
    let usual = Usual::of(usual_for, judged.settled.question.differs);
    let drift = DRIFT_OF_ALLOWANCE * careful.allowance;
    let error = error_of(&careful, comparison);
    Some(pulled_among(&error, &others(judged, headline), &usual.each(), drift).ok()?.mean())
}

/// The error that a bet rests on: never less than single shots of this scatter have. That of two or three laps is often
/// small by chance, and a bet would take it for knowledge.
fn error_of(careful: &CautiousDifference, comparison: &Comparison) -> TDifference {
    let mut error = careful.wider(Level::P95);
    if comparison.method != Method::Rounds {
        return error;
    }
    let Counts { baseline, candidate } = comparison.n;
    let of_shots = comparison.shot_sd * (1.0 / baseline as f64 + 1.0 / candidate as f64).sqrt();
    error.se = error.se.max(WIDENING * of_shots);
    error
}

/// The gaps of the other candidates on the same measure: how far clubs lie apart here says which gaps are usual.
fn others(judged: &Judged<'_>, headline: &Judgment) -> Vec<f64> {
    let others = judged.asked().filter(|other| other.candidate != headline.candidate);
    others.filter_map(|other| Some(other.comparison()?.value())).collect()
}

/// What is believed of a difference for which nothing but its error speaks: the gap, and the chances of any in its own
/// direction and of one of a margin or more.
pub(crate) fn believed_of(
    careful: &CautiousDifference,
    measure: &MeasureId,
    shot_sd: f64,
    margin: Option<f64>,
    differs: Option<Differs>,
) -> Option<(PulledGap, ChanceRange, Option<ChanceRange>)> {
    let error = careful.wider(Level::P95);
    let believed = Believed::of(careful, error, &[], Usual::of(UsualFor::of(measure, shot_sd), differs))?;
    let toward = if careful.diff() < 0.0 { Direction::Lower } else { Direction::Higher };
    let by_margin = margin.filter(|margin| *margin > 0.0).map(|margin| believed.chance(toward, margin));
    Some((believed.gap(careful.diff()), believed.chance(toward, 0.0), by_margin))
}

/// The difference that a bet may rest on.
fn may_be_bet_on(judged: &Judged<'_>, headline: &Judgment) -> Result<CautiousDifference, NoBet> {
    match headline.goal {
        Goal::Tighter => return Err(NoBet::Scatter),
        Goal::NearerZero => return Err(NoBet::NearerZero),
        Goal::Higher | Goal::Lower | Goal::Different => {}
    }
    let comparison = headline.comparison().ok_or(NoBet::NothingCompared)?;
    let Basis::Difference(careful) = comparison.basis else { return Err(NoBet::Scatter) };
    let Judgment { baseline, candidate, measure, .. } = headline;
    if has_value_in_doubt(judged.settled.session, measure, [*baseline, *candidate]) {
        return Err(NoBet::ValueInDoubt);
    }
    match headline.facts.order_allowance {
        _ if headline.decision.why == Some(Why::DependsOnLeftOut) => Err(NoBet::DependsOnLeftOut),
        _ if headline.facts.rests_on == RestsOn::Averages => Err(NoBet::Averages),
        _ if headline.facts.says_next_to_nothing => Err(NoBet::NextToNothing),
        OrderAllowance::SizeNotKnown => Err(NoBet::OrderUnknown),
        OrderAllowance::NotNeeded | OrderAllowance::Included | OrderAllowance::StartOfLaps => Ok(careful),
    }
}

/// What is believed of the true gap: with all that may be usual counted alike and no drift, and for each of it alone.
struct Believed {
    whole: NormalMixture,
    all: Vec<NormalMixture>,
}

impl Believed {
    fn of(careful: &CautiousDifference, error: TDifference, others: &[f64], usual: Usual) -> Option<Self> {
        let drift = DRIFT_OF_ALLOWANCE * careful.allowance;
        let drifts = if drift > 0.0 { vec![-drift, 0.0, drift] } else { vec![0.0] };
        let mut all = Vec::with_capacity(3 * drifts.len());
        for by in drifts {
            let mut moved = error;
            moved.diff += by;
            for usual in usual.each() {
                all.push(pulled(&moved, usual, drift).ok()?);
            }
        }
        Some(Self { whole: pulled_among(&error, others, &usual.each(), drift).ok()?, all })
    }

    /// The chance of a gap of a size or more, one way.
    fn chance(&self, toward: Direction, size: f64) -> ChanceRange {
        self.range(|gap| match toward {
            Direction::Higher => gap.chance_above(size),
            Direction::Lower => gap.chance_below(-size),
        })
    }

    fn range(&self, of: impl Fn(&NormalMixture) -> f64) -> ChanceRange {
        let chances: Vec<f64> = self.all.iter().map(of).collect();
        let low = chances.iter().fold(1.0_f64, |least, chance| least.min(*chance));
        let high = chances.iter().fold(0.0_f64, |most, chance| most.max(*chance));
        ChanceRange::of(low, high)
    }

    /// The gap to expect, and the outermost ends.
    fn gap(&self, shown: f64) -> PulledGap {
        let ends: Vec<stats::Interval> = self.all.iter().map(|gap| gap.interval(Level::P95)).collect();
        let low = ends.iter().fold(f64::INFINITY, |least, end| least.min(end.low));
        let high = ends.iter().fold(f64::NEG_INFINITY, |most, end| most.max(end.high));
        let interval = stats::Interval { low, high, level: Level::P95 }.into();
        PulledGap { shown, value: self.whole.mean(), interval }
    }
}

/// Pairs in which the candidate's value is the higher one: the error widened as every other, and a drift of the whole
/// allowance put to either side of it.
fn pairs(judged: &Judged<'_>, headline: &Judgment, allowance: f64) -> Option<PairsOfShots> {
    let index = judged.settled.session.measure_index(&headline.measure)?;
    let values = |build| judged.settled.table.values(build, index, Include::All);
    let (base, cand) = (Sample::new(values(headline.baseline)).ok()?, values(headline.candidate));
    let moved = |by: f64| {
        let cand = Sample::new(cand.iter().map(|value| value + by).collect()).ok()?;
        Some(chance_above(&cand, &base).ok()?.widened(WIDENING))
    };
    let (low, high) =
        (moved(-allowance)?.interval(Level::P95).low, moved(allowance)?.interval(Level::P95).high);
    Some(PairsOfShots::of(moved(0.0)?.chance, low, high))
}

impl PairsOfShots {
    fn of(share: f64, low: f64, high: f64) -> Self {
        let interval = stats::Interval { low, high, level: Level::P95 }.into();
        let range_of_ten = Tens { low: of_ten(low), high: of_ten(high) };
        Self { share, interval, of_ten: of_ten(share), range_of_ten }
    }

    fn turned(self) -> Self {
        Self::of(1.0 - self.share, 1.0 - self.interval.high, 1.0 - self.interval.low)
    }
}

/// The nearest number of ten.
pub(crate) fn of_ten(chance: f64) -> u8 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number from 0 to 10"
    )]
    let tens = (10.0 * chance.clamp(0.0, 1.0)).round() as u8;
    tens
}
