//! A plan in plain words. Reads the plan's numbers; decides nothing.

use crate::format::{Subject, number};
use crate::words::sentences;
use judging::plan::{FoundFacts, PlanSpread, Planned, SettledPlan, SpreadFrom};
use serde::Serialize;
use session::Session;
use session::measure::Margin;
use text::Voice;
use text::plan as say;

/// Sentences about a plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PlanWords {
    /// What the test is, in one sentence.
    pub headline: String,
    /// What it will show.
    pub power: String,
    /// What it will show of the typical shot, and two such visits put together; empty where that is not known.
    pub beside: String,
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

pub(super) fn words(planned: &Planned, voice: &Voice) -> PlanWords {
    let settled = &planned.settled;
    let subject = subject(settled, voice);
    PlanWords {
        headline: headline(planned, voice),
        power: power(planned, &subject),
        beside: beside(planned, &subject),
        same: same(planned, &subject),
        spread: spread(settled, &subject),
        order: order(settled, voice),
        looks: looks(settled, voice),
        same_club: same_club(planned, &subject),
    }
}

/// One difference and how often it is found, for a list.
pub(super) fn seen(settled: &SettledPlan, found: &FoundFacts, voice: &Voice) -> String {
    let size = size(settled, &subject(settled, voice), found.difference);
    say::seen(voice, &size, &in_ten(found.chance, voice))
}

fn subject<'v>(settled: &SettledPlan, voice: &'v Voice) -> Subject<'v> {
    Subject::of(&settled.measure.into(), &Session::default(), voice)
}

fn headline(planned: &Planned, voice: &Voice) -> String {
    let Planned { settled, facts, .. } = planned;
    say::headline(
        voice,
        &settled.rounds.to_string(),
        settled.set as usize,
        &settled.builds().to_string(),
        &(settled.rounds * settled.set).to_string(),
        facts.balls as usize,
        &facts.minutes.to_string(),
    )
}

fn power(planned: &Planned, subject: &Subject<'_>) -> String {
    let Planned { settled, power, .. } = planned;
    let voice = subject.voice;
    let Some(power) = power else {
        return say::scatter_unknown(voice, &subject.the());
    };
    let parts: Vec<String> = power
        .seen
        .iter()
        .map(|found| {
            say::found(voice, &size(settled, subject, found.difference), &in_ten(found.chance, voice))
        })
        .collect();
    let mut list = String::new();
    for (at, part) in parts.iter().enumerate() {
        list = match at {
            0 => part.clone(),
            _ if at + 1 == parts.len() => say::found_and_last(voice, &list, part),
            _ => say::found_and(voice, &list, part),
        };
    }
    say::power(voice, &settled.rounds.to_string(), &settled.set.to_string(), &list)
}

/// Of the margin and of twice as much.
fn beside(planned: &Planned, subject: &Subject<'_>) -> String {
    let Planned { settled, power: Some(power), .. } = planned else { return String::new() };
    let [margin, double, ..] = power.seen.as_slice() else { return String::new() };
    let voice = subject.voice;
    let told = |chance: fn(&FoundFacts) -> Option<f64>| {
        let found = |found: &FoundFacts| {
            Some(say::found(voice, &size(settled, subject, found.difference), &in_ten(chance(found)?, voice)))
        };
        Some(say::found_both(voice, &found(margin)?, &found(double)?))
    };
    let typical = told(|found| found.typical).map(|found| say::beside_typical(voice, &found));
    let visits = told(|found| found.two_visits).map(|found| say::beside_visits(voice, &found));
    sentences(&[typical.unwrap_or_default(), visits.unwrap_or_default()])
}

fn size(settled: &SettledPlan, subject: &Subject<'_>, difference: f64) -> String {
    match settled.margin {
        Margin::Ratio(_) => {
            say::in_scatter(subject.voice, &number(subject.voice, (difference - 1.0) * 100.0, 0))
        }
        Margin::Difference(_) => subject.chosen(difference),
    }
}

/// A chance as a golfer counts it.
fn in_ten(chance: f64, voice: &Voice) -> String {
    let times = (chance * 10.0).round();
    if chance >= 0.95 {
        say::nearly_always(voice)
    } else if times < 1.0 {
        say::hardly_ever(voice)
    } else if times < 2.0 {
        say::once_in_10(voice)
    } else {
        say::times_in_10(voice, &number(voice, times.min(9.0), 0))
    }
}

fn same(planned: &Planned, subject: &Subject<'_>) -> String {
    let Some(chance) = planned.power.as_ref().and_then(|power| power.facts.same) else {
        return String::new();
    };
    let margin = subject.chosen(planned.settled.margin.value());
    say::same(subject.voice, &margin, &in_ten(chance, subject.voice))
}

fn spread(settled: &SettledPlan, subject: &Subject<'_>) -> String {
    let Some(PlanSpread { value, from }) = settled.spread_of_averages() else {
        return String::new();
    };
    let size = subject.amount(value);
    match from {
        SpreadFrom::Given => say::spread_given(subject.voice, &size),
        SpreadFrom::Earlier => say::spread_earlier(subject.voice, &size),
        SpreadFrom::Usual => say::spread_usual(subject.voice, &size),
    }
}

fn order(settled: &SettledPlan, voice: &Voice) -> String {
    let how = settled
        .seed
        .map_or_else(|| say::order_balanced(voice), |seed| say::order_drawn(voice, &seed.to_string()));
    sentences(&[how, say::change_after(voice, settled.set as usize)])
}

fn looks(settled: &SettledPlan, voice: &Voice) -> String {
    let [early @ .., last] = settled.looks.as_slice() else { return String::new() };
    match early {
        [] => say::covered_until(voice, &last.to_string()),
        [one] => say::look_after_round(voice, &one.to_string()),
        [all @ .., second_last] => {
            let all: Vec<String> = all.iter().map(ToString::to_string).collect();
            say::look_after_rounds(voice, &all.join(", "), &second_last.to_string())
        }
    }
}

fn same_club(planned: &Planned, subject: &Subject<'_>) -> String {
    if !planned.settled.same_club {
        return String::new();
    }
    let voice = subject.voice;
    let expected = planned.gap_by_luck.map(|gap| say::luck_sets_apart(voice, &subject.amount(gap)));
    sentences(&[say::one_club_twice(voice), expected.unwrap_or_default(), say::not_called_different(voice)])
}
