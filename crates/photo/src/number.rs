//! What a cell's text says as a number: its sign or side, its digits, its unit.

/// Units that may stand behind a number in its own cell; longer ones first.
const UNITS: [&str; 11] = ["yards", "yard", "yds", "yd", "mph", "m/s", "rpm", "deg", "ft", "m", "%"];

/// A number as it is written.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Number {
    /// The letter of a side, before or behind.
    pub(crate) side: Option<char>,
    /// A plus or a minus.
    pub(crate) sign: Option<char>,
    /// Digits, with the marks between them as they stand there.
    pub(crate) digits: String,
    /// What stood behind it; a degree sign too.
    pub(crate) unit: String,
}

/// A text as a number; nothing when it is none.
pub(crate) fn number(text: &str) -> Option<Number> {
    let trimmed = text.trim().trim_matches('\'').trim();
    let (rest, unit) = without_unit(trimmed);
    let (side, rest) = match rest.strip_prefix(['L', 'R']) {
        Some(behind) => (rest.chars().next(), behind.trim_start()),
        None => (None, rest),
    };
    let (behind, rest) = match rest.strip_suffix(['L', 'R']) {
        Some(before) if side.is_none() => (rest.chars().last(), before.trim_end()),
        _ => (None, rest),
    };
    let (sign, digits) = match rest.strip_prefix(['+', '-']) {
        Some(behind) => (rest.chars().next(), behind),
        None => (None, rest),
    };
    let is_written = digits.starts_with(|it: char| it.is_ascii_digit())
        && digits.chars().all(|it| it.is_ascii_digit() || it == '.' || it == ',');
    is_written.then(|| Number { side: side.or(behind), sign, digits: digits.into(), unit: unit.into() })
}

fn without_unit(text: &str) -> (&str, &str) {
    if let Some(before) = text.strip_suffix('°') {
        return (before.trim_end(), "°");
    }
    let found = UNITS.iter().find_map(|unit| {
        let at = text.len().checked_sub(unit.len())?;
        let (before, behind) = text.split_at_checked(at)?;
        let fits = behind.eq_ignore_ascii_case(unit)
            && before.ends_with(|it: char| it.is_ascii_digit() || " LR".contains(it));
        fits.then(|| (before.trim_end(), behind))
    });
    found.unwrap_or((text, ""))
}

impl Number {
    /// For comparing two readings of one cell: how the marks were read does not matter, only where they stand.
    pub(crate) fn plain(&self) -> String {
        let side = self.side.map(String::from).unwrap_or_default();
        let minus = if self.sign == Some('-') { "-" } else { "" };
        format!("{side}{minus}{}", self.digits.replace(',', ".").trim_end_matches('.'))
    }

    /// How many digits stand behind the last mark. Three may be thousands: then there are none.
    pub(crate) fn decimals(&self) -> usize {
        let behind = self.digits.rsplit_once(['.', ',']).map_or(0, |(_, behind)| behind.len());
        if behind == 3 { 0 } else { behind }
    }

    /// Left is below zero. Nothing when its marks fit no number.
    pub(crate) fn value(&self) -> Option<f64> {
        let digits = self.digits.replace(',', ".");
        let digits = digits.trim_end_matches('.');
        let parts: Vec<&str> = digits.split('.').collect();
        let value: f64 = match parts.as_slice() {
            [whole] => whole.parse().ok()?,
            [whole, decimals] if decimals.len() != 3 => format!("{whole}.{decimals}").parse().ok()?,
            [first, thousands @ ..] if first.len() <= 3 && thousands.iter().all(|it| it.len() == 3) => {
                parts.concat().parse().ok()?
            }
            [first, middle, decimals] if first.len() <= 3 && middle.len() == 3 => {
                format!("{first}{middle}.{decimals}").parse().ok()?
            }
            _ => return None,
        };
        let is_below = self.sign == Some('-') || self.side == Some('L');
        Some(if is_below { -value } else { value })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_told_from_words() {
        for (text, value, decimals) in [
            ("231", 231.0, 0),
            ("-4.2", -4.2, 1),
            ("L 4.2", -4.2, 1),
            ("4,2 R", 4.2, 1),
            ("4.2L", -4.2, 1),
            ("2,345", 2345.0, 0),
            ("2.345,6", 2345.6, 1),
            ("+1.48", 1.48, 2),
            ("14.2°", 14.2, 1),
            ("231 yd", 231.0, 0),
            ("104mph", 104.0, 0),
            ("0.5 Rdeg", 0.5, 1),
        ] {
            let found = number(text).unwrap_or_else(|| panic!("{text}"));
            assert!((found.value().unwrap() - value).abs() < 1e-9, "{text}");
            assert_eq!(found.decimals(), decimals, "{text}");
        }
        for text in ["", "-", "L", "7 iron A", "4H", "PW", "R0.8L", "m.7", "yd", "Club A", ".5"] {
            assert_eq!(number(text), None, "{text}");
        }
    }
}
