//! What a fitting said: averages or a gain, and on what they rested; or why that is no claim.

use serde::{Deserialize, Serialize};
use session::question::{Goal, Question};

/// What was claimed, and on what it rested.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default, deny_unknown_fields)]
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

/// Why a claim cannot be held against a retest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ClaimRefused {
    /// It is about scatter, which averages do not hold.
    Scatter,
    /// One of its figures is no number, or a price below nothing.
    NotANumber,
    /// 'Straighter by so much' does not say from where to where.
    AveragesNeeded,
    /// Neither averages nor a gain.
    NoClaim,
    /// A claim that nothing changes.
    NoChange,
}

/// New − own, from the averages or from the promised gain.
pub(super) fn claimed_difference(said: &Claimed, question: &Question) -> Result<f64, ClaimRefused> {
    let goal = question.goal_on(&question.measure);
    if goal == Goal::Tighter {
        return Err(ClaimRefused::Scatter);
    }
    let numbers = [said.before, said.after, said.gain, said.price];
    if numbers.iter().flatten().any(|x| !x.is_finite()) || said.price.is_some_and(|p| p < 0.0) {
        return Err(ClaimRefused::NotANumber);
    }
    let difference = match (said.before, said.after, said.gain) {
        (Some(before), Some(after), _) => after - before,
        (_, _, Some(_)) if goal == Goal::NearerZero => return Err(ClaimRefused::AveragesNeeded),
        (_, _, Some(gain)) if goal == Goal::Lower => -gain.abs(),
        (_, _, Some(gain)) => gain,
        _ => return Err(ClaimRefused::NoClaim),
    };
    if difference.abs() > 0.0 { Ok(difference) } else { Err(ClaimRefused::NoChange) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::question::{Stopping, StoppingWord};

    fn of(said: &Claimed, goal: Goal) -> Result<f64, ClaimRefused> {
        let question = Question {
            differs: None,
            baseline: 0,
            candidate: None,
            measure: "carry".into(),
            goal: Some(goal),
            margin: None,
            first_margin: None,
            stopping: Stopping::Word(StoppingWord::Fixed),
        };
        claimed_difference(said, &question)
    }

    #[test]
    fn a_price_is_a_number_and_not_below_nothing() {
        for (price, is_one) in
            [(0.0, true), (600.0, true), (-0.01, false), (f64::NAN, false), (f64::INFINITY, false)]
        {
            let said = Claimed { gain: Some(8.0), price: Some(price), ..Claimed::default() };
            let wanted = if is_one { Ok(8.0) } else { Err(ClaimRefused::NotANumber) };
            assert_eq!(of(&said, Goal::Higher), wanted, "{price}");
        }
        let said = Claimed { before: Some(f64::NAN), after: Some(250.0), ..Claimed::default() };
        assert_eq!(of(&said, Goal::Higher), Err(ClaimRefused::NotANumber));
    }
}
