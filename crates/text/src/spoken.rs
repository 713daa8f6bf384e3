//! OLD, to be deleted when every caller says in which voice: the language of the thread.

use crate::{Language, NotOfThisVersion, Units, Voice};
use std::cell::RefCell;

thread_local! {
    static SPOKEN: RefCell<Language> = const { RefCell::new(Language::english()) };
}

impl Voice {
    /// The thread's language, in yards.
    #[must_use]
    pub fn spoken() -> Self {
        Self::new(SPOKEN.with_borrow(Clone::clone), Units::Yards)
    }
}

/// Speaks another language from here on, in this thread.
///
/// # Errors
/// [`NotOfThisVersion`], and the language stays, when the table's head is not that of these messages or a line lacks.
pub fn speak(table: &str) -> Result<(), NotOfThisVersion> {
    SPOKEN.set(Language::from_table(table)?);
    Ok(())
}

/// Speaks English again.
pub fn speak_english() {
    SPOKEN.set(Language::english());
}

/// The language's tag: `en`, `es`.
#[must_use]
pub fn language() -> String {
    Voice::spoken().language().tag().to_owned()
}

/// Digits of a whole number with its thousands set apart: `2,850`.
#[must_use]
pub fn grouped(digits: &str) -> String {
    crate::number::grouped(&Voice::spoken(), digits)
}

/// A size given in plain digits, `2850.4`, with the language's marks: `2,850.4`.
#[must_use]
pub fn with_marks(plain: &str) -> String {
    crate::number::with_marks(&Voice::spoken(), plain)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{SPANISH, format};

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
    fn a_refused_table_changes_nothing() {
        assert_eq!(speak("es"), Err(NotOfThisVersion));
        assert_eq!(language(), "en");
    }
}
