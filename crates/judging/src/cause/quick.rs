//! The flight model near a session's own launches as a quadratic, for the thousand resamples behind an interval.
//!
//! carry ≈ c + g·x + ½ x'Hx around the average launch, by central differences over steps a golfer would call small.
//! For a quadratic Shapley's value of a pair is the slope at its midpoint times the difference. Used for intervals only:
//! the parts themselves come from the flights.

use crate::flying::{VALUES, forward_yd};

/// Steps in mph, deg, rpm, deg, deg.
const STEPS: [f64; VALUES] = [2.0, 1.0, 200.0, 1.0, 2.0];

/// Slopes and curvatures of carry around one launch.
#[derive(Debug, Clone)]
pub(super) struct Quadratic {
    center: [f64; VALUES],
    slope: [f64; VALUES],
    curvature: [[f64; VALUES]; VALUES],
}

impl Quadratic {
    /// Around `center`; `None` where it or a neighbor does not fly.
    pub(super) fn around(center: [f64; VALUES]) -> Option<Self> {
        let at = |moves: &[(usize, f64)]| {
            let mut values = center;
            for &(i, by) in moves {
                values[i] += by;
            }
            forward_yd(&values)
        };
        let middle = at(&[])?;
        let mut slope = [0.0; VALUES];
        let mut curvature = [[0.0; VALUES]; VALUES];
        for i in 0..VALUES {
            let h = STEPS[i];
            let (up, down) = (at(&[(i, h)])?, at(&[(i, -h)])?);
            slope[i] = (up - down) / (2.0 * h);
            curvature[i][i] = (up - 2.0 * middle + down) / (h * h);
            for j in 0..i {
                let k = STEPS[j];
                let both = at(&[(i, h), (j, k)])? - at(&[(i, h), (j, -k)])? - at(&[(i, -h), (j, k)])?
                    + at(&[(i, -h), (j, -k)])?;
                curvature[i][j] = both / (4.0 * h * k);
                curvature[j][i] = curvature[i][j];
            }
        }
        Some(Self { center, slope, curvature })
    }

    /// Slope along one number, halfway between two launches.
    pub(super) fn slope_between(&self, i: usize, from: &[f64; VALUES], to: &[f64; VALUES]) -> f64 {
        let bend: f64 =
            (0..VALUES).map(|j| self.curvature[i][j] * (0.5 * (from[j] + to[j]) - self.center[j])).sum();
        self.slope[i] + bend
    }

    /// Shapley's value of each number for a pair, as the quadratic sees it.
    pub(super) fn parts(&self, from: &[f64; VALUES], to: &[f64; VALUES]) -> [f64; VALUES] {
        std::array::from_fn(|i| (to[i] - from[i]) * self.slope_between(i, from, to))
    }
}
