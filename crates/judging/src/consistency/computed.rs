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

#[cfg(test)]
mod tests {
    use super::*;

    const NOISE: [f64; 12] = [0.4, -1.1, 0.9, -0.6, 1.3, -0.2, 0.1, -1.2, 0.7, -1.4, 0.6, 0.5];

    /// Carries that follow their launches by a law that is not the model's, and scatter by a share around it.
    fn rows(n: usize, scatter: f64) -> Vec<Flown> {
        let row = |shot: usize| {
            let bent = |by: usize| ((shot * by) % 11) as f64 - 5.0;
            let values = [150.0 + bent(3), 12.0 + 0.3 * bent(5), 2600.0 + 90.0 * bent(7), 0.0, 0.0];
            let law = 0.02 + 0.004 * bent(3) - 0.01 * bent(5) + 0.003 * bent(7);
            let modeled = 240.0 + 2.0 * bent(3);
            let carry = modeled * libm::exp(law + scatter * NOISE[shot % 12]);
            Flown { shot, build: 0, values, carry, modeled, club_speed: None }
        };
        (0..n).map(row).collect()
    }

    #[test]
    fn carries_that_follow_their_launches_to_a_fraction_of_a_percent_were_computed() {
        for (scatter, computed) in [(0.0003, true), (0.001, true), (0.008, false), (0.02, false)] {
            assert_eq!(is_computed(&rows(36, scatter)), computed, "{scatter}");
        }
    }

    #[test]
    fn twelve_rows_tell_it_and_eleven_do_not() {
        assert!(is_computed(&rows(12, 0.0003)) && !is_computed(&rows(11, 0.0003)));
    }

    #[test]
    fn of_one_launch_alone_the_carries_themselves_tell() {
        let alike = |scatter: f64| {
            let mut rows = rows(24, scatter);
            let first = rows[0];
            for row in &mut rows {
                let off = scatter * NOISE[row.shot % 12];
                *row = Flown { shot: row.shot, carry: first.modeled * libm::exp(off), ..first };
            }
            is_computed(&rows)
        };
        assert!(alike(0.001) && !alike(0.02));
    }
}
