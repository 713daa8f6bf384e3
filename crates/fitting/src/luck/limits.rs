//! Which requests can be shown, and what is said to the others.

use crate::check::Refusal;
use crate::session::Session;
use crate::words::short_name;
use serde::Serialize;
use stats::Sample;
use text::luck_limits as say;

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
        message: say::cannot_show(shown as usize),
        remedy: if limits.fewest == limits.most {
            say::ask_for(&limits.most.to_string())
        } else {
            say::ask_for_between(&limits.fewest.to_string(), &limits.most.to_string())
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
        remedy: say::add_single_shots(&FEWEST_SHOWN.to_string()),
    };
    if n < FEWEST_SHOWN as usize {
        return Err(refusal(match n {
            0 => say::no_single_shots(&short_name(name)),
            _ => say::only_so_many(n, &short_name(name)),
        }));
    }
    Sample::new(values).map_err(|_| refusal(say::no_usable_number(&short_name(name))))
}

pub(super) fn one_build() -> Refusal {
    Refusal {
        kind: "one_build".into(),
        place: "session.builds".into(),
        message: text::answer::one_club(),
        remedy: text::answer::one_club_next(),
    }
}

pub(super) fn scatter() -> Refusal {
    Refusal {
        kind: "scatter_not_shown".into(),
        place: "question.goal".into(),
        message: say::not_for_scatter(),
        remedy: say::not_for_scatter_remedy(),
    }
}
