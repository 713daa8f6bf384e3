//! Weaves the faults that cargo-mutants lists into one build and sees which of them no test notices.
//!
//! `mutants ROOT TOOL FOLDER PACKAGE ...`: the tree, cargo-mutants, a folder for the woven copy. What no test of the
//! package notices goes to `tests/mutants.md`. A fault costs the run of the tests that reach it, not a build.

mod build;
mod listed;
mod report;
mod run;
mod weave;

use anyhow::{Context, Result};
use std::path::PathBuf;

fn main() -> Result<()> {
    let mut words = std::env::args().skip(1);
    let mut word = || words.next().context("mutants ROOT TOOL FOLDER PACKAGE ...");
    let (root, tool, folder) = (PathBuf::from(word()?), PathBuf::from(word()?), PathBuf::from(word()?));
    let only = std::env::var("ONLY").ok();
    let mut found = Vec::new();
    for package in words {
        let mut mutants = listed::list(&tool, &root, &package)?;
        if let Some(only) = &only {
            mutants.retain(|mutant| mutant.file.contains(only.as_str()));
        }
        let built = build::woven(&root, &folder, &package, &mutants)?;
        let fates = run::all(&root, &built, mutants.len())?;
        found.extend(mutants.into_iter().zip(fates));
    }
    report::write(&root, &found, only.is_none())
}
