//! What a plan will show: how often it finds a difference that is there, and calls equal builds the same.
//!
//! The chance is that of the very headline that answers later: within rounds, widened, with its fallback, at the
//! levels of the planned looks, divided among the candidates: of many tests invented from a fixed seed. Shots are
//! taken as independent, with the usual kurtosis of golf shots; `cargo xtask calibrate`
//! (17) holds the promise against invented golf shots.

use super::beside::as_sharp_as;
use super::looks::{LookLevels, look_levels};
use super::settled::SettledPlan;
use libm::log as ln;
use serde::Serialize;
use session::measure::Margin;
use stats::choices::PLANNED_POWER;
use stats::crossing::{InterimChance, ends_at};
use stats::distributions::{normal_cdf, normal_upper};
use stats::{
    GroupSequentialTests, InterimAnalysis, Level, TurnsDesign, TurnsPaths, TwoVisits, session_scales,
};

/// How often a test like this finds a true difference of some size.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FoundFacts {
    /// The true difference, in the measure's unit; a ratio for the goal `tighter`.
    pub difference: f64,
    /// Share of tests that call it different at one of the looks, 0 to 1.
    pub chance: f64,
    /// Share of tests that call typical shots this far apart different at one of the looks; null where that is not known.
    pub typical: Option<f64>,
    /// Share of pairs of such visits on two days, each hit to its end, that are called different when put together; null where
    /// that is not known.
    pub two_visits: Option<f64>,
}

/// What a plan will show, beside how often it finds a difference.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PowerFacts {
    /// Share of tests of truly equal builds that call them the same; null where that is not known.
    pub same: Option<f64>,
    /// The true difference found in 8 of 10 tests; null when there is none of any sense.
    pub detectable: Option<f64>,
    /// Rounds hit on average, if one stops when the margin is found at a planned look.
    pub average_rounds: f64,
}

/// What a plan will show.
#[derive(Debug, Clone, PartialEq)]
pub struct Power {
    /// How often it finds the margin, twice and three times as much.
    pub seen: Vec<FoundFacts>,
    /// The rest.
    pub facts: PowerFacts,
}

/// The chances of one plan, for as many rounds as wanted.
pub(super) struct Chances<'a> {
    settled: &'a SettledPlan,
    rounds: u32,
    looks: Vec<u32>,
    levels: LookLevels,
    /// `None` where scatters are compared, or the spread is not known.
    tests: Option<GroupSequentialTests>,
}

/// The seed of the invented tests behind every promise: the same plan promises the same everywhere.
const SEED: u64 = 2_026;

/// Invented tests as long as any length that is shown beside the plan; `None` where scatters are compared, or the
/// spread is not known.
pub(super) fn invented(settled: &SettledPlan, longest: u32) -> Option<TurnsPaths> {
    settled.spread_of_averages()?;
    TurnsPaths::new(design(settled, longest), settled.measure.facts().kurtosis, SEED)
}

fn design(settled: &SettledPlan, rounds: u32) -> TurnsDesign {
    TurnsDesign { builds: settled.builds(), rounds: rounds as usize, set: settled.set as usize }
}

impl<'a> Chances<'a> {
    /// Of the plan with this many rounds instead of its own, looked at in the same manner.
    pub(super) fn of(settled: &'a SettledPlan, rounds: u32, invented: Option<&TurnsPaths>) -> Self {
        let looks = if rounds == settled.rounds {
            Some(settled.looks.clone())
        } else {
            settled.look_after.rounds(rounds)
        };
        let looks = looks.unwrap_or_else(|| vec![rounds]);
        let levels = look_levels(rounds, &looks);
        let tests = invented.map(|paths| {
            let look = |(&round, &level): (&u32, &Level)| InterimAnalysis {
                round: round as usize,
                level: level.shared_by(settled.candidates()),
            };
            let all: Vec<InterimAnalysis> = looks.iter().zip(&levels.different).map(look).collect();
            paths.looked_at(rounds as usize, &all)
        });
        Self { settled, rounds, looks, levels, tests }
    }

    /// What the plan will show; `None` where the spread is not known.
    pub(super) fn power(&self, two_visits: Option<&TwoVisits>) -> Option<Power> {
        let seen: Vec<FoundFacts> = (1..=3)
            .map(|n| self.settled.margin_times(n))
            .map(|difference| FoundFacts {
                difference,
                chance: self.found(difference),
                typical: as_sharp_as(self.settled, difference).map(|average| self.found(average)),
                two_visits: two_visits.map(|visits| visits.found(difference)),
            })
            .collect();
        seen.iter().all(|found| found.chance.is_finite()).then(|| Power {
            seen,
            facts: PowerFacts {
                same: self.same(),
                detectable: self.detectable(),
                average_rounds: self.average_rounds(self.settled.margin.value()),
            },
        })
    }

    /// Chance that a true difference is found at each look and not before.
    fn found_at(&self, difference: f64) -> Vec<f64> {
        match (&self.tests, self.settled.spread) {
            (Some(tests), Some(spread)) => tests.found_at(difference / spread.value),
            _ if matches!(self.settled.margin, Margin::Ratio(_)) => self.ratio_found_at(difference),
            _ => vec![f64::NAN; self.looks.len()],
        }
    }

    /// Chance that a true difference is found at any look; not a number where the spread is not known.
    pub(super) fn found(&self, difference: f64) -> f64 {
        match (&self.tests, self.settled.spread) {
            (Some(tests), Some(spread)) => tests.found(difference / spread.value),
            _ => self.found_at(difference).iter().sum::<f64>().clamp(0.0, 1.0),
        }
    }

    /// The same for a ratio of scatters, whose logarithm is about normal around the true one and grows like a path.
    fn ratio_found_at(&self, ratio: f64) -> Vec<f64> {
        let look = |(&round, &level): (&u32, &Level)| {
            let tail = level.shared_by(self.settled.candidates()).tail();
            let alone = self
                .ratio_error(round)
                .map_or(0.0, |se| normal_cdf(2.0 * ln(ratio).abs() / se - normal_upper(tail)));
            InterimChance { time: f64::from(round) / f64::from(self.rounds), alone }
        };
        let looks: Vec<InterimChance> = self.looks.iter().zip(&self.levels.different).map(look).collect();
        ends_at(&looks)
    }

    /// Chance that equal builds are called the same at the last look.
    pub(super) fn same(&self) -> Option<f64> {
        let spread = self.settled.spread_of_averages()?.value;
        let level = *self.levels.same.last()?;
        let design = design(self.settled, self.rounds);
        let alone =
            |factor: f64| design.equivalence(self.settled.margin.value() / (spread * factor), 0.0, level);
        // Quiet sessions and wild ones.
        let shots = self.settled.builds() * (self.rounds * self.settled.set) as usize;
        let scales = session_scales(self.settled.measure.facts().kurtosis, shots);
        Some(scales.iter().map(|scale| scale.chance * alone(scale.factor)).sum())
    }

    /// The true difference found in 8 of 10 tests; `None` where that is nothing of any sense.
    fn detectable(&self) -> Option<f64> {
        let start = self.settled.margin.value();
        let (mut low, mut high) = match self.settled.margin {
            Margin::Difference(size) => (0.0, size),
            Margin::Ratio(ratio) => (1.0, ratio),
        };
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
    fn average_rounds(&self, difference: f64) -> f64 {
        let saved: f64 = self
            .found_at(difference)
            .iter()
            .zip(&self.looks)
            .map(|(chance, &round)| chance * f64::from(self.rounds - round))
            .sum();
        f64::from(self.rounds) - saved
    }

    /// Standard error of the logarithm of the ratio of variances; `None` with fewer shots than a verdict takes.
    fn ratio_error(&self, rounds: u32) -> Option<f64> {
        let n = f64::from(rounds * self.settled.set);
        let kurtosis = self.settled.measure.facts().kurtosis;
        (n >= stats::FEWEST_FOR_SPREAD as f64).then(|| (2.0 * (kurtosis - (n - 3.0) / n) / (n - 1.0)).sqrt())
    }
}

#[cfg(test)]
mod tests {
    use super::super::settle::settle_plan;
    use super::*;
    use session::plan::PlanRequest;
    use session::question::Goal;

    /// Kurtosis 4 and 12 shots of each: 2 (4 − 9/12)/11 = 0.590909, by hand.
    #[test]
    fn the_error_of_a_ratio_is_bonetts_from_as_many_shots_on_as_a_verdict_takes() {
        let of = |set: u32, rounds: u32| {
            let builds = ["Own driver", "Driver B"].map(str::to_owned).into();
            let asked = PlanRequest::of(builds, "spin_axis".into());
            let asked =
                PlanRequest { goal: Some(Goal::Tighter), set: Some(set), rounds: Some(rounds), ..asked };
            let settled = settle_plan(&asked).expect("a plan");
            Chances::of(&settled, rounds, None).ratio_error(rounds)
        };
        assert!((of(3, 4).expect("enough") - 0.590_909_f64.sqrt()).abs() < 1e-6);
        assert!(of(1, 5).is_some() && of(1, 4).is_none());
    }
}
