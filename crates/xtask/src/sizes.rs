//! What a visitor downloads before the first answer, compressed, against its budgets.
//!
//! Counted from the built files: index.html, the scripts, styles and wasm it names, and what those
//! import statically. Parts that load when opened are listed below it and not counted. Compressed
//! with gzip -9 one by one, as static hosts do.

use crate::shell::root;
use anyhow::{Context, Result, bail};
use flate2::{Compression, write::GzEncoder};
use std::collections::BTreeSet;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

const KB: usize = 1000;
/// What may stand between a visitor and the first answer, in bytes after gzip.
struct Budget {
    what: &'static str,
    /// What the design promises; one byte more fails the step.
    most: usize,
}

/// Of the package that answers first.
const WASM: Budget = Budget { what: "wasm", most: 150 * KB };
const SCRIPT_AND_STYLE: Budget = Budget { what: "script and style", most: 60 * KB };
const EVERYTHING: Budget = Budget { what: "everything", most: 200 * KB };

/// Prints every file of the first answer and fails when a budget is passed.
pub(crate) fn print_and_check() -> Result<()> {
    let dist = root().join("dist").canonicalize().context("dist/: run `cargo xtask build`")?;
    let mut wasm = 0;
    let mut script_and_style = 0;
    let mut everything = 0;
    let first = first_answer_files(&dist)?;
    for file in &first {
        let compressed = print_size(file, &dist)?;
        everything += compressed;
        match file.extension().and_then(|ending| ending.to_str()) {
            Some("wasm") => wasm += compressed,
            Some("js" | "css") => script_and_style += compressed,
            _ => {}
        }
    }
    let sizes = [(wasm, WASM), (script_and_style, SCRIPT_AND_STYLE), (everything, EVERYTHING)];
    for (size, Budget { what, most }) in &sizes {
        println!("   {size:>7} of {most:>7}  {what}, after gzip, of what it may weigh");
    }
    let passed: Vec<_> = sizes.iter().filter(|(size, b)| *size > b.most).map(|(_, b)| b.what).collect();
    if wasm == 0 || script_and_style == 0 {
        bail!("no wasm or no script found from dist/index.html: the count cannot be right");
    }
    println!("   later, when it is needed:");
    for file in walk(&dist)?.iter().filter(|file| is_loaded(file) && !first.contains(*file)) {
        print_size(file, &dist)?;
    }
    if passed.is_empty() { Ok(()) } else { bail!("too large: {}", passed.join(", ")) }
}

/// Prints what a file weighs and returns it, after gzip.
fn print_size(file: &Path, dist: &Path) -> Result<usize> {
    let bytes = fs::read(file).with_context(|| file.display().to_string())?;
    let compressed = compressed_size(&bytes)?;
    let name = file.strip_prefix(dist).unwrap_or(file).display();
    println!("   {compressed:>7} of {:>7}  {name}", bytes.len());
    Ok(compressed)
}

fn is_loaded(file: &Path) -> bool {
    let ending = file.extension().and_then(|ending| ending.to_str());
    ending.is_some_and(|ending| ["js", "css", "wasm"].contains(&ending))
}

fn compressed_size(bytes: &[u8]) -> Result<usize> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes)?;
    Ok(encoder.finish()?.len())
}

/// index.html and everything it needs before it can answer.
fn first_answer_files(dist: &Path) -> Result<BTreeSet<PathBuf>> {
    let page = dist.join("index.html");
    let html = fs::read_to_string(&page).context("dist/index.html: run `cargo xtask build`")?;
    let mut waiting: Vec<PathBuf> = named_in_page(&html).iter().map(|name| dist.join(name)).collect();
    let mut found = BTreeSet::from([page]);
    while let Some(file) = waiting.pop() {
        if !found.insert(file.clone()) || file.extension().is_none_or(|ending| ending != "js") {
            continue;
        }
        let script = fs::read_to_string(&file).with_context(|| file.display().to_string())?;
        let folder = file.parent().unwrap_or(dist);
        let needed = imported_by(&script).into_iter().chain(worker_named_in(&script));
        waiting.extend(needed.map(|name| folder.join(name)));
    }
    found.into_iter().map(|file| file.canonicalize().with_context(|| file.display().to_string())).collect()
}

/// Scripts, styles, wasm and preloaded modules that a page names.
fn named_in_page(html: &str) -> Vec<&str> {
    html.split('<')
        .filter(|tag| {
            tag.starts_with("script")
                || (tag.starts_with("link")
                    && ["stylesheet", "modulepreload", "application/wasm"].iter().any(|it| tag.contains(it)))
        })
        .filter_map(|tag| ["src=\"", "href=\""].iter().find_map(|key| tag.split_once(key)))
        .filter_map(|(_, rest)| rest.split('"').next())
        .map(|name| name.trim_start_matches("./"))
        .collect()
}

/// Modules that a built script imports statically: `import ... from "./x.js"`, `import "./x.js"`,
/// `export ... from "./x.js"`; never `import("./x.js")`.
fn imported_by(script: &str) -> Vec<&str> {
    let mut names = Vec::new();
    for keyword in ["from", "import"] {
        for (at, _) in script.match_indices(keyword) {
            let rest = script[at + keyword.len()..].trim_start();
            let Some(quote) = rest.chars().next().filter(|c| matches!(c, '"' | '\'')) else { continue };
            let Some(name) = rest[1..].split(quote).next() else { continue };
            if name.starts_with('.') && name.ends_with(".js") {
                names.push(name);
            }
        }
    }
    names
}

/// The worker in which the core works: a script gives its address, and imports nothing.
fn worker_named_in(script: &str) -> Option<&str> {
    script.split(['`', '"', '\'']).find(|name| name.starts_with("worker-") && name.ends_with(".js"))
}

/// Every file below a folder.
fn walk(folder: &Path) -> Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            files.extend(walk(&path)?);
        } else {
            files.push(path);
        }
    }
    Ok(files)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_page_names_its_scripts_and_styles() {
        let html = r#"<link rel="icon" href="./i.svg"><link rel="stylesheet" href="./a/s.css">
            <script type="module" crossorigin src="./a/m.js"></script><link rel="modulepreload" href="./a/n.js">
            <link rel="preload" href="./a/w.wasm" as="fetch" type="application/wasm" crossorigin />"#;
        assert_eq!(named_in_page(html), ["a/s.css", "a/m.js", "a/n.js", "a/w.wasm"]);
    }

    #[test]
    fn only_static_imports_count() {
        let script = r#"import{a as b}from"./x.js";import"./y.js";const l=()=>import("./later.js");export*from './z.js';"#;
        let mut names = imported_by(script);
        names.sort_unstable();
        assert_eq!(names, ["./x.js", "./y.js", "./z.js"]);
    }

    #[test]
    fn the_worker_of_the_first_answer_counts() {
        let script =
            "const a=new URL(`other-worker-1.js`,import.meta.url),b=new URL(`worker-x2.js`,import.meta.url)";
        assert_eq!(worker_named_in(script), Some("worker-x2.js"));
        assert_eq!(worker_named_in("import'./x.js'"), None);
    }
}
