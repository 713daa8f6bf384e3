//! Whether a package of the lock files has a known weakness. What cannot be asked on this machine is said, not hidden.

use crate::shell::{cargo, find, npm, root, run};
use anyhow::{Context, Result, bail};
use serde_json::Value;

/// Asks npm's registry about the web side's lock file, and RustSec's list about Cargo.lock.
pub(crate) fn check() -> Result<()> {
    web()?;
    rust()
}

/// Fails on a weakness of high or critical weight; a registry that does not answer is said.
fn web() -> Result<()> {
    let output = npm(&["audit", "--json"])?.output().context("npm audit")?;
    let answer: Value = serde_json::from_slice(&output.stdout).unwrap_or_default();
    let Some(counts) = answer.pointer("/metadata/vulnerabilities") else {
        println!(
            "   skipped for npm: the registry gave no answer about weaknesses (no network, or a mirror without them)"
        );
        return Ok(());
    };
    let count = |weight: &str| counts.get(weight).and_then(Value::as_u64).unwrap_or(0);
    let (grave, slight) = (count("high") + count("critical"), count("low") + count("moderate"));
    println!("   npm: {grave} grave, {slight} slight");
    if grave > 0 {
        bail!("npm audit: {grave} grave weaknesses; `npm audit` in web/ names them")
    } else {
        Ok(())
    }
}

fn rust() -> Result<()> {
    let has = |tool: &str| find(tool).is_some();
    if has("cargo-audit") {
        return run(cargo(&["audit", "--deny=warnings"]).current_dir(root()));
    }
    if has("cargo-deny") {
        return run(cargo(&["deny", "check", "advisories"]).current_dir(root()));
    }
    println!(
        "   skipped for Cargo.lock: neither cargo-audit nor cargo-deny is installed (`cargo install cargo-audit`)"
    );
    Ok(())
}
