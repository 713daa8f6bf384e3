//! Several sessions of the same builds in words: the answer over all days, and how much days differ.

use crate::check;
use crate::ends::{level_text, lines};
use crate::format::Subject;
use crate::phrases::phrase_for;
use crate::refusals;
use crate::report::Answer;
use crate::words::sentences;
use judging::together::{CombinedDays, DaysLie, JudgedPair, OneMoreDay, OrderOverDays};
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
    /// The build that the one it holds was held against, where it counts through that; null elsewhere.
    pub through: Option<String>,
    /// Share of the combined answer that it makes, 0 to 1.
    pub weight: f64,
}

/// A candidate over all sessions.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TogetherPair {
    /// Index of the candidate in the first session; one that only later sessions hold counts on from there.
    pub candidate: usize,
    /// Its name.
    pub name: String,
    /// Every session.
    pub days: Vec<Day>,
    /// Null with fewer than two usable days.
    pub combined: Option<CombinedDays>,
    /// What was decided; null as `combined`.
    pub decision: Option<Decision>,
    /// The answer in one sentence.
    pub headline: String,
    /// What is assumed of days, how far apart these lie, and what one more would add.
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
        through: day.through,
        weight: day.weight,
    });
    TogetherPair {
        candidate: pair.candidate,
        name: pair.name,
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
    let name = short_name(&pair.name);
    let phrase = phrase_for(measure, voice);
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
        DecisionKind::CannotTell | DecisionKind::CannotAnswer if pair.says_next_to_nothing => {
            say::next_to_nothing(voice, days)
        }
        DecisionKind::CannotTell | DecisionKind::CannotAnswer => {
            say::cannot_tell(voice, days, &low, &high, &level)
        }
    };
    let order = if !pair.nothing_allowed_for_order {
        String::new()
    } else if combined.order_allowance > 0.0 {
        say::order_guessed(voice, &subject.the())
    } else {
        overlay::order_could_move_unknown(voice, &subject.the())
    };
    let control = pair
        .control
        .as_ref()
        .map_or_else(String::new, |control| say::through_control(voice, &short_name(control)));
    let detail = [
        order,
        control,
        say::assumed(voice, &subject.chosen(combined.assumed)),
        how_far_apart(combined, &subject, voice),
        room_for_order(combined, &subject, voice),
        one_more_day(combined, &subject, voice),
    ];
    (headline, sentences(&detail))
}

fn how_far_apart(days: &CombinedDays, subject: &Subject<'_>, voice: &Voice) -> String {
    match days.lie {
        DaysLie::NotSeen => String::new(),
        DaysLie::Near => say::days_agree(voice),
        DaysLie::Apart => say::days_differ(voice),
        DaysLie::FarApart => say::days_far_apart(voice, &subject.at_least_beside(days.between, days.assumed)),
    }
}

fn room_for_order(days: &CombinedDays, subject: &Subject<'_>, voice: &Voice) -> String {
    let size = subject.chosen(days.order_allowance);
    match days.order {
        OrderOverDays::NotNeeded => String::new(),
        OrderOverDays::SameEachTime => say::order_is_the_same(voice, &size),
        OrderOverDays::Changes => say::order_changes(voice, &size),
        OrderOverDays::NotKnown => say::order_is_not_known(voice, &size),
    }
}

fn one_more_day(days: &CombinedDays, subject: &Subject<'_>, voice: &Voice) -> String {
    let fine = subject.with_one_digit_more();
    match days.one_more {
        OneMoreDay::Narrows => {
            // Whole numbers that differ say it; else a digit more does.
            let [now, then] = [days.half_width, days.with_one_more];
            let by = if subject.amount(now) == subject.amount(then) { &fine } else { subject };
            say::one_more_day(voice, &by.amount(now), &by.amount(then))
        }
        OneMoreDay::HardlyNarrows => say::one_more_day_hardly(voice),
    }
}
