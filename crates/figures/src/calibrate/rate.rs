//! A share of invented sessions, counted on all cores, and the row of the table it becomes.

use super::effort::Effort;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::num::NonZero;
use std::thread;

/// Counts in how many of `sessions` sessions `holds` is true.
pub(crate) fn rate(sessions: u64, holds: impl Fn(u64) -> bool + Sync) -> Rate {
    let counted = values(sessions, |number| holds(number).then_some(())).len() as u64;
    Rate { counted, sessions }
}

/// What every session gives, on all cores, in the order of their numbers. Each session is known by its number, so
/// nothing depends on how many threads share the work.
pub(crate) fn values<T: Send>(sessions: u64, of: impl Fn(u64) -> Option<T> + Sync) -> Vec<T> {
    let threads = thread::available_parallelism().map_or(1, NonZero::get) as u64;
    let mut found: Vec<(u64, T)> = thread::scope(|scope| {
        let workers: Vec<_> = (0..threads)
            .map(|first| {
                let of = &of;
                let step = usize::try_from(threads).unwrap_or(1);
                scope.spawn(move || {
                    let numbers = (first..sessions).step_by(step);
                    numbers.filter_map(|number| Some((number, of(number)?))).collect::<Vec<_>>()
                })
            })
            .collect();
        workers.into_iter().flat_map(|worker| worker.join().unwrap_or_default()).collect()
    });
    found.sort_by_key(|(number, _)| *number);
    found.into_iter().map(|(_, value)| value).collect()
}

/// How often an answer may be wrong when the number of shots was fixed, or looks were planned.
pub(crate) const ERROR: f64 = 0.05;

/// A counted share.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Rate {
    counted: u64,
    sessions: u64,
}

impl Rate {
    /// So many of so many, of which at least one.
    pub(crate) fn of(counted: u64, sessions: u64) -> Self {
        Self { counted, sessions: sessions.max(1) }
    }

    pub(crate) fn value(self) -> f64 {
        self.counted as f64 / self.sessions as f64
    }

    /// √(p(1−p)/n), with p no nearer to none or to all than one in n.
    pub(crate) fn se(self) -> f64 {
        let one = 1.0 / self.sessions as f64;
        let p = self.value().clamp(one, 1.0 - one);
        (p * (1.0 - p) / self.sessions as f64).sqrt()
    }
}

/// Where a figure must lie.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Limit {
    AtMost(f64),
    Between(f64, f64),
}

/// One line of the table.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(crate) struct Row {
    /// Number of the target in the methods.
    pub(crate) target: u32,
    /// What was measured, in words.
    pub(crate) what: String,
    pub(crate) measured: f64,
    /// Monte-Carlo standard error.
    pub(crate) se: f64,
    pub(crate) sessions: u64,
    /// Lowest value allowed, if any.
    pub(crate) at_least: Option<f64>,
    /// Highest value allowed.
    pub(crate) at_most: f64,
    pub(crate) pass: bool,
    /// The error that a sentence of the page promises not to pass; a limit is no promise.
    #[serde(default)]
    pub(crate) promised_at_most: Option<f64>,
    /// The chance of finding something that is promised.
    #[serde(default)]
    pub(crate) promised_at_least: Option<f64>,
    /// What a figure that is no share is measured in.
    #[serde(default)]
    pub(crate) unit: Option<String>,
}

impl Row {
    pub(crate) fn of_rate(target: u32, what: String, rate: Rate, limit: Limit, effort: Effort) -> Self {
        Self::of_value(target, what, (rate.value(), rate.se()), rate.sessions, limit, effort)
    }

    /// A figure that is no share; `measured` is the value with its standard error.
    pub(crate) fn of_value(
        target: u32,
        what: String,
        measured: (f64, f64),
        sessions: u64,
        limit: Limit,
        effort: Effort,
    ) -> Self {
        let (measured, se) = measured;
        let slack = effort.slack * se;
        let (at_least, at_most) = match limit {
            Limit::AtMost(most) => (None, most),
            Limit::Between(least, most) => (Some(least), most),
        };
        let pass = measured <= at_most + slack && at_least.is_none_or(|least| measured >= least - slack);
        Self {
            target,
            what,
            measured,
            se,
            sessions,
            at_least,
            at_most,
            pass,
            promised_at_most: None,
            promised_at_least: None,
            unit: None,
        }
    }

    /// A verdict that is to be wrong in no more than this share of sessions.
    pub(crate) fn promised_wrong_at_most(self, error: f64) -> Self {
        Self { promised_at_most: Some(error), ..self }
    }

    /// A difference that is found as often as this.
    pub(crate) fn promised_found(self, chance: f64) -> Self {
        Self { promised_at_least: Some(chance), ..self }
    }

    /// A figure in a unit, where it is no share.
    pub(crate) fn in_unit(self, unit: &str) -> Self {
        Self { unit: Some(unit.to_owned()), ..self }
    }
}

impl fmt::Display for Row {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let limit = match self.at_least {
            Some(least) => format!("{least:.2}-{:.2}", self.at_most),
            None => format!("{:.3}", self.at_most),
        };
        let verdict = if self.pass { "" } else { "MISSED" };
        write!(
            f,
            "{:>3}  {:66}{:>9.4}{:>9.4}{limit:>10}  {verdict}",
            self.target, self.what, self.measured, self.se
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_uncertainty_of_a_share_is_the_same_from_either_side() {
        for counted in [0, 1, 40, 200, 360, 399, 400] {
            let rate = Rate { counted, sessions: 400 };
            let rest = Rate { counted: 400 - counted, sessions: 400 };
            assert!((rate.se() - rest.se()).abs() < 1e-15, "{counted}");
            assert!(rate.se() > 0.0, "{counted}");
        }
        let found = Rate { counted: 3_865, sessions: 4_000 };
        assert!((found.se() - 0.002_86).abs() < 0.000_01, "{}", found.se());
    }
}
