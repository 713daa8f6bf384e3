//! A table on its side: measures down, a column for each shot, the club over its block or over each column.

use crate::cut::grid::Grid;
use crate::cut::shape::laid::{Laid, Single};
use crate::cut::shape::wide::across;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, is_missing, scan};
use crate::lexicon::word::Word;

/// More rows are no table on its side.
const MOST_ROWS: usize = 200;

/// Rows under one line of clubs.
struct Block<'a> {
    line: u32,
    /// The club of each column behind the first, and the number of its shot where that is told.
    shots: Vec<(&'a str, Option<usize>)>,
    measures: Vec<usize>,
}

/// A row for each shot; `None` when the grid is no such table.
pub(crate) fn lay_out(grid: &Grid) -> Option<Laid> {
    if grid.len() > MOST_ROWS {
        return None;
    }
    let mut blocks: Vec<Block<'_>> = Vec::new();
    for row in 0..grid.len() {
        if let Some(shots) = clubs_over(grid, row) {
            blocks.push(Block { line: grid.line(row), shots, measures: Vec::new() });
        } else if is_measure(grid, row) {
            blocks.last_mut()?.measures.push(row);
        } else if grid.filled(row) > 1 {
            return None;
        }
    }
    if blocks.is_empty() || blocks.iter().any(|block| block.measures.is_empty()) {
        return None;
    }
    let mut labels: Vec<&str> = Vec::new();
    for &row in blocks.iter().flat_map(|block| &block.measures) {
        if !labels.contains(&grid.cell(row, 0)) {
            labels.push(grid.cell(row, 0));
        }
    }
    let numbered = blocks.iter().all(|block| block.shots.iter().all(|(_, number)| number.is_some()));
    let mut out = Grid::default();
    out.begin(blocks.first().map_or(1, |block| block.line));
    out.push("Club");
    if numbered {
        out.push("Shot");
    }
    labels.iter().for_each(|label| out.push(label));
    for block in &blocks {
        for (at, (club, number)) in block.shots.iter().enumerate() {
            let cells: Vec<&str> = labels
                .iter()
                .map(|label| block.measures.iter().find(|&&row| grid.cell(row, 0) == *label))
                .map(|row| row.map_or("", |&row| grid.cell(row, at + 1)))
                .collect();
            if cells.iter().all(|cell| is_missing(cell)) {
                continue;
            }
            out.begin(block.line);
            out.push(club);
            if let Some(number) = number.filter(|_| numbered) {
                out.push(&number.to_string());
            }
            cells.iter().for_each(|cell| out.push(cell));
        }
    }
    Some(Laid { grid: out, single: None::<Single> })
}

/// "Old driver | 1 | 2 | 3", or "Club | Old driver | Old driver | New driver": a club stands over several columns.
fn clubs_over(grid: &Grid, row: usize) -> Option<Vec<(&str, Option<usize>)>> {
    let first = grid.cell(row, 0);
    let heading = understand(first);
    if matches!(heading.word, Some(Word::Measure(_))) && heading.beside.is_none() {
        return None;
    }
    if let Some(across) = across(grid, row).filter(|across| across.first == 1 && !first.is_empty()) {
        let is_build_word = matches!(heading.word, Some(Word::Build(_)));
        return (!is_build_word).then(|| (1..=across.shots).map(|n| (first, Some(n))).collect());
    }
    let names: Vec<&str> = (1..grid.width(row)).map(|at| grid.cell(row, at)).collect();
    let all_named = names.len() > 2 && names.iter().all(|name| matches!(scan(name), Cell::Text));
    let repeated = names.iter().enumerate().any(|(at, name)| names[..at].contains(name));
    let is_over = first.is_empty() || matches!(heading.word, Some(Word::Build(_)));
    (all_named && repeated && is_over).then(|| names.into_iter().map(|name| (name, None)).collect())
}

/// A measure, and nothing but numbers behind it.
fn is_measure(grid: &Grid, row: usize) -> bool {
    let heading = understand(grid.cell(row, 0));
    let figures =
        (1..grid.width(row)).filter(|&at| matches!(scan(grid.cell(row, at)), Cell::Figure(_))).count();
    let texts = (1..grid.width(row)).filter(|&at| matches!(scan(grid.cell(row, at)), Cell::Text)).count();
    matches!(heading.word, Some(Word::Measure(_)))
        && heading.beside.is_none()
        && heading.statistic.is_none()
        && figures > 1
        && texts == 0
}
