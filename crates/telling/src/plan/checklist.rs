//! What to write down for every shot, and why; and what to mind before swinging.

use serde::Serialize;
use session::known::Known;
use session::measure::MeasureId;
use text::Voice;
use text::checklist::{self as say, Measure};
use text::names::title;

/// One thing to write down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ToRecord {
    /// The measure.
    pub measure: MeasureId,
    /// Its name.
    pub name: String,
    /// Why it is worth the trouble.
    pub why: String,
    /// Whether there is no answer without it.
    pub needed: bool,
}

/// Everything worth a column, the most telling first. Judgement, no source.
const WORTH_IT: [(Known, Measure); 7] = [
    (Known::ClubSpeed, Measure::ClubSpeed),
    (Known::BallSpeed, Measure::BallSpeed),
    (Known::StrikeOffset, Measure::StrikeOffset),
    (Known::StrikeHeight, Measure::StrikeHeight),
    (Known::LaunchAngle, Measure::LaunchAngle),
    (Known::SpinRate, Measure::SpinRate),
    (Known::Offline, Measure::Offline),
];

/// The measure asked for, then what tells its causes apart.
pub(super) fn checklist(asked: Known, voice: &Voice) -> Vec<ToRecord> {
    let named = |known: Known, why, needed| ToRecord {
        measure: known.into(),
        name: title(known, voice),
        why,
        needed,
    };
    let others = WORTH_IT.iter().filter(|(known, _)| *known != asked);
    std::iter::once(named(asked, say::needed(voice), true))
        .chain(others.map(|&(known, measure)| named(known, say::why(voice, measure), false)))
        .collect()
}

/// What to mind before swinging.
pub(super) fn cautions(voice: &Voice) -> Vec<String> {
    vec![say::warm_up(voice), say::rest(voice), say::stop(voice), say::room(voice)]
}
