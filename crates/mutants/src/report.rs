//! What no test noticed, as a table and a list; reasons that were written there before are kept, and files that were not
//! looked at stay as they were.

use crate::fate::Fate;
use crate::listed::{Mutant, Subject};
use anyhow::Result;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::path::Path;

const PLACE: &str = "tests/mutants.md";
const NO_REASON: &str = "not yet explained";

/// One file: how many faults, and a line for each that nobody noticed.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
struct OfFile {
    noticed: usize,
    not_noticed: usize,
    unviable: usize,
    not_woven: usize,
    lines: Vec<String>,
}

/// Writes what was found into `tests/mutants.md`; only a whole run takes files away.
pub(crate) fn write(root: &Path, subjects: &[Subject], found: &[(Mutant, Fate)], whole: bool) -> Result<()> {
    let before = fs::read_to_string(root.join(PLACE)).unwrap_or_default();
    let mut files = if whole { BTreeMap::new() } else { read(&before) };
    files.extend(by_file(root, found, &reasons(&before)));
    Ok(fs::write(root.join(PLACE), text(subjects, &files))?)
}

/// Prints the table of what was found.
pub(crate) fn print(found: &[(Mutant, Fate)]) {
    print!("{}", table(&by_file(Path::new(""), found, &BTreeMap::new())));
}

fn by_file(
    root: &Path,
    found: &[(Mutant, Fate)],
    reasons: &BTreeMap<String, String>,
) -> BTreeMap<String, OfFile> {
    let mut files: BTreeMap<String, OfFile> = BTreeMap::new();
    let mut sources: BTreeMap<&str, String> = BTreeMap::new();
    for (mutant, fate) in found {
        let file = &mutant.file;
        let of_file = files.entry(file.clone()).or_default();
        let count = match fate {
            Fate::Killed | Fate::TimedOut => &mut of_file.noticed,
            Fate::Survived | Fate::Unreached => &mut of_file.not_noticed,
            Fate::Unviable => &mut of_file.unviable,
            Fate::NotWoven => &mut of_file.not_woven,
        };
        *count += 1;
        if fate.is_not_noticed() {
            let source = sources
                .entry(file)
                .or_insert_with(|| fs::read_to_string(root.join(file)).unwrap_or_default());
            let line = source.lines().nth(mutant.span.start.line - 1).unwrap_or_default().trim();
            let key = format!("- {} `{line}`", mutant.change());
            let reason = reasons.get(&format!("{file} {key}")).map_or(NO_REASON, String::as_str);
            let unreached = if *fate == Fate::Unreached { " (no test reaches it)" } else { "" };
            of_file.lines.push(format!("{key}{unreached}: {reason}"));
        }
    }
    files
}

fn table(files: &BTreeMap<String, OfFile>) -> String {
    let sum = |of: fn(&OfFile) -> usize| files.values().map(of).sum();
    let all = OfFile {
        noticed: sum(|f| f.noticed),
        not_noticed: sum(|f| f.not_noticed),
        unviable: sum(|f| f.unviable),
        not_woven: sum(|f| f.not_woven),
        lines: Vec::new(),
    };
    let mut text = String::new();
    for (file, of_file) in files.iter().map(|(file, of)| (file.as_str(), of)).chain([("all", &all)]) {
        let OfFile { noticed, not_noticed, unviable, not_woven, .. } = of_file;
        let viable = noticed + not_noticed;
        let share = 100.0 * *noticed as f64 / viable.max(1) as f64;
        let _ = writeln!(
            text,
            "| {file} | {viable} | {noticed} | {not_noticed} | {share:.1} % | {unviable} | {not_woven} |"
        );
    }
    text
}

fn text(subjects: &[Subject], files: &BTreeMap<String, OfFile>) -> String {
    let told = subjects.iter().filter(|subject| !subject.witnesses.is_empty());
    let told = told.map(|Subject { package, witnesses }| {
        format!(
            " For `{package}`, whose sessions are mostly there, those of `{}` count too, save what takes two seconds.",
            witnesses.join("` and `")
        )
    });
    let mut text = format!(
        "\
# Faults that no test notices

Written by `cargo xtask mutants`; reasons are kept from run to run. cargo-mutants lists the faults; only tests of the crate
itself count.{}
*Unviable* faults do not compile; *not woven* ones stand in constants or in chains that bind names.

| file | viable | noticed | not noticed | noticed | unviable | not woven |
|---|---|---|---|---|---|---|
{}
## What no test notices
",
        told.collect::<String>(),
        table(files)
    );
    for (file, of_file) in files.iter().filter(|(_, of_file)| !of_file.lines.is_empty()) {
        let _ = writeln!(text, "\n### {file}\n\n{}", of_file.lines.join("\n"));
    }
    text
}

/// The files of an earlier run.
fn read(text: &str) -> BTreeMap<String, OfFile> {
    let mut files: BTreeMap<String, OfFile> = BTreeMap::new();
    let mut file = "";
    for line in text.lines() {
        if let Some(name) = line.strip_prefix("### ") {
            file = name;
        }
        let cells: Vec<&str> = line.split(" | ").map(|cell| cell.trim_matches(['|', ' '])).collect();
        let count = |at: usize| cells.get(at).and_then(|cell| cell.parse().ok());
        if let (Some(noticed), Some(not_noticed), Some(unviable), Some(not_woven)) =
            (count(2), count(3), count(5), count(6))
            && cells[0] != "all"
        {
            let of_file = OfFile { noticed, not_noticed, unviable, not_woven, lines: Vec::new() };
            files.insert(cells[0].to_owned(), of_file);
        } else if line.starts_with("- ") {
            files.entry(file.to_owned()).or_default().lines.push(line.to_owned());
        }
    }
    files
}

/// Reasons of an earlier run by file and change.
fn reasons(text: &str) -> BTreeMap<String, String> {
    let mut file = "";
    let mut found = BTreeMap::new();
    for line in text.lines() {
        if let Some(name) = line.strip_prefix("### ") {
            file = name;
        }
        let parts = line.starts_with("- ").then(|| line.rsplit_once("`")).flatten();
        let Some((key, reason)) = parts else { continue };
        let reason = reason.split_once(": ").map_or("", |(_, reason)| reason);
        if !reason.is_empty() && reason != NO_REASON {
            found.insert(format!("{file} {key}`"), reason.to_owned());
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reason_is_kept_by_file_and_change() {
        let text = "### a.rs\n\n- replace + with - in f `a + b`: nothing adds here\n- replace x `y` (no test reaches it): not yet explained\n";
        let kept = reasons(text);
        assert_eq!(kept.len(), 1);
        assert_eq!(kept["a.rs - replace + with - in f `a + b`"], "nothing adds here");
    }
    #[test]
    fn a_list_is_read_as_it_was_written() {
        let of_file = OfFile {
            noticed: 3,
            not_noticed: 1,
            unviable: 2,
            not_woven: 4,
            lines: vec!["- a `b`: c".into()],
        };
        let files = BTreeMap::from([("crates/a/src/lib.rs".to_owned(), of_file)]);
        let subjects = ["a", "b+c"].map(Subject::named);
        let text = text(&subjects, &files);
        assert_eq!(read(&text), files);
        assert!(
            text.contains("count. For `b`, whose sessions are mostly there, those of `c` count too, save"),
            "{text}"
        );
        assert!(text.contains("\n| all | 4 | 3 | 1 | 75.0 % | 2 | 4 |\n"), "{text}");
    }
}
