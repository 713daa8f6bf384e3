//! A session and a question in, a report out: settled, judged and told.

use crate::answer;
use crate::case::Case;
use crate::ends::printed;
use crate::format::Subject;
use crate::overlay::overlays;
use crate::refusals;
use crate::report::{Answer, Asked, Finding, Report};
use crate::trust;
use crate::ways::both_ways;
use judging::choice::{Choice, choice};
use judging::fragile::removals_to_flip;
use judging::honest_lead::honest_lead;
use judging::trust::{Seen, has_value_in_doubt, trust};
use judging::verdict::{Decision, DecisionKind, Why};
use judging::{Judged, Judgment, judge, luck, settle};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::Margin;
use session::question::Question;
use session::refusal::Refusal;
use text::Voice;

/// What [`check`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct CheckRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
}

/// Answers the question from the session's shots.
///
/// # Errors
/// A [`Refusal`] when the question names a build that is not there or a margin that is no number.
/// A session that holds too little is no error: the report says what is missing.
pub fn check(request: &CheckRequest, voice: &Voice) -> Result<Report, Refusal> {
    let settled =
        settle(&request.question, &request.session).map_err(|misfit| refusals::misfit(&misfit, voice))?;
    Ok(say(&judge(settled), voice))
}

/// Tells something else of the same question, where the other measures have no part in it.
pub(crate) fn of_the_measure<T>(
    request: &CheckRequest,
    voice: &Voice,
    told: impl FnOnce(&Judged<'_>, &Voice) -> T,
) -> Result<T, Refusal> {
    let session = luck::only(&request.session, &request.question.measure);
    let settled = settle(&request.question, &session).map_err(|misfit| refusals::misfit(&misfit, voice))?;
    Ok(told(&judge(settled), voice))
}

/// What was judged, told.
#[must_use]
pub fn say(judged: &Judged<'_>, voice: &Voice) -> Report {
    let (session, question) = (judged.settled.session, judged.settled.question);
    let headline = judged.headline();
    let honest_lead = honest_lead(judged);
    let removals_to_flip = removals_to_flip(judged);
    let asked = judged.settled.asked();
    let seen = trust(judged, removals_to_flip);
    // Who is told to set one shot aside is not told to leave none out, whatever measure it is of.
    let in_doubt = seen.iter().any(|seen| matches!(seen, Seen::OddValue { .. }));
    Report {
        asked: Asked {
            baseline: question.baseline,
            candidate: headline.map(|j| j.candidate),
            measure: asked.measure,
            goal: asked.goal,
            margin: asked.margin.map(Margin::value),
            margin_is_default: question.margin.is_none(),
            stopping: question.stopping.clone(),
        },
        order: session.order,
        rounds: headline.map_or(0, |j| j.shared_rounds),
        answer: told(judged, voice),
        overlays: headline.map_or_else(Vec::new, |j| {
            let bet_is_made = judging::bet::is_made(judged);
            overlays(session, question, j, honest_lead.as_ref(), &seen, bet_is_made, voice)
        }),
        trust: seen
            .into_iter()
            .map(|seen| trust::say(session, &question.measure, seen, in_doubt, voice))
            .collect(),
        honest_lead,
        removals_to_flip,
        findings: judged.judgments.iter().map(|j| finding_beside(judged, j, voice)).collect(),
    }
}

/// A finding in its report: while a planned test has not decided, no measure says to choose.
fn finding_beside(judged: &Judged<'_>, judgment: &Judgment, voice: &Voice) -> Finding {
    let mut finding = finding(judged, judgment, voice);
    let undecided = judged.headline().filter(|asked| asked.decision.kind == DecisionKind::CannotTell);
    let to_go = undecided.and_then(|asked| asked.facts.rounds_to_go());
    let Judgment { baseline, candidate, measure, .. } = judgment;
    let in_doubt = has_value_in_doubt(judged.settled.session, measure, [*baseline, *candidate]);
    if let Some(rounds) = to_go.filter(|_| judgment.decision.is_inside_the_margin() && !in_doubt) {
        finding.words.next = text::case::go_on(voice, rounds as usize);
    }
    finding
}

/// The answer alone.
#[must_use]
pub fn told(judged: &Judged<'_>, voice: &Voice) -> Answer {
    let (session, question) = (judged.settled.session, judged.settled.question);
    judged
        .headline()
        .map_or_else(|| no_answer(session, question, voice), |judgment| answer_of(judged, judgment, voice))
}

/// One judgment as an answer to the question asked.
pub(crate) fn answer_of(judged: &Judged<'_>, judgment: &Judgment, voice: &Voice) -> Answer {
    answer(judged.settled.session, judgment, choice(judged, judgment).as_ref(), voice)
}

/// The same with what it leaves to choose by.
pub(crate) fn answer(
    session: &Session,
    judgment: &Judgment,
    choice: Option<&Choice>,
    voice: &Voice,
) -> Answer {
    Answer {
        candidate: Some(judgment.candidate),
        decision: judgment.decision,
        estimate: judgment.estimate.clone(),
        words: answer::words(session, judgment, choice, voice),
        facts: Some(judgment.facts.clone()),
    }
}

/// One judgment, told.
fn finding(judged: &Judged<'_>, judgment: &Judgment, voice: &Voice) -> Finding {
    let session = judged.settled.session;
    Finding {
        baseline: judgment.baseline,
        candidate: judgment.candidate,
        measure: judgment.measure.clone(),
        decision: judgment.decision,
        estimate: judgment.estimate.clone(),
        printed: judgment.estimate.as_ref().map(|estimate| {
            let subject = Subject::of(&judgment.measure, session, voice);
            printed(estimate, judgment.margin, &subject)
        }),
        both_ways: both_ways(&Case::of(session, judgment, voice)),
        words: answer::words(session, judgment, choice(judged, judgment).as_ref(), voice),
        numbers: judgment.pair.numbers.clone(),
        facts: judgment.facts.clone(),
    }
}

/// The answer when there is nobody to hold against the baseline.
fn no_answer(session: &Session, question: &Question, voice: &Voice) -> Answer {
    let nothing = session.shots.is_empty() && session.summaries.is_empty();
    let decision = Decision::cannot_answer(if nothing { Why::NoShots } else { Why::OneBuild });
    let words = answer::without_a_pair(session, &question.measure, &decision, voice);
    Answer { candidate: None, decision, estimate: None, words, facts: None }
}
