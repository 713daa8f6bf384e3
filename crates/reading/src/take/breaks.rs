//! A line of text between shots that says that something changed there: `--- lesson ---`.
//!
//! Nobody knows that it did; the notice asks. Shots before and after it are told apart, so that before and after can be
//! held beside what the clubs did. Bare rules and titles say nothing of a change.

use crate::outcome::LineIs;
use crate::remarks::NoticeKind;
use crate::take::ctx::Ctx;
use crate::talk::place;
use crate::trim::shortened;
use session::{MOST_SECOND, SecondFactor};
use text::reading as say;

/// Signs that people draw a line of.
const DRAWN: &[char] = &['-', '=', '*', '_', '#', '~', '\u{2013}', '\u{2014}'];
/// Signs in a row, at least, before they are a line.
const FEWEST_DRAWN: usize = 2;

/// Takes each such line as a change, where no column tells of another.
pub(crate) fn mark(ctx: &mut Ctx<'_>, others: &[(usize, LineIs)]) {
    if ctx.draft.session.second.is_some() {
        return;
    }
    let lines = &ctx.draft.lines;
    let (Some(&first), Some(&last)) = (lines.iter().min(), lines.iter().max()) else { return };
    let within = |line: &u32| (first..last).contains(line);
    let mut found = drawn(ctx, others);
    found.retain(|(line, _)| within(line));
    found.sort_unstable();
    found.truncate(MOST_SECOND - 1);
    let Ctx { draft, talk, .. } = ctx;
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
pub(crate) fn are_among(ctx: &Ctx<'_>, others: &[(usize, LineIs)]) -> bool {
    !drawn(ctx, others).is_empty()
}

/// Every line of text that is drawn and named; a title that named no shot's club is only text.
fn drawn(ctx: &Ctx<'_>, others: &[(usize, LineIs)]) -> Vec<(u32, String)> {
    let is_text = |row: usize, is: LineIs| match is {
        LineIs::Text => true,
        LineIs::Build => !ctx.titles_used.contains(&row),
        _ => false,
    };
    let lines = others.iter().chain(&ctx.outcomes).filter(|(row, is)| is_text(*row, *is));
    let named = |&(row, _): &(usize, LineIs)| {
        let text = ctx.grid.cells(row).collect::<Vec<_>>().join(" ");
        Some((ctx.grid.line(row), label(&text)?))
    };
    lines.filter_map(named).collect()
}

/// What stands on a drawn line.
fn label(text: &str) -> Option<String> {
    let text = text.trim();
    let inner = text.trim_start_matches(DRAWN);
    let drawn = text.chars().count() - inner.chars().count();
    let inner = inner.trim_end_matches(DRAWN).trim();
    (drawn >= FEWEST_DRAWN && inner.chars().any(char::is_alphabetic)).then(|| shortened(inner))
}

#[cfg(test)]
mod tests {
    use super::label;

    #[test]
    fn a_drawn_line_with_a_name_says_that_something_changed_and_no_other_does() {
        for (text, name) in [
            ("--- lesson ---", Some("lesson")),
            ("== new ball", Some("new ball")),
            ("\u{2014}\u{2014} break \u{2014}\u{2014}", Some("break")),
            ("------", None),
            ("the weather was fine", None),
            ("- 5 yd", None),
        ] {
            assert_eq!(label(text).as_deref(), name, "{text}");
        }
    }
}
