//! A figure: digits with their marks, what they say of the decimal mark of their column, and their value once it is known.

use crate::lexicon::decimal;
use crate::lexicon::side::Side;
use session::units::SourceUnit;

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

/// Nothing longer than this, in bytes, is a number with its unit; it also bounds the work for one cell.
pub(crate) const LONGEST: usize = 64;

pub(crate) fn is_group_space(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}' | '\'' | '’')
}

pub(crate) fn three_digits(bytes: &[u8]) -> bool {
    bytes.iter().take(4).take_while(|b| b.is_ascii_digit()).count() == 3
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
