//! How strict the answer must be, from how it was decided when to stop.
//!
//! Looking again and again and stopping when it looks good makes luck look like proof. A number of
//! shots fixed before needs no care; planned looks spend the error over the looks; when nobody
//! knows, the intervals are wider.

use session::question::{LookedAfter, MOST_PLANNED_ROUNDS, Stopping, StoppingWord};
use stats::Level;

/// The levels of the two intervals that decide.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Levels {
    /// Of the interval that must exclude zero.
    pub different: Level,
    /// Of the interval that must lie inside the margin.
    pub same: Level,
    /// Which rule they come from.
    pub rule: Rule,
}

impl Levels {
    /// Whether 'different' is held to 95 in 100 and no more.
    #[must_use]
    pub fn is_usual(&self) -> bool {
        self.different.coverage() <= Level::P95.coverage()
    }
}

/// Which rule gave the levels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rule {
    /// The number of shots was fixed before.
    Fixed,
    /// Planned looks, this one after `round` of `planned`.
    Planned {
        /// The round after which the session is looked at now.
        round: u32,
        /// The most rounds that were planned.
        planned: u32,
    },
    /// Not fixed, not known, or past its plan.
    Open,
}

/// The levels for a session of which `rounds` rounds hold both builds (0 when not hit in turn).
#[must_use]
pub fn levels(stopping: &Stopping, rounds: u32) -> Levels {
    match stopping {
        Stopping::Word(StoppingWord::Fixed) => {
            Levels { different: Level::P95, same: Level::P90, rule: Rule::Fixed }
        }
        Stopping::Word(StoppingWord::NotFixed | StoppingWord::Unknown) => OPEN,
        Stopping::Planned { planned_rounds, looked_after } => {
            planned(*planned_rounds, looked_after, rounds).unwrap_or(OPEN)
        }
    }
}

const OPEN: Levels = Levels { different: Level::P99, same: Level::P98, rule: Rule::Open };

fn planned(planned: u32, looked_after: &LookedAfter, rounds: u32) -> Option<Levels> {
    if !(2..=MOST_PLANNED_ROUNDS).contains(&planned) || rounds < 2 || rounds > planned {
        return None;
    }
    let mut looks: Vec<u32> = match looked_after {
        LookedAfter::EveryRoundTo(last) => (2..=(*last).min(rounds)).collect(),
        LookedAfter::Rounds(list) => list.iter().copied().filter(|r| (2..=rounds).contains(r)).collect(),
    };
    looks.push(rounds);
    let looks = arrange::distinct(looks);
    let times: Vec<f64> = looks.iter().map(|&r| f64::from(r) / f64::from(planned)).collect();
    let now = |overall: Level| stats::planned_looks(overall, &times).ok()?.last()?.level().ok();
    Some(Levels {
        different: now(Level::P95)?,
        same: now(Level::P90)?,
        rule: Rule::Planned { round: rounds, planned },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(a: f64, b: f64, tolerance: f64) -> bool {
        (a - b).abs() <= tolerance
    }

    fn plan(planned_rounds: u32, looked_after: LookedAfter) -> Stopping {
        Stopping::Planned { planned_rounds, looked_after }
    }

    #[test]
    fn a_fixed_number_of_shots_needs_no_care_and_an_unknown_one_does() {
        let fixed = levels(&Stopping::Word(StoppingWord::Fixed), 5);
        let open = levels(&Stopping::default(), 5);
        assert!(close(fixed.different.coverage(), 0.95, 0.0) && close(fixed.same.coverage(), 0.90, 0.0));
        assert!(close(open.different.coverage(), 0.99, 0.0) && close(open.same.coverage(), 0.98, 0.0));
    }

    #[test]
    fn planned_looks_follow_the_published_table() {
        // Lan-DeMets O'Brien-Fleming-type nominal p after rounds 2..5 of 5.
        for (round, p) in [(2, 0.000_788), (3, 0.007_35), (4, 0.0220), (5, 0.0422)] {
            let level = levels(&plan(5, LookedAfter::EveryRoundTo(round)), round).different;
            assert!(close(level.alpha(), p, 0.006 * p + 1e-9), "round {round}: {}", level.alpha());
        }
    }

    #[test]
    fn a_plan_kept_without_looking_costs_nothing() {
        let level = levels(&plan(6, LookedAfter::Rounds(vec![])), 6).different;
        assert!(close(level.coverage(), 0.95, 1e-6));
    }

    #[test]
    fn past_the_plan_there_is_no_plan() {
        for (planned_rounds, rounds) in [(5, 6), (5, 1), (1, 1), (4_000_000_000, 3), (0, 0)] {
            let rule = levels(&plan(planned_rounds, LookedAfter::EveryRoundTo(3)), rounds).rule;
            assert_eq!(rule, Rule::Open, "{rounds} of {planned_rounds}");
        }
    }
}
