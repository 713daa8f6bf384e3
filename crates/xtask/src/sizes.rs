//! What a visitor downloads, after gzip and after brotli, against its budgets; `cargo xtask sizes` writes it into the README.
//!
//! Counted by the manifest that Vite leaves: a page's file, what its script imports statically, their styles, the worker and
//! the wasm they name. Compressed sizes are those of the files that the build lays beside each file.

use crate::quoted::Quote;
use crate::shell::root;
use anyhow::{Context, Result, bail};
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};

const KB: u64 = 1000;

/// What is counted, and how much it may be in bytes after gzip.
struct Budget {
    name: &'static str,
    what: &'static str,
    /// One byte more fails the step.
    most: u64,
    files: fn(&Site) -> Result<BTreeSet<String>>,
}

/// What this counted, in the README.
pub(crate) const QUOTE: Quote = Quote { marker: "sizes", file: "tests/sizes.json", text: markdown };

/// The cores were 182, 183 and 587 kB before sentences that no other contradicts (the facts of each comparison, levels beside
/// intervals, a printed end that crosses no line) and doubts that an answer waits for came; what each later part adds is added here.
const BUDGETS: [Budget; 3] = [
    Budget {
        name: "pasted",
        what: "everything before a first answer to pasted shots",
        most: 234 * KB,
        files: Site::pasted,
    },
    Budget {
        name: "link",
        what: "everything before the answer of an opened link",
        most: 235 * KB,
        files: Site::link,
    },
    Budget { name: "wasm", what: "all wasm, workbooks and photos apart", most: 814 * KB, files: Site::wasm },
];

/// Prints and fails when a budget is passed.
pub(crate) fn print_and_check() -> Result<()> {
    let found = measured()?;
    print!("{}", markdown(&found)?);
    println!("   {}", Site::built()?.photos()?);
    let passed = |it: &&Budget| found[it.name]["gzip"].as_u64().is_none_or(|size| size > it.most);
    let passed: Vec<_> = BUDGETS.iter().filter(passed).map(|it| it.what).collect();
    if passed.is_empty() { Ok(()) } else { bail!("too large: {}", passed.join(", ")) }
}

/// Prints every file, writes the figures and the README's table of them, then checks.
pub(crate) fn write() -> Result<()> {
    let site = Site::built()?;
    let pasted = site.pasted()?;
    for (title, files) in
        [("before a first answer", &pasted), ("later, when it is needed", &site.later(&pasted)?)]
    {
        println!("   {title}:");
        for file in files {
            let Weight { plain, gzip, brotli } = site.weight(file)?;
            println!("   {gzip:>7} gzip {brotli:>7} brotli of {plain:>7}  {file}");
        }
    }
    fs::write(root().join(QUOTE.file), format!("{:#}\n", measured()?))?;
    QUOTE.write()?;
    print_and_check()
}

/// The table of a file of figures.
pub(crate) fn markdown(found: &Value) -> Result<String> {
    let mut text = String::from("| | gzip | brotli | at most, after gzip |\n|---|---:|---:|---:|\n");
    for Budget { name, what, most, .. } in &BUDGETS {
        let size = |kind: &str| found[*name][kind].as_u64().with_context(|| format!("no {kind} of {name}"));
        let [gzip, brotli] = [size("gzip")?, size("brotli")?].map(|bytes| bytes.div_ceil(KB));
        writeln!(text, "| {what} | {gzip} kB | {brotli} kB | {} kB |", most / KB)?;
    }
    Ok(text)
}

fn measured() -> Result<Value> {
    let site = Site::built()?;
    let mut found = json!({});
    for budget in &BUDGETS {
        let files = (budget.files)(&site)?;
        if !files.iter().any(|file| is_wasm(file)) {
            bail!("no wasm among what is {}: the count cannot be right", budget.what);
        }
        let weights = files.iter().map(|file| site.weight(file)).collect::<Result<Vec<_>>>()?;
        let sum = |of: fn(&Weight) -> u64| weights.iter().map(of).sum::<u64>();
        found[budget.name] = json!({ "gzip": sum(|it| it.gzip), "brotli": sum(|it| it.brotli) });
    }
    Ok(found)
}

/// Bytes of one file.
struct Weight {
    plain: u64,
    gzip: u64,
    brotli: u64,
}

/// The finished site.
struct Site {
    dist: PathBuf,
    /// Chunks by their keys, with what each imports.
    manifest: Value,
}

impl Site {
    fn built() -> Result<Self> {
        let dist = root().join("dist");
        let manifest =
            fs::read_to_string(dist.join(".vite/manifest.json")).context("dist/: run `cargo xtask build`")?;
        Ok(Self { dist, manifest: serde_json::from_str(&manifest)? })
    }

    fn weight(&self, file: &str) -> Result<Weight> {
        let size =
            |name: String| Ok::<_, anyhow::Error>(fs::metadata(self.dist.join(&name)).context(name)?.len());
        Ok(Weight {
            plain: size(file.into())?,
            gzip: size(format!("{file}.gz"))?,
            brotli: size(format!("{file}.br"))?,
        })
    }

    /// The page, its scripts and styles, the worker and the core that answers first.
    fn pasted(&self) -> Result<BTreeSet<String>> {
        let mut files = needed(&self.manifest, &key_of(&self.manifest, "name", "main")?);
        files.insert("index.html".into());
        Ok(files)
    }

    /// The same, and what shows who sent it.
    fn link(&self) -> Result<BTreeSet<String>> {
        let mut files = self.pasted()?;
        files.extend(needed(&self.manifest, &key_of(&self.manifest, "src", "src/sent/sent.ts")?));
        Ok(files)
    }

    fn wasm(&self) -> Result<BTreeSet<String>> {
        Ok(self
            .files()?
            .into_iter()
            .filter(|file| is_wasm(file) && !file.contains("workbook") && !file.contains("photo"))
            .collect())
    }

    /// What comes with the first photo, counted apart: program, models, which are packed already, and scripts.
    fn photos(&self) -> Result<String> {
        let files: Vec<String> = self
            .files()?
            .into_iter()
            .filter(|file| file.starts_with("assets/") && file.contains("photo"))
            .collect();
        let ends = |file: &str, ending: &str| file.ends_with(ending);
        if !files.iter().any(|file| ends(file, ".bin")) {
            return Ok("photos are left out".into());
        }
        let mut total = 0;
        for file in &files {
            if ends(file, ".bin") {
                total += fs::metadata(self.dist.join(file))?.len();
            } else if [".wasm", ".js", ".css"].iter().any(|ending| ends(file, ending)) {
                total += self.weight(file)?.gzip;
            }
        }
        Ok(format!("what reads photos, once and apart: {} kB after gzip", total.div_ceil(KB)))
    }

    fn later(&self, than: &BTreeSet<String>) -> Result<BTreeSet<String>> {
        let is_loaded = |file: &String| [".js", ".css", ".wasm"].iter().any(|ending| file.ends_with(ending));
        Ok(self.files()?.into_iter().filter(|file| is_loaded(file) && !than.contains(file)).collect())
    }

    fn files(&self) -> Result<Vec<String>> {
        let mut files = Vec::new();
        for folder in ["", "assets/"] {
            for entry in fs::read_dir(self.dist.join(folder))? {
                files.extend(entry?.file_name().to_str().map(|name| format!("{folder}{name}")));
            }
        }
        Ok(files)
    }
}

/// The chunk of a name or a source.
fn key_of(manifest: &Value, field: &str, value: &str) -> Result<String> {
    let chunks = manifest.as_object().context("the manifest is no object")?;
    let found = chunks.iter().find(|(_, chunk)| chunk[field] == value);
    found.map(|(key, _)| key.clone()).with_context(|| format!("no chunk whose {field} is {value}"))
}

/// The files that a chunk needs at once: imports, styles, and what it names by address except styles, which load later.
fn needed(manifest: &Value, key: &str) -> BTreeSet<String> {
    let mut waiting = vec![key.to_owned()];
    let (mut seen, mut files) = (BTreeSet::new(), BTreeSet::new());
    let strings = |of: &Value| -> Vec<String> {
        of.as_array().into_iter().flatten().filter_map(|it| it.as_str().map(str::to_owned)).collect()
    };
    while let Some(key) = waiting.pop() {
        let chunk = &manifest[&key];
        if !seen.insert(key) {
            continue;
        }
        files.extend(chunk["file"].as_str().map(str::to_owned));
        files.extend(strings(&chunk["css"]));
        files.extend(strings(&chunk["assets"]).into_iter().filter(|file| !file.ends_with(".css")));
        waiting.extend(strings(&chunk["imports"]));
    }
    files
}

fn is_wasm(file: &str) -> bool {
    Path::new(file).extension().is_some_and(|ending| ending == "wasm")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_imported_statically_counts_and_nothing_else() {
        let manifest = json!({
            "_main.js": { "file": "a/main.js", "name": "main", "imports": ["_page.js"], "dynamicImports": ["src/later.ts"],
                "css": ["a/main.css"], "assets": ["a/worker.js", "a/first.wasm", "a/print.css"] },
            "_page.js": { "file": "a/page.js", "imports": ["_main.js"] },
            "src/later.ts": { "file": "a/later.js", "src": "src/later.ts" },
        });
        let key = key_of(&manifest, "name", "main").unwrap();
        let files: Vec<_> = needed(&manifest, &key).into_iter().collect();
        assert_eq!(files, ["a/first.wasm", "a/main.css", "a/main.js", "a/page.js", "a/worker.js"]);
        assert!(key_of(&manifest, "name", "mian").is_err());
    }
}
