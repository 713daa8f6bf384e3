//! Numbers as a golfer reads them: rounded to what the measure deserves, never so far that they
//! contradict the decision they explain.

use crate::units::shown;
use libm::log as ln;
use session::Session;
use session::digits::{power_of_ten, rounded};
use session::measure::{MeasureId, STANDARD_AIR_CARRY, Unit};
use session::names::short_name;
use text::Voice;
use text::format as say;
use text::format::Cases;
use text::names::{spoken, the};

/// A measure as sentences need it.
#[derive(Debug, Clone)]
pub(crate) struct Subject<'v> {
    pub(crate) voice: &'v Voice,
    pub(crate) id: MeasureId,
    /// Lower case, for the middle of a sentence.
    pub(crate) name: String,
    /// As printed after a number, with the space that keeps it there; empty for a plain ratio.
    unit: String,
    /// What one canonical unit is in the unit printed.
    scale: f64,
    decimals: usize,
}

impl<'v> Subject<'v> {
    /// The measure's name and unit, whether it is the trade's or the golfer's own.
    pub(crate) fn of(id: &MeasureId, session: &Session, voice: &'v Voice) -> Self {
        if let Some(known) = id.known() {
            let (label, scale) = shown(known.facts().unit, voice);
            return Self {
                voice,
                id: id.clone(),
                name: spoken(known, voice),
                unit: suffix(label),
                scale,
                decimals: usize::from(known.facts().decimals),
            };
        }
        let custom = session.custom(id);
        let unit = short_name(custom.map_or("", |c| c.unit.as_str()));
        // Carry in standard air is a carry, whatever list it stands in.
        let is_carry = id.as_str() == STANDARD_AIR_CARRY;
        let (label, scale) = if is_carry { shown(Unit::Yd, voice) } else { (unit.as_str(), 1.0) };
        Self {
            voice,
            id: id.clone(),
            name: short_name(custom.map_or(id.as_str(), |c| c.name.as_str())),
            unit: suffix(label),
            scale,
            decimals: if is_carry { 0 } else { 2 },
        }
    }

    /// The measure as a thing that is spoken of, with its article where the language has one; a column of the golfer's own
    /// by its name.
    pub(crate) fn the(&self) -> String {
        self.id.known().map_or_else(|| self.name.clone(), |known| the(known, self.voice))
    }

    /// The unit alone as it is shown, and what one canonical unit is in it.
    pub(crate) fn shown(&self) -> (&str, f64) {
        (self.unit.trim_start(), self.scale)
    }

    /// The unit as it is printed after a number.
    pub(crate) fn unit(&self) -> &str {
        &self.unit
    }

    /// Digits behind the point that the measure deserves.
    pub(crate) fn decimals(&self) -> usize {
        self.decimals
    }

    /// A size without a sign: `8 yd`.
    pub(crate) fn amount(&self, x: f64) -> String {
        let x = (x * self.scale).abs();
        format!("{}{}", number(self.voice, x, self.decimals_for(x)), self.unit)
    }

    /// A value with its sign: `254 yd`, `−1.2°`.
    pub(crate) fn value(&self, x: f64) -> String {
        format!("{}{}", number(self.voice, x * self.scale, self.decimals), self.unit)
    }

    /// A difference with its sign, also above zero: `+4 yd`.
    pub(crate) fn signed(&self, x: f64) -> String {
        let sign = if x > 0.0 && !self.prints_as_zero(x) { "+" } else { "" };
        format!("{sign}{}", self.value(x))
    }

    /// A size that somebody chose, with just the digits it has: `5 yd`, `1.5 mph`. One that was chosen in other units
    /// than it is printed in gets one digit more than a measured one.
    pub(crate) fn chosen(&self, x: f64) -> String {
        let x = x * self.scale;
        let exact = |d: &usize| {
            let scale = power_of_ten(*d);
            ((x * scale).round() - x * scale).abs() < 1e-6
        };
        // What was worked out has no end of digits: it is printed as any amount.
        let decimals = if (self.scale - 1.0).abs() < f64::EPSILON {
            (0..=4).find(exact).unwrap_or_else(|| self.decimals_for(x))
        } else {
            let most = self.decimals + 1;
            (0..most).find(exact).unwrap_or(most)
        };
        format!("{}{}", number(self.voice, x.abs(), decimals), self.unit)
    }

    /// A size that is not exceeded, with as many digits as keep it from being said beyond `limit` where it is not.
    pub(crate) fn at_most_beside(&self, x: f64, limit: f64) -> String {
        self.rounded_beside(x, f64::ceil, |printed| printed <= limit.abs())
    }

    /// A size that is reached, with as many digits as keep it from being said at `limit` or below where it is above.
    pub(crate) fn at_least_beside(&self, x: f64, limit: f64) -> String {
        self.rounded_beside(x, f64::floor, |printed| printed > limit.abs())
    }

    fn rounded_beside(&self, x: f64, round: fn(f64) -> f64, stays: impl Fn(f64) -> bool) -> String {
        let x = (x * self.scale).abs();
        let printed = |decimals: usize| {
            let scale = power_of_ten(decimals);
            round(x * scale) / scale
        };
        let most = self.decimals + 3;
        let decimals = (self.decimals..most).find(|d| stays(printed(*d) / self.scale)).unwrap_or(most);
        format!("{}{}", number(self.voice, printed(decimals), decimals), self.unit)
    }

    /// Whether two values, each printed, differ by what their difference is printed as.
    pub(crate) fn adds_up(&self, one: f64, other: f64) -> bool {
        let scale = power_of_ten(self.decimals) * self.scale;
        let steps = |x: f64| (x * scale).round();
        (steps(one) - steps(other) - steps(one - other)).abs() < 0.5
    }

    /// The same, with one digit more.
    pub(crate) fn with_one_digit_more(&self) -> Self {
        Self { decimals: self.decimals + 1, ..self.clone() }
    }

    /// Whether nothing but zeros would be printed.
    pub(crate) fn prints_as_zero(&self, x: f64) -> bool {
        rounded(x * self.scale, self.decimals).bytes().all(|b| matches!(b, b'0' | b'.'))
    }

    /// Enough digits that a size in the unit printed that is not zero does not print as zero.
    fn decimals_for(&self, x: f64) -> usize {
        let x = x.abs();
        let printed_as_zero = |d: usize| x * power_of_ten(d) < 0.5;
        if x < 1e-9 {
            return self.decimals;
        }
        (self.decimals..self.decimals + 3).find(|&d| !printed_as_zero(d)).unwrap_or(self.decimals + 3)
    }
}

/// A unit as it is printed after a number, with a space at which no line breaks.
fn suffix(label: &str) -> String {
    match label {
        "" => String::new(),
        "deg" => "°".to_owned(),
        other => format!("\u{a0}{other}"),
    }
}

/// A number with a true minus sign and thousands set apart, as the language spoken prints it.
pub(crate) fn number(voice: &Voice, x: f64, decimals: usize) -> String {
    let plain = rounded(x, decimals);
    let is_zero = plain.bytes().all(|b| matches!(b, b'0' | b'.'));
    let sign = if x < 0.0 && !is_zero { "\u{2212}" } else { "" };
    format!("{sign}{}", text::with_marks(voice, &plain))
}

/// `1 shot`, `15 shots`.
pub(crate) fn shots(voice: &Voice, n: usize) -> String {
    say::shots(voice, n)
}

/// A count with its thousands set apart.
pub(crate) fn count_of(voice: &Voice, n: usize) -> String {
    text::grouped(voice, &n.to_string())
}

/// A chance as a golfer counts it: `about 4 of 10 sessions like this`.
pub(crate) fn chance(voice: &Voice, p: f64) -> String {
    counted(voice, p, Cases::Sessions)
}

/// The same of fittings.
pub(crate) fn chance_of_fittings(voice: &Voice, p: f64) -> String {
    counted(voice, p, Cases::Fittings)
}

fn counted(voice: &Voice, p: f64, of: Cases) -> String {
    if p >= 0.95 {
        return say::chance_nearly_all(voice, of);
    }
    if p >= 0.15 {
        return say::chance_of_ten(voice, &number(voice, (p * 10.0).round().clamp(2.0, 9.0), 0), of);
    }
    if p < 0.001 {
        return say::chance_under_one_of_thousand(voice, of);
    }
    let one_in = [10.0, 15.0, 20.0, 30.0, 50.0, 100.0, 200.0, 500.0, 1000.0];
    let nearest = one_in.iter().copied().min_by(|a, b| {
        let distance = |n: &f64| ln(p * n).abs();
        distance(a).total_cmp(&distance(b))
    });
    say::chance_one_of(voice, &number(voice, nearest.unwrap_or(1000.0), 0), of)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plain(x: f64, decimals: usize) -> String {
        number(&Voice::english(), x, decimals)
    }

    fn english_count(n: usize) -> String {
        count_of(&Voice::english(), n)
    }

    fn said(id: &str, say: impl Fn(&Subject<'_>) -> String) -> String {
        let voice = Voice::english();
        say(&Subject::of(&id.into(), &Session::default(), &voice))
    }

    #[test]
    fn numbers_are_printed_as_english_prints_them() {
        assert_eq!(plain(2850.4, 0), "2,850");
        assert_eq!(plain(-1.25, 1), "\u{2212}1.3");
        assert_eq!((plain(4.5, 0), plain(3.5, 0), plain(2.125, 2)), ("5".into(), "4".into(), "2.13".into()));
        // Just below a half, whatever it looks like in decimals.
        assert_eq!(plain(1.115, 2), "1.11");
        assert_eq!(plain(-0.04, 1), "0.0");
        assert_eq!(plain(1_234_567.0, 2), "1,234,567.00");
        assert_eq!(english_count(100_000), "100,000");
    }

    #[test]
    fn a_drift_is_said_on_its_side_of_what_is_allowed_for() {
        assert_eq!(said("carry", |s| s.at_least_beside(6.4, 6.0)), "6.4\u{a0}yd");
        assert_eq!(said("carry", |s| s.at_least_beside(7.6, 6.0)), "7\u{a0}yd");
        assert_eq!(said("carry", |s| s.at_most_beside(5.2, 6.0)), "6\u{a0}yd");
        assert_eq!(said("carry", |s| s.at_most_beside(5.2, 5.49)), "5.2\u{a0}yd");
        assert_eq!(said("ball_speed", |s| s.at_most_beside(0.45, 1.5)), "0.5\u{a0}mph");
    }

    #[test]
    fn chances_are_counted_in_sessions() {
        let rows = [
            (0.97, "nearly all sessions like this"),
            (0.41, "about 4 of 10 sessions like this"),
            (0.11, "about 1 of 10 sessions like this"),
            (0.048, "about 1 of 20 sessions like this"),
            (0.009, "about 1 of 100 sessions like this"),
            (0.0001, "fewer than 1 of 1,000 sessions like this"),
        ];
        for (p, words) in rows {
            assert_eq!(chance(&Voice::english(), p), words);
        }
    }
}
