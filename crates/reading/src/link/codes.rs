//! Short codes for what links name often. A link lives forever, so a code is never changed or given away again:
//! add at the end only.

use super::bytes::Broken;
use session::known::Known;
use session::question::{Differs, Goal};
use session::units::SourceUnit;
use session::{Order, SummaryOf, TemperatureUnit};

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

/// What differs between two builds; where nobody said it, there is no section of it.
pub(crate) const DIFFERS: [Differs; 3] = [Differs::Shaft, Differs::Head, Differs::OldClub];

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

/// The trade's measure with a code; the codes themselves stand with the measures.
pub(crate) fn measure(code: usize) -> Result<Known, Broken> {
    u8::try_from(code).ok().and_then(Known::of_link_code).ok_or(Broken)
}
