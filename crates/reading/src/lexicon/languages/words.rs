//! The words of one language, and how one of them is looked up.

/// The words of one language.
pub(crate) struct Words {
    /// English headings, and the words for each set apart by spaces.
    pub(crate) headings: &'static [(&'static str, &'static str)],
    /// Words for left and for right, set apart by spaces.
    pub(crate) sides: [&'static str; 2],
}

impl Words {
    /// The English heading for a word.
    pub(crate) fn english(&self, word: &str) -> Option<&'static str> {
        let listed = |list: &str| list.split_whitespace().any(|there| there == word);
        self.headings.iter().find(|(_, list)| !word.is_empty() && listed(list)).map(|(english, _)| *english)
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
