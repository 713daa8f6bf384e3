//! What a fitting can show and what it cannot, by how it was done; no number of it is asked for.
//!
//! Ten lines say what a fair one looks like. What is not said of a line is not known, and decides nothing.

use serde::{Deserialize, Serialize};
use session::known::Known;

/// One line of what a fair fitting looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Line {
    /// The golfer's own club was hit on the same day.
    OwnClub,
    /// As often as any other.
    AsOften,
    /// As warm as the others.
    AsWarm,
    /// The clubs were hit in turn.
    InTurn,
    /// Loft, ball, tee height and mat were alike.
    Alike,
    /// Every shot was kept.
    EveryShot,
    /// The number of shots was said beforehand.
    NumberSaid,
    /// The club that was chosen was hit once more against the own one.
    HitAgain,
    /// Delivery and strike were measured.
    Measured,
    /// Every shot's numbers were handed over.
    TakenHome,
}

impl Line {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 10] = [
        Self::OwnClub,
        Self::AsOften,
        Self::AsWarm,
        Self::InTurn,
        Self::Alike,
        Self::EveryShot,
        Self::NumberSaid,
        Self::HitAgain,
        Self::Measured,
        Self::TakenHome,
    ];

    /// Lines that compare with the own club mean nothing where it was not hit.
    const fn is_about_own_club(self) -> bool {
        matches!(self, Self::AsOften | Self::AsWarm | Self::HitAgain)
    }
}

/// What is said of each line; `None` where nobody knows, or nobody said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct FittingSeen {
    /// [`Line::OwnClub`].
    pub own_club: Option<bool>,
    /// [`Line::AsOften`].
    pub as_often: Option<bool>,
    /// [`Line::AsWarm`].
    pub as_warm: Option<bool>,
    /// [`Line::InTurn`].
    pub in_turn: Option<bool>,
    /// [`Line::Alike`].
    pub alike: Option<bool>,
    /// [`Line::EveryShot`].
    pub every_shot: Option<bool>,
    /// [`Line::NumberSaid`].
    pub number_said: Option<bool>,
    /// [`Line::HitAgain`].
    pub hit_again: Option<bool>,
    /// [`Line::Measured`].
    pub measured: Option<bool>,
    /// [`Line::TakenHome`].
    pub taken_home: Option<bool>,
}

impl FittingSeen {
    const fn said(&self, line: Line) -> Option<bool> {
        match line {
            Line::OwnClub => self.own_club,
            Line::AsOften => self.as_often,
            Line::AsWarm => self.as_warm,
            Line::InTurn => self.in_turn,
            Line::Alike => self.alike,
            Line::EveryShot => self.every_shot,
            Line::NumberSaid => self.number_said,
            Line::HitAgain => self.hit_again,
            Line::Measured => self.measured,
            Line::TakenHome => self.taken_home,
        }
    }
}

/// What the gap of a fitting can be put down to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum GapOf {
    /// The clubs, as far as the number of shots goes.
    TheClubs,
    /// The clubs or something that differed with them: warming up, tiring, loft, ball.
    SomethingElseToo,
    /// The clubs, or that shots, an end or a club were chosen.
    Choosing,
    /// Both of these play a part.
    Both,
    /// There is none: the own club was not hit.
    NoOwnClub,
    /// It is not known whether the own club was hit.
    OwnClubNotKnown,
    /// Nothing speaks against the clubs so far, and not everything is known.
    NotAllKnown,
}

/// What the golfer does next.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum FittingNext {
    /// Read the shots that were taken home.
    ReadTheShots,
    /// Read them, and hit a fair test: what they show is not the clubs' alone.
    ReadAndTest,
    /// Hold the promise against luck, and hit a fair test.
    TestThePromise,
    /// Ask for the numbers.
    AskForNumbers,
}

/// What was decided of a fitting.
#[derive(Debug, Clone, PartialEq)]
pub struct FittingFacts {
    /// What its gap can be put down to.
    pub gap: GapOf,
    /// Lines that hold and can be built on.
    pub shows: Vec<Line>,
    /// Lines that do not hold, and matter.
    pub cannot: Vec<Line>,
    /// Lines of which nothing is known, and which would matter.
    pub not_known: Vec<Line>,
    /// What to do next.
    pub next: FittingNext,
    /// How far warming up or tiring alone can set two equal clubs apart in carry, yd.
    pub order_allowance: f64,
}

/// What a fitting can show; `None` where nothing is said of it.
#[must_use]
pub fn fitting(seen: &FittingSeen) -> Option<FittingFacts> {
    if Line::ALL.iter().all(|line| seen.said(*line).is_none()) {
        return None;
    }
    let with = |wanted: Option<bool>| {
        Line::ALL
            .into_iter()
            .filter(|line| matters(seen, *line) && seen.said(*line) == wanted)
            .collect::<Vec<_>>()
    };
    let (shows, cannot, not_known) = (with(Some(true)), with(Some(false)), with(None));
    let gap = gap(seen.own_club, &cannot, &not_known);
    Some(FittingFacts {
        gap,
        shows,
        cannot,
        not_known,
        next: next(seen.taken_home, gap),
        order_allowance: Known::Carry.facts().order_allowance,
    })
}

/// Clubs that were hit in turn were as warm as one another; beside no own club nothing compares with it.
fn matters(seen: &FittingSeen, line: Line) -> bool {
    let has_own_club = seen.own_club != Some(false);
    (has_own_club || !line.is_about_own_club()) && (line != Line::AsWarm || seen.in_turn != Some(true))
}

fn gap(own_club: Option<bool>, cannot: &[Line], not_known: &[Line]) -> GapOf {
    let fails = |lines: &[Line]| lines.iter().any(|line| cannot.contains(line));
    let something_else = fails(&[Line::AsWarm, Line::InTurn, Line::Alike]);
    let choosing = fails(&[Line::EveryShot, Line::NumberSaid, Line::HitAgain]);
    let deciding = |line: &Line| !matches!(line, Line::Measured | Line::TakenHome | Line::AsOften);
    match own_club {
        Some(false) => GapOf::NoOwnClub,
        None => GapOf::OwnClubNotKnown,
        Some(true) => match (something_else, choosing) {
            (true, true) => GapOf::Both,
            (true, false) => GapOf::SomethingElseToo,
            (false, true) => GapOf::Choosing,
            (false, false) if not_known.iter().any(deciding) => GapOf::NotAllKnown,
            (false, false) => GapOf::TheClubs,
        },
    }
}

const fn next(taken_home: Option<bool>, gap: GapOf) -> FittingNext {
    match (taken_home, gap) {
        (Some(true), GapOf::TheClubs | GapOf::NotAllKnown) => FittingNext::ReadTheShots,
        (Some(true), _) => FittingNext::ReadAndTest,
        (Some(false), _) => FittingNext::TestThePromise,
        (None, _) => FittingNext::AskForNumbers,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FAIR: FittingSeen = FittingSeen {
        own_club: Some(true),
        as_often: Some(true),
        as_warm: Some(true),
        in_turn: Some(true),
        alike: Some(true),
        every_shot: Some(true),
        number_said: Some(true),
        hit_again: Some(true),
        measured: Some(true),
        taken_home: Some(true),
    };

    fn gap_of(seen: FittingSeen) -> GapOf {
        fitting(&seen).expect("something was said").gap
    }

    #[test]
    fn of_nothing_nothing_is_decided() {
        assert_eq!(fitting(&FittingSeen::default()), None);
    }

    #[test]
    fn a_fair_fitting_shows_the_clubs_and_the_shots_are_read() {
        let facts = fitting(&FAIR).expect("something was said");
        assert_eq!((facts.gap, facts.next), (GapOf::TheClubs, FittingNext::ReadTheShots));
        assert!(facts.cannot.is_empty() && facts.not_known.is_empty());
        assert!(!facts.shows.contains(&Line::AsWarm), "in turn says it already");
    }

    #[test]
    fn each_line_that_does_not_hold_speaks_of_what_it_spoils() {
        assert_eq!(gap_of(FittingSeen { own_club: Some(false), ..FAIR }), GapOf::NoOwnClub);
        assert_eq!(gap_of(FittingSeen { own_club: None, ..FAIR }), GapOf::OwnClubNotKnown);
        assert_eq!(gap_of(FittingSeen { in_turn: Some(false), ..FAIR }), GapOf::SomethingElseToo);
        assert_eq!(gap_of(FittingSeen { alike: Some(false), ..FAIR }), GapOf::SomethingElseToo);
        assert_eq!(gap_of(FittingSeen { every_shot: Some(false), ..FAIR }), GapOf::Choosing);
        assert_eq!(gap_of(FittingSeen { number_said: Some(false), ..FAIR }), GapOf::Choosing);
        assert_eq!(gap_of(FittingSeen { hit_again: Some(false), ..FAIR }), GapOf::Choosing);
        assert_eq!(gap_of(FittingSeen { hit_again: Some(false), alike: Some(false), ..FAIR }), GapOf::Both);
        assert_eq!(gap_of(FittingSeen { alike: None, ..FAIR }), GapOf::NotAllKnown);
        // How sure an average is, why it came about and who has the numbers change no gap's cause.
        assert_eq!(gap_of(FittingSeen { as_often: Some(false), measured: None, ..FAIR }), GapOf::TheClubs);
    }

    #[test]
    fn clubs_in_turn_were_as_warm_as_one_another() {
        let facts = fitting(&FittingSeen { as_warm: Some(false), ..FAIR }).expect("something was said");
        assert_eq!((facts.gap, facts.cannot), (GapOf::TheClubs, vec![]));
    }

    #[test]
    fn no_answer_contradicts_itself() {
        for code in 1..3_u32.pow(10) {
            let said = |place: u32| [None, Some(true), Some(false)][(code / 3_u32.pow(place) % 3) as usize];
            let seen = FittingSeen {
                own_club: said(0),
                as_often: said(1),
                as_warm: said(2),
                in_turn: said(3),
                alike: said(4),
                every_shot: said(5),
                number_said: said(6),
                hit_again: said(7),
                measured: said(8),
                taken_home: said(9),
            };
            let facts = fitting(&seen).expect("something was said");
            let mut lines = [&facts.shows[..], &facts.cannot, &facts.not_known].concat();
            lines.sort_unstable();
            lines.dedup();
            assert_eq!(
                lines.len(),
                facts.shows.len() + facts.cannot.len() + facts.not_known.len(),
                "{seen:?}"
            );
            if facts.gap == GapOf::TheClubs {
                assert!(
                    facts
                        .cannot
                        .iter()
                        .all(|line| matches!(line, Line::AsOften | Line::Measured | Line::TakenHome)),
                    "{seen:?}"
                );
            }
            if facts.gap == GapOf::NoOwnClub {
                assert!(lines.iter().all(|line| !line.is_about_own_club()), "{seen:?}");
            }
        }
    }
}
