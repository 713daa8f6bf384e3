//! Values that are probably a slip of the keys or of the reading: outside what their measure can be, ten times off the
//! others of their build, or so far from the
//! rest of their build that one alone moves the answer by more than matters.
//!
//! They count all the same: nobody but the golfer knows whether they were hit so; those of shots set aside were answered. One
//! finding for each measure, with the worst of its values.

use super::look::{FAR, FEWEST_TO_LIE_FAR_FROM, robust_distance};
use super::seen::{Moving, Odd, Seen};
use crate::analysis::{Aspect, Basis, Include, ShotTable, compare};
use crate::judge::{Judged, Judgment};
use session::known::Known;
use session::measure::{Margin, MeasureId};
use session::slipped_point::slipped_points;
use session::{Session, Shot, SummaryOf};
use stats::describe::median;

/// Far shots that are taken out on trial, one at a time; where there are more, it is no slip.
const MOST_ON_TRIAL: usize = 8;

/// Odd values of the two builds, the measure asked for first.
pub(super) fn odd_values(judged: &Judged<'_>, headline: &Judgment) -> Vec<Seen> {
    let settled = &judged.settled;
    let builds = [headline.baseline, headline.candidate];
    let mut seen = Vec::new();
    for asked in &settled.measures {
        let outside = out_of_range(settled.session, &asked.measure, builds)
            .or_else(|| point_slipped(settled.session, &asked.measure, builds));
        if outside.is_none() && asked.measure == headline.measure {
            seen.extend(moved_by(judged).map(|moving| moving.seen(&headline.measure)));
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

/// What a topped or a thin shot makes a tenth of, with a carry that shows it.
const WITH_THE_FLIGHT: [Known; 4] = [Known::LaunchAngle, Known::Apex, Known::DescentAngle, Known::HangTime];

/// Shots ten times off the others of their build, which the range of the measure holds all the same. Of a measure that a thin
/// shot makes a tenth of, only where the shot carried as far as the others.
fn point_slipped(session: &Session, id: &MeasureId, builds: [usize; 2]) -> Option<Seen> {
    let with_the_flight = WITH_THE_FLIGHT.iter().any(|known| *id == *known);
    id.usual().filter(|known| known.facts().keeps_its_size || with_the_flight)?;
    let index = session.measure_index(id)?;
    let mut found = Vec::new();
    for build in builds {
        let own = session.shots.iter().enumerate().filter(|(_, s)| s.build == build && s.left_out.is_none());
        let own: Vec<(usize, f64)> =
            own.filter_map(|(at, shot)| Some((at, shot.values.get(index).copied()??))).collect();
        let values: Vec<f64> = own.iter().map(|(_, value)| *value).collect();
        if let Some((usual, places)) = slipped_points(&values) {
            let slipped = places
                .into_iter()
                .filter(|place| !with_the_flight || flew_like_the_others(session, own[*place].0));
            found.extend(slipped.map(|place| (own[place].0, build, own[place].1, usual)));
        }
    }
    let &(shot, build, value, usual) = found.first()?;
    let because = Odd::PointSlipped { usual };
    let others = found.len() - 1;
    Some(Seen::OddValue { shot: Some(shot), build, measure: id.clone(), value, because, others })
}

/// Whether a shot carried as far as the others of its build; not where nobody knows.
fn flew_like_the_others(session: &Session, shot: usize) -> bool {
    let carry =
        |shot: &Shot| shot.values.get(session.measure_index(&Known::Carry.into())?).copied().flatten();
    let own = &session.shots[shot];
    let others: Vec<f64> =
        session.shots.iter().filter(|other| other.build == own.build).filter_map(carry).collect();
    carry(own).zip(robust_distance(&others)).is_some_and(|(carry, distance)| distance(carry) <= FAR)
}

/// Whether a value of these two builds, shot or average, is outside what the measure can be, or ten times off the others of
/// its build: nothing that rests on it is worth anything while it is wrong.
#[must_use]
pub fn has_value_in_doubt(session: &Session, id: &MeasureId, builds: [usize; 2]) -> bool {
    out_of_range(session, id, builds).is_some() || point_slipped(session, id, builds).is_some()
}

/// Whether the golfer is asked about a shot because it alone moves the headline by more than matters.
#[must_use]
pub fn is_asked_about(judged: &Judged<'_>) -> bool {
    judged.headline().is_some_and(|headline| {
        let builds = [headline.baseline, headline.candidate];
        !has_value_in_doubt(judged.settled.session, &headline.measure, builds)
    }) && moved_by(judged).is_some()
}

/// The shot that alone moves the headline, looked for once.
fn moved_by(judged: &Judged<'_>) -> Option<Moving> {
    let headline = judged.headline()?;
    *judged.moved_by.get_or_init(|| moves_the_answer(judged.settled.session, headline))
}

/// The shot far from the rest of its build without which the gap is another by more than matters. One that is all that its
/// build has in its round gives way to what that build usually does: without it the whole round would go, and what that
/// does is not the shot's doing.
fn moves_the_answer(session: &Session, headline: &Judgment) -> Option<Moving> {
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
        let kept = trial.shots[shot].values[index];
        if is_alone_in_its_round(session, index, shot) {
            trial.shots[shot].values[index] = usual_of(session, index, session.shots[shot].build);
        } else {
            trial.shots[shot].left_out = Some(String::new());
        }
        let table = ShotTable::new(&trial);
        let measured = table.measured(&headline.measure, Include::NotLeftOut);
        let pair = compare(&measured, headline.baseline, headline.candidate, Aspect::Average);
        trial.shots[shot].left_out = None;
        trial.shots[shot].values[index] = kept;
        let Some(without) = pair.comparison.as_ref().ok() else { continue };
        let by = (without.value() - careful.diff()).abs();
        if by > margin {
            moving.push((shot, by));
        }
    }
    arrange::sort_by(&mut moving, |a, b| b.1.total_cmp(&a.1));
    let &(shot, by) = moving.first()?;
    let (build, value) = (session.shots[shot].build, session.shots[shot].values.get(index).copied()??);
    Some(Moving { shot, build, value, by, margin, others: moving.len() - 1 })
}

/// Whether no other shot of its build stands beside it in its round.
fn is_alone_in_its_round(session: &Session, index: usize, shot: usize) -> bool {
    let own = &session.shots[shot];
    let beside = session.shots.iter().filter(|other| {
        (other.build, other.round) == (own.build, own.round)
            && other.values.get(index).copied().flatten().is_some()
    });
    own.round.is_some() && beside.count() == 1
}

/// The middle one of a build's values.
fn usual_of(session: &Session, index: usize, build: usize) -> Option<f64> {
    let own = session.shots.iter().filter(|shot| shot.build == build);
    median(&own.filter_map(|shot| shot.values.get(index).copied().flatten()).collect::<Vec<_>>())
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
