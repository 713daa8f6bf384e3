//! The largest of several t statistics: studentized range and Dunnett's distribution.
//!
//! Both are means over the sampling error of the standard deviation of a probability for normal values, which
//! is itself an integral; both are summed without cancellation or by rules that converge geometrically.
//! Sources: Tukey (1953); C. W. Dunnett, J. American Statistical Association 50 (1955), 1096–1121; the
//! positive form of the range's tail is our own rearrangement.

use crate::distributions::{normal_cdf, normal_density, normal_sf, upper_point};
use crate::quadrature::Scale;

/// Beyond this the normal density adds nothing to any probability kept.
const REACH: f64 = 8.5;

/// Resolves normal densities and distribution functions to the last digit (error exp(−2π²/0.2²·½)).
const STEP: f64 = 0.2;

/// Groups beyond this are not a session.
const MOST_GROUPS: u32 = 1000;

/// Probability that the studentized range of `k` means on `df` degrees of freedom exceeds `q`.
///
/// E[P(range of k normal values > q·s)], s = χ/√df. Requires: `k` from 2 to 1000, `df` > 0; else NaN.
/// Accuracy: 1e-9 relative.
#[must_use]
pub fn studentized_range_sf(q: f64, k: u32, df: f64) -> f64 {
    let Some(scale) = Scale::new(df).filter(|_| (2..=MOST_GROUPS).contains(&k) && !q.is_nan()) else {
        return f64::NAN;
    };
    if q <= 0.0 {
        return 1.0;
    }
    scale.mean(q + REACH, &|s| range_sf(q * s, k))
}

/// The value the studentized range exceeds with probability `tail`.
#[must_use]
pub fn studentized_range_upper(tail: f64, k: u32, df: f64) -> f64 {
    if !(tail > 0.0 && tail < 1.0 && df > 0.0 && (2..=MOST_GROUPS).contains(&k)) {
        return f64::NAN;
    }
    upper_point(tail, 3.0, &|q| studentized_range_sf(q, k, df))
}

/// Probability that the range of `k` standard normal values exceeds `width`.
///
/// k ∫ φ(z) [Φ(z)ᵏ⁻¹ − (Φ(z) − Φ(z−w))ᵏ⁻¹] dz; the bracket is Φ(z−w) Σ aⁱbᵏ⁻²⁻ⁱ with a, b the two bases, every
/// term positive.
fn range_sf(width: f64, k: u32) -> f64 {
    let integrand = |z: f64| {
        let (a, below) = (normal_cdf(z), normal_cdf(z - width));
        let b = normal_cdf_between(z - width, z);
        let mut sum = 0.0;
        let mut power_of_b = 1.0;
        // Horner in a and b together: Σ aⁱbᵏ⁻²⁻ⁱ.
        for _ in 0..k - 1 {
            sum = sum * a + power_of_b;
            power_of_b *= b;
        }
        normal_density(z) * below * sum
    };
    f64::from(k) * over_the_line(integrand)
}

/// Φ(high) − Φ(low) without cancellation in the upper tail.
fn normal_cdf_between(low: f64, high: f64) -> f64 {
    if low > 0.0 { normal_sf(low) - normal_sf(high) } else { normal_cdf(high) - normal_cdf(low) }
}

/// Probability that some |t| among comparisons with one shared control exceeds `t`.
///
/// Correlation of comparisons i and j is λᵢλⱼ, λ = √(n/(n + n₀)) with n the size of the own group and n₀ of the
/// control. 1 − E[∫ φ(z) Π {Φ((λᵢz + ts)/√(1−λᵢ²)) − Φ((λᵢz − ts)/√(1−λᵢ²))} dz].
/// Requires: each λ within 0 to 1; else NaN. Accuracy: 1e-10 absolute.
#[must_use]
pub fn dunnett_sf(t: f64, lambdas: &[f64], df: f64) -> f64 {
    let usable = !lambdas.is_empty() && lambdas.iter().all(|l| (0.0..1.0).contains(l)) && !t.is_nan();
    let Some(scale) = Scale::new(df).filter(|_| usable) else { return f64::NAN };
    let steepest = lambdas.iter().fold(1.0f64, |most, l| most.max(1.0 / (1.0 - l * l).sqrt()));
    let inside = |s: f64| {
        over_the_line(|z| {
            let all = lambdas.iter().map(|l| {
                let root = (1.0 - l * l).sqrt();
                normal_cdf_between((l * z - t * s) / root, (l * z + t * s) / root)
            });
            normal_density(z) * all.product::<f64>()
        })
    };
    (1.0 - scale.mean(t.abs() * steepest + REACH, &inside)).clamp(0.0, 1.0)
}

/// The |t| that some comparison exceeds with probability `tail`.
#[must_use]
pub fn dunnett_upper(tail: f64, lambdas: &[f64], df: f64) -> f64 {
    if !(tail > 0.0 && tail < 1.0) || dunnett_sf(1.0, lambdas, df).is_nan() {
        return f64::NAN;
    }
    upper_point(tail, 2.5, &|t| dunnett_sf(t, lambdas, df))
}

/// ∫ f dz over the whole line by the trapezoidal rule, for an f no wider than the normal density.
fn over_the_line(f: impl Fn(f64) -> f64) -> f64 {
    let mut sum = 0.0;
    let mut z = -REACH;
    while z <= REACH {
        sum += f(z);
        z += STEP;
    }
    sum * STEP
}
