//! Carry over launch and spin at one ball speed, on a grid, with the session's shots on it.
//!
//! Modeled in standard still air for straight shots, times the middle ratio of measured to modeled carry of the
//! session's own shots, so that the map speaks of this ball and this device.

use crate::flying::{Flown, forward_yd};
use serde::Serialize;

/// Grid points along launch and along spin.
const COLUMNS: usize = 33;
const ROWS: usize = 25;
/// What the map always shows, deg and rpm: the window and a little around it.
const LAUNCHES: [f64; 2] = [6.0, 18.0];
const SPINS: [f64; 2] = [1_500.0, 4_500.0];
/// Beyond these nobody looks for carry, deg and rpm.
const WIDEST_LAUNCHES: [f64; 2] = [1.0, 35.0];
const WIDEST_SPINS: [f64; 2] = [500.0, 11_000.0];
/// Lines lie this far apart, yd, or as many meters where meters are shown; twice as far where they would crowd.
pub const LINE_SPACING: f64 = 5.0;
const MOST_LINES: usize = 12;

/// A shot's place on the map.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct OnMap {
    /// Place of the shot in the session.
    pub shot: usize,
    /// Index of its build.
    pub build: usize,
    /// Launch angle, deg.
    pub launch: f64,
    /// Spin, rpm.
    pub spin: f64,
}

/// Carry on a grid of launches and spins.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CarryMap {
    /// Ball speed it was flown at, mph.
    pub ball_speed: f64,
    /// Launches of the columns, deg, ascending.
    pub launches: Vec<f64>,
    /// Spins of the rows, rpm, ascending.
    pub spins: Vec<f64>,
    /// Carry, yd, row after row.
    pub carries: Vec<f64>,
    /// Carries at which a line is drawn, yd, ascending.
    pub lines: Vec<f64>,
    /// The shots that can be flown, at their own launch and spin.
    pub shots: Vec<OnMap>,
}

pub(super) fn carry_map(ball_speed: f64, shots: &[Flown], spacing: f64) -> CarryMap {
    let ratios: Vec<f64> = shots.iter().filter(|s| s.modeled > 1.0).map(|s| s.carry / s.modeled).collect();
    let ratio = stats::describe::median(&ratios).unwrap_or(1.0);
    let launches = grid(range(shots, 1, 1.0, LAUNCHES, WIDEST_LAUNCHES), COLUMNS);
    let spins = grid(range(shots, 2, 150.0, SPINS, WIDEST_SPINS), ROWS);
    let carry =
        |spin: f64, launch: f64| ratio * forward_yd(&[ball_speed, launch, spin, 0.0, 0.0]).unwrap_or(0.0);
    let carries: Vec<f64> =
        spins.iter().flat_map(|&spin| launches.iter().map(move |&launch| carry(spin, launch))).collect();
    let on_map = |shot: &Flown| OnMap {
        shot: shot.shot,
        build: shot.build,
        launch: shot.values[1],
        spin: shot.values[2],
    };
    CarryMap {
        ball_speed,
        lines: lines(&carries, spacing),
        launches,
        spins,
        carries,
        shots: shots.iter().map(on_map).collect(),
    }
}

/// What is always shown, widened to the shots, within what is worth showing.
fn range(shots: &[Flown], i: usize, pad: f64, always: [f64; 2], widest: [f64; 2]) -> [f64; 2] {
    let values = || shots.iter().map(|shot| shot.values[i]);
    let low = values().fold(always[0], |low, value| low.min(value - pad));
    let high = values().fold(always[1], |high, value| high.max(value + pad));
    [low.max(widest[0]), high.min(widest[1])]
}

fn grid([low, high]: [f64; 2], n: usize) -> Vec<f64> {
    (0..n).map(|i| low + (high - low) * i as f64 / (n - 1) as f64).collect()
}

/// The highest lines below the top, the spacing doubled until they are few.
fn lines(carries: &[f64], mut spacing: f64) -> Vec<f64> {
    let low = carries.iter().copied().fold(f64::INFINITY, f64::min);
    let high = carries.iter().copied().fold(0.0, f64::max);
    while (high - low) / spacing > MOST_LINES as f64 {
        spacing *= 2.0;
    }
    let first = (low / spacing).ceil();
    (0..=MOST_LINES).map(|i| (first + i as f64) * spacing).filter(|line| *line < high).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shot(launch: f64, spin: f64) -> Flown {
        let values = [150.0, launch, spin, 0.0, 0.0];
        Flown { shot: 0, build: 0, values, carry: 200.0, modeled: 250.0, club_speed: None }
    }

    #[test]
    fn a_map_reaches_a_little_beyond_its_shots_and_never_where_nobody_looks() {
        let ends = |launch: f64, spin: f64| {
            let map = carry_map(150.0, &[shot(12.0, 2600.0), shot(launch, spin)], 5.0);
            let ends = |axis: &[f64]| [axis[0], axis[axis.len() - 1]];
            (ends(&map.launches), ends(&map.spins))
        };
        assert_eq!(ends(13.0, 2700.0), (LAUNCHES, SPINS));
        assert_eq!(ends(19.5, 5000.0), ([6.0, 20.5], [1500.0, 5150.0]));
        assert_eq!(ends(4.0, 1200.0), ([3.0, 18.0], [1050.0, 4500.0]));
        assert_eq!(ends(-3.0, 500.0), ([1.0, 18.0], [500.0, 4500.0]));
        assert_eq!(ends(50.0, 14_000.0), ([6.0, 35.0], [1500.0, 11_000.0]));
    }

    #[test]
    fn a_map_speaks_of_the_ball_and_device_of_its_shots() {
        let map = carry_map(150.0, &[shot(12.0, 2600.0), shot(13.0, 2700.0)], 5.0);
        let of_model = forward_yd(&[150.0, 6.0, 1500.0, 0.0, 0.0]).expect("flies");
        assert!((map.carries[0] - 0.8 * of_model).abs() < 1e-9);
        assert_eq!(map.carries.len(), map.launches.len() * map.spins.len());
    }

    #[test]
    fn lines_lie_the_spacing_apart_and_farther_where_they_would_crowd() {
        assert_eq!(lines(&[201.0, 222.0], 5.0), [205.0, 210.0, 215.0, 220.0]);
        assert_eq!(lines(&[200.0, 210.0], 5.0), [200.0, 205.0], "the top itself has none");
        assert_eq!(lines(&[200.0, 260.0], 5.0).len(), 12);
        assert_eq!(lines(&[200.0, 261.0], 5.0), [200.0, 210.0, 220.0, 230.0, 240.0, 250.0, 260.0]);
        assert_eq!(lines(&[0.0, 250.0], 5.0)[..2], [0.0, 40.0], "doubled again and again");
    }
}
