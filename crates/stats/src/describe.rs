//! What a sample looks like: mean, standard deviation, median, MAD, quantiles, autocorrelation.
//!
//! Two passes and a shift by the first value, so that a large common part (altitude, a clock) costs no
//! digits and equal values have exactly no scatter. Checked against NIST StRD (tests/reference/stats/01).

use crate::count::whole;
use crate::sample::Sample;

/// Makes the MAD of normal values estimate their standard deviation: 1/Φ⁻¹(¾), to the four decimals every
/// package prints.
pub const MAD_TO_SD: f64 = 1.4826;

/// Arithmetic mean of one or more values; 0 for none.
///
/// x₁ + Σ(xᵢ − x₁)/n, then once more around the result. Accuracy: 1e-15 of the largest value.
#[must_use]
pub fn mean(values: &[f64]) -> f64 {
    let Some(&first) = values.first() else { return 0.0 };
    let n = values.len() as f64;
    let rough = first + values.iter().map(|x| x - first).sum::<f64>() / n;
    rough + values.iter().map(|x| x - rough).sum::<f64>() / n
}

/// Σ(xᵢ − x̄)², corrected for what rounding left in Σ(xᵢ − x̄).
///
/// Source: Chan, Golub and LeVeque, The American Statistician 37 (1983), 242–247, the corrected two-pass form.
#[must_use]
pub fn sum_of_squares(values: &[f64]) -> f64 {
    let center = mean(values);
    let (mut squares, mut rest) = (0.0, 0.0);
    for x in values {
        let deviation = x - center;
        squares += deviation * deviation;
        rest += deviation;
    }
    (squares - rest * rest / (values.len().max(1) as f64)).max(0.0)
}

/// Type-7 quantile of values in ascending order; `None` for no values or a share outside 0 to 1.
///
/// h = (n − 1)p, x₍⌊h⌋₎ + (h − ⌊h⌋)(x₍⌊h⌋+1₎ − x₍⌊h⌋₎).
/// Source: Hyndman and Fan, The American Statistician 50 (1996), 361–365.
#[must_use]
pub fn quantile_of_sorted(sorted: &[f64], share: f64) -> Option<f64> {
    if !(0.0..=1.0).contains(&share) {
        return None;
    }
    let last = sorted.len().checked_sub(1)?;
    let place = last as f64 * share;
    let below = whole(place, last);
    let above = (below + 1).min(last);
    let (low, high) = (*sorted.get(below)?, *sorted.get(above)?);
    Some(low + (place - below as f64) * (high - low))
}

/// Median of values in any order; `None` for no values.
#[must_use]
pub fn median(values: &[f64]) -> Option<f64> {
    let mut sorted = values.to_vec();
    crate::arrange::sort_numbers(&mut sorted);
    median_of_sorted(&sorted)
}

/// Median absolute deviation from the median, unscaled; `None` for no values.
#[must_use]
pub fn mad(values: &[f64]) -> Option<f64> {
    let center = median(values)?;
    let deviations: Vec<f64> = values.iter().map(|x| (x - center).abs()).collect();
    median(&deviations)
}

pub(crate) fn median_of_sorted(sorted: &[f64]) -> Option<f64> {
    let n = sorted.len();
    let upper = *sorted.get(n / 2)?;
    if n % 2 == 1 {
        return Some(upper);
    }
    let lower = *sorted.get(n / 2 - 1)?;
    Some(lower + 0.5 * (upper - lower))
}

impl Sample {
    /// Arithmetic mean.
    #[must_use]
    pub fn mean(&self) -> f64 {
        mean(self.values())
    }

    /// Variance with divisor n − 1; exactly 0 for equal values.
    #[must_use]
    pub fn variance(&self) -> f64 {
        sum_of_squares(self.values()) / (self.n() - 1) as f64
    }

    /// Standard deviation with divisor n − 1.
    #[must_use]
    pub fn sd(&self) -> f64 {
        self.variance().sqrt()
    }

    /// Lag-1 autocorrelation in the order given; `None` without scatter.
    ///
    /// r = Σ(xᵢ − x̄)(xᵢ₊₁ − x̄) / Σ(xᵢ − x̄)². Biased low in short series (see `autocorrelation`).
    #[must_use]
    pub fn lag1_autocorrelation(&self) -> Option<f64> {
        let center = self.mean();
        let products: f64 = self
            .values()
            .iter()
            .zip(&self.values()[1..])
            .map(|(x, next)| (x - center) * (next - center))
            .sum();
        finite(products / sum_of_squares(self.values()))
    }
}

fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}
