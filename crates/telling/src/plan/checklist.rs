//! What to write down for every shot, and why; and what to mind before swinging.

use crate::measure::{self, MeasureId};
use serde::Serialize;
use text::checklist as say;

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
const WORTH_IT: [&str; 7] =
    ["club_speed", "ball_speed", "strike_offset", "strike_height", "launch_angle", "spin_rate", "offline"];

/// The measure asked for, then what tells its causes apart.
pub(super) fn checklist(asked: &MeasureId) -> Vec<ToRecord> {
    let named = |id: &str, why, needed| {
        let known = measure::known(&id.into())?;
        Some(ToRecord { measure: id.into(), name: known.title(), why, needed })
    };
    let others = WORTH_IT.iter().filter(|id| **id != asked.0).filter_map(|id| named(id, say::why(id), false));
    named(&asked.0, say::needed(), true).into_iter().chain(others).collect()
}

/// What to mind before swinging.
pub(super) fn cautions() -> Vec<String> {
    vec![say::warm_up(), say::rest(), say::stop(), say::room()]
}
