//! The noncentral t distribution, on which the power of a t test rests.
//!
//! statrs has none. P(T ≤ t) = E[Φ(t·s − δ)] with s = χ/√df is integrated directly; unlike the series of
//! Lenth (Algorithm AS 243, Applied Statistics 38 (1989), 185–189) it keeps its digits for every δ.
//! Source: Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions 2 (1995), ch. 31.

use crate::distributions::normal_sf;
use crate::quadrature::Scale;

/// How fast Φ can still be changing, beyond |δ|, where it is not yet 0 or 1.
pub(crate) const NORMAL_REACH: f64 = 8.0;

/// Probability that noncentral t with `df` degrees of freedom and noncentrality `delta` is larger than `t`.
///
/// Requires: `df` > 0, finite `delta`; else NaN. Accuracy: 1e-10 relative, 1e-12 absolute.
#[must_use]
pub fn noncentral_t_sf(t: f64, df: f64, delta: f64) -> f64 {
    expected_tail(t, df, delta, 1.0)
}

/// Probability that it is at most `t`.
#[must_use]
pub fn noncentral_t_cdf(t: f64, df: f64, delta: f64) -> f64 {
    expected_tail(t, df, delta, -1.0)
}

fn expected_tail(t: f64, df: f64, delta: f64, sign: f64) -> f64 {
    let Some(scale) = Scale::new(df).filter(|_| !t.is_nan() && delta.is_finite()) else { return f64::NAN };
    if t.is_infinite() {
        return if t * sign > 0.0 { 0.0 } else { 1.0 };
    }
    scale.mean(delta.abs() + NORMAL_REACH, &|s| normal_sf(sign * (t * s - delta)))
}
