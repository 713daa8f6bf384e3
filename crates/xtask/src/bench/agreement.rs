//! Whether every package found what we found: a time counts only for the same work.

use anyhow::{Context, Result, bail};
use serde_json::{Map, Value};

/// Figures of formulas agree to nine digits.
const FORMULA: f64 = 1e-9;
/// jStat's p and quantiles of Student's t: its incomplete beta stops there.
const JSTAT_T: f64 = 1e-5;
/// Drawn figures may lie this many standard errors of the drawing apart.
const ERRORS: f64 = 5.0;
/// Standard error of an end of the bootstrap's 95 % interval from one resample, in standard errors of the difference: a
/// quantile's, √(0.025 · 0.975)/φ(1.96) = 2.7, with twice the correction for bias, √0.25/φ(0) = 1.25.
const BOOTSTRAP_END: f64 = 3.7;

/// How far another package's figure may lie from ours.
#[derive(Debug, PartialEq)]
enum Within {
    /// Beside the larger of both.
    Share(f64),
    /// In the unit of the figure.
    Distance(f64),
}

/// Fails at the first figure that lies too far from ours; one that a package does not give is null.
pub(crate) fn check(ours: &Value, packages: &Map<String, Value>, draws: f64) -> Result<()> {
    for (package, theirs) in packages {
        let results = theirs.get("results").and_then(Value::as_object).context("no results")?;
        for (name, found) in results {
            let name = name.trim_end_matches("_formula");
            let (own, found) = (figures(ours.get(name)), figures(Some(found)));
            if own.len() != found.len() || own.is_empty() {
                bail!("{package}, {name}: {} figures beside our {}", found.len(), own.len());
            }
            for at in 0..own.len() {
                let Some((one, other)) = own[at].zip(found[at]) else { continue };
                let apart = (one - other).abs();
                let may = match within(package, name, at, &own, draws) {
                    Within::Share(share) => share * one.abs().max(other.abs()),
                    Within::Distance(distance) => distance,
                };
                // A figure that is no number is never near enough.
                if apart.is_nan() || apart > may {
                    bail!("{package}, {name}, figure {at}: {other} beside our {one}");
                }
            }
        }
    }
    Ok(())
}

fn figures(of: Option<&Value>) -> Vec<Option<f64>> {
    of.and_then(Value::as_array).into_iter().flatten().map(Value::as_f64).collect()
}

fn within(package: &str, name: &str, at: usize, own: &[Option<f64>], draws: f64) -> Within {
    let figure = |at: usize| own.get(at).copied().flatten().unwrap_or(f64::NAN);
    let drawn = ERRORS * (2.0 / draws).sqrt();
    match (name, at) {
        // Whether the observed deal counts as one more differs between packages.
        ("permutation", 1) => Within::Distance(drawn * (figure(1) * (1.0 - figure(1))).sqrt() + 2.0 / draws),
        ("bootstrap", 1) => Within::Share(drawn / 2.0f64.sqrt()),
        ("bootstrap", 2 | 3) => Within::Distance(drawn * BOOTSTRAP_END * figure(1)),
        ("welch", 1..) if package == "jstat" => Within::Share(JSTAT_T),
        ("ols", _) if package == "jstat" && at % 3 == 2 => Within::Share(JSTAT_T),
        _ => Within::Share(FORMULA),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    fn packages(welch: &Value) -> Map<String, Value> {
        Map::from_iter([("scipy".to_owned(), json!({"results": {"welch": welch}}))])
    }

    #[test]
    fn another_result_is_refused() {
        let ours = json!({"welch": [4.0, 0.25]});
        assert!(check(&ours, &packages(&json!([4.0, 0.25])), 1e4).is_ok());
        assert!(check(&ours, &packages(&json!([4.0, null])), 1e4).is_ok());
        assert!(check(&ours, &packages(&json!([4.0, 0.250_001])), 1e4).is_err());
        assert!(check(&ours, &packages(&json!([4.0])), 1e4).is_err());
        assert!(check(&json!({}), &packages(&json!([])), 1e4).is_err());
    }

    #[test]
    fn drawn_figures_may_lie_apart_by_their_luck() {
        let Within::Distance(apart) = within("scipy", "permutation", 1, &[Some(4.0), Some(0.2)], 1e4) else {
            panic!("an absolute distance")
        };
        assert!((0.02..0.04).contains(&apart), "{apart}");
    }
}
