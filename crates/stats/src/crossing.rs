//! How often a test that is looked at on the way ends at each of its looks.
//!
//! A Brownian path meets a boundary at each look. What comes in at the door is the chance of each look taken
//! alone, as the t test of that day has it; the path supplies only how looks hang together. One side only: the
//! chance of stopping on the wrong side is far below a percent where a plan is worth its name.
//! Source: the recursion of Armitage, McPherson and Rowe (see `looks`), with boundaries fit to given chances,
//! own construction.

use crate::distributions::{normal_density, normal_sf, normal_upper};
use crate::quadrature::{Node, nodes};

/// The path is followed this far, in standard deviations.
const FAR: f64 = 8.0;
/// Panels of twenty nodes along the path; steps between looks are rarely below a tenth.
const PANELS: usize = 8;

/// An interim analysis of a test, and the chance that it would end it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InterimChance {
    /// Share of all rounds that are in, above 0 and at most 1, rising.
    pub time: f64,
    /// Chance that this look alone, had there been no other, ends the test.
    pub alone: f64,
}

/// Chance that the test ends at each look and not before, in the order of the looks.
///
/// Drift and boundaries are in the chances already; of the path only the correlation √(tᵢ/tⱼ) of looks is left.
/// A time that does not rise ends nothing.
#[must_use]
pub fn ends_at(looks: &[InterimChance]) -> Vec<f64> {
    let mut ends = Vec::with_capacity(looks.len());
    let mut path = vec![Node { at: 0.0, weight: 1.0 }];
    let mut before = 0.0;
    for (index, look) in looks.iter().enumerate() {
        let step = (look.time - before).sqrt();
        if step.is_nan() || step <= 0.0 {
            ends.push(0.0);
            continue;
        }
        // Without drift: a boundary that the path alone exceeds with the given chance; never as far as `FAR`.
        let bound = normal_upper(look.alone.clamp(1e-12, 1.0 - 1e-12)) * look.time.sqrt();
        ends.push(path.iter().map(|going| going.weight * normal_sf((bound - going.at) / step)).sum());
        if index + 1 < looks.len() {
            path = carried(&path, step, bound, look.time.sqrt());
        }
        before = look.time;
    }
    ends
}

/// The path one step on, among tests that did not end.
fn carried(path: &[Node], step: f64, bound: f64, spread: f64) -> Vec<Node> {
    let density = |w: f64| {
        path.iter().map(|going| going.weight * normal_density((w - going.at) / step)).sum::<f64>() / step
    };
    nodes(-FAR * spread, bound, PANELS)
        .iter()
        .map(|node| Node { at: node.at, weight: node.weight * density(node.at) })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::distributions::normal_cdf;

    /// Chance of an end at any look.
    fn ever_ends(looks: &[InterimChance]) -> f64 {
        ends_at(looks).iter().sum()
    }

    /// Chance that at least one of two looks ends, for a check by hand: both by the bivariate normal.
    fn either(first: InterimChance, last: InterimChance) -> f64 {
        let (a, b) = (normal_upper(first.alone), normal_upper(last.alone));
        let rho = (first.time / last.time).sqrt();
        let both: f64 = nodes(a, 12.0, 40)
            .iter()
            .map(|n| {
                n.weight * normal_density(n.at) * normal_cdf((rho * n.at - b) / (1.0 - rho * rho).sqrt())
            })
            .sum();
        first.alone + last.alone - both
    }

    #[test]
    fn one_look_ends_as_often_as_it_does_alone() {
        for alone in [0.02, 0.5, 0.9] {
            assert!((ever_ends(&[InterimChance { time: 1.0, alone }]) - alone).abs() < 1e-12);
        }
    }

    #[test]
    fn two_looks_agree_with_the_bivariate_normal() {
        for (t, one, other) in [(0.5, 0.1, 0.6), (0.33, 0.02, 0.8), (0.8, 0.6, 0.7)] {
            let (first, last) =
                (InterimChance { time: t, alone: one }, InterimChance { time: 1.0, alone: other });
            let got = ever_ends(&[first, last]);
            let expected = either(first, last);
            assert!((got - expected).abs() < 1e-6, "{t}: {got} for {expected}");
        }
    }

    #[test]
    fn more_looks_never_end_less_often_and_never_more_than_their_sum() {
        let looks: Vec<InterimChance> =
            (2..=8).map(|r| InterimChance { time: f64::from(r) / 8.0, alone: 0.05 * f64::from(r) }).collect();
        let mut before = 0.0;
        for many in 1..=looks.len() {
            let ever = ever_ends(&looks[..many]);
            assert!(ever > before && ever <= looks[..many].iter().map(|l| l.alone).sum::<f64>() + 1e-9);
            before = ever;
        }
    }

    #[test]
    fn nonsense_ends_nothing() {
        assert!(ends_at(&[]).is_empty());
        assert_eq!(ends_at(&[InterimChance { time: f64::NAN, alone: 0.5 }]), [0.0]);
    }
}
