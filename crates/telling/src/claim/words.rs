//! A claim and its retest in plain words. Reads what was decided; accuses nobody.

use super::{ClaimKind, ClaimLuck, Claimed, Price, toward};
use crate::analysis::Range;
use crate::judge::Judgment;
use crate::question::Question;
use crate::session::Session;
use crate::words::{Subject, chance_of_fittings, number, phrase_for, sentences, short_name};
use serde::Serialize;
use text::claim as say;

/// Sentences about a claim.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ClaimWords {
    /// The outcome in one sentence.
    pub headline: String,
    /// What the retest showed.
    pub detail: String,
    /// What luck and picking would have produced.
    pub luck: String,
    /// What each unit costs; empty without a price.
    pub price: String,
    /// What to do.
    pub next: String,
}

pub(super) struct Facts<'a> {
    pub(super) said: &'a Claimed,
    pub(super) session: &'a Session,
    pub(super) question: &'a Question,
    pub(super) kind: ClaimKind,
    pub(super) claimed: f64,
    pub(super) judgment: Option<&'a Judgment>,
    pub(super) luck: Option<&'a ClaimLuck>,
    pub(super) luck_explains: Option<bool>,
    pub(super) price: Option<&'a Price>,
}

pub(super) fn words(facts: &Facts) -> ClaimWords {
    let subject = Subject::of(&facts.question.measure, facts.session);
    ClaimWords {
        headline: headline(facts, &subject),
        detail: detail(facts, &subject),
        luck: luck(facts, &subject),
        price: price(facts, &subject),
        next: next(facts.kind),
    }
}

/// The retest's difference as the claim counts it: positive is what was promised.
fn retest(facts: &Facts) -> Option<Range> {
    let judgment = facts.judgment?;
    Some(toward(&judgment.comparison()?.range(judgment.levels.different), facts.claimed))
}

fn headline(facts: &Facts, subject: &Subject) -> String {
    let claimed = gain_as_said(facts, subject);
    let Some(range) = retest(facts) else {
        return say::no_retest(&claimed);
    };
    let high = signed(facts, subject, range.high);
    let span = if range.low > 0.0 && !subject.prints_as_zero(range.low) {
        text::case::gap(&subject.span(range.low, range.high, None), &promised_way(facts))
    } else {
        say::anything_between(&signed(facts, subject, range.low), &high)
    };
    match facts.kind {
        ClaimKind::Supported => say::supported(&claimed, &span),
        ClaimKind::Contradicted if range.high <= 0.0 => say::no_gain_at_all(&claimed),
        ClaimKind::Contradicted => say::contradicted(&claimed, &high),
        ClaimKind::NotSettled | ClaimKind::NoRetest => say::not_settled(&claimed, &span),
    }
}

fn gain_as_said(facts: &Facts, subject: &Subject) -> String {
    text::case::gap(&subject.chosen(facts.claimed), &promised_way(facts))
}

/// `more` or `less`, the way the claim goes.
fn promised_way(facts: &Facts) -> String {
    let phrase = phrase_for(&facts.question.measure);
    if facts.claimed > 0.0 { phrase.more } else { phrase.less }
}

/// A value of the retest, counted as the claim counts it.
fn signed(facts: &Facts, subject: &Subject, toward_claim: f64) -> String {
    let size = if facts.claimed > 0.0 { toward_claim } else { -toward_claim };
    let phrase = phrase_for(&facts.question.measure);
    if subject.prints_as_zero(size) {
        return text::case::no_difference();
    }
    text::case::gap(&subject.amount(size), if size > 0.0 { &phrase.more } else { &phrase.less })
}

fn detail(facts: &Facts, subject: &Subject) -> String {
    let Some(judgment) = facts.judgment else { return String::new() };
    let numbers = &judgment.pair.numbers;
    let name =
        |build: usize| facts.session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let averages = numbers.candidate.zip(numbers.baseline).map(|(candidate, baseline)| {
        say::averages(
            &name(judgment.candidate),
            &subject.value(candidate.mean),
            &candidate.n.to_string(),
            &name(judgment.baseline),
            &subject.value(baseline.mean),
            &baseline.n.to_string(),
        )
    });
    let good_faith = match (facts.kind, facts.luck_explains) {
        (ClaimKind::Contradicted, Some(true)) => say::luck_can_mislead_that_far(),
        (ClaimKind::Contradicted, Some(false)) => say::luck_rarely_misleads_that_far(),
        _ => String::new(),
    };
    sentences(&[averages.unwrap_or_default(), good_faith])
}

fn luck(facts: &Facts, subject: &Subject) -> String {
    let Some(luck) = facts.luck else {
        return say::shots_not_said();
    };
    let tried = facts.said.tried.unwrap_or(1).max(1);
    let with_each = facts.said.shots_after.or(facts.said.shots_before).unwrap_or(0) as usize;
    let usual = say::luck_alone(with_each, &subject.amount(luck.usual_gap));
    let picked = if tried > 1 {
        say::best_of(&tried.to_string(), &subject.amount(luck.best_of))
    } else {
        String::new()
    };
    let as_much = say::equal_clubs_would_show(&chance_of_fittings(luck.chance));
    let honest = say::honest(&signed(facts, subject, luck.honest.abs()));
    sentences(&[usual, picked, as_much, honest])
}

fn price(facts: &Facts, subject: &Subject) -> String {
    let Some(price) = facts.price else { return String::new() };
    let currency =
        facts.said.currency.as_deref().map_or(String::new(), |text| format!("\u{a0}{}", short_name(text)));
    let money = |x: f64| format!("{}{currency}", number(x, if x < 10.0 { 2 } else { 0 }));
    let (shown, scale) = subject.shown();
    let unit = match shown {
        "yd" => say::yard(),
        "m" => say::meter(),
        "" => say::unit(),
        other => other.to_owned(),
    };
    match (price.least, price.most) {
        (None, _) => say::no_gain_to_pay_for(),
        (Some(least), None) => say::costs_at_least(&unit, &money(least / scale)),
        (Some(least), Some(most)) => say::costs_between(&unit, &money(least), &money(most / scale)),
    }
}

fn next(kind: ClaimKind) -> String {
    match kind {
        ClaimKind::Supported => say::next_supported(),
        ClaimKind::Contradicted => say::next_contradicted(),
        ClaimKind::NotSettled => say::next_not_settled(),
        ClaimKind::NoRetest => say::next_no_retest(),
    }
}
