//! What the parts of a gap tell: which of them explains it, which works against it, and what was not measured.

use super::facts::{CauseFacts, Unmeasured};
use super::part::{Factor, PartFacts};
use super::two::Two;
use crate::flying::{Columns, FACTORS};
use session::known::Known;

/// A part within this share of the gap is all of it: a twentieth. Judgement, no source.
const ALL_OF_IT: f64 = 0.05;

/// How much of the gap its largest clear part covers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Covers {
    /// More than all of it: something worked against it.
    More,
    /// All of it.
    All,
    /// Less.
    Some,
}

impl CauseFacts {
    /// A part by its factor, also those within ball speed.
    #[must_use]
    pub fn part(&self, factor: Factor) -> Option<&PartFacts> {
        self.parts.iter().chain(&self.ball_speed).find(|part| part.factor == factor)
    }

    /// The largest clear part that goes the way of the gap, and how much of the gap it covers.
    #[must_use]
    pub fn main(&self) -> Option<(&PartFacts, Covers)> {
        let main = self.part(self.split.main?)?;
        let (size, gap) = (main.yards.value.abs(), self.split.gap.abs());
        let covers = match () {
            () if size > (1.0 + ALL_OF_IT) * gap => Covers::More,
            () if size > (1.0 - ALL_OF_IT) * gap => Covers::All,
            () => Covers::Some,
        };
        Some((main, covers))
    }

    /// What the flight model does not explain, where that is sure and goes the way of the gap.
    #[must_use]
    pub fn sure_rest(&self) -> Option<&PartFacts> {
        self.part(Factor::Rest).filter(|rest| rest.is_sure && rest.yards.value * self.split.gap > 0.0)
    }

    /// A clear part that worked the other way.
    #[must_use]
    pub fn against(&self) -> Option<&PartFacts> {
        let works_against = |part: &&PartFacts| {
            part.factor != Factor::Rest && part.is_sure && part.yards.value * self.split.gap < 0.0
        };
        let within_ball_speed = || self.ball_speed.iter().find(works_against);
        let through_it_as_a_whole = self.part(Factor::BallSpeed).is_some_and(|part| part.is_sure);
        let found = self.parts.iter().find(works_against);
        found.or_else(|| if through_it_as_a_whole { None } else { within_ball_speed() })
    }
}

pub(super) fn unmeasured(two: &Two<'_>, columns: &Columns) -> Vec<Unmeasured> {
    let flown =
        |known: Known| FACTORS.iter().position(|factor| *factor == known).is_some_and(|at| columns.has(at));
    let loft = two.has(Known::SpinLoft) || two.has(Known::DynamicLoft) && two.has(Known::AttackAngle);
    let measured = [
        (Unmeasured::Direction, flown(Known::LaunchDirection) && flown(Known::SpinAxis)),
        (Unmeasured::ClubSpeed, columns.has_club_speed()),
        (Unmeasured::Loft, loft),
        (Unmeasured::Strike, two.has(Known::StrikeHeight)),
    ];
    measured.into_iter().filter(|(_, measured)| !measured).map(|(what, _)| what).collect()
}
