//! Weaves the faults that cargo-mutants lists into one build and sees which of them no test notices.
//!
//! `mutants ROOT TOOL FOLDER PACKAGE ...`: the tree, cargo-mutants, a folder for the woven copy. What no test of the
//! package notices goes to `tests/mutants.md`. A fault costs the run of the tests that reach it, not a build. `ONLY` in
//! the environment names parts of paths, `AGAIN` spares what was noticed before in files that are as they were.

mod build;
mod fate;
mod kept;
mod listed;
mod report;
mod run;
mod weave;

use anyhow::{Context, Result};
use listed::Mutant;
use std::path::PathBuf;

fn main() -> Result<()> {
    let mut words = std::env::args().skip(1);
    let mut word = || words.next().context("mutants ROOT TOOL FOLDER PACKAGE ...");
    let (root, tool, folder) = (PathBuf::from(word()?), PathBuf::from(word()?), PathBuf::from(word()?));
    let (only, again) = (std::env::var("ONLY").ok(), std::env::var("AGAIN").is_ok());
    let mut found = Vec::new();
    for package in words {
        // All are woven in whatever is asked for: the build is then the same from run to run.
        let mutants = listed::list(&tool, &root, &package)?;
        let built = build::woven(&root, &folder, &package, &mutants)?;
        let wanted = |mutant: &Mutant| {
            only.as_ref().is_none_or(|only| only.split(',').any(|part| mutant.file.contains(part)))
        };
        let wanted: Vec<usize> = (0..mutants.len()).filter(|&number| wanted(&mutants[number])).collect();
        let known = if again { kept::read(&root, &folder, &package) } else { kept::Kept::default() };
        let fates = run::all(&built, &mutants, &wanted, &known)?;
        if only.is_none() {
            kept::write(&root, &folder, &package, wanted.iter().map(|&number| &mutants[number]).zip(&fates))?;
        }
        found.extend(wanted.iter().map(|&number| mutants[number].clone()).zip(fates));
    }
    report::write(&root, &found, only.is_none())
}
