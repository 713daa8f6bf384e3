//! The measure of a table without headings: said in a title, said by the golfer, or guessed from the size of its values.

use crate::cut::shape::laid::Single;
use crate::hints::Hints;
use crate::lexicon::heading::understand;
use crate::lexicon::word::Word;
use session::known::Known;
use session::measure::MeasureId;
use session::units::SourceUnit;

/// The measure and the unit that a title names, words such as a club's beside them or not.
pub(crate) fn in_title(title: &str) -> Option<(Known, Option<SourceUnit>)> {
    let heading = understand(title);
    match heading.word {
        Some(Word::Measure(known)) => Some((known, heading.unit)),
        _ => None,
    }
}

/// What the golfer says, what the title says, or what the values can be.
pub(crate) fn of(
    title: Option<(Known, Option<SourceUnit>)>,
    hints: &Hints,
    unit: Option<SourceUnit>,
    values: &mut [f64],
) -> Single {
    let said = title.and_then(|(_, unit)| unit);
    match (&hints.single_measure, title) {
        (Some(id), _) => Single { measure: id.clone(), unit: said.or(unit), guessed: false },
        (None, Some((known, _))) => Single { measure: known.into(), unit: said.or(unit), guessed: false },
        (None, None) => Single { measure: guessed(unit, middle(values)), unit, guessed: true },
    }
}

/// As a heading that is understood again.
pub(crate) fn heading(single: &Single) -> String {
    let name = single.measure.known().map_or(single.measure.as_str(), |known| known.facts().name);
    match single.unit {
        Some(unit) => format!("{name} ({})", unit.label()),
        None => name.to_owned(),
    }
}

fn middle(values: &mut [f64]) -> f64 {
    arrange::sort_numbers(values);
    values.get(values.len() / 2).copied().unwrap_or(0.0)
}

/// A measure that numbers can be, when nothing names it: told by their unit, or by their size alone.
pub(crate) fn guessed(unit: Option<SourceUnit>, size: f64) -> MeasureId {
    let known = match unit {
        Some(SourceUnit::RevolutionPerMinute) => Known::SpinRate,
        Some(SourceUnit::MilePerHour | SourceUnit::KilometerPerHour | SourceUnit::MeterPerSecond) => {
            Known::BallSpeed
        }
        Some(SourceUnit::Degree) => Known::LaunchAngle,
        Some(SourceUnit::Yard | SourceUnit::Meter) => Known::Carry,
        _ if (1200.0..12_000.0).contains(&size) => Known::SpinRate,
        _ if (60.0..360.0).contains(&size) => Known::Carry,
        _ => return MeasureId::from("value"),
    };
    known.into()
}
