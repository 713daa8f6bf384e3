//! Weaves the faults that cargo-mutants lists into one build and sees which of them no test notices.
//!
//! `mutants ROOT TOOL FOLDER PACKAGE[+WITNESS ...] ...`: the tree, cargo-mutants, a folder for the woven copy. What no test
//! of the package, nor of its witnesses, notices goes to `tests/mutants.md`. A fault costs the run of the tests that reach
//! it, not a build. `ONLY` in the environment names parts of paths; of other files the list stays as it was. `AGAIN` spares
//! what was noticed before in files that are as they were.

mod build;
mod fate;
mod kept;
mod listed;
mod report;
mod run;
mod weave;

use anyhow::{Context, Result};
use fate::Fate;
use listed::{Mutant, Subject};
use std::collections::BTreeMap;
use std::path::PathBuf;

fn main() -> Result<()> {
    let mut words = std::env::args().skip(1);
    let mut word = || words.next().context("mutants ROOT TOOL FOLDER PACKAGE[+WITNESS ...] ...");
    let (root, tool, folder) = (PathBuf::from(word()?), PathBuf::from(word()?), PathBuf::from(word()?));
    let (only, again) = (std::env::var("ONLY").ok(), std::env::var("AGAIN").is_ok());
    let mut found = Vec::new();
    let subjects: Vec<Subject> = words.map(|word| Subject::named(&word)).collect();
    for subject in &subjects {
        let package = &subject.package;
        // All are woven in whatever is asked for: the build is then the same from run to run.
        let mutants = listed::list(&tool, &root, package)?;
        let wanted = |mutant: &Mutant| {
            only.as_ref().is_none_or(|only| only.split(',').any(|part| mutant.file.contains(part)))
        };
        let mut by_file: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
        for (number, mutant) in mutants.iter().enumerate().filter(|(_, mutant)| wanted(mutant)) {
            by_file.entry(&mutant.file).or_default().push(number);
        }
        if by_file.is_empty() {
            continue;
        }
        let built = build::woven(&root, &folder, subject, &mutants)?;
        let kept = kept::read(&root, &folder, package);
        let tests = run::tests(&built)?;
        let mut fates: BTreeMap<usize, Fate> = BTreeMap::new();
        // What was found is written file by file: a long run that is broken off keeps it.
        for wanted in by_file.into_values() {
            let of_file = run::all(&built, &tests, &mutants, &wanted, again.then_some(&kept))?;
            let of_file = wanted.iter().copied().zip(of_file);
            found.extend(of_file.clone().map(|(number, fate)| (mutants[number].clone(), fate)));
            fates.extend(of_file);
            let noticed = mutants.iter().enumerate().filter(|(number, mutant)| {
                fates.get(number).map_or_else(|| kept.holds(mutant), Fate::is_noticed)
            });
            kept::write(&root, &folder, package, noticed.map(|(_, mutant)| mutant))?;
            report::write(&root, &subjects, &found, false)?;
        }
    }
    report::write(&root, &subjects, &found, only.is_none())?;
    report::print(&found);
    Ok(())
}
