//! What can be seen of a session that speaks for or against it, and how much each weighs.

use serde::Serialize;
use session::Order;
use session::measure::MeasureId;

/// How much a finding speaks against the session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Weight {
    /// It can turn an answer around.
    Serious,
    /// Worth knowing.
    Note,
    /// Done as it should be.
    Good,
}

/// What was seen.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Seen {
    /// How builds and time lie.
    Order {
        /// As the analysis took it.
        order: Order,
        /// Rounds that hold both builds.
        rounds: u32,
    },
    /// The clubs were changed so rarely that each turn is a small block.
    LongTurns {
        /// Average number of shots with one build in a round.
        shots: f64,
    },
    /// One build had the cold shots at the start to itself.
    ColdStart {
        /// Index of the build that was hit cold.
        build: usize,
        /// Its shots before any other build was touched.
        shots: usize,
        /// Head start that ordinary warming up gives the other build, in the unit of the measure asked for.
        head_start: Option<f64>,
    },
    /// One build has far more shots than the other.
    UnequalCounts {
        /// Build with fewer shots.
        fewer: usize,
        /// Its shots.
        few: usize,
        /// Build with more shots.
        more: usize,
        /// Its shots.
        many: usize,
    },
    /// The measure moved over the session, whichever build was in hand.
    Drift {
        /// Change from the first shot to the last, in the measure's unit.
        change: f64,
        /// Lower end of its interval.
        low: f64,
        /// Upper end of it.
        high: f64,
    },
    /// Shot numbers jump: shots were hit that are not here.
    NumbersMissing {
        /// How many are missing.
        missing: usize,
        /// The first missing number.
        first: u32,
    },
    /// An average in the source cannot come from the shots that are in it.
    SummaryDisagrees {
        /// Index of the build.
        build: usize,
        /// The measure.
        measure: MeasureId,
        /// The average as printed.
        printed: f64,
        /// The average of the shots.
        of_shots: f64,
        /// Number of shots that were read.
        n: usize,
        /// Number of shots the source claims.
        claimed: Option<u32>,
    },
    /// Shots were set aside by hand.
    LeftOut {
        /// How many, by build index.
        by_build: Vec<usize>,
    },
    /// Shots far from the rest of their build; they count.
    FarShots {
        /// How many.
        count: usize,
        /// Index of the build with the most of them.
        build: usize,
    },
    /// The answer would change with a few shots less.
    FewShotsDecide {
        /// How many.
        shots: usize,
    },
    /// The number of shots was not fixed before.
    NotFixed,
    /// Looked at on the way, as planned.
    PlannedLooks {
        /// Rounds hit.
        round: u32,
        /// Rounds planned.
        planned: u32,
    },
    /// Nothing was measured about the swing or the strike.
    NoSwingOrStrike {
        /// Whether the speed of the club was measured.
        club_speed: bool,
        /// Whether the place of the strike was measured.
        strike: bool,
    },
    /// Only averages: none of the above can be looked at.
    AveragesOnly,
}

impl Seen {
    /// How much it speaks against the session.
    #[must_use]
    pub fn weight(&self) -> Weight {
        match self {
            Self::Order { order: Order::Interleaved, .. } | Self::PlannedLooks { .. } => Weight::Good,
            Self::Order { .. }
            | Self::LongTurns { .. }
            | Self::ColdStart { .. }
            | Self::NumbersMissing { .. }
            | Self::SummaryDisagrees { .. }
            | Self::AveragesOnly => Weight::Serious,
            Self::UnequalCounts { .. }
            | Self::Drift { .. }
            | Self::LeftOut { .. }
            | Self::FarShots { .. }
            | Self::FewShotsDecide { .. }
            | Self::NotFixed
            | Self::NoSwingOrStrike { .. } => Weight::Note,
        }
    }
}
