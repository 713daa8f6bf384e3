//! Shares in whole shots of a hundred, as a golfer reads them and as many dots as are filled.

use serde::Serialize;

/// What was counted, in whole shots of a hundred: what a golfer reads, and as many dots as are filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct InHundred {
    /// On the fairway, 1 to 99.
    pub on: u8,
    /// Lower end of the interval.
    pub low: u8,
    /// Upper end.
    pub high: u8,
}

/// A chance in whole hundredths as it is told: never none and never all.
#[must_use]
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 1 and 99")]
pub fn hundredths(chance: f64) -> u8 {
    (100.0 * chance).round().clamp(1.0, 99.0) as u8
}

#[cfg(test)]
mod tests {
    use super::hundredths;

    #[test]
    fn a_share_is_never_told_as_none_or_all() {
        assert_eq!([0.0, 0.004, 0.286, 0.996, 1.0].map(hundredths), [1, 1, 29, 99, 99]);
    }
}
