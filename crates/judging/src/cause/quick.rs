//! The flight model near a session's own launches as a quadratic, for the thousand resamples behind an interval.
//!
//! carry ≈ c + g·x + ½ x'Hx around the average launch, by central differences over steps a golfer would call small.
//! For a quadratic Shapley's value of a pair is the slope at its midpoint times the difference. Used for intervals only:
//! the parts themselves come from the flights.

use crate::flying::VALUES;

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
    pub(super) fn around(
        center: [f64; VALUES],
        mut fly: impl FnMut(&[f64; VALUES]) -> Option<f64>,
    ) -> Option<Self> {
        let mut at = |moves: &[(usize, f64)]| {
            let mut values = center;
            for &(i, by) in moves {
                values[i] += by;
            }
            fly(&values)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cause::split::shapley;

    /// A quadratic with every slope and every curvature.
    fn bent(x: &[f64; VALUES]) -> f64 {
        let [speed, launch, spin, direction, axis] = *x;
        let (launch, spin) = (launch - 11.0, (spin - 2500.0) / 100.0);
        1.7 * speed + 3.0 * launch - 0.8 * spin + 0.4 * direction - 0.2 * axis + 0.01 * speed * speed
            - 0.5 * launch * launch
            - 0.03 * spin * spin
            - 0.07 * direction * direction
            + 0.02 * axis * axis
            + 0.05 * speed * launch
            - 0.004 * speed * spin
            - 0.3 * launch * spin
            + 0.06 * spin * axis
            - 0.09 * direction * axis
    }

    #[test]
    fn of_a_quadratic_the_parts_are_those_of_shapley() {
        let (from, to) = ([148.0, 10.0, 2300.0, -2.0, 3.0], [155.0, 13.5, 2900.0, 1.5, -4.0]);
        let quick = Quadratic::around([150.0, 12.0, 2600.0, 0.5, -1.0], |x| Some(bent(x))).expect("flies");
        let exact = shapley(&from, &to, |x| Some(bent(x))).expect("flies");
        for (part, exact) in quick.parts(&from, &to).into_iter().zip(exact) {
            assert!((part - exact).abs() < 1e-6 * exact.abs().max(1.0), "{part} {exact}");
        }
    }

    #[test]
    fn where_a_neighbor_does_not_fly_there_is_no_quadratic() {
        let center = [150.0, 12.0, 2600.0, 0.0, 0.0];
        for at in 0..VALUES {
            let grounded = |x: &[f64; VALUES]| (x[at] <= center[at]).then_some(1.0);
            assert!(Quadratic::around(center, grounded).is_none(), "{at}");
        }
    }
}
