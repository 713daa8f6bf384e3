//! A printed number read back: its value and the last digit that it shows.

use text::Voice;

/// A number as a sentence prints it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Printed {
    pub(crate) value: f64,
    /// Digits after the decimal mark.
    pub(crate) decimals: i32,
}

impl Printed {
    pub(crate) const fn whole(value: f64) -> Self {
        Self { value, decimals: 0 }
    }

    /// One unit of the last digit shown.
    pub(crate) fn step(self) -> f64 {
        10_f64.powi(-self.decimals)
    }

    /// Away from zero, or toward the other side of it.
    pub(crate) fn toward(self, up: bool) -> Self {
        Self { value: if up { self.value } else { -self.value }, ..self }
    }
}

/// How a voice writes numbers.
#[derive(Debug, Clone)]
pub(crate) struct Marks {
    decimal: String,
    thousands: String,
}

impl Marks {
    pub(crate) fn of(voice: &Voice) -> Self {
        Self { decimal: text::marks::decimal(voice), thousands: text::marks::thousands(voice) }
    }

    /// The number that a text begins with; what follows it, a unit or a side, is passed over.
    pub(crate) fn read(&self, text: &str) -> Option<Printed> {
        let (negative, digits) = match text.strip_prefix('\u{2212}') {
            Some(rest) => (true, rest),
            None => (false, text.strip_prefix('+').unwrap_or(text)),
        };
        if !digits.starts_with(|c: char| c.is_ascii_digit()) {
            return None;
        }
        let mut plain = String::new();
        let mut decimals = None;
        let mut rest = digits;
        while let Some(c) = rest.chars().next() {
            if c.is_ascii_digit() {
                plain.push(c);
                decimals = decimals.map(|count: i32| count + 1);
                rest = &rest[1..];
            } else if let Some(after) = self.after(rest, &self.decimal).filter(|_| decimals.is_none()) {
                plain.push('.');
                decimals = Some(0);
                rest = after;
            } else if let Some(after) = self.after(rest, &self.thousands).filter(|_| decimals.is_none()) {
                rest = after;
            } else {
                break;
            }
        }
        let value: f64 = plain.parse().ok()?;
        Some(Printed { value: if negative { -value } else { value }, decimals: decimals.unwrap_or(0) })
    }

    /// What follows a mark, if a digit does.
    fn after<'a>(&self, text: &'a str, mark: &str) -> Option<&'a str> {
        text.strip_prefix(mark).filter(|rest| rest.starts_with(|c: char| c.is_ascii_digit()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use text::{Language, Units};

    #[test]
    fn numbers_are_read_as_they_are_written() {
        let english = Marks::of(&Voice::english());
        let spanish = Language::from_table(text::SPANISH).expect("this version");
        let spanish = Marks::of(&Voice::new(spanish, Units::Meters));
        let read = |marks: &Marks, text| marks.read(text).map(|n| (n.value, n.decimals));
        assert_eq!(read(&english, "2,850\u{a0}rpm"), Some((2850.0, 0)));
        assert_eq!(read(&english, "\u{2212}1.25°"), Some((-1.25, 2)));
        assert_eq!(read(&english, "+4\u{a0}yd. Then"), Some((4.0, 0)));
        assert_eq!(read(&english, "no difference"), None);
        let decimal = spanish.read(&text::with_marks(&Voice::english(), "4")).map(|n| n.value);
        assert_eq!(decimal, Some(4.0));
    }
}
