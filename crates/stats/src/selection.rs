//! The best of several builds looks better than it is: by how much, and what is left after taking that out.
//!
//! Sources: order statistics of the normal distribution (Tippett, Biometrika 17 (1925), 364–387); shrinkage in
//! the spirit of Efron and Morris, J. American Statistical Association 70 (1975), 311–319, own construction.

use crate::choices::{PRIOR_BUILDS, PRIOR_SHARE};
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

/// How much of a shown lead to believe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shrinkage {
    /// Variance of the true means among builds, as far as the session shows it.
    pub between: f64,
    /// Share of any lead between these builds that is likely true, within 0 to 1.
    pub share: f64,
}

impl Shrinkage {
    /// The lead a golfer should expect: share × shown lead.
    #[must_use]
    pub fn honest(&self, shown_lead: f64) -> f64 {
        self.share * shown_lead
    }
}

/// How far leads among these builds are likely true.
///
/// τ² = max(0, (SSB + ν₀(τ₀² + v))/(k − 1 + ν₀) − v), share = τ²/(τ² + v): the spread of the means, tempered by
/// `PRIOR_BUILDS` builds of experience that differ by τ₀ = `prior_sd`; v is the variance of one build's mean.
/// `None` below two builds, for values that are not finite, or v and τ₀ both zero.
#[must_use]
pub fn shrinkage(means: &[f64], variance_of_mean: f64, prior_sd: f64) -> Option<Shrinkage> {
    let v = variance_of_mean;
    if means.len() < 2 || !(v >= 0.0 && prior_sd >= 0.0) || means.iter().any(|mean| !mean.is_finite()) {
        return None;
    }
    let between_squares = crate::describe::sum_of_squares(means);
    let weight = (means.len() - 1) as f64 + PRIOR_BUILDS;
    let between = ((between_squares + PRIOR_BUILDS * (prior_sd * prior_sd + v)) / weight - v).max(0.0);
    let share = between / (between + v);
    share.is_finite().then_some(Shrinkage { between, share })
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

    /// τ² = (SSB + 3(τ₀² + v))/(k − 1 + 3) − v, with the three builds of experience.
    #[test]
    fn a_lead_is_shared_out_as_the_formula_says() {
        let found = shrinkage(&[1.0, 4.0, 10.0], 2.0, 3.0).expect("usable");
        let between = (42.0 + 3.0 * (9.0 + 2.0)) / 5.0 - 2.0;
        assert!(
            (found.between - between).abs() < 1e-12
                && (found.share - between / (between + 2.0)).abs() < 1e-12
        );
        assert!((found.honest(5.0) - 5.0 * found.share).abs() < 1e-12);
        let equal = shrinkage(&[4.0, 4.0], 2.0, 0.0).expect("usable");
        assert!(equal.between == 0.0 && equal.share == 0.0, "6/4 lies below 2");
        assert!(shrinkage(&[1.0], 2.0, 3.0).is_none() && shrinkage(&[], 2.0, 3.0).is_none());
        assert!(shrinkage(&[1.0, 1.0], 0.0, 0.0).is_none(), "nothing varies");
        assert!(shrinkage(&[1.0, 2.0], 0.0, 0.0).is_some_and(|found| found.share > 1.0 - 1e-15));
        assert!(shrinkage(&[1.0, 2.0], -1.0, 1.0).is_none() && shrinkage(&[1.0, 2.0], 1.0, -1.0).is_none());
        assert!(shrinkage(&[1.0, f64::NAN], 1.0, 1.0).is_none());
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
