//! Rows of one block into shots, summaries, text and problems.

use super::blocks::{Block, title_name};
use super::clock::{self, Moment};
use super::columns::Column;
use super::draft::Draft;
use super::grid::Grid;
use super::hints::Hints;
use super::number::{Cell, Figure, Value, scan, with_letters_read};
use super::outcome::{LineIs, NoticeKind, ProblemKind, Role};
use super::summary::{self, SummaryRow};
use super::talk::{Talk, place};
use crate::measure;
use crate::session::Shot;
use std::collections::BTreeSet;

/// Columns that together make one shot of a row.
#[derive(Debug, Clone)]
pub(super) struct Strand {
    /// The build they belong to, when the columns say so.
    pub(super) build: Option<String>,
    /// Positions in the list of columns.
    pub(super) columns: Vec<usize>,
}

/// What reading needs and gathers.
pub(super) struct Ctx<'a> {
    pub(super) grid: &'a Grid,
    pub(super) hints: &'a Hints,
    pub(super) draft: Draft,
    pub(super) talk: Talk,
    pub(super) summaries: Vec<SummaryRow>,
    /// What each row turned out to be.
    pub(super) outcomes: Vec<(usize, LineIs)>,
    /// Values read with letters as digits, as asked.
    pub(super) letters_read: usize,
    /// Shots that had no build and got the assumed one.
    pub(super) build_assumed: usize,
    /// Cells already found to be no label of a summary.
    pub(super) no_labels: BTreeSet<String>,
}

impl<'a> Ctx<'a> {
    pub(super) fn new(grid: &'a Grid, hints: &'a Hints, talk: Talk) -> Self {
        Self {
            grid,
            hints,
            draft: Draft::default(),
            talk,
            summaries: Vec::new(),
            outcomes: Vec::new(),
            letters_read: 0,
            build_assumed: 0,
            no_labels: BTreeSet::new(),
        }
    }
}

/// Name given to shots that have none.
pub(super) const ASSUMED_BUILD: &str = "Build 1";

/// Reads the rows of a block.
pub(super) fn read_block(ctx: &mut Ctx<'_>, block: &Block, columns: &[Column<'_>], strands: &[Strand]) {
    let title = block.title.map(|row| title_name(ctx.grid, row));
    let mut names = Names::new(columns, block, ctx.grid);
    // Shots since the last summary: what the next one stands under.
    let mut since = ctx.draft.session.shots.len();
    let mut in_summary = false;
    for &row in &block.body {
        let hinted = ctx.hints.lines.get(&ctx.grid.line(row)).copied();
        let label = match hinted {
            Some(LineIs::Shot) => None,
            _ => summary::label(ctx, row, columns, in_summary),
        };
        if let Some(label) = label.filter(|_| hinted.is_none() || hinted == Some(LineIs::Summary)) {
            let build = names.of_summary(ctx, row, columns, &label, title.as_deref(), since);
            summary::take_row(ctx, row, columns, label, build, since);
            in_summary = true;
            continue;
        }
        if in_summary {
            since = ctx.draft.session.shots.len();
            in_summary = false;
        }
        let outcome = read_row(ctx, row, columns, strands, &mut names, title.as_deref());
        ctx.outcomes.push((row, outcome));
    }
    note_carried(ctx, &names, block.body.first().map_or(0, |&row| ctx.grid.line(row)));
}

fn read_row(
    ctx: &mut Ctx<'_>,
    row: usize,
    columns: &[Column<'_>],
    strands: &[Strand],
    names: &mut Names,
    title: Option<&str>,
) -> LineIs {
    let grid = ctx.grid;
    let line = grid.line(row);
    if is_prose(ctx, row, columns, names) {
        return LineIs::Text;
    }
    let named = names.of_row(grid, row, columns);
    let mut shots = 0;
    let mut bad = 0;
    for strand in strands {
        let mut values: Vec<Option<f64>> = vec![None; ctx.draft.session.measures.len()];
        let mut any = false;
        for column in strand.columns.iter().filter_map(|&at| columns.get(at)) {
            if !matches!(column.role, Role::Measure(_)) {
                continue;
            }
            match read_cell(ctx, row, column) {
                Ok(None) => {}
                Ok(Some((value, step))) => {
                    if let Some(at) = ctx.draft.measure(column) {
                        if at >= values.len() {
                            values.resize(at + 1, None);
                        }
                        values[at] = Some(value);
                        ctx.draft.note_step(at, step);
                        any = true;
                    }
                }
                Err(()) => bad += 1,
            }
        }
        if !any {
            continue;
        }
        let name = strand.build.as_deref().or(named.as_deref()).or(title);
        let name = match name.or(ctx.hints.build.as_deref()) {
            Some(name) => name,
            None if names.has_columns => {
                ctx.talk.problem(ProblemKind::NoBuild, place(line, names.heading(columns)), "");
                return LineIs::Problem;
            }
            None => {
                ctx.build_assumed += 1;
                ASSUMED_BUILD
            }
        };
        let build = ctx.draft.build(name, ctx.hints);
        let beside = beside(ctx, row, columns, strand);
        values.shrink_to_fit();
        let shot =
            Shot { build, round: beside.round, number: beside.number, values, left_out: beside.left_out };
        ctx.draft.push(shot, line, beside.moment);
        shots += 1;
    }
    note_extra_cells(ctx, row, columns);
    match (shots, bad) {
        (0, 0) => {
            let found: Vec<&str> = grid.cells(row).filter(|c| !c.is_empty()).take(4).collect();
            ctx.talk.problem(ProblemKind::NoNumberInRow, place(line, ""), &found.join(" "));
            LineIs::Problem
        }
        (0, _) => LineIs::Problem,
        _ => LineIs::Shot,
    }
}

/// A value in the canonical unit with the step it was written in; `Err` when a problem was noted.
pub(super) fn read_cell(
    ctx: &mut Ctx<'_>,
    row: usize,
    column: &Column<'_>,
) -> Result<Option<(f64, f64)>, ()> {
    let text = ctx.grid.cell(row, column.index);
    let here = || place(ctx.grid.line(row), &column.heading);
    let figure = match scan(text) {
        Cell::Missing => return Ok(None),
        Cell::Figure(figure) => figure,
        Cell::Text => {
            let Some(repaired) = with_letters_read(text) else {
                ctx.talk.problem(ProblemKind::NotANumber, here(), text);
                return Err(());
            };
            let value = match scan(&repaired) {
                Cell::Figure(figure) if ctx.hints.letters_as_digits == Some(true) => {
                    canonical(&figure, column)
                }
                _ => None,
            };
            if value.is_some() {
                ctx.letters_read += 1;
                return Ok(value);
            }
            ctx.talk.suggest(ProblemKind::LetterForDigit, here(), text, Some(repaired));
            return Err(());
        }
    };
    if let Some(value) = canonical(&figure, column) {
        return Ok(Some(value));
    }
    let other = figure.value(column.mark.other());
    if figure.value(column.mark).is_none() && other.is_some() {
        let suggestion = other.map(|v| shown(v, column));
        ctx.talk.suggest(ProblemKind::OtherDecimalMark, here(), text, suggestion);
    } else if figure.value(column.mark).is_none() {
        ctx.talk.problem(ProblemKind::NotANumber, here(), text);
    } else {
        ctx.talk.problem(ProblemKind::OtherUnit, here(), text);
    }
    Err(())
}

/// A value as its column would write it.
fn shown(value: Value, column: &Column<'_>) -> String {
    let decimals = usize::try_from(value.decimals).unwrap_or(0).min(9);
    format!("{:.*}", decimals, value.value).replace('.', if column.mark.as_char() == ',' { "," } else { "." })
}

fn canonical(figure: &Figure<'_>, column: &Column<'_>) -> Option<(f64, f64)> {
    let value = figure.value(column.mark)?;
    let step = 10_f64.powi(-i32::try_from(value.decimals.min(9)).unwrap_or(0));
    let Some(known) = column.measure().and_then(measure::known) else { return Some((value.value, step)) };
    let Some(unit) = figure.unit.or(column.unit) else { return Some((value.value, step)) };
    Some((unit.convert(value.value, known.unit)?, unit.convert(step, known.unit)?))
}

struct Beside {
    round: Option<u32>,
    number: Option<u32>,
    moment: Option<Moment>,
    left_out: Option<String>,
}

/// Round, number, time and reason of a row: the strand's own columns, else the shared ones.
fn beside(ctx: &mut Ctx<'_>, row: usize, columns: &[Column<'_>], strand: &Strand) -> Beside {
    let mut found = Beside { round: None, number: None, moment: None, left_out: None };
    for (at, column) in columns.iter().enumerate() {
        if column.build.is_some() && !strand.columns.contains(&at) {
            continue;
        }
        let text = ctx.grid.cell(row, column.index);
        if super::number::is_missing(text) {
            continue;
        }
        let mut not_a_number = false;
        match column.role {
            Role::Round => {
                found.round = whole_number(text).or(found.round);
                not_a_number = found.round.is_none();
            }
            Role::Number => {
                found.number = whole_number(text).or(found.number);
                not_a_number = found.number.is_none();
            }
            Role::Time => found.moment = clock::parse(text),
            Role::LeftOut => found.left_out = left_out(text),
            _ => {}
        }
        if not_a_number {
            ctx.talk.problem(ProblemKind::NotANumber, place(ctx.grid.line(row), &column.heading), text);
        }
    }
    found
}

fn left_out(text: &str) -> Option<String> {
    let no = ["no", "n", "false", "0", "counts"].iter().any(|w| w.eq_ignore_ascii_case(text));
    (!no).then(|| text.to_owned())
}

/// "7", "#7", "Shot 7", "7.": the one whole number in a cell.
pub(super) fn whole_number(text: &str) -> Option<u32> {
    let start = text.find(|c: char| c.is_ascii_digit())?;
    let digits = text[start..].bytes().take_while(u8::is_ascii_digit).count();
    let rest = &text[start + digits..];
    let rest = rest.strip_suffix(".0").unwrap_or(rest);
    if rest.bytes().any(|b| b.is_ascii_digit()) || text[..start].contains(['-', '−', '.', ',']) {
        return None;
    }
    text[start..start + digits].parse().ok()
}

fn note_extra_cells(ctx: &mut Ctx<'_>, row: usize, columns: &[Column<'_>]) {
    let grid = ctx.grid;
    let last = columns.last().map_or(0, |c| c.index + 1);
    if let Some(extra) = (last..grid.width(row)).map(|at| grid.cell(row, at)).find(|c| !c.is_empty()) {
        ctx.talk.problem(ProblemKind::TooManyCells, place(grid.line(row), ""), extra);
    }
}

/// A line of text among the rows: no number, no missing mark, and not the shape of a row.
fn is_prose(ctx: &Ctx<'_>, row: usize, columns: &[Column<'_>], names: &Names) -> bool {
    let grid = ctx.grid;
    if grid.width(row) == columns.len() && columns.len() > 1 {
        return false;
    }
    let any_number = grid
        .cells(row)
        .any(|c| c.is_empty() || !matches!(scan(c), Cell::Text) || with_letters_read(c).is_some());
    let named = names.of_row_unchanged(grid, row, columns);
    !any_number && named.is_none_or(|name| ctx.draft.known_build(&name, ctx.hints).is_none())
}

/// Build names from the build columns, carried down where only the first row of a group has one.
struct Names {
    /// Column index, whether its name is carried down, the last name.
    columns: Vec<(usize, bool, String)>,
    has_columns: bool,
    carried: bool,
}

impl Names {
    fn new(columns: &[Column<'_>], block: &Block, grid: &Grid) -> Self {
        let columns: Vec<(usize, bool, String)> = columns
            .iter()
            .filter(|c| c.role == Role::Build)
            .map(|c| {
                let empty = block.body.iter().filter(|&&row| grid.cell(row, c.index).is_empty()).count();
                // Every second row or more without a name: names stand for the rows below them.
                (c.index, empty > 0 && empty * 2 >= block.body.len(), String::new())
            })
            .collect();
        Self { has_columns: !columns.is_empty(), columns, carried: false }
    }

    fn heading<'c>(&self, columns: &'c [Column<'_>]) -> &'c str {
        let first = self.columns.first().map(|(index, ..)| *index);
        columns.iter().find(|c| Some(c.index) == first).map_or("", |c| c.heading.as_str())
    }

    fn of_row(&mut self, grid: &Grid, row: usize, _columns: &[Column<'_>]) -> Option<String> {
        for (index, carries, last) in &mut self.columns {
            let cell = grid.cell(row, *index);
            if !cell.is_empty() {
                cell.clone_into(last);
            } else if *carries {
                self.carried |= !last.is_empty();
            } else {
                last.clear();
            }
        }
        self.joined()
    }

    fn of_row_unchanged(&self, grid: &Grid, row: usize, _columns: &[Column<'_>]) -> Option<String> {
        let names: Vec<&str> = self.columns.iter().map(|(index, ..)| grid.cell(row, *index)).collect();
        join(names.into_iter())
    }

    fn joined(&self) -> Option<String> {
        join(self.columns.iter().map(|(_, _, name)| name.as_str()))
    }

    /// The build a summary stands for; `None` when it stands for all shots.
    fn of_summary(
        &self,
        ctx: &mut Ctx<'_>,
        row: usize,
        columns: &[Column<'_>],
        label: &summary::Label,
        title: Option<&str>,
        since: usize,
    ) -> Option<usize> {
        if let Some(name) = &label.build {
            return ctx.draft.known_build(name, ctx.hints).or_else(|| Some(ctx.draft.build(name, ctx.hints)));
        }
        let in_build_column = self.columns.iter().any(|(index, ..)| *index == label.column);
        if !in_build_column && let Some(name) = self.of_row_unchanged(ctx.grid, row, columns) {
            return Some(ctx.draft.build(&name, ctx.hints));
        }
        if let Some(title) = title.filter(|_| !self.has_columns) {
            return Some(ctx.draft.build(title, ctx.hints));
        }
        let shots = ctx.draft.session.shots.get(since..).unwrap_or_default();
        let first = shots.first().map(|s| s.build)?;
        shots.iter().all(|s| s.build == first).then_some(first)
    }
}

fn join<'a>(names: impl Iterator<Item = &'a str>) -> Option<String> {
    let names: Vec<&str> = names.filter(|n| !n.is_empty()).collect();
    if names.is_empty() { None } else { Some(names.join(" / ")) }
}

/// Says once what was carried down.
fn note_carried(ctx: &mut Ctx<'_>, names: &Names, line: u32) {
    if names.carried {
        let message = "Rows without a build's name belong to the last name above them.".to_owned();
        ctx.talk.notice(NoticeKind::BuildCarriedDown, place(line, ""), message);
    }
}
