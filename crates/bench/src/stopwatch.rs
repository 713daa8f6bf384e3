//! Median and least time of a call, in milliseconds.

use serde_json::{Map, Value, json};
use std::time::Instant;

/// What was timed, by name.
#[derive(Default)]
pub(crate) struct Times(pub(crate) Map<String, Value>);

impl Times {
    /// Times a call `runs` times over, each of them `at_once` calls where one is too short for the clock.
    pub(crate) fn take(&mut self, name: &str, runs: usize, at_once: u32, call: impl Fn() -> bool) {
        let times = sorted(runs, at_once, call);
        self.0.insert(name.into(), json!({"median": times[runs / 2], "least": times[0]}));
    }
}

/// Times of a call, ascending, after one that does not count. What it gives must be true: otherwise the times would be
/// those of a refusal.
pub(crate) fn sorted(runs: usize, at_once: u32, call: impl Fn() -> bool) -> Vec<f64> {
    assert!(call(), "the call refused its input");
    let mut times: Vec<f64> = (0..runs)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..at_once {
                std::hint::black_box(call());
            }
            start.elapsed().as_secs_f64() * 1000.0 / f64::from(at_once)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times
}
