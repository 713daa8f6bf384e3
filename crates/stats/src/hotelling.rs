//! Hotelling's comparison of two centers on the ground, long and wide at once.
//!
//! Supposes one covariance for both builds. Source: H. Hotelling, Annals of Mathematical Statistics 2 (1931),
//! 360–378.

use crate::difference::Refusal;
use crate::distributions::f_sf;
use crate::points::{Covariance, Point, Points};

/// Candidate's center − baseline's.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Hotelling {
    /// Difference of centers.
    pub difference: Point,
    /// Pooled covariance.
    pub pooled: Covariance,
    /// Squared distance of the centers in standard deviations of a shot (Mahalanobis).
    pub squared_distance: f64,
    /// T² = nm/(n+m) times that.
    pub t_squared: f64,
    /// F = T²(n+m−3)/(2(n+m−2)) on 2 and n+m−3 degrees of freedom.
    pub test: FTest,
}

/// An F statistic with its degrees of freedom.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct FTest {
    /// The statistic.
    pub f: f64,
    /// Degrees of freedom of the numerator.
    pub df1: f64,
    /// Degrees of freedom of the denominator.
    pub df2: f64,
}

impl FTest {
    /// P(F > f).
    #[must_use]
    pub fn p_value(&self) -> f64 {
        f_sf(self.f, self.df1, self.df2)
    }
}

/// Compares centers.
///
/// D² = d'S⁻¹d with S the pooled covariance. Accuracy: 1e-8 relative against tests/reference/stats/12.
///
/// # Errors
/// A scatter without width.
pub fn hotelling(candidate: &Points, baseline: &Points) -> Result<Hotelling, Refusal> {
    let (n, m) = (candidate.n() as f64, baseline.n() as f64);
    // At least one: each side has two points.
    let df2 = n + m - 3.0;
    let (a, b) = (candidate.covariance(), baseline.covariance());
    let pool = |a: f64, b: f64| ((n - 1.0) * a + (m - 1.0) * b) / (n + m - 2.0);
    let pooled = Covariance { xx: pool(a.xx, b.xx), xy: pool(a.xy, b.xy), yy: pool(a.yy, b.yy) };
    let d = Point {
        x: candidate.center().x - baseline.center().x,
        y: candidate.center().y - baseline.center().y,
    };
    // Across the longer axis there must be more than rounding, or the inverse is noise.
    if pooled.smallest() <= 1e-14 * pooled.largest() {
        return Err(Refusal::NoScatter);
    }
    let inside = d.x * d.x * pooled.yy - 2.0 * d.x * d.y * pooled.xy + d.y * d.y * pooled.xx;
    let squared_distance = inside / pooled.determinant();
    let t_squared = n * m / (n + m) * squared_distance;
    let f = t_squared * df2 / (2.0 * (n + m - 2.0));
    if !f.is_finite() {
        return Err(Refusal::OutOfRange);
    }
    Ok(Hotelling { difference: d, pooled, squared_distance, t_squared, test: FTest { f, df1: 2.0, df2 } })
}
