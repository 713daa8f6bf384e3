//! `cargo xtask seasons`: what many sessions cost, by their number, and beside other ways to judge them; all in one run.

use crate::bench::references;
use crate::quoted::Quote;
use crate::shell::{cargo, output, program, root, run, target_folder};
use crate::{build, python};
use anyhow::{Context, Result};
use serde_json::{Value, json};
use std::fmt::Write;
use std::fs;

/// What was measured, in the README.
pub(crate) const QUOTE: Quote = Quote { marker: "seasons", file: "tests/seasons.json", text: markdown };

/// Sessions of the table, and as many as others are timed on.
const COUNTS: [u64; 4] = [100, 1_000, 10_000, 100_000];
const OF_OTHERS: u64 = 1_000;

/// Measures and writes.
pub(crate) fn write() -> Result<()> {
    build::site()?;
    run(&mut cargo(&["build", "--quiet", "--release", "--package=files", "--example=time_season"]))?;
    let native = target_folder().join("release/examples/time_season").display().to_string();
    let mut costs: Vec<Value> = Vec::new();
    for count in COUNTS {
        // The quickest of a few, each in a process of its own, so that nothing of a larger one is in its memory.
        let runs = if count > 10_000 { 1 } else { 3 };
        let made = (0..runs).map(|_| {
            let text = output(&mut program(&native, &[&count.to_string()]))?;
            serde_json::from_str(&text).with_context(|| text.clone())
        });
        let made = made.collect::<Result<Vec<Value>>>()?;
        costs.extend(made.into_iter().min_by(|one, other| per_session(one).total_cmp(&per_session(other))));
    }
    let folder = target_folder().join("seasons");
    let _ = fs::remove_dir_all(&folder);
    let place = folder.join("files").display().to_string();
    run(&mut program(&native, &[&OF_OTHERS.to_string(), &place]))?;
    let wasm: Value =
        serde_json::from_str(&output(&mut program("node", &["tests/bench/seasons.mjs", &place]))?)?;
    let package = python::release(&folder)?;
    let python: Value = references::seasons(&target_folder().join("bench"), &place, &package)?;
    let found = json!({"costs": costs, "wasm": wasm["wasm"], "package": python["package"], "script": python["script"]});
    fs::write(root().join(QUOTE.file), format!("{found:#}\n"))?;
    println!("\n{}", markdown(&found)?);
    QUOTE.write()
}

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or(f64::NAN)
}

/// Milliseconds, all of it.
fn per_session(cost: &Value) -> f64 {
    let all = ["read_ms", "judge_ms", "answer_ms"].map(|part| number(cost, part)).iter().sum::<f64>();
    all / number(cost, "sessions")
}

fn markdown(found: &Value) -> Result<String> {
    let costs = found["costs"].as_array().context("no costs")?;
    let mut text = String::from("| sessions of 2 × 30 shots × 6 measures, one core |");
    for cost in costs {
        write!(text, " {} |", number(cost, "sessions"))?;
    }
    write!(text, "\n|---|{}\n", "---:|".repeat(costs.len()))?;
    let mut row = |name: &str, of: &dyn Fn(&Value) -> f64, digits: usize| {
        let cells: Vec<String> = costs.iter().map(|cost| format!("{:.digits$}", of(cost))).collect();
        writeln!(text, "| {name} | {} |", cells.join(" | "))
    };
    let each = |part: &'static str| move |cost: &Value| 1e3 * number(cost, part) / number(cost, "sessions");
    row("reading one, µs", &each("read_ms"), 0)?;
    row("judging one, µs", &each("judge_ms"), 0)?;
    row("its part of the answer over all, µs", &each("answer_ms"), 1)?;
    row("most memory of the process, MB", &|cost| number(cost, "most_kb") / 1e3, 1)?;
    let seconds = |at: usize| per_session(&costs[at]) * number(&costs[at], "sessions");
    let slope = f64::log10(seconds(2) / seconds(0)) / 2.0;
    let last = costs.last().context("no costs")?;
    let (hours, gigabytes) = (per_session(last) * 1e7 / 3.6e6, number(last, "most_kb") * 100.0 / 1e6);
    write!(
        text,
        "\nThe time grows with the number to the power of {slope:.2} from 100 to 10,000. By the last column, 10 million take {hours:.1} hours of one core and {gigabytes:.0} GB \
         of memory in one process, or as much of it as each worker judges.\n\n"
    )?;
    let rates = [
        ("native, read and judged", 1e3 / per_session(&costs[1])),
        ("the page's wasm in Node, read and checked", number(found, "wasm")),
        ("Python, the package, from files", number(found, "package")),
        ("Python, a script of pandas, scipy and statsmodels", number(found, "script")),
    ];
    text.push_str("| sessions a second, one core, the same run | |\n|---|---:|\n");
    for (name, rate) in rates {
        writeln!(text, "| {name} | {rate:.0} |")?;
    }
    Ok(text)
}
