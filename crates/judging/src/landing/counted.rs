//! What was counted on the strip: a share with its interval, and whether counting puts two builds in the order of the curve.
//!
//! A few shots far off widen the bell curve and lower its chance, and count as one miss each. Where both put the builds
//! in opposite order, neither settles which of them hits more often.
//! Source of the interval: E. B. Wilson, J. American Statistical Association 22 (1927), 209–212.

use super::chances::{FEWEST_FOR_CHANCE, HitChance};
use super::facts::LandingFacts;
use super::hundred::{InHundred, hundredths};
use stats::Level;
use stats::choices::WIDENING;
use stats::distributions::normal_upper;

/// The share of shots that landed, with Wilson's interval at 95 %, its normal point widened as everywhere.
///
/// (p + z²/2n ± z·√(p(1 − p)/n + z²/4n²)) / (1 + z²/n).
pub(super) fn share(landed: usize, shots: usize) -> HitChance {
    let (n, value) = (shots as f64, landed as f64 / shots as f64);
    let z = WIDENING * normal_upper(Level::P95.tail());
    let (whole, middle) = (1.0 + z * z / n, value + z * z / (2.0 * n));
    let half = z * (value * (1.0 - value) / n + z * z / (4.0 * n * n)).sqrt();
    HitChance { value, low: ((middle - half) / whole).max(0.0), high: ((middle + half) / whole).min(1.0) }
}

/// `None` for fewer shots than a chance is given for: a hundred dots of five shots would claim too much.
pub(super) fn in_hundred(landed: usize, shots: usize) -> Option<InHundred> {
    let HitChance { value, low, high } = share(landed, shots);
    (shots >= FEWEST_FOR_CHANCE).then(|| InHundred {
        on: hundredths(value),
        low: hundredths(low),
        high: hundredths(high),
    })
}

impl LandingFacts {
    /// Whether as many of a hundred are told of both, as counted and as aimed on the day.
    #[must_use]
    pub fn counted_even(&self) -> bool {
        let counted = |build: usize| self.build(build).map(|facts| hundredths(facts.counted_as_aimed));
        self.ground.pair.is_some_and(|pair| counted(pair.candidate) == counted(pair.baseline))
    }

    /// The build of the two that counting favors against the curve, as aimed on the day; `None` where both agree, or one
    /// of them is even. Shares are read as they are told, in hundredths: 10 of 14 and 12 of 17 are even.
    #[must_use]
    pub fn counted_against_the_curve(&self) -> Option<usize> {
        let pair = self.ground.pair?;
        let counted = |build: usize| self.build(build).map(|facts| (100.0 * facts.counted_as_aimed).round());
        let gain = counted(pair.candidate)? - counted(pair.baseline)?;
        (gain * pair.gain_of_club.value < 0.0).then_some(if gain > 0.0 {
            pair.candidate
        } else {
            pair.baseline
        })
    }
}

#[cfg(test)]
mod tests {
    use super::{InHundred, in_hundred, share};

    #[test]
    fn dots_are_what_is_told_and_none_from_seven_shots() {
        assert_eq!(in_hundred(5, 7), None);
        let (some, all) = (in_hundred(19, 24).expect("enough"), in_hundred(8, 8).expect("enough"));
        let wilson = share(19, 24);
        assert_eq!(some.on, 79);
        assert!((f64::from(some.low) - 100.0 * wilson.low).abs() <= 0.5);
        assert!((f64::from(some.high) - 100.0 * wilson.high).abs() <= 0.5);
        assert!(some.low < some.on && some.on < some.high, "{some:?}");
        assert_eq!(all, InHundred { on: 99, low: all.low, high: 99 });
    }

    #[test]
    fn a_share_of_few_shots_is_wide_and_never_none_or_all() {
        let (few, many) = (share(8, 10), share(80, 100));
        assert!(few.low < many.low && many.high < few.high);
        let (none, all) = (share(0, 12), share(12, 12));
        assert!(none.low.abs() < 1e-12 && none.high > 0.2 && all.low < 0.8 && (all.high - 1.0).abs() < 1e-12);
    }
}
