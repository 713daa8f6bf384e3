//! Which requests can be shown, and what is said to the others.

use crate::check::Refusal;
use crate::session::Session;
use crate::words::{short_name, shots};
use serde::Serialize;
use stats::Sample;

/// Fewest shots worth an average.
pub const FEWEST_SHOWN: u32 = 3;

/// Most shots that anybody calls a few; more are better compared as a session.
pub const MOST_SHOWN: u32 = 15;

/// As many as a golfer is usually shown.
const USUALLY_SHOWN: u32 = 5;

/// How few and how many shots can be shown of each build.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ShownLimits {
    /// Fewest.
    pub fewest: u32,
    /// Most: no build can show more shots than it has.
    pub most: u32,
}

pub(super) fn limits(one: &Sample, other: &Sample) -> ShownLimits {
    let fewer = u32::try_from(one.n().min(other.n())).unwrap_or(MOST_SHOWN);
    ShownLimits { fewest: FEWEST_SHOWN, most: fewer.min(MOST_SHOWN) }
}

impl ShownLimits {
    /// The number shown when nobody asked for another.
    pub(super) fn usual(self) -> u32 {
        self.most.min(USUALLY_SHOWN)
    }

    /// Whether this many can be shown.
    #[must_use]
    pub fn hold(self, shown: u32) -> bool {
        (self.fewest..=self.most).contains(&shown)
    }
}

pub(super) fn cannot_show(shown: u32, limits: ShownLimits) -> Refusal {
    Refusal {
        kind: "cannot_show_as_many".into(),
        place: "shown".into(),
        message: format!("{} of each club cannot be shown here.", shots(shown as usize)),
        remedy: if limits.fewest == limits.most {
            format!("Ask for {}.", limits.most)
        } else {
            format!("Ask for {} to {}.", limits.fewest, limits.most)
        },
    }
}

/// The shots of a build, if there are enough to show some of them.
pub(super) fn enough(session: &Session, build: usize, values: Vec<f64>) -> Result<Sample, Refusal> {
    let (n, name) = (values.len(), session.builds.get(build).map_or("", |b| b.name.as_str()));
    let refusal = |message: String| Refusal {
        kind: "too_few_shots".into(),
        place: "session.shots".into(),
        message,
        remedy: format!("Add the single shots: at least {FEWEST_SHOWN} with each club."),
    };
    if n < FEWEST_SHOWN as usize {
        return Err(refusal(match n {
            0 => format!("There are no single shots of this measure with {}.", short_name(name)),
            _ => format!("There are only {} of this measure with {}.", shots(n), short_name(name)),
        }));
    }
    Sample::new(values)
        .map_err(|_| refusal(format!("A value with {} is no usable number.", short_name(name))))
}

pub(super) fn one_build() -> Refusal {
    Refusal {
        kind: "one_build".into(),
        place: "session.builds".into(),
        message: "There is only one club here, and nothing to hold it against.".into(),
        remedy: "Add shots with a second club, and name the club of each shot.".into(),
    }
}

pub(super) fn scatter() -> Refusal {
    Refusal {
        kind: "scatter_not_shown".into(),
        place: "question.goal".into(),
        message: "How far luck reaches is shown for averages, not for scatter.".into(),
        remedy: "Choose another goal to see it.".into(),
    }
}
