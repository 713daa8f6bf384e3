//! When the answer may be looked at, and how strict each look must be.

use serde::{Deserialize, Serialize};
use session::plan::PlanRequest;
use session::question::{LookedAfter, MOST_PLANNED_ROUNDS, Question, Stopping, StoppingWord};
use stats::Level;

/// One look of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlannedLook {
    /// The look comes when this round is complete.
    pub after_round: u32,
    /// Level of the interval that must exclude zero.
    pub level: f64,
    /// The same as the two-sided p below which the answer may be 'different'.
    pub nominal_p: f64,
}

/// A look that was taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LookTaken {
    /// Rounds that were complete.
    pub after_round: u32,
    /// Whether shots of the next round were in already.
    #[serde(default)]
    pub within_a_round: bool,
}

/// Levels of the looks that decide 'different' and 'same', one for each of `looks`.
pub(super) struct LookLevels {
    pub(super) different: Vec<Level>,
    pub(super) same: Vec<Level>,
}

/// The levels at ascending looks of a plan; looks too early for any level are as strict as a double can say.
pub(super) fn look_levels(planned: u32, looks: &[u32]) -> LookLevels {
    let times: Vec<f64> = looks.iter().map(|&r| f64::from(r) / f64::from(planned)).collect();
    let levels = |overall: Level| {
        let found = stats::planned_looks(overall, &times).unwrap_or_default();
        found.iter().map(|look| look.level().unwrap_or_else(|_| never())).collect()
    };
    LookLevels { different: levels(Level::P95), same: levels(Level::P90) }
}

/// The looks of a plan with the levels that decide 'different'.
pub(super) fn planned(looks: &[u32], levels: &[Level]) -> Vec<PlannedLook> {
    looks
        .iter()
        .zip(levels)
        .map(|(&after_round, level)| PlannedLook {
            after_round,
            level: level.coverage(),
            nominal_p: level.alpha(),
        })
        .collect()
}

/// A level that no session reaches, for a look so early that a double cannot hold its own.
fn never() -> Level {
    Level::missing(f64::MIN_POSITIVE).unwrap_or(Level::P99)
}

/// How it was decided when to stop, given the looks that were taken.
///
/// A look at the end of a round is one of the plan's, or an early one that costs its part of the error from then
/// on. A look within a round, or before two rounds are complete, is not covered by any plan: the answer is held to
/// the levels for looking whenever one likes.
#[must_use]
pub fn stopping(planned: u32, looks: &[LookTaken]) -> Stopping {
    let covered = |look: &LookTaken| !look.within_a_round && (2..=planned).contains(&look.after_round);
    if !(2..=MOST_PLANNED_ROUNDS).contains(&planned) || !looks.iter().all(covered) {
        return Stopping::Word(StoppingWord::NotFixed);
    }
    let rounds = arrange::distinct(looks.iter().map(|look| look.after_round));
    Stopping::Planned { planned_rounds: planned, looked_after: LookedAfter::Rounds(rounds) }
}

/// The question as far as it can be asked before the first shot.
#[must_use]
pub fn opening_question(request: &PlanRequest) -> Question {
    Question {
        baseline: 0,
        candidate: None,
        measure: request.measure.clone(),
        goal: request.goal,
        margin: request.margin,
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
        differs: None,
    }
}

/// The question of a plan of so many rounds, with the looks taken so far.
pub(super) fn question(request: &PlanRequest, planned: u32, taken: &[LookTaken]) -> Question {
    Question { stopping: stopping(planned, taken), ..opening_question(request) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::analysis::levels;
    use session::plan::{LookAfter, LookWord};

    fn look(after_round: u32, within_a_round: bool) -> LookTaken {
        LookTaken { after_round, within_a_round }
    }

    #[test]
    fn the_looks_of_a_plan_are_ascending_and_end_with_it() {
        assert_eq!(LookAfter::default().rounds(7), Some(vec![4, 7]));
        assert_eq!(LookAfter::Word(LookWord::AtEnd).rounds(7), Some(vec![7]));
        assert_eq!(LookAfter::Word(LookWord::EveryRound).rounds(4), Some(vec![2, 3, 4]));
        assert_eq!(LookAfter::Rounds(vec![5, 3, 5]).rounds(7), Some(vec![3, 5, 7]));
        assert_eq!(LookAfter::Rounds(vec![1]).rounds(7), None);
        assert_eq!(LookAfter::default().rounds(2), Some(vec![2]));
    }

    #[test]
    fn the_table_is_what_the_answer_is_held_to() {
        let looks = [3, 5, 8];
        let table = look_levels(8, &looks).different;
        for (i, &round) in looks.iter().enumerate() {
            let taken: Vec<LookTaken> = looks[..i].iter().map(|&r| look(r, false)).collect();
            let held = levels(&stopping(8, &taken), round).different;
            assert!((held.alpha() - table[i].alpha()).abs() < 1e-12, "round {round}");
        }
    }

    #[test]
    fn an_early_look_makes_the_last_one_stricter() {
        let last = |looks: &[LookTaken]| levels(&stopping(6, looks), 6).different.alpha();
        let planned = last(&[look(3, false)]);
        assert!(last(&[]) > planned && planned > last(&[look(3, false), look(4, false), look(5, false)]));
    }

    #[test]
    fn a_look_that_no_plan_covers_is_held_to_the_open_levels() {
        for uncovered in [look(3, true), look(1, false), look(0, true), look(7, false)] {
            let held = stopping(6, &[look(2, false), uncovered]);
            assert_eq!(held, Stopping::Word(StoppingWord::NotFixed), "{uncovered:?}");
        }
    }
}
