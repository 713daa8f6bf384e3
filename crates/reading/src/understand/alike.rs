//! Columns that are headed alike: one measure twice, two speeds, two distances. Told apart by their values.

use crate::cut::grid::Grid;
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;
use crate::outcome::Role;
use crate::understand::column::Column;
use session::few::Set;
use session::known::Known;
use session::measure::{self, MeasureId};

/// The ball leaves at least so much faster than the club and at most so much, for two columns that only say "speed".
const SMASH: std::ops::RangeInclusive<f64> = 1.05..=1.6;
/// A ball rolls no farther than this beyond its carry, for two columns that only say "distance".
const MOST_ROLL: f64 = 1.3;

/// Whether any two columns are headed alike.
pub(crate) fn any(columns: &[Column<'_>]) -> bool {
    let same = |one: &Column<'_>, other: &Column<'_>| {
        let both = !one.understood.plain.is_empty() && one.understood.plain == other.understood.plain;
        both || one.understood.word.is_some() && one.understood.word == other.understood.word
    };
    (1..columns.len()).any(|at| columns[..at].iter().any(|before| same(before, &columns[at])))
}

/// Two plain speeds are the club's and the ball's, two plain distances the carry and the total.
pub(crate) fn tell_apart(columns: &mut [Column<'_>], hinted: &Set<usize>, grid: &Grid, rows: &[usize]) {
    let is_plain = |c: &Column<'_>, word: &str| {
        let is_free = !hinted.contains(&c.index) && c.group.is_none() && c.profile.mostly_figures();
        is_free && c.understood.plain == word
    };
    let headed = |word: &str| -> Vec<usize> {
        (0..columns.len()).filter(|&at| is_plain(&columns[at], word)).collect()
    };
    let (speeds, distances) = (headed("speed"), headed("distance"));
    let is_speed = speeds.len() == 2;
    let headed = if is_speed { speeds } else { distances };
    let [one, other] = headed[..] else { return };
    let pairs: Vec<(f64, f64)> = rows
        .iter()
        .filter_map(|&row| Some((value(&columns[one], grid, row)?, value(&columns[other], grid, row)?)))
        .collect();
    let larger = pairs.iter().filter(|(a, b)| b >= a).count();
    // All but one in ten one way around.
    let (small, large) = if larger * 10 >= pairs.len() * 9 {
        (one, other)
    } else if larger * 10 <= pairs.len() {
        (other, one)
    } else {
        return;
    };
    let mut ratios: Vec<f64> = pairs.iter().map(|(a, b)| a.max(*b) / a.min(*b)).collect();
    arrange::sort_numbers(&mut ratios);
    let Some(&middle) = ratios.get(ratios.len() / 2) else { return };
    let (fits, roles) = if is_speed {
        (SMASH.contains(&middle), [Known::ClubSpeed, Known::BallSpeed])
    } else {
        (middle > 1.0 && middle <= MOST_ROLL, [Known::Carry, Known::Total])
    };
    let taken = |known: Known| {
        columns.iter().any(|c| c.role == Role::Measure(known.into()) && !headed.contains(&c.index))
    };
    if fits && !roles.into_iter().any(taken) {
        columns[small].role = Role::Measure(roles[0].into());
        columns[large].role = Role::Measure(roles[1].into());
    }
}

/// A column that only repeats another one, in its unit or in another: it is kept and not used.
pub(crate) fn drop_repeats(columns: &mut [Column<'_>], hinted: &Set<usize>, grid: &Grid, rows: &[usize]) {
    for at in 1..columns.len() {
        let Some(Word::Measure(known)) = columns[at].understood.word else { continue };
        let id = MeasureId::from(known);
        let is_second = matches!(&columns[at].role, Role::Measure(own) if *own != id);
        let first = columns[..at].iter().position(|c| {
            c.role == Role::Measure(id.clone())
                && c.group == columns[at].group
                && c.understood.word == columns[at].understood.word
        });
        let (true, Some(first)) = (is_second && !hinted.contains(&columns[at].index), first) else {
            continue;
        };
        if columns[at].understood.beside.is_some() || columns[at].understood.statistic.is_some() {
            continue;
        }
        let facts = known.facts();
        let canonical = |column: &Column<'_>, row: usize| {
            let unit = column.understood.unit.or(column.unit).or(columns[first].unit);
            let value = value(column, grid, row)?;
            unit.map_or(Some(value), |unit| unit.convert(value, facts.unit))
        };
        // As close as two roundings, or as an eighth of the smallest difference that matters.
        let close = |a: f64, b: f64| (a - b).abs() <= (a.abs() * 0.002).max(facts.margin / 8.0);
        let pairs = rows.iter().map(|&row| (canonical(&columns[first], row), canonical(&columns[at], row)));
        let mut any = false;
        let same = pairs.into_iter().all(|pair| match pair {
            (Some(a), Some(b)) => {
                any = true;
                close(a, b)
            }
            _ => true,
        });
        if same && any && measure::known(&id).is_some() {
            columns[at].role = Role::Ignored;
            columns[at].alternatives.clear();
            columns[at].sure = true;
        }
    }
}

fn value(column: &Column<'_>, grid: &Grid, row: usize) -> Option<f64> {
    match scan(grid.cell(row, column.index)) {
        Cell::Figure(figure) => {
            figure.value(column.mark).or_else(|| figure.value(column.mark.other())).map(|v| v.value)
        }
        _ => None,
    }
}
