//! How cost grows with size, as the slope of a line through logarithms: 1 is linear, 2 is quadratic.

use anyhow::{Context, Result};
use serde_json::{Map, Value, json};

/// Times by size, which the inputs name, and their slopes, of both programs; a slope over every size, and over the larger half alone, where what
/// every call costs no longer hides the growth.
pub(crate) fn both(sizes: &Value, native: &Value, wasm: &Value) -> Result<Value> {
    let shots: Vec<f64> = serde_json::from_value(sizes["shots"].clone()).context("how many shots")?;
    let tables: Vec<(f64, f64)> =
        serde_json::from_value(sizes["builds_and_measures"].clone()).context("how many builds")?;
    let tables: Vec<f64> = tables.iter().map(|(builds, measures)| builds * measures).collect();
    let mut found = Map::from_iter([
        ("shots".to_owned(), sizes["shots"].clone()),
        ("builds_and_measures".to_owned(), sizes["builds_and_measures"].clone()),
    ]);
    for (name, sizes) in [("read", &shots), ("check", &shots), ("findings", &tables)] {
        let mut row = Map::new();
        for (place, program) in [("wasm", wasm), ("native", native)] {
            let times = program.pointer(&format!("/growth/{name}")).cloned().context(name)?;
            let times: Vec<f64> = serde_json::from_value(times)?;
            let half = times.len() / 2;
            row.insert(
                place.into(),
                json!({
                    "times": times.iter().map(|&time| rounded(time)).collect::<Vec<_>>(),
                    "slope": rounded(slope(sizes, &times)),
                    "slope_of_larger_half": rounded(slope(sizes.get(half..).unwrap_or_default(), &times[half..])),
                }),
            );
        }
        found.insert(name.into(), row.into());
    }
    Ok(found.into())
}

/// To four digits: the others are the machine's mood.
pub(crate) fn rounded(time: f64) -> Value {
    let text = format!("{time:.3e}");
    text.parse::<f64>().map_or(Value::Null, Value::from)
}

/// Slope of the least-squares line through the logarithms.
fn slope(sizes: &[f64], times: &[f64]) -> f64 {
    let points: Vec<(f64, f64)> = sizes.iter().zip(times).map(|(x, y)| (x.ln(), y.ln())).collect();
    let n = points.len() as f64;
    let (mean_x, mean_y) =
        (points.iter().map(|p| p.0).sum::<f64>() / n, points.iter().map(|p| p.1).sum::<f64>() / n);
    let across: f64 = points.iter().map(|(x, y)| (x - mean_x) * (y - mean_y)).sum();
    across / points.iter().map(|(x, _)| (x - mean_x).powi(2)).sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_power_has_its_exponent_for_slope() {
        let sizes = [1.0, 10.0, 100.0, 300.0];
        assert!((slope(&sizes, &sizes.map(|x| 5.0 * x * x)) - 2.0).abs() < 1e-12);
        assert!((slope(&sizes, &sizes.map(|x| 0.1 * x)) - 1.0).abs() < 1e-12);
    }
}
