//! One cell as a number: sign, side, unit, marks; and which decimal mark a column uses.
//!
//! A cell is scanned without knowing the decimal mark; the mark is decided for the whole
//! column from all its cells, and only then do the figures get a value.

use crate::lexicon::bare::bare;
use crate::lexicon::figure::{Figure, LONGEST, is_group_space, three_digits};
use crate::lexicon::side::{Side, side};
use crate::trim::{has, is_blank, trim};
use session::units::SourceUnit;

/// What a cell is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Cell<'a> {
    Missing,
    Figure(Figure<'a>),
    Text,
}

const MISSING: [&str; 19] = [
    "", "-", "--", "---", "–", "—", "−", ".", "..", "...", "n/a", "na", "n.a.", "null", "none", "nan", "nil",
    "#n/a", "?",
];

/// Whether a cell says that there is no value.
pub(crate) fn is_missing(text: &str) -> bool {
    let text = trim(text);
    text.len() <= 6
        && !text.starts_with(|c: char| c.is_ascii_digit())
        && MISSING.iter().any(|m| m.eq_ignore_ascii_case(text))
}

fn is_minus(c: char) -> bool {
    matches!(c, '-' | '−' | '–' | '‐' | '‑' | '﹣')
}

/// Scans one cell.
pub(crate) fn scan(text: &str) -> Cell<'_> {
    if let Some(figure) = bare(text) {
        return Cell::Figure(figure);
    }
    if is_missing(text) {
        return Cell::Missing;
    }
    figure(trim(text)).map_or(Cell::Text, Cell::Figure)
}

pub(crate) fn figure(text: &str) -> Option<Figure<'_>> {
    if text.len() > LONGEST {
        return None;
    }
    if let Some(inside) = text.strip_prefix('(') {
        return in_brackets(inside);
    }
    let (before, rest) = leading_side(text);
    let mut chars = rest.chars();
    let (negative, rest) = match chars.next()? {
        c if is_minus(c) => (true, trim(chars.as_str())),
        '+' => (false, trim(chars.as_str())),
        _ => (false, rest),
    };
    let end = body_end(rest);
    let (body, tail) = rest.split_at(end);
    if !body.bytes().any(|b| b.is_ascii_digit()) {
        return None;
    }
    let tail = trim(tail);
    let starred = tail.ends_with('*') || tail.starts_with('*');
    let tail = trim(tail.trim_matches('*'));
    let (unit, after) = suffix(tail)?;
    let side = match (before, after) {
        (Some(_), Some(_)) => return None,
        (one, other) => one.or(other),
    };
    Some(Figure { body, negative, side, unit, starred })
}

/// `(2.7)` as bookkeepers write a negative number, `(L) 7.0` with its side in brackets.
fn in_brackets(text: &str) -> Option<Figure<'_>> {
    let (inside, rest) = text.split_once(')')?;
    if rest.is_empty() {
        let found = figure(trim(inside)).filter(|found| !found.negative && found.side.is_none())?;
        return Some(Figure { negative: true, ..found });
    }
    let named = side(inside)?;
    let found = figure(trim(rest)).filter(|found| found.side.is_none() && !found.negative)?;
    Some(Figure { side: Some(named), ..found })
}

/// `L 12`, `R12.5`, `left 3`: the side before the number.
fn leading_side(text: &str) -> (Option<Side>, &str) {
    let end = text.find(|c: char| !c.is_alphabetic()).unwrap_or(text.len());
    let (word, rest) = text.split_at(end);
    if word.is_empty() {
        return (None, text);
    }
    match side(word) {
        Some(side) => (Some(side), trim(rest.trim_start_matches(['.', ':']))),
        None => (None, text),
    }
}

/// Where digits, marks, group spaces and an exponent end.
fn body_end(text: &str) -> usize {
    let bytes = text.as_bytes();
    let mut end = 0;
    let mut digits_in_group = 0_usize;
    let mut marked = false;
    while let Some(c) = text[end..].chars().next() {
        let next = end + c.len_utf8();
        if c.is_ascii_digit() {
            digits_in_group += 1;
        } else if matches!(c, '.' | ',') {
            marked = true;
            digits_in_group = 0;
        } else if is_group_space(c)
            && !marked
            && (1..=3).contains(&digits_in_group)
            && (c != ' ' || digits_in_group < 3 || has(&text[..end], ' '))
            && three_digits(&bytes[next..])
        {
            digits_in_group = 0;
        } else {
            break;
        }
        end = next;
    }
    if end > 0 && matches!(bytes.get(end), Some(b'e' | b'E')) {
        let sign = usize::from(matches!(bytes.get(end + 1), Some(b'+' | b'-')));
        let digits = bytes[end + 1 + sign..].iter().take_while(|b| b.is_ascii_digit()).count();
        if digits > 0 {
            return end + 1 + sign + digits;
        }
    }
    end
}

/// Unit and side behind a number, in either order; `None` when it is something else.
fn suffix(tail: &str) -> Option<(Option<SourceUnit>, Option<Side>)> {
    if tail.is_empty() {
        return Some((None, None));
    }
    // A lone letter behind a number: in golf `L`, `R` mean the side; `m`, `s`, `y` are units.
    if let Some(side) = side(tail) {
        return Some((None, Some(side)));
    }
    if let Some(unit) = SourceUnit::from_text(tail) {
        return Some((Some(unit), None));
    }
    let mut cuts =
        tail.char_indices().skip(1).filter(|(_, c)| !c.is_alphanumeric() || c.is_ascii_uppercase());
    let symbol =
        tail.chars().next().filter(|c| matches!(c, '°' | 'º' | '"' | '\'' | '″')).map(char::len_utf8);
    cuts.find_map(|(at, _)| unit_and_side(tail, at))
        .or_else(|| symbol.and_then(|at| unit_and_side(tail, at)))
        .map(|(unit, side)| (Some(unit), Some(side)))
}

fn unit_and_side(tail: &str, at: usize) -> Option<(SourceUnit, Side)> {
    let (one, other) = tail.split_at_checked(at)?;
    match (SourceUnit::from_text(one), side(other)) {
        (Some(unit), Some(side)) => Some((unit, side)),
        _ => Some((SourceUnit::from_text(other)?, side(one)?)),
    }
}

/// The cell with letters read as the digits they look like; `None` when that makes no number.
pub(crate) fn with_letters_read(text: &str) -> Option<String> {
    let text = trim(text);
    let end = text.find(is_blank).unwrap_or(text.len());
    let (number, rest) = text.split_at(end);
    if text.len() > 32 || !number.bytes().any(|b| b.is_ascii_digit()) {
        return None;
    }
    let digits: String = number
        .chars()
        .map(|c| match c {
            'O' | 'o' | 'Q' | 'D' => '0',
            'l' | 'I' | '|' | 'i' => '1',
            'S' => '5',
            'B' => '8',
            'Z' => '2',
            other => other,
        })
        .collect();
    let repaired = digits + rest;
    (repaired != text && matches!(scan(&repaired), Cell::Figure(_))).then_some(repaired)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_short_way_to_a_figure_leads_where_the_long_one_does() {
        for text in
            ["0", "-0", "12", "251.3", "-3.54", "007", "1.", ".5", "-", "1.2.3", "1-2", "12 m", "--1", "+4"]
        {
            if let Some(found) = bare(text) {
                assert_eq!(Some(found), figure(text), "{text}");
            }
        }
        assert!(["12", "-3.54", "0.0"].iter().all(|text| bare(text).is_some()));
        assert!(["1.", ".5", "-", "", "1e3", "1,5"].iter().all(|text| bare(text).is_none()));
        let long = "1".repeat(LONGEST + 1);
        assert_eq!((bare(&long), figure(&long)), (None, None));
    }
}
