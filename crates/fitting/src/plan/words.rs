//! A plan in plain words. Reads the plan's numbers; decides nothing.

use super::request::{PlanSpread, Settled, SpreadFrom};
use crate::question::Goal;
use crate::session::Session;
use crate::words::{Subject, count_of, short_name};
use serde::Serialize;

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
    let each = settled.rounds * settled.set;
    format!(
        "{} rounds of {} with each of {} clubs: {each} shots each, {} balls with the warm-up, about {minutes} minutes.",
        settled.rounds,
        shots_of(settled.set),
        settled.builds.len(),
        count_of(balls as usize),
    )
}

fn power(settled: &Settled, subject: &Subject, seen: &[(f64, f64)]) -> String {
    if settled.spread.is_none() && settled.goal != Goal::Tighter {
        return format!(
            "How far shots usually scatter in {} is not known here. Say how far yours do, and this plan says what it \
             will show.",
            subject.name
        );
    }
    let parts: Vec<String> = seen
        .iter()
        .map(|&(difference, chance)| format!("{} {}", size(settled, subject, difference), in_ten(chance)))
        .collect();
    let list = match parts.as_slice() {
        [all @ .., last] if !all.is_empty() => format!("{}, and of {last}", all.join(", of ")),
        _ => parts.concat(),
    };
    format!("With {} rounds of {} you will see a true difference of {list}.", settled.rounds, settled.set)
}

/// One difference and how often it is found, for a list.
pub(super) fn seen_words(settled: &Settled, difference: f64, chance: f64) -> String {
    let subject = Subject::of(&settled.measure, &Session::default());
    if chance.is_finite() {
        format!("{}: {}", size(settled, &subject, difference), in_ten(chance))
    } else {
        size(settled, &subject, difference)
    }
}

fn size(settled: &Settled, subject: &Subject, difference: f64) -> String {
    if settled.goal == Goal::Tighter {
        return format!("{} % in scatter", crate::words::number((difference - 1.0) * 100.0, 0));
    }
    subject.chosen(difference)
}

/// A chance as a golfer counts it.
fn in_ten(chance: f64) -> String {
    let times = (chance * 10.0).round();
    if chance >= 0.95 {
        "nearly always".into()
    } else if times < 1.0 {
        "hardly ever".into()
    } else if times < 2.0 {
        "once in 10".into()
    } else {
        format!("{} times in 10", crate::words::number(times.min(9.0), 0))
    }
}

fn same_words(settled: &Settled, subject: &Subject, chance: f64) -> String {
    format!(
        "If the clubs are truly equal, it will say so (within {}) {}; otherwise it says that it cannot tell.",
        subject.chosen(settled.margin),
        in_ten(chance)
    )
}

fn spread(settled: &Settled, subject: &Subject) -> String {
    let Some(PlanSpread { value, from }) = settled.spread.filter(|_| settled.goal != Goal::Tighter) else {
        return String::new();
    };
    let two_thirds = format!(
        "about two of three shots with one club lie within {} of their average",
        subject.amount(value)
    );
    match from {
        SpreadFrom::Given => format!("As you said: {two_thirds}."),
        SpreadFrom::Earlier => format!("As in your earlier session: {two_thirds}."),
        SpreadFrom::Usual => {
            format!("Taken as usual among amateurs: {two_thirds}. With more scatter it shows less.")
        }
    }
}

fn order(settled: &Settled) -> String {
    let drawn = settled.seed.map(|seed| format!("The order in each round is drawn from the number {seed}. "));
    let balanced = "Every second round runs backward, so that no club is always hit first. ";
    format!(
        "{}Change the club after {}: warming up and tiring then touch all clubs alike.",
        drawn.as_deref().unwrap_or(balanced),
        shots_of(settled.set)
    )
}

fn looks(settled: &Settled) -> String {
    let [early @ .., last] = settled.looks.as_slice() else { return String::new() };
    if early.is_empty() {
        return format!(
            "The answer stays covered until all {last} rounds are hit. Looking earlier makes it stricter."
        );
    }
    let list = match early {
        [one] => format!("round {one}"),
        [all @ .., second_last] => {
            let all: Vec<String> = all.iter().map(ToString::to_string).collect();
            format!("rounds {} and {second_last}", all.join(", "))
        }
        [] => String::new(),
    };
    format!(
        "You may look after {list} and stop there if the answer is clear; what that costs is counted already. Looking \
         at any other time makes the answer stricter."
    )
}

fn same_club(settled: &Settled, subject: &Subject) -> String {
    if !settled.same_club {
        return String::new();
    }
    let expected = settled.spread.filter(|_| settled.goal != Goal::Tighter).map(|spread| {
        let each = f64::from(settled.rounds * settled.set);
        // Mean of the size of a normal gap with standard deviation s√(2/n).
        let gap = spread.value * (2.0 / each).sqrt() * (2.0 / std::f64::consts::PI).sqrt();
        format!(" Luck alone will set them about {} apart.", subject.amount(gap))
    });
    format!(
        "Both labels are one club, so the true difference is nothing.{} In at least 19 of 20 such tests the answer \
         will not be 'different'.",
        expected.unwrap_or_default()
    )
}

fn shots_of(set: u32) -> String {
    if set == 1 { "1 shot".into() } else { format!("{set} shots") }
}

/// A build's name, short enough for a sentence.
pub(super) fn name(settled: &Settled, build: usize) -> String {
    short_name(settled.builds.get(build).map_or("", String::as_str))
}
