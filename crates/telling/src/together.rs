//! Several sessions of the same builds in words: the answer over all days, and how much days differ.

use crate::check;
use crate::ends::{level_text, lines};
use crate::format::Subject;
use crate::phrases::phrase_for;
use crate::refusals;
use crate::report::Answer;
use crate::words::sentences;
use judging::together::{CombinedDays, JudgedPair};
use judging::verdict::{Decision, DecisionKind, Direction};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::Margin;
use session::names::short_name;
use session::question::Question;
use session::refusal::Refusal;
use text::Voice;
use text::{case, overlay, together as say};

/// What [`together`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TogetherRequest {
    /// The sessions, in any order; builds and measures are those of the first.
    #[cfg_attr(feature = "typescript", ts(as = "Vec<session::wire::Session>"))]
    pub sessions: Vec<Session>,
    /// What is asked, with the builds of the first session.
    pub question: Question,
}

/// One session's part.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Day {
    /// Index of the session.
    pub session: usize,
    /// Its own answer on the pair; null when it does not hold both builds.
    pub answer: Option<Answer>,
    /// Share of the combined answer that it makes, 0 to 1.
    pub weight: f64,
}

/// A candidate over all sessions.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TogetherPair {
    /// Index of the candidate in the first session.
    pub candidate: usize,
    /// Every session.
    pub days: Vec<Day>,
    /// Null with fewer than two usable days.
    pub combined: Option<CombinedDays>,
    /// What was decided; null as `combined`.
    pub decision: Option<Decision>,
    /// The answer in one sentence.
    pub headline: String,
    /// How much days differ, and what that means.
    pub detail: String,
}

/// Combines sessions, for every candidate or for the one named.
///
/// # Errors
/// A [`Refusal`] with fewer than two or too many sessions, for scatter, and for everything that `check` refuses of
/// the first session.
pub fn together(request: &TogetherRequest, voice: &Voice) -> Result<Vec<TogetherPair>, Refusal> {
    let TogetherRequest { sessions, question } = request;
    let pairs = judging::together::together(sessions, question)
        .map_err(|refused| refusals::together(&refused, voice))?;
    Ok(pairs.into_iter().map(|pair| told(pair, request, voice)).collect())
}

fn told(pair: JudgedPair, request: &TogetherRequest, voice: &Voice) -> TogetherPair {
    let (headline, detail) = words(&pair, request, voice);
    let days = request.sessions.iter().zip(pair.days).enumerate().map(|(at, (session, day))| Day {
        session: at,
        answer: day.judgment.map(|judgment| check::answer(session, &judgment, day.choice.as_ref(), voice)),
        weight: day.weight,
    });
    TogetherPair {
        candidate: pair.candidate,
        days: days.collect(),
        combined: pair.combined,
        decision: pair.decision,
        headline,
        detail,
    }
}

fn words(pair: &JudgedPair, request: &TogetherRequest, voice: &Voice) -> (String, String) {
    let (Some(combined), Some(decision), Some(first)) =
        (&pair.combined, &pair.decision, request.sessions.first())
    else {
        return (say::too_few_sessions(voice, pair.usable), say::same_names(voice));
    };
    let measure = &request.question.measure;
    let subject = Subject::of(measure, first, voice);
    let name = short_name(first.builds.get(pair.candidate).map_or("", |b| b.name.as_str()));
    let phrase = phrase_for(measure, voice);
    let signed = |x: f64| match () {
        () if subject.prints_as_zero(x) => case::no_difference(voice),
        () => case::gap(voice, &subject.amount(x), if x > 0.0 { &phrase.more } else { &phrase.less }),
    };
    let decided = if decision.is_inside_the_margin() { &combined.same } else { &combined.different };
    let lines = lines(request.question.margin_on(measure).map(Margin::value));
    let end = |x: f64| match () {
        () if subject.is_nothing(x, &lines) => case::no_difference(voice),
        () => {
            let way = if x > 0.0 { &phrase.more } else { &phrase.less };
            case::gap(voice, &subject.end_amount(x, &lines), way)
        }
    };
    let (low, high, level) = (end(decided.low), end(decided.high), level_text(voice, decided.level));
    let days = combined.days;
    let headline = match decision.kind {
        DecisionKind::Different => {
            let higher = decision.direction == Some(Direction::Higher);
            let verb = if higher { &phrase.higher } else { &phrase.lower };
            say::different(voice, days, &name, verb, &low, &high, &level)
        }
        DecisionKind::Same => say::same(voice, days, &low, &high, &level),
        DecisionKind::CannotTell | DecisionKind::CannotAnswer => match days {
            _ if pair.wide_open => say::wide_open(voice, days, &signed(combined.value)),
            ..3 => say::too_few_days(voice, days, &low, &high, &level),
            _ => say::cannot_tell(voice, days, &low, &high, &level),
        },
    };
    // Two days do not show by how much days differ, and no sentence says that they do.
    let differ = if days < 3 {
        String::new()
    } else if subject.prints_as_zero(combined.between) {
        say::days_agree(voice)
    } else {
        say::days_differ(voice, &subject.amount(combined.between))
    };
    let few = match days {
        _ if pair.wide_open => say::two_days_wide_open(voice),
        ..3 => say::two_days(voice),
        3 => say::few_days(voice),
        _ => String::new(),
    };
    let order = if pair.nothing_allowed_for_order {
        overlay::order_could_move_unknown(voice, &subject.the())
    } else {
        String::new()
    };
    (headline, sentences(&[order, differ, few]))
}
