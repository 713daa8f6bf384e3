//! A line of text between shots that says that something changed there: `--- lesson ---`.
//!
//! Nobody knows that it did; the notice asks. Shots before and after it are told apart, so that before and after can be
//! held beside what the clubs did. Bare rules and titles say nothing of a change.

use crate::cut::grid::Grid;
use crate::outcome::LineIs;
use crate::remarks::NoticeKind;
use crate::take::draft::Draft;
use crate::talk::{Talk, place};
use crate::trim::shortened;
use session::{MOST_SECOND, SecondFactor};
use text::reading as say;

/// Signs that people draw a line of.
const DRAWN: &[char] = &['-', '=', '*', '_', '#', '~', '\u{2013}', '\u{2014}'];
/// Signs in a row, at least, before they are a line.
const FEWEST_DRAWN: usize = 2;

/// Takes each such line as a change, where no column tells of another.
pub(crate) fn mark(draft: &mut Draft, others: &[(usize, LineIs)], grid: &Grid, talk: &mut Talk) {
    if draft.session.second.is_some() {
        return;
    }
    let (Some(&first), Some(&last)) = (draft.lines.iter().min(), draft.lines.iter().max()) else { return };
    let within = |line: &u32| (first..last).contains(line);
    let mut found: Vec<(u32, String)> = drawn(others, grid).filter(|(line, _)| within(line)).collect();
    found.sort_unstable();
    found.truncate(MOST_SECOND - 1);
    let Some((_, name)) = found.first() else { return };
    let after = found.iter().map(|(_, label)| say::after_break(talk.voice(), label));
    let values = std::iter::once(say::before_break(talk.voice(), name)).chain(after).collect();
    draft.session.second = Some(SecondFactor { name: name.clone(), values });
    for (shot, line) in draft.session.shots.iter_mut().zip(&draft.lines) {
        let passed = found.iter().filter(|(at, _)| at < line).count();
        shot.second = u32::try_from(passed).ok();
    }
    for (line, label) in &found {
        let message = say::something_changed(talk.voice(), label);
        talk.notice(NoticeKind::SomethingChanged, place(*line, ""), message);
    }
}

/// Whether there is such a line anywhere.
pub(crate) fn are_among(others: &[(usize, LineIs)], grid: &Grid) -> bool {
    drawn(others, grid).next().is_some()
}

/// Every line of text that is drawn and named.
fn drawn(others: &[(usize, LineIs)], grid: &Grid) -> impl Iterator<Item = (u32, String)> {
    others.iter().filter(|(_, is)| *is == LineIs::Text).filter_map(|(row, _)| {
        let text = grid.cells(*row).collect::<Vec<_>>().join(" ");
        Some((grid.line(*row), label(&text)?))
    })
}

/// What stands on a drawn line.
fn label(text: &str) -> Option<String> {
    let text = text.trim();
    let inner = text.trim_start_matches(DRAWN);
    let drawn = text.chars().count() - inner.chars().count();
    let inner = inner.trim_end_matches(DRAWN).trim();
    (drawn >= FEWEST_DRAWN && inner.chars().any(char::is_alphabetic)).then(|| shortened(inner))
}
