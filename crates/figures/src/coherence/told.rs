//! A session told: everything that is said of it in one voice, as places with their texts.

use super::fact::{Fact, Scope};
use super::heard::{Place, facts};
use super::number::Marks;
use super::table::Table;
use super::truth::scope;
use judging::Judged;
use serde::Serialize;
use serde_json::Value;
use session::Session;
use session::question::Question;
use telling::share::{ShareRequest, share};
use text::Voice;
use text::traced::{Record, Said};

/// Fields that repeat another one in marks, or hold what was given.
const NO_WORDS: [&str; 5] = ["markdown", "brackets", "session", "question", "link"];

/// What is said of a session, as facts.
pub(crate) struct Telling<'a> {
    table: &'a Table,
    marks: Marks,
    pub(crate) voice: Voice,
    record: Record,
    pub(crate) facts: Vec<Fact>,
    /// Ids of what was said, to hold one language against another.
    pub(crate) said: Vec<&'static str>,
    /// Every text with its place, in its order.
    pub(crate) texts: Vec<(String, String)>,
}

impl<'a> Telling<'a> {
    pub(crate) fn new(table: &'a Table, voice: &Voice) -> Self {
        let record = Record::default();
        let marks = Marks::of(voice);
        Self {
            table,
            marks,
            voice: voice.heard_by(&record),
            record,
            facts: Vec::new(),
            said: Vec::new(),
            texts: Vec::new(),
        }
    }

    /// The page's answer, the text to paste and the lines of the card.
    pub(crate) fn answer(&mut self, judged: &Judged<'_>) {
        let (session, question) = (judged.settled.session, judged.settled.question);
        let shared = self.shared(session, question);
        let Some(shared) = shared else { return };
        let asked = judged.headline().map_or(Scope::Session, |headline| Scope::Pair(headline.candidate, 0));
        let report = &shared["file"]["report"];
        let mut places = Vec::new();
        for (name, part) in report.as_object().into_iter().flatten() {
            match name.as_str() {
                "findings" => of_findings(judged, part, &mut places),
                "trust" => walk("page", name, &Scope::Session, part, &mut places),
                _ => walk("page", name, &asked, part, &mut places),
            }
        }
        walk("share", "words", &asked, &shared["words"], &mut places);
        walk("card", "card", &asked, &shared["card"], &mut places);
        self.hear(&places);
    }

    fn shared(&self, session: &Session, question: &Question) -> Option<Value> {
        let request = ShareRequest {
            session: session.clone(),
            question: question.clone(),
            view: session::question::View::default(),
            address: "https://example.org/".into(),
        };
        let shared = share(&request, Some("packed"), &self.voice).ok()?;
        serde_json::to_value(&shared).ok()
    }

    /// A part of the page beside the answer; nothing where it is refused. Its own sentences are of a scope, what is told of
    /// each of several is of its own.
    pub(crate) fn part<T: Serialize>(
        &mut self,
        surface: &'static str,
        whole: &Scope,
        tell: impl FnOnce(&Voice) -> Option<T>,
    ) {
        let Some(told) = tell(&self.voice).and_then(|told| serde_json::to_value(&told).ok()) else {
            drop(self.record.take());
            return;
        };
        let mut places = Vec::new();
        walk_parts(surface, whole, &told, &mut places);
        self.hear(&places);
    }

    fn hear(&mut self, places: &[Place]) {
        self.texts.extend(
            places.iter().map(|place| (format!("{} {}", place.surface, place.path), place.text.clone())),
        );
        let said: Vec<Said> = self.record.take();
        let stands = |one: &&Said| {
            self.table.get(&(one.message.room, one.message.id)).is_some_and(|declared| !declared.is_part)
        };
        self.said.extend(said.iter().filter(stands).map(|one| one.message.id));
        self.facts.extend(facts(self.table, &self.marks, &said, places));
    }
}

/// The line of every measure is shown; the whole of it stands in the report's file.
fn of_findings(judged: &Judged<'_>, findings: &Value, places: &mut Vec<Place>) {
    for (at, finding) in findings.as_array().into_iter().flatten().enumerate() {
        let scope = scope(judged, at);
        for (name, text) in finding["words"].as_object().into_iter().flatten() {
            let surface = if name == "line" { "page" } else { "report" };
            walk(surface, &format!("findings[{at}].{name}"), &scope, text, places);
        }
    }
}

/// Every text below a value, all of one scope.
fn walk(surface: &'static str, path: &str, scope: &Scope, value: &Value, places: &mut Vec<Place>) {
    match value {
        Value::String(text) if text.contains(' ') => {
            places.push(Place { surface, path: path.to_owned(), scope: scope.clone(), text: text.clone() });
        }
        Value::Array(list) => {
            for (at, one) in list.iter().enumerate() {
                walk(surface, &format!("{path}[{at}]"), scope, one, places);
            }
        }
        Value::Object(fields) => {
            for (name, one) in fields.iter().filter(|(name, _)| !NO_WORDS.contains(&name.as_str())) {
                walk(surface, &format!("{path}.{name}"), scope, one, places);
            }
        }
        _ => {}
    }
}

/// Every text below a value: what is told of one of several, or of one object, is of its own part.
fn walk_parts(surface: &'static str, whole: &Scope, value: &Value, places: &mut Vec<Place>) {
    for (name, one) in value.as_object().into_iter().flatten() {
        match one {
            _ if NO_WORDS.contains(&name.as_str()) => {}
            Value::Array(list) => {
                for (at, one) in list.iter().enumerate() {
                    let path = format!("{name}[{at}]");
                    walk(surface, &path, &Scope::Part(path.clone()), one, places);
                }
            }
            Value::Object(_) if name != "words" => {
                walk(surface, name, &Scope::Part(name.clone()), one, places);
            }
            one => walk(surface, name, whole, one, places),
        }
    }
}
