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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cause::part::{Belongs, Span};
    use crate::cause::{Split, cause};
    use session::{Build, Session, Shot};

    fn part(factor: Factor, value: f64, reach: f64) -> PartFacts {
        let yards = Span { value, low: value - reach, high: value + reach };
        PartFacts { factor, yards, is_sure: yards.is_clear(), belongs: Belongs::Both, differed: None }
    }

    fn facts(gap: f64, main: Option<Factor>, parts: &[PartFacts], ball_speed: &[PartFacts]) -> CauseFacts {
        let split = Split {
            baseline: 0,
            candidate: 1,
            gap,
            baseline_shots: 9,
            candidate_shots: 9,
            not_flown: 0,
            main,
            draws: 1,
            seed: 1,
        };
        CauseFacts {
            split,
            parts: parts.to_vec(),
            ball_speed: ball_speed.to_vec(),
            swing: Vec::new(),
            spin: Vec::new(),
            unmeasured: Vec::new(),
            turns_too_long: false,
        }
    }

    #[test]
    fn a_part_within_a_twentieth_of_the_gap_is_all_of_it() {
        use Covers::{All, More, Some as Part};
        for (value, covers) in
            [(42.2, More), (41.8, All), (40.0, All), (38.2, All), (37.8, Part), (4.0, Part)]
        {
            for sign in [1.0, -1.0] {
                let parts = [part(Factor::LaunchAngle, 1.0, 0.1), part(Factor::SpinRate, sign * value, 0.1)];
                let facts = facts(sign * 40.0, Some(Factor::SpinRate), &parts, &[]);
                let (main, found) = facts.main().expect("a main part");
                assert_eq!((main.factor, found), (Factor::SpinRate, covers), "{value}");
            }
        }
        let within = facts(20.0, Some(Factor::Smash), &[], &[part(Factor::Smash, 15.0, 1.0)]);
        assert_eq!(within.main().map(|(main, _)| main.factor), Some(Factor::Smash));
        assert_eq!(facts(20.0, None, &[part(Factor::SpinRate, 15.0, 1.0)], &[]).main(), None);
    }

    #[test]
    fn what_the_model_leaves_is_told_where_it_is_sure_and_goes_the_way_of_the_gap() {
        for (gap, rest, reach, told) in [
            (20.0, 9.0, 2.0, true),
            (-20.0, -9.0, 2.0, true),
            (0.0, 9.0, 2.0, false),
            (0.0, -9.0, 2.0, false),
            (20.0, -9.0, 2.0, false),
            (20.0, 9.0, 10.0, false),
        ] {
            let facts = facts(gap, None, &[part(Factor::Rest, rest, reach)], &[]);
            assert_eq!(facts.sure_rest().is_some(), told, "{gap} {rest} {reach}");
        }
    }

    #[test]
    fn what_worked_against_a_gap_is_a_clear_part_of_the_flight_that_goes_the_other_way() {
        let against = |gap: f64, part: PartFacts| facts(gap, None, &[part], &[]).against().is_some();
        assert!(
            against(20.0, part(Factor::SpinRate, -5.0, 2.0))
                && against(-20.0, part(Factor::SpinRate, 5.0, 2.0))
        );
        assert!(!against(20.0, part(Factor::SpinRate, -5.0, 6.0)), "not clear");
        assert!(!against(20.0, part(Factor::SpinRate, 5.0, 2.0)), "goes along");
        assert!(!against(20.0, part(Factor::Rest, -5.0, 2.0)), "nobody's");
        assert!(!against(0.0, part(Factor::SpinRate, -5.0, 2.0)), "no gap to work against");
        // Within ball speed only where ball speed as a whole is not clear.
        for (reach, told) in [(20.0, Some(Factor::ClubSpeed)), (1.0, None)] {
            let of_ball = [part(Factor::ClubSpeed, -5.0, 2.0), part(Factor::Smash, 15.0, 2.0)];
            let facts = facts(20.0, None, &[part(Factor::BallSpeed, 10.0, reach)], &of_ball);
            assert_eq!(facts.against().map(|part| part.factor), told, "{reach}");
        }
    }

    #[test]
    fn an_end_at_zero_is_not_clear() {
        for (low, high, clear) in
            [(0.1, 3.0, true), (0.0, 3.0, false), (-3.0, 0.0, false), (-3.0, -0.1, true)]
        {
            assert_eq!(Span { value: 0.5 * (low + high), low, high }.is_clear(), clear, "{low} {high}");
        }
    }

    #[test]
    fn what_was_not_measured_is_told_piece_by_piece() {
        use Known::{AttackAngle, ClubSpeed, DynamicLoft, LaunchDirection, SpinAxis, SpinLoft, StrikeHeight};
        use Unmeasured::{ClubSpeed as Club, Direction, Loft, Strike};
        for (measured, lacks) in [
            (vec![], vec![Direction, Club, Loft, Strike]),
            (vec![LaunchDirection, ClubSpeed], vec![Direction, Loft, Strike]),
            (vec![SpinAxis, StrikeHeight], vec![Direction, Club, Loft]),
            (vec![LaunchDirection, SpinAxis, DynamicLoft], vec![Club, Loft, Strike]),
            (vec![AttackAngle], vec![Direction, Club, Loft, Strike]),
            (vec![DynamicLoft, AttackAngle], vec![Direction, Club, Strike]),
            (vec![SpinLoft], vec![Direction, Club, Strike]),
        ] {
            let flight = [(Known::Carry, 240.0), (Known::BallSpeed, 150.0), (Known::LaunchAngle, 12.0)];
            let mut columns = flight.to_vec();
            columns.push((Known::SpinRate, 2600.0));
            columns.extend(measured.iter().map(|&known| (known, 0.1 * known.facts().plausible.high)));
            let shot = |at: usize| Shot {
                build: at / 6,
                values: columns.iter().map(|(_, value)| Some(value + (at % 5) as f64 * 0.1)).collect(),
                ..Shot::default()
            };
            let session = Session {
                builds: ["Own", "B"].map(|name| Build { name: name.into() }).into(),
                measures: columns.iter().map(|&(known, _)| known.into()).collect(),
                shots: (0..12).map(shot).collect(),
                ..Session::default()
            };
            assert_eq!(cause(&session, 0, 1).expect("can be split").unmeasured, lacks, "{measured:?}");
        }
    }
}
