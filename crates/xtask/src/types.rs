//! The TypeScript declarations that are generated from the Rust structs and kept in the tree.

use crate::shell::{cargo, output, root};
use anyhow::{Result, bail};
use std::fs;

const FILE: &str = "crates/wasm/types.d.ts";

/// Writes the declarations anew.
pub(crate) fn write() -> Result<()> {
    fs::write(root().join(FILE), generated()?)?;
    println!("{FILE} written");
    Ok(())
}

/// Fails when the declarations in the tree are not those of the structs.
pub(crate) fn check() -> Result<()> {
    if fs::read_to_string(root().join(FILE)).unwrap_or_default() != generated()? {
        bail!("{FILE} is stale: run `cargo xtask types` and commit it");
    }
    Ok(())
}

fn generated() -> Result<String> {
    let text = output(&mut cargo(&[
        "run",
        "--quiet",
        "--package=fitting",
        "--features=typescript",
        "--example=types",
    ]))?;
    Ok(text + "\n")
}
