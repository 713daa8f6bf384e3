//! The best of several builds looks better than it is: by how much. What is left after taking that out is `pulled`.
//!
//! Source: order statistics of the normal distribution (Tippett, Biometrika 17 (1925), 364–387).

use crate::choices::PRIOR_SHARE;
use crate::distributions::{normal_cdf, normal_density};
use crate::quadrature::nodes;
use crate::real::pow;

/// Builds beyond this are not a session.
const MOST: usize = 10_000;

/// Expected value of the largest of `k` standard normal values: 0.564 for 2, 1.267 for 6.
///
/// E = ∫ z k φ(z) Φ(z)ᵏ⁻¹ dz. Times the standard error of a mean it is how far the best of k equal builds stands
/// above the truth on average; twice that is its expected gap to the worst. Accuracy: 1e-12.
/// 0 for `k` below 2; counted as 10,000 above that.
#[must_use]
pub fn expected_best(k: usize) -> f64 {
    if k < 2 {
        return 0.0;
    }
    let k = k.min(MOST) as f64;
    let part = |z: f64| z * k * normal_density(z) * pow(normal_cdf(z), k - 1.0);
    nodes(-9.0, 9.0, 24).iter().map(|node| node.weight * part(node.at)).sum()
}

/// Chance that the best of `k` candidates leads the baseline by at least `lead` when all are equal.
///
/// 1 − ∫ φ(y) Φ(lead + y)ᵏ dy, every average with the same error and `lead` counted in it; with one candidate that is
/// P(Z ≥ lead/√2). Accuracy: 1e-12. 0 without candidates, not a number for a lead that is none.
#[must_use]
pub fn best_lead_chance(k: usize, lead: f64) -> f64 {
    if k == 0 {
        return 0.0;
    }
    let k = k.min(MOST) as f64;
    let none = |y: f64| normal_density(y) * pow(normal_cdf(lead + y), k);
    let all: f64 = nodes(-9.0, 9.0, 24).iter().map(|node| node.weight * none(node.at)).sum();
    if lead.is_nan() { f64::NAN } else { (1.0 - all).clamp(0.0, 1.0) }
}

/// The prior spread of true means where nothing better is known: a share of a single shot's deviation.
#[must_use]
pub fn usual_prior_sd(sd_of_shot: f64) -> f64 {
    PRIOR_SHARE * sd_of_shot
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::distributions::normal_sf;

    #[test]
    fn the_best_of_one_is_an_ordinary_difference() {
        for lead in [-1.0, 0.0, 1.0, 2.5] {
            assert!((best_lead_chance(1, lead) - normal_sf(lead / 2f64.sqrt())).abs() < 1e-12, "{lead}");
        }
    }

    #[test]
    fn builds_differ_by_a_share_of_a_shot() {
        assert!((usual_prior_sd(11.5) - 0.35 * 11.5).abs() < 1e-12);
    }

    #[test]
    fn the_best_of_k_leads_in_k_of_k_and_one_cases() {
        for k in 1..9 {
            let expected = k as f64 / (k as f64 + 1.0);
            assert!((best_lead_chance(k, 0.0) - expected).abs() < 1e-12, "{k}");
        }
        assert!(best_lead_chance(0, 0.0) == 0.0 && best_lead_chance(2, f64::NAN).is_nan());
    }
}
