//! Do carry and launch belong together, in words: what does not fit, and what would explain it. Never a correction.

use crate::format::{Subject, shots};
use crate::words::sentences;
use judging::consistency::{
    CarryUnit, ConsistencyFacts, DoubtFacts, Fit, SpeedUnit, UnitStory, WholeSession,
};
use serde::Serialize;
use session::Session;
use session::known::Known;
use session::names::short_name;
use text::Voice;
use text::consistency as say;

/// Sentences about whether carry and launch belong together.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ConsistencyWords {
    /// The finding in one sentence.
    pub headline: String,
    /// Of the session as a whole.
    pub session: String,
    /// Whether the carry was seen.
    pub computed: String,
    /// What to do.
    pub next: String,
}

/// Stories told of one row.
const MOST_STORIES: usize = 3;

pub(super) fn words(facts: &ConsistencyFacts, voice: &Voice) -> ConsistencyWords {
    let ConsistencyFacts { whole, doubts } = facts;
    let n = doubts.len();
    let headline = match (n, whole.fit) {
        (0, Fit::Fits) => say::all_fit(voice, &shots(voice, whole.rows)),
        (0, _) => say::fit_each_other(voice),
        (n, _) => say::some_do_not_fit(voice, &n.to_string(), &shots(voice, whole.rows)),
    };
    let is_doubted = n > 0 || whole.fit != Fit::Fits;
    let may_be_units = !whole.stories.is_empty() || doubts.iter().any(|doubt| !doubt.stories.is_empty());
    ConsistencyWords {
        headline,
        session: of_session(whole, voice),
        computed: if whole.is_computed { say::is_computed(voice) } else { String::new() },
        next: if is_doubted { say::nothing_was_changed(voice, may_be_units) } else { String::new() },
    }
}

pub(super) fn of_row(session: &Session, doubt: &DoubtFacts, voice: &Voice) -> String {
    let carry = Subject::of(&Known::Carry.into(), session, voice);
    let build = session.builds.get(doubt.build).map_or_else(String::new, |b| short_name(&b.name));
    let number = session.shots.get(doubt.shot).and_then(|shot| shot.number);
    let number = number.map_or_else(|| (doubt.shot + 1).to_string(), |number| number.to_string());
    let row = say::row(voice, &number, &build, &carry.amount(doubt.carry), &carry.amount(doubt.expected));
    sentences(&[row, told(&doubt.stories, voice)])
}

fn of_session(whole: &WholeSession, voice: &Voice) -> String {
    if whole.fit == Fit::Fits {
        return String::new();
    }
    let off = (100.0 * (whole.middle_ratio - 1.0)).round();
    let as_a_whole = say::as_a_whole(voice, &format!("{:.0}", off.abs()), off < 0.0);
    sentences(&[as_a_whole, told(&whole.stories, voice)])
}

/// `It would fit if carry is in meters, or ...`.
fn told(stories: &[UnitStory], voice: &Voice) -> String {
    let one = |story: &UnitStory| match (story.speed.map(speed), story.carry.map(carry)) {
        (Some(speed), Some(carry)) => say::speed_and_carry_in(voice, speed, carry),
        (Some(speed), None) => say::speed_in(voice, speed),
        (None, Some(carry)) => say::carry_in(voice, carry),
        (None, None) => String::new(),
    };
    let all = stories.iter().take(MOST_STORIES).map(one);
    let all = all.reduce(|list, story| say::story_or(voice, &list, &story));
    all.map_or_else(String::new, |all| say::would_fit(voice, &all))
}

fn speed(unit: SpeedUnit) -> &'static str {
    match unit {
        SpeedUnit::MetersPerSecond => "m/s",
        SpeedUnit::KilometersPerHour => "km/h",
    }
}

fn carry(unit: CarryUnit) -> &'static str {
    match unit {
        CarryUnit::Meters => "meters",
        CarryUnit::Feet => "feet",
    }
}
