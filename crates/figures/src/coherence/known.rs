//! What was found, counted by kind; and what of it is known to be mended still (`known.txt`), which the test lets pass.
//!
//! A line of that list is `finding | rule | message`: the finding's number, a rule by its name, and the message that
//! speaks, or `*`. An entry that nothing is found of any more must go.

use super::fact::Fact;
use super::pairs::Fault;
use super::sessions::Kind;
use anyhow::{Context, Result, bail};
use std::collections::BTreeMap;
use text::Voice;

/// Everything found, by rule and by the messages that meet.
#[derive(Debug, Default)]
pub(crate) struct Found {
    pub(crate) facts: usize,
    kinds: BTreeMap<(String, String), Group>,
}

#[derive(Debug)]
struct Group {
    sessions: usize,
    last: u64,
    reason: String,
    example: String,
}

/// One entry of the list of what is known.
#[derive(Debug)]
pub(crate) struct Known {
    finding: String,
    rule: String,
    message: String,
}

impl Found {
    pub(crate) fn take(&mut self, number: u64, kind: Kind, voice: &Voice, fault: Fault) {
        let (left, right) = (fault.left.message(), fault.right.as_ref().map_or("", Fact::message));
        let messages = if left == "truth" { right.to_owned() } else { left.to_owned() };
        let messages = if right.is_empty() || right == "truth" || left == "truth" {
            messages
        } else {
            format!("{left} + {right}")
        };
        self.count(number, (fault.rule.clone(), messages), || {
            let right =
                fault.right.as_ref().map_or_else(String::new, |right| format!("\n      against: {right}"));
            let note = if fault.note.is_empty() { String::new() } else { format!("\n      {}", fault.note) };
            let place = format!("session {number} ({kind:?}, {}, {:?})", voice.language().tag(), voice.units);
            (fault.reason.clone(), format!("{place}: {}{right}{note}", fault.left))
        });
    }

    pub(crate) fn languages_differ(&mut self, number: u64, kind: Kind, said: &[Vec<&'static str>]) {
        let rule = ("both languages say the same messages".to_owned(), String::new());
        self.count(number, rule, || {
            let at = said[0].iter().zip(&said[1]).position(|(one, other)| one != other).unwrap_or(0);
            let example =
                format!("session {number} ({kind:?}): {:?} and {:?}", said[0].get(at), said[1].get(at));
            ("A fact that only one language asserts is lost to the other's readers.".to_owned(), example)
        });
    }

    fn count(&mut self, number: u64, key: (String, String), example: impl FnOnce() -> (String, String)) {
        match self.kinds.get_mut(&key) {
            Some(group) if group.last == number => {}
            Some(group) => {
                group.sessions += 1;
                group.last = number;
            }
            None => {
                let (reason, example) = example();
                self.kinds.insert(key, Group { sessions: 1, last: number, reason, example });
            }
        }
    }

    pub(crate) fn add(&mut self, other: Self) {
        self.facts += other.facts;
        for (key, group) in other.kinds {
            match self.kinds.get_mut(&key) {
                Some(there) => there.sessions += group.sessions,
                None => {
                    self.kinds.insert(key, group);
                }
            }
        }
    }
}

/// Reads the list.
///
/// # Errors
/// A line that is not understood.
pub(crate) fn read(text: &str) -> Result<Vec<Known>> {
    let lines = text.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    lines
        .map(|line| {
            let (finding, rest) = line.split_once(" | ").with_context(|| format!("`{line}`"))?;
            let (rule, message) = rest.rsplit_once(" | ").with_context(|| format!("`{line}`"))?;
            Ok(Known { finding: finding.into(), rule: rule.into(), message: message.into() })
        })
        .collect()
}

impl Known {
    fn fits(&self, (rule, messages): &(String, String)) -> bool {
        self.rule == *rule
            && (self.message == "*" || messages.split(" + ").any(|message| message == self.message))
    }
}

/// Prints what was found.
///
/// # Errors
/// Something that is not known, or something known that is not found any more.
pub(crate) fn report(found: &Found, known: &[Known]) -> Result<()> {
    let mut unknown = 0;
    for (key, group) in &found.kinds {
        let finding = known.iter().find(|known| known.fits(key)).map(|known| known.finding.as_str());
        unknown += usize::from(finding.is_none());
        let state = finding.map_or("NEW".to_owned(), |finding| format!("known, finding {finding}"));
        println!("\n{:6} sessions  {} [{}] ({state})", group.sessions, key.0, key.1);
        println!("      {}\n      {}", group.reason, group.example);
    }
    let gone = known.iter().filter(|known| !found.kinds.keys().any(|key| known.fits(key)));
    let gone: Vec<String> = gone.map(|known| format!("{} | {}", known.rule, known.message)).collect();
    if unknown > 0 {
        bail!("{unknown} kinds of contradictions that are not known");
    }
    if !gone.is_empty() {
        bail!("no longer found, take them out of the list of what is known: {}", gone.join("; "));
    }
    Ok(())
}
