//! Gauss–Legendre quadrature, and the mean of a function of a standard deviation's sampling error.

use crate::count::whole;
use crate::real::{exp, exp_m1, ln};
use crate::root::find_root;

/// Where the logarithm of a density has fallen this far below its peak, nothing is left at 1e-18.
const NEGLIGIBLE: f64 = 42.0;

/// More panels or steps than this only arise for arguments without use; accuracy then falls, time does not grow.
const MOST_PANELS: usize = 400;
const MOST_STEPS: usize = 8000;

/// One place at which a function is asked, and how much the answer counts.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Node {
    pub(crate) at: f64,
    pub(crate) weight: f64,
}

/// The positive half of 20-point Gauss–Legendre on −1..1, exact for polynomials up to degree 39.
///
/// Source: roots of the Legendre polynomial to 40 digits (mpmath); Abramowitz and Stegun table 25.4.
const HALF: [Node; 10] = [
    Node { at: 0.07652652113349734, weight: 0.15275338713072584 },
    Node { at: 0.22778585114164507, weight: 0.14917298647260374 },
    Node { at: 0.37370608871541955, weight: 0.14209610931838204 },
    Node { at: 0.5108670019508271, weight: 0.13168863844917664 },
    Node { at: 0.636053680726515, weight: 0.11819453196151843 },
    Node { at: 0.7463319064601508, weight: 0.10193011981724044 },
    Node { at: 0.8391169718222188, weight: 0.08327674157670475 },
    Node { at: 0.912234428251326, weight: 0.06267204833410907 },
    Node { at: 0.9639719272779138, weight: 0.04060142980038694 },
    Node { at: 0.9931285991850949, weight: 0.017614007139152118 },
];

/// Nodes of 20-point Gauss–Legendre on each of `panels` equal parts of low..high.
pub(crate) fn nodes(low: f64, high: f64, panels: usize) -> Vec<Node> {
    let panels = panels.clamp(1, MOST_PANELS);
    let half = 0.5 * (high - low) / panels as f64;
    let mut all = Vec::with_capacity(panels * 2 * HALF.len());
    for panel in 0..panels {
        let center = low + half * (2 * panel + 1) as f64;
        for node in HALF {
            all.push(Node { at: center - half * node.at, weight: half * node.weight });
            all.push(Node { at: center + half * node.at, weight: half * node.weight });
        }
    }
    all
}

/// The distribution of s = χ/√df, the ratio of an estimated standard deviation to the true one, by u = ln s.
///
/// g(u) = exp(df·(u − (e²ᵘ − 1)/2)), up to a constant: smooth for every df. Its own integral takes the place of
/// the gamma function and spares that one's rounding.
pub(crate) struct Scale {
    df: f64,
    low: f64,
    high: f64,
}

impl Scale {
    /// `None` unless `df` > 0.
    pub(crate) fn new(df: f64) -> Option<Scale> {
        if df.is_nan() || df <= 0.0 {
            return None;
        }
        let fallen = |u: f64| df * log_shape(u) + NEGLIGIBLE;
        let low = find_root(-NEGLIGIBLE / df - 0.5, 0.0, 1e-3, &fallen)?;
        let high = find_root(0.0, (NEGLIGIBLE / df).sqrt(), 1e-3, &fallen)?;
        Some(Scale { df, low, high })
    }

    /// E[f(s)] for a smooth f by the trapezoidal rule, which converges geometrically here.
    ///
    /// `steepness` is the largest |df/d ln s| that needs resolving. Accuracy: 1e-13 for |f| ≤ 1.
    pub(crate) fn mean(&self, steepness: f64, f: &dyn Fn(f64) -> f64) -> f64 {
        // A Gaussian as narrow as density and function together, at 0.6 of its SD: error exp(−2π²/0.36).
        let step = 0.6 / (2.0 * self.df + steepness * steepness).sqrt();
        let steps = whole(((self.high - self.low) / step).ceil(), MOST_STEPS).max(1);
        let width = (self.high - self.low) / steps as f64;
        let (mut sum, mut mass) = (0.0, 0.0);
        for i in 0..=steps {
            let u = self.low + i as f64 * width;
            let density = exp(self.df * log_shape(u));
            sum += density * f(exp(u));
            mass += density;
        }
        sum / mass
    }

    /// E[f(s); s < limit] for an f that ends, perhaps with a kink, at `limit`. Accuracy: 1e-12 for |f| ≤ 1.
    pub(crate) fn mean_below(&self, limit: f64, steepness: f64, f: &dyn Fn(f64) -> f64) -> f64 {
        if limit.is_nan() || limit <= exp(self.low) {
            return 0.0;
        }
        let mass = self.integral(self.high, 0.0, &|_| 1.0);
        self.integral(self.high.min(ln(limit)), steepness, f) / mass
    }

    /// Values of s between two of its values, each with its share of the density up to one common factor.
    pub(crate) fn places(&self, from: f64, to: f64, panels: usize) -> Vec<Node> {
        let low = if from > 0.0 { ln(from).max(self.low) } else { self.low };
        let high = if to < f64::INFINITY { ln(to).min(self.high) } else { self.high };
        // Also where either is not a number.
        if low.partial_cmp(&high) != Some(std::cmp::Ordering::Less) {
            return Vec::new();
        }
        let place =
            |node: &Node| Node { at: exp(node.at), weight: node.weight * exp(self.df * log_shape(node.at)) };
        nodes(low, high, panels).iter().map(place).collect()
    }

    fn integral(&self, high: f64, steepness: f64, f: &dyn Fn(f64) -> f64) -> f64 {
        let wanted = (high - self.low) * (0.5 * self.df.sqrt() + steepness / 3.0);
        let part = |node: &Node| node.weight * exp(self.df * log_shape(node.at)) * f(exp(node.at));
        nodes(self.low, high, whole(wanted.ceil(), MOST_PANELS)).iter().map(part).sum()
    }
}

/// Logarithm of the density of u per degree of freedom, 0 at its peak.
fn log_shape(u: f64) -> f64 {
    u - 0.5 * exp_m1(2.0 * u)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::distributions::{chi_square_sf, normal_cdf};
    use crate::real::pow;

    #[test]
    fn integrates_polynomials_exactly() {
        let sum: f64 = nodes(0.0, 2.0, 1).iter().map(|node| node.weight * pow(node.at, 39.0)).sum();
        assert!((sum / (pow(2.0, 40.0) / 40.0) - 1.0).abs() < 1e-13);
    }

    #[test]
    fn the_mean_square_of_the_scale_is_one_by_either_rule() {
        for df in [1.0, 2.5, 8.0, 100.0, 1e6] {
            let scale = Scale::new(df).expect("positive");
            let (by_steps, by_panels) = (scale.mean(8.0, &|s| s * s), scale.mean_below(1e9, 8.0, &|s| s * s));
            assert!((by_steps - 1.0).abs() < 1e-12, "df {df}: {by_steps}");
            assert!((by_panels - 1.0).abs() < 1e-12, "df {df}: {by_panels}");
        }
    }

    #[test]
    fn places_share_the_density_out_where_it_is_cut() {
        for df in [1.0, 3.0, 12.0, 100.0] {
            let scale = Scale::new(df).expect("positive");
            let weight = |from, to| scale.places(from, to, 20).iter().map(|node| node.weight).sum::<f64>();
            let all = weight(0.0, f64::INFINITY);
            for cut in [0.7, 1.0, 1.3] {
                let (below, above) = (weight(0.0, cut) / all, weight(cut, f64::INFINITY) / all);
                let tail = chi_square_sf(df * cut * cut, df);
                assert!((above - tail).abs() < 1e-10 && (below + tail - 1.0).abs() < 1e-10, "{df} {cut}");
                let mean = scale.mean_below(cut, 8.0, &|_| 1.0);
                assert!((mean + tail - 1.0).abs() < 1e-10, "{df} {cut}: {mean}");
            }
            assert!(scale.places(1.0, 1.0, 2).is_empty() && scale.places(1.3, 0.7, 2).is_empty());
            assert!(scale.places(f64::INFINITY, f64::INFINITY, 2).is_empty());
            for nothing in [0.0, -1.0, f64::NAN] {
                assert!(scale.mean_below(nothing, 8.0, &|_| 1.0) == 0.0, "{nothing}");
            }
        }
        assert!(Scale::new(0.0).is_none() && Scale::new(-1.0).is_none() && Scale::new(f64::NAN).is_none());
    }

    #[test]
    fn a_steep_function_is_resolved_alike_by_both_rules() {
        for (df, t, delta) in
            [(1.0, 2.0, 1.0), (4.0, 3.0, 12.0), (60.0, 2.0, 4.0), (1e4, 3.0, 40.0), (3.0, 50.0, 40.0)]
        {
            let scale = Scale::new(df).expect("positive");
            let f = |s: f64| normal_cdf(t * s - delta);
            let gap = scale.mean(delta + 8.0, &f) - scale.mean_below(1e9, delta + 8.0, &f);
            assert!(gap.abs() < 1e-12, "df {df}, delta {delta}: {gap:e}");
        }
    }
}
