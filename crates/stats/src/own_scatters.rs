//! The error of a difference within rounds where each build has a scatter of its own.
//!
//! Where one build has far more shots the common scatter is mostly its own, and says little of the other's.

use crate::choices::UNEQUAL_SHOTS;
use crate::describe::{mean, sum_of_squares};
use crate::real::square;

/// A standard error with its degrees of freedom.
#[derive(Debug, Clone, Copy)]
pub(crate) struct OwnScatters {
    pub(crate) se: f64,
    pub(crate) df: f64,
}

/// The shots of one build in one round.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Set {
    n: f64,
    mean: f64,
    squares: f64,
}

impl Set {
    pub(crate) fn of(values: &[f64]) -> Self {
        Self { n: values.len() as f64, mean: mean(values), squares: sum_of_squares(values) }
    }
}

/// Standard error and degrees of freedom with a scatter for each build, where one has far more shots.
///
/// Expected squares of residuals, E[RSS_A] = σ²_A Σ M²_AA + σ²_B Σ M²_AB and likewise for B, are solved for the two
/// variances (M takes out rounds and builds); Var d = Σ c²_A σ²_A + Σ c²_B σ²_B, its df by Satterthwaite from the
/// residual degrees of freedom of each build. Sources: C. R. Rao, J. Amer. Statist. Assoc. 65 (1970), 161–172, for
/// the variances; Satterthwaite (1946) for the df.
pub(crate) fn own_scatters(shared: &[[Set; 2]], information: f64, difference: f64) -> Option<OwnScatters> {
    let count = |side: usize| shared.iter().map(|sets| sets[side].n).sum::<f64>();
    let (most, fewest) = (count(0).max(count(1)), count(0).min(count(1)));
    if shared.len() < 2 || most <= UNEQUAL_SHOTS * fewest {
        return None;
    }
    let w = information;
    // Sums over the shared rounds: squares of residuals, residual df, squares of M within and across, of c.
    let (mut rss, mut df, mut own, mut cross, mut squares) = ([0.0; 2], [0.0; 2], [0.0; 2], 0.0, [0.0; 2]);
    let (mut all, mut all_squared) = ([0.0; 2], [0.0; 2]);
    for sets in shared {
        let n = sets[0].n + sets[1].n;
        let gap = sets[0].mean - sets[1].mean - difference;
        // Along the contrast, of unit length.
        let along = [sets[1].n / n / w.sqrt(), -sets[0].n / n / w.sqrt()];
        for side in [0, 1] {
            let Set { n: shots, squares: within, .. } = sets[side];
            let u = square(along[side]);
            rss[side] += within + shots * square(sets[1 - side].n / n * gap);
            df[side] += shots * (1.0 - 1.0 / n - u);
            own[side] += shots * square(1.0 - 1.0 / n - u) + shots * (shots - 1.0) * square(1.0 / n + u);
            all[side] += shots * u;
            all_squared[side] += square(shots * u);
            squares[side] += shots * u / w;
        }
        let (a, b) = (sets[0].n, sets[1].n);
        cross += a * b * square(1.0 / n + along[0] * along[1]) - a * b * square(along[0] * along[1]);
    }
    for side in [0, 1] {
        own[side] += square(all[side]) - all_squared[side];
    }
    cross += all[0] * all[1];
    let determinant = own[0] * own[1] - square(cross);
    let variance = |side: usize| {
        ((own[1 - side] * rss[side] - cross * rss[1 - side]) / determinant).max(0.0) * squares[side]
    };
    let parts = [variance(0), variance(1)];
    let total = parts[0] + parts[1];
    let freedom = square(total) / (square(parts[0]) / df[0] + square(parts[1]) / df[1]);
    (total > 0.0 && freedom.is_finite()).then(|| OwnScatters { se: total.sqrt(), df: freedom.max(1.0) })
}
