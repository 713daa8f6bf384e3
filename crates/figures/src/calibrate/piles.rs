//! Targets about many sessions: whether the intervals for what fittings bring hold the truth, and how many listed leads were luck.
//!
//! Piles of invented sessions of different golfers, 9 to 30 shots with each club in turn, true gaps normal around 4 yd, or all of
//! 4 yd. Each session goes through the code that answers it alone.

use super::effort::{Effort, seed, sessions};
use super::rate::{ERROR, Limit, Rate, Row, values};
use super::sessions::{CARRY, Kind};
use crate::simulate::model::{Parameters, STRONG, TYPICAL};
use crate::simulate::{MEASURES, random};
use judging::interval::Interval;
use judging::many::{Line, Many, ManyQuestion, Names, Pile, line, many};
use rand_distr::{Distribution, StandardNormal};
use session::question::{Question, Stopping, StoppingWord};
use stats::distributions::normal_sf;

/// The mean of the true gaps, yd.
const MEAN: f64 = 4.0;
/// What matters to those who ask, yd.
const MARGIN: f64 = 5.0;
/// Shots with each club: each session has one of these.
const SHOTS: [usize; 5] = [9, 12, 15, 21, 30];
/// What promises name beyond the true gap, yd: on average, as the best of several would, and by luck.
const PROMISED_MORE: f64 = 4.0;
const PROMISE_ERROR: f64 = 4.0;
/// What those truly gain who gain anything, where half of all gain nothing, yd.
const GAIN_OF_HALF: f64 = 8.0;
/// How often an interval at 95 % may miss, in the opinion of whoever ordered the piles.
const MISSED: f64 = 0.07;
/// Of a single gap pulled among four others: what they say of the spread is little, and a normal interval knows it too well.
const MISSED_OF_FEW: f64 = 0.085;

/// One pile: its true gaps in the order of their places, the next one, and what was found.
struct Made {
    truths: Vec<f64>,
    next: f64,
    found: Many,
}

/// How true gaps lie in a pile.
#[derive(Debug, Clone, Copy)]
enum Truths {
    /// Normal around the mean, this far apart.
    Apart(f64),
    /// Half of all gain nothing.
    HalfNothing,
}

impl Truths {
    fn drawn(self, deviate: f64) -> f64 {
        match self {
            Self::Apart(spread) => MEAN + spread * deviate,
            Self::HalfNothing if deviate > 0.0 => GAIN_OF_HALF,
            Self::HalfNothing => 0.0,
        }
    }
}

/// Target 32: many sessions.
pub(super) fn rows(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    for (size, level_name, level) in
        [(5, "typical", TYPICAL), (30, "typical", TYPICAL), (300, "typical", TYPICAL), (30, "strong", STRONG)]
    {
        for spread in [0.0, 4.0] {
            let piles = made(size, Truths::Apart(spread), level, seed(32, rows.len()), effort);
            let what = if spread > 0.0 {
                format!("{size} sessions, {level_name}, true gaps {spread} yd apart")
            } else {
                format!("{size} sessions, {level_name}, one true gap")
            };
            rows.extend(coverage(&what, spread, &piles, effort));
        }
    }
    let piles = made(30, Truths::HalfNothing, TYPICAL, seed(32, rows.len()), effort);
    let all = || piles.iter().flat_map(|pile| pile.found.each.iter().zip(&pile.truths));
    let listed = || all().filter(|(one, _)| one.is_listed);
    let luck = listed().filter(|(_, truth)| **truth <= 0.0).count() as u64;
    let what = "30 sessions, typical, half of all gained nothing: on the list, and luck".to_owned();
    let rate = Rate::of(luck, listed().count() as u64);
    let (measured, sessions) = ((100.0 * rate.value(), 100.0 * rate.se()), listed().count() as u64);
    // The list promises its rate, 10 in 100, and not the error of a verdict.
    let limit = Limit::AtMost(100.0 * judging::many::USUAL_RATE);
    rows.push(Row::of_value(32, what, measured, sessions, limit, effort).in_unit("%"));
    rows
}

fn coverage(what: &str, spread: f64, piles: &[Made], effort: Effort) -> Vec<Row> {
    let share = if spread > 0.0 { normal_sf((MARGIN - MEAN) / spread) } else { 0.0 };
    let found_again = MEAN / (MEAN + PROMISED_MORE);
    let brings = |pile: &Made| match pile.found.brings {
        Some(brings) => brings,
        None => unreachable!("nothing was pooled of an invented pile"),
    };
    let enough = |pile: &Made| brings(pile).enough.map(|share| share.interval);
    let again = |pile: &Made| pile.found.claims.and_then(|claims| claims.interval);
    let row = |name: &str, (missed, of): (usize, usize), limit: f64| {
        let rate = Rate::of(missed as u64, of as u64);
        let what = format!("{what}: {name} missed");
        Row::of_rate(32, what, rate, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR)
    };
    let of_piles = |name: &str, held: &dyn Fn(&Made) -> bool| {
        row(name, (piles.iter().filter(|pile| !held(pile)).count(), piles.len()), MISSED)
    };
    let pulled: Vec<bool> = piles
        .iter()
        .flat_map(|pile| pile.found.each.iter().zip(&pile.truths))
        .filter_map(|(one, truth)| Some(holds(&one.pulled?.interval, *truth)))
        .collect();
    vec![
        of_piles("mean", &|pile| holds(&brings(pile).mean.interval, MEAN)),
        of_piles("spread", &|pile| holds(&brings(pile).spread.interval, spread)),
        of_piles("the next true gap", &|pile| holds(&brings(pile).next, pile.next)),
        of_piles("share", &|pile| enough(pile).is_some_and(|interval| holds(&interval, share))),
        of_piles("part of a promise", &|pile| again(pile).is_none_or(|it| holds(&it, found_again))),
        row(
            "a pulled gap",
            (pulled.iter().filter(|held| !**held).count(), pulled.len()),
            if piles.first().is_some_and(|pile| pile.truths.len() <= 5) { MISSED_OF_FEW } else { MISSED },
        ),
    ]
}

fn holds(interval: &Interval, truth: f64) -> bool {
    (interval.low..=interval.high).contains(&truth)
}

fn made(size: u64, lie: Truths, level: Parameters, seed: u64, effort: Effort) -> Vec<Made> {
    let asked = ManyQuestion { margin: Some(MARGIN), ..ManyQuestion::of(MEASURES[CARRY].into()) };
    let own: Question = asked.asked_of(0, None, Stopping::Word(StoppingWord::Fixed));
    values(sessions(1_000, effort), |number| {
        let mut random = random(seed + 500_000, number);
        let mut draw = || -> f64 { StandardNormal.sample(&mut random) };
        let mut pile = Pile::new(asked.clone());
        let mut truths = Vec::new();
        for at in 0..size {
            let truth = lie.drawn(draw());
            let shots = SHOTS[usize::try_from(at).unwrap_or(0) % SHOTS.len()];
            let kind = Kind::in_turn(level, shots, seed).with_shift(CARRY, truth);
            let session = kind.session(number * size + at, &[CARRY]);
            let claimed = truth + PROMISED_MORE + PROMISE_ERROR * draw();
            let line: Line = match line(&session, &asked, &Names::default(), Some(&own), Some(claimed)) {
                Ok(line) => line,
                Err(misfit) => unreachable!("an invented session was refused: {misfit:?}"),
            };
            pile.add(&format!("{at:04}"), line);
            truths.push(truth);
        }
        let next = lie.drawn(draw());
        Some(Made { truths, next, found: many(&pile) })
    })
}
