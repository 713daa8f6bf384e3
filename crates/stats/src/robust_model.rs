//! Least squares that a few stray values do not carry away: Huber's M-estimate with the scale from the residuals' median.
//!
//! Values within 1.345 scales of the fit count in full, those beyond with a weight that falls with their distance: where
//! all is normal the estimate has 95 % of the efficiency of a mean, and one mishit moves it by little.
//! Source: P. J. Huber, Robust Statistics (1981), 7.6 and 7.10; errors by his correction K, (7.6.5 there).

use crate::describe::median;
use crate::difference::{Refusal, TDifference};
use crate::linear_model::{Intercept, coefficients, design, linear_model};
use crate::real::square;

/// Residuals beyond this many scales weigh less. Source: 95 % efficiency for normal values (Huber 1981).
pub const HUBER_K: f64 = 1.345;

/// The median of |z| for a standard normal z.
const MEDIAN_OF_NORMAL: f64 = 0.674_489_750_196_081_7;

/// Rounds of reweighting at most. A fit that still moves after them is given as it stands: it moves by less than a
/// thousandth of its own error.
const MOST_ROUNDS: usize = 200;

/// A round that moves no fitted value by more than this many scales ends the search.
const SETTLED: f64 = 1e-11;

/// A fitted model that weighs stray values less.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct RobustModel {
    /// Coefficient of each column, the intercept first, as a difference from zero on the residual df.
    pub terms: Vec<TDifference>,
    /// Scale of the residuals: their median distance from the fit, as a normal standard deviation.
    pub scale: f64,
    /// Weight of each observation, 1 for all that lie near the fit.
    pub weights: Vec<f64>,
}

/// Fits y = Xβ + e by Huber's psi; `columns` are those of X without the constant.
///
/// Errors: K² · (Σψ²·s²/(n − p)) / (mean ψ′)² · (XᵀX)⁻¹, K = 1 + p/n · var ψ′/(mean ψ′)². Accuracy: 1e-7 relative
/// against tests/reference/stats/20_robust_model.json.
///
/// # Errors
/// As [`linear_model`]; no scatter also where more than half of the values lie exactly on the fit.
pub fn robust_model(y: &[f64], columns: &[Vec<f64>], intercept: Intercept) -> Result<RobustModel, Refusal> {
    let plain = linear_model(y, columns, intercept)?;
    let x = design(y.len(), columns, intercept);
    let mut beta: Vec<f64> = plain.terms.iter().map(|term| term.diff).collect();
    let mut residuals = residuals(y, &x, &beta);
    let mut scale = scale_of(&residuals, plain.residual_sd())?;
    for _ in 0..MOST_ROUNDS {
        let roots: Vec<f64> = residuals.iter().map(|r| weight(r / scale).sqrt()).collect();
        let weighted =
            |values: &[f64]| values.iter().zip(&roots).map(|(v, root)| v * root).collect::<Vec<_>>();
        let columns: Vec<Vec<f64>> = x.iter().map(|column| weighted(column)).collect();
        beta = coefficients(&weighted(y), columns)?;
        let next = self::residuals(y, &x, &beta);
        let moved = next.iter().zip(&residuals).fold(0.0_f64, |most, (a, b)| most.max((a - b).abs()));
        residuals = next;
        scale = scale_of(&residuals, plain.residual_sd())?;
        if moved <= SETTLED * scale {
            break;
        }
    }
    let n = y.len() as f64;
    let inside = residuals.iter().filter(|r| r.abs() <= HUBER_K * scale).count() as f64;
    // ψ′ is 1 inside and 0 outside.
    let slope = inside / n;
    let correction = 1.0 + x.len() as f64 / n * (slope * (1.0 - slope)) / square(slope);
    let psi = |r: f64| (r / scale).clamp(-HUBER_K, HUBER_K);
    let squares: f64 = residuals.iter().map(|&r| square(psi(r) * scale)).sum();
    let sd = correction * (squares / plain.df).sqrt() / slope;
    // The plain model's errors are its residual SD times the lengths that are wanted here.
    let wider = sd / plain.residual_sd();
    let terms = plain
        .terms
        .iter()
        .zip(&beta)
        .map(|(term, &diff)| TDifference::new(diff, term.se * wider, plain.df, 0.0))
        .collect::<Result<_, _>>()?;
    Ok(RobustModel { terms, scale, weights: residuals.iter().map(|r| weight(r / scale)).collect() })
}

fn weight(distance: f64) -> f64 {
    if distance.abs() <= HUBER_K { 1.0 } else { HUBER_K / distance.abs() }
}

fn residuals(y: &[f64], x: &[Vec<f64>], beta: &[f64]) -> Vec<f64> {
    let fitted = |at: usize| x.iter().zip(beta).map(|(column, b)| column[at] * b).sum::<f64>();
    y.iter().enumerate().map(|(at, y)| y - fitted(at)).collect()
}

/// Median distance from the fit over that of a standard normal.
fn scale_of(residuals: &[f64], plain: f64) -> Result<f64, Refusal> {
    let distances: Vec<f64> = residuals.iter().map(|r| r.abs()).collect();
    let scale = median(&distances).unwrap_or(0.0) / MEDIAN_OF_NORMAL;
    if scale > 1e-9 * plain { Ok(scale) } else { Err(Refusal::NoScatter) }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SHOTS: [f64; 10] = [248.0, 251.0, 243.0, 255.0, 247.0, 259.0, 262.0, 254.0, 266.0, 257.0];

    fn fit(y: &[f64]) -> Result<RobustModel, Refusal> {
        robust_model(y, &[(0..y.len()).map(|at| f64::from(u8::from(at >= 5))).collect()], Intercept::Fitted)
    }

    #[test]
    fn a_mishit_moves_an_average_and_hardly_the_robust_gap() {
        let gap = |y: &[f64]| fit(y).unwrap().terms[1].diff;
        let mut strayed = SHOTS;
        strayed[8] = 166.0;
        assert!((gap(&SHOTS) - 10.8).abs() < 1.0);
        assert!((gap(&strayed) - gap(&SHOTS)).abs() < 5.0, "{}", gap(&strayed));
        let model = fit(&strayed).unwrap();
        assert!(model.weights[8] < 0.2 && model.weights[..5].iter().all(|weight| *weight > 0.5));
    }

    #[test]
    fn it_follows_the_values_wherever_they_lie_and_in_any_unit() {
        let model = fit(&SHOTS).unwrap();
        let moved = fit(&SHOTS.map(|y| 0.9144 * y - 1000.0)).unwrap();
        for (here, there) in model.terms.iter().zip(&moved.terms).skip(1) {
            assert!((here.diff * 0.9144 - there.diff).abs() < 1e-9);
            assert!((here.se * 0.9144 - there.se).abs() < 1e-9);
        }
        assert!((model.scale * 0.9144 - moved.scale).abs() < 1e-9);
    }

    #[test]
    fn values_that_mostly_lie_on_the_fit_have_no_scale() {
        let mut y = [250.0; 10];
        y[3] = 190.0;
        assert_eq!(fit(&y), Err(Refusal::NoScatter));
        assert_eq!(fit(&[250.0; 10]), Err(Refusal::NoScatter));
        assert_eq!(fit(&[250.0, 251.0]), Err(Refusal::TooFew { got: 2, need: 3 }));
    }
}
