//! A wide table: a row for each club, its shots across under "Shot 1", "Shot 2" and so on.

use crate::cut::grid::Grid;
use crate::cut::shape::laid::{Laid, Single};
use crate::cut::shape::list_line::read;
use crate::cut::shape::measure;
use crate::hints::Hints;
use crate::lexicon::heading::{understand, words};
use crate::lexicon::number::{Cell, is_missing, scan};
use crate::lexicon::vocabulary::statistic;
use crate::lexicon::word::Word;
use crate::outcome::Statistic;
use session::known::Known;
use session::units::SourceUnit;

/// Rows above the headings that may hold a title.
const MOST_ABOVE: usize = 5;

/// Where the shots of a wide table stand.
pub(crate) struct Across {
    pub(crate) headings: usize,
    /// The first column with a shot, and how many there are.
    pub(crate) first: usize,
    pub(crate) shots: usize,
    /// The column of averages behind them.
    average: Option<usize>,
}

/// Shot numbers in a row of headings, from 1 on: "1", "#1", "Shot 1" in some language.
pub(crate) fn across(grid: &Grid, row: usize) -> Option<Across> {
    let width = grid.width(row);
    let first = (1..width.min(4)).find(|&at| shot_number(grid.cell(row, at)) == Some(1))?;
    let shots =
        (first..width).zip(1..).take_while(|&(at, n)| shot_number(grid.cell(row, at)) == Some(n)).count();
    let statistic_at = |at: &usize| statistic(&words(grid.cell(row, *at)).concat());
    let all_known =
        (first + shots..width).all(|at| grid.cell(row, at).is_empty() || statistic_at(&at).is_some());
    let average = (first + shots..width).find(|at| statistic_at(at) == Some(Statistic::Mean));
    (shots > 1 && all_known).then_some(Across { headings: row, first, shots, average })
}

/// The number in "3", "#3", "Shot 3" or "Schlag 3".
fn shot_number(cell: &str) -> Option<usize> {
    let digits = cell.trim_start_matches(|c: char| !c.is_ascii_digit());
    let before = &cell[..cell.len() - digits.len()];
    let is_word = match before.trim_matches([' ', '#', '.']) {
        "" => true,
        word => matches!(understand(word).word, Some(Word::Number | Word::Count)),
    };
    let all_digits = !digits.is_empty() && digits.len() <= 3 && digits.bytes().all(|b| b.is_ascii_digit());
    if is_word && all_digits { digits.parse().ok() } else { None }
}

/// A row for each shot; `None` when the grid is no such table.
pub(crate) fn lay_out(grid: &Grid, hints: &Hints) -> Option<Laid> {
    let across = (0..grid.len().min(MOST_ABOVE + 1)).find_map(|row| across(grid, row))?;
    let body: Vec<usize> =
        (across.headings + 1..grid.len()).filter(|&row| is_row(grid, row, &across)).collect();
    if body.len() < 2 || body.len() * 2 < grid.len() - across.headings - 1 {
        return None;
    }
    let label = |row: usize| grid.cell(row, across.first - 1);
    let is_measure = |row: usize| {
        let heading = understand(label(row));
        matches!(heading.word, Some(Word::Measure(_)))
            && heading.beside.is_none()
            && heading.statistic.is_none()
    };
    if body.iter().any(|&row| is_measure(row)) {
        let all = across.first > 1 && body.iter().all(|&row| is_measure(row));
        return if all { Some(by_measure(grid, &across, &body)) } else { None };
    }
    let titles = (0..across.headings).filter_map(|row| grid.only_cell(row));
    let said = [grid.cell(across.headings, 0)].into_iter().chain(titles).find_map(measure::in_title);
    Some(one_measure(grid, &across, &body, said, hints))
}

/// A label and nothing but numbers behind it.
fn is_row(grid: &Grid, row: usize, across: &Across) -> bool {
    let cells = (across.first..across.first + across.shots).map(|at| grid.cell(row, at));
    let (mut figures, mut others) = (0, 0);
    for cell in cells {
        match scan(cell) {
            Cell::Figure(_) => figures += 1,
            Cell::Missing => {}
            Cell::Text => others += 1,
        }
    }
    matches!(scan(grid.cell(row, 0)), Cell::Text) && figures > others
}

fn one_measure(
    grid: &Grid,
    across: &Across,
    body: &[usize],
    said: Option<(Known, Option<SourceUnit>)>,
    hints: &Hints,
) -> Laid {
    let cells =
        body.iter().flat_map(|&row| (0..across.shots).map(move |at| grid.cell(row, across.first + at)));
    let read: Vec<(f64, Option<SourceUnit>)> = cells.filter_map(read).collect();
    let unit = read.iter().find_map(|(_, unit)| *unit);
    let mut values: Vec<f64> = read.into_iter().map(|(value, _)| value).collect();
    let single = measure::of(said, hints, unit, &mut values);
    let mut out = Grid::default();
    for row in 0..across.headings {
        copy(grid, row, &mut out);
    }
    out.begin(grid.line(across.headings));
    ["Club", "Shot", &measure::heading(&single)].into_iter().for_each(|cell| out.push(cell));
    for row in across.headings + 1..grid.len() {
        if !body.contains(&row) {
            copy(grid, row, &mut out);
            continue;
        }
        for at in 0..across.shots {
            let cell = grid.cell(row, across.first + at);
            if !is_missing(cell) {
                out.begin(grid.line(row));
                [grid.cell(row, 0), &(at + 1).to_string(), cell].into_iter().for_each(|cell| out.push(cell));
            }
        }
        if let Some(average) = across.average.map(|at| grid.cell(row, at)).filter(|cell| !is_missing(cell)) {
            out.begin(grid.line(row));
            ["Average", "", average].into_iter().for_each(|cell| out.push(cell));
        }
    }
    Laid { grid: out, single: Some(single) }
}

fn copy(grid: &Grid, row: usize, out: &mut Grid) {
    out.begin(grid.line(row));
    grid.cells(row).for_each(|cell| out.push(cell));
}

/// A row for each club and measure: the measures of a club's shots side by side.
fn by_measure(grid: &Grid, across: &Across, body: &[usize]) -> Laid {
    let label = |row: usize| grid.cell(row, across.first - 1);
    let mut labels: Vec<&str> = Vec::new();
    let mut clubs: Vec<&str> = Vec::new();
    for &row in body {
        if !labels.contains(&label(row)) {
            labels.push(label(row));
        }
        if !clubs.contains(&grid.cell(row, 0)) {
            clubs.push(grid.cell(row, 0));
        }
    }
    let mut out = Grid::default();
    out.begin(grid.line(across.headings));
    ["Club", "Shot"].iter().chain(&labels).for_each(|cell| out.push(cell));
    for club in clubs {
        let own: Vec<usize> = body.iter().copied().filter(|&row| grid.cell(row, 0) == club).collect();
        for at in 0..across.shots {
            let cells: Vec<&str> = labels
                .iter()
                .map(|wanted| own.iter().find(|&&row| label(row) == *wanted))
                .map(|row| row.map_or("", |&row| grid.cell(row, across.first + at)))
                .collect();
            if cells.iter().any(|cell| !is_missing(cell)) {
                out.begin(own.first().map_or(0, |&row| grid.line(row)));
                [club, &(at + 1).to_string()].into_iter().chain(cells).for_each(|cell| out.push(cell));
            }
        }
    }
    Laid { grid: out, single: None::<Single> }
}
