//! The woven copy of the tree, built once: what does not compile is taken out again, fault by fault.

use crate::listed::{Mutant, Subject};
use crate::weave::{SWITCH, weave};
use anyhow::{Context, Result, bail, ensure};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Rounds of taking out before giving up; a compiler tells all errors of one kind at once, and there are few kinds.
const MOST_ROUNDS: usize = 30;

/// A program of tests.
pub(crate) struct Program {
    pub(crate) file: PathBuf,
    /// Where it is to be run: the folder of its crate.
    pub(crate) at: PathBuf,
    /// Of another crate than the one with the faults.
    pub(crate) is_witness: bool,
}

/// Test programs, and which faults are in them.
pub(crate) struct Built {
    pub(crate) programs: Vec<Program>,
    pub(crate) woven: BTreeSet<usize>,
    /// Woven and taken out again, because the compiler did not like them.
    pub(crate) refused: BTreeSet<usize>,
}

/// Copies the tree, weaves the package's faults in and builds its tests and those of its witnesses.
pub(crate) fn woven(
    root: &Path,
    folder: &Path,
    Subject { package, witnesses }: &Subject,
    mutants: &[Mutant],
) -> Result<Built> {
    let tree = folder.join("tree");
    copy_tree(root, &tree, mutants)?;
    let at = tree.join("crates").join(package);
    add_switch(root, &at, package)?;
    let known = folder.join(format!("refused-{package}.txt"));
    let mut refused = remembered(&fs::read_to_string(&known).unwrap_or_default(), mutants);
    for round in 1..=MOST_ROUNDS {
        let woven = weave_all(root, &tree, mutants, &refused)?;
        eprintln!("{package}: building with {} of {} faults, round {round}", woven.len(), mutants.len());
        let checked = cargo(&tree, folder, &["check", "--lib", "--package", package])?;
        let culprits = culprits(&tree, &checked)?;
        if culprits.is_empty() {
            let mut tests = vec!["test", "--no-run", "--tests", "--package", package];
            tests.extend(witnesses.iter().flat_map(|witness| ["--package", witness]));
            let built = cargo(&tree, folder, &tests)?;
            return Ok(Built { programs: programs(&built, &at), woven, refused });
        }
        refused.extend(culprits);
        let names: Vec<&str> = refused.iter().map(|&number| mutants[number].name.as_str()).collect();
        fs::write(&known, names.join("\n"))?;
    }
    bail!("{package} still does not build after {MOST_ROUNDS} rounds")
}

/// What an earlier run found not to compile, by name: lines that have moved since are tried again.
fn remembered(names: &str, mutants: &[Mutant]) -> BTreeSet<usize> {
    let names: BTreeSet<&str> = names.lines().collect();
    let known = mutants.iter().enumerate().filter(|(_, mutant)| names.contains(mutant.name.as_str()));
    known.map(|(number, _)| number).collect()
}

fn weave_all(
    root: &Path,
    tree: &Path,
    mutants: &[Mutant],
    refused: &BTreeSet<usize>,
) -> Result<BTreeSet<usize>> {
    let mut by_file: BTreeMap<&str, BTreeMap<usize, &Mutant>> = BTreeMap::new();
    for (number, mutant) in mutants.iter().enumerate() {
        let of_file = by_file.entry(&mutant.file).or_default();
        if !refused.contains(&number) {
            of_file.insert(number, mutant);
        }
    }
    let mut woven = BTreeSet::new();
    for (file, faults) in by_file {
        let mut text = fs::read_to_string(root.join(file))?;
        let found = weave(&text, &faults).with_context(|| file.to_owned())?;
        woven.extend(found.numbers);
        text = found.text;
        if file.ends_with("/src/lib.rs") {
            text.push_str("\nmod mutant_switch;\n");
        }
        write_if_new(&tree.join(file), &text)?;
    }
    Ok(woven)
}

/// The switch itself: which fault is on comes from outside; in a run that only looks, each that is asked for is noted.
fn add_switch(root: &Path, at: &Path, package: &str) -> Result<()> {
    const TEXT: &str = include_str!("switch.txt");
    write_if_new(&at.join("src/mutant_switch.rs"), TEXT)?;
    let text = fs::read_to_string(root.join("crates").join(package).join("src/lib.rs"))?;
    write_if_new(&at.join("src/lib.rs"), &(text + "\nmod mutant_switch;\n"))
}

fn write_if_new(path: &Path, text: &str) -> Result<()> {
    if fs::read_to_string(path).is_ok_and(|there| there == text) {
        return Ok(());
    }
    fs::create_dir_all(path.parent().unwrap_or(path))?;
    fs::write(path, text).with_context(|| path.display().to_string())
}

/// Faults that the compiler's messages point at.
fn culprits(tree: &Path, messages: &[Value]) -> Result<BTreeSet<usize>> {
    let mut found = BTreeSet::new();
    for message in messages.iter().filter(|m| m["reason"] == "compiler-message") {
        let message = &message["message"];
        if message["level"] != "error" || message["spans"].as_array().is_none_or(Vec::is_empty) {
            continue;
        }
        let spans: Vec<&Value> = message["spans"].as_array().into_iter().flatten().collect();
        // A branch that others cannot stand in for: the message points at the head of its `match`.
        let place = if message["code"]["code"] == "E0004" { first_branch_after } else { near };
        let near: Option<usize> =
            spans.iter().filter(|s| s["is_primary"] == true).find_map(|span| place(tree, span));
        let Some(number) = near else { bail!("cannot place: {}", message["rendered"]) };
        found.insert(number);
    }
    Ok(found)
}

/// The first fault behind a place of the woven text that takes a branch away.
fn first_branch_after(tree: &Path, span: &Value) -> Option<usize> {
    let text = fs::read_to_string(tree.join(span["file_name"].as_str()?)).ok()?;
    let behind = &text[usize::try_from(span["byte_end"].as_u64()?).ok()?..];
    let switch = format!(" if !{SWITCH}(");
    behind[behind.find(&switch)? + switch.len()..].split(')').next()?.parse().ok()
}

/// The fault whose switch stands last before the end of a place of the woven text.
fn near(tree: &Path, span: &Value) -> Option<usize> {
    let text = fs::read_to_string(tree.join(span["file_name"].as_str()?)).ok()?;
    let before = &text[..usize::try_from(span["byte_end"].as_u64()?).ok()?];
    let after = |at: usize| text[at + SWITCH.len()..].trim_start_matches('(').split(')').next()?.parse().ok();
    let start = usize::try_from(span["byte_start"].as_u64()?).ok()?;
    text[..start].rfind(SWITCH).or_else(|| before.rfind(SWITCH)).and_then(after)
}

fn cargo(tree: &Path, folder: &Path, arguments: &[&str]) -> Result<Vec<Value>> {
    let output = Command::new(std::env::var("CARGO").unwrap_or_else(|_| "cargo".into()))
        .args(arguments)
        .arg("--message-format=json")
        .current_dir(tree)
        .env("CARGO_TARGET_DIR", folder.join("target"))
        .env("RUSTFLAGS", "--cap-lints=allow")
        .output()?;
    let lines = String::from_utf8_lossy(&output.stdout);
    let messages: Vec<Value> = lines.lines().filter_map(|line| serde_json::from_str(line).ok()).collect();
    let explained = messages.iter().any(|m| m["message"]["level"] == "error");
    ensure!(output.status.success() || explained, "{}", String::from_utf8_lossy(&output.stderr));
    Ok(messages)
}

fn programs(messages: &[Value], own: &Path) -> Vec<Program> {
    let program = |message: &Value| {
        let at = Path::new(message["manifest_path"].as_str()?).parent()?.to_owned();
        let is_witness = at.file_name() != own.file_name();
        Some(Program { file: message["executable"].as_str()?.into(), at, is_witness })
    };
    messages.iter().filter(|m| m["profile"]["test"] == true).filter_map(program).collect()
}

/// Everything the build needs but what will be woven: a file that stays as it is need not be compiled again.
fn copy_tree(root: &Path, tree: &Path, mutants: &[Mutant]) -> Result<()> {
    let woven: BTreeSet<&str> = mutants.iter().map(|mutant| mutant.file.as_str()).collect();
    let output = Command::new("git")
        .args(["ls-files", "-z", "--cached", "--others", "--exclude-standard"])
        .current_dir(root)
        .output()?;
    for file in String::from_utf8(output.stdout)?.split('\0').filter(|file| !file.is_empty()) {
        let needed = ["crates/", "tests/", "Cargo", ".cargo", "clippy.toml"]
            .iter()
            .any(|start| file.starts_with(start));
        let (from, to) = (root.join(file), tree.join(file));
        let later = woven.contains(file) || file.ends_with("/src/lib.rs") && to.is_file();
        if needed && !later && from.is_file() {
            fs::create_dir_all(to.parent().unwrap_or(tree))?;
            let (old, new) = (fs::read(&to).ok(), fs::read(&from)?);
            if old.as_ref() != Some(&new) {
                fs::write(&to, &new)?;
            }
        }
    }
    Ok(())
}
