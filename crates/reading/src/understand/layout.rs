//! Tables in which builds have columns of their own: side by side, or one column each.

use crate::cut::blocks::Block;
use crate::cut::grid::Grid;
use crate::cut::shape::{self, Single};
use crate::hints::Hints;
use crate::lexicon::figure::Mark;
use crate::lexicon::heading::{understand, words};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::vocabulary::lists;
use crate::lexicon::word::{Claim, Word};
use crate::outcome::{Layout, Role};
use crate::trim::trim;
use crate::understand::column::Column;
use session::few::Set;
use session::known::Known;
use session::measure::MeasureId;
use session::units::SourceUnit;

/// How the columns of one table belong together.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Shape {
    /// Every column speaks of every row.
    Plain,
    /// Sets of columns, one for each build.
    SideBySide,
    /// One column for each build, all of one measure.
    ColumnPerBuild(Single),
}

/// Finds the shape and marks the columns with their groups and builds.
pub(crate) fn find(columns: &mut [Column<'_>], block: &Block, grid: &Grid, hints: &Hints) -> Shape {
    match hints.layout {
        Some(Layout::ColumnPerBuild) => return column_per_build(columns, block, grid, hints, true),
        None => {}
        Some(Layout::SideBySide) => {}
        Some(_) => return Shape::Plain,
    }
    if by_words_beside(columns) || by_repeats(columns, block, grid) {
        return Shape::SideBySide;
    }
    column_per_build(columns, block, grid, hints, false)
}

/// "Driver A carry", "Driver B carry": the words beside the measure name the build.
fn by_words_beside(columns: &mut [Column<'_>]) -> bool {
    let beside = |c: &Column<'_>| match (c.understood.word, &c.understood.beside) {
        (Some(Word::Measure(id)), Some(name)) => Some((id, name.clone())),
        _ => None,
    };
    let named: Vec<(Known, String)> = columns.iter().filter_map(beside).collect();
    let shared = named.iter().any(|(id, name)| named.iter().any(|(other, b)| id == other && b != name));
    if !shared {
        return false;
    }
    let mut groups: Vec<String> = Vec::new();
    for column in columns.iter_mut() {
        let Some((_, name)) = beside(column) else { continue };
        let group = groups.iter().position(|g| *g == name).unwrap_or_else(|| {
            groups.push(name.clone());
            groups.len() - 1
        });
        column.group = Some(group);
        column.build = Some(as_written(&column.heading, &name));
    }
    true
}

/// The words of a name with the capitals of the heading they come from.
fn as_written(heading: &str, name: &str) -> String {
    let wanted: Vec<&str> = name.split(' ').collect();
    let pieces: Vec<&str> =
        heading.split(|c: char| c.is_whitespace() || matches!(c, '_' | '-' | ':')).collect();
    let kept: Vec<&str> =
        pieces.into_iter().filter(|p| words(p).iter().any(|w| wanted.contains(&w.as_str()))).collect();
    if kept.is_empty() { name.to_owned() } else { kept.join(" ") }
}

/// The same headings again and again: each repetition is a build's.
fn by_repeats(columns: &mut [Column<'_>], block: &Block, grid: &Grid) -> bool {
    let key = |c: &Column<'_>| match c.understood.word {
        Some(Word::Measure(known)) => Some(known.id().to_owned()),
        Some(Word::Build(_)) => Some("build".to_owned()),
        Some(Word::Number) => Some("number".to_owned()),
        _ if c.heading.is_empty() => None,
        _ => Some(c.heading.to_ascii_lowercase()),
    };
    let keys: Vec<Option<String>> = columns.iter().map(key).collect();
    let mut starts = vec![0];
    let mut seen: Set<&String> = Set::default();
    let mut repeated: Set<&String> = Set::default();
    for (at, key) in keys.iter().enumerate() {
        let Some(key) = key else { continue };
        if !seen.insert(key) {
            repeated.insert(key);
            seen.clear();
            seen.insert(key);
            starts.push(at);
        }
    }
    let named = block.over.is_some();
    if starts.len() < 2 || (repeated.is_empty() || !named && keys_in_all(&keys, &starts) < 2) {
        return false;
    }
    // What stands before the first repeated heading is shared by all groups.
    if let Some(first) =
        keys.iter().position(|k| k.as_ref().is_some_and(|k| keys[starts[1]..].contains(&Some(k.clone()))))
    {
        starts[0] = first;
    }
    let width = columns.len();
    for (group, &start) in starts.iter().enumerate() {
        let end = starts.get(group + 1).copied().unwrap_or(width);
        let name = block.over.and_then(|row| (start..end).map(|c| grid.cell(row, c)).find(|c| !c.is_empty()));
        let own = columns[start..end]
            .iter()
            .any(|c| matches!(c.understood.word, Some(Word::Build(_))) && c.profile.texts > 0);
        for column in columns.iter_mut().take(end).skip(start).filter(|c| !c.heading.is_empty()) {
            column.group = Some(group);
            column.build = match name {
                Some(name) => Some(name.trim_end_matches(':').to_owned()),
                None if own => None,
                None => Some(format!("Club {}", group + 1)),
            };
        }
    }
    true
}

/// Number of headings that every group has.
fn keys_in_all(keys: &[Option<String>], starts: &[usize]) -> usize {
    let group = |at: usize| {
        let end = starts.get(at + 1).copied().unwrap_or(keys.len());
        keys[starts[at]..end].iter().flatten().collect::<Set<_>>()
    };
    let first = group(0);
    first.iter().filter(|key| (1..starts.len()).all(|at| group(at).contains(*key))).count()
}

/// Columns headed by builds, with numbers of one measure below.
fn column_per_build(
    columns: &mut [Column<'_>],
    block: &Block,
    grid: &Grid,
    hints: &Hints,
    told: bool,
) -> Shape {
    let caption =
        block.caption.map(|row| understand(grid.cells(row).find(|c| !c.is_empty()).unwrap_or_default()));
    let said = hints.single_measure.is_some() || told;
    let is_build = |c: &Column<'_>| {
        let word = match c.understood.word {
            None | Some(Word::Build(_)) => true,
            Some(Word::Measure(_)) => c.understood.beside.is_some(),
            _ => false,
        };
        word && !c.heading.is_empty() && c.profile.mostly_figures() && !hints.columns.contains_key(&c.index)
    };
    let carried: Vec<usize> = (0..columns.len())
        .filter(|&at| hints.columns.is_empty() && is_named_by_words(&columns[at]))
        .collect();
    for &at in &carried {
        // "High launch" over carries names a club.
        columns[at].understood.word = None;
    }
    let headed: Vec<usize> = (0..columns.len()).filter(|&at| is_build(&columns[at])).collect();
    if headed.len() < 2 {
        return Shape::Plain;
    }
    let golf = columns
        .iter()
        .any(|c| matches!(c.understood.word, Some(Word::Measure(_))) && c.understood.beside.is_none());
    let labeled = columns
        .iter()
        .any(|c| c.profile.texts > 0 && !c.profile.mostly_figures() && !c.profile.mostly_clocks());
    let unclear = headed.iter().filter(|at| !carried.contains(at));
    let names: Vec<&str> = unclear.map(|&at| columns[at].heading.as_str()).collect();
    if !said
        && (golf
            || labeled
            || caption.is_none() && !(look_like_builds(&names) && of_one_scale(columns, &headed)))
    {
        return Shape::Plain;
    }
    let unit = headed.iter().find_map(|&at| columns[at].understood.unit);
    let single = match (&hints.single_measure, &caption) {
        (Some(id), _) => Single { measure: id.clone(), unit, guessed: false },
        (None, Some(heading)) if matches!(heading.word, Some(Word::Measure(_))) => {
            let Some(Word::Measure(id)) = heading.word else { return Shape::Plain };
            Single { measure: id.into(), unit: heading.unit.or(unit), guessed: false }
        }
        _ => Single { measure: guessed_measure(columns, &headed), unit, guessed: true },
    };
    for (group, at) in headed.into_iter().enumerate() {
        let column = &mut columns[at];
        let name =
            if column.understood.unit.is_some() { column.heading.split(['(', '[']).next() } else { None };
        let name = trim(name.filter(|n| !n.trim().is_empty()).unwrap_or(&column.heading)).to_owned();
        column.group = Some(group);
        column.build = Some(name);
        column.heading_is_build = true;
        column.role = Role::Measure(single.measure.clone());
        column.understood.unit = column.understood.unit.or(single.unit);
    }
    Shape::ColumnPerBuild(single)
}

const CLUBS: &str = "driver drivers wood woods hybrid iron irons wedge putter club clubs shaft head build stiff regular \
     senior xstiff own old new mine gamer current stock fitted candidate baseline mini fairway rescue";

/// Headings that can be clubs: club words, letters, or one word with different ends.
fn look_like_builds(names: &[&str]) -> bool {
    let all: Vec<Vec<String>> = names.iter().map(|n| words(n)).collect();
    if all.iter().any(Vec::is_empty) {
        return false;
    }
    let club = |w: &Vec<String>| w.iter().any(|w| lists(CLUBS, w) || w.ends_with('°'));
    let letter =
        |w: &Vec<String>| w.len() == 1 && w[0].chars().count() == 1 && w[0].chars().all(char::is_alphabetic);
    let stem = |w: &Vec<String>| w[0].trim_end_matches(|c: char| c.is_ascii_digit()).to_owned();
    let one_stem = all.iter().all(|w| !stem(w).is_empty() && stem(w) == stem(&all[0]));
    all.iter().all(club) || all.iter().all(letter) || one_stem
}

/// A heading with a measure's word and more, over values that cannot be that measure and can be carries.
fn is_named_by_words(column: &Column<'_>) -> bool {
    let Some(Word::Measure(known)) = column.understood.word else { return false };
    let more = column.understood.beside.is_some() || column.understood.statistic.is_some();
    let facts = known.facts();
    let Some(middle) = middle(column).filter(|_| more && column.understood.unit.is_none()) else {
        return false;
    };
    let fits = |unit: SourceUnit| {
        let value = unit.convert(middle, facts.unit).unwrap_or(middle);
        (facts.plausible.low..=facts.plausible.high).contains(&value)
    };
    known != Known::Carry && (60.0..360.0).contains(&middle) && !SourceUnit::choices(facts.unit).any(fits)
}

/// Whether the columns' middles lie within a factor of one and a half.
fn of_one_scale(columns: &[Column<'_>], headed: &[usize]) -> bool {
    let middles: Vec<f64> = headed.iter().filter_map(|&at| middle(&columns[at])).collect();
    let low = middles.iter().copied().fold(f64::INFINITY, f64::min);
    let high = middles.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    middles.len() == headed.len() && low > 0.0 && high <= 1.5 * low
}

fn middle(column: &Column<'_>) -> Option<f64> {
    let mark = column.profile.votes.sure().unwrap_or(Mark::Point);
    let mut values: Vec<f64> = column
        .profile
        .distinct
        .iter()
        .filter_map(|cell| match scan(cell) {
            Cell::Figure(figure) => figure.value(mark).map(|v| v.value),
            _ => None,
        })
        .collect();
    arrange::sort_numbers(&mut values);
    values.get(values.len() / 2).copied()
}

/// A measure that the numbers can be, when nothing names it: told by their unit and size alone.
fn guessed_measure(columns: &[Column<'_>], headed: &[usize]) -> MeasureId {
    let unit = headed.iter().find_map(|&at| columns[at].profile.units.first().map(|(unit, _)| *unit));
    let size = headed.iter().filter_map(|&at| middle(&columns[at])).fold(0.0, f64::max);
    shape::guessed(unit, size)
}

/// Headings of a group's own build column count as build columns there.
pub(crate) fn claims_build(column: &Column<'_>) -> bool {
    matches!(column.understood.word, Some(Word::Build(claim)) if claim >= Claim::Part)
        && column.profile.texts > 0
}
