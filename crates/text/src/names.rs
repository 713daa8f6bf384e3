//! What the trade's measures are called, in the middle of a sentence and as a title.

use crate::measure::{self, Id};
use crate::{Voice, capital};
use session::known::Known;

/// Its name in the middle of a sentence: `ball speed`.
#[must_use]
pub fn spoken(known: Known, voice: &Voice) -> String {
    measure::name(voice, id(known))
}

/// The measure as a thing that is spoken of, with its article where the language has one: `el carry`; in English `offline`
/// is `direction`.
#[must_use]
pub fn the(known: Known, voice: &Voice) -> String {
    measure::the(voice, id(known))
}

/// Its name as a title: `Ball speed`.
#[must_use]
pub fn title(known: Known, voice: &Voice) -> String {
    capital(&spoken(known, voice))
}

/// The word by which the catalogue knows a measure.
fn id(known: Known) -> Id {
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
