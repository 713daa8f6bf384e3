//! A number's decimal digits, rounded exactly, without the large tables that printing any number to any length needs.

/// Sizes from here on are only said to be beyond it: no measure of golf comes near.
const HUGE: f64 = 9.0e9;

/// Most digits behind the point.
const MOST_DECIMALS: usize = 9;

/// A size with so many digits behind the point (at most nine), an exact half rounded up; in words where it is no number or nine thousand million.
///
/// The double is taken as the exact binary fraction it is, so nothing is rounded twice. Pages round halves away
/// from zero too: a sentence and the picture beside it say the same. The sign is the caller's.
pub fn rounded(size: f64, decimals: usize) -> String {
    let size = size.abs();
    if size.is_nan() || size >= HUGE {
        return (if size.is_nan() { "unknown" } else { "over 9000000000" }).to_owned();
    }
    let decimals = decimals.min(MOST_DECIMALS);
    let units = units(size, u32::try_from(decimals).unwrap_or(0));
    let mut text = units.to_string();
    if decimals > 0 {
        while text.len() <= decimals {
            text.insert(0, '0');
        }
        text.insert(text.len() - decimals, '.');
    }
    text
}

/// 10 to the power of so many digits (at most nine): an exact number.
pub fn power_of_ten(digits: usize) -> f64 {
    const POWERS: [f64; MOST_DECIMALS + 1] = [1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];
    POWERS[digits.min(MOST_DECIMALS)]
}

/// The size in units of the last digit kept: mantissa × 10^decimals × 2^exponent, halves up.
fn units(size: f64, decimals: u32) -> u64 {
    let bits = size.to_bits();
    let exponent = (bits >> 52) & 0x7FF;
    let fraction = bits & ((1 << 52) - 1);
    let mantissa = if exponent == 0 { fraction } else { fraction | 1 << 52 };
    let scaled = u128::from(mantissa) * u128::from(10_u64.pow(decimals));
    // Below 9e9 the exponent is negative, so what is left of the product fits 64 bits.
    let places = 1075_u64.saturating_sub(exponent.max(1));
    if places > 126 {
        return 0;
    }
    let half = if places == 0 { 0 } else { 1_u128 << (places - 1) };
    u64::try_from((scaled + half) >> places).unwrap_or(u64::MAX)
}

#[cfg(test)]
mod tests {
    use super::rounded;
    use proptest::prelude::*;

    #[test]
    fn halves_go_up_and_what_only_looks_like_one_does_not() {
        for (size, decimals, text) in [
            (0.5, 0, "1"),
            (2.5, 0, "3"),
            (0.25, 1, "0.3"),
            (1.115, 2, "1.11"),
            (1.005, 2, "1.00"),
            (0.045, 2, "0.04"),
            (0.0, 2, "0.00"),
            (5e-324, 3, "0.000"),
            (999.95, 1, "1000.0"),
            (-7.25, 1, "7.3"),
        ] {
            assert_eq!(rounded(size, decimals), text, "{size}");
        }
    }

    proptest! {
        #[test]
        fn agrees_with_the_standard_library_away_from_halves(size in 0.0..8.9e9_f64, decimals in 0..9_usize) {
            let exact = format!("{size:.30}");
            let rest = exact.split_once('.').map_or("", |(_, digits)| &digits[decimals..]);
            prop_assume!(!rest.strip_prefix('5').is_some_and(|r| r.bytes().all(|b| b == b'0')));
            prop_assert_eq!(rounded(size, decimals), format!("{size:.decimals$}"));
        }
    }
}
