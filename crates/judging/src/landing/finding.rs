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

impl BuildFacts {
    /// Whether no aim did better than that of the day. The chance at the best aim is what is left of it in shots that
    /// did not choose the aim.
    #[must_use]
    pub fn was_aimed_best(&self) -> bool {
        self.as_aimed.zip(self.best).is_some_and(|(as_aimed, best)| as_aimed.value >= best.chance.value)
    }
}
