//! What more shots would do for an answer, decided once: tell it, narrow a size that is open, or neither.
//!
//! A number of shots tells two builds apart, or tells that they are the same. It does not tell whether a difference
//! reaches the margin: where the true one lies near it, no number does, and all that can be promised is how wide the
//! interval will be.

use super::comparison::{Basis, Comparison, TURN, strict};
use super::estimate::Method;
use super::levels::{Levels, Rule};
use crate::verdict::{Decision, DecisionKind, Matters};
use serde::Serialize;

/// Above this many shots with each build nobody is sent to the range.
const MOST_IN_A_VISIT: u32 = 60;
/// The same where scatter is asked for, which takes more shots than any average.
const MOST_FOR_SCATTER: u32 = 200;
/// A test that leaves more than this share of the present interval hardly narrows it.
const HARDLY_NARROWER: f64 = 0.9;

/// What more shots would do.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum MoreShots {
    /// So many with each, planned before and hit in turn, tell in 8 of 10 tests.
    Tell {
        /// Shots with each build.
        shots: u32,
    },
    /// The same, but more than one visit holds.
    TooMany {
        /// Shots with each build.
        shots: u32,
    },
    /// As many were hit in turn, with their number fixed before, and did not tell.
    WereHit,
    /// It is the size that is open: so many with each would leave about ± `half_width` of it, in the unit of the measure.
    Narrow {
        /// Shots with each build.
        shots: u32,
        /// Half of the 95 % interval that such a test leaves.
        half_width: f64,
    },
    /// It is the size that is open, and no test of one visit narrows it by much.
    HardlyNarrow,
}

/// What was hit, as far as it says what another test would do.
pub(super) struct Hit<'a> {
    pub(super) comparison: &'a Comparison,
    pub(super) levels: &'a Levels,
    pub(super) candidates: usize,
}

/// What more shots would do for this decision, `shots` with each build telling in 8 of 10 tests.
pub(super) fn more_shots(decision: &Decision, shots: u32, hit: &Hit<'_>) -> Option<MoreShots> {
    let method = hit.comparison.method;
    let is_open = match (decision.kind, decision.matters) {
        (DecisionKind::CannotTell, _) => false,
        // Without turns it is open whether the difference is the club's at all.
        (DecisionKind::Different, Some(Matters::Yes | Matters::Maybe))
            if hit.comparison.allowance() > 0.0 =>
        {
            false
        }
        (DecisionKind::Different, Some(Matters::Maybe)) => true,
        _ => return None,
    };
    if is_open {
        return Some(narrowed(shots, hit).unwrap_or(MoreShots::HardlyNarrow));
    }
    let most = if method == Method::SpreadRatio { MOST_FOR_SCATTER } else { MOST_IN_A_VISIT };
    let n = hit.comparison.n;
    let were_hit = method == Method::Rounds
        && hit.levels.rule == Rule::Fixed
        && n.baseline.min(n.candidate) >= shots as usize;
    Some(match () {
        () if were_hit => MoreShots::WereHit,
        () if shots > most => MoreShots::TooMany { shots },
        () => MoreShots::Tell { shots },
    })
}

/// How far a test of one visit narrows a difference; `None` where it hardly does, and for scatter.
fn narrowed(shots: u32, hit: &Hit<'_>) -> Option<MoreShots> {
    let Basis::Difference(careful) = &hit.comparison.basis else { return None };
    let shots = shots.min(MOST_IN_A_VISIT);
    let design = stats::TurnsDesign { builds: 2, rounds: shots as usize / TURN, set: TURN };
    let half_width = hit.comparison.shot_sd * design.half_width(strict(hit.candidates)?);
    let narrows = half_width < HARDLY_NARROWER * careful.half_width(hit.levels.different);
    narrows.then_some(MoreShots::Narrow { shots, half_width })
}
