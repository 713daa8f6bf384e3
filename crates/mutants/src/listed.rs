//! The faults as cargo-mutants lists them: where in the text, and what would stand there.

use anyhow::{Context, Result};
use serde::Deserialize;
use std::path::Path;
use std::process::Command;

/// A package that faults are put into.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Subject {
    pub(crate) package: String,
    /// Further packages whose tests count.
    pub(crate) witnesses: Vec<String>,
}

impl Subject {
    /// As it is named on the way in: the package, then its witnesses, each after a plus.
    pub(crate) fn named(word: &str) -> Self {
        let mut names = word.split('+').map(str::to_owned);
        Self { package: names.next().unwrap_or_default(), witnesses: names.collect() }
    }
}

/// One fault.
#[derive(Debug, Clone, Deserialize)]
pub(crate) struct Mutant {
    /// Path from the root of the tree.
    pub(crate) file: String,
    /// Path, line, column and what changes.
    pub(crate) name: String,
    pub(crate) genre: Genre,
    /// What would stand at the span.
    pub(crate) replacement: String,
    pub(crate) span: Span,
}

/// Kinds of faults.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(crate) enum Genre {
    /// A function that returns something at once.
    FnValue,
    /// Another operator between two operands.
    BinaryOperator,
    /// An operator less before its operand.
    UnaryOperator,
    /// A field left to the base of a struct.
    StructField,
    /// A branch of a `match` that is always or never taken where its pattern fits.
    MatchArmGuard,
    /// A branch of a `match` left to the one that takes all others.
    MatchArm,
    /// Kinds this program does not weave.
    #[serde(other)]
    Other,
}

/// From a place to another, the end not included.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(crate) struct Span {
    pub(crate) start: Place,
    pub(crate) end: Place,
}

/// Line and column, both counted from 1, columns in characters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Deserialize)]
pub(crate) struct Place {
    pub(crate) line: usize,
    pub(crate) column: usize,
}

impl Mutant {
    /// What changes, without the place: what survives a change of lines above it.
    pub(crate) fn change(&self) -> &str {
        self.name.split_once(": ").map_or(self.name.as_str(), |(_, change)| change)
    }
}

/// Asks cargo-mutants for the faults of a package.
pub(crate) fn list(tool: &Path, root: &Path, package: &str) -> Result<Vec<Mutant>> {
    let arguments = ["mutants", "--list", "--json", "--package", package];
    let output = Command::new(tool)
        .args(arguments)
        .current_dir(root)
        .output()
        .with_context(|| format!("cannot run {}", tool.display()))?;
    anyhow::ensure!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    Ok(serde_json::from_slice(&output.stdout)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_package_is_named_with_its_witnesses() {
        assert_eq!(Subject::named("stats"), Subject { package: "stats".into(), witnesses: Vec::new() });
        let told = Subject::named("judging+telling+request");
        assert_eq!((told.package.as_str(), told.witnesses.join(" ")), ("judging", "telling request".into()));
    }
}
