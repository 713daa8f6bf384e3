//! How large a session a link may hold, so that opening any text stays quick and small.
//!
//! A few bytes can say "five thousand shots, all the same": what they would take once unpacked is worked out and held
//! against a limit before anything is set aside for it.

use super::error::TooLarge;
use session::measure::MeasureId;
use session::{MOST_BUILDS, Session};

/// Characters of the longest link. No forum and few browsers take as many; a session that long belongs in a file.
pub const MOST_CHARACTERS: usize = 60_000;

/// Shots a link may hold.
pub const MOST_SHOTS: usize = 5_000;

/// Measures and columns a link may hold.
pub(crate) const MOST_MEASURES: usize = 200;

/// Averages a link may hold.
pub(crate) const MOST_SUMMARIES: usize = 500;

/// Bytes that shots and averages may take as plain objects, keyed by the ids of measures.
const MOST_UNPACKED: usize = 1_000_000;

/// Bytes of one value beside its key, and of one shot beside its values.
const VALUE: usize = 48;
const SHOT: usize = 160;

/// Whether so many shots and averages on these measures stay within the limits once unpacked.
pub(crate) fn fits(builds: usize, rows: usize, measures: &[MeasureId], said: usize) -> bool {
    let row = SHOT + measures.iter().map(|id| id.as_str().len() + VALUE).sum::<usize>();
    builds <= MOST_BUILDS
        && rows <= MOST_SHOTS + MOST_SUMMARIES
        && measures.len() <= MOST_MEASURES
        && rows.saturating_mul(row).saturating_add(said) <= MOST_UNPACKED
}

/// Bytes of what was said of single shots: why they are left out, and notes.
pub(crate) fn said(session: &Session) -> usize {
    let texts = session.shots.iter().flat_map(|shot| shot.left_out.iter().chain(&shot.note));
    texts.map(String::len).sum()
}

/// Refuses a session that no link could hold.
pub(crate) fn packable(session: &Session) -> Result<(), TooLarge> {
    let measures = all_measures(session);
    let rows = session.shots.len() + session.summaries.len();
    let is_small = fits(session.builds.len(), rows, &measures, said(session))
        && session.shots.len() <= MOST_SHOTS
        && session.summaries.len() <= MOST_SUMMARIES
        && session.custom.len() <= MOST_MEASURES;
    if is_small { Ok(()) } else { Err(TooLarge::Session) }
}

/// The session's measures, and behind them those that only its averages name.
pub(crate) fn all_measures(session: &Session) -> Vec<MeasureId> {
    let mut measures = session.measures.clone();
    for id in session.summaries.iter().flat_map(|summary| summary.values.keys()) {
        if !measures.contains(id) {
            measures.push(id.clone());
        }
    }
    measures
}
