//! What more shots would do for an answer, decided once: tell it, narrow a size that is open, or neither.
//!
//! A number of shots tells two builds apart, or tells that they are the same. It does not tell whether a difference
//! reaches the margin: where the true one lies near it, no number does, and all that can be promised is how wide the
//! interval will be.

use super::comparison::{Basis, Comparison, TURN, strict};
use super::estimate::{Method, MoreShots};
use super::levels::{Levels, Rule};
use crate::verdict::{Decision, DecisionKind, Matters};
use stats::distributions::f_upper;

/// Above this many shots with each build nobody is sent to the range.
const MOST_IN_A_VISIT: u32 = 60;
/// The same where scatter is asked for, which takes more shots than any average.
const MOST_FOR_SCATTER: u32 = 200;
/// As many shots are named as leave this share of the present interval, or as a visit holds.
const NARROWER: f64 = 0.7;
/// Share of the tests after a session like any other that a half-width is named for. Own choice, measured by target 18.
const KEPT_BY: f64 = 0.9;
/// A test of which no more can be promised than this share of it does not surely narrow it by much.
const HARDLY_NARROWER: f64 = 0.8;

/// What was hit, as far as it says what another test would do.
pub(super) struct Hit<'a> {
    pub(super) comparison: &'a Comparison,
    pub(super) levels: &'a Levels,
    pub(super) candidates: usize,
    /// Of single shots: 3 for normal ones.
    pub(super) kurtosis: f64,
}

/// What more shots would do for this decision, `shots` with each build telling in 8 of 10 tests.
pub(super) fn more_shots(decision: &Decision, shots: u32, hit: &Hit<'_>) -> Option<MoreShots> {
    let method = hit.comparison.method;
    let is_open = match (decision.kind, decision.matters) {
        (DecisionKind::CannotTell, _) => false,
        // Without turns it is open whether the difference is the club's at all.
        (DecisionKind::Different, Some(Matters::Yes | Matters::Maybe))
            if hit.comparison.allowance() > 0.0 && method != Method::Rounds =>
        {
            false
        }
        (DecisionKind::Different, Some(Matters::Maybe)) => true,
        _ => return None,
    };
    if is_open {
        return Some(narrowed(hit).unwrap_or(MoreShots::HardlyNarrow));
    }
    let most = if method == Method::SpreadRatio { MOST_FOR_SCATTER } else { MOST_IN_A_VISIT };
    let n = hit.comparison.n;
    let as_many = method == Method::Rounds && n.baseline.min(n.candidate) >= shots as usize;
    Some(match hit.levels.rule {
        Rule::Fixed if as_many => MoreShots::WereHit,
        Rule::Open if as_many => MoreShots::WereHitNotFixed { shots },
        _ if shots > most => MoreShots::TooMany { shots },
        _ => MoreShots::Tell { shots },
    })
}

/// How far a test of one visit narrows a difference; `None` where it hardly does, and for scatter.
///
/// The width follows from the scatter, and that of another day is not that of today: the ratio of both variances follows
/// F. A session whose size is open was picked by its answer, and a quiet one differs more easily: so that 8 of 10 tests keep
/// to what is said, the point of [`KEPT_BY`] is taken.
fn narrowed(hit: &Hit<'_>) -> Option<MoreShots> {
    let Basis::Difference(careful) = &hit.comparison.basis else { return None };
    let (level, present) = (strict(hit.candidates), careful.half_width(hit.levels.different));
    let n = (hit.comparison.n.baseline + hit.comparison.n.candidate) as f64;
    let now = variance_df(careful.widened.df, n, hit.kurtosis);
    let left = |rounds: usize| {
        let (shots, df) = test_of(rounds);
        let then = variance_df(df, shots, hit.kurtosis);
        let another_day = f_upper(1.0 - KEPT_BY, then, now).sqrt();
        let design = stats::TurnsDesign { builds: 2, rounds, set: TURN };
        another_day * hit.comparison.shot_sd * design.half_width(level)
    };
    let most = MOST_IN_A_VISIT as usize / TURN;
    let rounds = (2..most).find(|rounds| left(*rounds) <= NARROWER * present).unwrap_or(most);
    let half_width = left(rounds);
    let shots = u32::try_from(rounds * TURN).ok()?;
    (half_width < HARDLY_NARROWER * present).then_some(MoreShots::Narrow { shots, half_width })
}

/// Shots of a test of two builds, and what one level for each round and the gap leave of them.
fn test_of(rounds: usize) -> (f64, f64) {
    let shots = (2 * TURN * rounds) as f64;
    (shots, shots - rounds as f64 - 1.0)
}

/// Degrees of freedom of a variance whose shots have tails: 2/ν = 2/df + (κ − 3)/n, since that is its relative variance.
fn variance_df(df: f64, n: f64, kurtosis: f64) -> f64 {
    2.0 / (2.0 / df + (kurtosis - 3.0).max(0.0) / n)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::analysis::Counts;
    use stats::{CautiousDifference, Level, TDifference};

    fn comparison(method: Method, n: usize) -> Comparison {
        let found = TDifference::new(2.0, 3.0, 30.0, 250.0).expect("a difference");
        let basis = Basis::Difference(CautiousDifference::new(&found, 0.0));
        let n = Counts { baseline: n, candidate: n + 3 };
        Comparison { basis, method, n, shot_sd: 9.0, assumed_sd: None }
    }

    fn told(method: Method, n: usize, rule: Rule, shots: u32) -> Option<MoreShots> {
        let levels = Levels { different: Level::P95, same: Level::P90, rule };
        let comparison = comparison(method, n);
        let hit = Hit { comparison: &comparison, levels: &levels, candidates: 1, kurtosis: 3.0 };
        more_shots(&Decision::undecided(), shots, &hit)
    }

    #[test]
    fn a_visit_holds_sixty_shots_with_each_and_scatter_is_worth_two_hundred() {
        for (method, most) in
            [(Method::Rounds, 60), (Method::WelchWithAllowance, 60), (Method::SpreadRatio, 200)]
        {
            assert_eq!(told(method, 12, Rule::Fixed, most), Some(MoreShots::Tell { shots: most }));
            let more = most + 1;
            assert_eq!(told(method, 12, Rule::Fixed, more), Some(MoreShots::TooMany { shots: more }));
        }
    }

    #[test]
    fn nobody_is_sent_for_as_many_shots_as_were_hit_in_turn() {
        let (rounds, blocks) = (Method::Rounds, Method::WelchWithAllowance);
        let (named, not_fixed) = (MoreShots::Tell { shots: 30 }, MoreShots::WereHitNotFixed { shots: 30 });
        for (method, n, rule, wanted) in [
            (rounds, 30, Rule::Fixed, MoreShots::WereHit),
            (rounds, 29, Rule::Fixed, named),
            (rounds, 30, Rule::Open, not_fixed),
            (rounds, 29, Rule::Open, named),
            (blocks, 30, Rule::Fixed, named),
            (blocks, 30, Rule::Open, named),
        ] {
            assert_eq!(told(method, n, rule, 30), Some(wanted), "{method:?} {n} {rule:?}");
        }
    }

    #[test]
    fn a_test_in_turns_spends_a_degree_of_freedom_on_each_round_and_one_on_the_gap() {
        let (shots, df) = test_of(4);
        assert!((shots - 24.0).abs() < 1e-12 && (df - 19.0).abs() < 1e-12);
    }
}
