//! Faults put into the crates that compute and decide, one at a time: which of them does no test notice?
//!
//! cargo-mutants lists the faults; `crates/mutants` weaves all of a crate into one build, because a build for each of
//! some four thousand would take a night. Not a step of `test`.

use crate::shell::{cargo, root, run};
use anyhow::Result;

/// The version whose list `tests/mutants.md` was written from.
const VERSION: &str = "27.1.0";

/// The crates that compute and decide, each with the further crates whose tests are its witnesses: what was judged is mostly
/// tested where it is told.
const PACKAGES: [&str; 3] = ["stats", "flight", "judging+telling"];

/// Runs all of them, or what `environment` restricts it to (see `crates/mutants/src/main.rs`).
pub(crate) fn run_all(environment: &[(&str, &str)]) -> Result<()> {
    let tools = root().join("target/tools");
    let tool = tools.join("bin/cargo-mutants");
    if !tool.is_file() {
        let install = ["install", "cargo-mutants", "--locked", "--version", VERSION, "--root"];
        run(cargo(&install).arg(&tools))?;
    }
    let mut command = cargo(&["run", "--quiet", "--package=mutants", "--"]);
    command.arg(root()).arg(tool).arg(root().join("target/mutants")).args(PACKAGES);
    run(command.envs(environment.iter().copied()))
}
