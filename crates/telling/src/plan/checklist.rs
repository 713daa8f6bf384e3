//! What to write down for every shot, and why; and what to mind before swinging.

use judging::plan::{PlanFacts, days};
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

/// Everything worth a column, the most telling first. Judgment, no source.
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

/// What to keep alike for all clubs, what to write down of each, and what to mind before swinging.
pub(super) fn cautions(facts: &PlanFacts, voice: &Voice) -> Vec<String> {
    let days = days(facts.balls, facts.minutes);
    let (balls, minutes) = (facts.balls as usize, facts.minutes.to_string());
    let split = (days > 1).then(|| say::split_over_days(voice, balls, &minutes, &days.to_string()));
    split
        .into_iter()
        .chain([
            say::alike(voice),
            say::of_each_club(voice),
            say::warm_up(voice),
            say::rest(voice),
            say::stop(voice),
            say::room(voice),
            say::outdoors(voice),
        ])
        .collect()
}
