//! What a session may tell beside its shots: a second thing that changed, and the weather.

use serde::{Deserialize, Serialize};

/// Most values of a second factor; more of them are a label, not a change.
pub const MOST_SECOND: usize = 12;

/// A second thing that changed during the session, beside the build: a lesson, another ball, another tee.
///
/// Each shot names the value it was hit under, [`crate::Shot::second`].
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SecondFactor {
    /// What changed, as the source's heading has it.
    pub name: String,
    /// What it was: before and after, one ball and another. The first is what the others are held against.
    pub values: Vec<String>,
}

/// Unit of a temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum TemperatureUnit {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

/// Air and wind. Everything left open is as in standard air: 15 °C at sea level, dry, calm.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default)]
pub struct Conditions {
    /// Temperature of the air.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub temperature: Option<f64>,
    /// Its unit.
    pub temperature_unit: TemperatureUnit,
    /// Feet above sea level.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub altitude_ft: Option<f64>,
    /// Relative humidity, percent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub humidity_percent: Option<f64>,
    /// Wind toward the target, mph; a wind in the face is negative.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wind_helping_mph: Option<f64>,
    /// Wind blowing to the right, mph.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wind_to_right_mph: Option<f64>,
}

impl Conditions {
    /// The figures in the order in which files and links hold them; the unit of the temperature stands apart.
    pub fn figures(&self) -> [Option<f64>; 5] {
        let all = [
            self.temperature,
            self.altitude_ft,
            self.humidity_percent,
            self.wind_helping_mph,
            self.wind_to_right_mph,
        ];
        all.map(|figure| figure.filter(|f| f.is_finite()))
    }

    /// From such figures; `None` when nothing was said.
    pub fn from_figures(figures: [Option<f64>; 5], temperature_unit: TemperatureUnit) -> Option<Self> {
        let [temperature, altitude_ft, humidity_percent, wind_helping_mph, wind_to_right_mph] = figures;
        figures.iter().any(Option::is_some).then_some(Self {
            temperature,
            temperature_unit,
            altitude_ft,
            humidity_percent,
            wind_helping_mph,
            wind_to_right_mph,
        })
    }
}
