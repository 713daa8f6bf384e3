//! Decimal digits into a number, for figures of everyday size.
//!
//! The standard library reads any decimal to the last bit and carries ten kilobytes of tables for it. A
//! golfer's figure has few digits: a whole number below 2⁵³ times or divided by one exact power of ten is
//! rounded once and is therefore the same to the last bit (W. D. Clinger, PLDI 1990, 92–101). Only longer
//! figures may differ, by a unit or two in the last place.

/// Powers of ten that a float holds exactly.
const TENS: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18,
    1e19, 1e20, 1e21, 1e22,
];

/// More digits than these tell nothing more; the value of one more must still fit.
const MOST: u64 = 1_000_000_000_000_000_000;

/// The number whose digits before and behind the mark these are, times ten to `exponent`. Anything but an
/// ASCII digit is passed over. `None` without a digit, or beyond what a float holds.
pub(crate) fn number(whole: &str, fraction: &str, exponent: i32) -> Option<f64> {
    let mut digits: u64 = 0;
    let mut shift = exponent.clamp(-1000, 1000);
    let mut any = false;
    for (part, is_fraction) in [(whole, false), (fraction, true)] {
        for digit in part.bytes().filter(u8::is_ascii_digit) {
            any = true;
            if digits < MOST {
                digits = digits * 10 + u64::from(digit - b'0');
                shift -= i32::from(is_fraction);
            } else {
                shift = shift.saturating_add(i32::from(!is_fraction));
            }
        }
    }
    #[expect(
        clippy::cast_precision_loss,
        reason = "said above: only figures of more than 15 digits lose any"
    )]
    let mut value = digits as f64;
    let mut steps = shift.unsigned_abs() as usize;
    while steps > 0 && value > 0.0 && value.is_finite() {
        let step = steps.min(TENS.len() - 1);
        value = if shift < 0 { value / TENS[step] } else { value * TENS[step] };
        steps -= step;
    }
    (any && value.is_finite()).then_some(value)
}

/// The number that the standard library wrote as this text, to the last bit.
///
/// It writes the fewest digits that name one number, and no exponent. Of long figures [`number`] may miss
/// that one by a few units in the last place: the neighbor that is written the same way is it.
pub(crate) fn written(text: &str) -> Option<f64> {
    let digits = text.strip_prefix('-').unwrap_or(text);
    let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
    if !whole.bytes().chain(fraction.bytes()).all(|b| b.is_ascii_digit()) {
        return None;
    }
    let near = number(whole, fraction, 0);
    // Beyond the range by a rounding on the way, perhaps.
    let any = digits.bytes().any(|b| b.is_ascii_digit());
    let start = near.or(any.then_some(f64::MAX))?;
    let (mut above, mut below) = (start, start);
    let mut found = near;
    // Fifteen digits are always read right.
    let rounds = if digits.len() > 15 { NEIGHBORS } else { 0 };
    for _ in 0..rounds {
        let same = [below, above].into_iter().find(|v| v.to_string() == digits);
        if same.is_some() {
            found = same;
            break;
        }
        (below, above) = (below.next_down().max(0.0), above.next_up());
    }
    let found = found.filter(|v| v.is_finite())?;
    Some(if text.len() == digits.len() { found } else { -found })
}

/// Units in the last place that are looked at on either side.
const NEIGHBORS: usize = 24;

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn nothing_and_too_much_are_no_numbers() {
        assert_eq!(number("", "", 0), None);
        assert_eq!(number("1", "", 400), None);
        assert_eq!(number("1", "", -400), Some(0.0));
        assert_eq!(number("0", "0", 999), Some(0.0));
        assert_eq!(number(&"9".repeat(400), "", 0), None);
    }

    #[test]
    fn the_ends_of_the_range_are_read_to_the_last_bit() {
        for value in [f64::MAX, f64::MIN, f64::MIN_POSITIVE, 5e-324, -5e-324, 0.0, -0.0, f64::MAX.next_down()]
        {
            let read = written(&value.to_string());
            assert_eq!(read.map(f64::to_bits), Some(value.to_bits()), "{value}");
        }
        for text in ["", "-", ".", "1e5", "inf", "NaN", "+1", " 1", "1.2.3"] {
            assert_eq!(written(text), None, "{text}");
        }
    }

    fn digits(count: std::ops::Range<usize>) -> impl Strategy<Value = String> {
        proptest::collection::vec(0_u8..10, count)
            .prop_map(|digits| digits.into_iter().map(|digit| char::from(b'0' + digit)).collect())
    }

    proptest! {
        #[test]
        fn everyday_figures_are_exact(whole in digits(1..10), fraction in digits(0..7), exponent in -15_i32..7) {
            let text = format!("{whole}.{fraction}e{exponent}");
            prop_assert_eq!(number(&whole, &fraction, exponent), text.parse::<f64>().ok());
        }

        #[test]
        fn what_was_written_is_read_to_the_last_bit(bits in any::<u64>()) {
            let value = f64::from_bits(bits);
            prop_assume!(value.is_finite());
            let read = written(&value.to_string());
            prop_assert_eq!(read.map(f64::to_bits), Some(value.to_bits()), "{}", value);
        }

        #[test]
        fn long_figures_are_close(whole in digits(1..30), fraction in digits(0..30), exponent in -60_i32..60) {
            let near: f64 = format!("{whole}.{fraction}e{exponent}").parse().unwrap();
            let found = number(&whole, &fraction, exponent).unwrap();
            prop_assert!((found - near).abs() <= near * 1e-15, "{found} {near}");
        }
    }
}
