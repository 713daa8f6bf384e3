//! Of two values, one of each build, how often the candidate's is the larger: of any scatter, of any shape.
//!
//! Limits: values count as independent, so that a session's error takes the widening of `choices` on top. From a few values
//! the interval is wide, and it says nothing of how much larger.
//! Source: E. Brunner and U. Munzel, Biometrical Journal 42 (2000), 17–25; the interval on the logit, which keeps it between
//! never and always: E. Brunner, A. C. Bathke and F. Konietschke, Rank and Pseudo-Rank Procedures (2018).

use crate::describe::{mean, sum_of_squares};
use crate::difference::{Refusal, TDifference};
use crate::level::{Interval, Level};
use crate::real::{exp, ln, pow};
use crate::sample::Sample;
use crate::welch::satterthwaite;

/// The chance that a value of the candidate is above one of the baseline, half of the equal ones counted.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ChanceAbove {
    /// The chance, between 0 and 1, both included.
    pub chance: f64,
    /// Its standard error on Student's t; `None` where all values of one build lie beyond all of the other, and nothing
    /// scatters.
    pub error: Option<TDifference>,
    /// Values of the build that has fewer.
    fewer: usize,
}

/// The share of all pairs in which the candidate's value is the larger, with its error.
///
/// p = mean of the candidate's placements among the baseline's values; se² = s²/n + s′²/m of both sides' placements, df by
/// Satterthwaite. Accuracy: 1e-12 relative against tests/reference/stats/23.
///
/// # Errors
/// No scatter where every value of both is the same.
pub fn chance_above(candidate: &Sample, baseline: &Sample) -> Result<ChanceAbove, Refusal> {
    let (of_candidate, of_baseline) = (placements(candidate, baseline), placements(baseline, candidate));
    let chance = mean(&of_candidate);
    let (a, b) = (squared_error(&of_candidate), squared_error(&of_baseline));
    let fewer = candidate.n().min(baseline.n());
    let df = || satterthwaite(a, candidate.n() - 1, b, baseline.n() - 1);
    let error = if a + b > 0.0 { Some(TDifference::new(chance, (a + b).sqrt(), df(), 0.0)?) } else { None };
    let is_apart = chance <= 0.0 || chance >= 1.0;
    if error.is_none() && !is_apart {
        return Err(Refusal::NoScatter);
    }
    Ok(ChanceAbove { chance, error, fewer })
}

impl ChanceAbove {
    /// The same with its standard error multiplied by `factor` (above zero).
    #[must_use]
    pub fn widened(&self, factor: f64) -> ChanceAbove {
        ChanceAbove { error: self.error.map(|error| error.widened(factor)), ..*self }
    }

    /// Interval for the chance, between 0 and 1.
    ///
    /// logit p ± t·se/(p(1 − p)), and back. Where one build lies beyond the other throughout there is no error to go by:
    /// then it reaches to what as many pairs that share no value would allow, all of them won: α/2 to the power 1/n, n the
    /// smaller number (Clopper and Pearson, Biometrika 26 (1934)).
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        let least = pow(level.tail(), 1.0 / self.fewer as f64);
        let (low, high) = match self.error {
            _ if self.chance >= 1.0 => (least, 1.0),
            _ if self.chance <= 0.0 => (0.0, 1.0 - least),
            None => (0.0, 1.0),
            Some(error) => {
                let both = self.chance * (1.0 - self.chance);
                let reach = error.half_width(level) / both;
                let logit = ln(self.chance / (1.0 - self.chance));
                let back = |logit: f64| 1.0 / (1.0 + exp(-logit));
                (back(logit - reach), back(logit + reach))
            }
        };
        Interval { low, high, level }
    }
}

/// For each value, the share of the other build's values below it, half of the equal ones counted.
fn placements(of: &Sample, among: &Sample) -> Vec<f64> {
    let sorted = among.sorted();
    let place = |value: &f64| {
        let below = sorted.partition_point(|other| other < value);
        let not_above = sorted.partition_point(|other| other <= value);
        0.5 * (below + not_above) as f64 / sorted.len() as f64
    };
    of.values().iter().map(place).collect()
}

fn squared_error(placements: &[f64]) -> f64 {
    let n = placements.len() as f64;
    sum_of_squares(placements) / (n - 1.0) / n
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sample(values: &[f64]) -> Sample {
        Sample::new(values.to_vec()).unwrap()
    }

    #[test]
    fn swapping_the_builds_turns_it_around() {
        let (a, b) = (sample(&[251.0, 247.0, 255.0, 262.0, 247.0]), sample(&[258.0, 262.0, 249.0, 266.0]));
        let (there, back) = (chance_above(&a, &b).unwrap(), chance_above(&b, &a).unwrap());
        assert!((there.chance + back.chance - 1.0).abs() < 1e-15);
        let (one, other) = (there.interval(Level::P95), back.interval(Level::P95));
        assert!((one.low + other.high - 1.0).abs() < 1e-12 && (one.high + other.low - 1.0).abs() < 1e-12);
        assert!(one.low < there.chance && there.chance < one.high && one.low > 0.0 && one.high < 1.0);
    }

    #[test]
    fn only_the_order_of_the_values_counts() {
        let (a, b) = ([251.0, 247.0, 255.0, 262.0], [258.0, 262.0, 249.0, 266.0]);
        let bent = |values: &[f64; 4]| sample(&values.map(|x| (x - 200.0) * (x - 200.0) - 7.0));
        let plain = chance_above(&sample(&a), &sample(&b)).unwrap();
        assert_eq!(plain, chance_above(&bent(&a), &bent(&b)).unwrap());
    }

    #[test]
    fn builds_that_lie_apart_leave_room_for_what_was_not_seen() {
        let (low, high) = (sample(&[1.0, 2.0, 3.0, 4.0, 5.0]), sample(&[11.0, 12.0, 13.0]));
        let found = chance_above(&high, &low).unwrap();
        let interval = found.interval(Level::P95);
        // Three pairs, all won: 0.025 to the power of a third.
        assert!((interval.low - 0.292_401_773_821_286_6).abs() < 1e-12 && interval.high >= 1.0);
        let back = chance_above(&low, &high).unwrap().interval(Level::P95);
        assert!(back.low <= 0.0 && (back.high - 0.707_598_226_178_713_4).abs() < 1e-12);
        let one = sample(&[3.0, 3.0]);
        assert_eq!(chance_above(&one, &one), Err(Refusal::NoScatter));
    }
}
