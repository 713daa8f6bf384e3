//! Writes the Rust functions and the tables.

use crate::catalogue::{Catalogue, Message};
use crate::pattern::{Argument, Kind};
use crate::plural;
use std::fmt::Write;
use std::hash::{DefaultHasher, Hash, Hasher};

/// Changes with any message that comes, goes or takes something else: a table of another version is not this one's.
pub(crate) fn stamp(first: &Catalogue) -> String {
    let mut hasher = DefaultHasher::new();
    for (id, message) in &first.messages {
        id.hash(&mut hasher);
        for argument in &message.arguments {
            argument.name.hash(&mut hasher);
        }
    }
    format!("{:016x}", hasher.finish())
}

/// A module for each room with a function for each message.
pub(crate) fn messages(first: &Catalogue, stamp: &str) -> String {
    let mut code = format!(
        "/// Head of every table that fits this version.\npub(crate) const STAMP: &str = {stamp:?};\n\
         /// Forms of English counts.\npub(crate) const FORMS: &str = {:?};\n\
         /// How many there are.\npub(crate) const MESSAGES: usize = {};\n",
        plural::forms(&first.language),
        first.messages.len(),
    );
    let mut room = "";
    for (number, (id, message)) in first.messages.iter().enumerate() {
        if id.0 != room {
            let end = if room.is_empty() { "" } else { "}\n" };
            room = &id.0;
            let name = room.replace('-', "_");
            write!(code, "{end}/// Messages of `{room}.ftl`.\npub mod {name} {{\n")
                .expect("a string takes text");
        }
        code.push_str(&function(number, &id.1, message));
    }
    code.push_str("}\n");
    code
}

fn function(number: usize, id: &str, message: &Message) -> String {
    let (mut takes, mut gives) = (String::new(), String::new());
    for argument in &message.arguments {
        let name = argument.name.replace('-', "_");
        let (kind, given) = match &argument.kind {
            Kind::Text => ("&str", "Text"),
            Kind::Count => ("usize", "Count"),
            Kind::Flag => ("bool", "Flag"),
            Kind::Word(_) => ("&str", "Text"),
        };
        write!(takes, "{name}: {kind}, ").expect("a string takes text");
        write!(gives, "crate::render::Arg::{given}({name}), ").expect("a string takes text");
    }
    let mut checks = String::new();
    for argument in &message.arguments {
        if let Kind::Word(words) = &argument.kind {
            let name = argument.name.replace('-', "_");
            write!(checks, "debug_assert!({words:?}.contains(&{name}), \"{id}: {{}}\", {name});")
                .expect("a string takes text");
        }
    }
    let english = lettered(&message.pattern, &message.arguments);
    format!(
        "/// {}\n#[must_use]\npub fn {}({takes}) -> String {{ {checks} crate::render::said({number}, {english:?}, &[{gives}]) }}\n",
        shown(&message.pattern),
        id.replace('-', "_"),
    )
}

/// A pattern as documentation shows it.
fn shown(pattern: &str) -> String {
    let mut text = String::from("`");
    for c in pattern.chars() {
        match c {
            '\u{1}' | '\u{2}' => text.push('{'),
            '\u{4}' => text.push('}'),
            '\u{3}' | '\u{5}' => text.push('|'),
            '`' => text.push('\''),
            other => text.push(other),
        }
    }
    text + "`"
}

/// The pattern with a letter for each argument.
fn lettered(pattern: &str, arguments: &[Argument]) -> String {
    let letter = |at: usize| char::from(b'A' + u8::try_from(at).expect("few arguments"));
    let mut text = pattern.to_owned();
    for (at, argument) in arguments.iter().enumerate() {
        for mark in ['\u{1}', '\u{2}'] {
            text = text.replace(&format!("{mark}{}\u{4}", argument.name), &format!("{mark}{}", letter(at)));
        }
    }
    text
}

/// The table of another language: stamp, language, forms of counts, then each message on a line of its own.
pub(crate) fn table(first: &Catalogue, other: &Catalogue, stamp: &str) -> String {
    let mut text = format!("{stamp}\n{}\n{}\n", other.language, plural::forms(&other.language));
    for (id, message) in &first.messages {
        text.push_str(&lettered(&other.messages[id].pattern, &message.arguments));
        text.push('\n');
    }
    text
}
