//! How cost grows: reading and checking by the number of shots, checking by builds times measures.

use crate::input::Failed;
use crate::stopwatch::sorted;
use reading::{Hints, read};
use serde_json::{Value, json};
use session::question::Question;
use std::fs;
use std::path::Path;
use telling::check::{CheckRequest, check};
use text::Voice;

/// Least times: noise only ever adds.
pub(crate) fn measure(folder: &Path) -> Result<Value, Failed> {
    let sizes: Value = serde_json::from_str(&fs::read_to_string(folder.join("growth.json"))?)?;
    let question: Question = serde_json::from_value(sizes.get("question").cloned().unwrap_or_default())?;
    let counts: Vec<usize> = serde_json::from_value(sizes.get("shots").cloned().unwrap_or_default())?;
    let tables: Vec<String> = serde_json::from_value(sizes.get("tables").cloned().unwrap_or_default())?;
    let rows = fs::read_to_string(folder.join("rows.csv"))?;
    let (mut reading, mut checking, mut by_findings) = (Vec::new(), Vec::new(), Vec::new());
    for count in counts {
        let text = first_rows(&rows, count);
        let runs = runs(count);
        reading.push(
            sorted(runs, 1, || {
                read(text, &Hints::default(), &Voice::english()).session.shots.len() + 1 == count
            })[0],
        );
        checking.push(least_check(text, &question, runs));
    }
    for name in tables {
        let text = fs::read_to_string(folder.join(format!("table-{name}.csv")))?;
        by_findings.push(least_check(&text, &question, 9));
    }
    Ok(json!({"read": reading, "check": checking, "findings": by_findings}))
}

fn least_check(text: &str, question: &Question, runs: usize) -> f64 {
    let session = read(text, &Hints::default(), &Voice::english()).session;
    let request = CheckRequest { session, question: question.clone() };
    sorted(runs, 1, || check(&request, &Voice::english()).is_ok())[0]
}

/// Short calls are run more often.
fn runs(shots: usize) -> usize {
    (100_000 / shots).clamp(3, 50)
}

/// As many rows, the heading among them.
fn first_rows(text: &str, rows: usize) -> &str {
    text.match_indices('\n').nth(rows - 1).and_then(|(end, _)| text.get(..end)).unwrap_or(text)
}
