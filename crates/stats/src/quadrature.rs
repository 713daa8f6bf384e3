//! Gauss–Legendre quadrature, and the mean of a function of a standard deviation's sampling error.
//!
//! Source: nodes by Newton's method on the Legendre recursion (Abramowitz and Stegun 25.4.29).

use crate::count::whole;
use crate::root::find_root;
use std::f64::consts::PI;

/// Points per panel; a panel integrates polynomials up to degree 39 exactly.
const POINTS: usize = 20;

/// Where the logarithm of a density has fallen this far below its peak, nothing is left at 1e-18.
const NEGLIGIBLE: f64 = 42.0;

/// More panels than this only arise for arguments without use; accuracy then falls, time does not grow.
const MOST_PANELS: usize = 400;

/// One place at which a function is asked, and how much the answer counts.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Node {
    pub(crate) at: f64,
    pub(crate) weight: f64,
}

/// Nodes of `POINTS`-point Gauss–Legendre quadrature on each of `panels` equal parts of low..high.
pub(crate) fn nodes(low: f64, high: f64, panels: usize) -> Vec<Node> {
    let panels = panels.clamp(1, MOST_PANELS);
    let half = 0.5 * (high - low) / panels as f64;
    let unit = unit_nodes();
    let mut all = Vec::with_capacity(panels * POINTS);
    for panel in 0..panels {
        let center = low + half * (2 * panel + 1) as f64;
        all.extend(unit.iter().map(|node| Node { at: center + half * node.at, weight: half * node.weight }));
    }
    all
}

/// Nodes on −1..1.
fn unit_nodes() -> Vec<Node> {
    let n = POINTS as f64;
    let node = |i: usize| {
        let mut x = (PI * (i as f64 + 0.75) / (n + 0.5)).cos();
        let mut slope = 1.0;
        // Five steps reach the last bit from this start for every n.
        for _ in 0..5 {
            let (mut p, mut before) = (1.0, 0.0);
            for j in 0..POINTS {
                let next = ((2 * j + 1) as f64 * x * p - j as f64 * before) / (j + 1) as f64;
                (before, p) = (p, next);
            }
            slope = n * (x * p - before) / (x * x - 1.0);
            x -= p / slope;
        }
        Node { at: x, weight: 2.0 / ((1.0 - x * x) * slope * slope) }
    };
    (0..POINTS).map(node).collect()
}

/// Mean of `f(s)` where s is χ/√df, the ratio of an estimated standard deviation to the true one.
///
/// ∫ f(eᵘ) g(u) du / ∫ g(u) du, g(u) = exp(df·(u − (e²ᵘ − 1)/2)): on the logarithmic scale the density is
/// smooth for every df, and dividing by its own integral spares the gamma function and its rounding.
/// Only s below `limit` counts (the integrand may have a kink there). `steepness` is the largest
/// |df(s)/d ln s| that needs resolving.
/// Requires: `df` > 0. Accuracy: 1e-12 absolute for |f| ≤ 1.
pub(crate) fn mean_over_scale(df: f64, limit: f64, steepness: f64, f: &dyn Fn(f64) -> f64) -> f64 {
    let log_density = |u: f64| df * (u - 0.5 * (2.0 * u).exp_m1());
    let fallen = |u: f64| log_density(u) + NEGLIGIBLE;
    let low = find_root(-NEGLIGIBLE / df - 0.5, 0.0, 1e-3, &fallen);
    let high = find_root(0.0, (NEGLIGIBLE / df).sqrt(), 1e-3, &fallen);
    let (Some(low), Some(high)) = (low, high) else { return f64::NAN };
    let panels = |high: f64, steepness: f64| {
        let wanted = (high - low) * (df.sqrt() + steepness / 3.0);
        nodes(low, high, whole(wanted.ceil(), MOST_PANELS))
    };
    let mass: f64 = panels(high, 0.0).iter().map(|node| node.weight * log_density(node.at).exp()).sum();
    let top = if limit < high.exp() { limit.ln() } else { high };
    if top.is_nan() || top <= low {
        return 0.0;
    }
    let part = |node: &Node| node.weight * log_density(node.at).exp() * f(node.at.exp());
    panels(top, steepness).iter().map(part).sum::<f64>() / mass
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn integrates_polynomials_exactly() {
        let sum: f64 = nodes(0.0, 2.0, 1).iter().map(|node| node.weight * node.at.powi(39)).sum();
        assert!((sum / (2f64.powi(40) / 40.0) - 1.0).abs() < 1e-13);
    }

    #[test]
    fn the_mean_square_of_the_scale_is_one() {
        for df in [1.0, 2.5, 8.0, 100.0, 1e6] {
            let mean = mean_over_scale(df, f64::INFINITY, 8.0, &|s| s * s);
            assert!((mean - 1.0).abs() < 1e-12, "df {df}: {mean}");
        }
    }
}
