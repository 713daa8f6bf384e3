//! Reads the catalogue of one language.

use crate::pattern::{Argument, compiled};
use fluent_syntax::ast::{Entry, Message as Parsed};
use fluent_syntax::parser::parse;
use std::collections::BTreeMap;
use std::fs;

/// All messages of a language.
pub(crate) struct Catalogue {
    pub(crate) language: String,
    /// By room (the file's name) and id.
    pub(crate) messages: BTreeMap<(String, String), Message>,
}

/// One message, ready to be rendered.
pub(crate) struct Message {
    /// In the marks that `src/render.rs` reads; arguments by name until [`Message::numbered`].
    pub(crate) pattern: String,
    /// In the order of their first appearance.
    pub(crate) arguments: Vec<Argument>,
}

impl Message {
    /// Whether another language's argument is one of this message's. What one language only prints, another may choose by.
    pub(crate) fn takes(&self, other: &Argument) -> bool {
        self.arguments.iter().any(|own| own.name == other.name && other.kind.fits(&own.kind))
    }
}

pub(crate) fn read(language: &str) -> Catalogue {
    let mut messages = BTreeMap::new();
    for file in fs::read_dir(language).expect("a folder for each language") {
        let path = file.expect("a file").path();
        let room = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let text = fs::read_to_string(&path).expect("a text");
        let parsed = parse(text.as_str())
            .unwrap_or_else(|(_, errors)| panic!("{}: {:?}", path.display(), errors.first()));
        for entry in parsed.body {
            match entry {
                Entry::Message(message) => {
                    let id = (room.clone(), message.id.name.to_owned());
                    let place = format!("{language}/{room}.ftl: `{}`", id.1);
                    assert!(messages.insert(id, made(&message, &place)).is_none(), "{place} stands twice");
                }
                Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
                Entry::Term(_) | Entry::Junk { .. } => {
                    panic!("{}: only messages are understood", path.display())
                }
            }
        }
    }
    Catalogue { language: language.to_owned(), messages }
}

fn made(message: &Parsed<&str>, place: &str) -> Message {
    assert!(message.attributes.is_empty(), "{place} has an attribute");
    let value = message.value.as_ref().unwrap_or_else(|| panic!("{place} is empty"));
    let mut arguments = Vec::new();
    let pattern = compiled(value, &mut arguments, place);
    Message { pattern, arguments }
}
