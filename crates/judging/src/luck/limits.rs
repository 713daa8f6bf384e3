//! Which requests can be shown, and why others cannot.

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

/// Why luck cannot be shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LuckRefused {
    /// There is nobody to hold against the baseline.
    OneBuild,
    /// Scatter was asked for, and this is about averages.
    Scatter,
    /// A build has too few single shots with this measure.
    TooFewShots {
        /// Index of the build.
        build: usize,
        /// Its shots.
        n: usize,
    },
    /// Every shot of each build has the same value.
    NoScatter {
        /// Index of one of them.
        build: usize,
    },
    /// Every round shows the same gap.
    NoScatterInRounds,
    /// A value of a build is no usable number.
    NoUsableNumber {
        /// Index of the build.
        build: usize,
    },
    /// That many shots of each build cannot be shown.
    CannotShow {
        /// As many as were asked for.
        shown: u32,
        /// How few and how many could be.
        limits: ShownLimits,
    },
}

/// The shots of a build, if there are enough to show some of them.
pub(super) fn enough(build: usize, values: Vec<f64>) -> Result<Sample, LuckRefused> {
    let n = values.len();
    if n < FEWEST_SHOWN as usize {
        return Err(LuckRefused::TooFewShots { build, n });
    }
    Sample::new(values).map_err(|_| LuckRefused::NoUsableNumber { build })
}
