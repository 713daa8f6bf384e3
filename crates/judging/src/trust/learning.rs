//! A club that gained on the other from shot to shot: new in the hand, and learned on the way.
//!
//! value = round + build + λ · exp(−k/6) on the club's own k-th shot, its error widened as that of every difference. λ below
//! zero is what its first shot lacked; the build's term is the gap once nothing is left to learn. Only of clubs hit in turn:
//! where one was hit after the other, learning and warming up are one. Limits: one shape for every golfer; a dozen shots
//! show next to nothing of it.

use super::seen::Seen;
use crate::analysis::warming_up::unlearned;
use crate::analysis::{Aspect, Include, Method};
use crate::interval::Interval;
use crate::judge::Judgment;
use crate::settle::{Asked, Settled};
use session::few;
use stats::choices::WIDENING;
use stats::linear_model::{Intercept, linear_model};
use stats::{Level, RoundShot};

/// With fewer shots of its own no shape of a gain is seen, only its noise.
const FEWEST_OWN: usize = 12;
/// A gain that may be off by more than this share of it is told by its least, not by its middle: a choice of ours.
const MOST_UNSURE: f64 = 0.5;
/// Shots and rounds beyond these are no visit, and the fit costs by their product and more.
const MOST_SHOTS: usize = 600;
const MOST_ROUNDS: usize = 60;

/// The club of the two that gained on the other, on a measure that a swing not yet used to it lowers.
pub(super) fn learning(settled: &Settled<'_>, headline: &Judgment) -> Option<Seen> {
    let known = headline.measure.usual()?;
    known.facts().per_yard_of_carry?;
    let is_average = Asked::of(settled.question, &headline.measure).aspect() == Aspect::Average;
    let in_turn = headline.estimate.as_ref().is_some_and(|estimate| estimate.method == Method::Rounds);
    // What whole laps alone show, and what says next to nothing, shows no gain from shot to shot either.
    let only_whole_laps = headline.pair.turns.is_some_and(|turns| turns.are_too_long);
    if !(is_average && in_turn) || only_whole_laps || headline.facts.says_next_to_nothing {
        return None;
    }
    let measured = settled.table.measured(&headline.measure, Include::All);
    let of_pair = |shot: &&RoundShot| [headline.baseline, headline.candidate].contains(&shot.build);
    let shots: Vec<RoundShot> = measured.in_rounds()?.iter().filter(of_pair).copied().collect();
    let rounds = stats::arrange::distinct(shots.iter().map(|shot| shot.round));
    if shots.len() > MOST_SHOTS || rounds.len() > MOST_ROUNDS {
        return None;
    }
    [(headline.candidate, headline.baseline), (headline.baseline, headline.candidate)]
        .into_iter()
        .find_map(|(build, other)| gained(&shots, &rounds, build, other, headline))
}

fn gained(
    shots: &[RoundShot],
    rounds: &[usize],
    build: usize,
    other: usize,
    headline: &Judgment,
) -> Option<Seen> {
    let own = shots.iter().filter(|shot| shot.build == build).count();
    if own < FEWEST_OWN {
        return None;
    }
    let is = |yes: bool| f64::from(u8::from(yes));
    let mut hit: few::Map<usize, usize> = few::Map::default();
    let left = shots.iter().map(|shot| {
        let own = hit.entry(shot.build, || 0);
        *own += 1;
        if shot.build == build { unlearned(*own - 1) } else { 0.0 }
    });
    let mut columns = vec![shots.iter().map(|shot| is(shot.build == build)).collect(), left.collect()];
    // The first round is the constant's.
    columns.extend(
        rounds.iter().skip(1).map(|round| shots.iter().map(|shot| is(shot.round == *round)).collect()),
    );
    let values: Vec<f64> = shots.iter().map(|shot| shot.value).collect();
    let model = linear_model(&values, &columns, Intercept::Fitted).ok()?;
    let (gap, lost) = (model.terms.get(1)?.widened(WIDENING), model.terms.get(2)?.widened(WIDENING));
    let (of_gap, of_lost) =
        (Interval::from(gap.interval(headline.levels.different)), lost.interval(Level::P95));
    // What was made up within the shots; the rest of it is a shape's, and nobody saw it.
    let made_up = 1.0 - unlearned(own - 1);
    (of_lost.high < 0.0).then_some(Seen::Learning {
        build,
        other,
        is_the_baseline: build == headline.baseline,
        gained: -lost.diff * made_up,
        is_rough: 0.5 * (of_lost.high - of_lost.low) > MOST_UNSURE * -lost.diff,
        low: -of_lost.high * made_up,
        high: -of_lost.low * made_up,
        then: gap.diff,
        then_range: of_gap,
    })
}
