//! What is wrong with a value, and where.

use serde::de::{self, Unexpected};
use session::wire::SessionError;
use std::fmt::{self, Display};

/// One step from the top of a value towards the place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Step {
    /// Into a field.
    Field(String),
    /// To the item at a position, from 0.
    Item(usize),
}

/// What a value should be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Expected {
    /// A number.
    Number,
    /// A whole number, zero or more.
    Count,
    /// A text.
    Text,
    /// Yes or no.
    YesOrNo,
    /// A list.
    List,
    /// An object with named fields.
    Object,
    /// As it says itself.
    Other(String),
}

/// What is wrong.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum What {
    /// A field that nobody knows here.
    UnknownField {
        /// Its name.
        field: String,
        /// Those that are known.
        known: &'static [&'static str],
    },
    /// A field that must be there is not.
    MissingField {
        /// Its name.
        field: &'static str,
    },
    /// A word that is none of those that may stand here.
    UnknownWord {
        /// The word.
        word: String,
        /// Those that may.
        known: &'static [&'static str],
    },
    /// Something else than it should be.
    NotOfType {
        /// What it should be.
        expected: Expected,
    },
    /// A number that is none, or without end.
    NotFinite,
    /// A session that does not fit together.
    Session(SessionError),
    /// It does not fit together, as it says itself.
    Other(String),
}

/// What is wrong with a value, and where.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wrong {
    /// From the top to the place.
    pub path: Vec<Step>,
    /// What is wrong there.
    pub what: What,
}

impl Wrong {
    pub(crate) fn here(what: What) -> Self {
        Self { path: Vec::new(), what }
    }

    /// The same, seen from one step farther up.
    pub(crate) fn below(mut self, step: Step) -> Self {
        self.path.insert(0, step);
        self
    }

    /// The place as a path: `question.stopping.planned_rounds`, `session.shots[3].values.carry`.
    #[must_use]
    pub fn place(&self, root: &str) -> String {
        let mut place = root.to_owned();
        for step in &self.path {
            match step {
                Step::Field(name) if place.is_empty() => place.push_str(name),
                Step::Field(name) => place.extend([".", name]),
                Step::Item(at) => place.extend(["[", &at.to_string(), "]"]),
            }
        }
        place
    }
}

impl Display for Wrong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {:?}", self.place(""), self.what)
    }
}

impl std::error::Error for Wrong {}

impl de::Error for Wrong {
    fn custom<T: Display>(message: T) -> Self {
        let message = message.to_string();
        match message.parse::<SessionError>() {
            Ok(error) => Self { path: place_of(&error), what: What::Session(error) },
            Err(_) => Self::here(What::Other(message)),
        }
    }

    fn invalid_type(got: Unexpected<'_>, expected: &dyn de::Expected) -> Self {
        Self::invalid_value(got, expected)
    }

    fn invalid_value(_: Unexpected<'_>, expected: &dyn de::Expected) -> Self {
        Self::here(What::NotOfType { expected: Expected::of(&expected.to_string()) })
    }

    fn unknown_variant(word: &str, known: &'static [&'static str]) -> Self {
        Self::here(What::UnknownWord { word: word.to_owned(), known })
    }

    fn unknown_field(field: &str, known: &'static [&'static str]) -> Self {
        Self::here(What::UnknownField { field: field.to_owned(), known })
    }

    fn missing_field(field: &'static str) -> Self {
        Self::here(What::MissingField { field })
    }

    fn duplicate_field(field: &'static str) -> Self {
        Self::here(What::Other(format!("`{field}` stands twice")))
    }
}

/// Columns that are no measure's.
const OWN_COLUMNS: [&str; 3] = ["round", "number", "second"];

/// Where in the session it went wrong.
fn place_of(error: &SessionError) -> Vec<Step> {
    let field = |name: &str| Step::Field(name.to_owned());
    match error {
        SessionError::ShotBuild { shot, .. } => vec![field("shots"), Step::Item(*shot), field("build")],
        SessionError::SummaryBuild { summary, .. } => {
            vec![field("summaries"), Step::Item(*summary), field("build")]
        }
        SessionError::Second { .. } => vec![field("second"), field("values")],
        SessionError::ShotsTwice | SessionError::NoSuchShot { .. } => vec![field("columns")],
        SessionError::ColumnLength { name, .. } if OWN_COLUMNS.contains(&name.as_str()) => {
            vec![field("columns"), field(name)]
        }
        SessionError::ColumnLength { name, .. } => vec![field("columns"), field("values"), field(name)],
        SessionError::NotWhole { name, shot } => vec![field("columns"), field(name), Step::Item(*shot)],
    }
}

impl Expected {
    /// From how the types of serde call themselves.
    fn of(said: &str) -> Self {
        match said {
            "f64" | "f32" | "i64" | "i32" => Self::Number,
            "u8" | "u16" | "u32" | "u64" | "usize" => Self::Count,
            "a string" | "string" | "a character" => Self::Text,
            "a boolean" => Self::YesOrNo,
            "a sequence" | "unit variant" => Self::List,
            "a map" => Self::Object,
            _ if said.starts_with("struct ") => Self::Object,
            _ if said.starts_with("an array") || said.starts_with("a tuple") => Self::List,
            other => Self::Other(other.to_owned()),
        }
    }
}
