//! An interval as it is printed: no end on the wrong side of a line, or on it, that the true end is not on; its level named.
//!
//! Whoever reads '−4 to +5' beside a margin of 5 takes it for inside. An end near a line gets the digits it needs.

use crate::format::{Subject, number};
use judging::analysis::{Estimate, Method};
use judging::interval::Interval;
use serde::Serialize;
use session::digits::{power_of_ten, rounded};
use session::measure::Margin;
use text::Voice;
use text::{format, paste, spread};

/// Digits that an end may get beyond those its measure deserves.
const MORE_DIGITS: usize = 3;

/// An estimate with the interval that decided, as texts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Printed {
    /// The difference, or how much more or less the candidate scatters.
    pub value: String,
    /// Lower end.
    pub low: String,
    /// Upper end.
    pub high: String,
    /// Its level: `95 %`.
    pub level: String,
}

/// The interval that decided, printed.
pub(crate) fn printed(estimate: &Estimate, margin: Option<Margin>, subject: &Subject<'_>) -> Printed {
    if estimate.method == Method::SpreadRatio {
        let Interval { low, high, level } = estimate.decided_by;
        let lines = ratio_lines(margin);
        let ratio = |x: f64, lines: &[f64]| signed_hundredths(subject.voice, x, lines);
        return Printed {
            value: ratio(estimate.value, &[]),
            low: ratio(low, &lines),
            high: ratio(high, &lines),
            level: level_text(subject.voice, level),
        };
    }
    let size =
        margin.and_then(|margin| if let Margin::Difference(size) = margin { Some(size) } else { None });
    printed_difference(estimate.value, &estimate.decided_by, size, subject)
}

/// A difference with its interval, printed.
pub(crate) fn printed_difference(
    value: f64,
    interval: &Interval,
    margin: Option<f64>,
    subject: &Subject<'_>,
) -> Printed {
    let lines = lines(margin);
    Printed {
        value: subject.signed(value),
        low: subject.end(interval.low, &lines),
        high: subject.end(interval.high, &lines),
        level: level_text(subject.voice, interval.level),
    }
}

/// What an end of a difference must not be read as crossing: no difference, and the margin to both sides.
pub(crate) fn lines(margin: Option<f64>) -> Vec<f64> {
    let margin = margin.into_iter().flat_map(|margin| [margin, -margin]);
    std::iter::once(0.0).chain(margin).collect()
}

/// The same for a ratio of scatters.
pub(crate) fn ratio_lines(margin: Option<Margin>) -> Vec<f64> {
    let ratio = margin.and_then(|margin| if let Margin::Ratio(ratio) = margin { Some(ratio) } else { None });
    std::iter::once(1.0).chain(ratio.into_iter().flat_map(|ratio| [ratio, 1.0 / ratio])).collect()
}

/// `25 % more`, `20 % less`, `equal in these shots`; in words where it has no limit.
pub(crate) fn more_or_less(voice: &Voice, ratio: f64, lines: &[f64]) -> String {
    match hundredths(voice, ratio, lines).as_deref() {
        None => spread::no_limit(voice),
        Some("0") => paste::the_same(voice),
        Some(size) => spread::end(voice, size, ratio < 1.0),
    }
}

/// How much more or less than 1 a ratio is, in hundredths without a sign; `None` where it has no limit.
pub(crate) fn hundredths(voice: &Voice, ratio: f64, lines: &[f64]) -> Option<String> {
    let of = |x: f64| (x - 1.0) * 100.0;
    let lines: Vec<f64> = lines.iter().map(|line| of(*line)).collect();
    let text = beside(of(ratio), 0, &lines).filter(|_| ratio > 0.0)?;
    Some(text::with_marks(voice, text.trim_start_matches('-')))
}

/// The same short enough for the end of a bar: `+25 %`.
fn signed_hundredths(voice: &Voice, ratio: f64, lines: &[f64]) -> String {
    let Some(size) = hundredths(voice, ratio, lines) else { return spread::no_limit(voice) };
    let sign = match () {
        () if size == "0" => "",
        () if ratio > 1.0 => "+",
        () => "\u{2212}",
    };
    format!("{sign}{size}\u{a0}%")
}

impl Subject<'_> {
    /// Two sizes without signs, the smaller first: `7 to 15 yd`, each printed as an end of an interval is.
    pub(crate) fn span(&self, a: f64, b: f64, margin: Option<f64>) -> String {
        self.span_beside(a, b, &lines(margin))
    }

    /// The same, on their side of each of these lines.
    pub(crate) fn span_beside(&self, a: f64, b: f64, lines: &[f64]) -> String {
        let (small, large) = if a.abs() <= b.abs() { (a, b) } else { (b, a) };
        let [small, large] = [small, large].map(|end| self.end_number(end, lines));
        format::span(self.voice, &small, &large, self.unit())
    }

    /// An end of an interval with its sign, on its own side of every line: `+4.7 yd` where 5 is one.
    pub(crate) fn end(&self, x: f64, lines: &[f64]) -> String {
        let sign = if x > 0.0 && !self.is_nothing(x, lines) { "+" } else { "" };
        match self.printed_beside(x, lines) {
            Some((value, decimals)) => {
                format!("{sign}{}{}", number(self.voice, value, decimals), self.unit())
            }
            None => self.signed(x),
        }
    }

    /// The same without its sign.
    pub(crate) fn end_amount(&self, x: f64, lines: &[f64]) -> String {
        match self.printed_beside(x, lines) {
            Some((value, decimals)) => {
                format!("{}{}", number(self.voice, value.abs(), decimals), self.unit())
            }
            None => self.amount(x),
        }
    }

    /// The same without its unit.
    pub(crate) fn end_number(&self, x: f64, lines: &[f64]) -> String {
        self.printed_beside(x, lines)
            .map_or_else(String::new, |(value, decimals)| number(self.voice, value.abs(), decimals))
    }

    /// Whether an end prints as no difference.
    pub(crate) fn is_nothing(&self, x: f64, lines: &[f64]) -> bool {
        self.printed_beside(x, lines).is_some_and(|(value, _)| value == 0.0)
    }

    /// The number that is printed for an end, and its decimals.
    fn printed_beside(&self, x: f64, lines: &[f64]) -> Option<(f64, usize)> {
        let (_, scale) = self.shown();
        let lines: Vec<f64> = lines.iter().map(|line| line * scale).collect();
        let text = beside(x * scale, self.decimals(), &lines)?;
        let decimals = text.split_once('.').map_or(0, |(_, part)| part.len());
        Some((text.parse().ok()?, decimals))
    }
}

/// A number with as many digits as it takes to stand on its side of every line; rounded away from a line where even
/// three more digits put it on it. `None` without a limit.
fn beside(x: f64, decimals: usize, lines: &[f64]) -> Option<String> {
    if !x.is_finite() {
        return None;
    }
    let text = |decimals: usize| {
        let plain = rounded(x.abs(), decimals);
        let is_zero = plain.bytes().all(|b| matches!(b, b'0' | b'.'));
        if x < 0.0 && !is_zero { format!("-{plain}") } else { plain }
    };
    let on_its_side = |decimals: &usize| {
        let printed: f64 = text(*decimals).parse().unwrap_or(x);
        lines.iter().all(|line| {
            is_as_close(x, *line) || (printed > *line) == (x > *line) && (printed < *line) == (x < *line)
        })
    };
    let most = decimals + MORE_DIGITS;
    Some((decimals..=most).find(on_its_side).map_or_else(|| away_from_a_line(x, most, lines), text))
}

/// Whether two numbers differ by rounding alone.
fn is_as_close(x: f64, line: f64) -> bool {
    (x - line).abs() <= 1e-9 * line.abs().max(1e-3)
}

/// The next number with so many decimals on the side of the nearest line that `x` is on.
fn away_from_a_line(x: f64, decimals: usize, lines: &[f64]) -> String {
    let nearest = lines.iter().copied().min_by(|a, b| (a - x).abs().total_cmp(&(b - x).abs()));
    let step = 1.0 / power_of_ten(decimals);
    let moved = nearest.map_or(x, |line| if x > line { line + step } else { line - step });
    let sign = if moved < 0.0 { "-" } else { "" };
    format!("{sign}{}", rounded(moved.abs(), decimals))
}

/// A level in percent with as many nines as it takes not to be all: `95 %`, `98.3 %`, `99.97 %`.
pub(crate) fn level_text(voice: &Voice, level: f64) -> String {
    let percent = level * 100.0;
    let is_whole = (percent - percent.round()).abs() < 1e-6;
    let is_all = |decimals: usize| rounded(percent, decimals).starts_with("100");
    let decimals = if is_whole && !is_all(0) { 0 } else { (1..9).find(|d| !is_all(*d)).unwrap_or(9) };
    format!("{}\u{a0}%", number(voice, percent, decimals))
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::Session;

    fn end(x: f64, margin: f64) -> String {
        let voice = Voice::english();
        Subject::of(&"carry".into(), &Session::default(), &voice).end(x, &lines(Some(margin)))
    }

    /// Something said of carry.
    fn said(say: impl Fn(&Subject<'_>) -> String) -> String {
        let voice = Voice::english();
        say(&Subject::of(&"carry".into(), &Session::default(), &voice))
    }

    #[test]
    fn a_size_that_is_not_zero_is_not_printed_as_zero() {
        assert_eq!(said(|s| s.span(0.3, 12.2, None)), "0.3 to 12\u{a0}yd");
        assert_eq!(said(|s| s.span(-12.2, -1.4, None)), "1 to 12\u{a0}yd");
        assert_eq!(said(|s| s.span(0.0, 27.4, None)), "0 to 27\u{a0}yd");
        assert_eq!(said(|s| s.span(-27.4, -0.000_02, None)), "0.001 to 27\u{a0}yd");
        assert_eq!(said(|s| s.amount(0.0)), "0\u{a0}yd");
    }

    #[test]
    fn a_span_does_not_cross_the_margin_by_rounding() {
        assert_eq!(said(|s| s.span(4.6, 25.2, Some(5.0))), "4.6 to 25\u{a0}yd");
        assert_eq!(said(|s| s.span(5.4, 25.2, Some(5.0))), "5.4 to 25\u{a0}yd");
        assert_eq!(said(|s| s.span(0.8, 4.96, Some(5.0))), "1 to 4.96\u{a0}yd");
        assert_eq!(said(|s| s.span(1.2, 5.3, Some(5.0))), "1 to 5.3\u{a0}yd");
        assert_eq!(said(|s| s.chosen(5.0)), "5\u{a0}yd");
    }

    /// One card holds the span of a headline and both ends below it.
    #[test]
    fn a_span_prints_the_ends_that_the_interval_prints() {
        for (low, high) in [(4.14, 14.47), (-38.2, -5.04), (5.0, 8.75), (0.04, 22.96), (3.4, 26.2)] {
            let beside = lines(Some(5.0));
            let span = said(|s| s.span(low, high, Some(5.0)));
            let ends = [low, high].map(|end| said(|s| s.end_amount(end, &beside)));
            let [small, large] = if low > 0.0 { ends } else { [ends[1].clone(), ends[0].clone()] };
            assert_eq!(span, format!("{} to {large}", small.trim_end_matches("\u{a0}yd")));
        }
    }

    #[test]
    fn an_end_is_not_printed_on_a_line_or_across_it() {
        let rows = [
            (4.73, "+4.7\u{a0}yd"),
            (5.47, "+5.5\u{a0}yd"),
            (4.96, "+4.96\u{a0}yd"),
            (-5.04, "\u{2212}5.04\u{a0}yd"),
            (4.4, "+4\u{a0}yd"),
            (0.3, "+0.3\u{a0}yd"),
            (-0.000_001, "\u{2212}0.001\u{a0}yd"),
            (4.999_999, "+4.999\u{a0}yd"),
            (5.0, "+5\u{a0}yd"),
            (0.0, "0\u{a0}yd"),
            (-30.2, "\u{2212}30\u{a0}yd"),
        ];
        for (x, printed) in rows {
            assert_eq!(end(x, 5.0), printed, "{x}");
        }
    }

    #[test]
    fn a_level_below_all_is_not_printed_as_all() {
        let rows = [
            (0.95, "95\u{a0}%"),
            (0.99, "99\u{a0}%"),
            (0.983_333, "98.3\u{a0}%"),
            (0.9996, "99.96\u{a0}%"),
            (0.999_999_92, "99.99999\u{a0}%"),
        ];
        for (level, printed) in rows {
            assert_eq!(level_text(&Voice::english(), level), printed);
        }
    }

    #[test]
    fn a_ratio_keeps_to_its_side_too() {
        let voice = Voice::english();
        let lines = ratio_lines(Some(Margin::Ratio(1.25)));
        assert_eq!(more_or_less(&voice, 1.248, &lines), "24.8\u{a0}% more");
        assert_eq!(more_or_less(&voice, 0.52, &lines), "48\u{a0}% less");
        assert_eq!(more_or_less(&voice, 1.0, &lines), "equal in these shots");
    }
}
