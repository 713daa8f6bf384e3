//! Which other modules the text of a Rust file names, and which items it passes on: read from words, without a compiler.
//!
//! Comments, texts and whatever stands under `#[cfg(test)]` say nothing here. A path counts when it begins with
//! `crate`, `self`, `super` or one of the file's own modules.

use super::words::{Word, words_without_tests};

/// What a file says of modules.
#[derive(Debug, Default, PartialEq, Eq)]
pub(crate) struct Said {
    /// Modules in files of their own, with the file where it is named outright.
    pub(crate) children: Vec<(String, Option<String>)>,
    /// Full paths from the root of the crate that it uses.
    pub(crate) uses: Vec<Vec<String>>,
    /// Names that it passes on, with the full path behind each; `*` for all of a module.
    pub(crate) passed_on: Vec<(String, Vec<String>)>,
}

/// Reads the text of the module that stands at this path of its crate.
pub(crate) fn said(text: &str, module: &[String]) -> Said {
    let words = words_without_tests(text);
    let mut said = Said { children: children(&words), ..Said::default() };
    let mut walk = Walk { words: &words, at: 0, inside: module.to_vec(), ends: Vec::new(), depth: 0 };
    while walk.at < words.len() {
        walk.step(&mut said);
    }
    said
}

/// `mod name;`, perhaps with `#[path = "file"]` before it.
fn children(words: &[Word]) -> Vec<(String, Option<String>)> {
    let mut found = Vec::new();
    let mut path = None;
    for (at, word) in words.iter().enumerate() {
        if word.is("path")
            && words.get(at + 1) == Some(&Word::Sign('='))
            && let Some(Word::Text(text)) = words.get(at + 2)
        {
            path = Some(text.clone());
        }
        if let (true, Some(Word::Name(name)), Some(end)) =
            (word.is("mod"), words.get(at + 1), words.get(at + 2))
        {
            let file = path.take();
            if *end == Word::Sign(';') {
                found.push((name.clone(), file));
            }
        }
    }
    found
}

/// A walk over the words that knows in which module it is.
struct Walk<'a> {
    words: &'a [Word],
    at: usize,
    inside: Vec<String>,
    /// Depths at which modules written in place end.
    ends: Vec<usize>,
    depth: usize,
}

impl Walk<'_> {
    fn step(&mut self, said: &mut Said) {
        let words = self.words;
        match &words[self.at] {
            Word::Sign('{') => self.depth += 1,
            Word::Sign('}') => {
                self.depth = self.depth.saturating_sub(1);
                if self.ends.last() == Some(&self.depth) {
                    self.ends.pop();
                    self.inside.pop();
                }
            }
            Word::Name(name) if name == "mod" => {
                if let (Some(Word::Name(name)), Some(Word::Sign('{'))) =
                    (words.get(self.at + 1), words.get(self.at + 2))
                {
                    self.inside.push(name.clone());
                    self.ends.push(self.depth);
                }
            }
            Word::Name(name) if name == "use" => {
                let passes_on = self.is_public();
                self.at += 1;
                let mut found = Vec::new();
                self.tree(&[], &mut found);
                for (name, path) in found {
                    let Some(path) = self.full(&path, said) else { continue };
                    if passes_on {
                        said.passed_on.push((name, path));
                    } else {
                        said.uses.push(path);
                    }
                }
                return;
            }
            Word::Name(_) if self.begins_a_path() => {
                let mut path = Vec::new();
                while let Some(Word::Name(name)) = words.get(self.at) {
                    path.push(name.clone());
                    if words.get(self.at + 1) != Some(&Word::Then) {
                        break;
                    }
                    self.at += 2;
                }
                said.uses.extend(self.full(&path, said));
            }
            _ => {}
        }
        self.at += 1;
    }

    /// Whether `pub` or `pub(…)` stands before this word.
    fn is_public(&self) -> bool {
        let before = &self.words[..self.at];
        match before.last() {
            Some(Word::Sign(')')) => {
                let open = before.iter().rposition(|word| *word == Word::Sign('('));
                open.and_then(|open| before.get(open.checked_sub(1)?)).is_some_and(|word| word.is("pub"))
            }
            Some(word) => word.is("pub"),
            None => false,
        }
    }

    /// A name with `::` behind it and none before; not the place in `pub(in crate::a)`.
    fn begins_a_path(&self) -> bool {
        let before = self.at.checked_sub(1).map(|at| &self.words[at]);
        let joined = matches!(before, Some(Word::Then | Word::Sign('.' | '$')));
        let is_place = before.is_some_and(|word| word.is("in") || word.is("fn"));
        self.words.get(self.at + 1) == Some(&Word::Then) && !joined && !is_place
    }

    /// The paths of a `use` from here on, each with the name it gets.
    fn tree(&mut self, before: &[String], found: &mut Vec<(String, Vec<String>)>) {
        let mut path = before.to_vec();
        loop {
            match self.words.get(self.at) {
                Some(Word::Name(name)) if name == "as" => {
                    self.at += 1;
                    let name = match self.words.get(self.at) {
                        Some(Word::Name(name)) => name.clone(),
                        _ => String::new(),
                    };
                    self.at += 1;
                    found.push((name, path));
                    return;
                }
                Some(Word::Name(name)) => {
                    if name != "self" || path.is_empty() {
                        path.push(name.clone());
                    }
                    self.at += 1;
                }
                Some(Word::Then) => self.at += 1,
                Some(Word::Sign('*')) => {
                    self.at += 1;
                    found.push(("*".into(), path));
                    return;
                }
                Some(Word::Sign('{')) => {
                    self.at += 1;
                    while !matches!(self.words.get(self.at), None | Some(Word::Sign('}'))) {
                        self.tree(&path, found);
                        if self.words.get(self.at) == Some(&Word::Sign(',')) {
                            self.at += 1;
                        }
                    }
                    self.at += 1;
                    return;
                }
                _ => {
                    if let Some(last) = path.last() {
                        found.push((last.clone(), path.clone()));
                    }
                    // A sign that no `use` has: go on behind it rather than stand still.
                    if !matches!(self.words.get(self.at), None | Some(Word::Sign(',' | ';' | '}'))) {
                        self.at += 1;
                    }
                    return;
                }
            }
        }
    }

    /// The path from the root of the crate; `None` for one of another crate.
    fn full(&self, path: &[String], said: &Said) -> Option<Vec<String>> {
        let first = path.first()?;
        let ups = path.iter().take_while(|name| *name == "super").count();
        let base = match first.as_str() {
            "crate" => return Some(path[1..].to_vec()),
            "self" => [&self.inside, &path[1..]].concat(),
            "super" => [&self.inside[..self.inside.len().saturating_sub(ups)], &path[ups..]].concat(),
            own if self.ends.is_empty() && said.children.iter().any(|(name, _)| name == own) => {
                [&self.inside, path].concat()
            }
            _ => return None,
        };
        Some(base)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn paths(text: &str, module: &str) -> Vec<String> {
        let module: Vec<String> =
            module.split("::").filter(|name| !name.is_empty()).map(str::to_owned).collect();
        said(text, &module).uses.into_iter().map(|path| path.join("::")).collect()
    }

    #[test]
    fn every_way_to_name_a_module_is_seen() {
        assert_eq!(
            paths("use crate::a::{self, b::{C, d}, E as F};", "x"),
            ["a", "a::b::C", "a::b::d", "a::E"]
        );
        assert_eq!(
            paths("fn f() -> crate::a::B { super::c::d(self::e) }", "x::y"),
            ["a::B", "x::c::d", "x::y::e"]
        );
        assert_eq!(paths("mod own;\nfn f() { own::g(); other::h(); }", "x"), ["x::own::g"]);
        assert_eq!(
            paths("mod inner { use super::a::B; } use super::c::D;", "x::y"),
            ["x::y::a::B", "x::c::D"]
        );
        assert_eq!(paths("use crate::a::*;", ""), ["a"]);
    }

    #[test]
    fn comments_texts_and_tests_say_nothing() {
        let text = r##"
            //! [`crate::a`] /* crate::b */
            const T: &str = "crate::c::D"; const R: &str = r#"crate::d" "#; const C: [char; 2] = ['"', '\''];
            fn f<'a>(x: &'a str) -> crate::e::F<'a> {}
            pub(in crate::g) fn h() {}
            #[cfg(test)]
            mod tests { use crate::i::J; }
            #[cfg(test)]
            use crate::k::L;
        "##;
        assert_eq!(paths(text, "x"), ["e::F"]);
    }

    #[test]
    fn what_is_passed_on_is_no_use() {
        let said = said(
            "mod a;\n#[path = \"../b.rs\"]\nmod b;\npub use a::C;\npub(crate) use crate::d::E as F;",
            &[],
        );
        assert_eq!(said.uses, Vec::<Vec<String>>::new());
        let path = |path: &str| path.split("::").map(str::to_owned).collect::<Vec<_>>();
        assert_eq!(said.passed_on, [("C".to_owned(), path("a::C")), ("F".to_owned(), path("d::E"))]);
        assert_eq!(said.children, [("a".to_owned(), None), ("b".to_owned(), Some("../b.rs".to_owned()))]);
    }
}
