//! Do carry and launch belong together, in words: what does not fit, and what would explain it. Never a correction.

use super::{Consistency, Doubt, Fit, UnitStory};
use crate::session::Session;
use crate::words::{Subject, sentences, short_name, shots};
use serde::Serialize;
use text::consistency as say;

/// Sentences about whether carry and launch belong together.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
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

pub(super) fn fill(session: &Session, found: &mut Consistency) {
    let carry = Subject::of(&"carry".into(), session);
    for doubt in &mut found.doubts {
        doubt.words = of_row(session, &carry, doubt);
    }
    let n = found.doubts.len();
    let headline = match (n, found.fit) {
        (0, Fit::Fits) => say::all_fit(&shots(found.rows)),
        (0, _) => say::fit_each_other(),
        (n, _) => say::some_do_not_fit(&n.to_string(), &shots(found.rows)),
    };
    found.words = ConsistencyWords {
        headline,
        session: of_session(found),
        computed: if found.is_computed { say::is_computed() } else { String::new() },
        next: if n > 0 || found.fit != Fit::Fits { say::nothing_was_changed() } else { String::new() },
    };
}

fn of_row(session: &Session, carry: &Subject, doubt: &Doubt) -> String {
    let build = session.builds.get(doubt.build).map_or_else(String::new, |b| short_name(&b.name));
    let number = session.shots.get(doubt.shot).and_then(|shot| shot.number);
    let number = number.map_or_else(|| (doubt.shot + 1).to_string(), |number| number.to_string());
    let row = say::row(&number, &build, &carry.amount(doubt.carry), &carry.amount(doubt.expected));
    sentences(&[row, told(&doubt.stories)])
}

fn of_session(found: &Consistency) -> String {
    if found.fit == Fit::Fits {
        return String::new();
    }
    let off = (100.0 * (found.middle_ratio - 1.0)).round();
    sentences(&[say::as_a_whole(&format!("{:.0}", off.abs()), off < 0.0), told(&found.stories)])
}

/// `It would fit if carry is in meters, or ...`.
fn told(stories: &[UnitStory]) -> String {
    let one = |story: &UnitStory| match (&story.speed, &story.carry) {
        (Some(speed), Some(carry)) => say::speed_and_carry_in(speed, carry),
        (Some(speed), None) => say::speed_in(speed),
        (None, Some(carry)) => say::carry_in(carry),
        (None, None) => String::new(),
    };
    if stories.is_empty() {
        return String::new();
    }
    let all = stories.iter().take(MOST_STORIES).map(one);
    let all = all.reduce(|list, story| say::story_or(&list, &story)).unwrap_or_default();
    say::would_fit(&all)
}
