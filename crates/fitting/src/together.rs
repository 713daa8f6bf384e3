//! Several sessions of the same builds, days apart, in one answer.
//!
//! Days differ by more than shots explain, so the combined interval counts days and not shots: random effects with
//! Hartung and Knapp's standard error, never narrower than the plain one (see `stats::combine`). With two or three
//! days it is wide, as it should be. A day's own error is the half-width of its careful interval, widening, fallback
//! and order allowance in it, over the normal quantile: a short day and a blocked day weigh less.
//! Limits: averages, not scatter. Builds are matched by name.

use crate::analysis::{Basis, Levels, Range, levels};
use crate::check::{CheckRequest, Refusal, check};
use crate::judge::{self, Judgment};
use crate::question::{Goal, Question, Stopping, StoppingWord};
use crate::report::Answer;
use crate::session::Session;
use crate::verdict::{Decision, DecisionKind, Direction, decide};
use crate::words::{Subject, phrase_for, sentences, short_name};
use serde::{Deserialize, Serialize};
use stats::Level;
use stats::combine::{SessionEffect, combine};
use stats::distributions::normal_upper;
use text::together as say;

/// More days than this are no question for one golfer.
const MOST_SESSIONS: usize = 50;

/// What [`together`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TogetherRequest {
    /// The sessions, in any order; builds and measures are those of the first.
    #[cfg_attr(feature = "typescript", ts(as = "Vec<crate::session::wire::Session>"))]
    pub sessions: Vec<Session>,
    /// What is asked, with the builds of the first session.
    pub question: Question,
}

/// One session's part.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Day {
    /// Index of the session.
    pub session: usize,
    /// Its own answer on the pair; null when it does not hold both builds.
    pub answer: Option<Answer>,
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
    pub different: Range,
    /// The interval that decides 'same'.
    pub same: Range,
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
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TogetherPair {
    /// Index of the candidate in the first session.
    pub candidate: usize,
    /// Every session.
    pub days: Vec<Day>,
    /// Null with fewer than two usable days.
    pub combined: Option<CombinedDays>,
    /// What was decided; null as `combined`.
    pub decision: Option<Decision>,
    /// The answer in one sentence.
    pub headline: String,
    /// How much days differ, and what that means.
    pub detail: String,
}

/// Combines sessions, for every candidate or for the one named.
///
/// # Errors
/// A [`Refusal`] with fewer than two or too many sessions, for scatter, and for everything that `check` refuses of
/// the first session.
pub fn together(request: &TogetherRequest) -> Result<Vec<TogetherPair>, Refusal> {
    let TogetherRequest { sessions, question } = request;
    let refuse = |kind: &str, place: &str, message: &str, remedy: &str| {
        Err(Refusal::new(kind, place, message, remedy))
    };
    let Some(first) = sessions.first().filter(|_| (2..=MOST_SESSIONS).contains(&sessions.len())) else {
        return refuse(
            "number_of_sessions",
            "sessions",
            &say::how_many_sessions(),
            &say::how_many_sessions_remedy(),
        );
    };
    if judge::goal(question, &question.measure) == Goal::Tighter {
        return refuse("scatter", "question.goal", &say::no_scatter(), &say::no_scatter_remedy());
    }
    check(&CheckRequest { session: first.clone(), question: question.clone() })?;
    let candidates: Vec<usize> = (0..first.builds.len())
        .filter(|&build| build != question.baseline && question.candidate.is_none_or(|only| only == build))
        .collect();
    let several = first.builds.len().saturating_sub(1).max(1);
    Ok(candidates.iter().map(|&candidate| pair(sessions, first, question, candidate, several)).collect())
}

fn pair(
    sessions: &[Session],
    first: &Session,
    question: &Question,
    candidate: usize,
    several: usize,
) -> TogetherPair {
    let found: Vec<Option<(Answer, SessionEffect)>> =
        sessions.iter().map(|session| own_answer(session, first, question, candidate)).collect();
    let effects: Vec<SessionEffect> = found.iter().flatten().map(|(_, effect)| *effect).collect();
    let combined = combine(&effects).ok();
    let between = combined.map_or(0.0, |c| c.between);
    let total: f64 = effects.iter().map(|e| 1.0 / (e.variance + between)).sum();
    let days = found
        .iter()
        .enumerate()
        .map(|(session, found)| Day {
            session,
            answer: found.as_ref().map(|(answer, _)| answer.clone()),
            weight: found.as_ref().map_or(0.0, |(_, effect)| 1.0 / (effect.variance + between) / total),
        })
        .collect();
    let Levels { different, same, .. } = combined_levels(&question.stopping, several);
    let combined = combined.map(|c| {
        let headline = c.headline();
        let range = |level: Level| {
            let interval = headline.interval(level);
            Range { low: interval.low, high: interval.high, level: level.coverage() }
        };
        CombinedDays {
            value: headline.diff,
            different: range(different),
            same: range(same),
            days: effects.len(),
            between: c.between.sqrt(),
            share_between: c.share_between(),
            if_equal: c.fixed.mean,
            if_equal_se: c.fixed.se,
        }
    });
    let margin = judge::margin(question, &question.measure);
    let decision = combined.as_ref().map(|c| decide(&c.different, &c.same, margin));
    let (headline, detail) =
        words(first, question, candidate, combined.as_ref(), decision.as_ref(), margin, effects.len());
    TogetherPair { candidate, days, combined, decision, headline, detail }
}

/// The number of days counts as fixed where the number of shots does; each day's own looks are in its own answer.
fn combined_levels(stopping: &Stopping, several: usize) -> Levels {
    let days = match stopping {
        Stopping::Planned { .. } => Stopping::Word(StoppingWord::Fixed),
        Stopping::Word(word) => Stopping::Word(*word),
    };
    let levels = levels(&days, 0);
    let divided = Level::missing(levels.different.alpha() / several as f64);
    Levels { different: divided.unwrap_or(levels.different), ..levels }
}

/// The pair in one session: its own answer, and its difference with its error.
fn own_answer(
    session: &Session,
    first: &Session,
    question: &Question,
    candidate: usize,
) -> Option<(Answer, SessionEffect)> {
    let name = |build: usize| first.builds.get(build).map(|b| key(&b.name));
    let here = |wanted: Option<String>| session.builds.iter().position(|b| Some(key(&b.name)) == wanted);
    let question = Question {
        baseline: here(name(question.baseline))?,
        candidate: Some(here(name(candidate))?),
        ..question.clone()
    };
    let report = check(&CheckRequest { session: session.clone(), question: question.clone() }).ok()?;
    let judgments = judge::judge(session, &question);
    let judgment: &Judgment = judgments
        .iter()
        .find(|j| Some(j.candidate) == question.candidate && j.measure == question.measure)?;
    let comparison = judgment.comparison()?;
    let Basis::Difference(careful) = comparison.basis else { return None };
    let error = careful.half_width(Level::P95) / normal_upper(Level::P95.tail());
    Some((report.answer, SessionEffect { effect: careful.diff(), variance: error * error }))
}

/// An interval of two days that reaches over so many margins says 'anything' better than its ends do.
const WIDE_OPEN: f64 = 10.0;

/// Names that differ by capitals or blanks only are one build.
fn key(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}

fn words(
    first: &Session,
    question: &Question,
    candidate: usize,
    combined: Option<&CombinedDays>,
    decision: Option<&Decision>,
    margin: Option<f64>,
    days: usize,
) -> (String, String) {
    let subject = Subject::of(&question.measure, first);
    let name = short_name(first.builds.get(candidate).map_or("", |b| b.name.as_str()));
    let (Some(combined), Some(decision)) = (combined, decision) else {
        return (say::too_few_sessions(days), say::same_names());
    };
    let phrase = phrase_for(&question.measure);
    let signed = |x: f64| match () {
        () if subject.prints_as_zero(x) => text::case::no_difference(),
        () => text::case::gap(&subject.amount(x), if x > 0.0 { &phrase.more } else { &phrase.less }),
    };
    let (low, high) = (signed(combined.different.low), signed(combined.different.high));
    let days = combined.days;
    let reach = combined.different.high.max(-combined.different.low);
    let wide_open = days < 3 && margin.is_some_and(|margin| reach > WIDE_OPEN * margin);
    let headline = match decision.kind {
        DecisionKind::Different => {
            let higher = decision.direction == Some(Direction::Higher);
            say::different(days, &name, if higher { &phrase.higher } else { &phrase.lower }, &low, &high)
        }
        DecisionKind::Same => say::same(days, &low, &high),
        DecisionKind::CannotTell | DecisionKind::CannotAnswer if wide_open => {
            say::wide_open(days, &signed(combined.value))
        }
        DecisionKind::CannotTell | DecisionKind::CannotAnswer if days < 3 => {
            say::too_few_days(days, &low, &high)
        }
        DecisionKind::CannotTell | DecisionKind::CannotAnswer => say::cannot_tell(days, &low, &high),
    };
    let differ = if subject.prints_as_zero(combined.between) {
        say::days_agree()
    } else {
        say::days_differ(&subject.amount(combined.between))
    };
    let few = match days {
        _ if wide_open => say::two_days_wide_open(&low, &high),
        ..3 => say::two_days(),
        3 => say::few_days(),
        _ => String::new(),
    };
    (headline, sentences(&[differ, few]))
}
