//! One part of a gap: through which number it came, how large it is, and whose doing it is.

use serde::Serialize;
use session::known::Known;
use stats::Level;

/// Through what a part of the gap came.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Factor {
    /// Ball speed.
    BallSpeed,
    /// Launch angle.
    LaunchAngle,
    /// Spin.
    SpinRate,
    /// Where the ball started.
    LaunchDirection,
    /// Tilt of the spin axis: how the ball curved.
    SpinAxis,
    /// What the flight model does not explain.
    Rest,
    /// Of ball speed: how fast the club was swung.
    ClubSpeed,
    /// Of ball speed: how much of that reached the ball.
    Smash,
}

impl Factor {
    /// The measure that it is, `None` for what the flight model does not explain.
    #[must_use]
    pub fn measure(self) -> Option<Known> {
        Some(match self {
            Self::BallSpeed => Known::BallSpeed,
            Self::LaunchAngle => Known::LaunchAngle,
            Self::SpinRate => Known::SpinRate,
            Self::LaunchDirection => Known::LaunchDirection,
            Self::SpinAxis => Known::SpinAxis,
            Self::ClubSpeed => Known::ClubSpeed,
            Self::Smash => Known::Smash,
            Self::Rest => return None,
        })
    }
}

/// Whose doing a part is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Belongs {
    /// The swing that day; a club can only invite it.
    Swing,
    /// Club and swing together: these numbers cannot separate them.
    Both,
    /// Nobody's: ball, air, device, luck.
    Unexplained,
}

/// The level of every interval here: what is looked at is one of five parts, or of nine numbers of the delivery, and what
/// is said of one must agree with what is said of the others.
pub(super) const LEVEL: Level = Level::P99;

/// A size with its interval, at 99 %.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Span {
    /// Candidate − baseline.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Span {
    /// Whether the interval lies to one side of zero.
    #[must_use]
    pub fn is_clear(&self) -> bool {
        self.low > 0.0 || self.high < 0.0
    }
}

/// One part of the gap.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PartFacts {
    /// Through what.
    pub factor: Factor,
    /// Carry, yd.
    pub yards: Span,
    /// Whether its interval lies to one side of zero.
    pub is_sure: bool,
    /// Whose doing.
    pub belongs: Belongs,
    /// By what the two builds differed, in the unit of the measure; `None` where they cannot be compared on it.
    #[serde(skip)]
    pub differed: Option<Span>,
}
