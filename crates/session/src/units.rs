//! The units a source may use, and how they become the canonical ones.
//!
//! The only place where a factor stands. Canonical are yd, mph, rpm, deg, s and mm; to the
//! right, up and towards the toe are positive. All factors are exact: the yard is 0.9144 m,
//! the inch 25.4 mm and the mile 1609.344 m by definition.
//! Source: Federal Register 24 (1959) 5348, "Refinement of values for the yard and the pound".

use crate::measure::Unit;

/// Meters in a yard.
pub const M_PER_YD: f64 = 0.9144;
/// Meters in a foot.
pub const M_PER_FT: f64 = 0.3048;
/// Kilometers in a mile.
pub const KM_PER_MILE: f64 = 1.609_344;
/// Meters per second in a mile per hour.
pub const MPS_PER_MPH: f64 = 0.447_04;

/// A unit as found in a source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SourceUnit {
    /// Yard.
    Yard,
    /// Meter.
    Meter,
    /// Foot.
    Foot,
    /// Inch.
    Inch,
    /// Millimeter.
    Millimeter,
    /// Centimeter.
    Centimeter,
    /// Mile per hour.
    MilePerHour,
    /// Kilometer per hour.
    KilometerPerHour,
    /// Meter per second.
    MeterPerSecond,
    /// Foot per second.
    FootPerSecond,
    /// Revolution per minute.
    RevolutionPerMinute,
    /// Degree of angle.
    Degree,
    /// Second.
    Second,
}

struct Row {
    unit: SourceUnit,
    canonical: Unit,
    /// canonical = value · multiply / divide, both exact.
    multiply: f64,
    divide: f64,
    /// First the label shown, then other spellings; lower case, without spaces, points and slashes.
    spellings: &'static str,
}

const fn row(unit: SourceUnit, canonical: Unit, multiply: f64, divide: f64, spellings: &'static str) -> Row {
    Row { unit, canonical, multiply, divide, spellings }
}

/// Order of offering: for every canonical unit the canonical one comes first.
static ROWS: [Row; 15] = {
    use SourceUnit as S;
    [
        row(S::Yard, Unit::Yd, 1.0, 1.0, "yd yds yard yards y yarda yardas ヤード 야드"),
        row(S::Meter, Unit::Yd, 1.0, M_PER_YD, "m meter meters metre metres mtr mtrs metro metros"),
        row(S::Foot, Unit::Yd, 1.0, 3.0, "ft foot feet ' pie pies"),
        row(S::MilePerHour, Unit::Mph, 1.0, 1.0, "mph mih mileshour milesperhour"),
        row(S::KilometerPerHour, Unit::Mph, 1.0, KM_PER_MILE, "km/h kmh kph kmph kmhr km/u"),
        row(S::MeterPerSecond, Unit::Mph, 1.0, MPS_PER_MPH, "m/s ms mps msec"),
        row(S::FootPerSecond, Unit::Mph, M_PER_FT, MPS_PER_MPH, "ft/s fts fps"),
        row(
            S::RevolutionPerMinute,
            Unit::Rpm,
            1.0,
            1.0,
            "rpm rev/min revmin umin varv/min tr/min giri/min omw/min 回転",
        ),
        row(
            S::Degree,
            Unit::Deg,
            1.0,
            1.0,
            "deg degs degree degrees ° º grado grados grad grader gradi graden graus degrés 度 도",
        ),
        row(S::Second, Unit::S, 1.0, 1.0, "s sec secs second seconds segundo segundos"),
        row(S::Millimeter, Unit::Mm, 1.0, 1.0, "mm millimeter millimeters millimetre millimetres"),
        row(S::Centimeter, Unit::Mm, 10.0, 1.0, "cm centimeter centimeters centimetre centimetres"),
        row(S::Inch, Unit::Mm, 25.4, 1.0, "in inch inches ins \" ″"),
        // Feet and inches are also how a small sideways miss is read off a screen.
        row(S::Inch, Unit::Yd, 1.0, 36.0, "in"),
        row(S::Foot, Unit::Mm, 304.8, 1.0, "ft"),
    ]
};

/// Bytes of the longest spelling, with room to spare.
const LONGEST_SPELLING: usize = 14;

impl SourceUnit {
    /// As shown to the golfer, and as a hint names it.
    #[must_use]
    pub fn label(self) -> &'static str {
        ROWS.iter()
            .find(|row| row.unit == self)
            .and_then(|row| row.spellings.split(' ').next())
            .unwrap_or_default()
    }

    /// The unit that a spelling stands for, in any case, with or without points.
    #[must_use]
    pub fn from_text(text: &str) -> Option<Self> {
        if text.len() > 24 || text.starts_with(|c: char| c.is_ascii_digit()) {
            return None;
        }
        // Points and slashes say nothing: "m/s" is "ms", "r.p.m." is "rpm".
        let plain: String = text
            .chars()
            .filter(|c| !c.is_whitespace() && !matches!(c, '.' | '/'))
            .map(|c| c.to_ascii_lowercase())
            .collect();
        if plain.is_empty() || plain.len() > LONGEST_SPELLING {
            return None;
        }
        let same = |spelling: &str| spelling.bytes().filter(|b| *b != b'/').eq(plain.bytes());
        ROWS.iter().find(|row| row.spellings.split(' ').any(same)).map(|row| row.unit)
    }

    /// A value in this unit, in the canonical unit; `None` when they do not measure the same thing.
    ///
    /// canonical = value · multiply / divide, with exact factors; one rounding each.
    #[must_use]
    pub fn convert(self, value: f64, canonical: Unit) -> Option<f64> {
        ROWS.iter()
            .find(|row| row.unit == self && row.canonical == canonical)
            .map(|row| value * row.multiply / row.divide)
    }

    /// The units in which a measure with this canonical unit may be given, canonical first.
    pub fn choices(canonical: Unit) -> impl Iterator<Item = Self> {
        // The last two rows are readable but not worth offering.
        ROWS.iter().take(ROWS.len() - 2).filter(move |row| row.canonical == canonical).map(|row| row.unit)
    }

    /// The canonical unit itself as a source unit; `None` for a plain ratio.
    #[must_use]
    pub fn canonical(unit: Unit) -> Option<Self> {
        Self::choices(unit).next()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn factors_are_the_defined_ones() {
        let cases = [
            (SourceUnit::Meter, 0.9144, Unit::Yd, 1.0),
            (SourceUnit::Foot, 3.0, Unit::Yd, 1.0),
            (SourceUnit::KilometerPerHour, 1.609_344, Unit::Mph, 1.0),
            (SourceUnit::MeterPerSecond, 1609.344, Unit::Mph, 3600.0),
            (SourceUnit::FootPerSecond, 5280.0, Unit::Mph, 3600.0),
            (SourceUnit::Inch, 1.0, Unit::Mm, 25.4),
            (SourceUnit::Centimeter, 1.0, Unit::Mm, 10.0),
            (SourceUnit::Yard, 250.0, Unit::Yd, 250.0),
        ];
        for (unit, value, canonical, expected) in cases {
            let got = unit.convert(value, canonical).expect("same dimension");
            assert!((got - expected).abs() <= 1e-13 * expected, "{unit:?}: {got} is not {expected}");
        }
        assert_eq!(SourceUnit::Degree.convert(1.0, Unit::Yd), None);
    }

    #[test]
    fn spellings_are_understood() {
        for (text, unit) in [
            ("yds", SourceUnit::Yard),
            ("Yards", SourceUnit::Yard),
            ("M", SourceUnit::Meter),
            ("km/h", SourceUnit::KilometerPerHour),
            ("KPH", SourceUnit::KilometerPerHour),
            ("m / s", SourceUnit::MeterPerSecond),
            ("deg.", SourceUnit::Degree),
            ("°", SourceUnit::Degree),
            ("R.P.M.", SourceUnit::RevolutionPerMinute),
            ("\"", SourceUnit::Inch),
        ] {
            assert_eq!(SourceUnit::from_text(text), Some(unit), "{text}");
            assert_eq!(SourceUnit::from_text(unit.label()), Some(unit), "label of {text}");
        }
        assert_eq!(SourceUnit::from_text("furlong"), None);
        assert_eq!(SourceUnit::from_text(""), None);
    }
}
