//! Times reading and checking on this machine; `cargo xtask bench` runs it and its twin for Node,
//! `tests/bench/bench.mjs`, on the same inputs.
//!
//! Prints a JSON object: milliseconds, the median of many runs, by name.

use fitting::check::{CheckRequest, check};
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
    println!("{}", serde_json::Value::Object(times));
    Ok(())
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
