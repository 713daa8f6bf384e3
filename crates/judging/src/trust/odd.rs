//! Values that are probably a slip of the keys or of the reading: outside what their measure can be, ten times off the
//! others of their build, or so far from the
//! rest of their build that one alone moves the answer by more than matters.
//!
//! They count all the same: nobody but the golfer knows whether they were hit so; those of shots set aside were answered. One
//! finding for each measure, with the worst of its values.

use super::look::{FAR, FEWEST_TO_LIE_FAR_FROM, robust_distance};
use super::seen::{Odd, Seen};
use crate::analysis::{Aspect, Basis, Include, ShotTable, compare};
use crate::judge::Judgment;
use crate::settle::Settled;
use session::measure::{Margin, MeasureId};
use session::slipped_point::slipped_points;
use session::{Session, Shot, SummaryOf};

/// Far shots that are taken out on trial, one at a time; where there are more, it is no slip.
const MOST_ON_TRIAL: usize = 8;

/// Odd values of the two builds, the measure asked for first.
pub(super) fn odd_values(settled: &Settled<'_>, headline: &Judgment) -> Vec<Seen> {
    let builds = [headline.baseline, headline.candidate];
    let mut seen = Vec::new();
    for asked in &settled.measures {
        let outside = out_of_range(settled.session, &asked.measure, builds)
            .or_else(|| point_slipped(settled.session, &asked.measure, builds));
        if outside.is_none() && asked.measure == headline.measure {
            seen.extend(moves_the_answer(settled.session, headline));
        }
        seen.extend(outside);
    }
    seen
}

/// Shots and averages outside what the measure can be; the farthest out is named.
fn out_of_range(session: &Session, id: &MeasureId, builds: [usize; 2]) -> Option<Seen> {
    let plausible = id.usual()?.facts().plausible;
    let index = session.measure_index(id)?;
    let asked = |shot: &Shot| builds.contains(&shot.build) && shot.left_out.is_none();
    let shots = session.shots.iter().enumerate().filter(|(_, shot)| asked(shot));
    let of_shots =
        shots.filter_map(|(at, shot)| Some((Some(at), shot.build, shot.values.get(index).copied()??)));
    let summaries = session.summaries.iter().filter(|s| s.of == SummaryOf::All && builds.contains(&s.build));
    let of_averages = summaries.filter_map(|s| Some((None, s.build, s.values.get(id)?.mean?)));
    let beyond = |value: f64| (plausible.low - value).max(value - plausible.high);
    let mut outside: Vec<_> =
        of_shots.chain(of_averages).filter(|(_, _, value)| beyond(*value) > 0.0).collect();
    arrange::sort_by(&mut outside, |a, b| beyond(b.2).total_cmp(&beyond(a.2)));
    let &(shot, build, value) = outside.first()?;
    let because = Odd::OutOfRange { low: plausible.low, high: plausible.high };
    Some(Seen::OddValue { shot, build, measure: id.clone(), value, because, others: outside.len() - 1 })
}

/// Shots ten times off the others of their build, which the range of the measure holds all the same.
fn point_slipped(session: &Session, id: &MeasureId, builds: [usize; 2]) -> Option<Seen> {
    id.usual().filter(|known| known.facts().keeps_its_size)?;
    let index = session.measure_index(id)?;
    let mut found = Vec::new();
    for build in builds {
        let own = session.shots.iter().enumerate().filter(|(_, s)| s.build == build && s.left_out.is_none());
        let own: Vec<(usize, f64)> =
            own.filter_map(|(at, shot)| Some((at, shot.values.get(index).copied()??))).collect();
        let values: Vec<f64> = own.iter().map(|(_, value)| *value).collect();
        if let Some((usual, places)) = slipped_points(&values) {
            found.extend(places.into_iter().map(|place| (own[place].0, build, own[place].1, usual)));
        }
    }
    let &(shot, build, value, usual) = found.first()?;
    let because = Odd::PointSlipped { usual };
    let others = found.len() - 1;
    Some(Seen::OddValue { shot: Some(shot), build, measure: id.clone(), value, because, others })
}

/// Whether a value of these two builds, shot or average, is outside what the measure can be, or ten times off the others of
/// its build: nothing that rests on it is worth anything while it is wrong.
#[must_use]
pub fn has_value_in_doubt(session: &Session, id: &MeasureId, builds: [usize; 2]) -> bool {
    out_of_range(session, id, builds).is_some() || point_slipped(session, id, builds).is_some()
}

/// The shot far from the rest of its build without which the gap is another by more than matters.
fn moves_the_answer(session: &Session, headline: &Judgment) -> Option<Seen> {
    let Basis::Difference(careful) = headline.comparison()?.basis else { return None };
    let Some(Margin::Difference(margin)) = headline.margin else { return None };
    let index = session.measure_index(&headline.measure)?;
    let far: Vec<usize> = [headline.baseline, headline.candidate]
        .into_iter()
        .flat_map(|build| far_of(session, index, build))
        .filter(|&shot| session.shots[shot].left_out.is_none())
        .collect();
    if far.len() > MOST_ON_TRIAL {
        return None;
    }
    let mut trial = session.clone();
    trial.shots.iter_mut().for_each(|shot| shot.left_out = None);
    let mut moving: Vec<(usize, f64)> = Vec::new();
    for shot in far {
        trial.shots[shot].left_out = Some(String::new());
        let table = ShotTable::new(&trial);
        let measured = table.measured(&headline.measure, Include::NotLeftOut);
        let pair = compare(&measured, headline.baseline, headline.candidate, Aspect::Average);
        trial.shots[shot].left_out = None;
        let Some(without) = pair.comparison.as_ref().ok() else { continue };
        let by = (without.value() - careful.diff()).abs();
        if by > margin {
            moving.push((shot, by));
        }
    }
    arrange::sort_by(&mut moving, |a, b| b.1.total_cmp(&a.1));
    let &(shot, by) = moving.first()?;
    let (build, value) = (session.shots[shot].build, session.shots[shot].values.get(index).copied()??);
    let because = Odd::MovesTheAnswer { by, margin };
    let measure = headline.measure.clone();
    Some(Seen::OddValue { shot: Some(shot), build, measure, value, because, others: moving.len() - 1 })
}

/// The shots of a build that lie far from the rest of it.
fn far_of(session: &Session, index: usize, build: usize) -> Vec<usize> {
    let own: Vec<(usize, f64)> = session
        .shots
        .iter()
        .enumerate()
        .filter(|(_, shot)| shot.build == build)
        .filter_map(|(at, shot)| Some((at, shot.values.get(index).copied()??)))
        .collect();
    let values: Vec<f64> = own.iter().map(|(_, value)| *value).collect();
    let distance = robust_distance(&values).filter(|_| values.len() >= FEWEST_TO_LIE_FAR_FROM);
    let Some(distance) = distance else { return Vec::new() };
    own.into_iter().filter(|(_, value)| distance(*value) > FAR).map(|(at, _)| at).collect()
}
