//! A session and a question in, a report out.

use judging::analysis::levels::MOST_PLANNED_ROUNDS;
use crate::fragile::removals_to_flip;
use judging::honest_lead::honest_lead;
use crate::judge::{self, Judgment};
use session::measure;
use session::question::{Goal, Question, Stopping};
use crate::report::{Answer, Asked, Finding, Report};
use session::Session;
use crate::trust::trust;
use judging::verdict::{Decision, Why};
use crate::words;
use serde::{Deserialize, Serialize};
use text::voiced::check as say;

/// More builds than this are no fitting session; each would need its own row of findings.
pub const MOST_BUILDS: usize = 50;

/// What [`check`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct CheckRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
}

/// Why a request cannot be worked on at all.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Refusal {
    /// Stable name of the kind, `snake_case`.
    pub kind: String,
    /// Path into the request, such as `question.baseline`.
    pub place: String,
    /// What is wrong, in plain words.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

impl Refusal {
    pub(crate) fn new(kind: &str, place: &str, message: &str, remedy: &str) -> Self {
        Self { kind: kind.into(), place: place.into(), message: message.into(), remedy: remedy.into() }
    }
}

/// Answers the question from the session's shots.
///
/// # Errors
/// A [`Refusal`] when the question names a build that is not there or a margin that is no number.
/// A session that holds too little is no error: the report says what is missing.
pub fn check(request: &CheckRequest) -> Result<Report, Refusal> {
    let CheckRequest { session, question } = request;
    refuse_unusable(session, question)?;
    let judgments = judge::judge(session, question);
    let headline = match question.candidate {
        Some(chosen) => judgments.iter().find(|j| j.candidate == chosen && j.measure == question.measure),
        None => judge::leading(&judgments, &question.measure),
    };
    let honest_lead = headline.and_then(|j| honest_lead(&judgments, j));
    let removals_to_flip = headline.and_then(|j| removals_to_flip(session, j));
    Ok(Report {
        asked: Asked {
            baseline: question.baseline,
            candidate: headline.map(|j| j.candidate),
            measure: question.measure.clone(),
            goal: judge::goal(question, &question.measure),
            margin: judge::margin(question, &question.measure),
            margin_is_default: question.margin.is_none(),
            stopping: question.stopping.clone(),
        },
        order: session.order,
        rounds: headline.map_or(0, |j| j.shared_rounds),
        answer: headline.map_or_else(|| no_answer(session, question), |j| answer(session, j)),
        overlays: headline
            .map_or_else(Vec::new, |j| words::overlays(session, question, j, honest_lead.as_ref())),
        trust: headline.map_or_else(Vec::new, |j| trust(session, question, j.candidate, removals_to_flip)),
        honest_lead,
        removals_to_flip,
        findings: judgments.iter().map(|j| finding(session, j)).collect(),
    })
}

fn answer(session: &Session, judgment: &Judgment) -> Answer {
    Answer {
        candidate: Some(judgment.candidate),
        decision: judgment.decision,
        estimate: judgment.estimate.clone(),
        words: words::words(session, judgment),
    }
}

fn finding(session: &Session, judgment: &Judgment) -> Finding {
    Finding {
        baseline: judgment.baseline,
        candidate: judgment.candidate,
        measure: judgment.measure.clone(),
        decision: judgment.decision,
        estimate: judgment.estimate.clone(),
        words: words::words(session, judgment),
        numbers: judgment.pair.numbers.clone(),
    }
}

/// The answer when there is nobody to hold against the baseline.
fn no_answer(session: &Session, question: &Question) -> Answer {
    let nothing = session.shots.is_empty() && session.summaries.is_empty();
    let decision = Decision::cannot_answer(if nothing { Why::NoShots } else { Why::OneBuild });
    let words = words::without_a_pair(session, &question.measure, &decision);
    Answer { candidate: None, decision, estimate: None, words }
}

pub(crate) fn refuse_unusable(session: &Session, question: &Question) -> Result<(), Refusal> {
    let builds = session.builds.len();
    let refusal = |kind: &str, place: &str, message: String, remedy: String| {
        Err(Refusal { kind: kind.into(), place: place.into(), message, remedy })
    };
    if builds > MOST_BUILDS {
        return refusal(
            "too_many_builds",
            "session.builds",
            say::too_many_builds(voice, &builds.to_string(), &MOST_BUILDS.to_string()),
            say::too_many_builds_remedy(voice),
        );
    }
    for (place, build) in
        [("question.baseline", Some(question.baseline)), ("question.candidate", question.candidate)]
    {
        if build.is_some_and(|b| b >= builds && builds > 0) {
            return refusal(
                "no_such_build",
                place,
                say::no_such_build(voice, &build.unwrap_or(0).to_string(), &builds.to_string()),
                say::no_such_build_remedy(voice),
            );
        }
    }
    if question.candidate == Some(question.baseline) && builds > 0 {
        return refusal(
            "same_build_twice",
            "question.candidate",
            say::same_build_twice(voice),
            say::same_build_twice_remedy(voice),
        );
    }
    if measure::known(&question.measure).is_none() && session.measure_index(&question.measure).is_none() {
        return refusal(
            "no_such_measure",
            "question.measure",
            say::no_such_measure(voice, &words::short_name(&question.measure.0)),
            say::no_such_measure_remedy(voice),
        );
    }
    for (place, margin) in
        [("question.margin", question.margin), ("question.first_margin", question.first_margin)]
    {
        if margin.is_some_and(|m| !m.is_finite() || m < 0.0) {
            return refusal("not_a_margin", place, say::not_a_margin(voice), say::not_a_margin_remedy(voice));
        }
        if question.goal == Some(Goal::Tighter) && margin.is_some_and(|m| m <= 1.0) {
            return refusal("not_a_ratio", place, say::not_a_ratio(voice), say::not_a_ratio_remedy(voice));
        }
    }
    match &question.stopping {
        Stopping::Planned { planned_rounds, .. } if !(2..=MOST_PLANNED_ROUNDS).contains(planned_rounds) => {
            refusal(
                "not_a_plan",
                "question.stopping.planned_rounds",
                say::not_a_plan(voice, &MOST_PLANNED_ROUNDS.to_string(), &planned_rounds.to_string()),
                say::not_a_plan_remedy(voice),
            )
        }
        _ => Ok(()),
    }
}
