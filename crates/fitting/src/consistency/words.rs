//! Do carry and launch belong together, in words: what does not fit, and what would explain it. Never a correction.

use super::{Consistency, Doubt, Fit, UnitStory};
use crate::session::Session;
use crate::words::{Subject, short_name, shots};
use serde::Serialize;

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
        (0, Fit::Fits) => format!("Carry fits ball speed, launch and spin in all {}.", shots(found.rows)),
        (0, _) => "The carries fit each other, but not their launches.".to_owned(),
        (n, _) => format!("In {} of {} carry does not fit its own launch.", n, shots(found.rows)),
    };
    found.words = ConsistencyWords {
        headline,
        session: of_session(found),
        computed: if found.is_computed {
            "The carry in this file was probably computed, not seen: it follows ball speed, launch and spin too closely for \
             a ball that was watched to the ground. It says nothing about ball and wind that the launch does not say."
                .to_owned()
        } else {
            String::new()
        },
        next: if n > 0 || found.fit != Fit::Fits {
            "Nothing was changed. Look the numbers up in the source, and correct the unit under 'Your shots' if it was \
             misread."
                .to_owned()
        } else {
            String::new()
        },
    };
}

fn of_row(session: &Session, carry: &Subject, doubt: &Doubt) -> String {
    let build = session.builds.get(doubt.build).map_or_else(String::new, |b| short_name(&b.name));
    let number = session.shots.get(doubt.shot).and_then(|shot| shot.number);
    let number = number.map_or_else(|| (doubt.shot + 1).to_string(), |number| number.to_string());
    let fits = told(&doubt.stories);
    format!(
        "Shot {number}, {build}: {} of carry, where its own speed, launch and spin give about {}.{fits}",
        carry.amount(doubt.carry),
        carry.amount(doubt.expected)
    )
}

fn of_session(found: &Consistency) -> String {
    if found.fit == Fit::Fits {
        return String::new();
    }
    let off = (100.0 * (found.middle_ratio - 1.0)).round();
    let way = if off < 0.0 { "shorter" } else { "longer" };
    format!(
        "As a whole the carries are about {:.0} % {way} than their launches fly in ordinary air.{}",
        off.abs(),
        told(&found.stories)
    )
}

/// ` It would fit if carry is in meters, or ...`.
fn told(stories: &[UnitStory]) -> String {
    let one = |story: &UnitStory| match (&story.speed, &story.carry) {
        (Some(speed), Some(carry)) => format!("ball speed is in {speed} and carry in {carry}"),
        (Some(speed), None) => format!("ball speed is in {speed}"),
        (None, Some(carry)) => format!("carry is in {carry}"),
        (None, None) => String::new(),
    };
    if stories.is_empty() {
        return String::new();
    }
    let all: Vec<String> = stories.iter().take(MOST_STORIES).map(one).collect();
    format!(" It would fit if {}.", all.join(", or if "))
}
