//! The values of one measure, one for each shot, at the precision they were given in.
//!
//! A golfer's figures have few decimals in the unit they were read in, so a column is kept as whole numbers of its
//! last decimal place, and comes back to the last bit (or, after somebody's arithmetic, without the noise it left).
//! A column with more than six decimals in every unit, worked out by a spreadsheet, is rounded to seven digits of its
//! largest value, and says so.

use super::bytes::{Broken, Reader, Writer, from_decimals, same, scaled};
use super::codes::UNITS;
use super::series;
use session::measure::Unit;
use session::units::SourceUnit;

/// More decimals than these were worked out, not measured.
const MOST_DECIMALS: u8 = 6;

/// What a rounded column keeps of its largest value: seven digits.
const KEPT: f64 = 1e7;

/// What arithmetic leaves behind, as a part of the largest value.
const LAST_BITS: f64 = 1e-13;

/// The unit code of values that are no decimals of any unit: all bits of each.
const ALL_BITS: u8 = 255;
/// The unit code of values in the measure's own unit.
const OWN: u8 = 0;
/// Set in the decimals of a column that was rounded.
const ROUNDED: u8 = 0x80;

/// The values of a measure read back.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Column {
    pub(crate) values: Vec<Option<f64>>,
    /// Whether they were given with more digits than the link keeps.
    pub(crate) rounded: bool,
}

/// Writes a column of a measure with this canonical unit (`None` for the golfer's own measures).
pub(crate) fn write(
    out: &mut Writer,
    values: &[Option<f64>],
    unit: Option<Unit>,
    builds: &[usize],
    kinds: usize,
) {
    if let Some((code, decimals, whole)) = as_given(values, unit) {
        out.byte(code);
        out.byte(decimals);
        return series::write(out, &whole, builds, kinds);
    }
    if let Some((decimals, whole)) = rounded(values) {
        out.byte(OWN);
        out.byte(decimals | ROUNDED);
        return series::write(out, &whole, builds, kinds);
    }
    out.byte(ALL_BITS);
    let there: Vec<Option<i64>> = values.iter().map(|value| value.map(|_| 0)).collect();
    series::write(out, &there, builds, kinds);
    values.iter().flatten().for_each(|value| out.0.extend_from_slice(&value.to_le_bytes()));
}

/// Reads the column of as many shots as there are builds of shots.
pub(crate) fn read(
    input: &mut Reader<'_>,
    unit: Option<Unit>,
    builds: &[usize],
    kinds: usize,
) -> Result<Column, Broken> {
    let code = input.byte()?;
    if code == ALL_BITS {
        let there = series::read(input, builds, kinds)?;
        let mut values = Vec::with_capacity(there.len());
        for is_there in there {
            values.push(match is_there {
                Some(_) => Some(finite(f64::from_le_bytes(input.array()?))?),
                None => None,
            });
        }
        return Ok(Column { values, rounded: false });
    }
    let decimals = input.byte()?;
    let given_in = match code.checked_sub(1) {
        Some(at) => Some((*UNITS.get(usize::from(at)).ok_or(Broken)?, unit.ok_or(Broken)?)),
        None => None,
    };
    let whole = series::read(input, builds, kinds)?;
    let mut values = Vec::with_capacity(whole.len());
    for number in whole {
        values.push(match number {
            Some(number) => Some(finite(value(number, decimals & !ROUNDED, given_in).ok_or(Broken)?)?),
            None => None,
        });
    }
    Ok(Column { values, rounded: decimals & ROUNDED != 0 })
}

fn finite(value: f64) -> Result<f64, Broken> {
    if value.is_finite() { Ok(value) } else { Err(Broken) }
}

/// The value of a whole number of units in a decimal place of a unit, in the canonical one.
fn value(whole: i64, decimals: u8, given_in: Option<(SourceUnit, Unit)>) -> Option<f64> {
    let given = from_decimals(whole, decimals);
    given_in.map_or(Some(given), |(unit, canonical)| unit.convert(given, canonical))
}

/// The column in the unit in which every value has the fewest decimals: when that gives every value back, or, for
/// values that went through somebody's arithmetic, all but their last bits.
fn as_given(values: &[Option<f64>], unit: Option<Unit>) -> Option<(u8, u8, Vec<Option<i64>>)> {
    let others = (1..).zip(UNITS).filter_map(|(code, given_in)| {
        let canonical = unit?;
        let is_other = given_in.convert(1.0, canonical).is_some_and(|factor| !same(factor, 1.0));
        is_other.then_some((code, Some((given_in, canonical))))
    });
    let ways: Vec<_> = std::iter::once((OWN, None)).chain(others).collect();
    let noise = LAST_BITS * largest(values);
    [0.0, noise].into_iter().find_map(|tolerance| {
        let fewest = |&(code, given_in)| {
            (0..=MOST_DECIMALS).find_map(|decimals| {
                Some((code, decimals, all_whole(values, decimals, given_in, tolerance)?))
            })
        };
        ways.iter().filter_map(fewest).min_by_key(|(_, decimals, _)| *decimals)
    })
}

fn all_whole(
    values: &[Option<f64>],
    decimals: u8,
    given_in: Option<(SourceUnit, Unit)>,
    tolerance: f64,
) -> Option<Vec<Option<i64>>> {
    let per_unit = match given_in {
        Some((unit, canonical)) => unit.convert(1.0, canonical)?,
        None => 1.0,
    };
    let whole_of = |number: f64| {
        let whole = scaled(number / per_unit, decimals)?;
        let back = value(whole, decimals, given_in)?;
        (same(back, number) || (back - number).abs() < tolerance).then_some(whole)
    };
    values.iter().map(|value| value.map_or(Some(None), |number| whole_of(number).map(Some))).collect()
}

fn largest(values: &[Option<f64>]) -> f64 {
    values.iter().flatten().fold(0.0, |largest, value| largest.max(value.abs()))
}

fn rounded(values: &[Option<f64>]) -> Option<(u8, Vec<Option<i64>>)> {
    let largest = largest(values);
    let decimals = (0..=9)
        .rev()
        .find(|&decimals| scaled(largest, decimals).is_some_and(|w| from_decimals(w, 0) < KEPT))?;
    // Of a column of tiny values nine decimals would keep less than seven digits.
    if decimals == 9 && largest * 1e9 < KEPT / 10.0 {
        return None;
    }
    let whole = values.iter().map(|value| value.map_or(Some(None), |v| scaled(v, decimals).map(Some)));
    Some((decimals, whole.collect::<Option<Vec<_>>>()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn column(values: &[f64], unit: Option<Unit>) -> (Column, usize) {
        let values: Vec<Option<f64>> = values.iter().copied().map(Some).collect();
        let builds = vec![0; values.len()];
        let mut out = Writer::default();
        write(&mut out, &values, unit, &builds, 1);
        let mut input = Reader(&out.0);
        let column = read(&mut input, unit, &builds, 1).expect("what was written");
        assert!(input.is_empty());
        (column, out.0.len())
    }

    #[test]
    fn figures_in_any_unit_come_back_to_the_last_bit_and_short() {
        let given = [231.4, 228.9, 240.0, 219.7, 233.3, 229.2];
        for (unit, canonical) in [
            (SourceUnit::Yard, Unit::Yd),
            (SourceUnit::Meter, Unit::Yd),
            (SourceUnit::KilometerPerHour, Unit::Mph),
            (SourceUnit::Inch, Unit::Mm),
        ] {
            let values = given.map(|v| unit.convert(v, canonical).expect("a unit of it"));
            let (column, bytes) = column(&values, Some(canonical));
            assert_eq!(column, Column { values: values.map(Some).to_vec(), rounded: false }, "{unit:?}");
            assert!(bytes < 16, "{unit:?}: {bytes} bytes");
        }
    }

    #[test]
    fn more_digits_than_anybody_measures_are_rounded_and_say_so() {
        let values = [251.384_719_283_7, 248.1, 1.0 / 3.0];
        let (column, _) = column(&values, None);
        assert!(column.rounded);
        let near = |(a, b): (&f64, &Option<f64>)| b.is_some_and(|b| (a - b).abs() <= 0.5e-4);
        assert!(values.iter().zip(&column.values).all(near), "{:?}", column.values);
    }

    #[test]
    fn values_of_any_size_come_back() {
        for values in [[1e300, -1e-300, 0.0], [1e-12, 2e-12, 1.0 / 3.0e9], [f64::MAX, f64::MIN_POSITIVE, 1.0]]
        {
            assert_eq!(column(&values, None).0, Column { values: values.map(Some).to_vec(), rounded: false });
        }
    }
}
