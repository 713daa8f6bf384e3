//! What each message asserts, as the tables beside the catalogues declare it: `crates/text/facts/` for what the core says,
//! `web/src/text/facts/` for what the page says, a file for each room.
//!
//! A line is `id, id: fact; fact`, or `id: nothing`. A fact is one of
//! - `key=word`;
//! - `key=$argument`: the number, the flag or the word that the message was told, or the span or the number that the
//!   message behind a told text declares;
//! - `key=$low..$high`, two ends; `key=$size toward $way`, a size and which way;
//! - `like $argument`: whatever the message behind a told text asserts;
//!
//! and may end in ` if argument=value`. A line that begins with `part` is of messages that assert nothing where they
//! stand alone, only where another takes them in.

use super::page_catalogues;
use crate::folder::root;
use anyhow::{Context, Result, bail, ensure};
use std::collections::BTreeMap;
use std::fs;
use text::traced::{MESSAGES, Message};

/// What every message asserts, by room and id.
pub(crate) type Table = BTreeMap<(&'static str, &'static str), Declared>;

/// What one message asserts.
#[derive(Debug, Clone, Default)]
pub(crate) struct Declared {
    /// Whether it asserts only where another message takes it in.
    pub(crate) is_part: bool,
    pub(crate) rules: Vec<Rule>,
}

/// One fact of a message.
#[derive(Debug, Clone)]
pub(crate) struct Rule {
    pub(crate) what: Asserted,
    /// Only where an argument was told this: `mixed-up`, `yes`.
    pub(crate) only_if: Option<(&'static str, &'static str)>,
}

/// How a fact's value comes about.
#[derive(Debug, Clone)]
pub(crate) enum Asserted {
    Word(&'static str, &'static str),
    Argument(&'static str, &'static str),
    Ends(&'static str, [&'static str; 2]),
    Toward(&'static str, [&'static str; 2]),
    Like(&'static str),
}

impl Asserted {
    /// The arguments whose texts it reads.
    fn arguments(&self) -> Vec<&'static str> {
        match self {
            Self::Word(..) => Vec::new(),
            Self::Argument(_, one) | Self::Like(one) => vec![one],
            Self::Ends(_, both) | Self::Toward(_, both) => both.to_vec(),
        }
    }
}

/// Reads the tables of all rooms.
///
/// # Errors
/// A line that is not understood, a message that is declared twice or not there, an argument that it does not take.
pub(crate) fn read() -> Result<Table> {
    let mut table = Table::new();
    read_folder("crates/text/facts", MESSAGES, &mut table)?;
    read_folder("web/src/text/facts", page_catalogues::messages(), &mut table)?;
    Ok(table)
}

fn read_folder(folder: &str, messages: &[Message], table: &mut Table) -> Result<()> {
    for file in fs::read_dir(root().join(folder)).context(folder.to_owned())? {
        let path = file?.path();
        let room = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let of_room: Vec<&Message> = messages
            .iter()
            .filter(|message| message.room == room || message.room == page_catalogues::ROOM)
            .collect();
        // A table lives as long as the program.
        let text: &'static str = Box::leak(fs::read_to_string(&path)?.into_boxed_str());
        for (at, line) in text.lines().enumerate() {
            take(table, &of_room, line).with_context(|| format!("{}:{}", path.display(), at + 1))?;
        }
    }
    Ok(())
}

/// Messages that the tables do not declare.
pub(crate) fn undeclared(table: &Table) -> Vec<String> {
    let all = MESSAGES.iter().chain(page_catalogues::messages());
    let missing = all.filter(|message| !table.contains_key(&(message.room, message.id)));
    missing.map(|message| format!("{}.{}", message.room, message.id)).collect()
}

fn take(table: &mut Table, messages: &[&Message], line: &'static str) -> Result<()> {
    if line.is_empty() || line.starts_with('#') {
        return Ok(());
    }
    let (ids, facts) = line.split_once(": ").context("no colon")?;
    let (is_part, facts) = facts.strip_prefix("part ").map_or((false, facts), |facts| (true, facts));
    let rules = match facts {
        "nothing" => Vec::new(),
        facts => facts.split("; ").map(rule).collect::<Result<_>>()?,
    };
    for id in ids.split(", ") {
        let message = messages.iter().find(|message| message.id == id);
        let message = message.with_context(|| format!("no message is called `{id}`"))?;
        for rule in &rules {
            takes(message, rule)?;
        }
        let declared = Declared { is_part, rules: rules.clone() };
        ensure!(table.insert((message.room, message.id), declared).is_none(), "`{id}` is declared twice");
    }
    Ok(())
}

fn takes(message: &Message, rule: &Rule) -> Result<()> {
    let told = rule.what.arguments().into_iter().chain(rule.only_if.map(|(argument, _)| argument));
    for argument in told {
        ensure!(message.arguments.contains(&argument), "`{}` takes no `{argument}`", message.id);
    }
    Ok(())
}

fn rule(text: &'static str) -> Result<Rule> {
    let (fact, only_if) = match text.split_once(" if ") {
        Some((fact, condition)) => {
            (fact, Some(condition.split_once('=').context("a condition without a value")?))
        }
        None => (text, None),
    };
    if let Some(argument) = fact.strip_prefix("like $") {
        return Ok(Rule { what: Asserted::Like(argument), only_if });
    }
    let (key, value) = fact.split_once('=').with_context(|| format!("`{fact}` is no fact"))?;
    let pair = |apart: &str| {
        let (one, other) = value.split_once(apart)?;
        Some([one.strip_prefix('$')?, other.strip_prefix('$')?])
    };
    let what = if let Some(ends) = pair("..") {
        Asserted::Ends(key, ends)
    } else if let Some(both) = pair(" toward ") {
        Asserted::Toward(key, both)
    } else if let Some(argument) = value.strip_prefix('$') {
        Asserted::Argument(key, argument)
    } else if value.contains([' ', '$']) {
        bail!("`{value}` is no value");
    } else {
        Asserted::Word(key, value)
    };
    Ok(Rule { what, only_if })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_message_is_declared() {
        let missing = undeclared(&read().expect("tables that are understood"));
        assert!(
            missing.is_empty(),
            "say what they assert in the tables beside their catalogues: {}",
            missing.join(", ")
        );
    }

    /// English takes every argument; a language that left one out would assert less.
    #[test]
    fn what_a_message_asserts_of_its_arguments_is_said_in_spanish_too() {
        let table = read().expect("tables that are understood");
        for (message, pattern) in MESSAGES.iter().zip(text::SPANISH.lines().skip(3)) {
            let declared = &table[&(message.room, message.id)];
            for argument in declared.rules.iter().flat_map(|rule| rule.what.arguments()) {
                let at =
                    message.arguments.iter().position(|name| *name == argument).expect("one that it takes");
                let letter = char::from(b'A' + u8::try_from(at).expect("few arguments"));
                let said = ['\u{1}', '\u{2}'].iter().any(|mark| pattern.contains(&format!("{mark}{letter}")));
                assert!(said, "{}.{}: Spanish does not say `{argument}`", message.room, message.id);
            }
        }
    }
}
