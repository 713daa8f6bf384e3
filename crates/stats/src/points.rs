//! Shots as points on the ground: center, covariance, ellipse.
//!
//! Two ellipses: where a normal scatter with this center and covariance puts a share of its shots (chi-square), and the
//! wider one where the next shot falls, which allows for what few shots leave unknown of both. Source: standard
//! multivariate normal theory (Anderson, An Introduction to Multivariate Statistical Analysis, 2003).

use crate::describe::mean;
use crate::distributions::{chi_square_upper, f_upper};
use crate::real::{atan2, hypot};
use crate::sample::{SampleError, check_value};

/// At least two points, checked once at the door.
#[derive(Debug, Clone, PartialEq)]
pub struct Points {
    n: usize,
    center: Point,
    covariance: Covariance,
}

/// A place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Along the first axis.
    pub x: f64,
    /// Along the second axis.
    pub y: f64,
}

/// Variances and covariance with divisor n − 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Covariance {
    /// Variance along the first axis.
    pub xx: f64,
    /// Covariance.
    pub xy: f64,
    /// Variance along the second axis.
    pub yy: f64,
}

/// An ellipse around a center.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Ellipse {
    /// Its center.
    pub center: Point,
    /// Half the longer axis.
    pub major: f64,
    /// Half the shorter axis.
    pub minor: f64,
    /// Angle of the longer axis from the first axis, degrees in (−90, 90].
    pub angle_deg: f64,
}

impl Covariance {
    /// xx·yy − xy².
    #[must_use]
    pub fn determinant(&self) -> f64 {
        self.xx * self.yy - self.xy * self.xy
    }

    /// Variance along the longer axis of the scatter.
    #[must_use]
    pub fn largest(&self) -> f64 {
        0.5 * (self.xx + self.yy) + hypot(0.5 * (self.xx - self.yy), self.xy)
    }

    /// Variance across it, without cancellation: determinant / largest.
    #[must_use]
    pub fn smallest(&self) -> f64 {
        let largest = self.largest();
        if largest > 0.0 { (self.determinant() / largest).max(0.0) } else { 0.0 }
    }
}

impl Points {
    /// Takes coordinates, as many of each; what is beyond the shorter list does not count.
    ///
    /// # Errors
    /// Fewer than two points, a coordinate that is not finite or too large.
    pub fn new(x: &[f64], y: &[f64]) -> Result<Points, SampleError> {
        let n = x.len().min(y.len());
        if n < 2 {
            return Err(SampleError::TooFew { got: n, need: 2 });
        }
        let (x, y) = (&x[..n], &y[..n]);
        for (index, (&x, &y)) in x.iter().zip(y).enumerate() {
            check_value(index, x)?;
            check_value(index, y)?;
        }
        let center = Point { x: mean(x), y: mean(y) };
        let products = |a: &[f64], ma: f64, b: &[f64], mb: f64| {
            a.iter().zip(b).map(|(a, b)| (a - ma) * (b - mb)).sum::<f64>() / (n - 1) as f64
        };
        let covariance = Covariance {
            xx: products(x, center.x, x, center.x),
            xy: products(x, center.x, y, center.y),
            yy: products(y, center.y, y, center.y),
        };
        Ok(Points { n, center, covariance })
    }

    /// Number of points.
    #[must_use]
    pub fn n(&self) -> usize {
        self.n
    }

    /// Means of both coordinates.
    #[must_use]
    pub fn center(&self) -> Point {
        self.center
    }

    /// Covariance with divisor n − 1.
    #[must_use]
    pub fn covariance(&self) -> Covariance {
        self.covariance
    }

    /// Where a normal scatter like this puts `share` of its shots; `None` for a share not between 0 and 1.
    ///
    /// Half axes √(q λ), q = −2 ln(1 − share), λ the variances along and across.
    #[must_use]
    pub fn ellipse(&self, share: f64) -> Option<Ellipse> {
        is_share(share).then(|| self.at_distance(chi_square_upper(1.0 - share, 2.0)))
    }

    /// Where the next point falls with chance `share`, when center and scatter are known from these points alone;
    /// `None` for a share not between 0 and 1 and for fewer than three points.
    ///
    /// Half axes √(q λ), q = (n + 1)/n · 2(n − 1)/(n − 2) · F with 2 and n − 2 degrees of freedom. Exact for normal
    /// points. Source: Hotelling's T² of a new observation, textbook (Anderson 2003, section 5.2).
    #[must_use]
    pub fn prediction_ellipse(&self, share: f64) -> Option<Ellipse> {
        if !is_share(share) || self.n < 3 {
            return None;
        }
        let n = self.n as f64;
        let wider = (n + 1.0) / n * (2.0 * (n - 1.0) / (n - 2.0));
        Some(self.at_distance(wider * f_upper(1.0 - share, 2.0, n - 2.0)))
    }

    /// The points at a squared distance from the center, in units of the scatter.
    fn at_distance(&self, q: f64) -> Ellipse {
        let c = &self.covariance;
        Ellipse {
            center: self.center,
            major: (q * c.largest()).sqrt(),
            minor: (q * c.smallest()).sqrt(),
            angle_deg: (0.5 * atan2(2.0 * c.xy, c.xx - c.yy)).to_degrees(),
        }
    }
}

fn is_share(share: f64) -> bool {
    share > 0.0 && share < 1.0
}
