//! Where a normal scatter on the ground puts its shots: chance of a strip, a rectangle, a circle.
//!
//! The density along one axis times the conditional probability along the other, integrated in panels.
//! Source: standard bivariate normal theory; golf shots have longer tails, so this is a picture, not a verdict.

use crate::count::whole;
use crate::distributions::{normal_cdf, normal_density, normal_sf};
use crate::points::{Covariance, Point};
use crate::quadrature::nodes;
use crate::real::{asin, sincos};
use std::f64::consts::FRAC_PI_2;

/// Standard deviations beyond which a normal value is never found (1e-17).
const REACH: f64 = 8.5;

/// Panels at most; each holds 20 nodes.
const MOST_PANELS: usize = 200;

/// A normal scatter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BivariateNormal {
    center: Point,
    sd_x: f64,
    /// Slope of y's conditional mean in standard deviations of x.
    lean: f64,
    /// Standard deviation of y given x.
    rest: f64,
    sd_y: f64,
}

/// From low to high along one axis; either end may be infinite.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl BivariateNormal {
    /// A scatter by center and covariance; `None` unless it has width in every direction.
    #[must_use]
    pub fn new(center: Point, covariance: Covariance) -> Option<BivariateNormal> {
        let (sd_x, sd_y) = (covariance.xx.sqrt(), covariance.yy.sqrt());
        let lean = covariance.xy / sd_x;
        let rest = (covariance.determinant() / covariance.xx).sqrt();
        let usable = sd_x > 0.0 && rest > 1e-7 * sd_y && rest.is_finite();
        (usable && center.x.is_finite() && center.y.is_finite()).then_some(BivariateNormal {
            center,
            sd_x,
            lean,
            rest,
            sd_y,
        })
    }

    /// Chance to finish within a range of y, whatever x.
    #[must_use]
    pub fn strip(&self, y: Stretch) -> f64 {
        let scaled = |end: f64| (end - self.center.y) / self.sd_y;
        between(scaled(y.low), scaled(y.high))
    }

    /// Chance to finish within a rectangle. Accuracy: 1e-11 absolute.
    #[must_use]
    pub fn rectangle(&self, x: Stretch, y: Stretch) -> f64 {
        let scaled = |end: f64| ((end - self.center.x) / self.sd_x).clamp(-REACH, REACH);
        let (low, high) = (scaled(x.low), scaled(x.high));
        if low.is_nan() || high.is_nan() || low >= high {
            return 0.0;
        }
        let steepness = 1.0 + self.lean.abs() / self.rest;
        let panels = whole((0.5 * (high - low) * steepness).ceil(), MOST_PANELS);
        let part = |z: f64| normal_density(z) * self.given(z, y);
        nodes(low, high, panels).iter().map(|node| node.weight * part(node.at)).sum()
    }

    /// Chance to finish within `radius` of a place. Accuracy: 1e-11 absolute.
    ///
    /// x = x₀ + r sin θ takes the square roots out of the chord's ends.
    #[must_use]
    pub fn circle(&self, middle: Point, radius: f64) -> f64 {
        if !(radius > 0.0 && radius.is_finite() && middle.x.is_finite() && middle.y.is_finite()) {
            return 0.0;
        }
        // Only where x is ever found: a huge circle would otherwise hide the scatter between two nodes.
        let angle = |z: f64| asin(((self.center.x + z * self.sd_x - middle.x) / radius).clamp(-1.0, 1.0));
        let (low, high) = (angle(-REACH).max(-FRAC_PI_2), angle(REACH).min(FRAC_PI_2));
        let steepness = radius * (1.0 / self.sd_x + (1.0 + self.lean.abs() / self.sd_x) / self.rest);
        let panels = whole((0.5 * (high - low) * steepness).ceil(), MOST_PANELS);
        let part = |theta: f64| {
            let (sin, cos) = sincos(theta);
            let z = (middle.x + radius * sin - self.center.x) / self.sd_x;
            let chord = Stretch { low: middle.y - radius * cos, high: middle.y + radius * cos };
            normal_density(z) * self.given(z, chord) * radius * cos / self.sd_x
        };
        nodes(low, high, panels).iter().map(|node| node.weight * part(node.at)).sum()
    }

    /// Chance of y within a range given x at `z` standard deviations.
    fn given(&self, z: f64, y: Stretch) -> f64 {
        let scaled = |end: f64| (end - self.center.y - self.lean * z) / self.rest;
        between(scaled(y.low), scaled(y.high))
    }
}

fn between(low: f64, high: f64) -> f64 {
    let chance =
        if low > 0.0 { normal_sf(low) - normal_sf(high) } else { normal_cdf(high) - normal_cdf(low) };
    if chance > 0.0 { chance } else { 0.0 }
}
