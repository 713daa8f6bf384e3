//! What is wrong with a request, in words.

use crate::nearest::nearest;
use crate::wrong::{Expected, What, Wrong};
use session::MOST_SECOND;
use session::names::short_name;
use session::refusal::Refusal;
use session::wire::SessionError;
use text::Voice;
use text::request as say;

/// Kind of every refusal here.
const KIND: &str = "not_understood";

/// The refusal as whoever asked gets it.
pub(crate) fn refusal(wrong: &Wrong, root: &str, voice: &Voice) -> Refusal {
    let (message, remedy) = match &wrong.what {
        What::UnknownField { field, known } => {
            let (is_near, named) = meant(field, known);
            (say::unknown_field(voice, &quoted(field)), say::unknown_field_remedy(voice, is_near, &named))
        }
        What::MissingField { field } => {
            (say::missing_field(voice, &quoted(field)), say::missing_field_remedy(voice))
        }
        What::UnknownWord { word, known } => {
            let (is_near, named) = meant(word, known);
            (say::unknown_word(voice, &quoted(word)), say::unknown_word_remedy(voice, is_near, &named))
        }
        What::NotOfType { expected } => (not_of_type(expected, voice), say::not_of_type_remedy(voice)),
        What::NotFinite => (say::not_finite(voice), say::not_finite_remedy(voice)),
        What::Session(error) => (session(error, voice), say::does_not_fit_remedy(voice)),
        What::Other(why) => (say::does_not_fit(voice, why), say::does_not_fit_remedy(voice)),
    };
    Refusal::new(KIND, &wrong.place(root), &message, &remedy)
}

/// Why it is no session.
fn session(error: &SessionError, voice: &Voice) -> String {
    match error {
        SessionError::ShotBuild { build, builds, .. } | SessionError::SummaryBuild { build, builds, .. } => {
            // A column without a number names none.
            let named = if *build == usize::MAX { String::new() } else { build.to_string() };
            say::no_such_club(voice, !named.is_empty(), &named, *builds)
        }
        SessionError::Second { values } => {
            say::second_does_not_fit(voice, &values.to_string(), &MOST_SECOND.to_string())
        }
        SessionError::ShotsTwice => say::shots_twice(voice),
        SessionError::ColumnLength { got, shots, .. } => say::column_length(voice, *got, *shots),
        SessionError::NotWhole { .. } => say::not_of_type(voice, say::Expected::Count),
        SessionError::NoSuchShot { shot, shots } => say::no_such_shot(voice, &shot.to_string(), *shots),
    }
}

/// The name that was probably meant, else all of them.
fn meant(name: &str, known: &[&str]) -> (bool, String) {
    match nearest(name, known) {
        Some(near) => (true, quoted(near)),
        None => (false, known.iter().map(|name| quoted(name)).collect::<Vec<_>>().join(", ")),
    }
}

fn quoted(name: &str) -> String {
    format!("`{}`", short_name(name))
}

fn not_of_type(expected: &Expected, voice: &Voice) -> String {
    let kind = match expected {
        Expected::Number => say::Expected::Number,
        Expected::Count => say::Expected::Count,
        Expected::Text => say::Expected::Text,
        Expected::YesOrNo => say::Expected::YesOrNo,
        Expected::List => say::Expected::List,
        Expected::Object => say::Expected::Object,
        Expected::Other(said) => return say::not_of_type_other(voice, said),
    };
    say::not_of_type(voice, kind)
}
