//! Several sessions of the same builds, days apart, in one answer.
//!
//! Days differ by more than shots explain, so the combined interval counts days and not shots: random effects with
//! Hartung and Knapp's standard error, never narrower than the plain one (see `stats::combine`). With two or three
//! days it is wide, as it should be. A day's own error is the half-width of its careful interval, widening, fallback
//! and order allowance in it, over the normal quantile: a short day and a blocked day weigh less.
//! Limits: averages, not scatter. Builds are matched by name.

use crate::analysis::{Basis, Levels, levels};
use crate::choice::{Choice, choice};
use crate::facts::OrderAllowance;
use crate::interval::Interval;
use crate::judge::{Judgment, judge};
use crate::settle::settle;
use crate::verdict::{Decision, decide};
use serde::Serialize;
use session::Session;
use session::measure::Margin;
use session::question::{Goal, Misfit, Question, Stopping, StoppingWord};
use stats::Level;
use stats::combine::{SessionEffect, combine};
use stats::distributions::normal_upper;

/// More days than this are no question for one golfer.
const MOST_SESSIONS: usize = 50;

/// An interval of two days that reaches over so many margins says 'anything' better than its ends do.
const WIDE_OPEN: f64 = 10.0;

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
    /// Share of the combined answer that it makes, 0 to 1.
    pub weight: f64,
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
    /// Standard deviation of the true difference from day to day.
    pub between: f64,
    /// Share of the scatter among days that shots do not explain, 0 to 1.
    pub share_between: f64,
    /// The same as if days did not differ: value and standard error.
    pub if_equal: f64,
    /// Standard error of that.
    pub if_equal_se: f64,
}

/// A candidate over all sessions.
#[derive(Debug, Clone, PartialEq)]
pub struct JudgedPair {
    /// Index of the candidate in the first session.
    pub candidate: usize,
    /// Every session, in the order given.
    pub days: Vec<JudgedDay>,
    /// Sessions that hold both builds.
    pub usable: usize,
    /// `None` with fewer than two usable days.
    pub combined: Option<CombinedDays>,
    /// What was decided; `None` as `combined`.
    pub decision: Option<Decision>,
    /// Whether a day of it leaves no room for the order of hitting, since nobody knows how far that moves the measure.
    pub nothing_allowed_for_order: bool,
    /// Whether two days leave so much possible that the ends of the interval say nothing.
    pub wide_open: bool,
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
    let days: Vec<Day> = sessions.iter().map(|session| day(session, first, question)).collect();
    let several = first.builds.len().saturating_sub(1).max(1);
    let pairs = (0..first.builds.len())
        .filter(|&build| build != question.baseline && question.candidate.is_none_or(|only| only == build));
    Ok(pairs.map(|candidate| pair(&days, first, question, candidate, several)).collect())
}

/// A session, judged with the baseline of the first one.
struct Day<'a> {
    session: &'a Session,
    /// Of the measure asked for; none when the session does not hold the baseline, or cannot be asked.
    judgments: Vec<(Judgment, Option<Choice>)>,
}

fn day<'a>(session: &'a Session, first: &Session, question: &Question) -> Day<'a> {
    let judgments = build_here(session, first, question.baseline).and_then(|baseline| {
        let question = Question { baseline, candidate: None, ..question.clone() };
        let judged = judge(settle(&question, session).ok()?);
        Some(judged.asked().map(|judgment| (judgment.clone(), choice(&judged, judgment))).collect())
    });
    Day { session, judgments: judgments.unwrap_or_default() }
}

impl Day<'_> {
    /// The pair in this session: what was judged, and its difference with its error.
    fn of(&self, first: &Session, candidate: usize) -> Option<(&(Judgment, Option<Choice>), SessionEffect)> {
        let candidate = build_here(self.session, first, candidate)?;
        let judged = self.judgments.iter().find(|(judgment, _)| judgment.candidate == candidate)?;
        let (judgment, _) = judged;
        let Basis::Difference(careful) = judgment.comparison()?.basis else { return None };
        let error = careful.half_width(Level::P95) / normal_upper(Level::P95.tail());
        Some((judged, SessionEffect { effect: careful.diff(), variance: error * error }))
    }
}

fn pair(
    days: &[Day<'_>],
    first: &Session,
    question: &Question,
    candidate: usize,
    several: usize,
) -> JudgedPair {
    let found: Vec<_> = days.iter().map(|day| day.of(first, candidate)).collect();
    let effects: Vec<SessionEffect> = found.iter().flatten().map(|(_, effect)| *effect).collect();
    let combined = combine(&effects).ok();
    let between = combined.map_or(0.0, |c| c.between);
    let total: f64 = effects.iter().map(|e| 1.0 / (e.variance + between)).sum();
    let days = found
        .iter()
        .map(|found| JudgedDay {
            judgment: found.map(|((judgment, _), _)| judgment.clone()),
            choice: found.and_then(|((_, choice), _)| choice.clone()),
            weight: found.map_or(0.0, |(_, effect)| 1.0 / (effect.variance + between) / total),
        })
        .collect();
    let Levels { different, same, .. } = combined_levels(&question.stopping, several);
    let combined = combined.map(|c| {
        let headline = c.headline();
        let at = |level: Level| Interval::from(headline.interval(level));
        CombinedDays {
            value: headline.diff,
            different: at(different),
            same: at(same),
            days: effects.len(),
            between: c.between.sqrt(),
            share_between: c.share_between(),
            if_equal: c.fixed.mean,
            if_equal_se: c.fixed.se,
        }
    });
    let margin = question.margin_on(&question.measure).map(Margin::value);
    let decision = combined.as_ref().map(|c| decide(&c.different, &c.same, margin));
    // One day without room for the order leaves none in the days together.
    let nothing_allowed = found
        .iter()
        .flatten()
        .any(|((judgment, _), _)| judgment.facts.order_allowance == OrderAllowance::SizeNotKnown);
    let decision = decision
        .map(|decided| if nothing_allowed { decided.with_nothing_allowed_for_order() } else { decided });
    let wide_open = combined
        .as_ref()
        .zip(margin)
        .is_some_and(|(c, margin)| c.days < 3 && c.different.high.max(-c.different.low) > WIDE_OPEN * margin);
    JudgedPair {
        candidate,
        days,
        usable: effects.len(),
        combined,
        decision,
        nothing_allowed_for_order: nothing_allowed,
        wide_open,
    }
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

/// A build of the first session, found in another one by its name.
fn build_here(session: &Session, first: &Session, build: usize) -> Option<usize> {
    let wanted = key(&first.builds.get(build)?.name);
    session.builds.iter().position(|b| key(&b.name) == wanted)
}

/// Names that differ by capitals or blanks only are one build.
fn key(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}
