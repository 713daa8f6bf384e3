//! The words that messages choose by, as enums: a word that no message knows does not build.

use crate::catalogue::Catalogue;
use crate::pattern::Kind;
use std::collections::BTreeMap;
use std::fmt::Write;

/// The enums of a room.
#[derive(Default)]
pub(crate) struct Words {
    /// Each enum's words, by its name.
    enums: BTreeMap<String, Vec<String>>,
    /// The enum's name by message and argument.
    names: BTreeMap<(String, String), String>,
}

impl Words {
    /// The enum that an argument of a message takes.
    pub(crate) fn name(&self, message: &str, argument: &str) -> &str {
        &self.names[&(message.to_owned(), argument.to_owned())]
    }

    /// Their Rust.
    pub(crate) fn code(&self) -> String {
        self.enums.iter().map(|(name, words)| declared(name, words, &self.takers(name))).collect()
    }

    /// `not_shown`, `shown`: the functions that take the enum, for its documentation.
    fn takers(&self, name: &str) -> String {
        let takers = self.names.iter().filter(|(_, taken)| *taken == name);
        let takers: Vec<String> = takers.map(|((message, _), _)| format!("[`{}`]", snake(message))).collect();
        takers.join(", ")
    }
}

/// The words of every room. Messages of a room that choose by the same words under the same name share one enum, `Side`;
/// where they differ each has its own, `TooShortSide`.
pub(crate) fn words(first: &Catalogue) -> BTreeMap<String, Words> {
    let mut rooms: BTreeMap<String, Words> = BTreeMap::new();
    for ((room, message), found) in &first.messages {
        let into = rooms.entry(room.clone()).or_default();
        for argument in &found.arguments {
            let Kind::Word(words) = &argument.kind else { continue };
            let is_shared = others(first, room, &argument.name).all(|other| sorted(other) == sorted(words));
            let name =
                if is_shared { camel(&argument.name) } else { camel(message) + &camel(&argument.name) };
            let before = into.enums.insert(name.clone(), words.clone());
            assert!(
                before.is_none_or(|before| sorted(&before) == sorted(words)),
                "{room}.ftl: two sets of words would be called `{name}`"
            );
            into.names.insert((message.clone(), argument.name.clone()), name);
        }
    }
    rooms
}

/// The words that messages of a room choose by under a name.
fn others<'a>(first: &'a Catalogue, room: &str, name: &str) -> impl Iterator<Item = &'a [String]> {
    let of_room = first.messages.iter().filter(move |(id, _)| id.0 == room);
    let named = of_room.flat_map(|(_, message)| &message.arguments).filter(move |found| found.name == name);
    named.filter_map(|argument| match &argument.kind {
        Kind::Word(words) => Some(words.as_slice()),
        _ => None,
    })
}

/// An identifier of Fluent as a name in Rust.
pub(crate) fn snake(id: &str) -> String {
    id.replace('-', "_")
}

fn camel(id: &str) -> String {
    let parts = id.split(['-', '_']).filter_map(|part| part.split_at_checked(1));
    parts.map(|(initial, rest)| initial.to_uppercase() + rest).collect()
}

fn sorted(words: &[String]) -> Vec<&String> {
    let mut words: Vec<_> = words.iter().collect();
    words.sort();
    words
}

fn declared(name: &str, words: &[String], takers: &str) -> String {
    let (mut variants, mut all, mut arms) = (String::new(), String::new(), String::new());
    for word in words {
        let variant = camel(word);
        write!(variants, "/// `{word}`\n{variant}, ").expect("a string takes text");
        write!(all, "Self::{variant}, ").expect("a string takes text");
        write!(arms, "Self::{variant} => {word:?}, ").expect("a string takes text");
    }
    format!(
        "/// What chooses in {takers}.\n\
         #[derive(Debug, Clone, Copy, PartialEq, Eq)]\npub enum {name} {{ {variants} }}\n\
         impl {name} {{\n\
         /// All of them.\npub const ALL: [Self; {}] = [{all}];\n\
         /// As the catalogues write it.\n#[must_use]\npub const fn word(self) -> &'static str {{ match self {{ {arms} }} }}\n\
         /// The one that the catalogues write so.\n#[must_use]\npub fn of(word: &str) -> Option<Self> {{ \
         Self::ALL.into_iter().find(|known| known.word() == word) }}\n\
         }}\n",
        words.len()
    )
}
