//! What no test noticed, as a table and a list; reasons that were written there before are kept.

use crate::fate::Fate;
use crate::listed::Mutant;
use anyhow::Result;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::path::Path;

const PLACE: &str = "tests/mutants.md";
const NO_REASON: &str = "not yet explained";

/// Prints what was found and, after a whole run, writes `tests/mutants.md`.
pub(crate) fn write(root: &Path, found: &[(Mutant, Fate)], whole: bool) -> Result<()> {
    let reasons = reasons(&fs::read_to_string(root.join(PLACE)).unwrap_or_default());
    let text = report(root, found, &reasons);
    if whole {
        fs::write(root.join(PLACE), &text)?;
    }
    print!("{text}");
    Ok(())
}

fn report(root: &Path, found: &[(Mutant, Fate)], reasons: &BTreeMap<String, String>) -> String {
    let mut files: BTreeMap<&str, Vec<&(Mutant, Fate)>> = BTreeMap::new();
    for entry in found {
        files.entry(&entry.0.file).or_default().push(entry);
    }
    let mut text = String::from(HEAD);
    let all: Vec<&(Mutant, Fate)> = found.iter().collect();
    for (file, entries) in files.iter().map(|(file, entries)| (*file, entries)).chain([("all", &all)]) {
        let count = |fates: &[Fate]| entries.iter().filter(|(_, fate)| fates.contains(fate)).count();
        let killed = count(&[Fate::Killed, Fate::TimedOut]);
        let alive = count(&[Fate::Survived, Fate::Unreached]);
        let share = 100.0 * killed as f64 / (killed + alive).max(1) as f64;
        let (unviable, left) = (count(&[Fate::Unviable]), count(&[Fate::NotWoven]));
        let _ = writeln!(
            text,
            "| {file} | {} | {killed} | {alive} | {share:.1} % | {unviable} | {left} |",
            killed + alive
        );
    }
    text.push_str("\n## What no test notices\n");
    for (file, entries) in &files {
        let source = fs::read_to_string(root.join(file)).unwrap_or_default();
        let alive: Vec<_> =
            entries.iter().filter(|(_, fate)| matches!(fate, Fate::Survived | Fate::Unreached)).collect();
        if !alive.is_empty() {
            let _ = writeln!(text, "\n### {file}\n");
        }
        for (mutant, fate) in alive {
            let line = source.lines().nth(mutant.span.start.line - 1).unwrap_or_default().trim();
            let key = format!("- {} `{line}`", mutant.change());
            let reason = reasons.get(&format!("{file} {key}")).map_or(NO_REASON, String::as_str);
            let unreached = if *fate == Fate::Unreached { " (no test reaches it)" } else { "" };
            let _ = writeln!(text, "{key}{unreached}: {reason}");
        }
    }
    text
}

const HEAD: &str = "\
# Faults that no test notices

Written by `cargo xtask mutants`; reasons are kept from run to run. cargo-mutants lists the faults; only tests of the crate
itself count. *Unviable* faults do not compile; *not woven* ones stand in constants or in chains that bind names.

| file | viable | noticed | not noticed | noticed | unviable | not woven |
|---|---|---|---|---|---|---|
";

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
}
