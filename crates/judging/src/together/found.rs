//! What each day holds of a pair: its careful difference, directly or through a control, and which way its order pushes.

use crate::analysis::Basis;
use crate::choice::{Choice, choice};
use crate::facts::HowHit;
use crate::judge::{Judgment, judge};
use crate::settle::settle;
use serde::Serialize;
use session::Session;
use session::question::Question;
use stats::day_to_day::{Between, DayEffect};
use stats::distributions::normal_upper;
use stats::{CautiousDifference, Level};

/// What warming up and tiring may do to days together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OrderOverDays {
    /// No day needs room for it.
    NotNeeded,
    /// They push the same way each time.
    SameEachTime,
    /// They push one way on some days, and the other way or not at all on others.
    Changes,
    /// Which way they push is not known of some days.
    NotKnown,
}

/// Several sessions and every name of a build in them, those of the first one first.
pub(super) struct Days<'a> {
    pub(super) names: Vec<&'a str>,
    question: &'a Question,
    days: Vec<Day<'a>>,
}

/// A session, judged with the baseline of the first one.
struct Day<'a> {
    session: &'a Session,
    /// Of the measure asked for; none when the session does not hold the baseline, or cannot be asked.
    judgments: Vec<(Judgment, Option<Choice>)>,
}

/// A pair over all days.
pub(super) struct Found {
    pub(super) candidate: usize,
    pub(super) name: String,
    pub(super) control: Option<String>,
    pub(super) days: Vec<FoundDay>,
}

/// A day of it; nothing of one that cannot count.
pub(super) struct FoundDay {
    pub(super) counted: Option<Counted>,
}

/// One day that counts.
pub(super) struct Counted {
    pub(super) judgment: Judgment,
    pub(super) choice: Option<Choice>,
    /// Name of the control.
    pub(super) through: Option<String>,
    between: Between,
    careful: CautiousDifference,
    /// Whether the first of the two builds of the difference was hit later than the other; `None` where that is not known.
    later: Option<bool>,
}

impl<'a> Days<'a> {
    pub(super) fn of(sessions: &'a [Session], first: &'a Session, question: &'a Question) -> Self {
        // Builds of the first session keep their places, whatever they are called.
        let mut names: Vec<&str> = first.builds.iter().map(|build| build.name.as_str()).collect();
        for build in sessions.iter().flat_map(|session| &session.builds) {
            if !names.iter().any(|name| key(name) == key(&build.name)) {
                names.push(&build.name);
            }
        }
        let baseline = names.get(question.baseline).copied().unwrap_or_default();
        let days = sessions.iter().map(|session| day(session, baseline, question)).collect();
        Self { names, question, days }
    }

    /// What the days hold of a candidate. Those without both builds count where one build more, the control, was hit on days
    /// with either of the two: the one that most days hold.
    pub(super) fn of_candidate(&self, candidate: usize) -> Found {
        let name = self.names.get(candidate).copied().unwrap_or_default();
        let mut days: Vec<FoundDay> =
            self.days.iter().map(|day| FoundDay { counted: day.both(name) }).collect();
        let control = self.control(name, &days);
        let Some(control) = control else {
            return Found { candidate, name: name.to_owned(), control: None, days };
        };
        let through: Vec<Option<Counted>> = self
            .days
            .iter()
            .zip(&days)
            .map(|(day, found)| {
                let is_open = found.counted.is_none();
                is_open.then(|| day.through(control, self.baseline(), name, self.question)).flatten()
            })
            .collect();
        let some = |between| through.iter().flatten().any(|day| day.between == between);
        if !(some(Between::BaselineAndControl) && some(Between::CandidateAndControl)) {
            return Found { candidate, name: name.to_owned(), control: None, days };
        }
        for (found, through) in days.iter_mut().zip(through).filter(|(found, _)| found.counted.is_none()) {
            found.counted = through;
        }
        Found { candidate, name: name.to_owned(), control: Some(control.to_owned()), days }
    }

    fn baseline(&self) -> &'a str {
        self.names.get(self.question.baseline).copied().unwrap_or_default()
    }

    /// The build that stands on most of the days that hold only one of the two, on at least one of each kind.
    fn control(&self, candidate: &str, days: &[FoundDay]) -> Option<&'a str> {
        let open = |one: &str, other: &str, control: &str| {
            let holds = |day: &Day<'_>, name: &str| place(day.session, name).is_some();
            let without = self.days.iter().zip(days).filter(|(_, found)| found.counted.is_none());
            without.filter(|(day, _)| holds(day, control) && holds(day, one) && !holds(day, other)).count()
        };
        let pair = [key(candidate), key(self.baseline())];
        let mut most: Option<(usize, &str)> = None;
        for control in self.names.iter().filter(|name| !pair.contains(&key(name))) {
            let own = open(self.baseline(), candidate, control);
            let new = open(candidate, self.baseline(), control);
            if own > 0 && new > 0 && most.is_none_or(|(most, _)| own + new > most) {
                most = Some((own + new, control));
            }
        }
        most.map(|(_, control)| control)
    }
}

fn day<'a>(session: &'a Session, baseline: &str, question: &Question) -> Day<'a> {
    let judgments = place(session, baseline).and_then(|baseline| {
        let question = Question { baseline, candidate: None, ..question.clone() };
        let judged = judge(settle(&question, session).ok()?);
        Some(judged.asked().map(|judgment| (judgment.clone(), choice(&judged, judgment))).collect())
    });
    Day { session, judgments: judgments.unwrap_or_default() }
}

impl Day<'_> {
    /// The pair itself, on this day.
    fn both(&self, candidate: &str) -> Option<Counted> {
        let candidate = place(self.session, candidate)?;
        let (judgment, choice) =
            self.judgments.iter().find(|(judgment, _)| judgment.candidate == candidate)?;
        counted(self.session, judgment.clone(), choice.clone(), Between::Both, None)
    }

    /// The one build of the pair that the day holds, held against a control.
    fn through(
        &self,
        control: &str,
        baseline: &str,
        candidate: &str,
        question: &Question,
    ) -> Option<Counted> {
        let (build, between) = match (place(self.session, baseline), place(self.session, candidate)) {
            (Some(own), None) => (own, Between::BaselineAndControl),
            (None, Some(new)) => (new, Between::CandidateAndControl),
            _ => return None,
        };
        let baseline = place(self.session, control)?;
        let question = Question { baseline, candidate: Some(build), ..question.clone() };
        let judged = judge(settle(&question, self.session).ok()?);
        counted(self.session, judged.of(build)?.clone(), None, between, Some(control.to_owned()))
    }
}

fn counted(
    session: &Session,
    judgment: Judgment,
    choice: Option<Choice>,
    between: Between,
    through: Option<String>,
) -> Option<Counted> {
    let Basis::Difference(careful) = judgment.comparison()?.basis else { return None };
    let later = match judgment.facts.order {
        HowHit::OneAfterTheOther => hit_later(session, judgment.candidate, judgment.baseline),
        _ => None,
    };
    Some(Counted { judgment, choice, through, between, careful, later })
}

/// Whether one build was hit later than another; `None` where each has shots before some of the other's.
fn hit_later(session: &Session, one: usize, other: usize) -> Option<bool> {
    let ends = |build: usize| {
        let is_of = |shot: &session::Shot| shot.build == build;
        Some((session.shots.iter().position(is_of)?, session.shots.iter().rposition(is_of)?))
    };
    let ((first, last), (other_first, other_last)) = (ends(one)?, ends(other)?);
    match () {
        () if first > other_last => Some(true),
        () if other_first > last => Some(false),
        () => None,
    }
}

impl Found {
    /// Days that count.
    pub(super) fn usable(&self) -> usize {
        self.counted().count()
    }

    /// Scatter of single shots, over all days alike.
    pub(super) fn shot_sd(&self) -> f64 {
        let each: Vec<f64> =
            self.counted().filter_map(|day| Some(day.judgment.comparison()?.shot_sd)).collect();
        stats::describe::mean(&each)
    }

    /// Each day's difference with its errors at a level.
    pub(super) fn effects(&self, level: Level) -> Vec<DayEffect> {
        let normal = normal_upper(level.tail());
        let effect = |day: &Counted| {
            let half = day.careful.half_width(level);
            let square = |error: f64| error * error;
            DayEffect {
                effect: day.careful.diff(),
                variance: square((half - day.careful.allowance) / normal),
                weighed: square(half / normal),
                between: day.between,
            }
        };
        self.counted().map(effect).collect()
    }

    /// The room that days together need for warming up and tiring: what they push the same way adds up, by as much as each
    /// day counts, and is never less than what chance leaves of pushes that differ from day to day. Where it is not known
    /// which way a day is pushed, the worst is taken.
    pub(super) fn room_for_order(&self, counts: &[f64]) -> (f64, OrderOverDays) {
        let (mut same_way, mut unknown, mut squares) = (0.0, 0.0, 0.0);
        let (mut up, mut down, mut open, mut without) = (0, 0, 0, 0);
        for (day, count) in self.counted().zip(counts) {
            let push = count.abs() * day.careful.allowance;
            squares += push * push;
            match day.later.map(|later| later == (*count > 0.0)) {
                _ if day.careful.allowance <= 0.0 => without += 1,
                None => (unknown, open) = (unknown + push, open + 1),
                Some(true) => (same_way, up) = (same_way + push, up + 1),
                Some(false) => (same_way, down) = (same_way - push, down + 1),
            }
        }
        // Held against a control, days that are pushed the same way had not the same club first.
        let order = match (up, down, open, without) {
            (0, 0, 0, _) => OrderOverDays::NotNeeded,
            (_, _, 1.., _) => OrderOverDays::NotKnown,
            (2.., 0, 0, 0) | (0, 2.., 0, 0) if self.control.is_none() => OrderOverDays::SameEachTime,
            _ => OrderOverDays::Changes,
        };
        ((f64::abs(same_way) + unknown).max(squares.sqrt()), order)
    }

    fn counted(&self) -> impl Iterator<Item = &Counted> {
        self.days.iter().filter_map(|day| day.counted.as_ref())
    }
}

/// A build, found in a session by its name.
fn place(session: &Session, name: &str) -> Option<usize> {
    let wanted = key(name);
    session.builds.iter().position(|build| key(&build.name) == wanted)
}

/// Names that differ by capitals or blanks only are one build.
fn key(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}
