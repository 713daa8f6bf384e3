//! Writes the Rust functions and the tables.

use crate::catalogue::{Catalogue, Message};
use crate::pattern::{Argument, Kind};
use crate::plural;
use crate::words::{Words, snake, words};
use std::fmt::Write;
use std::hash::{DefaultHasher, Hash, Hasher};

/// As many arguments as make too many for clippy, the voice beside them.
const MANY: usize = 7;

/// Changes with any message that comes, goes or takes something else: a table of another version is not this one's.
pub(crate) fn stamp(first: &Catalogue) -> String {
    let mut hasher = DefaultHasher::new();
    for (id, message) in &first.messages {
        id.hash(&mut hasher);
        for argument in &message.arguments {
            argument.hash(&mut hasher);
        }
    }
    format!("{:016x}", hasher.finish())
}

/// What every table is held against, and a module for each room with its enums and a function for each message.
pub(crate) fn messages(first: &Catalogue, stamp: &str) -> String {
    let mut code = format!(
        "/// Head of every table that fits this version.\npub(crate) const STAMP: &str = {stamp:?};\n\
         /// Forms of English counts.\npub(crate) const FORMS: &str = {:?};\n\
         /// How many there are.\npub(crate) const MESSAGES: usize = {};\n",
        plural::forms(&first.language),
        first.messages.len(),
    );
    code.push_str(&named(first));
    let words = words(first);
    let mut room = "";
    for (number, (id, message)) in first.messages.iter().enumerate() {
        let enums = &words[&id.0];
        if id.0 != room {
            let end = if room.is_empty() { "" } else { "}\n" };
            room = &id.0;
            let (name, enums) = (snake(room), enums.code());
            write!(code, "{end}/// Messages of `{room}.ftl`.\npub mod {name} {{\n{enums}")
                .expect("a string takes text");
        }
        code.push_str(&function(number, &id.1, message, enums));
    }
    code + "}\n"
}

/// What the messages are called, for voices that note what they say.
fn named(first: &Catalogue) -> String {
    let mut rows = String::new();
    for ((room, id), message) in &first.messages {
        let arguments: Vec<&str> = message.arguments.iter().map(|argument| argument.name.as_str()).collect();
        write!(rows, "crate::traced::Message {{ room: {room:?}, id: {id:?}, arguments: &{arguments:?} }}, ")
            .expect("a string takes text");
    }
    format!(
        "/// What they are called, in the order of their numbers.\n#[cfg(feature = \"traced\")]\n\
         pub(crate) const NAMED: &[crate::traced::Message] = &[{rows}];\n"
    )
}

fn function(number: usize, id: &str, message: &Message, enums: &Words) -> String {
    let (mut takes, mut gives) = (String::new(), String::new());
    for argument in &message.arguments {
        let name = snake(&argument.name);
        assert_ne!(name, "voice", "`{id}`: the voice is what every message is said in");
        let (kind, given) = match &argument.kind {
            Kind::Text => ("&str", format!("Text({name})")),
            Kind::Count => ("usize", format!("Count({name})")),
            Kind::Flag => ("bool", format!("Flag({name})")),
            Kind::Word(_) => (enums.name(id, &argument.name), format!("Text({name}.word())")),
        };
        write!(takes, "{name}: {kind}, ").expect("a string takes text");
        write!(gives, "crate::arg::Arg::{given}, ").expect("a string takes text");
    }
    let lint = match message.arguments.len() {
        ..MANY => "",
        _ => "#[expect(clippy::too_many_arguments, reason = \"as many as the sentence has\")]\n",
    };
    let english = lettered(&message.pattern, &message.arguments);
    format!(
        "/// {}\n{lint}#[must_use]\npub fn {}(voice: &crate::Voice, {takes}) -> String {{ \
         crate::render::said(voice, {number}, {english:?}, &[{gives}]) }}\n",
        shown(&message.pattern),
        snake(id),
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
