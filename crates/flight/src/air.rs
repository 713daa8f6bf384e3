//! Density of moist air from temperature, station pressure or altitude, and humidity.
//!
//! Moist ideal gas. Agrees with the OIML/CIPM approximation within 6e-4 kg/m³ from 0 to 35 °C.
//! Density is taken as constant over a flight: its change with height is worth about 0.2 m of carry.

use crate::error::{ConditionsError, Quantity};
use crate::limits::check_conditions;
use libm::{exp, pow};

/// Specific gas constant of dry air, J/(kg K). Source: ISO 2533 (from memory).
const DRY_GAS_CONSTANT: f64 = 287.052_87;
/// Specific gas constant of water vapor, J/(kg K). Source: CIPM-2007, Picard et al. 2008 (from memory).
const VAPOR_GAS_CONSTANT: f64 = 461.495;
/// Sea-level temperature, K. Source: ISO 2533.
const SEA_LEVEL_TEMPERATURE_K: f64 = 288.15;
/// Sea-level pressure, Pa. Source: ISO 2533.
const SEA_LEVEL_PRESSURE_PA: f64 = 101_325.0;
/// Temperature lapse of the troposphere, K/m. Source: ISO 2533.
const LAPSE_KPM: f64 = 0.0065;
/// g/(R · lapse). Source: ISO 2533 (from memory).
const PRESSURE_EXPONENT: f64 = 5.255_88;

/// Where the pressure of the air comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Station {
    /// Pressure at the place itself, Pa; not the sea-level value of a weather report.
    PressurePa(f64),
    /// Height above sea level, m; the standard atmosphere gives the pressure.
    AltitudeM(f64),
}

/// Air at one place: made only from values in the range of its formulas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    temperature_k: f64,
    pressure_pa: f64,
    relative_humidity: f64,
}

impl Air {
    /// ISO 2533 sea level: 15 °C, 101 325 Pa, dry.
    pub const STANDARD: Self = Self {
        temperature_k: SEA_LEVEL_TEMPERATURE_K,
        pressure_pa: SEA_LEVEL_PRESSURE_PA,
        relative_humidity: 0.0,
    };

    /// Air from its temperature, pressure or altitude, and relative humidity (0 to 1).
    ///
    /// # Errors
    /// Temperature outside −50 to 55 °C, pressure outside 400 to 1100 hPa, altitude outside −500 to
    /// 6000 m, humidity outside 0 to 1, or any value not finite.
    pub fn new(
        temperature_k: f64,
        station: Station,
        relative_humidity: f64,
    ) -> Result<Self, ConditionsError> {
        check_conditions(Quantity::Temperature, temperature_k)?;
        check_conditions(Quantity::Humidity, relative_humidity)?;
        let pressure_pa = match station {
            Station::PressurePa(pressure_pa) => pressure_pa,
            Station::AltitudeM(altitude_m) => {
                check_conditions(Quantity::Altitude, altitude_m)?;
                station_pressure_pa(altitude_m)
            }
        };
        check_conditions(Quantity::Pressure, pressure_pa)?;
        Ok(Self { temperature_k, pressure_pa, relative_humidity })
    }

    /// Temperature, K.
    #[must_use]
    pub fn temperature_k(&self) -> f64 {
        self.temperature_k
    }

    /// Station pressure, Pa.
    #[must_use]
    pub fn pressure_pa(&self) -> f64 {
        self.pressure_pa
    }

    /// Relative humidity, 0 to 1.
    #[must_use]
    pub fn relative_humidity(&self) -> f64 {
        self.relative_humidity
    }

    /// Density, kg/m³.
    ///
    /// ρ = (p − e)/(R_dry T) + e/(R_vapor T),  e = RH · psv(T).
    /// Accuracy: 6e-4 kg/m³ against the OIML/CIPM approximation, 0 to 35 °C.
    #[must_use]
    pub fn density_kgpm3(&self) -> f64 {
        let t = self.temperature_k;
        // In hot thin air 100 % humidity may not exceed the pressure itself.
        let e = (self.relative_humidity * saturation_pressure_pa(t)).min(self.pressure_pa);
        (self.pressure_pa - e) / (DRY_GAS_CONSTANT * t) + e / (VAPOR_GAS_CONSTANT * t)
    }
}

/// Pressure of the standard atmosphere at a height above sea level, Pa.
///
/// p(h) = 101325 (1 − 0.0065 h/288.15)^5.25588
/// Requires: the troposphere, h below 11 km; above the model's top (44 km) it is 0.
/// Accuracy: 2 Pa against the tables to 2 km. Source: ISO 2533 (exponent from memory).
#[must_use]
pub fn station_pressure_pa(altitude_m: f64) -> f64 {
    let ratio = 1.0 - LAPSE_KPM * altitude_m / SEA_LEVEL_TEMPERATURE_K;
    if ratio <= 0.0 { 0.0 } else { SEA_LEVEL_PRESSURE_PA * pow(ratio, PRESSURE_EXPONENT) }
}

/// Saturation pressure of water vapor, Pa.
///
/// psv = exp(1.2378847e-5 T² − 1.9121316e-2 T + 33.93711047 − 6343.1645/T),  T in K.
/// Source: CIPM-2007, Picard et al. 2008 (from memory).
fn saturation_pressure_pa(t: f64) -> f64 {
    exp(1.237_884_7e-5 * t * t - 1.912_131_6e-2 * t + 33.937_110_47 - 6_343.164_5 / t)
}
