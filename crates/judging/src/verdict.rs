//! The decision, made once, from two intervals and the smallest difference that matters.
//!
//! Words, pictures and pages read the decision and never the sign of a difference.

use crate::interval::Interval;
use libm::log as ln;
use serde::{Deserialize, Serialize};

/// What was decided, once, from the interval and the smallest difference that matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DecisionKind {
    /// The interval excludes zero.
    Different,
    /// The equivalence interval lies inside the margin.
    Same,
    /// Neither: these shots do not settle it.
    CannotTell,
    /// This session cannot answer the question at all.
    CannotAnswer,
}

/// Whether a real difference is as large as the golfer asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Matters {
    /// The whole interval lies beyond the margin.
    Yes,
    /// The interval straddles the margin.
    Maybe,
    /// Real, and certainly smaller than the margin.
    No,
}

/// Which way the candidate differs from the baseline.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Direction {
    /// Candidate minus baseline is above zero (for spread: the ratio is above one).
    Higher,
    /// Candidate minus baseline is below zero (for spread: the ratio is below one).
    Lower,
}

/// Why there is no plain answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// Nothing was read.
    NoShots,
    /// Only one build in the session.
    OneBuild,
    /// A build has too few shots with this measure.
    TooFewShots,
    /// The measure was not recorded for both builds.
    NotMeasured,
    /// Averages without a number of shots.
    CountsMissing,
    /// Averages of the best or of chosen shots.
    OnlyTheBest,
    /// Averages of a measure whose usual spread is not known, without a deviation.
    SpreadMissing,
    /// Spread was asked for, and averages do not hold it.
    OnlyAverages,
    /// All shots of a build have the same value: the numbers were probably rounded or copied.
    NoScatter,
    /// Every round shows the same gap, without scatter around it: the same suspicion.
    NoScatterInRounds,
    /// The answer changes with the shots that were left out.
    DependsOnLeftOut,
    /// Clubs and time are mixed up, and how far the order moves the measure is not known: an interval holds a guess of it.
    OrderNotAllowedFor,
}

/// Which of two builds is nearer to zero, where nearer is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Nearer {
    /// The candidate.
    Candidate,
    /// The baseline.
    Baseline,
    /// They differ, and these shots leave open which of them is nearer.
    NotSettled,
}

/// A decision with its reasons.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Decision {
    /// What was decided.
    pub kind: DecisionKind,
    /// For `different` with a margin: is it large enough?
    #[serde(skip_serializing_if = "Option::is_none")]
    pub matters: Option<Matters>,
    /// For `different`: which way.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub direction: Option<Direction>,
    /// For `cannot_answer`, and for `cannot_tell` with a special cause.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub why: Option<Why>,
    /// For `different` where nearer to zero is better: which of the two is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub nearer: Option<Nearer>,
}

impl Decision {
    /// The session cannot answer, and this is why.
    #[must_use]
    pub const fn cannot_answer(why: Why) -> Self {
        Self { why: Some(why), ..Self::plain(DecisionKind::CannotAnswer) }
    }

    /// Nothing was decided yet.
    pub(crate) const fn undecided() -> Self {
        Self::plain(DecisionKind::CannotTell)
    }

    const fn plain(kind: DecisionKind) -> Self {
        Self { kind, matters: None, direction: None, why: None, nearer: None }
    }

    /// Whether the interval that must lie inside the margin decided: for `same`, and for a difference that is too small
    /// to matter. It is narrower than the other, so that it lies on the same side of zero.
    #[must_use]
    pub fn is_inside_the_margin(&self) -> bool {
        self.kind == DecisionKind::Same || self.matters == Some(Matters::No)
    }

    /// Whether two decisions would tell the golfer something different.
    #[must_use]
    pub fn disagrees_with(&self, other: &Self) -> bool {
        self.kind != other.kind || self.direction != other.direction
    }

    /// The decision for a golfer who set shots aside: it stands only if it does not hang on them.
    #[must_use]
    pub fn unless_it_depends(self, without_left_out: &Self) -> Self {
        if self.disagrees_with(without_left_out) {
            Self { why: Some(Why::DependsOnLeftOut), ..Self::plain(DecisionKind::CannotTell) }
        } else {
            self
        }
    }

    /// The decision of clubs whose order is mixed up with them, on a measure of which nobody knows how far the order moves
    /// it: an interval that leaves no room for it, or for a guess of it, shows that the shots differ, which is a hint; it shows neither that
    /// the clubs are the same nor how much of a difference is theirs.
    #[must_use]
    pub fn with_nothing_allowed_for_order(self) -> Self {
        match self.kind {
            DecisionKind::Same => {
                Self { why: Some(Why::OrderNotAllowedFor), ..Self::plain(DecisionKind::CannotTell) }
            }
            DecisionKind::Different => Self { matters: self.matters.map(|_| Matters::Maybe), ..self },
            DecisionKind::CannotTell | DecisionKind::CannotAnswer => self,
        }
    }
}

/// Decides from the interval for 'different', the interval for 'same' and the margin.
///
/// Both intervals are of candidate − baseline, widened and with their allowance already in them.
/// Without a margin nothing can be 'the same', and nobody can say whether a difference matters.
/// Source of the two-interval rule: two one-sided tests, D. J. Schuirmann, J. Pharmacokinetics and
/// Biopharmaceutics 15 (1987), 657–680.
#[must_use]
pub fn decide(different: &Interval, equivalence: &Interval, margin: Option<f64>) -> Decision {
    let inside = margin.is_some_and(|m| equivalence.low > -m && equivalence.high < m);
    let direction = if different.low > 0.0 {
        Direction::Higher
    } else if different.high < 0.0 {
        Direction::Lower
    } else {
        return Decision::plain(if inside { DecisionKind::Same } else { DecisionKind::CannotTell });
    };
    let nearest = different.low.abs().min(different.high.abs());
    let matters = margin.map(|m| match () {
        () if inside => Matters::No,
        () if nearest >= m => Matters::Yes,
        () => Matters::Maybe,
    });
    Decision { matters, direction: Some(direction), ..Decision::plain(DecisionKind::Different) }
}

/// The same decision for a ratio of spreads, where 'no difference' is 1 and the margin a ratio above 1.
#[must_use]
pub fn decide_ratio(different: &Interval, equivalence: &Interval, margin: Option<f64>) -> Decision {
    let log = |range: &Interval| Interval { low: ln(range.low), high: ln(range.high), ..*range };
    decide(&log(different), &log(equivalence), margin.map(ln))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn range(low: f64, high: f64) -> Interval {
        Interval { low, high, level: 0.95 }
    }

    fn decided(low: f64, high: f64, margin: Option<f64>) -> Decision {
        // The equivalence interval of a 95 % interval is about 84 % as wide.
        let (middle, half) = ((low + high) / 2.0, (high - low) / 2.0 * 0.84);
        decide(&range(low, high), &range(middle - half, middle + half), margin)
    }

    #[test]
    fn every_row_of_the_verdict_table() {
        use DecisionKind::{CannotTell, Different, Same};
        let rows = [
            (7.0, 15.0, Different, Some(Matters::Yes)),
            (1.0, 12.0, Different, Some(Matters::Maybe)),
            (0.5, 4.5, Different, Some(Matters::No)),
            (-4.0, 4.0, Same, None),
            (-3.0, 9.0, CannotTell, None),
        ];
        for (low, high, kind, matters) in rows {
            let decision = decided(low, high, Some(5.0));
            assert_eq!((decision.kind, decision.matters), (kind, matters), "{low} to {high}");
        }
    }

    #[test]
    fn swapping_the_builds_swaps_the_direction_and_nothing_else() {
        for (low, high) in [(7.0, 15.0), (1.0, 12.0), (0.5, 4.5), (-4.0, 4.0), (-3.0, 9.0)] {
            let (there, back) = (decided(low, high, Some(5.0)), decided(-high, -low, Some(5.0)));
            assert_eq!((there.kind, there.matters), (back.kind, back.matters));
            assert_eq!(there.direction == Some(Direction::Higher), back.direction == Some(Direction::Lower));
        }
    }

    #[test]
    fn an_end_at_zero_or_at_the_margin_is_not_beyond_it() {
        assert_eq!(decided(0.0, 8.0, Some(5.0)).kind, DecisionKind::CannotTell);
        assert_eq!(decide(&range(-6.0, 6.0), &range(-5.0, 5.0), Some(5.0)).kind, DecisionKind::CannotTell);
        assert_eq!(decided(5.0, 9.0, Some(5.0)).matters, Some(Matters::Yes));
    }

    #[test]
    fn without_a_margin_nothing_is_the_same_and_nothing_matters() {
        assert_eq!(decided(-0.1, 0.1, None).kind, DecisionKind::CannotTell);
        assert_eq!(decided(1.0, 2.0, None).matters, None);
    }

    #[test]
    fn a_ratio_is_decided_on_its_own_scale() {
        let tighter = decide_ratio(&range(0.4, 0.7), &range(0.45, 0.65), Some(1.25));
        assert_eq!(tighter.direction, Some(Direction::Lower));
        assert_eq!(tighter.matters, Some(Matters::Yes));
        assert_eq!(decide_ratio(&range(0.8, 1.3), &range(0.85, 1.2), Some(1.25)).kind, DecisionKind::Same);
    }

    #[test]
    fn a_decision_that_hangs_on_left_out_shots_is_no_decision() {
        let with_all = decided(7.0, 15.0, Some(5.0));
        let without = decided(-3.0, 9.0, Some(5.0));
        assert_eq!(with_all.unless_it_depends(&without).why, Some(Why::DependsOnLeftOut));
        assert_eq!(with_all.unless_it_depends(&with_all), with_all);
    }
}
