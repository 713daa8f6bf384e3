//! How much shots in a row lean on each other, and what that costs in width.
//!
//! A raw lag-1 autocorrelation is nearly useless at ten shots, so none is ever turned into an 'effective
//! number of shots'. Corrected for its bias it may widen an interval, never narrow one.
//! Sources: bias −(1 + 3ρ)/n, Marriott and Pope, Biometrika 41 (1954), 390–402; with a slope fitted as well
//! −(2 + 4ρ)/n, since a trend adds as much bias as a mean does (On the effect of deterministic terms on the bias
//! in stable AR models, UvA Econometrics Discussion Paper 2004/08); variance of a mean of a first-order autoregression.

use crate::choices::WIDENING;
use crate::sample::Sample;

/// Above this the correction would explode; such a session says nothing either way.
const HIGHEST: f64 = 0.9;

/// A lag-1 autocorrelation r of what a line through n values leaves over, corrected for its bias, within 0 to 0.9.
pub(crate) fn corrected_autocorrelation(r: f64, n: usize) -> f64 {
    bounded(r + (2.0 + 4.0 * r) / n as f64)
}

/// Factor on a standard error for first-order autocorrelation r: √((1 + r)/(1 − r)), r within 0 to 0.9.
pub(crate) fn autocorrelation_factor(r: f64) -> f64 {
    let r = bounded(r);
    ((1.0 + r) / (1.0 - r)).sqrt()
}

/// Factor on the standard error of a difference of two blocks hit one after the other, in the order hit.
///
/// From the mean of the two corrected autocorrelations; never below the usual widening.
#[must_use]
pub fn blocked_widening(candidate: &Sample, baseline: &Sample) -> f64 {
    let corrected = |sample: &Sample| {
        let r = sample.lag1_autocorrelation().unwrap_or_default();
        let bias = (1.0 + 3.0 * r) / sample.n() as f64;
        r + bias
    };
    autocorrelation_factor(0.5 * (corrected(candidate) + corrected(baseline))).max(WIDENING)
}

fn bounded(r: f64) -> f64 {
    if r.is_nan() { 0.0 } else { r.clamp(0.0, HIGHEST) }
}
