//! The textbook computations that are timed beside other packages: the core's own, as plain numbers.
//!
//! The product's packages do not offer them one by one, so they cross into wasm here. Each gives what the other
//! packages are asked for, so that both do the same work; an empty list is a refusal.

use stats::bootstrap::bootstrap;
use stats::linear_model::{Intercept, linear_model};
use stats::permutation::Deals;
use stats::{Level, Sample, TDifference, welch};
use wasm_bindgen::prelude::*;

/// Difference of means and two-sided p of a permutation test with `draws` deals.
#[wasm_bindgen]
#[must_use]
pub fn permutation_test(candidate: &[f64], baseline: &[f64], draws: u32, seed: u32) -> Vec<f64> {
    let found = Deals::of_two(candidate, baseline).map(|deals| deals.draw(draws, seed.into()));
    found.map_or_else(|_| Vec::new(), |found| vec![found.difference, found.p_value()])
}

/// Difference of means, its standard error and its 95 % interval by the accelerated bootstrap, shots drawn within
/// each build.
#[wasm_bindgen]
#[must_use]
pub fn bootstrap_interval(candidate: &[f64], baseline: &[f64], draws: u32, seed: u32) -> Vec<f64> {
    let mean = |values: &[f64], picked: &[usize]| {
        picked.iter().filter_map(|&index| values.get(index)).sum::<f64>() / picked.len() as f64
    };
    let sizes = [candidate.len(), baseline.len()];
    let found = bootstrap(&sizes, draws, seed.into(), |picked| match picked {
        [of_candidate, of_baseline] => vec![mean(candidate, of_candidate) - mean(baseline, of_baseline)],
        _ => vec![f64::NAN],
    });
    found.first().map_or_else(Vec::new, |found| {
        let interval = found.interval(Level::P95);
        vec![found.estimate, found.se(), interval.low, interval.high]
    })
}

/// Difference of means, its two-sided p and its 95 % interval by Welch.
#[wasm_bindgen]
#[must_use]
pub fn welch_test(candidate: &[f64], baseline: &[f64]) -> Vec<f64> {
    let sample = |values: &[f64]| Sample::new(values.to_vec()).ok();
    let found = sample(candidate).zip(sample(baseline)).and_then(|(one, other)| welch(&one, &other).ok());
    found.map_or_else(Vec::new, |found| {
        let interval = found.interval(Level::P95);
        vec![found.diff, found.p_value(), interval.low, interval.high]
    })
}

/// Coefficient, standard error and two-sided p of each term of a least-squares fit, the constant first; `columns` stand
/// one after the other, each as long as `y`.
#[wasm_bindgen]
#[must_use]
pub fn least_squares(y: &[f64], columns: &[f64]) -> Vec<f64> {
    let columns: Vec<Vec<f64>> = columns.chunks(y.len().max(1)).map(<[f64]>::to_vec).collect();
    let found = linear_model(y, &columns, Intercept::Fitted);
    let numbers = |term: &TDifference| [term.diff, term.se, term.p_value()];
    found.map_or_else(|_| Vec::new(), |found| found.terms.iter().flat_map(numbers).collect())
}
