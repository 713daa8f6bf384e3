//! What a fitting claimed, set against a retest: supported, contradicted or not settled.
//!
//! The claim is taken at its word, as the gain that the golfer was told to expect; what decides is the interval of
//! claim − retest. How exactly a claim of a few shots could know, and how much of it luck and picking alone would
//! produce, stands beside it: a contradicted claim may still have been made in good faith.
//! Limits: averages, not scatter. Sources: what to believe of a claim alone by the bet's pull, best of several by order
//! statistics; both on normal averages.

mod luck;
mod said;

pub use luck::{ClaimBet, ClaimLuck, Price};
pub use said::{ClaimRefused, Claimed};

use crate::facts::OrderAllowance;
use crate::interval::Interval;
use crate::judge::{Judged, Judgment};
use crate::trust::has_value_in_doubt;
use libm::hypot;
use serde::Serialize;
use session::measure::Margin;

/// How claim and retest lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum ClaimKind {
    /// The retest shows a gain, and falls short by less than would matter, if at all.
    Supported,
    /// What was promised is less than would matter, and the retest shows all of it.
    AtLeast,
    /// What was promised is less than would matter, so that there is nothing to hold up or fall.
    TooSmall,
    /// The retest falls short, or goes the other way.
    Contradicted,
    /// The retest allows both.
    NotSettled,
    /// There is no retest to hold against it.
    NoRetest,
}

/// Why a claim is not settled, where that is not the width of the interval.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum ClaimOpen {
    /// A value of the retest cannot be, and was not confirmed.
    ValueInDoubt,
    /// The clubs were not compared in turn, and how far warming up and tiring move the measure is not known.
    OrderUnknown,
    /// The interval of the retest is wider than the measure can plausibly differ by.
    NextToNothing,
}

/// A claim held against a retest.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ClaimFacts {
    /// How they lie.
    pub kind: ClaimKind,
    /// Why it is not settled, where that is not the width of the interval; absent elsewhere.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub open: Option<ClaimOpen>,
    /// The claimed difference, new − own.
    pub claimed: f64,
    /// The candidate of the retest; null without one.
    pub candidate: Option<usize>,
    /// Whether shots or averages of both clubs are there to hold it against.
    pub is_hit_again: bool,
    /// The retest's difference, by the interval that decided; null without one.
    pub retest: Option<Interval>,
    /// Claim − retest, by the interval that decided.
    pub difference: Option<Interval>,
    /// Whether the luck of the claim's own shots, and the order they were hit in, are enough to explain the distance
    /// between both; null where the shots are not known.
    pub luck_explains: Option<bool>,
    /// What luck and picking would produce; null where the claim's shots or their scatter are not known.
    pub luck: Option<ClaimLuck>,
    /// What each unit of gain costs; null without a price or a retest.
    pub price: Option<Price>,
}

/// Sets a claim against the retest that was judged; one without shots leaves only what luck does.
///
/// # Errors
/// A [`ClaimRefused`] where the claim names no difference, and for scatter.
pub fn claim(said: &Claimed, judged: &Judged<'_>) -> Result<ClaimFacts, ClaimRefused> {
    let question = judged.settled.question;
    let claimed = said::claimed_difference(said, question)?;
    let judgment = retest(judged);
    let open = judgment.and_then(|judgment| open(judged, judgment));
    // Scatter with a value in it that cannot be is none.
    let scatter = judgment.filter(|_| open != Some(ClaimOpen::ValueInDoubt));
    let luck = luck::luck(said, claimed, question, scatter);
    let margin = judgment.and_then(|j| j.margin).map_or(0.0, Margin::value);
    // The one that the answer to the same shots tells: two intervals of one gap would settle two things.
    let retest = judgment.and_then(|j| Some(j.comparison()?.interval(j.levels.different)));
    let short = retest.map(|retest| short_of(claimed, &retest));
    let kind = short.map_or(ClaimKind::NoRetest, |short| decide(claimed.abs(), &short, margin));
    let kind = if open.is_some() { ClaimKind::NotSettled } else { kind };
    let luck_explains = short.zip(luck.as_ref()).map(|(short, luck)| luck_explains(&short, luck));
    Ok(ClaimFacts {
        kind,
        open,
        claimed,
        candidate: judgment.map(|j| j.candidate),
        is_hit_again: is_hit_again(judged),
        retest,
        difference: short.map(|short| toward(&short, claimed)),
        luck_explains,
        price: retest
            .filter(|_| open.is_none())
            .and_then(|retest| luck::price(said, &toward(&retest, claimed))),
        luck,
    })
}

/// The judgment that a claim is held against; `None` where nothing can be estimated.
#[must_use]
pub fn retest<'a>(judged: &'a Judged<'_>) -> Option<&'a Judgment> {
    judged.headline().filter(|judgment| judgment.estimate.is_some())
}

/// Whether both clubs are there, in shots or in averages, whatever can be made of them.
fn is_hit_again(judged: &Judged<'_>) -> bool {
    let session = judged.settled.session;
    let of_shots = session.shots.iter().map(|shot| shot.build);
    let of_averages = session.summaries.iter().map(|summary| summary.build);
    let there = arrange::distinct(of_shots.chain(of_averages));
    there.len() > 1 && there.contains(&judged.settled.question.baseline)
}

/// What keeps a retest from holding a claim up or speaking against it, whatever its interval: that leaves no room for a value
/// that is wrong, nor here for what the order did.
fn open(judged: &Judged<'_>, judgment: &Judgment) -> Option<ClaimOpen> {
    let Judgment { baseline, candidate, measure, facts, .. } = judgment;
    match facts.order_allowance {
        _ if has_value_in_doubt(judged.settled.session, measure, [*baseline, *candidate]) => {
            Some(ClaimOpen::ValueInDoubt)
        }
        _ if facts.says_next_to_nothing => Some(ClaimOpen::NextToNothing),
        OrderAllowance::SizeNotKnown => Some(ClaimOpen::OrderUnknown),
        OrderAllowance::NotNeeded | OrderAllowance::Included | OrderAllowance::StartOfLaps => None,
    }
}

/// An interval as seen by a claim that goes up or down: positive is what was promised.
#[must_use]
pub fn toward(interval: &Interval, claimed: f64) -> Interval {
    if claimed < 0.0 { Interval { low: -interval.high, high: -interval.low, ..*interval } } else { *interval }
}

/// By how much the retest falls short of the claim: positive is short, whichever way was claimed.
fn short_of(claimed: f64, retest: &Interval) -> Interval {
    let retest = toward(retest, claimed);
    Interval { low: claimed.abs() - retest.high, high: claimed.abs() - retest.low, level: retest.level }
}

/// Whether both errors together, and the order of the claim's own shots, reach over the distance.
fn luck_explains(short: &Interval, luck: &ClaimLuck) -> bool {
    let (middle, half_width) = (0.5 * (short.low + short.high), 0.5 * (short.high - short.low));
    middle.abs() <= hypot(half_width, luck.error_95) + luck.order_allowance
}

/// Contradicted when the retest falls short, unless by less than the margin. Supported when it falls short by less than
/// the margin, and so shows a gain: a promise within the margin, which no gain at all would hold up, is too small, unless the
/// retest shows all of it.
fn decide(claimed: f64, short: &Interval, margin: f64) -> ClaimKind {
    let is_close = short.high < margin;
    let is_short = short.low > 0.0;
    match () {
        () if is_short && !is_close => ClaimKind::Contradicted,
        () if claimed <= margin && short.high <= 0.0 => ClaimKind::AtLeast,
        () if claimed <= margin => ClaimKind::TooSmall,
        () if is_close => ClaimKind::Supported,
        () => ClaimKind::NotSettled,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn range(low: f64, high: f64) -> Interval {
        Interval { low, high, level: 0.95 }
    }

    #[test]
    fn a_promise_downward_is_read_turned_around() {
        assert_eq!(toward(&range(-3.0, 8.0), -5.0), range(-8.0, 3.0));
        assert_eq!(toward(&range(-3.0, 8.0), 5.0), range(-3.0, 8.0));
        // Down by 5 was promised; down by 8 at most was found, and up by 3 at most.
        assert_eq!(short_of(-5.0, &range(-8.0, 3.0)), range(-3.0, 8.0));
    }

    #[test]
    fn an_end_at_the_claim_or_at_the_margin_is_not_beyond_it() {
        use ClaimKind::{AtLeast, Contradicted, NotSettled, Supported, TooSmall};
        for (claimed, low, high, kind) in [
            (10.0, 0.0, 8.0, NotSettled),
            (10.0, 0.1, 8.0, Contradicted),
            (10.0, -2.0, 4.9, Supported),
            (10.0, -2.0, 5.0, NotSettled),
            (10.0, 0.1, 4.9, Supported),
            (10.0, 0.1, 5.0, Contradicted),
            (5.0, -2.0, 4.9, TooSmall),
            (5.0, -9.0, 0.1, TooSmall),
            (5.0, -9.0, 0.0, AtLeast),
            (3.0, -32.0, -12.0, AtLeast),
            (5.0, 0.1, 5.0, Contradicted),
        ] {
            assert_eq!(decide(claimed, &range(low, high), 5.0), kind, "{claimed}: {low} to {high}");
        }
    }

    #[test]
    fn luck_explains_what_both_errors_in_quadrature_and_the_order_reach() {
        let luck = ClaimLuck {
            shot_sd: 9.0,
            from_retest: true,
            usual_gap: 3.0,
            chance: 0.3,
            best_of: 0.0,
            bet: None,
            error_95: 3.0,
            order_allowance: 2.0,
        };
        // Half-widths of 4 and 3 make 5, and the order adds 2.
        for (middle, explained) in [(6.9, true), (7.1, false), (-6.9, true), (-7.1, false)] {
            assert_eq!(luck_explains(&range(middle - 4.0, middle + 4.0), &luck), explained, "{middle}");
        }
    }
}
