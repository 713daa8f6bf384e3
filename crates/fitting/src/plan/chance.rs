//! What a plan will show: how often it finds a difference that is there, and calls equal builds the same.
//!
//! The chance is that of the very headline that answers later: within rounds, widened, with its fallback, at the
//! levels of the planned looks, divided among the candidates. Shots are taken as independent, and normal within a
//! session whose scatter varies as golf shots' does; held against invented ones by `cargo xtask calibrate` (17).

use super::looks::{LookLevels, look_levels};
use super::request::Settled;
use crate::analysis::allowance::usual_kurtosis;
use crate::question::Goal;
use serde::Serialize;
use stats::choices::PLANNED_POWER;
use stats::crossing::{LookChance, ends_at};
use stats::distributions::{normal_cdf, normal_upper};
use stats::{Level, SessionScale, TurnsDesign, session_scales};

/// How often a test like this finds a true difference of some size.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Found {
    /// The true difference, in the measure's unit; a ratio for the goal `tighter`.
    pub difference: f64,
    /// Share of tests that call it different at one of the looks, 0 to 1.
    pub chance: f64,
    /// In words: `10 yd: 5 times in 10`.
    pub words: String,
}

/// What a plan will show.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanPower {
    /// For the margin, twice and three times as much.
    pub seen: Vec<Found>,
    /// Share of tests of truly equal builds that call them the same; null where that is not known.
    pub same: Option<f64>,
    /// The true difference found in 8 of 10 tests; null when there is none of any sense.
    pub detectable: Option<f64>,
    /// Rounds hit on average, if one stops when the margin is found at a planned look.
    pub average_rounds: f64,
}

/// The chances of one plan, for as many rounds as wanted.
pub(super) struct Chances<'a> {
    settled: &'a Settled,
    rounds: u32,
    looks: Vec<u32>,
    levels: LookLevels,
}

impl<'a> Chances<'a> {
    /// Of the plan with this many rounds instead of its own, looked at in the same manner.
    pub(super) fn of(settled: &'a Settled, rounds: u32) -> Self {
        let looks = if rounds == settled.rounds {
            Some(settled.looks.clone())
        } else {
            settled.look_after.rounds(rounds)
        };
        let looks = looks.unwrap_or_else(|| vec![rounds]);
        Self { settled, rounds, levels: look_levels(rounds, &looks), looks }
    }

    /// Chance that a true difference is found at each look and not before.
    pub(super) fn found_at(&self, difference: f64) -> Vec<f64> {
        let mut found = vec![0.0; self.looks.len()];
        for SessionScale { factor, chance } in self.scales() {
            let chances: Vec<LookChance> = self
                .looks
                .iter()
                .zip(&self.levels.different)
                .map(|(&round, &level)| LookChance {
                    time: f64::from(round) / f64::from(self.rounds),
                    alone: self.alone(difference, factor, round, divided(level, self.settled.candidates())),
                })
                .collect();
            for (all, here) in found.iter_mut().zip(ends_at(&chances)) {
                *all += chance * here;
            }
        }
        found
    }

    /// Chance that a true difference is found at any look; not a number where the spread is not known.
    pub(super) fn found(&self, difference: f64) -> f64 {
        self.found_at(difference).iter().sum::<f64>().clamp(0.0, 1.0)
    }

    /// Chance that equal builds are called the same at the last look.
    pub(super) fn same(&self) -> Option<f64> {
        let spread = self.settled.spread.filter(|_| self.settled.goal != Goal::Tighter)?.value;
        let level = *self.levels.same.last()?;
        let design = self.design(self.rounds);
        let alone = |factor: f64| design.equivalence(self.settled.margin / (spread * factor), 0.0, level);
        Some(self.scales().iter().map(|scale| scale.chance * alone(scale.factor)).sum())
    }

    /// The true difference found in 8 of 10 tests; `None` where that is nothing of any sense.
    pub(super) fn detectable(&self) -> Option<f64> {
        let start = self.settled.margin;
        let (mut low, mut high) =
            if self.settled.goal == Goal::Tighter { (1.0, start) } else { (0.0, start) };
        while self.found(high) < PLANNED_POWER {
            (low, high) = (high, high * 2.0);
            if high > start * 64.0 || high.is_infinite() {
                return None;
            }
        }
        // Far below what is ever printed.
        for _ in 0..14 {
            let middle = 0.5 * (low + high);
            if self.found(middle) < PLANNED_POWER { low = middle } else { high = middle }
        }
        self.found(high).is_finite().then_some(high)
    }

    /// Rounds hit on average when one stops as soon as a difference of this size is found.
    pub(super) fn average_rounds(&self, difference: f64) -> f64 {
        let saved: f64 = self
            .found_at(difference)
            .iter()
            .zip(&self.looks)
            .map(|(chance, &round)| chance * f64::from(self.rounds - round))
            .sum();
        f64::from(self.rounds) - saved
    }

    fn alone(&self, difference: f64, factor: f64, round: u32, level: Level) -> f64 {
        if self.settled.goal == Goal::Tighter {
            // ln R̂ is about normal around ln R.
            return self
                .ratio_error(round)
                .map_or(0.0, |se| normal_cdf(2.0 * difference.ln().abs() / se - normal_upper(level.tail())));
        }
        let spread = self.settled.spread.map_or(f64::NAN, |spread| spread.value);
        self.design(round).detection(difference / (spread * factor), level)
    }

    /// Quiet sessions and wild ones; a comparison of scatters has its kurtosis in its error already.
    fn scales(&self) -> Vec<SessionScale> {
        let normal = self.settled.goal == Goal::Tighter;
        let kurtosis = if normal { 3.0 } else { usual_kurtosis(&self.settled.measure) };
        session_scales(kurtosis, self.settled.builds.len() * (self.rounds * self.settled.set) as usize)
    }

    /// Standard error of the logarithm of the ratio of variances; `None` with fewer shots than a verdict takes.
    fn ratio_error(&self, rounds: u32) -> Option<f64> {
        let n = f64::from(rounds * self.settled.set);
        let kurtosis = usual_kurtosis(&self.settled.measure);
        (n >= stats::FEWEST_FOR_SPREAD as f64).then(|| (2.0 * (kurtosis - (n - 3.0) / n) / (n - 1.0)).sqrt())
    }

    fn design(&self, rounds: u32) -> TurnsDesign {
        let Settled { builds, set, .. } = self.settled;
        TurnsDesign { builds: builds.len(), rounds: rounds as usize, set: *set as usize }
    }
}

/// With several candidates the first is held to its share of the error.
fn divided(level: Level, candidates: usize) -> Level {
    Level::missing(level.alpha() / candidates.max(1) as f64).unwrap_or(level)
}
