//! The floors of `web/src`: which folder may import from which, and that no files import each other in a circle.

use crate::shell::root;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

const SOURCES: &str = "web/src/";

/// What every part of the page stands on, from the lowest floor up, and what each may use.
const GROUND: [(&str, &[&str]); 7] = [
    ("styles", &[]),
    ("text", &[]),
    ("core", &["text"]),
    ("format", &["core", "text"]),
    ("chart", &["core", "text"]),
    ("state", &["core", "format", "text"]),
    ("pieces", &["chart", "core", "state", "text"]),
];

/// What a golfer sees, a folder for each, and what it may use beside the ground.
const THINGS: [(&str, &[&str]); 23] = [
    ("start", &[]),
    ("entry", &[]),
    ("photo", &["entry"]),
    ("shots", &["start"]),
    ("question", &[]),
    ("numbers", &[]),
    ("doubts", &[]),
    ("answer", &["doubts", "numbers"]),
    ("consistency", &[]),
    ("trust", &["consistency"]),
    ("bet", &[]),
    ("luck", &[]),
    ("landing", &[]),
    ("cause", &[]),
    ("potential", &[]),
    ("second", &[]),
    ("weather", &[]),
    ("share", &[]),
    ("sent", &[]),
    ("book", &["share"]),
    ("fair", &["book", "share"]),
    ("claim", &["book", "weather"]),
    ("fitting", &[]),
];

/// What puts the things together: each may use all of them, and what stands before it here.
const TOP: [&str; 3] = ["page", "main.ts", "embed"];

/// Faults of the web side's sources among all files of the tree.
pub(crate) fn faults(files: &[&str]) -> Vec<String> {
    let imports: Imports = files
        .iter()
        .filter(|file| file.starts_with(SOURCES) && is_source(file))
        .filter_map(|file| Some(((*file).to_owned(), fs::read_to_string(root().join(file)).ok()?)))
        .map(|(file, text)| {
            let named = imported(&file, &text);
            (file, named)
        })
        .collect();
    let mut faults = edge_faults(&imports);
    faults.extend(
        circle(&imports).map(|files| format!("import each other in a circle: {}", files.join(" → "))),
    );
    faults
}

/// Files with those that each imports, by their paths in the tree.
type Imports = BTreeMap<String, BTreeSet<String>>;

fn is_source(file: &str) -> bool {
    [".ts", ".css"].iter().any(|ending| file.ends_with(ending))
}

/// What a file imports of the sources, at once or later, types too.
fn imported(file: &str, text: &str) -> BTreeSet<String> {
    ["from \"", "import \"", "import(\""]
        .iter()
        .flat_map(|before| text.split(before).skip(1))
        .filter_map(|rest| rest.split(['"', '?']).next())
        .filter(|name| name.starts_with('.'))
        .map(|name| resolved(file, name))
        .filter(|path| path.starts_with(SOURCES))
        .collect()
}

/// The file that a name stands for where it is written; scripts are named as they are once built.
fn resolved(file: &str, name: &str) -> String {
    let mut folders: Vec<&str> = file.split('/').collect();
    folders.pop();
    for step in name.split('/') {
        match step {
            "." => {}
            ".." => drop(folders.pop()),
            _ => folders.push(step),
        }
    }
    let path = folders.join("/");
    path.strip_suffix(".js").map_or(path.clone(), |stem| format!("{stem}.ts"))
}

fn edge_faults(imports: &Imports) -> Vec<String> {
    let mut faults = Vec::new();
    for (file, named) in imports {
        let from = folder(file);
        let Some(allowed) = allowed(from) else {
            faults.push(format!("{file}: `{from}` stands on no floor of tidy_web.rs"));
            continue;
        };
        let wrong = named.iter().filter(|path| folder(path) != from && !allowed.contains(&folder(path)));
        faults.extend(wrong.map(|path| format!("{file}: `{from}` must not use {path}")));
    }
    faults
}

/// The folder of the sources that a file stands in; a file beside the folders counts as one.
fn folder(path: &str) -> &str {
    path.strip_prefix(SOURCES).and_then(|rest| rest.split('/').next()).unwrap_or_default()
}

fn allowed(from: &str) -> Option<Vec<&'static str>> {
    let ground = || GROUND.iter().map(|(name, _)| *name);
    if let Some((_, below)) = GROUND.iter().find(|(name, _)| *name == from) {
        return Some(below.to_vec());
    }
    if let Some((_, beside)) = THINGS.iter().find(|(name, _)| *name == from) {
        return Some(ground().chain(beside.iter().copied()).collect());
    }
    let at = TOP.iter().position(|name| *name == from)?;
    let things = THINGS.iter().map(|(name, _)| *name);
    Some(ground().chain(things).chain(TOP[..at].iter().copied()).collect())
}

/// Files of which each imports the next and the last the first, if there are any.
fn circle(imports: &Imports) -> Option<Vec<&str>> {
    let mut done = BTreeSet::new();
    imports.keys().find_map(|file| circle_from(file, imports, &mut Vec::new(), &mut done))
}

fn circle_from<'a>(
    file: &'a str,
    imports: &'a Imports,
    path: &mut Vec<&'a str>,
    done: &mut BTreeSet<&'a str>,
) -> Option<Vec<&'a str>> {
    if let Some(at) = path.iter().position(|passed| *passed == file) {
        return Some(path[at..].to_vec());
    }
    if !done.insert(file) {
        return None;
    }
    path.push(file);
    let mut named = imports.get(file).into_iter().flatten();
    let found = named.find_map(|next| circle_from(next, imports, path, done));
    path.pop();
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn imports(of: &[(&str, &str)]) -> Imports {
        of.iter().map(|(file, text)| ((*file).to_owned(), imported(file, text))).collect()
    }

    #[test]
    fn imports_are_found_in_every_way_of_writing_them() {
        let text = "import \"./a.css\";\nimport type {\n  B,\n} from \"../core/b.js\";\nimport c from \"./c.ts?worker&url\";\n\
                    const d = () => import(\"../luck/d.js\");\nimport { html } from \"lit\";\nimport x from \"../../pkg/x.js\";";
        let named: Vec<String> = imported("web/src/share/e.ts", text).into_iter().collect();
        let expected =
            ["core/b.ts", "luck/d.ts", "share/a.css", "share/c.ts"].map(|path| format!("{SOURCES}{path}"));
        assert_eq!(named, expected);
    }

    #[test]
    fn folders_import_down_and_never_up() {
        let down = imports(&[("web/src/luck/part.ts", "from \"../core/engine.js\"")]);
        assert_eq!(edge_faults(&down), Vec::<String>::new());
        let up = imports(&[("web/src/core/engine.ts", "from \"../luck/part.js\"")]);
        assert_eq!(edge_faults(&up).len(), 1);
        let beside = imports(&[("web/src/luck/part.ts", "import(\"../landing/part.js\")")]);
        assert_eq!(edge_faults(&beside).len(), 1);
        let homeless = imports(&[("web/src/new/a.ts", "")]);
        assert_eq!(edge_faults(&homeless).len(), 1);
    }

    #[test]
    fn a_circle_of_files_is_found_and_a_diamond_is_none() {
        let [a, b, c] = ["a", "b", "c"].map(|name| format!("web/src/luck/{name}.ts"));
        let diamond = imports(&[(&a, "from \"./b.js\" from \"./c.js\""), (&b, "from \"./c.js\""), (&c, "")]);
        assert_eq!(circle(&diamond), None);
        let round = imports(&[(&a, "from \"./b.js\""), (&b, "from \"./c.js\""), (&c, "from \"./b.js\"")]);
        assert_eq!(circle(&round), Some(vec![b.as_str(), c.as_str()]));
    }

    /// What a thing may use beside the ground stands before it, so no circle of folders can be allowed.
    #[test]
    fn every_floor_uses_those_before_it() {
        for rows in [&GROUND[..], &THINGS[..]] {
            for (at, (name, uses)) in rows.iter().enumerate() {
                let before: Vec<&str> = rows[..at].iter().map(|(name, _)| *name).collect();
                assert!(uses.iter().all(|one| before.contains(one)), "{name}");
            }
        }
    }
}
