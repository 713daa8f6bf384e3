//! A claim and its retest in plain words. Reads what was decided; accuses nobody.

use super::{ClaimKind, ClaimLuck, Claimed, Price, toward};
use crate::analysis::Range;
use crate::judge::Judgment;
use crate::question::Question;
use crate::session::Session;
use crate::words::{Subject, chance, number, phrase_for, sentences, short_name, shots};
use serde::Serialize;

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
        next: next(facts.kind).into(),
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
        return format!("The claim is {claimed}. Nothing has been hit again yet to hold against it.");
    };
    let high = signed(facts, subject, range.high);
    let span = if range.low > 0.0 && !subject.prints_as_zero(range.low) {
        format!("{} {}", subject.span(range.low, range.high, None), promised_way(facts))
    } else {
        format!("anything between {} and {high}", signed(facts, subject, range.low))
    };
    match facts.kind {
        ClaimKind::Supported => {
            format!("The claim holds up: {claimed} were promised, the retest shows {span}.")
        }
        ClaimKind::Contradicted if range.high <= 0.0 => {
            format!("The retest contradicts the claim: {claimed} were promised, it shows no gain at all.")
        }
        ClaimKind::Contradicted => {
            format!("The retest contradicts the claim: {claimed} were promised, it allows at most {high}.")
        }
        ClaimKind::NotSettled | ClaimKind::NoRetest => {
            format!("Not settled: {claimed} were promised, the retest allows {span}.")
        }
    }
}

fn gain_as_said(facts: &Facts, subject: &Subject) -> String {
    format!("{} {}", subject.chosen(facts.claimed), promised_way(facts))
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
        return "no difference".into();
    }
    format!("{} {}", subject.amount(size), if size > 0.0 { phrase.more } else { phrase.less })
}

fn detail(facts: &Facts, subject: &Subject) -> String {
    let Some(judgment) = facts.judgment else { return String::new() };
    let numbers = &judgment.pair.numbers;
    let name =
        |build: usize| facts.session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let averages = numbers.candidate.zip(numbers.baseline).map(|(candidate, baseline)| {
        format!(
            "In the retest {} averaged {} over {} shots, {} {} over {}.",
            name(judgment.candidate),
            subject.value(candidate.mean),
            candidate.n,
            name(judgment.baseline),
            subject.value(baseline.mean),
            baseline.n
        )
    });
    let good_faith = match (facts.kind, facts.luck_explains) {
        (ClaimKind::Contradicted, Some(true)) => {
            "The claim need not have been made up: so few shots, hit one club after the other, can mislead that far."
        }
        (ClaimKind::Contradicted, Some(false)) => {
            "Luck and warming up alone rarely mislead that far. Another ball, another day, other conditions, or shots \
             that were left out could."
        }
        _ => "",
    };
    sentences(&[averages.unwrap_or_default(), good_faith.to_owned()])
}

fn luck(facts: &Facts, subject: &Subject) -> String {
    let Some(luck) = facts.luck else {
        return "How many shots the claim rested on was not said, so nobody can tell how much of it is luck."
            .into();
    };
    let tried = facts.said.tried.unwrap_or(1).max(1);
    let usual = format!(
        "With {} with each, luck alone sets two equal clubs {} apart on average, one way or the other.",
        shots(facts.said.shots_after.or(facts.said.shots_before).unwrap_or(0) as usize),
        subject.amount(luck.usual_gap)
    );
    let picked = if tried > 1 {
        format!("The best of {tried} equal clubs would lead by {} on average.", subject.amount(luck.best_of))
    } else {
        String::new()
    };
    let as_much = format!(
        "Equal clubs would show what was claimed, or more, in {}.",
        chance(luck.chance).replace("sessions", "fittings")
    );
    let honest =
        format!("From such a claim alone, expect about {}.", signed(facts, subject, luck.honest.abs()));
    sentences(&[usual, picked, as_much, honest])
}

fn price(facts: &Facts, subject: &Subject) -> String {
    let Some(price) = facts.price else { return String::new() };
    let currency =
        facts.said.currency.as_deref().map_or(String::new(), |text| format!("\u{a0}{}", short_name(text)));
    let money = |x: f64| format!("{}{currency}", number(x, if x < 10.0 { 2 } else { 0 }));
    let unit = match subject.unit() {
        "yd" => "yard".to_owned(),
        "" => "unit".to_owned(),
        other => other.to_owned(),
    };
    match (price.least, price.most) {
        (None, _) => "At this price the retest shows no gain to pay for.".into(),
        (Some(least), None) => format!(
            "Each {unit} costs at least {}; there is no upper limit, since the gain may be nothing.",
            money(least)
        ),
        (Some(least), Some(most)) => {
            format!("Each {unit} costs between {} and {}.", money(least), money(most))
        }
    }
}

fn next(kind: ClaimKind) -> &'static str {
    match kind {
        ClaimKind::Supported => "What it is worth to you is yours to say.",
        ClaimKind::Contradicted => "Ask to hit both clubs in turn, in rounds of three, before you decide.",
        ClaimKind::NotSettled => "More rounds in turn would settle it: plan a fair test.",
        ClaimKind::NoRetest => "Plan a fair test, hit both clubs in turn, and come back with the shots.",
    }
}
