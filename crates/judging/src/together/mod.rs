//! Several sessions of the same builds, days apart, in one answer.
//!
//! Two or three days cannot show by how much a gap varies from day to day, so about how much is usual is said beforehand
//! (`usual`): random effects with a half-normal prior, whose scale gives way to what the days show where that is more (see
//! `stats::day_to_day`). A day's own error is the half-width of its careful interval at the level asked for, over the normal
//! quantile. Room for warming up and tiring does not even out over days that were hit in the same order, and is added anew.
//! Limits: averages, not scatter. Builds are matched by name. One spread for every pair of builds.

mod found;
mod usual;

use crate::analysis::{Aspect, Levels, levels};
use crate::choice::Choice;
use crate::facts::OrderAllowance;
use crate::interval::Interval;
use crate::judge::Judgment;
use crate::next_to_nothing::says_next_to_nothing;
use crate::verdict::{Decision, decide};
pub use found::OrderOverDays;
use found::{Days, Found};
use serde::Serialize;
use session::Session;
use session::measure::{Margin, MeasureId};
use session::question::{Goal, Misfit, Question, Stopping, StoppingWord};
use stats::day_to_day::{Apart, DayEffect, day_to_day, how_far_apart};
use stats::{Level, NormalMixture};
use usual::usual_from_day_to_day;

/// More days than this are no question for one golfer.
const MOST_SESSIONS: usize = 50;

/// Days that chance alone sets this far apart less often than so are told to differ.
const DIFFER_P: f64 = 0.05;

/// Median of a half-normal distribution of scale 1: where the days show more than half of all golfers are taken to, the scale
/// is the one of which they would be the middle.
const MEDIAN: f64 = 0.674_489_750_196_081_7;

/// One more day that leaves more of the width than this hardly narrows it.
const HARDLY_LEFT: f64 = 0.95;

/// Why sessions cannot be put together.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum TogetherRefused {
    /// Fewer than two, or more than a golfer's days.
    NumberOfSessions {
        /// How many.
        got: usize,
    },
    /// Scatter was asked for.
    Scatter,
    /// The question cannot be asked of the first session.
    Misfit(Misfit),
}

/// One session's part.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedDay {
    /// What was judged of the pair; `None` when the session does not hold both builds.
    pub judgment: Option<Judgment>,
    /// What that leaves to choose by, on that day.
    pub choice: Option<Choice>,
    /// The control that its one build was held against, where it counts through that.
    pub through: Option<String>,
    /// Share of the combined answer that it makes, 0 to 1.
    pub weight: f64,
}

/// How far apart days lie, seen beside what is assumed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DaysLie {
    /// Too few days to tell anything of it.
    NotSeen,
    /// As near to each other as their shots allow.
    Near,
    /// Farther apart than their shots explain, within what is assumed.
    Apart,
    /// Farther apart than is assumed: the interval is wider for it.
    FarApart,
}

/// What one more day would do to the interval.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OneMoreDay {
    /// It would narrow it.
    Narrows,
    /// It would hardly do so.
    HardlyNarrows,
}

/// Sessions combined on one pair.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CombinedDays {
    /// Candidate − baseline.
    pub value: f64,
    /// The interval that decides 'different'.
    pub different: Interval,
    /// The interval that decides 'same'.
    pub same: Interval,
    /// Days in it.
    pub days: usize,
    /// The spread of the true difference from day to day that is assumed beforehand: the scale of a half-normal distribution
    /// of its standard deviation.
    pub assumed: f64,
    /// That standard deviation as the days alone show it; 0 where their shots explain all.
    pub between: f64,
    /// How far apart the days lie.
    pub lie: DaysLie,
    /// What warming up and tiring may do.
    pub order: OrderOverDays,
    /// Part of each half-width that stands for that.
    pub order_allowance: f64,
    /// Half of the width of the interval that decides 'different'.
    pub half_width: f64,
    /// What that is to be expected to become with one more day of both clubs, as exact as these.
    pub with_one_more: f64,
    /// Whether that is worth a day.
    pub one_more: OneMoreDay,
}

/// A candidate over all sessions.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedPair {
    /// Index of the candidate in the first session; one that only later sessions hold counts on from there.
    pub candidate: usize,
    /// Its name.
    pub name: String,
    /// Every session, in the order given.
    pub days: Vec<JudgedDay>,
    /// Sessions that count: that hold both builds, or one of them and the control.
    pub usable: usize,
    /// The build that was hit every day, where days count through it.
    pub control: Option<String>,
    /// `None` with fewer than two usable days.
    pub combined: Option<CombinedDays>,
    /// What was decided; `None` as `combined`.
    pub decision: Option<Decision>,
    /// Whether it cannot be told because the interval is wider than the measure can plausibly differ by.
    pub says_next_to_nothing: bool,
    /// Whether a day of it leaves no room for the order of hitting, since nobody knows how far that moves the measure.
    pub nothing_allowed_for_order: bool,
}

/// Combines sessions, for every candidate or for the one named. Each session is judged once.
///
/// # Errors
/// A [`TogetherRefused`] with fewer than two or too many sessions, for scatter, and for a question that cannot be asked of
/// the first session.
pub fn together(sessions: &[Session], question: &Question) -> Result<Vec<JudgedPair>, TogetherRefused> {
    let got = sessions.len();
    let Some(first) = sessions.first().filter(|_| (2..=MOST_SESSIONS).contains(&got)) else {
        return Err(TogetherRefused::NumberOfSessions { got });
    };
    if question.goal_on(&question.measure) == Goal::Tighter {
        return Err(TogetherRefused::Scatter);
    }
    question.fits(first).map_err(TogetherRefused::Misfit)?;
    let days = Days::of(sessions, first, question);
    // A build that the first session does not hold is worth a word only where the days can say something of it.
    let found: Vec<Found> = (0..days.names.len())
        .filter(|&build| build != question.baseline)
        .map(|build| days.of_candidate(build))
        .filter(|found| found.candidate < first.builds.len() || found.usable() > 1)
        .collect();
    let several = found.len().max(1);
    let asked =
        found.into_iter().filter(|found| question.candidate.is_none_or(|only| only == found.candidate));
    Ok(asked.map(|found| pair(found, question, several)).collect())
}

fn pair(found: Found, question: &Question, several: usize) -> JudgedPair {
    let levels = combined_levels(&question.stopping, several);
    let combined = combined(&found, question, levels);
    let counts = combined.as_ref().map_or_else(Vec::new, |(_, counts)| counts.clone());
    let total: f64 = counts.iter().map(|count| count.abs()).sum();
    let mut counts = counts.into_iter();
    let (usable, control, candidate, name) = (found.usable(), found.control, found.candidate, found.name);
    // One day without room for the order leaves none in the days together.
    let nothing_allowed = found
        .days
        .iter()
        .filter_map(|day| day.counted.as_ref())
        .any(|day| day.judgment.facts.order_allowance == OrderAllowance::SizeNotKnown);
    let days = found.days.into_iter().map(|day| {
        let weight =
            day.counted.as_ref().and_then(|_| counts.next()).map_or(0.0, |count| count.abs() / total);
        let through = day.counted.as_ref().and_then(|day| day.through.clone());
        let own = day.counted.filter(|day| day.through.is_none());
        let (judgment, choice) = own.map(|day| (day.judgment, day.choice)).unzip();
        JudgedDay { judgment, choice: choice.flatten(), through, weight }
    });
    let days = days.collect();
    let combined = combined.map(|(combined, _)| combined);
    let margin = question.margin_on(&question.measure).map(Margin::value);
    let decision = combined.as_ref().map(|c| decide(&c.different, &c.same, margin));
    let decision = decision
        .map(|decided| if nothing_allowed { decided.with_nothing_allowed_for_order() } else { decided });
    let says_next_to_nothing = combined.as_ref().zip(decision).is_some_and(|(combined, decision)| {
        says_next_to_nothing(&decision, &combined.different, &question.measure, Aspect::Average)
    });
    JudgedPair {
        candidate,
        name,
        days,
        usable,
        control,
        combined,
        decision,
        says_next_to_nothing,
        nothing_allowed_for_order: nothing_allowed,
    }
}

/// The days together, and how much each that counts does; `None` with fewer than two.
fn combined(found: &Found, question: &Question, levels: Levels) -> Option<(CombinedDays, Vec<f64>)> {
    let days = found.usable();
    if days < 2 {
        return None;
    }
    let assumed = usual_from_day_to_day(&question.measure, found.shot_sd());
    let Levels { different, same, .. } = levels;
    let (effects, same_effects) = (found.effects(different), found.effects(same));
    let apart = how_far_apart(&effects).ok()?;
    let scale = scale_of_days(assumed, &apart);
    let together = day_to_day(&effects, scale).ok()?;
    let (order_allowance, order) = found.room_for_order(&together.counts);
    let ends = |of: &stats::NormalMixture, level: Level| {
        let stats::Interval { low, high, .. } = of.interval(level);
        stats::Interval { low: low - order_allowance, high: high + order_allowance, level }
    };
    let half = |ends: &stats::Interval| 0.5 * (ends.high - ends.low);
    let decides = ends(&together.gap, different);
    let lie = match () {
        () if is_linked_only(&effects) => DaysLie::NotSeen,
        () if apart.shown > assumed => DaysLie::FarApart,
        () if apart.chance_if_alike < DIFFER_P => DaysLie::Apart,
        () => DaysLie::Near,
    };
    let with_one_more = half(&ends(&together.with_one_more, different));
    let hardly = with_one_more > HARDLY_LEFT * half(&decides);
    let combined = CombinedDays {
        value: together.gap.mean(),
        different: decides.into(),
        same: ends(&day_to_day(&same_effects, scale).ok()?.gap, same).into(),
        days,
        assumed,
        between: apart.shown,
        lie,
        order,
        order_allowance,
        half_width: half(&decides),
        with_one_more,
        one_more: if hardly { OneMoreDay::HardlyNarrows } else { OneMoreDay::Narrows },
    };
    Some((combined, together.counts))
}

/// Whether one day of each kind stands on either side of a control, and none beside them: nothing is left to disagree.
fn is_linked_only(effects: &[DayEffect]) -> bool {
    effects.len() == 2 && effects[0].between != effects[1].between
}

/// What is taken beforehand, unless the days show more.
fn scale_of_days(assumed: f64, apart: &Apart) -> f64 {
    assumed.max(apart.shown / MEDIAN)
}

/// The gap over days hit in turn, as it answers for several sessions; `assumed` as in [`usual_spread_of_days`].
pub(crate) fn gap_over_days(effects: &[DayEffect], assumed: f64) -> Option<NormalMixture> {
    let apart = how_far_apart(effects).ok()?;
    Some(day_to_day(effects, scale_of_days(assumed, &apart)).ok()?.gap)
}

/// How much a gap is taken to vary from day to day: a half-normal distribution of its standard deviation.
pub(crate) struct UsualSpread {
    /// Its scale.
    pub(crate) scale: f64,
    /// Half of all golfers vary by less.
    pub(crate) median: f64,
}

/// How much the gap on a measure is taken to vary from day to day; `shot_sd` is a single shot's scatter.
pub(crate) fn usual_spread_of_days(measure: &MeasureId, shot_sd: f64) -> UsualSpread {
    let scale = usual_from_day_to_day(measure, shot_sd);
    UsualSpread { scale, median: MEDIAN * scale }
}

/// The number of days counts as fixed where the number of shots does; each day's own looks are in its own answer.
fn combined_levels(stopping: &Stopping, several: usize) -> Levels {
    let days = match stopping {
        Stopping::Planned { .. } => Stopping::Word(StoppingWord::Fixed),
        Stopping::Word(word) => Stopping::Word(*word),
    };
    let levels = levels(&days, 0);
    Levels { different: levels.different.shared_by(several), ..levels }
}
