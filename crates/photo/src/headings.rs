//! What stands above the columns: headings of several lines, and neighbors that were found as one box.

use crate::lines::Frame;
use crate::places::{Place, Span, lines, said};
use crate::token::{Token, Word};

/// A heading is no farther above the next line than this, in heights of a text.
const FARTHEST: f32 = 2.0;
/// A line of headings stands above this share of the columns at least.
const ENOUGH: f32 = 0.4;
const MOST_LINES: usize = 3;
const UNITS: [&str; 12] = ["yd", "yds", "yards", "m", "mph", "m/s", "rpm", "deg", "°", "ft", "%", "km/h"];

/// The heading of each column, and the lines above them.
pub(crate) fn headings(
    tokens: &[Token],
    above: &[usize],
    frame: &Frame,
    columns: &[Span],
    height: f32,
) -> (Vec<String>, Vec<String>) {
    let places: Vec<Place> = tokens.iter().map(|it| Place::of(&it.quad, frame)).collect();
    let mut lines = lines(above, &places, height);
    let mut found: Vec<Vec<(usize, String)>> = Vec::new();
    let mut below: Option<f32> = None;
    while let Some(line) = lines.last() {
        let y = places[line[0]].y;
        let parts: Vec<(usize, String)> =
            line.iter().flat_map(|at| parts(&tokens[*at], frame, columns)).collect();
        let covers = (0..columns.len()).filter(|column| parts.iter().any(|(of, _)| of == column)).count();
        let is_units = parts.iter().any(|(_, text)| is_unit(text));
        let is_far = below.is_some_and(|below| below - y > FARTHEST * height);
        if is_far
            || found.len() == MOST_LINES
            || (!is_units && (covers as f32) < ENOUGH * columns.len() as f32)
        {
            break;
        }
        below = Some(y);
        found.insert(0, parts);
        lines.pop();
    }
    let heading = |column: usize| {
        let of = |line: &Vec<(usize, String)>| {
            let words = line.iter().filter(|(of, _)| *of == column).map(|(_, text)| text.as_str());
            words.collect::<Vec<_>>().join(" ")
        };
        let mut text = String::new();
        for (at, part) in found.iter().map(of).enumerate().filter(|(_, part)| !part.is_empty()) {
            let part = if at > 0 && is_unit(&part) { format!("({part})") } else { part };
            if !text.is_empty() {
                text.push(' ');
            }
            text.push_str(&part);
        }
        with_marked_unit(text)
    };
    let above = lines.iter().map(|line| said(tokens, line)).collect();
    ((0..columns.len()).map(heading).collect(), above)
}

/// A unit that was found in one box with its heading stands between brackets too.
fn with_marked_unit(text: String) -> String {
    match text.rsplit_once(' ') {
        // The sign of degrees, as a letter.
        Some((before, "O" | "o" | "0" | "()" | "(O)" | "(o)" | "(0)")) => format!("{before} (°)"),
        Some((before, unit)) if is_unit(unit) && !text.contains('(') => format!("{before} ({unit})"),
        _ => text,
    }
}

fn is_unit(text: &str) -> bool {
    UNITS.iter().any(|unit| text.trim_matches(['(', ')', '[', ']']).eq_ignore_ascii_case(unit))
}

/// A box above the columns: its words, each with the column they belong to.
fn parts(token: &Token, frame: &Frame, columns: &[Span]) -> Vec<(usize, String)> {
    let words = token.words(false);
    let (from, to) = (frame.x(token.quad.left()), frame.x(token.quad.right()));
    let width = to - from;
    let middle = |span: &Span| (span.from + span.to) / 2.0;
    let over: Vec<usize> =
        (0..columns.len()).filter(|at| from < middle(&columns[*at]) && middle(&columns[*at]) < to).collect();
    let nearest = || {
        let all = 0..columns.len();
        all.min_by(|one, other| away(from, to, &columns[*one]).total_cmp(&away(from, to, &columns[*other])))
    };
    match over.as_slice() {
        [] => nearest().map(|column| (column, token.text().to_owned())).into_iter().collect(),
        [one] => vec![(*one, token.text().to_owned())],
        _ if words.len() < over.len() => vec![(over[0], token.text().to_owned())],
        _ => {
            // What stands in brackets ends a heading.
            const NEVER: f32 = 1e6;
            let cost = |first: usize, last: usize, column: usize| {
                let goes_on = words[first..last].iter().any(|it| it.text.ends_with(')'));
                let away =
                    away(from + width * words[first].from, from + width * words[last].to, &columns[column]);
                if goes_on { away + NEVER } else { away }
            };
            let ends = cut(words.len(), &over, &cost);
            let starts = std::iter::once(0).chain(ends.iter().copied());
            starts
                .zip(&ends)
                .zip(&over)
                .map(|((start, end), column)| (*column, text(&words[start..*end])))
                .collect()
        }
    }
}

fn text(words: &[Word]) -> String {
    words.iter().map(|it| it.text.as_str()).collect::<Vec<_>>().join(" ")
}

/// A heading is set at the left, at the right or in the middle of its column.
fn away(from: f32, to: f32, span: &Span) -> f32 {
    let middle = ((from + to) / 2.0 - (span.from + span.to) / 2.0).abs();
    middle.min((from - span.from).abs()).min((to - span.to).abs())
}

/// Where words end for each of some columns, so that all stand as near as can be.
fn cut(words: usize, columns: &[usize], cost: &dyn Fn(usize, usize, usize) -> f32) -> Vec<usize> {
    // The best way for the first columns to end at each word, and where the one before ended.
    let mut best = vec![vec![(f32::MAX, 0); words + 1]; columns.len() + 1];
    best[0][0] = (0.0, 0);
    for (at, column) in columns.iter().enumerate() {
        for end in 1..=words {
            for start in 0..end {
                let before = best[at][start].0;
                if before < f32::MAX {
                    let total = before + cost(start, end - 1, *column);
                    if total < best[at + 1][end].0 {
                        best[at + 1][end] = (total, start);
                    }
                }
            }
        }
    }
    let mut ends = vec![words];
    for at in (2..=columns.len()).rev() {
        let end = ends[0];
        ends.insert(0, best[at][end].1);
    }
    ends
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_unit_behind_a_heading_is_marked() {
        let marked = |text: &str| with_marked_unit(text.to_owned());
        assert_eq!(marked("CARRY DIST yd"), "CARRY DIST (yd)");
        assert_eq!(marked("Carry (yd)"), "Carry (yd)");
        assert_eq!(marked("Speed ratio"), "Speed ratio");
        assert_eq!(marked("LAUNCH ANGLE O"), "LAUNCH ANGLE (°)");
        assert_eq!(marked("m"), "m");
    }

    #[test]
    fn words_go_to_the_columns_they_stand_over() {
        let places = [(0.0, 4.0), (5.0, 10.0), (20.0, 26.0), (40.0, 44.0), (45.0, 48.0)];
        let columns: Vec<Span> = [(2.0, 9.0), (20.0, 25.0), (41.0, 47.0)]
            .map(|(from, to)| Span { from, to, is_number: true })
            .to_vec();
        let cost = |first: usize, last: usize, column: usize| {
            away(places[first].0, places[last].1, &columns[column])
        };
        assert_eq!(cut(5, &[0, 1, 2], &cost), [2, 3, 5]);
    }
}
