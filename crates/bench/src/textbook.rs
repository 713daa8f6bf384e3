//! What general-purpose packages offer too, on the same numbers.

use crate::input::{Failed, number};
use crate::stopwatch::Times;
use serde_json::{Value, json};
use std::fs;
use std::path::Path;
use straight_answer_bench::{bootstrap_interval, least_squares, permutation_test, welch_test};

/// Times each and gives what it found.
pub(crate) fn run(folder: &Path, times: &mut Times) -> Result<Value, Failed> {
    let input: Value = serde_json::from_str(&fs::read_to_string(folder.join("numbers.json"))?)?;
    let list = |name: &str| -> Result<Vec<f64>, Failed> {
        Ok(serde_json::from_value(input.get(name).cloned().unwrap_or_default())?)
    };
    let (candidate, baseline, y) = (list("candidate")?, list("baseline")?, list("y")?);
    let columns: Vec<Vec<f64>> = serde_json::from_value(input.get("columns").cloned().unwrap_or_default())?;
    let columns = columns.concat();
    let (draws, seed) = (number(&input, "draws")?, number(&input, "seed")?);
    let permutation = || permutation_test(&candidate, &baseline, draws, seed);
    let bootstrap = || bootstrap_interval(&candidate, &baseline, draws, seed);
    let welch = || welch_test(&candidate, &baseline);
    let ols = || least_squares(&y, &columns);
    times.take("permutation", 50, 1, || !permutation().is_empty());
    times.take("bootstrap", 50, 1, || !bootstrap().is_empty());
    times.take("welch", 50, 1_000, || !welch().is_empty());
    times.take("ols", 50, 1_000, || !ols().is_empty());
    Ok(json!({"permutation": permutation(), "bootstrap": bootstrap(), "welch": welch(), "ols": ols()}))
}
