//! Times reading and checking on this machine; `cargo xtask bench` runs it and its twin for Node,
//! `tests/bench/bench.mjs`, on the same inputs.
//!
//! Prints a JSON object: milliseconds, the median of many runs, by name.

use fitting::cause::{CauseRequest, cause};
use fitting::check::{CheckRequest, check};
use fitting::flying::{FlyRequest, Launch, fly};
use fitting::landing::{LandingRequest, landing};
use fitting::potential::{PotentialRequest, potential};
use fitting::read::{Hints, read};
use std::fs;
use std::path::Path;
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let folder = std::env::args().nth(1).ok_or("name the folder with the inputs")?;
    let folder = Path::new(&folder);
    let request: CheckRequest = serde_json::from_str(&fs::read_to_string(folder.join("request.json"))?)?;
    let rows = fs::read_to_string(folder.join("rows.csv"))?;
    let mut times = serde_json::Map::new();
    times.insert("check".into(), median(100, || check(&request).is_ok()).into());
    times.insert("read".into(), median(9, || read(&rows, &Hints::default()).session.shots.len() > 1).into());
    let session = request.session;
    times.insert("fly".into(), (median(100, fly_a_hundred) / 100.0).into());
    let asked = PotentialRequest { session: session.clone(), baseline: 0, map_for: None };
    times.insert("potential".into(), median(20, || potential(&asked).is_ok()).into());
    let asked = CauseRequest { session: session.clone(), baseline: 0, candidate: 1, hand: None };
    times.insert("cause".into(), median(20, || cause(&asked).is_ok()).into());
    let asked =
        LandingRequest { session, baseline: 0, candidate: Some(1), fairway: None, aim: None, hand: None };
    times.insert("landing".into(), median(20, || landing(&asked).is_ok()).into());
    println!("{}", serde_json::Value::Object(times));
    Ok(())
}

/// One flight is too short for the clock.
fn fly_a_hundred() -> bool {
    (0..100).all(|i| {
        let launch = Launch {
            ball_speed: 160.0,
            launch_angle: 12.0 + f64::from(i) / 50.0,
            spin_rate: 2_700.0,
            launch_direction: 0.0,
            spin_axis: 4.0,
        };
        fly(&FlyRequest { launch, conditions: None }).is_ok()
    })
}

/// Median time of a call in milliseconds, after one that does not count. What it gives must be true:
/// otherwise the time would be that of a refusal.
fn median(runs: usize, call: impl Fn() -> bool) -> f64 {
    assert!(call(), "the call refused its input");
    let mut times: Vec<f64> = (0..runs)
        .map(|_| {
            let start = Instant::now();
            std::hint::black_box(call());
            start.elapsed().as_secs_f64() * 1000.0
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[runs / 2]
}
