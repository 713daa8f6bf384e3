//! Which language is spoken: the one state of the core. It changes words, never a number or a decision.

use crate::{FORMS, STAMP};
use std::cell::RefCell;
use std::fmt;

/// A table that was made for other messages than these.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotOfThisVersion;

impl fmt::Display for NotOfThisVersion {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("this text belongs to another version")
    }
}

impl std::error::Error for NotOfThisVersion {}

thread_local! {
    static TABLE: RefCell<Option<Table>> = const { RefCell::new(None) };
}

/// A language other than English.
struct Table {
    language: String,
    forms: String,
    messages: Vec<String>,
}

/// Speaks another language from here on, in this thread.
///
/// # Errors
/// [`NotOfThisVersion`], and the language stays, when the table's head is not that of these messages or a line lacks.
pub fn speak(table: &str) -> Result<(), NotOfThisVersion> {
    let mut lines = table.lines().map(str::to_owned);
    let head = [lines.next(), lines.next(), lines.next()];
    let [Some(stamp), Some(language), Some(forms)] = head else { return Err(NotOfThisVersion) };
    let messages: Vec<String> = lines.collect();
    if stamp != STAMP || messages.len() != crate::MESSAGES {
        return Err(NotOfThisVersion);
    }
    TABLE.set(Some(Table { language, forms, messages }));
    Ok(())
}

/// Speaks English again.
pub fn speak_english() {
    TABLE.set(None);
}

/// The language's tag: `en`, `es`.
#[must_use]
pub fn language() -> String {
    TABLE.with_borrow(|table| table.as_ref().map_or_else(|| "en".to_owned(), |table| table.language.clone()))
}

/// Hands on the pattern of a message and the forms of counts in the language spoken.
pub(crate) fn with_pattern<T>(number: usize, english: &str, then: impl FnOnce(&str, &str) -> T) -> T {
    TABLE.with_borrow(|table| match table {
        Some(table) => then(table.messages.get(number).map_or(english, String::as_str), &table.forms),
        None => then(english, FORMS),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{SPANISH, format, with_marks};

    #[test]
    fn spanish_counts_and_marks_are_spanish_until_english_is_spoken_again() {
        speak(SPANISH).expect("a table of this version");
        assert_eq!((language().as_str(), format::shots(1).as_str()), ("es", "1 golpe"));
        assert_eq!(
            (with_marks("2850.5").as_str(), with_marks("12850").as_str()),
            ("2850,5", "12.850"),
            "four digits stand together"
        );
        speak_english();
        assert_eq!((with_marks("2850.5").as_str(), format::shots(2).as_str()), ("2,850.5", "2 shots"));
    }

    #[test]
    fn a_table_of_other_messages_is_refused_and_changes_nothing() {
        let short = SPANISH.trim_end().rsplit_once('\n').expect("lines").0;
        for wrong in ["", "es", short, &SPANISH.replacen(STAMP, "0", 1)] {
            assert_eq!(speak(wrong), Err(NotOfThisVersion));
            assert_eq!(language(), "en");
        }
    }
}
