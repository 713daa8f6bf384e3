//! Whether the answer hangs on a few shots.

use crate::analysis::{Aspect, Basis, Comparison, Include, Pair, ShotTable, compare};
use crate::judge::{Judged, Judgment};
use crate::verdict::DecisionKind;
use session::Session;

/// Most shots that are taken out on trial to see whether the answer hangs on them.
const MOST_REMOVED: usize = 3;

/// The fewest shots whose removal would change the answer, by taking out the one at the end that helps most, again
/// and again; `None` when three are not enough. Only differences of averages are tried, once for whoever asks.
#[must_use]
pub fn removals_to_flip(judged: &Judged<'_>) -> Option<usize> {
    let (session, headline) = (judged.settled.session, judged.headline()?);
    *judged.removals.get_or_init(|| fewest_removals(session, headline))
}

fn fewest_removals(session: &Session, headline: &Judgment) -> Option<usize> {
    let Basis::Difference(careful) = headline.comparison()?.basis else { return None };
    let index = session.measure_index(&headline.measure)?;
    let toward_more = (headline.with_all.kind == DecisionKind::Different) != (careful.diff() > 0.0);
    let mut trial = session.clone();
    trial.shots.iter_mut().for_each(|shot| shot.left_out = None);
    (1..=MOST_REMOVED).find_map(|removed| {
        // The candidate's lowest and the baseline's highest, or the other way round.
        let ends = [(headline.candidate, toward_more), (headline.baseline, !toward_more)];
        let (shot, pair) = ends
            .into_iter()
            .filter_map(|(build, lowest)| {
                let shot = end_of(&trial, build, index, lowest)?;
                trial.shots[shot].left_out = Some(String::new());
                let table = ShotTable::new(&trial);
                let measured = table.measured(&headline.measure, Include::NotLeftOut);
                let pair = compare(&measured, headline.baseline, headline.candidate, Aspect::Average);
                trial.shots[shot].left_out = None;
                Some((shot, pair))
            })
            .max_by(|(_, a), (_, b)| {
                let p = |pair: &Pair| pair.comparison.as_ref().map_or(1.0, Comparison::p_value);
                let order = p(b).total_cmp(&p(a));
                if headline.with_all.kind == DecisionKind::Different { order.reverse() } else { order }
            })?;
        trial.shots[shot].left_out = Some(String::new());
        let decided = headline.decided_on(&pair);
        // That too few would be left is no other answer.
        let is_answered = decided.kind != DecisionKind::CannotAnswer;
        (is_answered && decided.disagrees_with(&headline.with_all)).then_some(removed)
    })
}

/// The build's lowest (or highest) shot that still counts.
fn end_of(session: &Session, build: usize, index: usize, lowest: bool) -> Option<usize> {
    let counting = session.shots.iter().enumerate().filter(|(_, s)| s.build == build && s.left_out.is_none());
    let values = counting.filter_map(|(i, s)| Some((i, s.values.get(index).copied().flatten()?)));
    let signed = |v: f64| if lowest { v } else { -v };
    values.min_by(|a, b| signed(a.1).total_cmp(&signed(b.1))).map(|(i, _)| i)
}
