//! Decisions and warnings in plain words.
//!
//! Every sentence a golfer reads about a verdict is made here, by reading a decision and its
//! numbers. Nothing here compares a number with a threshold to find out what is true; only how it is said.

mod answer;
mod case;
mod format;
mod overlay;
mod paste;
mod phrases;
mod spread;

use serde::Serialize;

pub(crate) use answer::{without_a_pair, words};
pub(crate) use case::{capital, sentences};
pub(crate) use format::{
    Subject, chance, chance_of_fittings, count_of, number, reported_unit, short_name, shots,
};
pub(crate) use overlay::overlays;
pub use paste::{CardWords, PasteWords};
pub(crate) use paste::{card_words, paste_words};
pub(crate) use phrases::{Phrase, phrase_for};

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
}
