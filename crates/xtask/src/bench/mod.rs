//! `cargo xtask bench`: how long the product's functions take, natively and in wasm under Node, beside general-purpose
//! packages on the same numbers, and how that grows. It writes `tests/bench.json` and the README's tables from it, and
//! asserts no time: times are the machine's. That everybody found the same is asserted.

mod agreement;
mod growth;
mod inputs;
mod references;
mod table;

pub(crate) use table::markdown;

use crate::shell::{cargo, npm, output, program, root};
use crate::{build, quoted};
use anyhow::{Context, Result, bail};
use serde_json::{Map, Value, json};

/// What the product does, and what is promised of it in milliseconds: in wasm, where nothing else is said.
const PRODUCT: [(&str, &str, &str); 9] = [
    ("check_normal", "`check`, 2 clubs × 30 shots × 6 measures", ""),
    ("check", "`check`, 4 clubs × 60 shots × 8 measures", "20"),
    ("read", "`read`, 100,000 rows of 8 measures", "1000"),
    ("luck", "`luck`, 2 clubs × 30 shots, all shown", ""),
    ("pack", "`pack`, 2 clubs × 30 shots × 6 measures", ""),
    ("potential", "carry map and best of 4 clubs × 60 shots", "100"),
    ("cause", "a gap split into its causes, 60 + 60 shots", ""),
    ("landing", "fairway chances, 4 clubs × 60 shots", ""),
    ("fly", "one flight, steps of 0.02 s", "0.06 native"),
];

/// What other packages do too, on 30 + 30 shots of carry, and what is aimed at, as ratios.
const COMPARED: [(&str, &str); 5] = [
    ("permutation", "permutation test, 9,999 deals"),
    ("bootstrap", "accelerated bootstrap, 9,999 resamples"),
    ("welch", "Welch's test with its interval"),
    ("ols", "least squares on club and rounds"),
    ("ols_formula", "the same from a formula and a table"),
];

/// Makes the inputs, runs every program, writes and prints.
pub(crate) fn run() -> Result<()> {
    build::site()?;
    let folder = root().join("target/bench");
    inputs::write(&folder)?;
    build::bench_package(&folder)?;
    let place = folder.display().to_string();
    npm(&[])?; // for its message where Node is missing or too old
    let wasm = figures(&output(&mut program("node", &["tests/bench/bench.mjs", &place]))?)?;
    let program =
        ["run", "--quiet", "--release", "--package=straight-answer-bench", "--bin=bench", "--", &place];
    let native = figures(&output(&mut cargo(&program))?)?;
    let results = |of: &Value| of.get("results").cloned().context("no results");
    let ours = results(&native)?;
    if ours != results(&wasm)? {
        bail!("wasm found {}, natively it is {ours}", results(&wasm)?);
    }
    let packages = references::run_all(&folder);
    agreement::check(&ours, &packages, f64::from(inputs::DRAWS))?;
    let found = report(&native, &wasm, &packages)?;
    std::fs::write(root().join(quoted::BENCH.file), format!("{found:#}\n"))?;
    println!("\n{}", markdown(&found)?);
    quoted::BENCH.write()
}

fn figures(text: &str) -> Result<Value> {
    serde_json::from_str(text).with_context(|| format!("not times: {text}"))
}

/// What `tests/bench.json` holds: medians in milliseconds.
fn report(native: &Value, wasm: &Value, packages: &Map<String, Value>) -> Result<Value> {
    let mut product = Map::new();
    for (name, _, _) in PRODUCT {
        let both = json!({"wasm": median(wasm, name)?, "native": median(native, name)?});
        product.insert(name.into(), both);
    }
    let mut compared = Map::new();
    for (name, _) in COMPARED {
        // A formula is another way to ask for the same.
        let own = name.trim_end_matches("_formula");
        let mut row = json!({"wasm": median(wasm, own)?, "native": median(native, own)?});
        for (package, theirs) in packages {
            if let Ok(time) = median(theirs, name) {
                row[package] = time;
            }
        }
        compared.insert(name.into(), row);
    }
    let mut versions = json!({
        "rustc": output(&mut program("rustc", &["--version"]))?,
        "node": output(&mut program("node", &["--version"]))?,
        "processor": processor(),
    });
    for (package, theirs) in packages {
        versions[package] = theirs.get("versions").or(theirs.get("version")).cloned().unwrap_or_default();
    }
    Ok(json!({
        "unit": "milliseconds, medians; growth: the least of several runs",
        "made_with": versions,
        "product": product,
        "compared": compared,
        "growth": growth::both(native, wasm)?,
    }))
}

fn median(of: &Value, name: &str) -> Result<Value> {
    let time =
        of.pointer(&format!("/times/{name}/median")).and_then(Value::as_f64).context(name.to_owned())?;
    Ok(rounded(time))
}

/// To four digits: the others are the machine's mood.
fn rounded(time: f64) -> Value {
    let text = format!("{time:.3e}");
    text.parse::<f64>().map_or(Value::Null, Value::from)
}

/// What the machine says of itself, where it does.
fn processor() -> String {
    let text = std::fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let model = text.lines().find_map(|line| line.strip_prefix("model name")?.split_once(": "));
    model.map_or(std::env::consts::ARCH, |(_, name)| name).to_owned()
}
