//! What luck and picking alone would have produced at the fitting, and what a yard of the retest's gain costs.

use super::said::Claimed;
use crate::bet::{ChanceRange, PulledGap, believed_of};
use crate::interval::Interval;
use crate::judge::Judgment;
use serde::Serialize;
use session::measure::Margin;
use session::question::{Goal, Question};
use stats::distributions::normal_upper;
use stats::{CautiousDifference, TDifference};

/// Degrees of freedom of an error that is taken as known: a claim's own shots are not here to scatter.
const KNOWN: f64 = 1e6;

/// What luck alone does with as many shots as the claim rested on.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ClaimLuck {
    /// Scatter of single shots that was taken: the retest's, or what is usual.
    pub shot_sd: f64,
    /// Whether it is the retest's.
    pub from_retest: bool,
    /// Size of the gap that luck sets between two equal clubs on average.
    pub usual_gap: f64,
    /// Share of fittings of equal clubs whose best one would show at least the claimed gap.
    pub chance: f64,
    /// Lead of the best of as many equal clubs as were tried, on average; 0 for one.
    pub best_of: f64,
    /// What to believe of the claim alone; null where nothing is bet: how far the order of a fitting moves the measure is not
    /// known, or an average nearer to zero is asked for.
    pub bet: Option<ClaimBet>,
    /// Half-width, at 95 %, of what the claim's own shots could know.
    pub error_95: f64,
    /// What warming up and tiring can add where clubs are not hit in turn.
    pub order_allowance: f64,
}

/// What to believe of a claim alone: pulled toward what clubs usually differ by, as every bet is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ClaimBet {
    /// The gap, candidate − own.
    pub gap: PulledGap,
    /// The chance of any such gain.
    pub at_all: ChanceRange,
    /// The smallest difference that matters; null without one.
    pub margin: Option<f64>,
    /// The chance of a gain of that or more; null without one above zero.
    pub by_margin: Option<ChanceRange>,
}

/// What each unit of gain costs, by the retest.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Price {
    /// If the gain is the largest the retest allows; null when it allows none.
    pub least: Option<f64>,
    /// If it is the smallest; null when that may be nothing, so that there is no limit.
    pub most: Option<f64>,
}

/// What luck would do; `None` where the shots behind the claim, or their scatter, are not known.
pub(super) fn luck(
    said: &Claimed,
    claimed: f64,
    question: &Question,
    judgment: Option<&Judgment>,
) -> Option<ClaimLuck> {
    let measure = &question.measure;
    let n = |own: Option<u32>, other: Option<u32>| own.or(other).filter(|n| *n > 0).map(f64::from);
    let before = n(said.shots_before, said.shots_after)?;
    let after = n(said.shots_after, said.shots_before)?;
    let seen = judgment.and_then(|j| j.comparison()).map(|c| c.shot_sd);
    let shot_sd =
        seen.or_else(|| measure.usual().and_then(|known| known.facts().scatter).map(|usual| usual.middle))?;
    let se = shot_sd * (1.0 / before + 1.0 / after).sqrt();
    // One error for both averages, as if each rested on as many shots.
    let se_of_mean = se / std::f64::consts::SQRT_2;
    let tried = said.tried.unwrap_or(1).max(1) as usize;
    Some(ClaimLuck {
        shot_sd,
        from_retest: seen.is_some(),
        usual_gap: se * (2.0 / std::f64::consts::PI).sqrt(),
        chance: stats::best_lead_chance(tried, claimed.abs() / se_of_mean),
        best_of: stats::expected_best(tried) * se_of_mean,
        bet: bet(claimed, se, shot_sd, question),
        error_95: stats::choices::WIDENING * normal_upper(0.025) * se,
        order_allowance: measure.usual().map_or(0.0, |known| known.facts().order_allowance),
    })
}

fn bet(claimed: f64, se: f64, shot_sd: f64, question: &Question) -> Option<ClaimBet> {
    let measure = &question.measure;
    if question.goal_on(measure) == Goal::NearerZero {
        return None;
    }
    // Nobody knows in which order a fitting hit its clubs.
    let order_allowance = measure.usual()?.facts().order_allowance;
    let textbook = TDifference::new(claimed, se, KNOWN, claimed).ok()?;
    let careful = CautiousDifference::new(&textbook, order_allowance);
    let margin = question.margin_on(measure).map(Margin::value);
    let (gap, at_all, by_margin) = believed_of(&careful, measure, shot_sd, margin, question.differs)?;
    Some(ClaimBet { gap, at_all, margin, by_margin })
}

/// Price over gain at both ends of the retest, as the claim counts it; `None` without a price.
pub(super) fn price(said: &Claimed, gain: &Interval) -> Option<Price> {
    let price = said.price?;
    let each = |gain: f64| (gain > 0.0).then(|| price / gain);
    Some(Price { least: each(gain.high), most: each(gain.low) })
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::known::Known;
    use session::question::{Differs, Stopping, StoppingWord};

    fn said(before: Option<u32>, after: Option<u32>, tried: Option<u32>) -> Claimed {
        Claimed { shots_before: before, shots_after: after, tried, ..Claimed::default() }
    }

    fn asked(measure: &str) -> Question {
        Question {
            baseline: 0,
            candidate: None,
            measure: measure.into(),
            goal: None,
            margin: None,
            first_margin: None,
            stopping: Stopping::Word(StoppingWord::Fixed),
            differs: None,
        }
    }

    fn close(a: f64, b: f64) {
        assert!((a - b).abs() < 1e-4, "{a} is not {b}");
    }

    /// Carry scatters by 11 yd: averages of 5 and of 20 shots lie apart by 5.5 yd, as a deviation.
    #[test]
    fn what_luck_does_follows_from_the_shots_behind_a_claim() {
        let of = |tried, claimed| luck(&said(Some(5), Some(20), tried), claimed, &asked("carry"), None);
        let one = of(None, 5.5 * 1.959_964).expect("known");
        close(one.shot_sd, 11.0);
        close(one.usual_gap, 4.388_347);
        close(one.chance, 0.025);
        close(one.best_of, 0.0);
        close(one.error_95, 1.1 * 1.959_964 * 5.5);
        close(one.order_allowance, Known::Carry.facts().order_allowance);
        // Two equal clubs lead the own one by 0.5642 (three of them) of each average's 3.8891 yd.
        let two = of(Some(2), 8.0).expect("known");
        close(two.best_of, stats::expected_best(2) * 5.5 / 2.0_f64.sqrt());
        assert!(two.chance > of(Some(1), 8.0).expect("known").chance);
        // The pull does not hang on how many were tried, and is the bet's: 2, 4 and 8 yd, each as likely as the others.
        assert_eq!(two.bet, of(Some(1), 8.0).expect("known").bet);
        let bet = two.bet.expect("a bet");
        let error = TDifference::new(8.0, stats::choices::WIDENING * 5.5, KNOWN, 8.0).expect("an error");
        let drift = 0.5 * Known::Carry.facts().order_allowance;
        close(bet.gap.value, stats::pulled_over(&error, &[2.0, 4.0, 8.0], drift).expect("a pull").mean());
        assert!(0.0 < bet.gap.value && bet.gap.value < 4.0 && bet.at_all.chance.high < 0.95);
        assert!(bet.by_margin.expect("a usual margin").chance.high < bet.at_all.chance.high);
        // Other clubs than were taken by default: what was said to differ.
        let old = Question { differs: Some(Differs::OldClub), ..asked("carry") };
        let old = luck(&said(Some(5), Some(20), None), 8.0, &old, None).expect("known");
        assert!(old.bet.expect("a bet").gap.value > bet.gap.value);
        let down = of(None, -8.0).expect("known").bet.expect("a bet");
        close(down.gap.value, -bet.gap.value);
        close(down.at_all.chance.low, bet.at_all.chance.low);
        let nearer = luck(&said(Some(5), Some(20), None), 8.0, &asked("offline"), None).expect("known");
        assert_eq!(nearer.bet, None);
        assert!(!two.from_retest);
    }

    #[test]
    fn the_shots_of_one_average_stand_for_those_of_the_other_and_none_are_none() {
        let of = |before, after| luck(&said(before, after, None), 8.0, &asked("carry"), None);
        assert_eq!(of(Some(6), None), of(Some(6), Some(6)));
        assert_eq!(of(None, Some(6)), of(Some(6), Some(6)));
        for (before, after) in [(None, None), (Some(0), Some(6)), (Some(6), Some(0)), (Some(0), None)] {
            assert_eq!(of(before, after), None, "{before:?} {after:?}");
        }
        assert_eq!(luck(&said(Some(6), Some(6), None), 8.0, &asked("own"), None), None, "scatter not known");
    }

    #[test]
    fn a_gain_that_may_be_nothing_has_no_price_each() {
        let said = Claimed { price: Some(600.0), ..Claimed::default() };
        let of = |low, high| price(&said, &Interval { low, high, level: 0.95 }).expect("a price");
        assert_eq!(of(2.0, 12.0), Price { least: Some(50.0), most: Some(300.0) });
        assert_eq!(of(0.0, 12.0), Price { least: Some(50.0), most: None });
        assert_eq!(of(-3.0, 0.0), Price { least: None, most: None });
        assert_eq!(price(&Claimed::default(), &Interval { low: 2.0, high: 12.0, level: 0.95 }), None);
    }
}
