//! What a pile brings, worked out twice: with the least error that each session may have, and with the most.
//!
//! The textbook's error is too small where shots lean on each other, the careful one too large where they do not, and a pile
//! is large enough to show the difference: what scatters less than it should looks like golfers who are all alike. So a
//! value is the middle of both, and an interval reaches over both. `cargo xtask calibrate --only 32` measures it.

use super::answer::{Brings, PulledTo, Share, ValueFound};
use super::line::Gap;
use crate::bet::{Tens, of_ten};
use crate::interval::Interval;
use crate::verdict::Direction;
use stats::Level;
use stats::combine::SessionEffect;
use stats::distributions::normal_upper;
use stats::true_effects::TrueEffects;

/// Effects of the same sessions with either error.
pub(super) struct Effects {
    least: Vec<SessionEffect>,
    most: Vec<SessionEffect>,
    gaps: Vec<Gap>,
}

/// What is true of the pile with either.
pub(super) struct Both<'a> {
    each: [TrueEffects<'a>; 2],
    effects: &'a Effects,
}

impl Effects {
    pub(super) fn of(gaps: Vec<Gap>) -> Self {
        let with = |se: fn(&Gap) -> f64| {
            gaps.iter().map(|gap| SessionEffect { effect: gap.value, variance: se(gap) * se(gap) }).collect()
        };
        Self { least: with(|gap| gap.least_se.min(gap.se)), most: with(|gap| gap.se), gaps }
    }

    pub(super) fn both(&self) -> Option<Both<'_>> {
        let each = [TrueEffects::new(&self.least).ok()?, TrueEffects::new(&self.most).ok()?];
        Some(Both { each, effects: self })
    }
}

impl Both<'_> {
    /// How much a session counts in the mean.
    pub(super) fn weight(&self, at: usize) -> f64 {
        let [least, most] = &self.each;
        let variance = 0.5 * (self.effects.least[at].variance + self.effects.most[at].variance);
        let between = 0.5 * (square(least.deviation()) + square(most.deviation()));
        1.0 / (variance + between)
    }

    pub(super) fn brings(&self, toward: Direction, margin: Option<f64>) -> Brings {
        let allowance = self.allowance(|_| true);
        let [least, most] = &self.each;
        let wider = |ends: Interval| Interval {
            low: ends.low - allowance,
            high: ends.high + allowance,
            level: ends.level,
        };
        let away = if toward == Direction::Higher { Direction::Lower } else { Direction::Higher };
        Brings {
            mean: ValueFound {
                value: middle(least.mean().diff, most.mean().diff),
                interval: wider(self.over(&|one| one.mean().interval(Level::P95))),
            },
            spread: ValueFound {
                value: middle(least.deviation(), most.deviation()),
                interval: self.over(&|one| one.deviation_interval(Level::P95)),
            },
            next: wider(self.over(&|one| one.next().interval(Level::P95))),
            enough: margin.map(|margin| self.share(margin, toward, allowance)),
            worse: self.share(0.0, away, allowance),
            allowance,
        }
    }

    /// The share of true gaps that lie one way by a size or more.
    fn share(&self, size: f64, way: Direction, allowance: f64) -> Share {
        let [least, most] = &self.each;
        let place = if way == Direction::Higher { size } else { -size };
        let chance = |one: &TrueEffects<'_>| one.share_above(place, Level::P95).chance;
        let value = middle(chance(least), chance(most));
        let low = self.over(&|one| one.share_above(place + allowance, Level::P95).interval).low;
        let high = self.over(&|one| one.share_above(place - allowance, Level::P95).interval).high;
        let (value, low, high) = match way {
            Direction::Higher => (value, low, high),
            Direction::Lower => (1.0 - value, 1.0 - high, 1.0 - low),
        };
        let interval = Interval { low, high, level: Level::P95.coverage() };
        Share { value, interval, of_ten: Tens { low: of_ten(low), high: of_ten(high) } }
    }

    /// A session's gap, pulled; room for the order is in the mean that it is pulled to, and not added to each again.
    pub(super) fn pulled(&self, at: usize) -> PulledTo {
        let [least, most] = &self.each;
        let (least, most) = (least.pulled(&self.effects.least[at]), most.pulled(&self.effects.most[at]));
        let reach = normal_upper(Level::P95.tail());
        let low = (least.value - reach * least.sd).min(most.value - reach * most.sd);
        let high = (least.value + reach * least.sd).max(most.value + reach * most.sd);
        let interval = Interval { low, high, level: Level::P95.coverage() };
        PulledTo { value: middle(least.value, most.value), interval }
    }

    /// What warming up adds to the mean of some sessions where most of them begin with the same club, and what the start of
    /// laps may.
    pub(super) fn allowance(&self, counts: impl Fn(usize) -> bool) -> f64 {
        let (mut total, mut push, mut starts) = (0.0, 0.0, 0.0);
        for (at, gap) in self.effects.gaps.iter().enumerate().filter(|(at, _)| counts(*at)) {
            let weight = self.weight(at);
            total += weight;
            push += weight * gap.push;
            starts += weight * gap.allowance;
        }
        if total > 0.0 { f64::abs(push) / total + starts / total } else { 0.0 }
    }

    fn over(&self, interval: &dyn Fn(&TrueEffects<'_>) -> stats::Interval) -> Interval {
        let [least, most] = [interval(&self.each[0]), interval(&self.each[1])];
        let (low, high) = (least.low.min(most.low), least.high.max(most.high));
        Interval { low, high, level: least.level.coverage() }
    }
}

fn middle(one: f64, other: f64) -> f64 {
    0.5 * (one + other)
}

fn square(value: f64) -> f64 {
    value * value
}
