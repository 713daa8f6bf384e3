//! A column that tells what else changed during the session: before and after a lesson, one ball and another.
//!
//! Found after every other column has its role, and outside of the short way through reading: a table with such a
//! column is no plain one.

use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::lexicon::number;
use crate::lexicon::vocabulary::lists;
use crate::lexicon::word::Word;
use crate::outcome::Role;
use crate::remarks::NoticeKind;
use crate::take::draft::Draft;
use crate::talk::{Talk, place};
use crate::trim::shortened;
use crate::understand::column::{Column, Profile};
use session::few::{Map, Set};
use session::measure;
use session::{MOST_SECOND, SecondFactor, Session};

/// Headings that say so, written without blanks and signs.
const WORDS: &str = "condition conditions phase period stage half part lesson coaching tip hint drill swing swingchange \
                     swingthought change changed beforeafter beforeorafter beforeandafter prepost ball balls balltype \
                     golfball ballmodel tee teeheight teetype mat surface lie day session when treatment warmup \
                     fatigue";

/// Values that come first, whichever the file names first.
const FIRST: &str = "before pre without no none off old usual normal false 0";

/// Values of a column that is found by itself; a golfer may name one with more.
const MOST_FOUND: usize = 4;

/// Rows for each value, at least.
const ROWS_EACH: usize = 3;

/// Gives one column the role of the second factor, where one is there beside the builds.
pub(crate) fn find(columns: &mut [Column<'_>], hints: &Hints, grid: &Grid, rows: &[usize]) {
    if columns.iter().any(|c| c.role == Role::Second) {
        return;
    }
    let builds: Vec<usize> = columns.iter().filter(|c| c.role == Role::Build).map(|c| c.index).collect();
    let rank = |column: &Column<'_>| {
        let said = says_so(column);
        let others: Vec<usize> = builds.iter().copied().filter(|&index| index != column.index).collect();
        // Beside a column that names the builds; a change alone is what the shots are compared by.
        let beside =
            !others.is_empty() && !hints.columns.contains_key(&column.index) && column.group.is_none();
        let free = match &column.role {
            Role::Ignored => said || column.understood.word.is_none(),
            Role::Build => said && is_whole(columns, &others),
            Role::Measure(id) => said && measure::known(id).is_none(),
            _ => false,
        };
        let found = beside
            && free
            && repeats(&column.profile)
            && (said || crossed(grid, rows, &others, column.index));
        found.then_some((!said, column.profile.distinct.len(), column.index))
    };
    let best = columns.iter().filter_map(rank).min();
    let Some((guessed, _, index)) = best else { return };
    if let Some(column) = columns.iter_mut().find(|c| c.index == index) {
        column.alternatives.push(if column.role == Role::Build { Role::Build } else { Role::Ignored });
        column.role = Role::Second;
        column.sure = !guessed;
    }
}

/// The heading as one word.
fn squashed(heading: &str) -> String {
    let outside = heading.split(['(', '[']).next().unwrap_or_default();
    outside.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

fn says_so(column: &Column<'_>) -> bool {
    lists(WORDS, &squashed(&column.heading))
}

/// Whether columns name the builds without any other: one of them says that it is the club.
fn is_whole(columns: &[Column<'_>], others: &[usize]) -> bool {
    columns.iter().any(|c| others.contains(&c.index) && matches!(c.understood.word, Some(Word::Build(_))))
}

/// A few values, each there again and again, or written only where it changes.
fn repeats(profile: &Profile<'_>) -> bool {
    let distinct = profile.distinct.len();
    let is_carried = profile.missing >= 2 * profile.filled();
    !profile.many
        && (2..=MOST_FOUND).contains(&distinct)
        && (is_carried || profile.filled() >= ROWS_EACH * distinct && profile.missing <= profile.filled())
}

/// Whether two builds or more were each hit under two values or more: else the column only names the builds again.
fn crossed(grid: &Grid, rows: &[usize], builds: &[usize], index: usize) -> bool {
    let pairs: Set<(Vec<&str>, &str)> = rows
        .iter()
        .map(|&row| (builds.iter().map(|&build| grid.cell(row, build)).collect(), grid.cell(row, index)))
        .filter(|(_, value): &(Vec<&str>, &str)| !number::is_missing(value))
        .collect();
    let mut values: Map<&[&str], usize> = Map::default();
    for (build, _) in pairs.iter() {
        *values.entry(build, || 0) += 1;
    }
    values.values().filter(|&&count| count > 1).count() > 1
}

/// Gives the shots read from these rows their values of the second factor.
pub(crate) fn attach(draft: &mut Draft, columns: &[Column<'_>], grid: &Grid, rows: &[usize]) {
    let Some(column) = columns.iter().find(|c| c.role == Role::Second) else { return };
    let empty = rows.iter().filter(|&&row| number::is_missing(grid.cell(row, column.index))).count();
    let carries = empty * 2 >= rows.len();
    let mut last = "";
    let by_line: Vec<(u32, &str)> = rows
        .iter()
        .map(|&row| {
            let cell = grid.cell(row, column.index);
            if !number::is_missing(cell) {
                last = cell;
            } else if !carries {
                last = "";
            }
            (grid.line(row), last)
        })
        .collect();
    let Session { second, shots, .. } = &mut draft.session;
    let new = || SecondFactor { name: column.heading.clone(), values: Vec::new() };
    let values = &mut second.get_or_insert_with(new).values;
    for (shot, line) in shots.iter_mut().zip(&draft.lines) {
        let found = by_line.binary_search_by_key(line, |(line, _)| *line).ok();
        if let Some(value) = found.map(|at| by_line[at].1).filter(|value| !value.is_empty()) {
            shot.second = place_of(values, value);
        }
    }
}

/// Where a value stands, however it is spelt; added while there is room.
fn place_of(values: &mut Vec<String>, value: &str) -> Option<u32> {
    let same = |known: &String| known.to_lowercase() == value.to_lowercase();
    let place = values.iter().position(same).unwrap_or(values.len());
    if place == MOST_SECOND {
        return None;
    }
    if place == values.len() {
        values.push(value.to_owned());
    }
    u32::try_from(place).ok()
}

/// Puts the value that comes first to the front, and says when no build was hit under two of them.
pub(crate) fn settle(session: &mut Session, talk: &mut Talk) {
    // A column of gaps alone says nothing.
    session.second.take_if(|second| second.values.is_empty());
    let Some(second) = &mut session.second else { return };
    let first = second.values.iter().position(|value| lists(FIRST, &squashed(value))).unwrap_or(0);
    let front = second.values.remove(first);
    second.values.insert(0, front);
    let moved = |at: u32| match at as usize {
        at_first if at_first == first => 0,
        before if before < first => at + 1,
        _ => at,
    };
    session.shots.iter_mut().for_each(|shot| shot.second = shot.second.map(moved));
    let pairs: Set<(usize, u32)> = session.shots.iter().filter_map(|s| Some((s.build, s.second?))).collect();
    let both = |build: usize| pairs.iter().filter(|(of, _)| *of == build).count() > 1;
    let builds = session.builds.len();
    if builds > 1 && second.values.len() > 1 && !(0..builds).any(both) {
        let name = shortened(&second.name);
        let message = text::reading::second_mixed_up(talk.voice(), &name);
        talk.notice(NoticeKind::SecondMixedUp, place(0, &second.name), message);
    }
}
