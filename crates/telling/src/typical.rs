//! The typical shot in words: what was decided of it, how it stands to the average, and how often each club was mishit.

use crate::case::Case;
use crate::check::{self, CheckRequest};
use crate::ends::{level_text, lines};
use crate::words::sentences;
use judging::Judged;
use judging::typical::{self, Beside, Mishits, MoreMishits, NoTypical, TypicalFacts};
use judging::verdict::{DecisionKind, Direction};
use serde::Serialize;
use session::digits::rounded;
use session::measure::Margin;
use session::refusal::Refusal;
use text::Voice;
use text::typical as say;

/// The typical shot, told.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Typical {
    /// The figures; null where nothing is said of it.
    pub facts: Option<TypicalFacts>,
    /// Why nothing is said of it; null where something is.
    pub why: Option<NoTypical>,
    /// Sentences.
    pub words: TypicalWords,
}

/// Sentences on the typical shot; empty where there is nothing to say.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TypicalWords {
    /// What was decided of it.
    pub headline: String,
    /// How it stands to the average, where they do not say the same.
    pub beside: String,
    /// How often each club was mishit.
    pub mishits: String,
    /// What else belongs to it, and why nothing is said.
    pub note: String,
}

/// The typical shot of the candidate that the answer speaks of.
///
/// # Errors
/// A [`Refusal`] as [`crate::check::check`] gives. Where nothing can be said that is no error: the words say why.
pub fn typical(request: &CheckRequest, voice: &Voice) -> Result<Typical, Refusal> {
    check::of_the_measure(request, voice, of_judged)
}

/// The typical shot of what was judged.
#[must_use]
pub(crate) fn of_judged(judged: &Judged<'_>, voice: &Voice) -> Typical {
    match (typical::typical(judged), judged.headline()) {
        (Ok(facts), Some(headline)) => {
            let words = words(&facts, &Case::of(judged.settled.session, headline, voice));
            Typical { facts: Some(facts), why: None, words }
        }
        (found, _) => {
            let why = found.err().unwrap_or(NoTypical::NothingCompared);
            let words = TypicalWords { note: nothing_said(why, voice), ..TypicalWords::default() };
            Typical { facts: None, why: Some(why), words }
        }
    }
}

/// One line for whoever gets the answer; empty where the typical shot says what the average says.
#[must_use]
pub(crate) fn line(told: &Typical) -> String {
    let Some(facts) = &told.facts else { return String::new() };
    let TypicalWords { headline, beside, .. } = &told.words;
    match facts.beside {
        // What is said of the average leans on what the typical shot shows.
        Beside::OnlyTypical | Beside::Opposite => sentences(&[headline.clone(), beside.clone()]),
        _ => beside.clone(),
    }
}

fn words(facts: &TypicalFacts, case: &Case<'_>) -> TypicalWords {
    let voice = case.voice;
    let beside = match facts.beside {
        Beside::Agree => String::new(),
        Beside::OnlyTypical => say::only_typical(voice),
        Beside::OnlyAverage => {
            let same = facts.decision.kind == DecisionKind::Same;
            say::only_average(voice, same, facts.in_the_bad_shots)
        }
        Beside::SameGapLessSurely => say::same_gap_less_surely(voice),
        Beside::Opposite => say::opposite(voice),
        Beside::OneIsTheSame => say::one_is_the_same(voice),
    };
    let leader = match facts.longer_with_more_mishits() {
        Some(MoreMishits::Candidate) => Some(&case.candidate),
        Some(MoreMishits::Baseline) => Some(&case.baseline),
        Some(MoreMishits::Alike) | None => None,
    };
    let leads = leader.map_or_else(String::new, |club| {
        let more = facts.mishits.map_or(0, |mishits| mishits.more_by());
        say::more_and_more_bad(voice, club, more)
    });
    TypicalWords {
        headline: headline(facts, case),
        beside: sentences(&[leads, beside]),
        mishits: facts.mishits.as_ref().map_or_else(String::new, |mishits| counted(mishits, case)),
        note: say::beside_the_answer(voice),
    }
}

fn headline(facts: &TypicalFacts, case: &Case<'_>) -> String {
    let (voice, interval) = (case.voice, &facts.estimate.decided_by);
    let level = level_text(voice, interval.level);
    let margin = case.judgment.margin.map(Margin::value);
    match facts.decision.kind {
        DecisionKind::Different => {
            let does = case.does(facts.decision.direction.unwrap_or(Direction::Higher));
            let span = case.subject.span(interval.low, interval.high, margin);
            if case.a_guess_is_allowed_for_order() {
                return say::differs_in_these_shots(voice, &does, &span, &level);
            }
            say::differs(voice, &does, case.order_is_allowed_for(), &span, &level)
        }
        DecisionKind::Same => {
            let widest = interval.low.abs().max(interval.high.abs());
            say::same(voice, &case.subject.end_amount(widest, &lines(margin)), &level)
        }
        DecisionKind::CannotTell | DecisionKind::CannotAnswer if facts.says_next_to_nothing => {
            say::next_to_nothing(voice)
        }
        DecisionKind::CannotTell | DecisionKind::CannotAnswer => {
            let (low, high) = (case.end(interval.low), case.end(interval.high));
            if case.a_guess_is_allowed_for_order() {
                let guess = facts.estimate.order_allowance > 0.0;
                say::cannot_tell_order(voice, &case.subject.name, guess, &low, &high, &level)
            } else {
                say::cannot_tell(voice, &low, &high, &level)
            }
        }
    }
}

fn counted(mishits: &Mishits, case: &Case<'_>) -> String {
    let of_100 = |share: f64| rounded(100.0 * share, 0);
    let (one, other) = (&mishits.candidate, &mishits.baseline);
    let told = say::mishits(
        case.voice,
        &case.subject.amount(mishits.below),
        &case.candidate,
        &one.found.to_string(),
        &one.of.to_string(),
        &of_100(one.share.low),
        &of_100(one.share.high),
        &case.baseline,
        &other.found.to_string(),
        &other.of.to_string(),
        &of_100(other.share.low),
        &of_100(other.share.high),
    );
    let luck = match (mishits.more, mishits.told_apart) {
        (MoreMishits::Alike, _) => String::new(),
        (_, true) => say::told_apart(case.voice),
        (_, false) => say::may_be_luck(case.voice),
    };
    sentences(&[told, luck])
}

fn nothing_said(why: NoTypical, voice: &Voice) -> String {
    match why {
        NoTypical::NothingCompared => say::nothing_compared(voice),
        NoTypical::Scatter => say::no_scatter(voice),
        NoTypical::Averages => say::no_averages(voice),
        NoTypical::ValueInDoubt => say::no_value_in_doubt(voice),
        NoTypical::CannotBeFitted => say::cannot_be_fitted(voice),
    }
}
