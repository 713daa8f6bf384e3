//! A fitting's claim set against a retest, told. Accuses nobody.

mod words;

pub use words::ClaimWords;

use crate::check;
use crate::ends::{Printed, printed_difference};
use crate::format::Subject;
use crate::refusals;
use crate::report::Answer;
use judging::claim::{ClaimFacts, Claimed, retest};
use judging::{judge, settle};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::Margin;
use session::question::Question;
use session::refusal::Refusal;
use text::Voice;

/// What [`claim`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ClaimRequest {
    /// What the fitting said.
    pub claimed: Claimed,
    /// The retest; one without shots leaves only what luck does.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of it.
    pub question: Question,
}

/// A claim held against a retest.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ClaimReport {
    /// How they lie, and what luck and picking would produce.
    #[serde(flatten)]
    pub facts: ClaimFacts,
    /// The retest's own answer; null without one.
    pub answer: Option<Answer>,
    /// The retest's difference, as it is printed in the picture; null without one.
    pub printed: Option<Printed>,
    /// In words.
    pub words: ClaimWords,
}

/// Sets a claim against a retest.
///
/// # Errors
/// A [`Refusal`] where the claim names no difference, for scatter, and for everything that `check` refuses.
pub fn claim(request: &ClaimRequest, voice: &Voice) -> Result<ClaimReport, Refusal> {
    let ClaimRequest { claimed, session, question } = request;
    let settled = settle(question, session).map_err(|misfit| refusals::misfit(&misfit, voice))?;
    let judged = judge(settled);
    let facts = judging::claim::claim(claimed, &judged).map_err(|refused| refusals::claim(refused, voice))?;
    let retest = retest(&judged);
    let answer = retest.map(|judgment| check::answer_of(&judged, judgment, voice));
    let words = words::words(&words::Told {
        said: claimed,
        session,
        measure: &question.measure,
        facts: &facts,
        retest,
        answer: answer.as_ref(),
        voice,
    });
    let printed = retest.zip(facts.retest).and_then(|(judgment, interval)| {
        let margin = judgment.margin.map(Margin::value);
        let subject = Subject::of(&question.measure, session, voice);
        Some(printed_difference(judgment.estimate.as_ref()?.value, &interval, margin, &subject))
    });
    Ok(ClaimReport { facts, answer, printed, words })
}
