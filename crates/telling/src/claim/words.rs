//! A claim and its retest in plain words. Reads what was decided; accuses nobody.

use crate::bet::chance;
use crate::case::Case;
use crate::ends::level_text;
use crate::format::{Subject, chance_of_fittings, number};
use crate::phrases::phrase_for;
use crate::report::Answer;
use crate::words::sentences;
use judging::Judgment;
use judging::claim::{ClaimBet, ClaimFacts, ClaimKind, ClaimOpen, Claimed, toward};
use judging::facts::HowHit;
use judging::interval::Interval;
use judging::verdict::{DecisionKind, Matters};
use serde::Serialize;
use session::Session;
use session::measure::{Margin, MeasureId};
use session::names::short_name;
use text::Voice;
use text::{case, claim as say};

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

/// What the sentences are made of.
pub(super) struct Told<'a> {
    pub(super) said: &'a Claimed,
    pub(super) session: &'a Session,
    pub(super) measure: &'a MeasureId,
    pub(super) facts: &'a ClaimFacts,
    pub(super) retest: Option<&'a Judgment>,
    /// The retest's own answer.
    pub(super) answer: Option<&'a Answer>,
    pub(super) voice: &'a Voice,
}

pub(super) fn words(told: &Told<'_>) -> ClaimWords {
    let subject = Subject::of(told.measure, told.session, told.voice);
    ClaimWords {
        headline: headline(told, &subject),
        detail: detail(told, &subject),
        luck: luck(told, &subject),
        price: price(told, &subject),
        next: next(told),
    }
}

fn headline(told: &Told<'_>, subject: &Subject<'_>) -> String {
    let Told { facts, voice, .. } = *told;
    let claimed = case::gap(voice, &subject.chosen(facts.claimed), &promised_way(told));
    if facts.open == Some(ClaimOpen::ValueInDoubt) {
        return say::value_in_doubt(voice, &claimed);
    }
    if facts.open == Some(ClaimOpen::NextToNothing) {
        return say::next_to_nothing(voice, &claimed);
    }
    // As the claim counts it: positive is what was promised.
    let Some(Interval { low, high, level }) = facts.retest.map(|retest| toward(&retest, facts.claimed))
    else {
        return say::no_retest(voice, &claimed, facts.is_hit_again);
    };
    let level = level_text(voice, level);
    let at_most = end(told, subject, high);
    let span = if low > 0.0 {
        case::gap(voice, &subject.span_beside(low, high, &lines_toward(told)), &promised_way(told))
    } else {
        say::anything_between(voice, &end(told, subject, low), &at_most)
    };
    match facts.kind {
        _ if facts.open == Some(ClaimOpen::OrderUnknown) => {
            let estimate = told.retest.and_then(|judgment| judgment.estimate.as_ref());
            let guess = estimate.is_some_and(|estimate| estimate.order_allowance > 0.0);
            say::order_unknown(voice, &subject.name, &claimed, guess, &span, &level)
        }
        ClaimKind::AtLeast => say::at_least(voice, &claimed, &span, &level),
        ClaimKind::Supported => say::supported(voice, &claimed, &span, &level),
        ClaimKind::TooSmall => {
            let margin = told.retest.and_then(|judgment| judgment.margin).map_or(0.0, Margin::value);
            say::promise_too_small(voice, &claimed, &subject.chosen(margin), &span, &level)
        }
        ClaimKind::Contradicted if high <= 0.0 => say::no_gain_at_all(voice, &claimed, &level),
        ClaimKind::Contradicted => say::contradicted(voice, &claimed, &at_most, &level),
        ClaimKind::NotSettled | ClaimKind::NoRetest => say::not_settled(voice, &claimed, &span, &level),
    }
}

/// An end of the retest, counted as the claim counts it, on its own side of the claim and of no difference.
fn end(told: &Told<'_>, subject: &Subject<'_>, toward_claim: f64) -> String {
    let size = if told.facts.claimed > 0.0 { toward_claim } else { -toward_claim };
    let sign = if told.facts.claimed > 0.0 { 1.0 } else { -1.0 };
    let lines = lines_toward(told).map(|line| sign * line);
    if subject.is_nothing(size, &lines) {
        return case::no_difference(told.voice);
    }
    let phrase = phrase_for(told.measure, told.voice);
    let way = if size > 0.0 { &phrase.more } else { &phrase.less };
    case::gap(told.voice, &subject.end_amount(size, &lines), way)
}

/// What an end must not be read as crossing, counted as the claim counts it: no difference, the claim, and the margin to
/// both sides.
fn lines_toward(told: &Told<'_>) -> [f64; 4] {
    let claimed = told.facts.claimed.abs();
    let margin = told.retest.and_then(|judgment| judgment.margin).map_or(claimed, Margin::value);
    [0.0, claimed, margin, -margin]
}

/// `more` or `less`, the way the claim goes.
fn promised_way(told: &Told<'_>) -> String {
    let phrase = phrase_for(told.measure, told.voice);
    if told.facts.claimed > 0.0 { phrase.more } else { phrase.less }
}

/// A value of the retest, counted as the claim counts it.
fn signed(told: &Told<'_>, subject: &Subject<'_>, toward_claim: f64) -> String {
    let size = if told.facts.claimed > 0.0 { toward_claim } else { -toward_claim };
    let phrase = phrase_for(told.measure, told.voice);
    if subject.prints_as_zero(size) {
        return case::no_difference(told.voice);
    }
    case::gap(told.voice, &subject.amount(size), if size > 0.0 { &phrase.more } else { &phrase.less })
}

fn detail(told: &Told<'_>, subject: &Subject<'_>) -> String {
    let in_doubt = told.facts.open == Some(ClaimOpen::ValueInDoubt);
    let Some(judgment) = told.retest.filter(|_| !in_doubt) else { return String::new() };
    let numbers = &judgment.pair.numbers;
    let builds = &told.session.builds;
    let name = |build: usize| builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let pooled = numbers.candidate.zip(numbers.baseline).map(|(candidate, baseline)| {
        say::averages(
            told.voice,
            &name(judgment.candidate),
            &subject.value(candidate.mean),
            &candidate.n.to_string(),
            &name(judgment.baseline),
            &subject.value(baseline.mean),
            &baseline.n.to_string(),
        )
    });
    // Averages are those of what was compared.
    let averages = match judgment.pair.compared {
        Some(_) => Some(Case::of(told.session, judgment, told.voice).averages()),
        None => pooled,
    };
    let good_faith = match (told.facts.kind, told.facts.luck_explains) {
        (ClaimKind::Contradicted, Some(true)) => say::luck_can_mislead_that_far(told.voice),
        (ClaimKind::Contradicted, Some(false)) => say::luck_rarely_misleads_that_far(told.voice),
        _ => String::new(),
    };
    sentences(&[averages.unwrap_or_default(), good_faith])
}

fn luck(told: &Told<'_>, subject: &Subject<'_>) -> String {
    let (voice, said) = (told.voice, told.said);
    let Some(luck) = &told.facts.luck else {
        let is_said = [said.shots_before, said.shots_after].iter().flatten().any(|shots| *shots > 0);
        return if is_said { String::new() } else { say::shots_not_said(voice) };
    };
    let tried = said.tried.unwrap_or(1).max(1);
    let with_each = said.shots_after.or(said.shots_before).unwrap_or(0) as usize;
    let usual = say::luck_alone(voice, with_each, &subject.amount(luck.usual_gap));
    let picked = if tried > 1 {
        say::best_of(voice, &tried.to_string(), &subject.amount(luck.best_of))
    } else {
        String::new()
    };
    let as_much = say::equal_clubs_would_show(voice, &chance_of_fittings(voice, luck.chance));
    let bet = luck.bet.as_ref().map_or_else(String::new, |bet| pulled(told, subject, bet));
    sentences(&[usual, picked, as_much, bet])
}

/// What to believe of the claim alone.
fn pulled(told: &Told<'_>, subject: &Subject<'_>, bet: &ClaimBet) -> String {
    let voice = told.voice;
    let gap = signed(told, subject, if told.facts.claimed < 0.0 { -bet.gap.value } else { bet.gap.value });
    let gain = chance(voice, bet.at_all.of_ten);
    match bet.margin.zip(bet.by_margin) {
        Some((margin, by_margin)) => {
            let of_margin = chance(voice, by_margin.of_ten);
            say::bet_with_margin(voice, &gap, &gain, &subject.chosen(margin), &of_margin)
        }
        None => say::bet(voice, &gap, &gain),
    }
}

fn price(told: &Told<'_>, subject: &Subject<'_>) -> String {
    let Some(price) = &told.facts.price else { return String::new() };
    let voice = told.voice;
    let currency = told.said.currency.as_deref();
    let currency = currency.map_or(String::new(), |text| format!("\u{a0}{}", short_name(text)));
    let money = |x: f64| format!("{}{currency}", number(voice, x, if x < 10.0 { 2 } else { 0 }));
    let (shown, scale) = subject.shown();
    let unit = match shown {
        "yd" => say::yard(voice),
        "m" => say::meter(voice),
        "°" => say::degree(voice),
        "" => say::unit(voice),
        other => other.to_owned(),
    };
    match (price.least, price.most) {
        (None, _) => say::no_gain_to_pay_for(voice),
        (Some(least), None) => say::costs_at_least(voice, &unit, &money(least / scale)),
        (Some(least), Some(most)) => {
            say::costs_between(voice, &unit, &money(least / scale), &money(most / scale))
        }
    }
}

/// What a retest lacks that more shots of the same kind do not give.
fn not_by_more_shots(told: &Told<'_>, judgment: &Judgment) -> Option<String> {
    let case = Case::of(told.session, judgment, told.voice);
    match judgment.facts.only_whole_laps {
        Some(few) => Some(case::shorter_turns(told.voice, &few.longest_turn.to_string())),
        None if case.is_half_unread() => Some(case::have_it_measured(told.voice, &case.subject.the())),
        None => None,
    }
}

/// Where the answer to the same shots has told the clubs apart, or as the same, no number of shots tells them apart; what is open of a size
/// that may matter is open of the claim too, and calls for the same step.
fn not_settled_next(told: &Told<'_>) -> String {
    let decision = told.retest.map(|judgment| judgment.decision);
    let own =
        told.answer.filter(|_| decision.is_some_and(|decision| decision.matters == Some(Matters::Maybe)));
    let is_told = decision.is_some_and(|decision| decision.kind != DecisionKind::CannotTell);
    own.map_or_else(|| say::next_not_settled(told.voice, is_told), |answer| answer.words.next.clone())
}

fn next(told: &Told<'_>) -> String {
    let voice = told.voice;
    let measure = || Subject::of(told.measure, told.session, voice).name;
    let mixed_up = told.retest.filter(|judgment| judgment.facts.order_is_mixed_up());
    let order = mixed_up.map(|judgment| judgment.facts.order);
    match told.facts.kind {
        _ if told.facts.open == Some(ClaimOpen::ValueInDoubt) => say::next_value_in_doubt(voice),
        _ if told.facts.open == Some(ClaimOpen::OrderUnknown) => match order {
            Some(HowHit::InTurn | HowHit::InTurnNotCompared) => say::next_read_every_shot(voice, &measure()),
            _ => say::next_hit_in_turn(voice),
        },
        ClaimKind::Supported | ClaimKind::AtLeast => match order {
            None => say::next_supported(voice),
            Some(HowHit::OneAfterTheOther) => say::next_supported_not_in_turn(voice),
            Some(HowHit::NotKnown) => say::next_supported_order_not_known(voice),
            Some(HowHit::InTurn | HowHit::InTurnNotCompared) => {
                say::next_supported_not_compared(voice, &measure())
            }
        },
        ClaimKind::Contradicted => match told.retest.map(|judgment| judgment.facts.order) {
            Some(HowHit::InTurn | HowHit::InTurnNotCompared) => say::next_contradicted_in_turn(voice),
            Some(HowHit::OneAfterTheOther) => say::next_contradicted(voice),
            Some(HowHit::NotKnown) | None => say::next_contradicted_order_not_known(voice),
        },
        ClaimKind::TooSmall => say::next_too_small(voice),
        ClaimKind::NotSettled => told
            .retest
            .and_then(|judgment| not_by_more_shots(told, judgment))
            .unwrap_or_else(|| not_settled_next(told)),
        ClaimKind::NoRetest => say::next_no_retest(voice),
    }
}
