//! Numbers as a language writes them.

use crate::marks;
use crate::{Language, Units, Voice};

/// Whose marks are written: the language's own, or where decimals follow a point those of English.
fn marks_of(voice: &Voice) -> Voice {
    let language = if voice.point { Language::english() } else { voice.language().clone() };
    Voice::new(language, Units::Yards)
}

/// What stands before decimals.
#[must_use]
pub fn decimal_mark(voice: &Voice) -> String {
    marks::decimal(&marks_of(voice))
}

/// Digits of a whole number with its thousands set apart: `2,850`.
#[must_use]
pub fn grouped(voice: &Voice, digits: &str) -> String {
    // As many digits as it takes before any are set apart: Spanish writes 2850 but 12.850.
    let whose = marks_of(voice);
    if digits.len() < marks::least_digits_grouped(&whose).len() {
        return digits.to_owned();
    }
    let mark = marks::thousands(&whose);
    let mut text = String::with_capacity(digits.len() + 4);
    for (i, digit) in digits.chars().enumerate() {
        if i > 0 && (digits.len() - i).is_multiple_of(3) {
            text.push_str(&mark);
        }
        text.push(digit);
    }
    text
}

/// A size given in plain digits, `2850.4`, with the language's marks: `2,850.4`.
#[must_use]
pub fn with_marks(voice: &Voice, plain: &str) -> String {
    let (whole, fraction) = plain.split_once('.').unwrap_or((plain, ""));
    let mut text = grouped(voice, whole);
    if !fraction.is_empty() {
        text.push_str(&decimal_mark(voice));
        text.push_str(fraction);
    }
    text
}
