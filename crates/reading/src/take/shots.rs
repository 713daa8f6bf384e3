//! Rows of one block into shots, summaries, text and problems.

use crate::cut::blocks::{Block, title_name};
use crate::lexicon::clock;
use crate::lexicon::clock::Moment;
use crate::lexicon::number::{Cell, scan, with_letters_read};
use crate::lexicon::vocabulary;
use crate::outcome::{LineIs, Role};
use crate::remarks::{NoticeKind, ProblemKind};
use crate::take::cell::{read_cell, whole_number};
use crate::take::ctx::Ctx;
use crate::take::names::Names;
use crate::take::strand::Strand;
use crate::take::summary;
use crate::talk::place;
use crate::trim::named;
use crate::understand::column::Column;
use session::Shot;

/// Reads the rows of a block.
pub(crate) fn read_block(ctx: &mut Ctx<'_>, block: &Block, columns: &[Column<'_>], strands: &[Strand]) {
    let title = block.title.map(|row| title_name(ctx.grid, row));
    let mut names: Vec<Names> =
        strands.iter().map(|strand| Names::new(columns, strand.group, block, ctx.grid)).collect();
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
            if let Some(names) = names.first() {
                let build = names.of_summary(ctx, row, &label, title.as_deref(), since);
                summary::take_row(ctx, row, columns, strands, &label, build, since);
            }
            in_summary = true;
            continue;
        }
        if in_summary {
            since = ctx.draft.session.shots.len();
            in_summary = false;
        }
        let title = block.title.zip(title.as_deref());
        let outcome = read_row(ctx, row, columns, strands, &mut names, title);
        ctx.outcomes.push((row, outcome));
    }
    if names.iter().any(|n| n.carried) {
        let line = block.body.first().map_or(0, |&row| ctx.grid.line(row));
        let message = text::reading::build_carried_down(ctx.talk.voice());
        ctx.talk.notice(NoticeKind::BuildCarriedDown, place(line, ""), message);
    }
}

fn read_row(
    ctx: &mut Ctx<'_>,
    row: usize,
    columns: &[Column<'_>],
    strands: &[Strand],
    names: &mut [Names],
    title: Option<(usize, &str)>,
) -> LineIs {
    let grid = ctx.grid;
    let line = grid.line(row);
    if is_prose(ctx, row, columns, names) {
        return LineIs::Text;
    }
    let mut shots = 0;
    let mut bad = 0;
    for (strand, names) in strands.iter().zip(names) {
        let named = names.of_row(grid, row);
        // As long as the last value read; brought to full width at the end.
        let mut values: Vec<Option<f64>> =
            Vec::with_capacity(ctx.draft.session.measures.len().min(strand.columns.len()));
        let mut any = false;
        for column in strand.columns.iter().filter_map(|&at| columns.get(at)) {
            if !matches!(column.role, Role::Measure(_)) {
                continue;
            }
            match read_cell(ctx, row, column) {
                Ok(None) => {}
                Ok(Some((value, step))) => {
                    if let Some(at) = ctx.draft.room(column, ctx.talk.voice()) {
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
        let own = strand.build.as_deref().or(named.as_deref());
        let above = title.filter(|_| own.is_none());
        ctx.titles_used.extend(above.map(|(row, _)| row));
        let assumed;
        let name = match own.or(above.map(|(_, name)| name)).or(ctx.hints.build.as_deref()) {
            Some(name) => name,
            None if names.has_columns => {
                ctx.talk.problem(ProblemKind::NoBuild, place(line, names.heading(columns)), "");
                return LineIs::Problem;
            }
            None => {
                ctx.build_assumed = true;
                assumed = text::reading::first_build(ctx.talk.voice());
                &assumed
            }
        };
        let build = ctx.draft.build(name, ctx.hints);
        let beside = beside(ctx, row, columns, strand, shots == 0);
        values.shrink_to_fit();
        ctx.draft.slots += values.len();
        let Beside { round, number, moment, left_out } = beside;
        if left_out.as_ref().is_some_and(|(_, is_reason)| !is_reason) {
            ctx.unexplained.push(ctx.draft.session.shots.len());
        }
        let left_out = left_out.map(|(why, _)| why);
        let shot = Shot { build, round, number, values, left_out, ..Shot::default() };
        ctx.draft.push(shot, line, moment);
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

struct Beside {
    round: Option<u32>,
    number: Option<u32>,
    moment: Option<Moment>,
    /// And whether it is a reason.
    left_out: Option<(String, bool)>,
}

/// Round, number, time and reason of a row: the strand's own columns, else the shared ones.
fn beside(ctx: &mut Ctx<'_>, row: usize, columns: &[Column<'_>], strand: &Strand, first: bool) -> Beside {
    let mut found = Beside { round: None, number: None, moment: None, left_out: None };
    for (at, column) in columns.iter().enumerate() {
        if !strand.columns.contains(&at) {
            continue;
        }
        let text = ctx.grid.cell(row, column.index);
        if crate::lexicon::number::is_missing(text) {
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
            Role::LeftOut => found.left_out = left_out(text, column),
            _ => {}
        }
        // A column that several builds share is complained of once.
        if not_a_number && (first || column.group.is_some()) {
            ctx.talk.problem(ProblemKind::NotANumber, place(ctx.grid.line(row), &column.heading), text);
        }
    }
    found
}

/// Why a shot is left out, and whether that is a reason rather than a mark.
fn left_out(text: &str, column: &Column<'_>) -> Option<(String, bool)> {
    let is = |words: &[&str]| words.iter().any(|w| w.eq_ignore_ascii_case(text));
    let (no, yes) = (is(&["no", "n", "false", "0", "counts"]), is(&["yes", "y", "x", "true", "1", "✓", "✔"]));
    let mark = || format!("{} {text}", column.heading);
    if vocabulary::lists(INCLUDED, &column.understood.plain) {
        return if no { Some((mark(), false)) } else { None };
    }
    if no {
        None
    } else if yes {
        Some((mark(), false))
    } else {
        Some((named(text), true))
    }
}

/// Headings under which "no" leaves a shot out.
const INCLUDED: &str = "include included use used keep valid counted";

fn note_extra_cells(ctx: &mut Ctx<'_>, row: usize, columns: &[Column<'_>]) {
    let grid = ctx.grid;
    let last = columns.last().map_or(0, |c| c.index + 1);
    if let Some(extra) = (last..grid.width(row)).map(|at| grid.cell(row, at)).find(|c| !c.is_empty()) {
        ctx.talk.problem(ProblemKind::TooManyCells, place(grid.line(row), ""), extra);
    }
}

/// A line of text among the rows: no number, no missing mark, and not the shape of a row.
fn is_prose(ctx: &Ctx<'_>, row: usize, columns: &[Column<'_>], names: &[Names]) -> bool {
    let grid = ctx.grid;
    // Four words are seven letters and spaces.
    let long = |text: &str| text.len() >= 7 && text.split_whitespace().count() >= 4;
    if grid.width(row) == columns.len() && columns.len() > 1 && !grid.cells(row).any(long) {
        return false;
    }
    let any_number = grid
        .cells(row)
        .any(|c| c.is_empty() || !matches!(scan(c), Cell::Text) || with_letters_read(c).is_some());
    let named = names.first().and_then(|names| names.of_row_unchanged(grid, row));
    !any_number && named.is_none_or(|name| ctx.draft.known_build(&name, ctx.hints).is_none())
}
