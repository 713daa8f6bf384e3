//! The texts of a package's licenses, out of its own folder.

use crate::shell::root;
use anyhow::{Context, Result, bail};
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

/// How the names of files with a license begin, in small letters.
const LICENSES: [&str; 3] = ["licen", "copying", "unlicense"];
/// How those of files begin that must go along, and are no license.
const NOTICES: [&str; 2] = ["copyright", "notice"];
/// Where a license's text ends and those of what the tool itself has on board begin; that is not shipped.
const NOT_SHIPPED: &str = "\n# Licenses of bundled dependencies";

/// One package of others.
pub(super) struct Package {
    pub(super) name: String,
    pub(super) version: String,
    pub(super) license: String,
    pub(super) texts: Vec<String>,
}

/// A package of others, by its manifest and its folder.
pub(super) fn found(manifest: &Value, folder: &Path) -> Result<Package> {
    let (name, license) = (word(manifest, "name"), word(manifest, "license"));
    let mut texts = texts_in(folder, &LICENSES)?;
    if texts.is_empty() {
        texts.extend(forgotten(manifest, folder)?);
    }
    if texts.is_empty() {
        bail!("{name} ({license}) has no text of its license in {}", folder.display());
    }
    texts.extend(texts_in(folder, &NOTICES)?);
    Ok(Package {
        name: name.into(),
        version: word(manifest, "version").into(),
        license: license.into(),
        texts,
    })
}

/// The one license whose text names nobody.
pub(super) fn apache() -> Result<String> {
    let ours = fs::read_to_string(root().join("LICENSE-APACHE"))?;
    // What follows says whose this tree is.
    Ok(tidied(ours.split("APPENDIX").next().unwrap_or_default()))
}

/// A text in a manifest; empty when it is not there.
pub(super) fn word<'a>(value: &'a Value, key: &str) -> &'a str {
    value[key].as_str().unwrap_or_default()
}

/// A few forget to pack the text: that of one license is the same for everybody, another's needs who holds the rights.
fn forgotten(manifest: &Value, folder: &Path) -> Result<Option<String>> {
    let offers = |license: &str| word(manifest, "license").split(" OR ").any(|offered| offered == license);
    if offers("Apache-2.0") {
        return apache().map(Some);
    }
    let script = folder.join(word(manifest, "main"));
    if !offers("MIT") || !script.is_file() {
        return Ok(None);
    }
    let script = fs::read_to_string(&script).with_context(|| script.display().to_string())?;
    let ours = fs::read_to_string(root().join("LICENSE-MIT"))?;
    let holds = |text: &str| {
        let line = text.lines().find(|line| line.contains("Copyright "));
        line.map(|line| line.trim_matches(['/', '*', ' ']).to_owned())
    };
    Ok(holds(&ours).zip(holds(&script)).map(|(we, they)| tidied(&ours.replace(&we, &they))))
}

/// The texts of the files whose names begin in one of these ways.
fn texts_in(folder: &Path, starts: &[&str]) -> Result<Vec<String>> {
    let entries = fs::read_dir(folder).with_context(|| folder.display().to_string())?;
    let mut files: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    files.retain(|file| file.is_file() && starts.iter().any(|start| small_name(file).starts_with(start)));
    files.sort();
    let texts = files.iter().map(|file| {
        let text = fs::read_to_string(file).with_context(|| file.display().to_string())?;
        Ok(tidied(text.split(NOT_SHIPPED).next().unwrap_or_default()))
    });
    texts.filter(|text| !text.as_ref().is_ok_and(String::is_empty)).collect()
}

fn small_name(file: &Path) -> String {
    file.file_name().unwrap_or_default().to_string_lossy().to_lowercase()
}

/// Without what differs between copies of one text: ends of lines, blanks before them.
fn tidied(text: &str) -> String {
    let lines: Vec<&str> = text.lines().map(str::trim_end).collect();
    lines.join("\n").trim_matches('\n').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn manifest(license: &str, main: &str) -> Value {
        serde_json::json!({ "name": "bare", "version": "1.0.0", "license": license, "main": main })
    }

    #[test]
    fn a_package_without_a_text_is_refused() {
        let folder = root().join("crates/xtask/src");
        for license in ["MIT", "", "ISC", "(MIT OR Apache-2.0) AND Unicode-3.0"] {
            let refused = found(&manifest(license, "main.rs"), &folder).err().expect("no text").to_string();
            assert!(refused.starts_with(&format!("bare ({license}) has no text")), "{refused}");
        }
        assert_eq!(found(&manifest("MIT", ""), &root()).expect("this tree").texts.len(), 2, "its own");
    }

    #[test]
    fn a_text_that_was_not_packed_is_known_by_heart() {
        let folder = std::env::temp_dir().join(format!("bare-package-{}", std::process::id()));
        fs::create_dir_all(&folder).expect("a folder");
        fs::write(folder.join("bare.js"), "//\n// Copyright (c) 2009 Somebody Else\n//\n").expect("a file");
        let text =
            |license: &str| found(&manifest(license, "bare.js"), &folder).expect("a text").texts.concat();
        let (apache, mit) = (text("MIT OR Apache-2.0"), text("MIT"));
        fs::remove_dir_all(&folder).expect("it was there");
        assert!(apache.contains("Apache License") && !apache.contains("Straight Answer"), "{apache}");
        assert!(mit.starts_with("MIT License\n\nCopyright (c) 2009 Somebody Else\n\nPermission"), "{mit}");
    }
}
