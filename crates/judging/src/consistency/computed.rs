//! Whether the carries of a session were computed from their launches instead of seen.
//!
//! A computed carry is a smooth function of ball speed, launch and spin, whatever flight model made it: what is left of
//! its logarithm after a straight line in the three is a fraction of a percent. A ball that was seen to land differs
//! from its launch by the errors of both, one percent or more.

use crate::flying::Flown;
use libm::log as ln;
use stats::describe::{MAD_TO_SD, mad};
use stats::linear_model::{Intercept, linear_model};

/// Fewest rows: four coefficients are fitted to them.
const FEWEST: usize = 12;
/// Left over by less than this, carries were computed. Judgement: carries rounded to a yard leave 0.15 %, devices that
/// see the landing 1 % or more.
const CLOSEST_SEEN: f64 = 0.004;

pub(super) fn is_computed(rows: &[Flown]) -> bool {
    if rows.len() < FEWEST {
        return false;
    }
    let y: Vec<f64> = rows.iter().map(|row| ln(row.carry / row.modeled)).collect();
    let columns: Vec<Vec<f64>> = (0..3).map(|i| rows.iter().map(|row| row.values[i]).collect()).collect();
    let left_over = match linear_model(&y, &columns, Intercept::Fitted) {
        Ok(model) => {
            let line = |row: &Flown| {
                let slopes = model.terms.iter().skip(1).zip(row.values);
                model.terms.first().map_or(0.0, |term| term.diff)
                    + slopes.map(|(term, x)| term.diff * x).sum::<f64>()
            };
            rows.iter().zip(&y).map(|(row, y)| y - line(row)).collect()
        }
        // No scatter at all, or columns that never vary.
        Err(_) => y,
    };
    mad(&left_over).is_some_and(|mad| MAD_TO_SD * mad < CLOSEST_SEEN)
}
