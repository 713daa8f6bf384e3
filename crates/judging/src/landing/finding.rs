//! What the chances of two builds settle, read from the ends of their intervals.

use super::chances::LandingPair;
use super::facts::{BuildFacts, LandingFacts};

/// What the shots of two builds settle, as both were aimed on the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LandingFinding {
    /// Aiming off would fix more with the baseline than the candidate does.
    AimOverClub,
    /// One of the two hits the strip more often.
    HitsMoreOften {
        /// Index of the one that does.
        better: usize,
        /// Index of the other.
        worse: usize,
    },
    /// Neither, or counting puts the two in the other order than the curve.
    NotSettled,
}

impl LandingFacts {
    /// What is settled of the two builds asked about, with the baseline's facts; `None` with nothing to hold a build
    /// against.
    #[must_use]
    pub fn finding(&self) -> Option<(LandingFinding, &BuildFacts)> {
        let pair = self.ground.pair?;
        let base = self.build(pair.baseline)?;
        let LandingPair { baseline, candidate, gain_of_club, aim_over_club, .. } = pair;
        let aiming_gains = base.best.is_some_and(|best| best.surely_gains());
        let finding = if aim_over_club.low > 0.0 && aiming_gains {
            LandingFinding::AimOverClub
        } else if self.counted_against_the_curve().is_some() {
            LandingFinding::NotSettled
        } else if gain_of_club.low > 0.0 {
            LandingFinding::HitsMoreOften { better: candidate, worse: baseline }
        } else if gain_of_club.high < 0.0 {
            LandingFinding::HitsMoreOften { better: baseline, worse: candidate }
        } else {
            LandingFinding::NotSettled
        };
        Some((finding, base))
    }

    /// Of the builds with a chance, the one with most shots.
    #[must_use]
    pub fn most_hit(&self) -> Option<&BuildFacts> {
        self.builds.iter().filter(|build| build.as_aimed.is_some()).max_by_key(|build| build.n)
    }

    /// A build that has shots on the ground, by its index in the session.
    #[must_use]
    pub fn build(&self, build: usize) -> Option<&BuildFacts> {
        self.builds.iter().find(|one| one.build == build)
    }
}

/// A best aim that hits less than this much more often is not worth aiming for: three fairways in a hundred. Judgement, no
/// source.
const WORTH_AN_AIM: f64 = 0.03;

impl BuildFacts {
    /// Whether no aim did clearly better than that of the day. The chance at the best aim is what is left of it in shots that
    /// did not choose the aim.
    #[must_use]
    pub fn was_aimed_best(&self) -> bool {
        let gained = self.as_aimed.zip(self.best).map(|(as_aimed, best)| best.chance.value - as_aimed.value);
        gained.is_some_and(|gained| gained < WORTH_AN_AIM)
    }
}

#[cfg(test)]
mod tests {
    use super::super::chances::{BestAim, HitChance};
    use super::super::facts::{Ground, LandingLimits};
    use super::super::shots::Spot;
    use super::*;
    use session::Order;

    fn chance(low: f64, high: f64) -> HitChance {
        HitChance { value: 0.5 * (low + high), low, high }
    }

    fn build(
        build: usize,
        n: usize,
        counted: f64,
        as_aimed: f64,
        best: Option<(f64, HitChance)>,
    ) -> BuildFacts {
        let best = best.map(|(best, gain)| BestAim { aim: 5.0, chance: chance(best, best), gain });
        BuildFacts {
            build,
            n,
            center: Spot { offline: 0.0, carry: 250.0 },
            ovals: Vec::new(),
            counted: 0,
            counted_share: chance(0.2, 0.6),
            of_100: None,
            counted_as_aimed: counted,
            at_aim: None,
            as_aimed: Some(chance(as_aimed, as_aimed)),
            best,
        }
    }

    /// The baseline is build 0, the candidate build 1; shares counted of both, and what the curve says.
    fn facts(
        counted: [f64; 2],
        club: HitChance,
        aim_over_club: HitChance,
        aiming: HitChance,
    ) -> LandingFacts {
        let pair = LandingPair {
            baseline: 0,
            candidate: 1,
            offline: 0.0,
            carry: 0.0,
            chance_if_same: None,
            gain_of_club: club,
            aim_over_club,
        };
        let ground = Ground {
            fairway: 30.0,
            aim: 0.0,
            limits: LandingLimits { narrowest: 5.0, widest: 100.0, farthest_aim: 60.0 },
            shots: Vec::new(),
            pair: Some(pair),
            level: 0.95,
            order: Order::Interleaved,
            long_turns: false,
            no_scatter: None,
            draws: 1,
            seed: 1,
        };
        let builds = vec![
            build(0, 12, counted[0], 0.4, Some((0.5, aiming))),
            build(1, 14, counted[1], 0.4, Some((0.4, chance(-0.1, 0.1)))),
        ];
        LandingFacts { ground, builds }
    }

    #[test]
    fn who_hits_more_often_is_settled_by_an_interval_beyond_zero() {
        use LandingFinding::{HitsMoreOften, NotSettled};
        let none = chance(-0.2, 0.1);
        for (club, found) in [
            (chance(0.01, 0.3), HitsMoreOften { better: 1, worse: 0 }),
            (chance(0.0, 0.3), NotSettled),
            (chance(-0.3, 0.0), NotSettled),
            (chance(-0.3, -0.01), HitsMoreOften { better: 0, worse: 1 }),
            (chance(-0.1, 0.2), NotSettled),
        ] {
            // Counting is even: it speaks against nothing.
            assert_eq!(facts([0.5, 0.5], club, none, none).finding().expect("a pair").0, found, "{club:?}");
        }
    }

    #[test]
    fn aiming_fixes_more_only_where_it_gains_at_all() {
        let club = chance(0.01, 0.3);
        for (over_club, aiming, found) in [
            (chance(0.01, 0.2), chance(0.02, 0.3), true),
            (chance(0.0, 0.2), chance(0.02, 0.3), false),
            (chance(0.01, 0.2), chance(0.0, 0.3), false),
            (chance(0.01, 0.2), chance(-0.1, 0.3), false),
        ] {
            let finding = facts([0.5, 0.5], club, over_club, aiming).finding().expect("a pair").0;
            assert_eq!(finding == LandingFinding::AimOverClub, found, "{over_club:?} {aiming:?}");
        }
    }

    /// In hundredths, as they are told: 70.4 and 69.6 of a hundred are even.
    #[test]
    fn counting_that_puts_two_in_the_other_order_settles_nothing() {
        let none = chance(-0.2, 0.1);
        for (counted, club, against) in [
            ([0.5, 0.6], chance(-0.3, -0.1), Some(1)),
            ([0.6, 0.5], chance(0.1, 0.3), Some(0)),
            ([0.5, 0.6], chance(0.1, 0.3), None),
            ([0.6, 0.5], chance(-0.3, -0.1), None),
            ([0.696, 0.704], chance(-0.3, -0.1), None),
            ([0.694, 0.706], chance(-0.3, -0.1), Some(1)),
            ([0.6, 0.5], chance(-0.1, 0.1), None),
            ([0.5, 0.6], chance(-0.1, 0.1), None),
        ] {
            let facts = facts(counted, club, none, none);
            assert_eq!(facts.counted_against_the_curve(), against, "{counted:?} {club:?}");
            let settled = facts.finding().expect("a pair").0 != LandingFinding::NotSettled;
            let by_the_curve = club.low > 0.0 || club.high < 0.0;
            assert_eq!(settled, by_the_curve && against.is_none(), "{counted:?} {club:?}");
        }
    }

    #[test]
    fn the_aim_of_the_day_was_best_where_no_other_does_clearly_better() {
        for (best, was_best) in [(0.39, true), (0.4, true), (0.42, true), (0.44, false)] {
            assert_eq!(
                build(0, 9, 0.4, 0.4, Some((best, chance(0.0, 0.1)))).was_aimed_best(),
                was_best,
                "{best}"
            );
        }
        assert!(!build(0, 9, 0.4, 0.4, None).was_aimed_best());
    }

    #[test]
    fn the_build_with_most_shots_is_the_one_with_a_chance() {
        let mut facts = facts([0.5, 0.5], chance(0.0, 0.1), chance(0.0, 0.1), chance(0.0, 0.1));
        assert_eq!(facts.most_hit().map(|build| build.build), Some(1));
        facts.builds[1].as_aimed = None;
        assert_eq!(facts.most_hit().map(|build| build.build), Some(0));
    }
}
