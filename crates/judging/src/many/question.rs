//! What is asked of a pile.

use crate::verdict::Direction;
use serde::{Deserialize, Serialize};
use session::measure::{Margin, MeasureId};
use session::question::{Goal, Question, Stopping};

/// How the sessions came to be sent, as far as somebody said it: good ones only would make any fitting look good.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Sent {
    /// Every session that there was.
    All,
    /// Some, picked by how they came out.
    Picked,
    /// Nobody said it.
    #[default]
    NotSaid,
}

/// What is asked of a pile.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ManyQuestion {
    /// The measure.
    pub measure: MeasureId,
    /// What better means; left open, the measure's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub goal: Option<Goal>,
    /// The smallest difference that matters, in the measure's unit; left open, the measure's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub margin: Option<f64>,
    /// How the sessions came to be sent.
    #[serde(default)]
    pub sent: Sent,
    /// Of the sessions listed as different, the part that may be luck.
    #[serde(default = "usual_rate")]
    pub rate: f64,
}

/// One in ten of those listed may be luck: the usual choice where a list is looked at again.
pub const USUAL_RATE: f64 = 0.1;

fn usual_rate() -> f64 {
    USUAL_RATE
}

/// Why a question cannot be asked of any pile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ManyRefused {
    /// Less scatter was asked for.
    Scatter,
    /// An average nearer to zero was asked for: gaps on either side of it do not add up.
    NearerZero,
    /// A margin below zero or without a size.
    NotAMargin {
        /// What it was.
        got: f64,
    },
    /// A rate that does not lie between 0 and 1.
    NotARate {
        /// What it was.
        got: f64,
    },
}

impl ManyQuestion {
    /// On a measure, everything else as usual.
    #[must_use]
    pub fn of(measure: MeasureId) -> Self {
        Self { measure, goal: None, margin: None, sent: Sent::NotSaid, rate: USUAL_RATE }
    }

    /// Whether it can be asked.
    ///
    /// # Errors
    /// A [`ManyRefused`], with the reason.
    pub fn fits(&self) -> Result<(), ManyRefused> {
        match self.goal() {
            Goal::Tighter => return Err(ManyRefused::Scatter),
            Goal::NearerZero => return Err(ManyRefused::NearerZero),
            Goal::Higher | Goal::Lower | Goal::Different => {}
        }
        if let Some(got) = self.margin.filter(|margin| !(margin.is_finite() && *margin >= 0.0)) {
            return Err(ManyRefused::NotAMargin { got });
        }
        if !(self.rate > 0.0 && self.rate < 1.0) {
            return Err(ManyRefused::NotARate { got: self.rate });
        }
        Ok(())
    }

    /// What better means.
    #[must_use]
    pub fn goal(&self) -> Goal {
        self.asked_of(0, None, Stopping::default()).goal_on(&self.measure)
    }

    /// The smallest difference that matters.
    #[must_use]
    pub fn margin(&self) -> Option<f64> {
        self.asked_of(0, None, Stopping::default()).margin_on(&self.measure).map(Margin::value)
    }

    /// Which way a gain lies; up where any difference counts.
    #[must_use]
    pub fn toward(&self) -> Direction {
        if self.goal() == Goal::Lower { Direction::Lower } else { Direction::Higher }
    }

    /// The question that one session of the pile is asked.
    #[must_use]
    pub fn asked_of(&self, baseline: usize, candidate: Option<usize>, stopping: Stopping) -> Question {
        Question {
            baseline,
            candidate,
            measure: self.measure.clone(),
            goal: self.goal,
            margin: self.margin,
            first_margin: None,
            stopping,
            differs: None,
        }
    }
}
