//! OLD, to be deleted with `src/spoken.rs`: functions that speak the thread's language and take any word.

use crate::catalogue::{Catalogue, Message};
use crate::code::{lettered, shown};
use crate::pattern::Kind;
use std::fmt::Write;

pub(crate) fn messages(first: &Catalogue) -> String {
    let mut code = String::new();
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
    let mut checks = String::new();
    for argument in &message.arguments {
        let name = argument.name.replace('-', "_");
        let (kind, given) = match &argument.kind {
            Kind::Text | Kind::Word(_) => ("&str", "Text"),
            Kind::Count => ("usize", "Count"),
            Kind::Flag => ("bool", "Flag"),
        };
        write!(takes, "{name}: {kind}, ").expect("a string takes text");
        write!(gives, "crate::render::Arg::{given}({name}), ").expect("a string takes text");
        if let Kind::Word(words) = &argument.kind {
            write!(checks, "debug_assert!({words:?}.contains(&{name}), \"{id}: {{}}\", {name});")
                .expect("a string takes text");
        }
    }
    let english = lettered(&message.pattern, &message.arguments);
    format!(
        "/// {}\n#[must_use]\npub fn {}({takes}) -> String {{ {checks} \
         crate::render::said(&crate::Voice::spoken(), {number}, {english:?}, &[{gives}]) }}\n",
        shown(&message.pattern),
        id.replace('-', "_"),
    )
}
