//! Several readings as one session, as when each build came in a file of its own.

use crate::report::order;
use crate::second_and_weather;
use crate::take::draft::Draft;
use crate::talk::Talk;
use session::measure::MeasureId;
use session::{CustomMeasure, Order, Session};
use std::collections::{BTreeMap, BTreeSet};
use text::Voice;

/// Joins sessions in the order given: builds of one name become one, measures of one id too, save
/// the golfer's own ones in different units, which stay apart.
///
/// Texts added one after another do not tell in which order their shots were hit, so the order
/// is known only where rounds or shot numbers that run through all of them tell it, or where the
/// golfer says it (`told`, as in [`crate::Hints::order`]). Rounds of sessions with several builds
/// each follow one another; rounds of single builds meet.
#[must_use]
pub fn join(sessions: &[Session], told: Option<Order>) -> Session {
    if let ([one], None) = (sessions, told) {
        return one.clone();
    }
    let mut joined = Session { weather: second_and_weather::same_weather(sessions), ..Session::default() };
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
        let session = &apart(session, &mut joined.custom);
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
        let second_at = second_and_weather::joined(&mut joined.second, session.second.as_ref());
        let offset = if several { rounds_before } else { 0 };
        for shot in &session.shots {
            let mut moved = shot.clone();
            moved.build = build_at.get(shot.build).copied().unwrap_or(0);
            moved.round = shot.round.map(|round| round.saturating_add(offset));
            rounds_before = rounds_before.max(moved.round.unwrap_or(0));
            moved.second = shot.second.and_then(|at| second_at.get(at as usize).copied());
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
    order::settle(&mut draft, false, told, &mut Talk::new(&Voice::english()));
    draft.session
}

/// The session with an id of its own for each measure that `known` has in another unit; adds the new ones.
fn apart(session: &Session, known: &mut Vec<CustomMeasure>) -> Session {
    let mut session = session.clone();
    let before = known.len();
    for at in 0..session.custom.len() {
        let mut custom = session.custom[at].clone();
        let clashes = |id: &MeasureId| {
            let same = known[..before].iter().find(|c| c.id == *id);
            same.is_some_and(|c| !c.unit.is_empty() && !custom.unit.is_empty() && c.unit != custom.unit)
        };
        let mut id = custom.id.clone();
        let taken = |id: &MeasureId| session.measures.contains(id) && *id != custom.id;
        let more = (2..).map(|n| MeasureId::from(format!("{}_{n}", custom.id)));
        if clashes(&id) {
            id = more.into_iter().find(|id| !clashes(id) && !taken(id)).unwrap_or(id);
            rename(&mut session, &custom.id, &id);
            custom.id = id;
        }
        if !known.iter().any(|c| c.id == custom.id) {
            known.push(custom);
        }
    }
    session
}

fn rename(session: &mut Session, old: &MeasureId, new: &MeasureId) {
    for id in session.measures.iter_mut().filter(|id| *id == old) {
        *id = new.clone();
    }
    for summary in &mut session.summaries {
        if let Some(value) = summary.values.remove(old) {
            summary.values.insert(new.clone(), value);
        }
    }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Hints, read};

    fn of(text: &str) -> Session {
        read(text, &Hints::default(), &Voice::english()).session
    }

    fn named(text: &str, build: &str) -> Session {
        read(text, &Hints { build: Some(build.into()), ..Hints::default() }, &Voice::english()).session
    }

    #[test]
    fn a_file_for_each_build_aligns_the_measures_and_leaves_the_order_open() {
        let one = named("Carry (yd),Spin\n250,2500\n252,2450\n", "A");
        let other = named("Offline (yd);Carry (m)\n3;230\n-4;228,5\n", "B");
        let joined = join(&[one, other], None);
        assert_eq!(joined.builds.len(), 2);
        assert_eq!(joined.measures, ["carry", "spin_rate", "offline"].map(MeasureId::from));
        assert_eq!(joined.shots[0].values, [Some(250.0), Some(2500.0), None]);
        assert_eq!(joined.shots[2].values[1..], [None, Some(3.0)]);
        assert_eq!(joined.order, Order::Unknown);
    }

    #[test]
    fn what_the_golfer_says_of_the_order_settles_it() {
        let texts = [named("Carry\n250\n252\n", "A"), named("Carry\n260\n262\n", "B")];
        assert_eq!(join(&texts, Some(Order::Blocked)).order, Order::Blocked);
        let in_turn = join(&texts, Some(Order::Interleaved));
        let order: Vec<_> = in_turn.shots.iter().map(|s| (s.build, s.round)).collect();
        assert_eq!(order, [(0, Some(1)), (1, Some(1)), (0, Some(2)), (1, Some(2))]);
    }

    #[test]
    fn a_build_in_two_texts_is_one() {
        let joined = join(&[of("Club,Carry\nA,250\nB,255\n"), of("Club,Carry\nB,256\nC,240\n")], None);
        let names: Vec<&str> = joined.builds.iter().map(|b| b.name.as_str()).collect();
        assert_eq!(names, ["A", "B", "C"]);
        assert_eq!(joined.shots.iter().map(|s| s.build).collect::<Vec<_>>(), [0, 1, 1, 2]);
    }

    #[test]
    fn own_measures_in_other_units_stay_apart() {
        let texts = [of("Club,Carry,Tempo (s)\nA,250,1.1\n"), of("Club,Carry,Tempo (beats)\nB,255,44\n")];
        let joined = join(&texts, None);
        let units: Vec<(&str, &str)> =
            joined.custom.iter().map(|c| (c.id.as_str(), c.unit.as_str())).collect();
        assert_eq!(units, [("tempo", "s"), ("tempo_2", "beats")]);
        assert_eq!(joined.shots[1].values, [Some(255.0), None, Some(44.0)]);
        assert_eq!(join(&[texts[0].clone(), texts[0].clone()], None).custom.len(), 1);
    }
}
