//! What is asserted, or true, of a session: a key and a value, of the whole session or of a part of it.

use super::number::Printed;
use std::fmt;

/// What a fact is said of.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Scope {
    /// The session as a whole.
    Session,
    /// A candidate on a measure: the build, and the measure's place among those judged.
    Pair(usize, usize),
    /// A place of its own, such as one of the effects of before and after.
    Part(String),
}

/// A word, a number, or two ends.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Value {
    Word(String),
    Number(Printed),
    Ends(Printed, Printed),
}

impl From<&str> for Value {
    fn from(word: &str) -> Self {
        Self::Word(word.to_owned())
    }
}

impl Value {
    /// As the list of pairs writes it; a number by its digits.
    pub(crate) fn word(&self) -> String {
        match self {
            Self::Word(word) => word.clone(),
            Self::Number(printed) => printed.value.to_string(),
            Self::Ends(low, high) => format!("{}..{}", low.value, high.value),
        }
    }
}

/// One fact that a sentence asserts, or that is worked out from the session and what was judged of it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Fact {
    pub(crate) scope: Scope,
    pub(crate) key: &'static str,
    pub(crate) value: Value,
    pub(crate) from: Source,
}

/// Where a fact stands.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Source {
    /// Worked out, not said.
    Truth,
    /// Said by a message at a place.
    Said { message: &'static str, surface: &'static str, place: String, text: String },
}

impl Fact {
    pub(crate) fn truth(scope: Scope, key: &'static str, value: impl Into<Value>) -> Self {
        Self { scope, key, value: value.into(), from: Source::Truth }
    }

    /// `answer.same`, or `truth`.
    pub(crate) fn message(&self) -> &'static str {
        match &self.from {
            Source::Truth => "truth",
            Source::Said { message, .. } => message,
        }
    }

    /// On which piece of what a golfer sees it stands; nothing for what is only true.
    pub(crate) fn surface(&self) -> Option<&'static str> {
        match &self.from {
            Source::Truth => None,
            Source::Said { surface, .. } => Some(surface),
        }
    }
}

impl fmt::Display for Fact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (key, value) = (self.key, self.value.word());
        match &self.from {
            Source::Truth => write!(f, "in truth {key}={value}"),
            Source::Said { message, surface, place, text } => {
                write!(f, "{surface} {place} ({message}) says {key}={value}: {text}")
            }
        }
    }
}
