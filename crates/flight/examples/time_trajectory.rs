//! Times one trajectory, one coarse trajectory and the searches, on this machine.
//!
//! `cargo run --release -p flight --example time_trajectory`

use flight::{
    Conditions, Launch, LaunchError, TimeStep, Window, best_launch, best_spin, fly, window_optimum,
};
use std::hint::black_box;
use std::time::Instant;

fn main() -> Result<(), LaunchError> {
    let driver = Launch {
        speed_mps: 74.655_68,
        elevation_rad: 0.190_240_888,
        azimuth_rad: 0.0,
        spin_radps: 281.696_141,
        spin_axis_rad: 0.0,
    };
    let (air, window) = (Conditions::STANDARD, Window::DELIVERABLE);
    let carry = |flight: flight::Flight| flight.carry_m;
    report("one flight, 0.02 s steps", 2000, || fly(black_box(&driver), &air, TimeStep::FINE).map(carry))?;
    report("one flight, 0.1 s steps", 10_000, || fly(black_box(&driver), &air, TimeStep::COARSE).map(carry))?;
    report("best launch at own spin", 500, || {
        best_launch(black_box(&driver), &air, &window, TimeStep::COARSE).map(|best| carry(best.flight))
    })?;
    report("best spin at own launch", 500, || {
        best_spin(black_box(&driver), &air, &window, TimeStep::COARSE).map(|best| carry(best.flight))
    })?;
    report("optimum of the window", 20, || {
        window_optimum(black_box(driver.speed_mps), &air, &window, TimeStep::COARSE)
            .map(|best| carry(best.flight))
    })
}

/// Prints the shortest of nine runs: what the work costs when nothing else disturbs it.
fn report(
    what: &str,
    repeats: u32,
    mut work: impl FnMut() -> Result<f64, LaunchError>,
) -> Result<(), LaunchError> {
    let mut shortest = f64::INFINITY;
    let mut carry_m = 0.0;
    for _ in 0..9 {
        let start = Instant::now();
        for _ in 0..repeats {
            carry_m = black_box(work()?);
        }
        shortest = shortest.min(start.elapsed().as_secs_f64() / f64::from(repeats));
    }
    println!("{what:<26} {:>9.1} µs   (carry {carry_m:.2} m)", shortest * 1e6);
    Ok(())
}
