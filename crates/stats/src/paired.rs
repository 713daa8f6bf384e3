//! Student's comparison of pairs: one difference per pair, all pairs alike.
//!
//! Source: Student, Biometrika 6 (1908), 1–25.

use crate::difference::{Refusal, TDifference};
use crate::sample::Sample;

/// Mean of differences (candidate − baseline), each from one pair.
///
/// diff = d̄, se = s_d/√n, df = n − 1.
///
/// # Errors
/// `NoScatter` when all differences are equal.
pub fn paired(differences: &Sample) -> Result<TDifference, Refusal> {
    let n = differences.n() as f64;
    let largest = differences.values().iter().fold(0.0f64, |most, x| most.max(x.abs()));
    TDifference::new(differences.mean(), differences.sd() / n.sqrt(), n - 1.0, largest)
}
