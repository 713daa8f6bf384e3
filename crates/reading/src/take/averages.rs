//! Tables of averages: one row for each build, no shots.

use crate::cut::blocks::{Block, title_name};
use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::lexicon::heading::words;
use crate::lexicon::pair::pair;
use crate::lexicon::vocabulary::lists;
use crate::lexicon::word::Word;
use crate::outcome::{Layout, LineIs, Role, Statistic};
use crate::remarks::ProblemKind;
use crate::take::cell::{read_cell, read_text, whole_number};
use crate::take::ctx::Ctx;
use crate::take::names::Names;
use crate::take::summary::{MOST_SUMMARIES, shots_meant};
use crate::talk::place;
use crate::understand::column::Column;
use session::few::Map;
use session::measure::MeasureId;
use session::{Summary, SummaryOf, SummaryValue};
use text::reading as say;

/// More rows than this are no table of averages.
const MOST_ROWS: usize = 40;

/// Whether words speak of averages.
pub(crate) fn speak_of_averages(words: &[String]) -> bool {
    words.iter().any(|w| lists("average averages avg avgs mean means averaged ø", w))
}

/// Whether the rows of a table are averages; `said` that the text around it says so.
pub(crate) fn are_averages(
    columns: &[Column<'_>],
    rows: &[usize],
    grid: &Grid,
    hints: &Hints,
    said: bool,
) -> bool {
    match hints.layout {
        Some(Layout::Averages) => return true,
        Some(_) => return false,
        None => {}
    }
    if rows.is_empty() || rows.len() > MOST_ROWS || !each_build_once(columns, rows, grid) {
        return false;
    }
    let is_value = |c: &Column<'_>| {
        let known = matches!(c.understood.word, Some(Word::Measure(_)));
        known || (c.understood.word.is_none() && c.profile.mostly_figures())
    };
    let spread = |c: &Column<'_>| {
        matches!(c.understood.statistic, Some(Statistic::Deviation | Statistic::Low | Statistic::High))
    };
    let counted =
        columns.iter().any(|c| c.understood.word == Some(Word::Count) && holds_counts(c, rows, grid));
    columns.iter().filter(|c| is_value(c)).any(|c| {
        let pairs = c.profile.distinct.iter().any(|cell| pair(cell).is_some());
        spread(c) || pairs || counted || said || c.understood.statistic == Some(Statistic::Mean)
    })
}

/// Counts of shots, rather than the shots' own numbers from 1 on.
fn holds_counts(column: &Column<'_>, rows: &[usize], grid: &Grid) -> bool {
    let mut counts: Vec<u32> =
        rows.iter().filter_map(|&row| whole_number(grid.cell(row, column.index))).collect();
    arrange::sort(&mut counts);
    let numbering = counts.len() > 1 && counts.iter().zip(1..).all(|(&count, at)| count == at);
    column.profile.mostly_counts() && !numbering
}

fn each_build_once(columns: &[Column<'_>], rows: &[usize], grid: &Grid) -> bool {
    let named = |c: &&Column<'_>| {
        let group = matches!(c.understood.word, Some(Word::Build(_)));
        (c.profile.texts > 0 || group) && !matches!(c.understood.word, Some(Word::Remark | Word::Measure(_)))
    };
    let labels: Vec<usize> = columns.iter().filter(named).map(|c| c.index).collect();
    if labels.is_empty() {
        return rows.len() == 1;
    }
    let mut all: Vec<Vec<&str>> =
        rows.iter().map(|&row| labels.iter().map(|&index| grid.cell(row, index)).collect()).collect();
    arrange::sort(&mut all);
    all.windows(2).all(|pair| pair[0] != pair[1])
}

/// Reads a block of averages.
pub(crate) fn read_block(ctx: &mut Ctx<'_>, block: &Block, columns: &[Column<'_>], around: SummaryOf) {
    let title = block.title.map(|row| title_name(ctx.grid, row));
    let heading_words: Vec<String> = columns.iter().flat_map(|c| words(&c.heading)).collect();
    let headings_say = shots_meant(&heading_words);
    let mut names = Names::new(columns, None, block, ctx.grid);
    for &row in &block.body {
        let line = ctx.grid.line(row);
        let named = names.of_row(ctx.grid, row);
        if named.is_none() {
            ctx.titles_used.extend(block.title);
        }
        let name = named.as_deref().or(title.as_deref()).or(ctx.hints.build.as_deref());
        ctx.build_assumed |= name.is_none();
        let name = name.map_or_else(|| say::first_build(ctx.talk.voice()), str::to_owned);
        let mut summary =
            Summary { build: 0, n: None, of: SummaryOf::All, values: Map::default(), line: Some(line) };
        for column in columns {
            if column.role == Role::Count {
                summary.n = whole_number(ctx.grid.cell(row, column.index));
            }
            if let Some(id) = column.measure().cloned() {
                take_cell(ctx, row, column, id, &mut summary.values);
            }
        }
        summary.values.retain(|_, value| *value != SummaryValue::default());
        let row_words: Vec<String> = ctx.grid.cells(row).flat_map(words).collect();
        summary.of = [shots_meant(&row_words), headings_say, around]
            .into_iter()
            .find(|of| *of != SummaryOf::All)
            .unwrap_or(SummaryOf::All);
        let outcome = if summary.values.is_empty() {
            ctx.talk.problem(ProblemKind::NoNumberInRow, place(line, ""), &name);
            LineIs::Problem
        } else {
            if ctx.draft.session.summaries.len() < MOST_SUMMARIES {
                summary.build = ctx.draft.build(&name, ctx.hints);
                ctx.draft.session.summaries.push(summary);
            } else {
                ctx.too_many_summaries = true;
            }
            LineIs::Summary
        };
        ctx.outcomes.push((row, outcome));
    }
}

fn take_cell(
    ctx: &mut Ctx<'_>,
    row: usize,
    column: &Column<'_>,
    id: MeasureId,
    values: &mut Map<MeasureId, SummaryValue>,
) {
    let text = ctx.grid.cell(row, column.index);
    if let Some((mean, sd)) = pair(text).filter(|_| matches!(column.role, Role::Measure(_))) {
        let mean = read_text(ctx, mean, row, column);
        let sd = read_text(ctx, sd, row, column);
        ctx.draft.measure(column, ctx.talk.voice());
        let entry = values.entry(id, SummaryValue::default);
        entry.mean = mean.ok().flatten().map(|(value, _)| value);
        entry.sd = sd.ok().flatten().map(|(value, _)| value);
        return;
    }
    let Ok(Some((value, _))) = read_cell(ctx, row, column) else { return };
    ctx.draft.measure(column, ctx.talk.voice());
    let entry = values.entry(id, SummaryValue::default);
    match column.role {
        Role::Deviation(_) => entry.sd = Some(value),
        Role::Low(_) => entry.low = Some(value),
        Role::High(_) => entry.high = Some(value),
        _ => entry.mean = Some(value),
    }
}
