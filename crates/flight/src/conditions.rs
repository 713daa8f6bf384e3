//! What the ball flies through: air, wind and the ball itself.

use crate::air::Air;
use crate::error::{ConditionsError, Quantity};
use crate::limits::check_conditions;
use crate::vector::Vec3;
use std::f64::consts::PI;

/// Standard gravity, m/s². Source: 3rd CGPM (1901), ISO 2533; exact by definition.
pub const STANDARD_GRAVITY_MPS2: f64 = 9.806_65;

/// A ball as a point mass with a cross section.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ball {
    /// Mass, kg.
    pub mass_kg: f64,
    /// Diameter, m.
    pub diameter_m: f64,
}

/// The ball at the limits of the rules of golf: heaviest (1.62 oz) and smallest (1.68 in).
pub const BALL: Ball = Ball { mass_kg: 0.045_93, diameter_m: 0.042_67 };

impl Ball {
    /// Radius, m.
    #[must_use]
    pub fn radius_m(&self) -> f64 {
        self.diameter_m / 2.0
    }

    /// Cross section, m²: π d²/4.
    #[must_use]
    pub fn cross_section_m2(&self) -> f64 {
        PI * self.diameter_m * self.diameter_m / 4.0
    }
}

/// Level wind, the same at every height.
///
/// Real wind grows with height, so a reading at the ground usually understates its effect.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wind {
    towards_target_mps: f64,
    towards_right_mps: f64,
}

impl Wind {
    /// Calm.
    pub const CALM: Self = Self { towards_target_mps: 0.0, towards_right_mps: 0.0 };

    /// Wind by its components, m/s: a tail wind and a wind blowing to the right are positive.
    ///
    /// # Errors
    /// A component beyond ±30 m/s or not finite.
    pub fn new(towards_target_mps: f64, towards_right_mps: f64) -> Result<Self, ConditionsError> {
        check_conditions(Quantity::Wind, towards_target_mps)?;
        check_conditions(Quantity::Wind, towards_right_mps)?;
        Ok(Self { towards_target_mps, towards_right_mps })
    }

    /// Towards the target, m/s; a head wind is negative.
    #[must_use]
    pub fn towards_target_mps(&self) -> f64 {
        self.towards_target_mps
    }

    /// Towards the right, m/s.
    #[must_use]
    pub fn towards_right_mps(&self) -> f64 {
        self.towards_right_mps
    }

    fn velocity_mps(&self) -> Vec3 {
        Vec3::new(self.towards_target_mps, 0.0, self.towards_right_mps)
    }
}

/// Air and wind of one session.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// The air.
    pub air: Air,
    /// The wind.
    pub wind: Wind,
}

impl Conditions {
    /// ISO 2533 sea level, calm: the air to which carries are brought.
    pub const STANDARD: Self = Self { air: Air::STANDARD, wind: Wind::CALM };
}

/// Everything around a launch that the equations of motion need. Free of limits, for closed-form checks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Medium {
    /// Air density, kg/m³; 0 is a vacuum.
    pub density_kgpm3: f64,
    /// Velocity of the air, m/s.
    pub wind_mps: Vec3,
    /// The ball.
    pub ball: Ball,
}

impl Medium {
    /// The rules' ball in given conditions.
    #[must_use]
    pub fn of(conditions: &Conditions) -> Self {
        Self {
            density_kgpm3: conditions.air.density_kgpm3(),
            wind_mps: conditions.wind.velocity_mps(),
            ball: BALL,
        }
    }
}
