//! Why a session is answered alone and not pooled.

use serde::{Deserialize, Serialize};

/// Why a session is answered alone and not pooled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NotPooled {
    /// It holds one club.
    OneClub,
    /// It holds several, and nobody said which is the golfer's own and which the fitting's.
    SeveralClubs,
    /// One club was hit after the other: what warming up did would be taken for what fittings bring.
    OneAfterTheOther,
    /// Nobody knows the order of hitting.
    OrderNotKnown,
    /// Hit in turn, but too few rounds hold both clubs to compare within them.
    TooFewRounds,
    /// Averages only: of them nobody knows the order.
    AveragesOnly,
    /// Averages without a number of shots.
    CountsMissing,
    /// The best shots, or chosen ones.
    OnlyTheBest,
    /// The measure was not recorded for both clubs.
    NotMeasured,
    /// Too few shots with a club.
    TooFewShots,
    /// Shots without any scatter.
    NoScatter,
    /// A value that cannot be, and was not confirmed.
    ValueInDoubt,
}
