//! What a fitting claimed, set against a retest: supported, contradicted or not settled.
//!
//! The claim is taken at its word, as the gain that the golfer was told to expect; what decides is the interval of
//! claim − retest. How exactly a claim of a few shots could know, and how much of it luck and picking alone would
//! produce, stands beside it: a contradicted claim may still have been made in good faith.
//! Limits: averages, not scatter. Sources: regression to the mean by the shrinkage of `stats`, best of several by
//! order statistics; both on normal averages.

mod luck;
mod words;

pub use luck::{ClaimLuck, Price};
pub use words::ClaimWords;

use crate::analysis::Range;
use crate::check::{CheckRequest, Refusal, check};
use crate::judge::{self, Judgment};
use crate::question::{Goal, Question};
use crate::report::Answer;
use crate::session::Session;
use libm::hypot;
use serde::{Deserialize, Serialize};
use text::claim as say;

/// What was claimed, and on what it rested.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default)]
pub struct Claimed {
    /// Average with the golfer's own club.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub before: Option<f64>,
    /// Average with the new one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub after: Option<f64>,
    /// The promised gain toward the goal, without a sign, where no averages were given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gain: Option<f64>,
    /// Shots behind `before`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shots_before: Option<u32>,
    /// Shots behind `after`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shots_after: Option<u32>,
    /// New clubs that were tried before this one was named; 1 when left open.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tried: Option<u32>,
    /// What it costs, in any currency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
    /// How the currency is written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub currency: Option<String>,
}

/// What [`claim`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ClaimRequest {
    /// What the fitting said.
    pub claimed: Claimed,
    /// The retest; one without shots leaves only what luck does.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// What is asked of it.
    pub question: Question,
}

/// How claim and retest lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum ClaimKind {
    /// The retest falls short by less than would matter, if at all.
    Supported,
    /// The retest falls short, or goes the other way.
    Contradicted,
    /// The retest allows both.
    NotSettled,
    /// There is no retest to hold against it.
    NoRetest,
}

/// A claim held against a retest.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ClaimReport {
    /// How they lie.
    pub kind: ClaimKind,
    /// The claimed difference, new − own.
    pub claimed: f64,
    /// The candidate of the retest; null without one.
    pub candidate: Option<usize>,
    /// The retest's difference; null without one.
    pub retest: Option<Range>,
    /// Claim − retest at the level of 'different'.
    pub difference: Option<Range>,
    /// Whether the luck of the claim's own shots, and the order they were hit in, are enough to explain the distance
    /// between both; null where the shots are not known.
    pub luck_explains: Option<bool>,
    /// What luck and picking would produce; null where the claim's shots or their scatter are not known.
    pub luck: Option<ClaimLuck>,
    /// What each unit of gain costs; null without a price or a retest.
    pub price: Option<Price>,
    /// The retest's own answer; null without one.
    pub answer: Option<Answer>,
    /// In words.
    pub words: ClaimWords,
}

/// Sets a claim against a retest.
///
/// # Errors
/// A [`Refusal`] where the claim names no difference, for scatter, and for everything that `check` refuses.
pub fn claim(request: &ClaimRequest) -> Result<ClaimReport, Refusal> {
    let ClaimRequest { claimed: said, session, question } = request;
    let report = check(&CheckRequest { session: session.clone(), question: question.clone() })?;
    let claimed = claimed_difference(said, question)?;
    let judgments = judge::judge(session, question);
    let judgment = judgments.iter().find(|j| {
        Some(j.candidate) == report.asked.candidate && j.measure == question.measure && j.estimate.is_some()
    });
    let luck = luck::luck(said, claimed, question, judgment);
    let short = judgment.and_then(|j| short_of(claimed, j));
    let kind =
        short.as_ref().map_or(ClaimKind::NoRetest, |short| decide(short, judgment.and_then(|j| j.margin)));
    let difference = short.map(|short| short.signed(claimed));
    let luck_explains = short.zip(luck.as_ref()).map(|(short, luck)| {
        short.middle().abs() <= hypot(short.half_width(), luck.error_95) + luck.order_allowance
    });
    let retest = judgment.and_then(|j| Some(j.comparison()?.range(j.levels.different)));
    let price = retest.as_ref().and_then(|retest| luck::price(said, claimed, retest));
    let words = words::words(&words::Facts {
        said,
        session,
        question,
        kind,
        claimed,
        judgment,
        luck: luck.as_ref(),
        luck_explains,
        price: price.as_ref(),
    });
    Ok(ClaimReport {
        kind,
        claimed,
        candidate: judgment.map(|j| j.candidate),
        retest,
        difference,
        luck_explains,
        luck,
        price,
        answer: judgment.map(|_| report.answer),
        words,
    })
}

/// By how much the retest falls short of the claim: positive is short, whichever way was claimed.
#[derive(Debug, Clone, Copy)]
struct Short {
    different: Range,
    same: Range,
}

impl Short {
    fn middle(&self) -> f64 {
        0.5 * (self.different.low + self.different.high)
    }

    fn half_width(&self) -> f64 {
        0.5 * (self.different.high - self.different.low)
    }

    fn signed(&self, claimed: f64) -> Range {
        toward(&self.different, claimed)
    }
}

/// A range as seen by a claim that goes up or down.
fn toward(range: &Range, claimed: f64) -> Range {
    if claimed < 0.0 { Range { low: -range.high, high: -range.low, ..*range } } else { *range }
}

fn short_of(claimed: f64, judgment: &Judgment) -> Option<Short> {
    let comparison = judgment.comparison()?;
    let short = |level| {
        let retest = toward(&comparison.range(level), claimed);
        Range { low: claimed.abs() - retest.high, high: claimed.abs() - retest.low, level: retest.level }
    };
    Some(Short { different: short(judgment.levels.different), same: short(judgment.levels.same) })
}

/// Supported when the retest falls short by less than the margin; contradicted when it falls short at all.
fn decide(short: &Short, margin: Option<f64>) -> ClaimKind {
    if short.same.high < margin.unwrap_or(0.0) {
        ClaimKind::Supported
    } else if short.different.low > 0.0 {
        ClaimKind::Contradicted
    } else {
        ClaimKind::NotSettled
    }
}

/// New − own, from the averages or from the promised gain.
fn claimed_difference(said: &Claimed, question: &Question) -> Result<f64, Refusal> {
    let refuse = |kind: &str, place: &str, message: String, remedy: String| {
        Err(Refusal::new(kind, place, &message, &remedy))
    };
    let goal = judge::goal(question, &question.measure);
    if goal == Goal::Tighter {
        return refuse("scatter", "question.goal", say::scatter(), say::scatter_remedy());
    }
    let numbers = [said.before, said.after, said.gain, said.price];
    if numbers.iter().flatten().any(|x| !x.is_finite()) || said.price.is_some_and(|p| p < 0.0) {
        return refuse("not_a_number", "claimed", say::not_a_number(), say::not_a_number_remedy());
    }
    let difference = match (said.before, said.after, said.gain) {
        (Some(before), Some(after), _) => after - before,
        (_, _, Some(_)) if goal == Goal::NearerZero => {
            return refuse(
                "averages_needed",
                "claimed.gain",
                say::averages_needed(),
                say::averages_needed_remedy(),
            );
        }
        (_, _, Some(gain)) if goal == Goal::Lower => -gain.abs(),
        (_, _, Some(gain)) => gain,
        _ => {
            return refuse("no_claim", "claimed", say::no_claim(), say::no_claim_remedy());
        }
    };
    if difference.abs() > 0.0 {
        return Ok(difference);
    }
    refuse("no_claim", "claimed", say::no_change(), say::no_change_remedy())
}
