//! What a fitting can show and what it cannot, in words.

use crate::format::Subject;
use judging::fitting::{FittingFacts, FittingNext, FittingSeen, GapOf, Line};
use serde::Serialize;
use session::Session;
use session::known::Known;
use session::measure::MeasureId;
use text::Voice;
use text::fitting as say;

/// What a fitting can show and what it cannot.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FittingReport {
    /// What its gap can be put down to.
    pub gap: GapOf,
    /// The same in one sentence.
    pub headline: String,
    /// What it can show, a sentence for each line that holds.
    pub shows: Vec<String>,
    /// What it cannot show, a sentence for each line that does not hold.
    pub cannot: Vec<String>,
    /// What would matter and is not known, to stand in a list.
    pub not_known: Vec<String>,
    /// What to do next.
    pub next: String,
}

/// Says what a fitting can show, by how it was done; `None` where nothing is said of it.
#[must_use]
pub fn fitting(seen: &FittingSeen, voice: &Voice) -> Option<FittingReport> {
    judging::fitting::fitting(seen).map(|facts| told(&facts, voice))
}

fn told(facts: &FittingFacts, voice: &Voice) -> FittingReport {
    let carry = Subject::of(&MeasureId::from(Known::Carry), &Session::default(), voice);
    let drift = carry.amount(facts.order_allowance);
    let each = |lines: &[Line], say: &dyn Fn(say::Line) -> String| {
        lines.iter().map(|line| say(named(*line))).collect()
    };
    FittingReport {
        gap: facts.gap,
        headline: headline(facts.gap, voice),
        shows: each(&facts.shows, &|line| say::shows(voice, line)),
        cannot: each(&facts.cannot, &|line| say::cannot(voice, line, &drift)),
        not_known: each(&facts.not_known, &|line| say::not_known(voice, line)),
        next: next(facts.next, voice),
    }
}

fn headline(gap: GapOf, voice: &Voice) -> String {
    let gap = match gap {
        GapOf::TheClubs => say::Gap::TheClubs,
        GapOf::SomethingElseToo => say::Gap::SomethingElseToo,
        GapOf::Choosing => say::Gap::Choosing,
        GapOf::Both => say::Gap::Both,
        GapOf::NoOwnClub => say::Gap::NoOwnClub,
        GapOf::OwnClubNotKnown => say::Gap::OwnClubNotKnown,
        GapOf::NotAllKnown => say::Gap::NotAllKnown,
    };
    say::headline(voice, gap)
}

const fn named(line: Line) -> say::Line {
    match line {
        Line::OwnClub => say::Line::OwnClub,
        Line::AsOften => say::Line::AsOften,
        Line::AsWarm => say::Line::AsWarm,
        Line::InTurn => say::Line::InTurn,
        Line::Alike => say::Line::Alike,
        Line::EveryShot => say::Line::EveryShot,
        Line::NumberSaid => say::Line::NumberSaid,
        Line::HitAgain => say::Line::HitAgain,
        Line::Measured => say::Line::Measured,
        Line::TakenHome => say::Line::TakenHome,
    }
}

fn next(next: FittingNext, voice: &Voice) -> String {
    let next = match next {
        FittingNext::ReadTheShots => say::Next::ReadTheShots,
        FittingNext::ReadAndTest => say::Next::ReadAndTest,
        FittingNext::TestThePromise => say::Next::TestThePromise,
        FittingNext::AskForNumbers => say::Next::AskForNumbers,
    };
    say::next(voice, next)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_cold_own_club_of_a_fitting_without_numbers_is_told() {
        let seen = FittingSeen {
            own_club: Some(true),
            as_warm: Some(false),
            in_turn: Some(false),
            taken_home: Some(false),
            ..FittingSeen::default()
        };
        let told = fitting(&seen, &Voice::english()).expect("something was said");
        assert_eq!(told.headline, "This fitting can show a gap, but not that the club made it.");
        assert_eq!(told.shows, ["Your own club was hit that day: a gap to it can be seen."]);
        assert!(told.cannot[1].contains("about 6\u{a0}yd apart"), "{:?}", told.cannot);
        assert_eq!(told.cannot.len(), 3);
        assert!(told.next.starts_with("Type in what you were promised"));
        assert_eq!(fitting(&FittingSeen::default(), &Voice::english()), None);
    }
}
