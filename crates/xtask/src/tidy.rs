//! The shape of the tree: what a review would otherwise have to look for by hand.

use crate::shell::{cargo, output, program, root};
use crate::{tables, tidy_modules, tidy_web};
use anyhow::{Context, Result, bail};
use serde_json::Value;
use std::fs;

const LONGEST_FILE: usize = 400;
const LONGEST_BOUNDARY: usize = 150;
const LONGEST_MAP: usize = 200;
const BOUNDARY: &str = "crates/boundary/src/lib.rs";

/// Everything that may stand at the top of the tree.
const TOP_LEVEL: [&str; 15] = [
    ".cargo",
    ".ci",
    ".gitignore",
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE-APACHE",
    "LICENSE-MIT",
    "README.md",
    "clippy.toml",
    "crates",
    "demo",
    "rustfmt.toml",
    "tests",
    "web",
];

/// What each crate may use directly; `rand_pcg` is a seeded generator and reaches no random device.
const ALLOWED_EDGES: [(&str, &[&str]); 16] = [
    ("arrange", &[]),
    ("session", &["arrange", "serde"]),
    ("stats", &["arrange", "statrs", "libm", "rand_pcg"]),
    ("flight", &["libm"]),
    ("text", &["session"]),
    ("reading", &["arrange", "csv", "serde", "session", "text"]),
    ("judging", &["arrange", "flight", "libm", "serde", "session", "stats"]),
    ("telling", &["judging", "libm", "serde", "session", "text"]),
    ("request", &["serde", "session", "text"]),
    (
        "straight-answer",
        &[
            "judging",
            "reading",
            "request",
            "session",
            "telling",
            "text",
            "serde",
            "serde-wasm-bindgen",
            "wasm-bindgen",
            "js-sys",
            "web-sys",
        ],
    ),
    (
        "straight-answer-workbook",
        &["text", "calamine", "quick-xml", "zip", "serde", "serde-wasm-bindgen", "wasm-bindgen"],
    ),
    (
        "files",
        &[
            "csv",
            "encoding_rs",
            "judging",
            "reading",
            "serde",
            "session",
            "straight-answer",
            "straight-answer-workbook",
            "telling",
            "text",
        ],
    ),
    (
        "straight-answer-cli",
        &[
            "clap",
            "clap_complete",
            "csv",
            "files",
            "judging",
            "reading",
            "serde",
            "serde_json",
            "session",
            "telling",
            "text",
        ],
    ),
    (
        "straight-answer-python",
        &["files", "judging", "pyo3", "reading", "serde", "serde_json", "session", "text"],
    ),
    ("photo", &["rten", "rten-tensor", "serde"]),
    ("straight-answer-photo", &["photo", "js-sys", "serde", "serde-wasm-bindgen", "wasm-bindgen"]),
];

/// The crates just below the boundary; all others are reached from them.
const BELOW_THE_BOUNDARY: [&str; 3] = ["reading", "request", "telling"];

/// What nothing below the boundary may reach: the browser, and random devices.
const ONLY_ABOVE: [&str; 4] = ["js-sys", "web-sys", "wasm-bindgen", "getrandom"];

/// Looks at every file git knows or would take.
pub(crate) fn check() -> Result<()> {
    let listing = output(&mut program("git", &["ls-files", "--cached", "--others", "--exclude-standard"]))?;
    let files: Vec<&str> = listing.lines().filter(|file| root().join(file).is_file()).collect();
    let mut faults = Vec::new();
    faults.extend(files.iter().filter_map(|file| top_level_fault(file)));
    for file in &files {
        // Pictures and the like are not for reading.
        if let Ok(text) = fs::read_to_string(root().join(file)) {
            faults.extend(text_faults(file, &text));
        }
    }
    faults.extend(tidy_web::faults(&files));
    faults.extend(edge_faults()?);
    faults.extend(tidy_modules::faults()?);
    faults.extend(tables::faults()?);
    if faults.is_empty() {
        return Ok(());
    }
    bail!("{} faults:\n  {}", faults.len(), faults.join("\n  "))
}

fn top_level_fault(file: &str) -> Option<String> {
    let top = file.split('/').next().unwrap_or(file);
    (!TOP_LEVEL.contains(&top)).then(|| format!("{file}: `{top}` has no place at the top of the tree"))
}

/// Faults that can be seen in one file.
fn text_faults(file: &str, text: &str) -> Vec<String> {
    let ending = file.rsplit('.').next().unwrap_or_default();
    let lines = text.lines().count();
    let mut faults = Vec::new();
    let mut fault = |what: String| faults.push(format!("{file}: {what}"));
    let is_code = matches!(ending, "rs" | "ts" | "mjs" | "js" | "css");
    let is_generated = ["crates/boundary/types.d.ts", "web/src/text/messages.ts"].contains(&file);
    if is_code && !is_generated && lines > LONGEST_FILE {
        fault(format!("{lines} lines, at most {LONGEST_FILE}"));
    }
    if ending == "rs" && !text.starts_with("//!") {
        fault("does not open with `//!` and what it is".into());
    }
    if matches!(ending, "ts" | "mjs" | "js" | "css") && !text.starts_with("//") && !text.starts_with("/*") {
        fault("does not open with a comment that says what it is".into());
    }
    if file == BOUNDARY && lines >= LONGEST_BOUNDARY {
        fault(format!("the boundary has {lines} lines, fewer than {LONGEST_BOUNDARY} are allowed"));
    }
    if file == "DEVELOPERS.md" && lines > LONGEST_MAP {
        fault(format!("{lines} lines, at most {LONGEST_MAP}"));
    }
    if file.ends_with(".md") && !file.contains('/') {
        text_paths(text)
            .filter(|path| !root().join(path).exists())
            .for_each(|path| fault(format!("names `{path}`, which is not there")));
    }
    if file.starts_with("tests/reference/") && ending == "json" {
        passport_faults(text).into_iter().for_each(&mut fault);
    }
    if file.ends_with("package-lock.json") {
        foreign_hosts(text).for_each(|host| fault(format!("packages from `{host}`")));
    }
    faults
}

/// Paths of the tree that a text names in backticks. Generated folders may be missing.
fn text_paths(text: &str) -> impl Iterator<Item = &str> {
    const FOLDERS: [&str; 5] = ["crates/", "web/", "tests/", "demo/", ".ci/"];
    text.split('`')
        .skip(1)
        .step_by(2)
        .filter(|code| FOLDERS.iter().any(|folder| code.starts_with(folder)))
        .filter(|code| !code.contains(['*', '{', '<', ' ', ':']))
        .filter(|code| !code.starts_with("web/pkg"))
}

/// A reference case says what it is, where it comes from, and how its numbers were made; what holds for
/// a whole file may stand once at its top. A file without a list of cases is one case.
fn passport_faults(text: &str) -> Vec<String> {
    const PASSPORT: [&[&str]; 3] = [&["source"], &["kind"], &["command", "how"]];
    let Ok(file) = serde_json::from_str::<Value>(text) else { return vec!["is not JSON".into()] };
    let says = |value: &Value, keys: &[&str]| {
        let filled = |found: &Value| found.as_str().map_or(!found.is_null(), |text| !text.trim().is_empty());
        keys.iter().any(|key| value.get(key).is_some_and(filled))
    };
    let missing = |case: &Value, name: &str| -> Vec<String> {
        let lacks = PASSPORT.iter().filter(|keys| !says(case, keys) && !says(&file, keys));
        lacks.map(|keys| format!("{name} has no `{}`", keys.join("` or `"))).collect()
    };
    let cases = ["cases", "checks"].iter().find_map(|key| file.get(key)?.as_array());
    let Some(cases) = cases.or_else(|| file.as_array()) else { return missing(&file, "the file") };
    let mut faults = Vec::new();
    for (position, case) in cases.iter().enumerate() {
        let id = case.get("id").and_then(Value::as_str);
        if id.is_none() {
            faults.push(format!("case {position} has no `id`"));
        }
        faults.extend(missing(case, &format!("case {}", id.unwrap_or("without id"))));
    }
    faults
}

/// Places other than the public registry that a lock file fetches packages from.
fn foreign_hosts(lock: &str) -> impl Iterator<Item = &str> {
    lock.lines()
        .filter_map(|line| line.trim().strip_prefix("\"resolved\": \"")?.split('"').next())
        .filter(|address| !address.starts_with("https://registry.npmjs.org/"))
}

fn edge_faults() -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for (name, allowed) in ALLOWED_EDGES {
        let direct = tree(name, &["--depth=1"])?;
        let wrong = direct.iter().filter(|package| *package != name && !allowed.contains(&package.as_str()));
        faults.extend(wrong.map(|package| format!("{name} must not use {package}")));
    }
    for name in BELOW_THE_BOUNDARY {
        let below = tree(name, &[])?;
        let wrong = below.iter().filter(|package| ONLY_ABOVE.contains(&package.as_str()));
        faults.extend(wrong.map(|package| format!("{package} is reached from {name}")));
    }
    Ok(faults)
}

/// Names of the packages that a crate ships with, in the wasm build.
fn tree(name: &str, more: &[&str]) -> Result<Vec<String>> {
    let fixed = ["tree", "--package", name, "--edges=normal", "--prefix=none", "--format={p}"];
    let mut command = cargo(&fixed);
    let text = output(command.args(["--target", crate::packages::WASM_TARGET]).args(more))
        .with_context(|| format!("dependencies of {name}"))?;
    Ok(text.lines().filter_map(|line| line.split(' ').next()).map(str::to_owned).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_case_without_a_passport_is_a_fault() {
        let good = r#"{"cases": [{"id": "a", "source": "s", "kind": "published", "how": {"R": "t.test"}}]}"#;
        assert_eq!(passport_faults(good), Vec::<String>::new());
        let bad = r#"{"cases": [{"id": "a", "source": " ", "kind": "published"}]}"#;
        assert_eq!(passport_faults(bad), ["case a has no `source`", "case a has no `command` or `how`"]);
        let shared = r#"{"kind": "published", "how": "R", "cases": [{"id": "a", "source": "s"}]}"#;
        assert_eq!(passport_faults(shared), Vec::<String>::new());
        assert_eq!(passport_faults("{}").len(), 3);
    }

    #[test]
    fn files_are_short_and_say_what_they_are() {
        assert_eq!(text_faults("crates/a/src/b.rs", "//! B.\n"), Vec::<String>::new());
        assert_eq!(text_faults("crates/a/src/b.rs", "fn b() {}\n").len(), 1);
        assert_eq!(text_faults("web/src/b.ts", &("// B.\n".to_owned() + &"\n".repeat(400))).len(), 1);
        assert_eq!(text_faults(BOUNDARY, &("//! B.\n".to_owned() + &"\n".repeat(149))).len(), 1);
    }

    #[test]
    fn a_lock_file_names_the_public_registry_only() {
        let lock =
            "\"resolved\": \"https://registry.npmjs.org/a.tgz\",\n \"resolved\": \"http://other/b.tgz\"\n";
        assert_eq!(foreign_hosts(lock).collect::<Vec<_>>(), ["http://other/b.tgz"]);
    }

    #[test]
    fn the_top_of_the_tree_is_closed() {
        assert!(top_level_fault("notes.txt").is_some());
        assert!(top_level_fault("crates/a/src/lib.rs").is_none());
    }
}
