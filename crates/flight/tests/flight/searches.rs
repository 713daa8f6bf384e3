//! The searches against fine grids, at random shots: nothing on the grid may be better.

use crate::support::{Draws, MPH, launch};
use flight::{Air, Conditions, Launch, TimeStep, Wind, Window, best_launch, best_spin, fly, window_optimum};

const STEP: TimeStep = TimeStep::COARSE;

fn forward_m(shot: &Launch, conditions: &Conditions) -> f64 {
    fly(shot, conditions, STEP).unwrap().forward_m
}

/// Evenly in launch, evenly in the logarithm of spin.
fn grid([low, high]: [f64; 2], n: u32) -> impl Iterator<Item = f64> {
    (0..=n).map(move |index| low + (high - low) * f64::from(index) / f64::from(n))
}

fn random_conditions(draws: &mut Draws) -> Conditions {
    Conditions { air: Air::STANDARD, wind: Wind::new(draws.between(-8.0, 8.0), 0.0).unwrap() }
}

#[test]
fn best_launch_beats_every_launch_of_a_grid() {
    let mut draws = Draws(11);
    for window in [Window::DELIVERABLE, Window::UNCONSTRAINED] {
        for _ in 0..40 {
            let shot = launch(draws.between(30.0, 200.0), 12.0, draws.between(1000.0, 10_000.0));
            let conditions = random_conditions(&mut draws);
            let best = best_launch(&shot, &conditions, &window, STEP).unwrap();
            for elevation_rad in grid(window.launch_rad(), 150) {
                let other_m = forward_m(&Launch { elevation_rad, ..shot }, &conditions);
                assert!(other_m <= best.flight.forward_m + 9e-4, "{elevation_rad} beats {best:?}");
            }
            let [low, high] = window.launch_rad();
            let found = best.launch.elevation_rad;
            assert!((low..=high).contains(&found));
            assert_eq!(best.at_edge, found - low < 1e-9 || high - found < 1e-9);
            assert!((forward_m(&best.launch, &conditions) - best.flight.forward_m).abs() < 1e-12);
        }
    }
}

#[test]
fn best_spin_beats_every_spin_of_a_grid() {
    let mut draws = Draws(12);
    for (mph, tolerance_m) in [([60.0, 200.0], 9e-4), ([30.0, 60.0], 0.09)] {
        for _ in 0..40 {
            let shot = launch(draws.between(mph[0], mph[1]), draws.between(5.0, 30.0), 3000.0);
            let conditions = random_conditions(&mut draws);
            let window = Window::DELIVERABLE;
            let best = best_spin(&shot, &conditions, &window, STEP).unwrap();
            for ln_spin in grid(window.spin_radps().map(f64::ln), 150) {
                let spin_radps = ln_spin.exp().min(window.spin_radps()[1]);
                let other_m = forward_m(&Launch { spin_radps, ..shot }, &conditions);
                assert!(other_m <= best.flight.forward_m + tolerance_m, "{spin_radps} beats {best:?}");
            }
            assert!((forward_m(&best.launch, &conditions) - best.flight.forward_m).abs() < 1e-12);
        }
    }
}

#[test]
fn the_optimum_of_a_window_beats_every_pair_of_a_grid() {
    let mut draws = Draws(13);
    for window in [Window::DELIVERABLE, Window::UNCONSTRAINED] {
        for _ in 0..4 {
            let mph = draws.between(80.0, 190.0);
            let conditions = random_conditions(&mut draws);
            let best = window_optimum(mph * MPH, &conditions, &window, STEP).unwrap();
            for elevation_rad in grid(window.launch_rad(), 40) {
                for ln_spin in grid(window.spin_radps().map(f64::ln), 40) {
                    let spin_radps = ln_spin.exp().min(window.spin_radps()[1]);
                    let shot = Launch { elevation_rad, spin_radps, ..best.launch };
                    assert!(forward_m(&shot, &conditions) <= best.flight.forward_m + 2e-3, "{shot:?}");
                }
            }
            let band = best.band;
            assert!(band.launch_low_rad <= best.launch.elevation_rad);
            assert!(best.launch.elevation_rad <= band.launch_high_rad);
            assert!(
                band.spin_low_radps < best.launch.spin_radps && best.launch.spin_radps < band.spin_high_radps
            );
        }
    }
}
