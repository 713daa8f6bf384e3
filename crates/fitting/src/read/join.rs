//! Several readings as one session, as when each build came in a file of its own.

use super::draft::Draft;
use super::order;
use super::talk::Talk;
use crate::measure::MeasureId;
use crate::session::{Order, Session};
use std::collections::{BTreeMap, BTreeSet};

/// Joins sessions in the order given: builds of one name become one, measures of one id too.
///
/// Texts added one after another do not tell in which order their shots were hit, so the order
/// is known only where rounds or shot numbers that run through all of them tell it. Rounds of
/// sessions with several builds each follow one another; rounds of single builds meet.
#[must_use]
pub fn join(sessions: &[Session]) -> Session {
    if let [one] = sessions {
        return one.clone();
    }
    let mut joined = Session::default();
    let mut builds: BTreeMap<&str, usize> = BTreeMap::new();
    let several =
        sessions.iter().any(|s| s.builds.len() > 1 && s.shots.iter().any(|shot| shot.round.is_some()));
    let mut rounds_before = 0;
    let mut measures: BTreeMap<MeasureId, usize> = BTreeMap::new();
    for session in sessions {
        let build_at: Vec<usize> = session
            .builds
            .iter()
            .map(|build| {
                *builds.entry(&build.name).or_insert_with(|| {
                    joined.builds.push(build.clone());
                    joined.builds.len() - 1
                })
            })
            .collect();
        for custom in &session.custom {
            if !joined.custom.iter().any(|c| c.id == custom.id) {
                joined.custom.push(custom.clone());
            }
        }
        let measure_at: Vec<usize> = session
            .measures
            .iter()
            .map(|id| {
                *measures.entry(id.clone()).or_insert_with(|| {
                    joined.measures.push(id.clone());
                    joined.measures.len() - 1
                })
            })
            .collect();
        let offset = if several { rounds_before } else { 0 };
        for shot in &session.shots {
            let mut moved = shot.clone();
            moved.build = build_at.get(shot.build).copied().unwrap_or(0);
            moved.round = shot.round.map(|round| round.saturating_add(offset));
            rounds_before = rounds_before.max(moved.round.unwrap_or(0));
            moved.values = vec![None; joined.measures.len()];
            for (&at, value) in measure_at.iter().zip(&shot.values) {
                moved.values[at] = *value;
            }
            joined.shots.push(moved);
        }
        for summary in &session.summaries {
            let mut moved = summary.clone();
            moved.build = build_at.get(summary.build).copied().unwrap_or(0);
            joined.summaries.push(moved);
        }
    }
    for shot in &mut joined.shots {
        shot.values.resize(joined.measures.len(), None);
    }
    drop_partial_rounds(&mut joined);
    let mut draft = Draft::default();
    draft.lines = vec![0; joined.shots.len()];
    draft.session = joined;
    order::settle(&mut draft, false, None, &mut Talk::default());
    draft.session
}

/// Rounds that only some builds have say nothing about the others.
fn drop_partial_rounds(session: &mut Session) {
    let with: BTreeSet<usize> = session.shots.iter().filter(|s| s.round.is_some()).map(|s| s.build).collect();
    let all: BTreeSet<usize> = session.shots.iter().map(|s| s.build).collect();
    if with != all {
        session.shots.iter_mut().for_each(|shot| shot.round = None);
        session.order = Order::Unknown;
    }
}
