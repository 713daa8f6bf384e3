//! `cargo xtask bench`: how long the product's functions take, natively and in wasm under Node, beside general-purpose
//! packages on the same numbers, and how that grows. It writes `tests/bench.json` and the README's tables from it, and
//! asserts no time: times are the machine's. That everybody found the same is asserted.

mod agreement;
mod growth;
pub(crate) mod references;
mod table;

use crate::quoted::Quote;
use crate::shell::{cargo, npm, output, program, root};
use crate::{build, calibrated};
use anyhow::{Context, Result, bail};
use growth::rounded;
use serde_json::{Map, Value, json};
use table::{COMPARED, PRODUCT, markdown};

/// What this measured, in the README.
pub(crate) const QUOTE: Quote = Quote { marker: "bench", file: "tests/bench.json", text: markdown };

/// Makes the inputs, runs every program, writes and prints.
pub(crate) fn run() -> Result<()> {
    build::site()?;
    let folder = root().join("target/bench");
    calibrated::figures(&["bench-inputs", &folder.display().to_string()])?;
    let input = |name: &str| -> Result<Value> {
        let text = std::fs::read_to_string(folder.join(name)).with_context(|| name.to_owned())?;
        serde_json::from_str(&text).with_context(|| name.to_owned())
    };
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
    agreement::check(&ours, &packages, input("numbers.json")?["draws"].as_f64().context("no draws")?)?;
    let found = report(&input("growth.json")?, &native, &wasm, &packages)?;
    std::fs::write(root().join(QUOTE.file), format!("{found:#}\n"))?;
    println!("\n{}", markdown(&found)?);
    QUOTE.write()
}

fn figures(text: &str) -> Result<Value> {
    serde_json::from_str(text).with_context(|| format!("not times: {text}"))
}

/// What `tests/bench.json` holds: medians in milliseconds.
fn report(sizes: &Value, native: &Value, wasm: &Value, packages: &Map<String, Value>) -> Result<Value> {
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
        "growth": growth::both(sizes, native, wasm)?,
    }))
}

fn median(of: &Value, name: &str) -> Result<Value> {
    let time =
        of.pointer(&format!("/times/{name}/median")).and_then(Value::as_f64).context(name.to_owned())?;
    Ok(rounded(time))
}

/// What the machine says of itself, where it does.
fn processor() -> String {
    let text = std::fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let model = text.lines().find_map(|line| line.strip_prefix("model name")?.split_once(": "));
    model.map_or(std::env::consts::ARCH, |(_, name)| name).to_owned()
}
