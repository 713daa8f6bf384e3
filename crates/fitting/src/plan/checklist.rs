//! What to write down for every shot, and why; and what to mind before swinging.

use crate::measure::{self, MeasureId};
use serde::Serialize;

/// One thing to write down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ToRecord {
    /// The measure.
    pub measure: MeasureId,
    /// Its name.
    pub name: &'static str,
    /// Why it is worth the trouble.
    pub why: &'static str,
    /// Whether there is no answer without it.
    pub needed: bool,
}

const NEEDED: &str = "The test is about it: without it there is no answer.";

/// Everything worth a column, the most telling first. Judgement, no source.
const WORTH_IT: [(&str, &str); 7] = [
    (
        "club_speed",
        "Tells the club from the swing: a club swung faster that day goes farther whatever its shaft.",
    ),
    ("ball_speed", "Shows whether a gap in carry comes from speed or from the flight."),
    (
        "strike_offset",
        "Toe or heel costs speed and curves the ball; without it a better strike looks like a better club.",
    ),
    ("strike_height", "High or low on the face changes launch and spin more than most shafts do."),
    ("launch_angle", "With spin it says what this ball speed could have carried."),
    ("spin_rate", "With launch it says what this ball speed could have carried."),
    ("offline", "Farther is no gain if it is also wilder."),
];

/// The measure asked for, then what tells its causes apart.
pub(super) fn checklist(asked: &MeasureId) -> Vec<ToRecord> {
    let named = |id: &str, why, needed| {
        let known = measure::known(&id.into())?;
        Some(ToRecord { measure: id.into(), name: known.name, why, needed })
    };
    let others =
        WORTH_IT.iter().filter(|(id, _)| *id != asked.0).filter_map(|(id, why)| named(id, why, false));
    named(&asked.0, NEEDED, true).into_iter().chain(others).collect()
}

/// What to mind before swinging.
pub(super) const CAUTIONS: [&str; 4] = [
    "Warm up until you swing as usual; the first balls do not count.",
    "Rest between sets. A tired swing tests your legs, not the clubs.",
    "Stop at once if anything hurts. An answer can wait, a back cannot.",
    "Use a bay with room for the longest club and nobody within reach; let others know before you swing.",
];
