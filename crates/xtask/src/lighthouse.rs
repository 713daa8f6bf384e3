//! `cargo xtask lighthouse`: how the built site does on a slow phone, written to `tests/lighthouse.json` and the README;
//! as a step of `test` a report that fails on no figure.

use crate::quoted::Quote;
use crate::shell::{npm, output, program, root, run};
use crate::{browser, build, serve};
use anyhow::{Context, Result};
use serde_json::Value;
use std::fmt::Write;
use std::fs;

/// What this measured, in the README.
pub(crate) const QUOTE: Quote = Quote { marker: "lighthouse", file: "tests/lighthouse.json", text: markdown };

/// What is shown of the figures, and what is aimed at.
const FIGURES: [(&str, &str, &str, &str); 17] = [
    ("performance", "Lighthouse, mobile: performance of the first answer", "", "at least 95"),
    ("performance_start", "the same of the start", "", "at least 95"),
    ("performance_link", "the same of an opened link", "", "at least 95"),
    ("accessibility", "Lighthouse, mobile: accessibility, the least of the three", "", "100"),
    ("best_practices", "Lighthouse, mobile: best practices, the least of the three", "", "100"),
    (
        "layout_shift",
        "how far things jump on the way to the first answer (cumulative layout shift)",
        "",
        "at most 0.1",
    ),
    ("cold_first_answer_ms", "first answer, nothing kept, slow phone and network", " ms", "at most 2000 ms"),
    ("cold_link_ms", "the answer of an opened link, the same", " ms", "at most 2500 ms"),
    ("first_answer_elements", "elements on the page at the first answer", "", "at most 1200"),
    ("layout_ms", "layout until the first answer, slow phone", " ms", "with style at most 250 ms"),
    ("style_ms", "style, the same", " ms", ""),
    ("script_ms", "script, the same", " ms", ""),
    ("offline_answer_slow_ms", "answer on the second visit without a network, slow phone", " ms", ""),
    ("offline_answer_ms", "the same, this machine's processor", " ms", "at most 500 ms"),
    ("next_paint_ms", "slowest next paint of ten taps, slow phone", " ms", "at most 100 ms"),
    (
        "frozen_ms",
        "longest freeze while a file of 10,000 shots is answered, this machine's processor",
        " ms",
        "at most 100 ms",
    ),
    (
        "benchmark_index",
        "this machine's own speed, as Lighthouse counts it (below 1000 it was slow or busy)",
        "",
        "",
    ),
];

/// Builds, measures, writes.
pub(crate) fn write() -> Result<()> {
    build::site()?;
    let found = measured()?;
    fs::write(root().join(QUOTE.file), format!("{found:#}\n"))?;
    println!("\n{}", markdown(&found)?);
    QUOTE.write()
}

/// Prints the figures, or why there are none.
pub(crate) fn report() -> Result<()> {
    match measured().and_then(|found| markdown(&found)) {
        Ok(table) => println!("{table}"),
        Err(why) => println!("   skipped: {why:#}"),
    }
    Ok(())
}

/// The table of a file of figures.
fn markdown(found: &Value) -> Result<String> {
    let mut text = String::from("| | measured | aimed at |\n|---|---:|---:|\n");
    for (name, what, unit, aim) in FIGURES {
        let figure = found.get(name).and_then(Value::as_f64).with_context(|| name.to_owned())?;
        writeln!(text, "| {what} | {figure}{unit} | {aim} |")?;
    }
    Ok(text)
}

fn measured() -> Result<Value> {
    let browser = browser::found().context("no Chromium on PATH or in CHROMIUM_PATH")?;
    let packages = root().join("target/lighthouse");
    install(&packages).context("the npm packages of tests/lighthouse cannot be had")?;
    let address = serve::in_background(browser::SUB_PATH)?;
    let packages = packages.display().to_string();
    let mut measure = program("node", &["tests/lighthouse/measure.mjs", &packages]);
    let text = output(measure.env("SITE_URL", address).env("CHROMIUM_PATH", browser))?;
    serde_json::from_str(&text).with_context(|| format!("no figures: {text}"))
}

/// Installs what the lock file names, unless exactly that was installed before.
fn install(place: &std::path::Path) -> Result<()> {
    let own = root().join("tests/lighthouse");
    let lock = fs::read(own.join("package-lock.json"))?;
    let stamp = place.join(".installed");
    if fs::read(&stamp).is_ok_and(|installed| installed == lock) {
        return Ok(());
    }
    fs::create_dir_all(place)?;
    for name in ["package.json", "package-lock.json"] {
        fs::copy(own.join(name), place.join(name)).context(name)?;
    }
    run(npm(&["ci", "--silent", "--no-audit", "--no-fund"])?.current_dir(place))?;
    Ok(fs::write(stamp, lock)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_missing_figure_is_said() {
        let missing = markdown(&serde_json::json!({"performance": 99})).unwrap_err();
        assert_eq!(missing.to_string(), "performance_start");
    }
}
