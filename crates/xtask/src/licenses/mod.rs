//! What others wrote of what is shipped, with the texts of their licenses: beside the site, and in the package.

mod models;
mod shipped;
mod texts;

use crate::shell::root;
use anyhow::{Context, Result, bail};
use shipped::{crates, imported, marked};
use std::fmt::Write;
use std::fs;
use texts::Package;

const SITE: &str = "dist/licenses.md";
const PACKAGE: &str = "web/pkg/licenses.md";
const WORKER: &str = "dist/sw.js";

/// Packages that are shipped in the same way.
struct Part {
    title: &'static str,
    packages: Vec<Package>,
}

/// Writes both files, of what was built.
pub(crate) fn write() -> Result<()> {
    write_package()?;
    write_site()
}

/// Writes the file of the package for other programs: what is in the wasm and the scripts beside it.
pub(crate) fn write_package() -> Result<()> {
    fs::write(root().join(PACKAGE), page(&[wasm()?]))?;
    Ok(())
}

/// Writes the file of the site.
pub(crate) fn write_site() -> Result<()> {
    fs::write(root().join(SITE), page(&[wasm()?, scripts()?, worker()?, tools()?, photo_models()?]))?;
    Ok(())
}

/// Fails when something that is shipped does not stand in the published files with a text.
pub(crate) fn check() -> Result<()> {
    let read = |file: &str| fs::read_to_string(root().join(file)).with_context(|| file.to_owned());
    let crates: Vec<String> =
        crates()?.into_iter().map(|(name, version)| format!("{name} {version}")).collect();
    // Not from the bundler's list, of which the file was made.
    let mut site = crates.clone();
    site.extend(imported(&root().join("web/src"))?);
    site.extend(marked(&read(WORKER)?).iter().map(|folder| folder.replace("node_modules/", "")));
    site.extend(models::packages()?.into_iter().map(|package| package.name));
    let mut lacking = faults(&read(SITE)?, &site);
    lacking.extend(faults(&read(PACKAGE)?, &crates));
    println!("   {} crates, {} npm packages at least", crates.len(), site.len() - crates.len());
    if lacking.is_empty() { Ok(()) } else { bail!("{}", lacking.join("\n  ")) }
}

fn wasm() -> Result<Part> {
    let packages = shipped::wasm()?;
    Ok(Part { title: "In the WebAssembly, and in the scripts that load it", packages })
}

fn scripts() -> Result<Part> {
    Ok(Part { title: "In the scripts", packages: shipped::npm(&shipped::bundled()?)? })
}

fn photo_models() -> Result<Part> {
    Ok(Part { title: "In the models that read photos", packages: models::packages()? })
}

fn worker() -> Result<Part> {
    let worker = fs::read_to_string(root().join(WORKER)).context(WORKER)?;
    Ok(Part { title: "In the service worker", packages: shipped::npm(&marked(&worker))? })
}

fn tools() -> Result<Part> {
    Ok(Part { title: "Of the tools that bundle the scripts, in small parts", packages: shipped::bundlers()? })
}

/// The file: every package with the numbers of its texts, then each text once.
fn page(parts: &[Part]) -> String {
    let mut page = String::from(
        "# Licenses\n\nStraight Answer itself is licensed under MIT or Apache-2.0, as you like. It ships what others wrote:\n",
    );
    let mut texts: Vec<&str> = Vec::new();
    for part in parts.iter().filter(|part| !part.packages.is_empty()) {
        write!(page, "\n## {}\n\n", part.title).expect("a string takes text");
        for Package { name, version, license, texts: own } in &part.packages {
            let numbers = own.iter().map(|text| {
                let at = texts.iter().position(|known| is_same(known, text)).unwrap_or_else(|| {
                    texts.push(text);
                    texts.len() - 1
                });
                format!("[text {0}](#text-{0})", at + 1)
            });
            let numbers = numbers.collect::<Vec<_>>().join(", ");
            writeln!(page, "- {name} {version} ({license}): {numbers}").expect("a string takes text");
        }
    }
    page.push_str("\n## Texts\n");
    for (at, text) in texts.iter().enumerate() {
        write!(page, "\n### Text {}\n\n`````text\n{text}\n`````\n", at + 1).expect("a string takes text");
    }
    page
}

/// Copies of one text are set in lines of other lengths.
fn is_same(one: &str, other: &str) -> bool {
    one.split_whitespace().eq(other.split_whitespace())
}

/// What does not stand in a file, or without a text; a name may have its version behind it.
fn faults(page: &str, names: &[String]) -> Vec<String> {
    let has_text = |number: &str| {
        let start = format!("\n### Text {number}\n\n`````text\n");
        page.split_once(&start).is_some_and(|(_, text)| !text.trim_start().starts_with("`````"))
    };
    let line = |name: &String| page.lines().find(|line| line.starts_with(&format!("- {name} ")));
    let fault = |name: &String| match line(name).map(|line| line.split("(#text-").skip(1).collect::<Vec<_>>())
    {
        None => Some(format!("{name} is not there")),
        Some(texts) if texts.is_empty() => Some(format!("{name} stands there without a text")),
        Some(texts) => texts
            .iter()
            .filter_map(|rest| rest.split_once(')'))
            .find(|(number, _)| !has_text(number))
            .map(|(number, _)| format!("{name}: text {number} is not there")),
    };
    names.iter().filter_map(fault).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn package(name: &str, texts: &[&str]) -> Package {
        let texts = texts.iter().map(|text| (*text).to_owned()).collect();
        Package { name: name.into(), version: "1.0.0".into(), license: "MIT".into(), texts }
    }

    fn names(names: &[&str]) -> Vec<String> {
        names.iter().map(|name| (*name).to_owned()).collect()
    }

    #[test]
    fn a_text_that_several_share_stands_once() {
        let packages = vec![package("one", &["A", "B"]), package("two", &[" B\n"])];
        let page = page(&[Part { title: "Here", packages }]);
        assert!(page.contains("- one 1.0.0 (MIT): [text 1](#text-1), [text 2](#text-2)\n"), "{page}");
        assert!(page.contains("- two 1.0.0 (MIT): [text 2](#text-2)\n"), "{page}");
        assert_eq!(page.matches("### Text").count(), 2);
        assert_eq!(faults(&page, &names(&["one 1.0.0", "two"])), Vec::<String>::new());
    }

    #[test]
    fn what_lacks_is_named() {
        let page =
            page(&[Part { title: "Here", packages: vec![package("one", &["A"]), package("two", &[])] }]);
        let asked = names(&["one 1.0.1", "on", "two", "three"]);
        let found = faults(&page, &asked);
        let lacking = [
            "one 1.0.1 is not there",
            "on is not there",
            "two stands there without a text",
            "three is not there",
        ];
        assert_eq!(found, lacking);
        let cut = page.split("### Text 1").next().unwrap_or_default();
        assert_eq!(faults(cut, &names(&["one"])), ["one: text 1 is not there"]);
        assert_eq!(faults(&page.replace("\nA\n", "\n"), &names(&["one"])), ["one: text 1 is not there"]);
    }
}
