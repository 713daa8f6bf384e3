//! Least squares with any columns: coefficients and their errors.
//!
//! Householder reflections on columns of equal length, which keeps seven digits where normal equations keep
//! none (NIST StRD Longley). For second factors and what follows something else; the comparison within rounds solves
//! its own special case.
//! Source: Golub and Van Loan, Matrix Computations (2013), 5.3; G. H. Golub, Numerische Mathematik 7 (1965),
//! 206–216.

use crate::difference::{Refusal, TDifference};
use crate::real::square;
use crate::sample::check_value;

/// Residuals this small beside the values are rounding.
const ROUNDING: f64 = 16.0 * f64::EPSILON;

/// A column this much shorter after the others are taken out of it depends on them.
const DEPENDENT: f64 = 1e-12;

/// Whether the model has a constant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Intercept {
    /// A first column of ones.
    Fitted,
    /// None: the line goes through zero.
    Zero,
}

/// A fitted model.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct LinearModel {
    /// Coefficient of each column, the intercept first, as a difference from zero on the residual df.
    pub terms: Vec<TDifference>,
    /// Sum of squared residuals.
    pub residual_squares: f64,
    /// Observations less columns.
    pub df: f64,
}

impl LinearModel {
    /// Residual standard deviation.
    #[must_use]
    pub fn residual_sd(&self) -> f64 {
        (self.residual_squares / self.df).sqrt()
    }
}

/// Fits y = Xβ + e by least squares; `columns` are those of X without the constant.
///
/// # Errors
/// Columns of another length than y, values that are not usable, too few observations, columns that depend on
/// each other, no residual scatter.
pub fn linear_model(y: &[f64], columns: &[Vec<f64>], intercept: Intercept) -> Result<LinearModel, Refusal> {
    let n = y.len();
    let mut x = design(n, columns, intercept);
    for column in x.iter().map(Vec::as_slice).chain([y]) {
        if column.len() != n {
            return Err(Refusal::TooFew { got: column.len(), need: n });
        }
        for (index, &value) in column.iter().enumerate() {
            check_value(index, value).map_err(|_| Refusal::Argument { got: value })?;
        }
    }
    let p = x.len();
    if n <= p || p == 0 {
        return Err(Refusal::TooFew { got: n, need: p.max(1) + 1 });
    }
    let size = y.iter().fold(0.0f64, |most, value| most.max(value.abs()));
    let lengths = to_unit_length(&mut x);
    let mut rotated = y.to_vec();
    let triangle = triangulate(&mut x, &mut rotated)?;
    let residual_squares: f64 = rotated.iter().skip(p).map(|value| value * value).sum();
    let df = (n - p) as f64;
    let sd = (residual_squares / df).sqrt();
    if sd <= ROUNDING * size {
        return Err(Refusal::NoScatter);
    }
    let coefficients = back_solve(&triangle, &rotated);
    let mut terms = Vec::with_capacity(p);
    for (j, (coefficient, scale)) in coefficients.iter().zip(&lengths).enumerate() {
        // Row j of R⁻¹ has the coefficient's standard error as its length.
        let error = length(&inverse_row(&triangle, j)) * sd;
        terms.push(TDifference::new(coefficient / scale, error / scale, df, 0.0)?);
    }
    Ok(LinearModel { terms, residual_squares, df })
}

/// All columns of X for `n` observations, the constant first.
pub(crate) fn design(n: usize, columns: &[Vec<f64>], intercept: Intercept) -> Vec<Vec<f64>> {
    let constant = (intercept == Intercept::Fitted).then(|| vec![1.0; n]);
    constant.into_iter().chain(columns.iter().cloned()).collect()
}

/// The coefficients alone, of columns that were seen to be usable.
pub(crate) fn coefficients(y: &[f64], mut x: Vec<Vec<f64>>) -> Result<Vec<f64>, Refusal> {
    let lengths = to_unit_length(&mut x);
    let mut rotated = y.to_vec();
    let triangle = triangulate(&mut x, &mut rotated)?;
    Ok(back_solve(&triangle, &rotated).iter().zip(&lengths).map(|(b, length)| b / length).collect())
}

/// Scales every column to length 1; the lengths that they had.
fn to_unit_length(x: &mut [Vec<f64>]) -> Vec<f64> {
    let lengths: Vec<f64> = x.iter().map(|column| length(column)).collect();
    for (column, length) in x.iter_mut().zip(&lengths) {
        column.iter_mut().for_each(|value| *value /= length);
    }
    lengths
}

/// Turns X into an upper triangle by reflections and turns y with it; rows of the triangle are returned.
fn triangulate(x: &mut [Vec<f64>], y: &mut [f64]) -> Result<Vec<Vec<f64>>, Refusal> {
    let p = x.len();
    let mut triangle = vec![vec![0.0; p]; p];
    for j in 0..p {
        let below = length(&x[j][j..]);
        if below <= DEPENDENT || !below.is_finite() {
            return Err(Refusal::NotLinked);
        }
        // The sign that adds, never cancels.
        let diagonal = -below.copysign(x[j][j]);
        let mut mirror = x[j][j..].to_vec();
        mirror[0] -= diagonal;
        let half = -diagonal * mirror[0];
        for column in x.iter_mut().skip(j).map(Vec::as_mut_slice).chain([&mut *y]) {
            let column = &mut column[j..];
            let along = mirror.iter().zip(&*column).map(|(m, c)| m * c).sum::<f64>() / half;
            column.iter_mut().zip(&mirror).for_each(|(c, m)| *c -= along * m);
        }
        for (i, row) in triangle.iter_mut().enumerate().take(j + 1) {
            row[j] = x[j][i];
        }
    }
    Ok(triangle)
}

fn back_solve(triangle: &[Vec<f64>], right: &[f64]) -> Vec<f64> {
    let p = triangle.len();
    let mut solution = vec![0.0; p];
    for i in (0..p).rev() {
        let known: f64 = (i + 1..p).map(|j| triangle[i][j] * solution[j]).sum();
        solution[i] = (right[i] - known) / triangle[i][i];
    }
    solution
}

/// Row `j` of the inverse of an upper triangle.
fn inverse_row(triangle: &[Vec<f64>], j: usize) -> Vec<f64> {
    let p = triangle.len();
    let mut row = vec![0.0; p];
    for i in j..p {
        let unit = if i == j { 1.0 } else { 0.0 };
        let known: f64 = (j..i).map(|m| row[m] * triangle[m][i]).sum();
        row[i] = (unit - known) / triangle[i][i];
    }
    row
}

fn length(values: &[f64]) -> f64 {
    let largest = values.iter().fold(0.0f64, |most, value| most.max(value.abs()));
    if largest <= 0.0 {
        return 0.0;
    }
    largest * values.iter().map(|value| square(value / largest)).sum::<f64>().sqrt()
}
