//! The distributions every test here rests on: normal, Student's t, F and chi-square.
//!
//! Small tails are survival functions of their own, never 1 − cdf. A quantile is asked for by the
//! probability *above* it, so that 1e-12 is as good an argument as 0.05. Arguments outside a
//! distribution's domain give NaN. Three special functions are statrs's: the incomplete beta, the incomplete gamma (with ln Γ) and the
//! inverse of erfc. Its distributions are not used: their quantiles can fail to end, their erfc is right to 1e-10 only.

use crate::real::{cbrt, exp, ln, ln_1p};
use crate::root::find_root;
use statrs::function::{beta, erf, gamma};
use std::f64::consts::{FRAC_1_SQRT_2, PI, SQRT_2};

/// Above this many degrees of freedom the incomplete beta function loses digits and Hill's expansion has
/// gained them: here both are right to 1e-11 down to tails of 1e-60.
const HILL_FROM_DF: f64 = 2000.0;

/// Above this many degrees of freedom the incomplete gamma ratio takes too long, and may not end; chi-square
/// is then as normal as its cube root.
const CUBE_ROOT_FROM_DF: f64 = 1e6;

/// Density of the standard normal distribution.
///
/// φ(z) = exp(−z²/2) / √(2π).
#[must_use]
pub fn normal_density(z: f64) -> f64 {
    exp(-0.5 * z * z) / (2.0 * PI).sqrt()
}

/// Probability that a standard normal value is larger than `z`.
///
/// 1 − Φ(z) = ½ erfc(z/√2). Accuracy: 1e-14 relative near the center, 1e-13 in both tails.
#[must_use]
pub fn normal_sf(z: f64) -> f64 {
    0.5 * libm::erfc(z * FRAC_1_SQRT_2)
}

/// Probability that a standard normal value is at most `z`.
#[must_use]
pub fn normal_cdf(z: f64) -> f64 {
    normal_sf(-z)
}

/// The value a standard normal variable exceeds with probability `tail`.
///
/// Requires: 0 < `tail` < 1. Accuracy: 1e-13 relative.
#[must_use]
pub fn normal_upper(tail: f64) -> f64 {
    if !(tail > 0.0 && tail < 1.0) {
        return f64::NAN;
    }
    SQRT_2 * erf::erfc_inv(2.0 * tail)
}

/// Probability that Student's t with `df` degrees of freedom is larger than `t`.
///
/// ½ I_x(df/2, ½) with x = df/(df + t²) for t ≥ 0.
/// Requires: `df` > 0. Accuracy: 1e-11 relative in the tail.
/// Source: incomplete beta by statrs; beyond 2000 df G. W. Hill, Algorithm 395, CACM 13 (1970), 617–619.
#[must_use]
pub fn t_sf(t: f64, df: f64) -> f64 {
    if t.is_nan() || df.is_nan() || df <= 0.0 {
        return f64::NAN;
    }
    if t < 0.0 {
        return 1.0 - t_sf(-t, df);
    }
    if df > HILL_FROM_DF {
        return normal_sf(hill(t, df));
    }
    // Near the center the complement carries the digits, in the tail the tail itself.
    let square = t * t;
    if square < 1.0 {
        0.5 * (1.0 - incomplete_beta(0.5, 0.5 * df, square / (df + square)))
    } else {
        0.5 * incomplete_beta(0.5 * df, 0.5, df / (df + square))
    }
}

/// The normal deviate with the same tail as `t` on `df` degrees of freedom (Hill 1970).
fn hill(t: f64, df: f64) -> f64 {
    let a = df - 0.5;
    let b = 48.0 * a * a;
    let y = a * ln_1p(t * t / df);
    let correction = (((-0.4 * y - 3.3) * y - 24.0) * y - 85.5) / (0.8 * y * y + 100.0 + b);
    ((correction + y + 3.0) / b + 1.0) * y.sqrt()
}

/// The value Student's t exceeds with probability `tail`.
///
/// Requires: 0 < `tail` < 1, `df` > 0. Accuracy: 1e-10 relative.
#[must_use]
pub fn t_upper(tail: f64, df: f64) -> f64 {
    if !(tail > 0.0 && tail < 1.0 && df > 0.0) {
        return f64::NAN;
    }
    if tail > 0.5 {
        return -t_upper(1.0 - tail, df);
    }
    let z = normal_upper(tail);
    if z <= 0.0 {
        return 0.0;
    }
    let guess = fisher_cornish(z, df);
    newton(tail, df, guess).unwrap_or_else(|| upper_point(tail, guess, &|t| t_sf(t, df)))
}

/// First terms of the expansion of t around the normal deviate (Fisher and Cornish, Technometrics 2 (1960)).
fn fisher_cornish(z: f64, df: f64) -> f64 {
    let square = z * z;
    z + z * (square + 1.0) / (4.0 * df) + z * ((5.0 * square + 16.0) * square + 3.0) / (96.0 * df * df)
}

/// Newton's method on ln P(T > t) against ln t, in which tails are nearly straight; `None` if it strays.
fn newton(tail: f64, df: f64, guess: f64) -> Option<f64> {
    let log_constant = gamma::ln_gamma(0.5 * (df + 1.0)) - gamma::ln_gamma(0.5 * df) - 0.5 * ln(df * PI);
    let mut t = guess;
    for _ in 0..6 {
        let density = exp(log_constant - 0.5 * (df + 1.0) * ln_1p(t * t / df));
        let sf = t_sf(t, df);
        let step = ln(sf / tail) * sf / (t * density);
        if !step.is_finite() || step.abs() > 1.0 {
            return None;
        }
        t *= exp(step);
        // The step after this one would be its square.
        if step.abs() < 1e-8 {
            return Some(t);
        }
    }
    None
}

/// Probability that F with `df1` and `df2` degrees of freedom is larger than `f`.
///
/// I_x(df2/2, df1/2) with x = df2/(df2 + df1 f). Requires: both df > 0. Accuracy: 1e-10 relative.
#[must_use]
pub fn f_sf(f: f64, df1: f64, df2: f64) -> f64 {
    if f <= 0.0 {
        return 1.0;
    }
    let (part, whole) = (df1 * f, df2 + df1 * f);
    if part.is_infinite() {
        return 0.0;
    }
    if part < df2 {
        1.0 - incomplete_beta(0.5 * df1, 0.5 * df2, part / whole)
    } else {
        incomplete_beta(0.5 * df2, 0.5 * df1, df2 / whole)
    }
}

/// Probability that F is at most `f`: the upper tail of 1/F with the degrees of freedom swapped.
#[must_use]
pub fn f_cdf(f: f64, df1: f64, df2: f64) -> f64 {
    if f <= 0.0 { 0.0 } else { f_sf(1.0 / f, df2, df1) }
}

/// The value F exceeds with probability `tail`.
#[must_use]
pub fn f_upper(tail: f64, df1: f64, df2: f64) -> f64 {
    if !(tail > 0.0 && tail < 1.0 && df1 > 0.0 && df2 > 0.0) {
        return f64::NAN;
    }
    upper_point(tail, 1.0, &|f| f_sf(f, df1, df2))
}

/// Probability that chi-square with `df` degrees of freedom is larger than `x`.
///
/// Q(df/2, x/2), the upper incomplete gamma ratio. Requires: `df` > 0.
/// Accuracy: 1e-11 relative; beyond a million df 1e-7 (Wilson and Hilferty, Proc. Natl. Acad. Sci. 17 (1931), 684–688).
#[must_use]
pub fn chi_square_sf(x: f64, df: f64) -> f64 {
    if x <= 0.0 {
        return 1.0;
    }
    if x.is_infinite() {
        return 0.0;
    }
    if df > CUBE_ROOT_FROM_DF {
        return normal_sf(cube_root(x, df));
    }
    gamma::checked_gamma_ur(0.5 * df, 0.5 * x).unwrap_or(f64::NAN)
}

/// The nearly normal deviate of chi-square by its cube root.
fn cube_root(x: f64, df: f64) -> f64 {
    let spread = 2.0 / (9.0 * df);
    (cbrt(x / df) - 1.0 + spread) / spread.sqrt()
}

/// The value chi-square exceeds with probability `tail`.
#[must_use]
pub fn chi_square_upper(tail: f64, df: f64) -> f64 {
    if !(tail > 0.0 && tail < 1.0 && df > 0.0) {
        return f64::NAN;
    }
    upper_point(tail, df, &|x| chi_square_sf(x, df))
}

fn incomplete_beta(a: f64, b: f64, x: f64) -> f64 {
    beta::checked_beta_reg(a, b, x).unwrap_or(f64::NAN)
}

/// The positive value that a variable with survival function `sf` exceeds with probability `tail`.
///
/// Solved for ln x, in which tails of every weight are nearly straight; the bracket grows by doubling.
/// Requires: `sf` falling from 1 at zero. Accuracy: that of `sf` over the slope of its logarithm.
pub(crate) fn upper_point(tail: f64, guess: f64, sf: &dyn Fn(f64) -> f64) -> f64 {
    let excess = |y: f64| ln(sf(exp(y)) / tail).clamp(-1e6, 1e6);
    let start = ln(guess);
    let (mut low, mut high) = (start, start);
    let mut step = 0.05;
    // 0.05 · 2^15 covers every positive double.
    for _ in 0..16 {
        let (above_low, above_high) = (excess(low) >= 0.0, excess(high) <= 0.0);
        if above_low && above_high {
            break;
        }
        if !above_low {
            low -= step;
        }
        if !above_high {
            high += step;
        }
        step *= 2.0;
    }
    find_root(low, high, 1e-14, &excess).map_or(f64::NAN, exp)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_forms_of_t_agree_where_they_meet() {
        for t in [0.01, 0.7, 2.0, 5.0, 12.0, 15.0] {
            let df = HILL_FROM_DF;
            let (by_beta, by_hill) = (t_sf(t, df), normal_sf(hill(t, df)));
            assert!((by_beta / by_hill - 1.0).abs() < 1e-11, "t = {t}: {by_beta:e} {by_hill:e}");
        }
    }

    /// The third term stands in the same paper; what comes after it is smaller by about z²/ν.
    #[test]
    fn the_first_guess_of_t_lacks_the_next_term_of_its_expansion() {
        for tail in [0.1, 0.025, 0.005] {
            let (z, df) = (normal_upper(tail), 100.0);
            let square = z * z;
            let next = z * (((3.0 * square + 19.0) * square + 17.0) * square - 15.0) / (384.0 * df * df * df);
            let lacking = (t_upper(tail, df) - fisher_cornish(z, df)) / next;
            assert!((lacking - 1.0).abs() < 0.1, "{tail}: {lacking}");
        }
    }

    #[test]
    fn newton_reaches_what_bracketing_finds_and_within_its_steps() {
        for df in [3.0, 4.5, 10.0, 60.0, 1500.0, 5000.0] {
            for tail in [0.3, 0.1, 0.025, 1e-3] {
                let guess = fisher_cornish(normal_upper(tail), df);
                let quick = newton(tail, df, guess).expect("near enough");
                let slow = upper_point(tail, guess, &|t| t_sf(t, df));
                assert!((quick / slow - 1.0).abs() < 1e-11, "{tail} {df}: {quick:e} {slow:e}");
            }
        }
        assert_eq!(newton(0.025, 5.0, 1e3), None, "too far off to trust");
    }

    #[test]
    fn chi_square_by_its_cube_root_agrees_where_it_takes_over() {
        let df = CUBE_ROOT_FROM_DF;
        for z in [-3.0, -1.0, 0.0, 0.5, 2.0, 4.0] {
            let x = df + z * (2.0 * df).sqrt();
            let by_gamma = gamma::checked_gamma_ur(0.5 * df, 0.5 * x).expect("within its domain");
            let by_root = normal_sf(cube_root(x, df));
            assert!((by_root / by_gamma - 1.0).abs() < 1e-5, "{z}: {by_root:e} {by_gamma:e}");
            assert!((chi_square_sf(x, 1.000_001 * df) / by_gamma - 1.0).abs() < 0.01, "{z}");
        }
    }

    #[test]
    fn an_argument_outside_its_domain_gives_no_number() {
        for tail in [0.0, 1.0, -0.1, 1.5, f64::NAN] {
            let found = [t_upper(tail, 3.0), f_upper(tail, 3.0, 2.0), chi_square_upper(tail, 3.0)];
            assert!(found.iter().all(|value| value.is_nan()), "{tail}: {found:?}");
            assert!(normal_upper(tail).is_nan());
        }
        for df in [0.0, -1.0, f64::NAN] {
            let found =
                [t_upper(0.1, df), f_upper(0.1, df, 2.0), f_upper(0.1, 2.0, df), chi_square_upper(0.1, df)];
            assert!(found.iter().all(|value| value.is_nan()), "{df}: {found:?}");
            assert!(t_sf(1.0, df).is_nan());
        }
        assert!(t_sf(f64::NAN, 3.0).is_nan());
    }

    #[test]
    fn quantiles_are_total() {
        for tail in [1e-300, 1e-20, 0.1, 0.5, 0.9, 1.0 - 1e-16] {
            for df in [1e-3, 0.5, 1.0, 3.7, 1e3, 1e9, 1e300] {
                let t = t_upper(tail, df);
                assert!(!t.is_nan() || df < 1.0, "{tail} {df}");
                let _ = (f_upper(tail, df, 2.0), f_upper(tail, 2.0, df), chi_square_upper(tail, df));
            }
        }
        assert!(t_upper(0.0, 3.0).is_nan() && t_upper(0.1, -1.0).is_nan() && normal_upper(1.0).is_nan());
    }
}
