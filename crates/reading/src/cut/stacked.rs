//! Text from a photo or a page, one cell in each line, put back into rows and columns.
//!
//! Either each heading is followed by its values, or all headings come first and the values
//! after them, row by row or column by column: then the arrangement under which more values
//! are plausible for their measure is taken.

use crate::cut::grid::Grid;
use crate::lexicon::figure::Mark;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, is_missing, scan, with_letters_read};
use crate::lexicon::word::Word;
use crate::limits::MAX_COLUMNS;
use crate::remarks::ProblemKind;
use crate::talk::{Talk, place};
use session::units::SourceUnit;

#[derive(Debug, Clone, Copy, PartialEq)]
enum Kind {
    Heading,
    Unit,
    Value,
    Text,
}

fn kind(text: &str) -> Kind {
    if matches!(scan(text), Cell::Figure(_)) || is_missing(text) {
        return Kind::Value;
    }
    if SourceUnit::from_text(text.trim_matches(['(', ')', '[', ']'])).is_some() {
        return Kind::Unit;
    }
    let heading = understand(text);
    match heading.word {
        Some(Word::Statistic | Word::Remark) | None => {}
        Some(_) if heading.beside.is_none() => return Kind::Heading,
        Some(_) => {}
    }
    if with_letters_read(text).is_some() { Kind::Value } else { Kind::Text }
}

/// A column while it is gathered: rows of the grid with one cell in each.
#[derive(Debug, Default)]
struct Stack {
    heading: usize,
    /// Names builds, so that its values are words.
    is_build: bool,
    unit: Option<usize>,
    values: Vec<usize>,
}

/// Puts the cells into rows; `None` when there are no headings with values.
pub(crate) fn unstack(grid: &Grid, talk: &mut Talk) -> Option<Grid> {
    let kinds: Vec<Kind> = (0..grid.len()).map(|row| kind(grid.cell(row, 0))).collect();
    if !kinds.contains(&Kind::Heading) || !kinds.contains(&Kind::Value) {
        return None;
    }
    let mut walk = Walk { grid, talk, out: Grid::default(), stacks: Vec::new(), any: false };
    // What follows each row, units passed over.
    let mut next = vec![None; kinds.len()];
    for row in (1..kinds.len()).rev() {
        next[row - 1] = if kinds[row] == Kind::Unit { next[row] } else { Some(kinds[row]) };
    }
    for (row, (&kind, next)) in kinds.iter().zip(next).enumerate() {
        walk.take(row, kind, next);
    }
    walk.end_block();
    walk.any.then_some(walk.out)
}

struct Walk<'a> {
    grid: &'a Grid,
    talk: &'a mut Talk,
    out: Grid,
    stacks: Vec<Stack>,
    any: bool,
}

impl Walk<'_> {
    fn take(&mut self, row: usize, kind: Kind, next: Option<Kind>) {
        let in_build = self.stacks.last().is_some_and(|s| s.is_build);
        match kind {
            Kind::Heading => {
                let again = || self.stacks.iter().any(|s| self.same_heading(s.heading, row));
                let has_values = || self.stacks.iter().any(|s| !s.values.is_empty());
                if self.stacks.len() >= MAX_COLUMNS || again() && has_values() {
                    self.end_block();
                }
                let is_build = matches!(understand(self.grid.cell(row, 0)).word, Some(Word::Build(_)));
                self.stacks.push(Stack { heading: row, is_build, ..Stack::default() });
            }
            Kind::Unit if self.stacks.last().is_some_and(|s| s.values.is_empty() && s.unit.is_none()) => {
                if let Some(stack) = self.stacks.last_mut() {
                    stack.unit = Some(row);
                }
            }
            Kind::Unit if !self.stacks.is_empty() => {}
            Kind::Value | Kind::Text if in_build || self.words_follow_headings() => self.push(row),
            Kind::Value if !self.stacks.is_empty() => self.push(row),
            // A word between values is a value that could not be read; before a heading it is a title.
            Kind::Text
                if next == Some(Kind::Value) && self.stacks.last().is_some_and(|s| !s.values.is_empty()) =>
            {
                self.push(row);
            }
            Kind::Value | Kind::Text | Kind::Unit => {
                self.end_block();
                self.out.begin(self.grid.line(row));
                self.out.push(self.grid.cell(row, 0));
            }
        }
    }

    fn push(&mut self, row: usize) {
        if let Some(stack) = self.stacks.last_mut() {
            stack.values.push(row);
        }
    }

    fn same_heading(&self, one: usize, other: usize) -> bool {
        self.grid.cell(one, 0).eq_ignore_ascii_case(self.grid.cell(other, 0))
    }

    /// Whether all headings came first and one of them names builds.
    fn words_follow_headings(&self) -> bool {
        let Some((_, before)) = self.stacks.split_last() else { return false };
        before.iter().any(|s| s.is_build) && before.iter().all(|s| s.values.is_empty())
    }

    fn end_block(&mut self) {
        let mut stacks = std::mem::take(&mut self.stacks);
        if stacks.len() > 1 && stacks[..stacks.len() - 1].iter().all(|s| s.values.is_empty()) {
            share_out(self.grid, &mut stacks);
        }
        stacks.retain(|s| !s.values.is_empty());
        let Some(rows) = usual_length(&stacks) else { return };
        stacks.retain(|stack| {
            let fits = stack.values.len() == rows;
            if !fits {
                let heading = self.grid.cell(stack.heading, 0);
                let found = text::reading::values_not(
                    self.talk.voice(),
                    &stack.values.len().to_string(),
                    &rows.to_string(),
                );
                self.talk.problem(
                    ProblemKind::UnevenColumns,
                    place(self.grid.line(stack.heading), heading),
                    &found,
                );
            }
            fits
        });
        self.any = true;
        self.out.begin(stacks.first().map_or(0, |s| self.grid.line(s.heading)));
        for stack in &stacks {
            let heading = self.grid.cell(stack.heading, 0);
            match stack.unit {
                Some(unit) => {
                    let unit = self.grid.cell(unit, 0).trim_matches(['(', ')', '[', ']']);
                    self.out.push(&format!("{heading} ({unit})"));
                }
                None => self.out.push(heading),
            }
        }
        for at in 0..rows {
            self.out.begin(stacks.first().map_or(0, |s| self.grid.line(s.values[at])));
            stacks.iter().for_each(|stack| self.out.push(self.grid.cell(stack.values[at], 0)));
        }
    }
}

/// The length that most columns have; of several the largest.
fn usual_length(stacks: &[Stack]) -> Option<usize> {
    let mut lengths: Vec<usize> = stacks.iter().map(|s| s.values.len()).collect();
    arrange::sort(&mut lengths);
    lengths.chunk_by(|a, b| a == b).max_by_key(|same| same.len()).map(|same| same[0])
}

/// Shares values that follow all headings out among them.
fn share_out(grid: &Grid, stacks: &mut [Stack]) {
    let columns = stacks.len();
    let Some(last) = stacks.last_mut() else { return };
    let values = std::mem::take(&mut last.values);
    if !values.len().is_multiple_of(columns) {
        // Left with one heading, so that its length tells what is missing.
        last.values = values;
        return;
    }
    let rows = values.len() / columns;
    let by_row = |column: usize, row: usize| values[row * columns + column];
    let by_column = |column: usize, row: usize| values[column * rows + row];
    let fit = |at: &dyn Fn(usize, usize) -> usize| -> usize {
        let mut good = 0;
        for (column, stack) in stacks.iter().enumerate() {
            let texts: Vec<&str> = (0..rows).map(|row| grid.cell(at(column, row), 0)).collect();
            good += fitting(grid.cell(stack.heading, 0), stack.unit.map(|u| grid.cell(u, 0)), &texts);
        }
        good
    };
    let rows_first = fit(&by_row) >= fit(&by_column);
    for (column, stack) in stacks.iter_mut().enumerate() {
        stack.values = (0..rows)
            .map(|row| if rows_first { by_row(column, row) } else { by_column(column, row) })
            .collect();
    }
}

/// How many of the cells can stand under a heading.
fn fitting(heading: &str, unit: Option<&str>, cells: &[&str]) -> usize {
    let heading = understand(heading);
    let number = |text: &str| match scan(text) {
        Cell::Figure(figure) => {
            figure.value(Mark::Point).or_else(|| figure.value(Mark::Comma)).map(|v| v.value)
        }
        _ => None,
    };
    match heading.word {
        Some(Word::Build(_)) => cells.iter().filter(|c| scan(c) == Cell::Text).count(),
        Some(Word::Number) => {
            // Shot numbers rise by one.
            let numbers: Vec<f64> = cells.iter().filter_map(|c| number(c)).collect();
            1 + numbers.windows(2).filter(|pair| (pair[1] - pair[0] - 1.0).abs() < 0.5).count()
        }
        Some(Word::Measure(known)) => {
            let known = known.facts();
            let unit =
                heading.unit.or(unit.and_then(SourceUnit::from_text)).or(SourceUnit::canonical(known.unit));
            // Half the largest plausible value sets apart what is small from what is large.
            let values: Vec<f64> = cells
                .iter()
                .filter_map(|c| number(c))
                .filter_map(|v| unit.map_or(Some(v), |u| u.convert(v, known.unit)))
                .filter(|v| (known.plausible.low..=known.plausible.high).contains(v))
                .collect();
            values.len() + closeness(&values)
        }
        _ => 0,
    }
}

/// Number of neighbors that are of one size: within a factor of two, or both near nothing.
fn closeness(values: &[f64]) -> usize {
    let close =
        |a: f64, b: f64| (a.abs().max(b.abs()) <= 2.0 * a.abs().min(b.abs())) || a.abs().max(b.abs()) < 20.0;
    values.windows(2).filter(|pair| close(pair[0], pair[1])).count()
}
