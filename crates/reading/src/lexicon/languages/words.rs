//! The words of one language, and how one of them is looked up.

use std::collections::BTreeMap;
use std::sync::OnceLock;

/// The words of one language.
pub(crate) struct Words {
    /// English headings, and the words for each set apart by spaces.
    pub(crate) headings: &'static [(&'static str, &'static str)],
    /// Words for left and for right, set apart by spaces.
    sides: [&'static str; 2],
    /// The English heading of each word, made when the first is looked up: a table asks for many.
    by_word: OnceLock<BTreeMap<&'static str, &'static str>>,
}

impl Words {
    pub(crate) const fn new(
        headings: &'static [(&'static str, &'static str)],
        sides: [&'static str; 2],
    ) -> Self {
        Self { headings, sides, by_word: OnceLock::new() }
    }

    /// The English heading for a word.
    pub(crate) fn english(&self, word: &str) -> Option<&'static str> {
        let by_word = self.by_word.get_or_init(|| {
            let each = self
                .headings
                .iter()
                .flat_map(|(english, list)| list.split(' ').zip(std::iter::repeat(*english)));
            each.collect()
        });
        by_word.get(word).copied()
    }

    /// "L" or "R" for a word.
    pub(crate) fn side(&self, word: &str) -> Option<&'static str> {
        let is = |at: usize| self.sides[at].split(' ').any(|there| there == word);
        if is(0) {
            Some("L")
        } else if is(1) {
            Some("R")
        } else {
            None
        }
    }
}
