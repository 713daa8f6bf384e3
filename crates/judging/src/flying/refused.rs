//! Why something cannot be flown: weather that nobody has, a launch that no ball makes, builds that are not there.

use flight::{ConditionsError, LaunchError, Quantity};
use session::Session;
use session::known::Known;
use session::question::BuildPlace;

/// A figure of the weather.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WeatherFigure {
    /// Of the air.
    Temperature,
    /// Above sea level.
    Altitude,
    /// Relative humidity.
    Humidity,
    /// Along or across the target line.
    Wind,
}

/// Why no ball can be flown in this weather.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotConditions {
    /// A figure is no number, or outside the formulas.
    Outside(WeatherFigure),
    /// For a reason that no single figure has.
    Unusable,
}

impl From<ConditionsError> for NotConditions {
    fn from(error: ConditionsError) -> Self {
        let (ConditionsError::NotFinite { quantity } | ConditionsError::Outside { quantity, .. }) = error
        else {
            return Self::Unusable;
        };
        Self::Outside(match quantity {
            Quantity::Temperature => WeatherFigure::Temperature,
            Quantity::Humidity => WeatherFigure::Humidity,
            Quantity::Wind => WeatherFigure::Wind,
            _ => WeatherFigure::Altitude,
        })
    }
}

/// Why a launch cannot be flown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FlyRefused {
    /// The weather cannot be.
    Conditions(NotConditions),
    /// A number of the launch is none.
    NotANumber(Known),
    /// A number of the launch is outside what golf balls do.
    Outside(Known),
    /// The ball does not leave the ground.
    DoesNotFly,
}

impl From<NotConditions> for FlyRefused {
    fn from(refused: NotConditions) -> Self {
        Self::Conditions(refused)
    }
}

impl From<LaunchError> for FlyRefused {
    fn from(error: LaunchError) -> Self {
        match error {
            LaunchError::NotFinite { quantity } => Self::NotANumber(factor(quantity)),
            LaunchError::Outside { quantity, .. } => Self::Outside(factor(quantity)),
            _ => Self::DoesNotFly,
        }
    }
}

fn factor(quantity: Quantity) -> Known {
    match quantity {
        Quantity::BallSpeed => Known::BallSpeed,
        Quantity::Spin => Known::SpinRate,
        Quantity::SpinAxis => Known::SpinAxis,
        Quantity::Azimuth => Known::LaunchDirection,
        _ => Known::LaunchAngle,
    }
}

/// Why carries cannot be brought to standard air.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirRefused {
    /// The weather cannot be.
    Conditions(NotConditions),
    /// No shot has these numbers and its carry.
    NothingToBring {
        /// What a flight needs.
        needed: [Known; 3],
    },
}

impl From<NotConditions> for AirRefused {
    fn from(refused: NotConditions) -> Self {
        Self::Conditions(refused)
    }
}

/// A build that is not in the session.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NoSuchBuild {
    /// Which one of the two that were named.
    pub place: BuildPlace,
    /// The index it was named by.
    pub got: usize,
    /// How many there are.
    pub builds: usize,
}

/// Whether the session has the build.
pub(crate) fn check_build(session: &Session, place: BuildPlace, got: usize) -> Result<(), NoSuchBuild> {
    let builds = session.builds.len();
    if got < builds { Ok(()) } else { Err(NoSuchBuild { place, got, builds }) }
}
