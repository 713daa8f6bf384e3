//! The TypeScript declarations that are generated from the Rust structs and kept in the tree.

use crate::build;
use crate::shell::{cargo, output, program, root, run};
use anyhow::{Result, bail};
use std::fs;

const FILE: &str = "crates/boundary/types.d.ts";

/// Writes the declarations anew.
pub(crate) fn write() -> Result<()> {
    fs::write(root().join(FILE), generated()?)?;
    println!("{FILE} written");
    build::install_web_packages()?;
    // The schema of the report's file is made from the declarations.
    run(&mut program("node", &["web/schema.mjs"]))
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
        "--package=straight-answer",
        "--features=typescript",
        "--example=types",
    ]))?;
    Ok(text + "\n")
}
