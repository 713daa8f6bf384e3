//! In which language something is said, and in which units sizes are shown: an argument of whatever speaks.
//!
//! It changes words, never a number that is decided on, nor a decision.

use crate::{FORMS, STAMP};
use std::fmt;
use std::sync::Arc;

/// How something is said. The default is English, in yards.
#[derive(Debug, Clone, Default)]
pub struct Voice {
    language: Language,
    /// What sizes are shown in.
    pub units: Units,
    /// Whose shots are spoken of.
    pub whose: Whose,
    /// Whether decimals follow a point whatever the language's own mark: Spanish has a comma in Madrid and a point in Mexico.
    pub point: bool,
    #[cfg(feature = "traced")]
    record: Option<crate::traced::Record>,
}

impl Voice {
    /// A language and what it shows sizes in.
    #[must_use]
    pub const fn new(language: Language, units: Units) -> Self {
        Self {
            language,
            units,
            whose: Whose::Own,
            point: false,
            #[cfg(feature = "traced")]
            record: None,
        }
    }

    /// The same, with decimals after a point or as the language has them.
    #[must_use]
    pub fn with_point(self, point: bool) -> Self {
        Self { point, ..self }
    }

    /// English, in yards.
    #[must_use]
    pub const fn english() -> Self {
        Self::new(Language::english(), Units::Yards)
    }

    /// The same voice, with every message it says noted in a record.
    #[cfg(feature = "traced")]
    #[must_use]
    pub fn heard_by(&self, record: &crate::traced::Record) -> Self {
        Self { record: Some(record.clone()), ..self.clone() }
    }

    /// Where what is said is noted, if it is.
    #[cfg(feature = "traced")]
    pub(crate) const fn record(&self) -> Option<&crate::traced::Record> {
        self.record.as_ref()
    }

    /// The same, of somebody else's shots.
    #[must_use]
    pub fn of_the_sender(&self) -> Self {
        Self { whose: Whose::Sender, ..self.clone() }
    }

    /// Whether somebody else's shots are spoken of.
    #[must_use]
    pub fn is_of_the_sender(&self) -> bool {
        self.whose == Whose::Sender
    }

    /// The language alone.
    #[must_use]
    pub const fn language(&self) -> &Language {
        &self.language
    }
}

/// Whose shots are spoken of: whoever reads it, or somebody who shared them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Whose {
    /// Of who reads it.
    #[default]
    Own,
    /// Of who shared them.
    Sender,
}

/// What distances and speeds are shown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// Yards, and miles an hour.
    #[default]
    Yards,
    /// Meters, and kilometers an hour.
    Meters,
    /// Meters, and miles an hour: what much of the world plays by.
    MetersAndMph,
}

/// English, which is compiled in, or another language from its table. A clone shares the table.
#[derive(Clone, Default)]
pub struct Language(Option<Arc<Table>>);

/// A language other than English.
struct Table {
    tag: String,
    forms: String,
    messages: Vec<String>,
}

impl Language {
    /// The one that needs no table.
    #[must_use]
    pub const fn english() -> Self {
        Self(None)
    }

    /// The language of a table, such as [`SPANISH`](crate::SPANISH).
    ///
    /// # Errors
    /// [`NotOfThisVersion`] when the table's head is not that of these messages or a line lacks.
    pub fn from_table(table: &str) -> Result<Self, NotOfThisVersion> {
        let mut lines = table.lines().map(str::to_owned);
        let head = [lines.next(), lines.next(), lines.next()];
        let [Some(stamp), Some(tag), Some(forms)] = head else { return Err(NotOfThisVersion) };
        let messages: Vec<String> = lines.collect();
        if stamp != STAMP || messages.len() != crate::MESSAGES {
            return Err(NotOfThisVersion);
        }
        Ok(Self(Some(Arc::new(Table { tag, forms, messages }))))
    }

    /// `en`, `es`.
    #[must_use]
    pub fn tag(&self) -> &str {
        self.0.as_ref().map_or("en", |table| &table.tag)
    }

    /// The pattern of a message, where the English one is known.
    pub(crate) fn pattern<'a>(&'a self, number: usize, english: &'a str) -> &'a str {
        self.0.as_ref().and_then(|table| table.messages.get(number)).map_or(english, String::as_str)
    }

    /// The forms of counts, as `build/plural.rs` writes them.
    pub(crate) fn forms(&self) -> &str {
        self.0.as_ref().map_or(FORMS, |table| &table.forms)
    }
}

impl fmt::Debug for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Language").field(&self.tag()).finish()
    }
}

/// A table that was made for other messages than these.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotOfThisVersion;

impl fmt::Display for NotOfThisVersion {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("this text belongs to another version")
    }
}

impl std::error::Error for NotOfThisVersion {}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::SPANISH;
    use crate::{format, grouped, measure, with_marks};

    fn spanish() -> Voice {
        Voice::new(Language::from_table(SPANISH).expect("a table of this version"), Units::Meters)
    }

    #[test]
    fn two_voices_speak_side_by_side_and_neither_hears_the_other() {
        let (english, spanish) = (Voice::default(), spanish());
        for (voice, one, two, mark) in [
            (&english, "1 shot", "2 shots", "2,850.5"),
            (&spanish, "1 golpe", "2 golpes", "2850,5"),
            (&english, "1 shot", "2 shots", "2,850.5"),
            (&spanish.clone(), "1 golpe", "2 golpes", "2850,5"),
        ] {
            assert_eq!(format::shots(voice, 1), one);
            assert_eq!(format::shots(voice, 2), two);
            assert_eq!(with_marks(voice, "2850.5"), mark);
        }
        assert_eq!(grouped(&spanish, "12850"), "12\u{202f}850", "four digits stand together, five do not");
        assert_eq!((english.language().tag(), spanish.language().tag()), ("en", "es"));
        assert_eq!((english.units, spanish.units), (Units::Yards, Units::Meters));
    }

    #[test]
    fn where_decimals_follow_a_point_numbers_are_written_so_and_words_stay() {
        let there = spanish().with_point(true);
        assert_eq!(
            (with_marks(&there, "2850.5"), grouped(&there, "12850")),
            ("2,850.5".into(), "12,850".into())
        );
        assert_eq!(format::shots(&there, 2), "2 golpes");
        assert_eq!(crate::decimal_mark(&spanish()), ",");
    }

    #[test]
    fn threads_share_a_voice() {
        let spanish = spanish();
        let said =
            std::thread::scope(|scope| scope.spawn(|| format::shots(&spanish, 1)).join().expect("no panic"));
        assert_eq!(said, format::shots(&spanish, 1));
    }

    #[test]
    fn a_table_of_other_messages_is_refused() {
        let short = SPANISH.trim_end().rsplit_once('\n').expect("lines").0;
        for wrong in ["", "es", short, &format!("{SPANISH}more\n"), &SPANISH.replacen(STAMP, "0", 1)] {
            assert_eq!(Language::from_table(wrong).err(), Some(NotOfThisVersion));
        }
    }

    #[test]
    fn every_word_is_found_by_what_the_catalogues_write() {
        for id in measure::Id::ALL {
            assert_eq!(measure::Id::of(id.word()), Some(id));
        }
        assert_eq!(measure::Id::of("ball_speed"), Some(measure::Id::BallSpeed));
        assert_eq!(
            measure::Id::of("strike_offset"),
            Some(measure::Id::StrikeOffset),
            "said where nothing else fits"
        );
        assert_eq!(measure::Id::of("ball-speed"), None);
        assert_eq!(measure::name(&Voice::english(), measure::Id::BallSpeed), "ball speed");
        assert_eq!(measure::name(&spanish(), measure::Id::BallSpeed), "velocidad de bola");
    }

    #[test]
    fn no_two_words_of_an_enum_are_said_alike() {
        for voice in [Voice::english(), spanish()] {
            let mut names: Vec<String> =
                measure::Id::ALL.iter().map(|id| measure::name(&voice, *id)).collect();
            names.sort();
            names.dedup();
            assert_eq!(names.len(), measure::Id::ALL.len(), "{voice:?}");
        }
    }

    #[test]
    fn a_voice_tells_its_language_and_not_its_table() {
        let told = format!("{:?}", spanish());
        assert!(told.starts_with("Voice { language: Language(\"es\"), units: Meters"), "{told}");
        assert!(told.len() < 100, "{told}");
    }
}
