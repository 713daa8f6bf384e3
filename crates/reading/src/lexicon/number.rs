//! One cell as a number: sign, side, unit, marks; and which decimal mark a column uses.
//!
//! A cell is scanned without knowing the decimal mark; the mark is decided for the whole
//! column from all its cells, and only then do the figures get a value.

use crate::lexicon::decimal;
use crate::lexicon::side::{Side, side};
use session::units::SourceUnit;
use crate::lexicon::bare::bare;

/// Decimal mark of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Mark {
    Point,
    Comma,
}

impl Mark {
    pub(crate) fn from_text(text: &str) -> Option<Self> {
        match text.trim() {
            "." => Some(Self::Point),
            "," => Some(Self::Comma),
            _ => None,
        }
    }

    pub(crate) fn as_char(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }

    pub(crate) fn other(self) -> Self {
        match self {
            Self::Point => Self::Comma,
            Self::Comma => Self::Point,
        }
    }
}

/// A cell that can be a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Figure<'a> {
    /// Digits with their marks and group spaces.
    pub(crate) body: &'a str,
    pub(crate) negative: bool,
    pub(crate) side: Option<Side>,
    /// Unit written behind the value.
    pub(crate) unit: Option<SourceUnit>,
    /// Marked with a star, as estimates often are.
    pub(crate) starred: bool,
}

/// What a cell is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Cell<'a> {
    Missing,
    Figure(Figure<'a>),
    Text,
}

/// What a figure's marks say about its column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum MarkSign {
    /// No mark at all.
    Plain,
    /// Certainly this decimal mark.
    Sure(Mark),
    /// One mark with three digits behind it: this decimal mark, or the other one's thousands.
    Either(Mark),
}

/// A finite value with the number of digits behind its decimal mark.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Value {
    pub(crate) value: f64,
    pub(crate) decimals: u32,
}

/// Space, invisible and direction marks that carry no meaning at a cell's ends.
pub(crate) fn is_blank(c: char) -> bool {
    c.is_whitespace()
        || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

/// Whether a text holds a mark. `contains` brings along the search for whole words: three kilobytes of the package that
/// answers first, which needs it nowhere else.
pub(crate) fn has(text: &str, mark: char) -> bool {
    text.chars().any(|c| c == mark)
}

/// Without spaces and invisible marks at both ends.
pub(crate) fn trim(text: &str) -> &str {
    // Nearly every cell begins and ends with a figure or a letter.
    match text.as_bytes() {
        [only] if only.is_ascii_graphic() => text,
        [first, .., last] if first.is_ascii_graphic() && last.is_ascii_graphic() => text,
        _ => text.trim_matches(is_blank),
    }
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

fn is_group_space(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}' | '\'' | '’')
}

/// Nothing longer than this, in bytes, is a number with its unit; it also bounds the work for one cell.
pub(crate) const LONGEST: usize = 64;

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

fn three_digits(bytes: &[u8]) -> bool {
    bytes.iter().take(4).take_while(|b| b.is_ascii_digit()).count() == 3
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

impl<'a> Figure<'a> {
    /// What this figure says about the decimal mark of its column.
    pub(crate) fn mark_sign(&self) -> MarkSign {
        let count = |mark: u8| self.body.bytes().filter(|b| *b == mark).count();
        let (points, commas) = (count(b'.'), count(b','));
        let (mark, count) = match (points, commas) {
            (0, 0) => return MarkSign::Plain,
            (_, 0) => (Mark::Point, points),
            (0, _) => (Mark::Comma, commas),
            _ => {
                let last = self.body.rfind(['.', ',']).map(|at| &self.body[at..=at]);
                return MarkSign::Sure(if last == Some(".") { Mark::Point } else { Mark::Comma });
            }
        };
        if count > 1 {
            return MarkSign::Sure(mark.other());
        }
        let (whole, fraction) = self.body.split_once(mark.as_char()).unwrap_or((self.body, ""));
        let thousands = (1..=3).contains(&whole.len())
            && !whole.starts_with('0')
            && fraction.len() == 3
            && three_digits(fraction.as_bytes());
        if thousands { MarkSign::Either(mark) } else { MarkSign::Sure(mark) }
    }

    /// Digits behind the last mark were written with spaces as thousands marks.
    pub(crate) fn value(&self, mark: Mark) -> Option<Value> {
        let (number, exponent) = match self.body.find(['e', 'E']) {
            Some(at) => self.body.split_at(at),
            None => (self.body, ""),
        };
        let (whole, fraction) = match number.rfind(mark.as_char()) {
            Some(at) => (&number[..at], &number[at + 1..]),
            None => (number, ""),
        };
        if !fraction.bytes().all(|b| b.is_ascii_digit()) || !well_grouped(whole, mark.other().as_char()) {
            return None;
        }
        let tens = if exponent.is_empty() { 0 } else { exponent[1..].parse().ok()? };
        let value = decimal::number(whole, fraction, tens)?;
        let signed = match (self.side, self.negative) {
            (Some(side), _) => side.sign() * value,
            (None, true) => -value,
            (None, false) => value,
        };
        let decimals = if exponent.is_empty() { u32::try_from(fraction.len()).unwrap_or(0) } else { 9 };
        // "-0.0" is zero: a link does not carry the sign of nothing.
        Some(Value { value: signed + 0.0, decimals })
    }

    /// Whether the figure is a whole number without sign, side or unit.
    pub(crate) fn is_count(&self) -> bool {
        !self.negative
            && self.side.is_none()
            && self.unit.is_none()
            && self.body.len() <= 7
            && self.body.bytes().all(|b| b.is_ascii_digit())
    }
}

/// Plain digits, or groups of three set apart by the thousands mark or by one kind of space.
fn well_grouped(whole: &str, thousands: char) -> bool {
    if whole.bytes().all(|b| b.is_ascii_digit()) {
        return true;
    }
    let mut groups = whole.split(|c: char| c == thousands || is_group_space(c));
    let first = groups.next().unwrap_or_default();
    (1..=3).contains(&first.len())
        && first.bytes().all(|b| b.is_ascii_digit())
        && groups.all(|g| g.len() == 3 && three_digits(g.as_bytes()))
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

/// Counts of what a column's figures say about its decimal mark.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct MarkVotes {
    pub(crate) sure_point: usize,
    pub(crate) sure_comma: usize,
    pub(crate) either_point: usize,
    pub(crate) either_comma: usize,
}

impl MarkVotes {
    pub(crate) fn add(&mut self, sign: MarkSign) {
        match sign {
            MarkSign::Plain => {}
            MarkSign::Sure(Mark::Point) => self.sure_point += 1,
            MarkSign::Sure(Mark::Comma) => self.sure_comma += 1,
            MarkSign::Either(Mark::Point) => self.either_point += 1,
            MarkSign::Either(Mark::Comma) => self.either_comma += 1,
        }
    }

    pub(crate) fn any(&self) -> bool {
        self.sure_point + self.sure_comma + self.either_point + self.either_comma > 0
    }

    /// The mark that the sure figures agree on.
    pub(crate) fn sure(&self) -> Option<Mark> {
        match self.sure_point.cmp(&self.sure_comma) {
            std::cmp::Ordering::Greater => Some(Mark::Point),
            std::cmp::Ordering::Less => Some(Mark::Comma),
            std::cmp::Ordering::Equal => None,
        }
    }
}
