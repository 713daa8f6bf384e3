//! What earlier runs noticed: tests only ever grow, so a fault that one of them noticed need not be thrown again.

use crate::listed::Mutant;
use anyhow::Result;
use std::collections::BTreeSet;
use std::fmt::Write;
use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};

/// Names of faults that were noticed, in files that have not changed since.
pub(crate) struct Kept(BTreeSet<String>);

impl Kept {
    pub(crate) fn holds(&self, mutant: &Mutant) -> bool {
        self.0.contains(&mutant.name)
    }
}

/// Reads what was kept of a package.
pub(crate) fn read(root: &Path, folder: &Path, package: &str) -> Kept {
    let text = fs::read_to_string(place(folder, package)).unwrap_or_default();
    let lines = text.lines().filter_map(|line| line.split_once('\t'));
    let unchanged = lines
        .filter(|(mark, name)| name.split_once(':').is_some_and(|(file, _)| file_mark(root, file) == *mark));
    Kept(unchanged.map(|(_, name)| name.to_owned()).collect())
}

/// Keeps what was noticed, each with a mark of its file.
pub(crate) fn write<'a>(
    root: &Path,
    folder: &Path,
    package: &str,
    noticed: impl Iterator<Item = &'a Mutant>,
) -> Result<()> {
    let mut text = String::new();
    for mutant in noticed {
        writeln!(text, "{}\t{}", file_mark(root, &mutant.file), mutant.name)?;
    }
    Ok(fs::write(place(folder, package), text)?)
}

fn place(folder: &Path, package: &str) -> PathBuf {
    folder.join(format!("noticed-{package}.txt"))
}

/// Of what stands above the file's own tests.
fn file_mark(root: &Path, file: &str) -> String {
    let mut hasher = DefaultHasher::new();
    let text = fs::read_to_string(root.join(file)).unwrap_or_default();
    text.split("\n#[cfg(test)]").next().hash(&mut hasher);
    format!("{:016x}", hasher.finish())
}
