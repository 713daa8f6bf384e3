//! The sentences of an answer, as values.

use serde::Serialize;

/// Sentences for the golfer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Words {
    /// The answer in one sentence.
    pub headline: String,
    /// The same in a few words, for a list of measures.
    pub line: String,
    /// How large, how sure, from how many shots.
    pub detail: String,
    /// What to do, or what would settle it.
    pub next: String,
    /// Of `detail` the sentence that is not to be missed: what a small screen shows.
    pub lead: String,
    /// Of `next` the step itself: what a small screen shows.
    pub step: String,
}

/// What to do next, in sentences, and which of them is the step.
#[derive(Debug, Default)]
pub(crate) struct Next {
    sentences: Vec<String>,
    step: Option<usize>,
}

impl Next {
    pub(crate) fn step(step: String) -> Self {
        Self::default().and_step(step)
    }

    pub(crate) fn and(mut self, sentence: String) -> Self {
        self.sentences.push(sentence);
        self
    }

    /// Of several steps the first that is one is the step.
    pub(crate) fn and_step(mut self, step: String) -> Self {
        if self.the_step().is_empty() {
            self.step = Some(self.sentences.len());
        }
        self.and(step)
    }

    fn the_step(&self) -> &str {
        self.step.and_then(|step| self.sentences.get(step)).map_or("", String::as_str)
    }
}

/// Sentences one after the other, empty ones passed over.
pub(crate) fn sentences(parts: &[String]) -> String {
    parts.iter().filter(|s| !s.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" ")
}

impl Words {
    /// `lead` is the sentence of `detail` that stands on a small screen.
    pub(crate) fn new(headline: String, line: String, lead: &str, detail: &[String], next: &Next) -> Self {
        Self {
            headline,
            line,
            lead: lead.to_owned(),
            step: next.the_step().to_owned(),
            detail: sentences(detail),
            next: sentences(&next.sentences),
        }
    }

    /// With a step before every other; nothing where there is none.
    pub(crate) fn after(self, first: String) -> Self {
        if first.is_empty() {
            return self;
        }
        Self { next: format!("{first} {}", self.next), step: first, ..self }
    }
}
