//! Short codes for what links name often. A link lives forever, so a code is never changed or given away again:
//! add at the end only.

use session::question::Goal;
use session::units::SourceUnit;
use session::{Order, SummaryOf, TemperatureUnit};

/// Measures of the trade's list. One that stands in no row is written by its id.
pub(crate) const MEASURES: [&str; 21] = [
    "carry",
    "total",
    "offline",
    "ball_speed",
    "club_speed",
    "launch_angle",
    "launch_direction",
    "spin_rate",
    "spin_axis",
    "apex",
    "descent_angle",
    "hang_time",
    "smash",
    "attack_angle",
    "club_path",
    "face_angle",
    "face_to_path",
    "dynamic_loft",
    "spin_loft",
    "strike_height",
    "strike_offset",
];

/// Units a column may have been given in: its values are short in that one and long in any other.
pub(crate) const UNITS: [SourceUnit; 13] = [
    SourceUnit::Yard,
    SourceUnit::Meter,
    SourceUnit::Foot,
    SourceUnit::Inch,
    SourceUnit::Millimeter,
    SourceUnit::Centimeter,
    SourceUnit::MilePerHour,
    SourceUnit::KilometerPerHour,
    SourceUnit::MeterPerSecond,
    SourceUnit::FootPerSecond,
    SourceUnit::RevolutionPerMinute,
    SourceUnit::Degree,
    SourceUnit::Second,
];

/// What better means; code 0 leaves it to the measure.
pub(crate) const GOALS: [Goal; 5] =
    [Goal::Higher, Goal::Lower, Goal::NearerZero, Goal::Tighter, Goal::Different];

/// How builds and time lie.
pub(crate) const ORDERS: [Order; 3] = [Order::Unknown, Order::Interleaved, Order::Blocked];

/// Which shots an average stands for.
pub(crate) const SUMMARIES_OF: [SummaryOf; 3] = [SummaryOf::All, SummaryOf::Best, SummaryOf::Chosen];

/// Units of a temperature.
pub(crate) const TEMPERATURE_UNITS: [TemperatureUnit; 2] =
    [TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit];

/// The code of an entry.
pub(crate) fn code<T: PartialEq>(list: &[T], entry: &T) -> Option<u8> {
    list.iter().position(|there| there == entry).and_then(|at| u8::try_from(at).ok())
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::measure;

    #[test]
    fn every_measure_has_a_code() {
        for measure in &measure::MEASURES {
            assert!(MEASURES.contains(&measure.id), "{}: add it at the end of the codes", measure.id);
        }
    }
}
