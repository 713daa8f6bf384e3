//! The modules inside each crate: no circle of files, and layers that point one way where a crate has layers.
//!
//! A module is a file. What a parent passes on (`pub use`) counts as the file it comes from. Tests may look anywhere.

mod paths;
mod words;

use crate::shell::root;
use anyhow::{Context, Result};
use paths::{Said, said};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// The layers of a crate, the lowest first: a module uses its own layer and those before it. Each name is a file or a
/// folder beside the root of the crate.
const LAYERS: [(&str, &[&[&str]]); 1] = [(
    "reading",
    &[
        &[
            "doubt",
            "form",
            "hints",
            "limits",
            "outcome",
            "position",
            "remarks",
            "second_and_weather",
            "talk",
            "trim",
        ],
        &["lexicon"],
        &["cut"],
        &["prose", "understand"],
        &["take"],
        &["report"],
        &["doubts"],
        &["join", "link", "own"],
        &["plain", "read", "refusals"],
    ],
)];

/// Faults of all crates.
pub(crate) fn faults() -> Result<Vec<String>> {
    let mut faults = Vec::new();
    let mut folders: Vec<PathBuf> = Vec::new();
    for entry in fs::read_dir(root().join("crates"))? {
        folders.push(entry?.path().join("src"));
    }
    folders.sort();
    for folder in folders {
        let name = folder.parent().and_then(Path::file_name).map(|name| name.to_string_lossy().into_owned());
        let name = name.unwrap_or_default();
        for start in ["lib.rs", "main.rs"] {
            if folder.join(start).is_file() {
                let modules = Modules::of(&folder, start)?;
                faults.extend(circle_faults(&name, &modules));
                faults.extend(layer_faults(&name, &modules));
            }
        }
    }
    Ok(faults)
}

/// A path of names from the root of the crate; the root itself is empty.
type Name = Vec<String>;

/// The modules of a crate and which others each uses.
struct Modules {
    said: BTreeMap<Name, Said>,
    uses: BTreeMap<Name, BTreeSet<Name>>,
}

impl Modules {
    /// All that are reached from the root file.
    fn of(folder: &Path, start: &str) -> Result<Self> {
        let mut all = BTreeMap::new();
        let mut open = vec![(Vec::new(), folder.join(start), folder.to_owned())];
        while let Some((name, file, beside)) = open.pop() {
            let text = fs::read_to_string(&file).with_context(|| file.display().to_string())?;
            let said = said(&text, &name);
            for (child, named) in &said.children {
                let folder = file.parent().unwrap_or(folder);
                let flat = beside.join(format!("{child}.rs"));
                let (file, below) = match named {
                    Some(path) => (folder.join(path), folder.to_owned()),
                    None if flat.is_file() => (flat, beside.join(child)),
                    None => (beside.join(child).join("mod.rs"), beside.join(child)),
                };
                open.push(([name.as_slice(), std::slice::from_ref(child)].concat(), file, below));
            }
            all.insert(name, said);
        }
        Ok(Self::linked(all))
    }

    fn linked(said: BTreeMap<Name, Said>) -> Self {
        let mut modules = Self { said, uses: BTreeMap::new() };
        for (name, said) in &modules.said {
            let uses =
                said.uses.iter().map(|path| modules.file_of(path, 0)).filter(|used| used != name).collect();
            modules.uses.insert(name.clone(), uses);
        }
        modules
    }

    /// The module in whose file the item behind a path stands, through everything that is passed on.
    fn file_of(&self, path: &[String], passed: usize) -> Name {
        let mut at = 0;
        while at < path.len() && self.said.contains_key(&path[..=at]) {
            at += 1;
        }
        let module = path[..at].to_vec();
        // A chain of a few is passed on; more is a circle of its own.
        if let (Some(item), Some(said), true) = (path.get(at), self.said.get(&module), passed < 8) {
            let named = said.passed_on.iter().find(|(name, _)| name == item);
            if let Some((_, from)) = named {
                let from = [from.as_slice(), &path[at + 1..]].concat();
                return self.file_of(&from, passed + 1);
            }
        }
        module
    }
}

/// How a fault names a module.
fn shown(name: &[String]) -> String {
    if name.is_empty() { "the root".to_owned() } else { name.join("::") }
}

/// One fault for each knot of modules that all reach each other, with the shortest way around it.
fn circle_faults(of: &str, modules: &Modules) -> Vec<String> {
    let mut faults = Vec::new();
    let mut done: BTreeSet<&Name> = BTreeSet::new();
    for name in modules.uses.keys() {
        if done.contains(name) {
            continue;
        }
        let Some(way) = way_back(modules, name) else { continue };
        let knot: BTreeSet<&Name> = modules
            .uses
            .keys()
            .filter(|other| reaches(modules, name, other) && reaches(modules, other, name))
            .collect();
        let steps: Vec<String> = way.iter().map(|name| shown(name)).collect();
        faults.push(format!("{of}: {} modules in a circle, such as {}", knot.len(), steps.join(" → ")));
        done.extend(knot);
    }
    faults
}

/// The shortest way from a module back to itself.
fn way_back<'a>(modules: &'a Modules, start: &'a Name) -> Option<Vec<&'a Name>> {
    let mut from: BTreeMap<&Name, &Name> = BTreeMap::new();
    let mut front = vec![start];
    while !front.is_empty() && !from.contains_key(start) {
        let mut next = Vec::new();
        for name in front {
            for used in modules.uses.get(name).into_iter().flatten() {
                if !from.contains_key(used) {
                    from.insert(used, name);
                    next.push(used);
                }
            }
        }
        front = next;
    }
    let mut way = vec![start];
    let mut at = *from.get(start)?;
    while at != start {
        way.push(at);
        at = from.get(at)?;
    }
    way.push(start);
    way.reverse();
    Some(way)
}

fn reaches(modules: &Modules, start: &Name, end: &Name) -> bool {
    let mut seen: BTreeSet<&Name> = BTreeSet::new();
    let mut open = vec![start];
    while let Some(name) = open.pop() {
        for used in modules.uses.get(name).into_iter().flatten() {
            if used == end {
                return true;
            }
            if seen.insert(used) {
                open.push(used);
            }
        }
    }
    false
}

/// Modules that use a layer above their own, or stand in none.
fn layer_faults(of: &str, modules: &Modules) -> Vec<String> {
    let Some((_, layers)) = LAYERS.iter().find(|(name, _)| *name == of) else { return Vec::new() };
    let layer = |name: &Name| {
        let top = name.first()?;
        layers.iter().position(|layer| layer.contains(&top.as_str()))
    };
    let mut faults = Vec::new();
    for (name, uses) in modules.uses.iter().filter(|(name, _)| !name.is_empty()) {
        let Some(own) = layer(name) else {
            faults.push(format!("{of}: `{}` stands in no layer", shown(name)));
            continue;
        };
        let above = uses.iter().filter(|used| layer(used).is_none_or(|used| used > own));
        faults
            .extend(above.map(|used| {
                format!("{of}: `{}` uses `{}`, which stands above it", shown(name), shown(used))
            }));
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    fn modules(files: &[(&str, &str)]) -> Modules {
        let name = |path: &str| {
            path.split("::").filter(|name| !name.is_empty()).map(str::to_owned).collect::<Name>()
        };
        Modules::linked(files.iter().map(|(path, text)| (name(path), said(text, &name(path)))).collect())
    }

    #[test]
    fn a_circle_is_found_with_its_shortest_way_around() {
        let circle = modules(&[
            ("", "mod a; mod b; mod c; mod d;"),
            ("a", "use crate::b::X;"),
            ("b", "use crate::c::Y; use crate::a::Z;"),
            ("c", "fn f() { crate::a::g() }"),
            ("d", "use crate::a::Z;"),
        ]);
        assert_eq!(circle_faults("x", &circle), ["x: 3 modules in a circle, such as a → b → a"]);
    }

    #[test]
    fn what_a_parent_passes_on_is_the_file_it_comes_from() {
        let parent = "mod b; mod c; pub use b::X;";
        let passed_on = modules(&[("", "mod a;"), ("a", parent), ("a::b", ""), ("a::c", "use super::X;")]);
        assert_eq!(circle_faults("x", &passed_on), Vec::<String>::new());
        let own = modules(&[("", "mod a;"), ("a", "mod b; fn f() { b::g() }"), ("a::b", "use super::f;")]);
        assert_eq!(circle_faults("x", &own).len(), 1);
    }

    #[test]
    fn a_layer_sees_only_those_below_it() {
        let below =
            modules(&[("", "mod cut; mod lexicon;"), ("cut", "use crate::lexicon::X;"), ("lexicon", "")]);
        assert_eq!(layer_faults("reading", &below), Vec::<String>::new());
        let above = modules(&[("", "mod cut; mod lexicon;"), ("cut", ""), ("lexicon", "use crate::cut::X;")]);
        assert_eq!(layer_faults("reading", &above).len(), 1);
        let nowhere = modules(&[("", "mod odds;"), ("odds", "")]);
        assert_eq!(layer_faults("reading", &nowhere), ["reading: `odds` stands in no layer"]);
    }
}
