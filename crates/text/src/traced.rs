//! Which messages were said, with what they were told: for tests that hold sentences against facts, behind the feature
//! `traced`. Nothing that ships has it, and nothing is global: a voice that is to be listened to carries its [`Record`].

use crate::arg::Arg;
use std::sync::{Arc, Mutex, PoisonError};

/// One message of the catalogues.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Message {
    /// The catalogue's file: `answer`.
    pub room: &'static str,
    /// As the catalogue names it: `may-matter`.
    pub id: &'static str,
    /// What it takes, as the catalogue names it.
    pub arguments: &'static [&'static str],
}

/// Every message there is.
pub const MESSAGES: &[Message] = crate::NAMED;

/// What a message was told for one of its arguments.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Told {
    /// A text already made, or the word that the message chooses by.
    Text(String),
    /// A count.
    Count(usize),
    /// Yes or not.
    Flag(bool),
}

/// One message as it was said.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Said {
    /// Which one.
    pub message: Message,
    /// In the order of the message's arguments.
    pub told: Vec<Told>,
    /// The sentence.
    pub text: String,
}

impl Said {
    /// What it was told for an argument.
    #[must_use]
    pub fn told(&self, argument: &str) -> Option<&Told> {
        let at = self.message.arguments.iter().position(|name| *name == argument)?;
        self.told.get(at)
    }
}

/// Everything that was said in a voice. A clone is the same record.
#[derive(Debug, Clone, Default)]
pub struct Record(Arc<Mutex<Vec<Said>>>);

impl Record {
    /// What was said since it was last taken, in the order in which it was said.
    #[must_use]
    pub fn take(&self) -> Vec<Said> {
        std::mem::take(&mut *self.0.lock().unwrap_or_else(PoisonError::into_inner))
    }

    pub(crate) fn note(&self, number: usize, args: &[Arg<'_>], text: &str) {
        // What a number is written with is no sentence.
        let Some(&message) = MESSAGES.get(number).filter(|message| message.room != "marks") else { return };
        let told = args.iter().map(|arg| match *arg {
            Arg::Text(given) => Told::Text(given.to_owned()),
            Arg::Count(count) => Told::Count(count),
            Arg::Flag(flag) => Told::Flag(flag),
        });
        let said = Said { message, told: told.collect(), text: text.to_owned() };
        self.0.lock().unwrap_or_else(PoisonError::into_inner).push(said);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Voice, answer, format};

    #[test]
    fn a_record_holds_what_was_said_in_its_voice_alone() {
        let record = Record::default();
        let voice = Voice::english().heard_by(&record);
        let same = answer::same(&voice, "carry", "Driver B", "Own driver", false, "4.7 yd");
        let _unheard = format::shots(&Voice::english(), 3);
        let shots = format::shots(&voice, 2);
        let said = record.take();
        assert_eq!(said.iter().map(|said| said.text.as_str()).collect::<Vec<_>>(), [same, shots]);
        assert_eq!((said[0].message.room, said[0].message.id), ("answer", "same"));
        assert_eq!(said[0].told("size"), Some(&Told::Text("4.7 yd".into())));
        assert_eq!((said[1].told("count"), said[1].told("size")), (Some(&Told::Count(2)), None));
        assert!(record.take().is_empty());
    }
}
