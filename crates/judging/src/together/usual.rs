//! How much a gap between two clubs usually varies from day to day: what days together take for granted. A choice of this
//! project, in this one place.
//!
//! Nobody has published by how much the gap between two clubs in one golfer's hands moves from one day to another, and two
//! or three days cannot show it. So it is judgement: its standard deviation is half-normal with a scale of 5 yd of carry, so
//! that about two of three golfers vary by less than that and one in twenty by more than 10. Where the days show more, what
//! they show takes its place. Other measures: as many times the smallest difference that usually matters as for carry, once.

use crate::bet::matters_usually;
use session::measure::MeasureId;

/// Scale of the half-normal distribution, in smallest differences that usually matter: 5 yd of 5 for carry.
const DAYS: f64 = 1.0;

/// That scale for a measure, in its unit; `shot_sd` is a single shot's scatter, for columns of the golfer's own.
pub(super) fn usual_from_day_to_day(measure: &MeasureId, shot_sd: f64) -> f64 {
    DAYS * matters_usually(measure, shot_sd)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn carry_varies_by_5_yards_and_other_measures_by_what_that_is_worth() {
        for (measure, usual) in [("carry", 5.0), ("ball_speed", 1.5), ("spin_rate", 250.0)] {
            assert!((usual_from_day_to_day(&measure.into(), 1.0) - usual).abs() < 1e-12, "{measure}");
        }
        let own = usual_from_day_to_day(&"own".into(), 16.0);
        assert!((own - 7.0).abs() < 1e-12, "{own}");
    }
}
