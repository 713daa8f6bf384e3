//! What the trade's measures are called, in a title and in the middle of a sentence.

use session::known::Known;
use text::Voice;
use text::measure::{Id, name};

/// In the middle of a sentence: `ball speed`.
#[must_use]
pub fn spoken_name(known: Known, voice: &Voice) -> String {
    name(voice, in_catalogue(known))
}

/// As a title: `Ball speed`.
#[must_use]
pub fn title(known: Known, voice: &Voice) -> String {
    capital(&spoken_name(known, voice))
}

/// The measure as the catalogues of words name it.
fn in_catalogue(known: Known) -> Id {
    match known {
        Known::Carry => Id::Carry,
        Known::Total => Id::Total,
        Known::Offline => Id::Offline,
        Known::BallSpeed => Id::BallSpeed,
        Known::ClubSpeed => Id::ClubSpeed,
        Known::LaunchAngle => Id::LaunchAngle,
        Known::LaunchDirection => Id::LaunchDirection,
        Known::SpinRate => Id::SpinRate,
        Known::SpinAxis => Id::SpinAxis,
        Known::Apex => Id::Apex,
        Known::DescentAngle => Id::DescentAngle,
        Known::HangTime => Id::HangTime,
        Known::Smash => Id::Smash,
        Known::AttackAngle => Id::AttackAngle,
        Known::ClubPath => Id::ClubPath,
        Known::FaceAngle => Id::FaceAngle,
        Known::FaceToPath => Id::FaceToPath,
        Known::DynamicLoft => Id::DynamicLoft,
        Known::SpinLoft => Id::SpinLoft,
        Known::StrikeHeight => Id::StrikeHeight,
        Known::StrikeOffset => Id::StrikeOffset,
    }
}

/// The text with its first letter as a capital; of Latin letters, without the tables of all the others.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map_or_else(String::new, |first| std::iter::once(capital_letter(first)).chain(chars).collect())
}

fn capital_letter(letter: char) -> char {
    match letter {
        'à'..='þ' if letter != '÷' => char::from_u32(u32::from(letter) - 0x20).unwrap_or(letter),
        other => other.to_ascii_uppercase(),
    }
}
