//! From what was said to what it asserts: which messages stand where, and the facts that the tables give them.

use super::fact::{Fact, Scope, Source, Value};
use super::number::{Marks, Printed};
use super::page_catalogues;
use super::table::{Asserted, Declared, Rule, Table};
use std::collections::HashMap;
use text::traced::{Message, Said, Told};

/// A text that a golfer sees.
#[derive(Debug, Clone)]
pub(crate) struct Place {
    pub(crate) surface: &'static str,
    /// Where in it: `findings[3].words.detail`.
    pub(crate) path: String,
    pub(crate) scope: Scope,
    pub(crate) text: String,
}

/// The facts of every message that stands in one of the places.
pub(crate) fn facts(table: &Table, marks: &Marks, said: &[Said], places: &[Place]) -> Vec<Fact> {
    let heard = Heard::new(table, marks, said);
    let sentences = Sentences::of(said.iter().filter(|one| !heard.declared(one).is_part));
    let mut asserted: HashMap<usize, Vec<(&'static str, Value)>> = HashMap::new();
    let mut facts = Vec::new();
    for place in places {
        for at in sentences.standing_in(&place.text) {
            let one = sentences.all[at];
            let pairs = asserted.entry(at).or_insert_with(|| heard.asserts(one));
            facts.extend(pairs.iter().map(|(key, value)| Fact {
                scope: place.scope.clone(),
                key,
                value: value.clone(),
                from: Source::Said {
                    message: name(one.message),
                    surface: place.surface,
                    place: place.path.clone(),
                    text: one.text.clone(),
                },
            }));
        }
    }
    facts
}

/// Bytes by whose first ones a sentence is looked up.
const HEAD: usize = 4;

/// What was said, to be found in texts.
struct Sentences<'a> {
    all: Vec<&'a Said>,
    /// By their first bytes, the longest first: what stands within another message is not said a second time.
    by_head: HashMap<[u8; HEAD], Vec<usize>>,
}

impl<'a> Sentences<'a> {
    fn of(said: impl Iterator<Item = &'a Said>) -> Self {
        let mut sentences = Self { all: Vec::new(), by_head: HashMap::new() };
        for one in said {
            let Some(head) = head(one.text.as_bytes()) else { continue };
            let same_head = sentences.by_head.entry(head).or_default();
            let is_there = |at: &usize| {
                let there: &Said = sentences.all[*at];
                there.message == one.message && there.text == one.text
            };
            if !same_head.iter().any(is_there) {
                same_head.push(sentences.all.len());
                sentences.all.push(one);
            }
        }
        for same_head in sentences.by_head.values_mut() {
            same_head.sort_by_key(|at| std::cmp::Reverse(sentences.all[*at].text.len()));
        }
        sentences
    }

    /// Every sentence of a text, in its order.
    fn standing_in(&self, text: &str) -> Vec<usize> {
        let bytes = text.as_bytes();
        let mut found = Vec::new();
        let mut from = 0;
        while let Some(head) = head(&bytes[from..]) {
            let candidates = self.by_head.get(&head).map_or(&[][..], Vec::as_slice);
            let stands =
                candidates.iter().find(|at| bytes[from..].starts_with(self.all[**at].text.as_bytes()));
            from += stands.map_or(1, |at| self.all[*at].text.len());
            found.extend(stands);
        }
        found
    }
}

fn head(bytes: &[u8]) -> Option<[u8; HEAD]> {
    bytes.get(..HEAD)?.try_into().ok()
}

struct Heard<'a> {
    table: &'a Table,
    marks: &'a Marks,
    /// Parts by their texts.
    parts: HashMap<&'a str, &'a Said>,
}

static NONE: Declared = Declared { is_part: false, rules: Vec::new() };

impl<'a> Heard<'a> {
    fn new(table: &'a Table, marks: &'a Marks, said: &'a [Said]) -> Self {
        let mut heard = Self { table, marks, parts: HashMap::new() };
        for one in said {
            if !heard.declared(one).rules.is_empty() {
                heard.parts.insert(&one.text, one);
            }
        }
        heard
    }

    fn declared(&self, said: &Said) -> &'a Declared {
        self.table.get(&(said.message.room, said.message.id)).unwrap_or(&NONE)
    }

    /// What a message asserts with what it was told. Sizes that say their direction beside them take its sign.
    fn asserts(&self, said: &Said) -> Vec<(&'static str, Value)> {
        let mut facts: Vec<(&'static str, Value)> = Vec::new();
        for Rule { what, only_if } in &self.declared(said).rules {
            if only_if.is_none_or(|(argument, value)| is(said.told(argument), value)) {
                self.take(said, what, &mut facts);
            }
        }
        // Unless its table says whom it means.
        if speaks_to_the_reader(&said.text) && !facts.iter().any(|(key, _)| *key == "to") {
            facts.push(("to", "the_reader".into()));
        }
        let lower = facts.iter().any(|(key, value)| *key == "direction" && value.word() == "lower");
        if lower {
            for (_, value) in facts.iter_mut().filter(|(key, _)| matches!(*key, "interval" | "number")) {
                if let Value::Number(size) = value {
                    *value = Value::Number(size.toward(false));
                }
                // A part may have done so already.
                if let Value::Ends(near, far) = value
                    && near.value >= 0.0
                {
                    *value = Value::Ends(far.toward(false), near.toward(false));
                }
            }
        }
        facts
    }

    fn take(&self, said: &Said, what: &Asserted, facts: &mut Vec<(&'static str, Value)>) {
        match *what {
            Asserted::Word(key, word) => facts.push((key, word.into())),
            Asserted::Argument(key, argument) => {
                facts.extend(self.argument(said, argument).map(|value| (key, value)));
            }
            Asserted::Ends(key, [low, high]) => {
                let ends = self.number(said, low).zip(self.number(said, high));
                facts.extend(ends.map(|(low, high)| (key, Value::Ends(low, high))));
            }
            Asserted::Toward(key, [size, way]) => {
                let up = match said.told(way) {
                    Some(Told::Flag(below)) => !below,
                    _ => !self.part(said, way).is_some_and(|part| self.says(part, "direction", "lower")),
                };
                facts.extend(self.number(said, size).map(|size| (key, Value::Number(size.toward(up)))));
            }
            Asserted::Like(argument) => {
                facts.extend(self.part(said, argument).map(|part| self.asserts(part)).unwrap_or_default());
            }
        }
    }

    /// The message behind a text that another was told.
    fn part(&self, said: &Said, argument: &str) -> Option<&'a Said> {
        match said.told(argument)? {
            Told::Text(text) => self.parts.get(text.as_str()).copied(),
            Told::Count(_) | Told::Flag(_) => None,
        }
    }

    fn says(&self, part: &Said, key: &str, word: &str) -> bool {
        self.asserts(part).iter().any(|(there, value)| *there == key && value.word() == word)
    }

    fn argument(&self, said: &Said, argument: &str) -> Option<Value> {
        match said.told(argument)? {
            Told::Count(count) => Some(Value::Number(Printed::whole(*count as f64))),
            Told::Flag(flag) => Some(if *flag { "yes" } else { "no" }.into()),
            Told::Text(text) => {
                let of_part = self.part(said, argument).and_then(|part| {
                    let facts = self.asserts(part);
                    let found = facts.into_iter().find(|(key, _)| matches!(*key, "number" | "span"));
                    found.map(|(_, value)| value)
                });
                let printed = || self.marks.read(text).map(Value::Number);
                of_part.or_else(printed).or_else(|| Some(Value::Word(text.clone())))
            }
        }
    }

    fn number(&self, said: &Said, argument: &str) -> Option<Printed> {
        match self.argument(said, argument)? {
            Value::Number(printed) => Some(printed),
            Value::Word(_) | Value::Ends(..) => None,
        }
    }
}

/// Whether a sentence says 'you'. English alone: another language says the same messages.
fn speaks_to_the_reader(text: &str) -> bool {
    let mut words = text.split(|c: char| !c.is_alphabetic());
    words.any(|word| ["you", "your", "yours", "You", "Your"].contains(&word))
}

fn is(told: Option<&Told>, value: &str) -> bool {
    match told {
        Some(Told::Flag(flag)) => value == if *flag { "yes" } else { "no" },
        Some(Told::Text(text)) => text == value,
        Some(Told::Count(count)) => value.parse() == Ok(*count),
        None => false,
    }
}

/// `answer.same`, once for each message.
fn name(message: Message) -> &'static str {
    use std::sync::OnceLock;
    static NAMES: OnceLock<HashMap<(&'static str, &'static str), String>> = OnceLock::new();
    let names = NAMES.get_or_init(|| {
        let all = text::traced::MESSAGES.iter().chain(page_catalogues::messages());
        all.map(|message| ((message.room, message.id), format!("{}.{}", message.room, message.id))).collect()
    });
    names.get(&(message.room, message.id)).map_or("unknown", String::as_str)
}
