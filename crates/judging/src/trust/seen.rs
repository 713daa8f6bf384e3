//! What can be seen of a session that speaks for or against it, and how much each weighs.

use crate::analysis::PartOf;
use crate::interval::Interval;
use crate::verdict::Direction;
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

/// Why a value is asked about.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Odd {
    /// Outside what the measure can be.
    OutOfRange {
        /// The least it can be.
        low: f64,
        /// The most.
        high: f64,
    },
    /// Ten times, or a tenth of, what the other shots of its build are.
    PointSlipped {
        /// The middle one of them.
        usual: f64,
    },
    /// Far from the rest of its build, and alone it moves the gap by more than matters.
    MovesTheAnswer {
        /// By how much.
        by: f64,
        /// What matters.
        margin: f64,
    },
}

/// What the interval that decided allows for what a session does to its shots.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum AllowedFor {
    /// Up to this much to either side.
    UpTo {
        /// In the unit of the measure asked for.
        size: f64,
    },
    /// Nothing: the answer is about scatter, which it hardly moves.
    Nothing,
    /// There is no interval, or nobody knows how much it would be.
    NotSaid,
}

/// How two builds share what a session does to its shots.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DriftShared {
    /// Hit in turn: both alike.
    Alike,
    /// Hit in turns so long that each is a small block: in part.
    InPart,
    /// Not at all.
    Not,
}

/// What a drift that builds do not share does to their gap.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Pushes {
    /// The candidate.
    pub build: usize,
    /// Which way it would differ by the drift alone.
    pub toward: Direction,
    /// By how much.
    pub by: f64,
    /// Whether that is the way of a gap that was found, and as much as would leave the rest of it to luck.
    pub leaves_luck: bool,
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
        /// The one of the two that was hit first in every round.
        always_first: Option<usize>,
    },
    /// Hit in turn, but the measure could not be compared within the rounds.
    NotCompared {
        /// Rounds that hold both builds.
        rounds: u32,
    },
    /// A value that is probably mistyped or misread, or one that decides alone.
    OddValue {
        /// Its shot, from 0; null for an average.
        shot: Option<usize>,
        /// Index of the build.
        build: usize,
        /// The measure.
        measure: MeasureId,
        /// The value.
        value: f64,
        /// Why it is asked about.
        because: Odd,
        /// How many more values of this measure are like it.
        others: usize,
    },
    /// A build moved where something changed, a lesson say.
    Moved {
        /// Index of the build.
        build: usize,
        /// What stood before the change, and what after it.
        names: [String; 2],
        /// Its average before.
        before: f64,
        /// Its average after.
        after: f64,
        /// After − before: the interval that decided.
        change: Interval,
    },
    /// A build gained on the other from shot to shot, as one that is new in the hand does.
    Learning {
        /// Index of the build that gained.
        build: usize,
        /// Index of the other.
        other: usize,
        /// Whether that is the baseline, on which warming up may have fallen.
        is_the_baseline: bool,
        /// How much it made up since its first shot, in the measure's unit.
        gained: f64,
        /// Whether that may be off by so much that only its least is told.
        is_rough: bool,
        /// Lower end of its interval.
        low: f64,
        /// Upper end of it.
        high: f64,
        /// Where it stands to the other once nothing is left to learn.
        then: f64,
        /// The interval of that.
        then_range: Interval,
    },
    /// The clubs were changed so rarely that each turn is a small block.
    LongTurns {
        /// Shots of the longest turn.
        longest: u32,
    },
    /// Shots of a turn hang together, and the answer's interval is wider for it.
    InStreaks {
        /// Of what a shot is off by, the share that goes on in the next, 0.5 to 0.8.
        memory: f64,
        /// The interval's width over what it would be with what is usual.
        widened: f64,
    },
    /// One build had the cold shots at the start to itself.
    ColdStart {
        /// Index of the build that was hit cold.
        build: usize,
        /// Its shots before any other build was touched.
        shots: usize,
        /// Head start that ordinary warming up gives the other build, in the unit of the measure asked for.
        head_start: Option<f64>,
        /// What the answer allows for it.
        allowed: AllowedFor,
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
        /// How the builds share it.
        shared: DriftShared,
        /// Which way it pushes the gap, where they do not share it and one of them was hit later.
        #[serde(skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "typescript", ts(optional))]
        pushes: Option<Pushes>,
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
        /// How many of how many, by build index.
        by_build: Vec<PartOf>,
    },
    /// Shots far from the rest of their build; they count.
    FarShots {
        /// How many, of both builds.
        count: usize,
        /// Index of the build with the most of them.
        build: usize,
        /// How many of them are of the other build.
        others: usize,
        /// Index of the other build.
        other: usize,
        /// Whether the typical shot, which they hardly move, is told of these two.
        typical_told: bool,
    },
    /// The answer would change with a few shots less.
    FewShotsDecide {
        /// How many.
        shots: usize,
        /// Rounds of a plan that are still to be hit; null without a plan, and at its end.
        rounds_to_go: Option<u32>,
    },
    /// The number of shots was not fixed before.
    NotFixed,
    /// Nobody said whether the number of shots was fixed before.
    FixedNotSaid,
    /// A plan was named, and these rounds are not of it.
    NotOfThePlan {
        /// Rounds that hold both builds.
        rounds: u32,
        /// Rounds planned.
        planned: u32,
    },
    /// Looked at on the way, as planned.
    PlannedLooks {
        /// Rounds hit.
        round: u32,
        /// Rounds planned.
        planned: u32,
        /// Whether the last of them is only begun.
        is_unfinished: bool,
        /// Whether anybody looked before the last of them.
        looked: bool,
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

/// A shot that alone moves the headline.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Moving {
    pub(super) shot: usize,
    pub(super) build: usize,
    pub(super) value: f64,
    pub(super) by: f64,
    pub(super) margin: f64,
    pub(super) others: usize,
}

impl Moving {
    pub(super) fn seen(self, measure: &MeasureId) -> Seen {
        let Self { shot, build, value, by, margin, others } = self;
        let because = Odd::MovesTheAnswer { by, margin };
        Seen::OddValue { shot: Some(shot), build, measure: measure.clone(), value, because, others }
    }
}

impl Seen {
    /// The value of this measure that the golfer is asked about.
    #[must_use]
    pub fn in_doubt_on(&self, asked: &MeasureId) -> Option<f64> {
        match self {
            Self::OddValue { measure, value, .. } if measure == asked => Some(*value),
            _ => None,
        }
    }

    /// How much it speaks against the session.
    #[must_use]
    pub fn weight(&self) -> Weight {
        match self {
            Self::Order { order: Order::Interleaved, always_first: None, .. } | Self::PlannedLooks { .. } => {
                Weight::Good
            }
            Self::Order { order: Order::Interleaved, .. } => Weight::Note,
            Self::Order { .. }
            | Self::OddValue { .. }
            | Self::Moved { .. }
            | Self::Learning { .. }
            | Self::LongTurns { .. }
            | Self::NotCompared { .. }
            | Self::ColdStart { .. }
            | Self::NumbersMissing { .. }
            | Self::SummaryDisagrees { .. }
            | Self::Drift { shared: DriftShared::Not, .. }
            | Self::AveragesOnly => Weight::Serious,
            Self::UnequalCounts { .. }
            | Self::Drift { .. }
            | Self::LeftOut { .. }
            | Self::FarShots { .. }
            | Self::FewShotsDecide { .. }
            | Self::InStreaks { .. }
            | Self::NotFixed
            | Self::FixedNotSaid
            | Self::NotOfThePlan { .. }
            | Self::NoSwingOrStrike { .. } => Weight::Note,
        }
    }
}
