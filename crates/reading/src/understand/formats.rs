//! The unit and the decimal mark of each column.

use crate::hints::Hints;
use crate::lexicon::figure::{Mark, MarkSign};
use crate::lexicon::number::{Cell, scan};
use crate::outcome::UnitSource;
use crate::understand::column::Column;
use session::measure;
use session::units::SourceUnit;

/// Unit: the golfer's word, then the heading, the units row, the values, the trade's usual one.
pub(crate) fn settle_unit(column: &mut Column<'_>, hints: &Hints) {
    let Some(id) = column.measure().cloned() else {
        column.unit = None;
        column.unit_label = String::new();
        column.unit_source = UnitSource::None;
        return;
    };
    let from_values = column.profile.units.iter().max_by_key(|(_, count)| *count).map(|(unit, _)| *unit);
    let (mut unit, mut source) = match (column.understood.unit, column.unit, from_values) {
        (Some(unit), _, _) => (Some(unit), UnitSource::Heading),
        (_, Some(unit), _) => (Some(unit), UnitSource::UnitsRow),
        (_, _, Some(unit)) => (Some(unit), UnitSource::Values),
        _ => (None, UnitSource::None),
    };
    let hint = hints.units.get(&column.index);
    if let Some(hint) = hint {
        unit = SourceUnit::from_text(hint);
        source = UnitSource::Hint;
    }
    let Some(known) = measure::known(&id) else {
        let written =
            column.understood.other_unit.clone().unwrap_or_else(|| std::mem::take(&mut column.unit_label));
        let label = hint.cloned().unwrap_or_else(|| unit.map_or(written, |u| u.label().to_owned()));
        column.unit_source = if label.is_empty() { UnitSource::None } else { source };
        column.unit_label = label;
        column.unit = None;
        return;
    };
    let fits = unit.filter(|u| u.convert(1.0, known.unit).is_some());
    column.unit = fits.or_else(|| SourceUnit::canonical(known.unit));
    column.unit_source = match (fits, column.unit) {
        (Some(_), _) => source,
        (None, Some(_)) => UnitSource::Assumed,
        (None, None) => UnitSource::None,
    };
    column.unit_label = column.unit.map_or(String::new(), |u| u.label().to_owned());
}

/// Decimal mark of each column: its own sure figures, else what makes its values plausible, else
/// what the other columns use.
pub(crate) fn settle_marks(columns: &mut [Column<'_>], hints: &Hints) {
    let everywhere = hints.decimal_mark.as_deref().and_then(Mark::from_text);
    let mut all = (0, 0);
    for votes in columns.iter().filter(|c| c.measure().is_some()).map(|c| &c.profile.votes) {
        all.0 += votes.sure_point;
        all.1 += votes.sure_comma;
    }
    let file = if all.1 > all.0 { Mark::Comma } else { Mark::Point };
    for column in columns.iter_mut() {
        let own = hints.decimal_marks.get(&column.index).and_then(|m| Mark::from_text(m));
        column.mark = own
            .or(everywhere)
            .or_else(|| column.profile.votes.sure())
            .or_else(|| plausible_mark(column))
            .unwrap_or(file);
    }
}

/// For figures such as "2,450" or "251.300" only: the mark under which they fit the measure.
fn plausible_mark(column: &Column<'_>) -> Option<Mark> {
    let votes = &column.profile.votes;
    if votes.either_point + votes.either_comma == 0 {
        return None;
    }
    let known = measure::known(column.measure()?)?;
    let fits = |mark: Mark| {
        let values: Vec<f64> = column
            .profile
            .distinct
            .iter()
            .filter_map(|cell| match scan(cell) {
                Cell::Figure(f) if matches!(f.mark_sign(), MarkSign::Either(_)) => f.value(mark),
                _ => None,
            })
            .filter_map(|v| column.unit.map_or(Some(v.value), |u| u.convert(v.value, known.unit)))
            .collect();
        // A fiftieth of the largest plausible value: below it the reading is off by the thousand.
        let low = known.plausible.high / 50.0;
        let good = values.iter().filter(|v| v.abs() <= known.plausible.high && v.abs() >= low).count();
        good * 2 > values.len()
    };
    match (fits(Mark::Point), fits(Mark::Comma)) {
        (true, false) => Some(Mark::Point),
        (false, true) => Some(Mark::Comma),
        _ => None,
    }
}
