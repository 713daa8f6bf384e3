//! What the golfer wants to know, said before the numbers are looked at.

use crate::measure::{self, Better, Margin, MeasureId};
pub use crate::stopping::{LookedAfter, Stopping, StoppingWord};
use crate::{MOST_BUILDS, Session};
use serde::{Deserialize, Serialize};

/// What 'better' means on the chosen measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Goal {
    /// A higher average: longer, faster.
    Higher,
    /// A lower average: less spin, lower flight.
    Lower,
    /// An average nearer to zero: straighter on average.
    NearerZero,
    /// Less scatter, whatever the average.
    Tighter,
    /// Any difference counts.
    Different,
}

/// What differs between two builds, as far as the golfer says it: how far apart such builds usually lie. A bet needs it, the
/// verdict never reads it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Differs {
    /// The same head with another shaft.
    Shaft,
    /// Another head.
    Head,
    /// A new club against an old one.
    OldClub,
}

/// The question: does the candidate differ from the baseline on this measure, by enough to matter?
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct Question {
    /// Index of the build the others are held against, usually the golfer's own club.
    pub baseline: usize,
    /// Index of the build in question; left open, the one that leads towards the goal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub candidate: Option<usize>,
    /// The measure named before the numbers.
    pub measure: MeasureId,
    /// What better means; left open, the measure's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub goal: Option<Goal>,
    /// Smallest difference that would matter, in the measure's unit; left open, the measure's own. For the goal
    /// `tighter` it is a ratio of scatters above 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub margin: Option<f64>,
    /// The margin under which the answer was first shown, when it was changed since.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first_margin: Option<f64>,
    /// How it was decided when to stop.
    #[serde(default)]
    pub stopping: Stopping,
    /// What differs between the two; left open, nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub differs: Option<Differs>,
}

/// How the sender of a link looked at it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default)]
pub struct View {
    /// A line that the sender gave along: a name, a day, a place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

/// Most rounds of a plan: more would take no day, and its looks too long to work out.
pub const MOST_PLANNED_ROUNDS: u32 = 60;

/// Smallest ratio of scatters that usually matters: a quarter more, or a fifth less. Judgement, no source.
pub const WORTHWHILE_RATIO: f64 = 1.25;

impl Question {
    /// What better means on a measure: the golfer's own word on the one asked for, else the usual one.
    #[must_use]
    pub fn goal_on(&self, id: &MeasureId) -> Goal {
        self.goal.filter(|_| *id == self.measure).unwrap_or_else(|| {
            match measure::usual(id).map(|m| m.better) {
                Some(Better::Higher) => Goal::Higher,
                Some(Better::Lower) => Goal::Lower,
                Some(Better::NearerZero) => Goal::NearerZero,
                Some(Better::Depends) | None => Goal::Different,
            }
        })
    }

    /// The smallest difference that matters on a measure: the golfer's own on the one asked for, else the usual one in
    /// the canonical unit, whatever the units shown; `None` for a column of the golfer's own without one.
    #[must_use]
    pub fn margin_on(&self, id: &MeasureId) -> Option<Margin> {
        let own = self.margin.filter(|_| *id == self.measure);
        match self.goal_on(id) {
            Goal::Tighter => Some(Margin::Ratio(own.unwrap_or(WORTHWHILE_RATIO))),
            _ => own.or_else(|| measure::usual(id).map(|m| m.margin)).map(Margin::Difference),
        }
    }

    /// Whether it can be asked of this session.
    ///
    /// # Errors
    /// A [`Misfit`] when it names a build or a measure that is not there, a margin that is no number, or a plan that is
    /// none. A session that holds too little is no error: the report says what is missing.
    pub fn fits(&self, session: &Session) -> Result<(), Misfit> {
        let builds = session.builds.len();
        if builds > MOST_BUILDS {
            return Err(Misfit::TooManyBuilds { got: builds });
        }
        for (place, build) in
            [(BuildPlace::Baseline, Some(self.baseline)), (BuildPlace::Candidate, self.candidate)]
        {
            if let Some(got) = build.filter(|&b| b >= builds && builds > 0) {
                return Err(Misfit::NoSuchBuild { place, got, builds });
            }
        }
        if self.candidate == Some(self.baseline) && builds > 0 {
            return Err(Misfit::SameBuildTwice);
        }
        if self.measure.known().is_none() && session.measure_index(&self.measure).is_none() {
            return Err(Misfit::NoSuchMeasure { measure: self.measure.clone() });
        }
        for (place, margin) in
            [(MarginPlace::Margin, self.margin), (MarginPlace::FirstMargin, self.first_margin)]
        {
            if margin.is_some_and(|m| !m.is_finite() || m < 0.0) {
                return Err(Misfit::NotAMargin { place });
            }
            if self.goal == Some(Goal::Tighter) && margin.is_some_and(|m| m <= 1.0) {
                return Err(Misfit::NotARatio { place });
            }
        }
        match self.stopping {
            Stopping::Planned { planned_rounds, .. }
                if !(2..=MOST_PLANNED_ROUNDS).contains(&planned_rounds) =>
            {
                Err(Misfit::NotAPlan { got: planned_rounds })
            }
            _ => Ok(()),
        }
    }
}

/// Which build a question names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BuildPlace {
    /// The one the others are held against.
    Baseline,
    /// The one in question.
    Candidate,
}

/// Which margin a question names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MarginPlace {
    /// The one that counts.
    Margin,
    /// The one under which the answer was first shown.
    FirstMargin,
}

/// Why a question cannot be asked of a session.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Misfit {
    /// More builds than [`MOST_BUILDS`].
    TooManyBuilds {
        /// How many.
        got: usize,
    },
    /// It names a build that is not in the session.
    NoSuchBuild {
        /// Which one of the two.
        place: BuildPlace,
        /// The index it names.
        got: usize,
        /// How many there are.
        builds: usize,
    },
    /// Baseline and candidate are one build.
    SameBuildTwice,
    /// Neither the trade nor the session knows the measure.
    NoSuchMeasure {
        /// The id it names.
        measure: MeasureId,
    },
    /// A margin below zero or without a size.
    NotAMargin {
        /// Which of the two.
        place: MarginPlace,
    },
    /// A ratio of scatters that is not above 1.
    NotARatio {
        /// Which of the two.
        place: MarginPlace,
    },
    /// A plan of fewer than two rounds or more than [`MOST_PLANNED_ROUNDS`].
    NotAPlan {
        /// How many rounds it names.
        got: u32,
    },
}
