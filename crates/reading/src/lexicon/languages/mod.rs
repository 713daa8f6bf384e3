//! The trade's words in other languages, as what they are in English: tables headed so are read as if they were English.
//!
//! Looked at only where a table's headings are not all known. Words stand without spaces, in lower case, one file for
//! each language.

mod dutch;
mod french;
mod german;
mod italian;
mod japanese;
mod korean;
mod portuguese;
mod swedish;
mod words;

pub(crate) use words::Words;

/// Every language beside English and Spanish, whose words the vocabulary holds.
pub(crate) static ALL: [&Words; 8] = [
    &german::WORDS,
    &french::WORDS,
    &swedish::WORDS,
    &italian::WORDS,
    &portuguese::WORDS,
    &dutch::WORDS,
    &japanese::WORDS,
    &korean::WORDS,
];

#[cfg(test)]
mod tests {
    use super::ALL;
    use crate::lexicon::heading::understand;
    use crate::lexicon::vocabulary::{look_up, statistic};

    #[test]
    fn every_heading_is_english_that_is_understood() {
        for (english, words) in ALL.iter().flat_map(|language| language.headings) {
            let known = understand(english).word.is_some() || statistic(&english.replace(' ', "")).is_some();
            assert!(known, "{english}");
            let plain =
                words.split_whitespace().all(|word| word == word.to_lowercase() && !word.contains('-'));
            assert!(plain && !words.is_empty(), "{words}");
        }
    }

    #[test]
    fn no_word_is_english_already() {
        for word in
            ALL.iter().flat_map(|language| language.headings).flat_map(|(_, list)| list.split_whitespace())
        {
            assert!(look_up(word).is_none() && statistic(word).is_none(), "{word}");
        }
    }

    #[test]
    fn no_word_stands_twice_in_a_language() {
        for language in ALL {
            let mut words: Vec<&str> =
                language.headings.iter().flat_map(|(_, list)| list.split_whitespace()).collect();
            let count = words.len();
            words.sort_unstable();
            words.dedup();
            assert_eq!(words.len(), count);
        }
    }
}
