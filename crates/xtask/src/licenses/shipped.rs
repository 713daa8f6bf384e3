//! What is shipped that others wrote, and where its folders are.
//!
//! Three sources say it: cargo, of the crates inside the wasm; the bundler, of the npm packages inside the scripts
//! (`web/bundled.mjs`); and the marks that workbox leaves in `sw.js`.

use super::texts::{Package, apache, found, word};
use crate::packages::{self, WASM_TARGET};
use crate::shell::{cargo, output, program, root};
use anyhow::{Context, Result};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// Crates that are in no wasm but write a part of the scripts beside it.
const WRITES_SCRIPTS: [&str; 1] = ["wasm-bindgen-cli-support"];
/// npm packages that write lines of their own into what they bundle.
const BUNDLERS: [&str; 3] = ["rolldown", "vite", "workbox-build"];

/// Every crate of others in a wasm, and the library that Rust itself brings.
pub(super) fn wasm() -> Result<Vec<Package>> {
    let metadata = output(&mut cargo(&["metadata", "--format-version=1", "--filter-platform", WASM_TARGET]))?;
    let metadata: Value = serde_json::from_str(&metadata)?;
    let known: BTreeMap<(&str, &str), &Value> = metadata["packages"]
        .as_array()
        .context("cargo metadata names no packages")?
        .iter()
        .map(|package| ((word(package, "name"), word(package, "version")), package))
        .collect();
    let mut packages = vec![standard_library()?];
    for (name, version) in crates()? {
        let package = known.get(&(name.as_str(), version.as_str())).context(name.clone())?;
        let folder = Path::new(word(package, "manifest_path")).parent().context("a folder")?;
        packages.push(found(package, folder)?);
    }
    Ok(packages)
}

/// Name and version of every crate of others that a package is made of, without what only runs at build time.
pub(super) fn crates() -> Result<BTreeSet<(String, String)>> {
    let mut command =
        cargo(&["tree", "--prefix=none", "--no-dedupe", "--format={p}", "--target", WASM_TARGET]);
    command.arg("--edges=normal,no-proc-macro");
    command.args(packages::crates().map(|name| format!("--package={name}")));
    let mut lines = output(&mut command)?;
    for name in WRITES_SCRIPTS {
        let one =
            output(&mut cargo(&["tree", "--prefix=none", "--depth=0", "--format={p}", "--package", name]))?;
        lines.push('\n');
        lines.push_str(&one);
    }
    // A crate of the workspace has its folder behind it.
    let of_others = lines.lines().filter(|line| !line.contains('('));
    Ok(of_others.filter_map(|line| line.split_once(" v")).map(|(n, v)| (n.into(), v.into())).collect())
}

/// Compiled into every wasm; its authors ask for no notice of their own when it is used under the Apache license.
fn standard_library() -> Result<Package> {
    let version = output(&mut program("rustc", &["--version"]))?;
    let version = version.split(' ').nth(1).unwrap_or_default().to_owned();
    let license = "MIT OR Apache-2.0".to_owned();
    Ok(Package { name: "rust-standard-library".into(), version, license, texts: vec![apache()?] })
}

/// The folders, below `web/`, of the npm packages that the bundler took something of.
pub(super) fn bundled() -> Result<BTreeSet<String>> {
    let mut folders = BTreeSet::new();
    for build in ["page", "embed"] {
        let file = format!("web/.vite/bundled-{build}.json");
        let text = fs::read_to_string(root().join(&file)).context(file)?;
        folders.extend(serde_json::from_str::<Vec<String>>(&text)?);
    }
    Ok(folders)
}

/// What the bundlers write themselves.
pub(super) fn bundlers() -> Result<Vec<Package>> {
    npm(&BUNDLERS.iter().map(|name| format!("node_modules/{name}")).collect())
}

/// The folders of what workbox put into a service worker; each of its packages leaves its name and version there.
pub(super) fn marked(worker: &str) -> BTreeSet<String> {
    let marks = worker.split("workbox:").skip(1).filter_map(|rest| rest.split_once(':'));
    let names =
        marks.map(|(name, _)| name).filter(|name| name.chars().all(|c| c.is_ascii_lowercase() || c == '-'));
    names.map(|name| format!("node_modules/workbox-{name}")).collect()
}

/// The packages of folders below `web/`.
pub(super) fn npm(folders: &BTreeSet<String>) -> Result<Vec<Package>> {
    let packages = folders.iter().map(|folder| {
        let folder = root().join("web").join(folder);
        let manifest = fs::read(folder.join("package.json")).with_context(|| folder.display().to_string())?;
        found(&serde_json::from_slice(&manifest)?, &folder)
    });
    packages.collect()
}

/// npm packages that the scripts of a folder name.
pub(super) fn imported(folder: &Path) -> Result<BTreeSet<String>> {
    let mut names = BTreeSet::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            names.extend(imported(&path)?);
        } else if path.extension().is_some_and(|ending| ending == "ts") {
            names.extend(imported_by(&fs::read_to_string(&path)?));
        }
    }
    Ok(names)
}

fn imported_by(script: &str) -> impl Iterator<Item = String> {
    let lines = script.lines().filter(|line| !line.trim_start().starts_with("import type"));
    let from =
        lines.flat_map(|line| ["from \"", "import \"", "import(\""].map(|before| line.split_once(before)));
    let names = from.flatten().filter_map(|(_, rest)| rest.split_once('"')).map(|(name, _)| name);
    names.filter(|name| !name.starts_with('.')).map(|name| {
        let parts = if name.starts_with('@') { 2 } else { 1 };
        name.split('/').take(parts).collect::<Vec<_>>().join("/")
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_service_worker_is_made_of_is_read_off_its_marks() {
        let worker = r#"try{self["workbox:core:7.4.0"]&&_()}catch(e){}self["workbox:routing:7.4.0"]"#;
        let folders: Vec<String> = marked(worker).into_iter().collect();
        assert_eq!(folders, ["node_modules/workbox-core", "node_modules/workbox-routing"]);
    }

    #[test]
    fn imports_of_packages_are_told_from_those_of_files_and_types() {
        let script = "import { a } from \"one/deep.js\";\nimport type { B } from \"two\";\nimport \"./own.js\";\n\
                      const c = await import(\"@three/four\");\n} from \"five\";";
        assert_eq!(imported_by(script).collect::<Vec<_>>(), ["one", "@three/four", "five"]);
    }

    #[test]
    fn the_crates_inside_the_wasm_are_known_with_their_texts() {
        let packages = wasm().expect("cargo tells");
        for name in ["statrs", "libm", "csv", "serde", "wasm-bindgen", "wasm-bindgen-cli-support", "calamine"]
        {
            assert!(packages.iter().any(|package| package.name == name), "{name}");
        }
        assert!(packages.iter().all(|package| !package.texts.is_empty()));
        for name in ["syn", "stats", "proptest"] {
            assert!(packages.iter().all(|package| package.name != name), "{name} is not in it");
        }
    }
}
