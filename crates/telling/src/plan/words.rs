//! A plan in plain words. Reads the plan's numbers; decides nothing.

use super::request::{PlanSpread, Settled, SpreadFrom};
use crate::question::Goal;
use crate::session::Session;
use crate::words::{Subject, sentences, short_name};
use serde::Serialize;
use text::plan as say;

/// Sentences about a plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanWords {
    /// What the test is, in one sentence.
    pub headline: String,
    /// What it will show.
    pub power: String,
    /// How often equal builds will be called the same.
    pub same: String,
    /// Where the spread comes from, and what it means.
    pub spread: String,
    /// How the builds follow each other, and why.
    pub order: String,
    /// When the answer may be looked at, and what an early look costs.
    pub looks: String,
    /// For the same club twice: what to expect; empty otherwise.
    pub same_club: String,
}

pub(super) fn words(
    settled: &Settled,
    seen: &[(f64, f64)],
    same: Option<f64>,
    balls: u32,
    minutes: u32,
) -> PlanWords {
    let subject = Subject::of(&settled.measure, &Session::default());
    PlanWords {
        headline: headline(settled, balls, minutes),
        power: power(settled, &subject, seen),
        same: same.map_or_else(String::new, |chance| same_words(settled, &subject, chance)),
        spread: spread(settled, &subject),
        order: order(settled),
        looks: looks(settled),
        same_club: same_club(settled, &subject),
    }
}

fn headline(settled: &Settled, balls: u32, minutes: u32) -> String {
    say::headline(
        &settled.rounds.to_string(),
        settled.set as usize,
        &settled.builds.len().to_string(),
        &(settled.rounds * settled.set).to_string(),
        balls as usize,
        &minutes.to_string(),
    )
}

fn power(settled: &Settled, subject: &Subject, seen: &[(f64, f64)]) -> String {
    if settled.spread.is_none() && settled.goal != Goal::Tighter {
        return say::scatter_unknown(&subject.name);
    }
    let parts: Vec<String> = seen
        .iter()
        .map(|&(difference, chance)| say::found(&size(settled, subject, difference), &in_ten(chance)))
        .collect();
    let mut list = String::new();
    for (at, part) in parts.iter().enumerate() {
        list = match at {
            0 => part.clone(),
            _ if at + 1 == parts.len() => say::found_and_last(&list, part),
            _ => say::found_and(&list, part),
        };
    }
    say::power(&settled.rounds.to_string(), &settled.set.to_string(), &list)
}

/// One difference and how often it is found, for a list.
pub(super) fn seen_words(settled: &Settled, difference: f64, chance: f64) -> String {
    let subject = Subject::of(&settled.measure, &Session::default());
    if chance.is_finite() {
        say::seen(&size(settled, &subject, difference), &in_ten(chance))
    } else {
        size(settled, &subject, difference)
    }
}

fn size(settled: &Settled, subject: &Subject, difference: f64) -> String {
    if settled.goal == Goal::Tighter {
        return say::in_scatter(&crate::words::number((difference - 1.0) * 100.0, 0));
    }
    subject.chosen(difference)
}

/// A chance as a golfer counts it.
fn in_ten(chance: f64) -> String {
    let times = (chance * 10.0).round();
    if chance >= 0.95 {
        say::nearly_always()
    } else if times < 1.0 {
        say::hardly_ever()
    } else if times < 2.0 {
        say::once_in_10()
    } else {
        say::times_in_10(&crate::words::number(times.min(9.0), 0))
    }
}

fn same_words(settled: &Settled, subject: &Subject, chance: f64) -> String {
    say::same(&subject.chosen(settled.margin), &in_ten(chance))
}

fn spread(settled: &Settled, subject: &Subject) -> String {
    let Some(PlanSpread { value, from }) = settled.spread.filter(|_| settled.goal != Goal::Tighter) else {
        return String::new();
    };
    let size = subject.amount(value);
    match from {
        SpreadFrom::Given => say::spread_given(&size),
        SpreadFrom::Earlier => say::spread_earlier(&size),
        SpreadFrom::Usual => say::spread_usual(&size),
    }
}

fn order(settled: &Settled) -> String {
    let how = settled.seed.map_or_else(say::order_balanced, |seed| say::order_drawn(&seed.to_string()));
    sentences(&[how, say::change_after(settled.set as usize)])
}

fn looks(settled: &Settled) -> String {
    let [early @ .., last] = settled.looks.as_slice() else { return String::new() };
    match early {
        [] => say::covered_until(&last.to_string()),
        [one] => say::look_after_round(&one.to_string()),
        [all @ .., second_last] => {
            let all: Vec<String> = all.iter().map(ToString::to_string).collect();
            say::look_after_rounds(&all.join(", "), &second_last.to_string())
        }
    }
}

fn same_club(settled: &Settled, subject: &Subject) -> String {
    if !settled.same_club {
        return String::new();
    }
    let expected = settled.spread.filter(|_| settled.goal != Goal::Tighter).map(|spread| {
        let each = f64::from(settled.rounds * settled.set);
        // Mean of the size of a normal gap with standard deviation s√(2/n).
        let gap = spread.value * (2.0 / each).sqrt() * (2.0 / std::f64::consts::PI).sqrt();
        say::luck_sets_apart(&subject.amount(gap))
    });
    sentences(&[say::one_club_twice(), expected.unwrap_or_default(), say::not_called_different()])
}

/// A build's name, short enough for a sentence.
pub(super) fn name(settled: &Settled, build: usize) -> String {
    short_name(settled.builds.get(build).map_or("", String::as_str))
}
