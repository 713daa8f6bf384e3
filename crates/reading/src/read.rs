//! Text in; a session, what was understood, and every row that was not, out. Never fails whole.
//!
//! One way through: text → cells (`source`) → headings, titles and bodies (`blocks`) → what each
//! column holds (`layout`, `columns`) → shots and summaries (`shots`, `averages`, `receipt`) →
//! order and rounds (`order`). Everything guessed stands in [`Reading`] and gives way to
//! [`Hints`]. Cost grows linearly with the text; [`limits`] bound it.

use session::measure::MeasureId;
use session::SummaryOf;
use session::units::SourceUnit;
use crate::cut::blocks::{self, Block, Sorted};
use crate::cut::grid::Grid;
use crate::cut::{down, source, stacked};
use crate::hints::Hints;
use crate::lexicon::{heading, number};
use crate::outcome::{Delimiter, Layout, LineIs, ReadResult, SummaryGap, ColumnReading};
use crate::own;
use crate::remarks::ProblemKind;
use crate::report::{agreement, finish as report, order, plausible};
use crate::take::shots::{self, Ctx};
use crate::take::{averages, receipt, second_factor as second, summary};
use crate::talk::{Talk, place};
use crate::understand::columns::{self, Column};
use crate::understand::layout::{self, Shape};
use std::collections::BTreeMap;

/// Reads shots from text.
#[must_use]
pub fn read(text: &str, hints: &Hints) -> ReadResult {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if let Some(own) = own::read(text, hints) {
        return own;
    }
    let mut talk = Talk::default();
    if text.chars().all(number::is_blank) {
        talk.problem(ProblemKind::EmptyText, place(0, ""), "");
    }
    let (mut grid, delimiter) = source::cells(text, hints, &mut talk);
    let mut is_stacked = false;
    if delimiter == Delimiter::Lines && !matches!(hints.layout, Some(Layout::Rows | Layout::Blocks)) {
        if let Some(split) = down::split_lines(&grid) {
            grid = split;
        } else if let Some(unstacked) = stacked::unstack(&grid, &mut talk) {
            grid = unstacked;
            is_stacked = true;
        }
    }
    if down::has_measures_down(&grid, hints) {
        let mut ctx = Ctx::new(&grid, hints, talk, text.len());
        let measures = receipt::read(&mut ctx);
        averages::note_lacking(&ctx.draft.session, &mut ctx.talk);
        let shown = Shown {
            delimiter,
            layout: Layout::MeasuresDown,
            single: None,
            gaps: Vec::new(),
            measures,
            questions: Vec::new(),
        };
        return report::finish(ctx, &Sorted::default(), &[], shown);
    }
    let format = Format { bytes: text.len(), delimiter, is_stacked };
    read_tables(&grid, format, hints, talk)
}

/// What the report shows beside columns and rows.
pub(crate) struct Shown {
    pub(crate) delimiter: Delimiter,
    pub(crate) layout: Layout,
    pub(crate) single: Option<layout::Single>,
    pub(crate) gaps: Vec<SummaryGap>,
    /// Rows that do what columns do elsewhere.
    pub(crate) measures: Vec<ColumnReading>,
    /// Measures that make sense only in another unit.
    pub(crate) questions: Vec<(MeasureId, SourceUnit)>,
}

/// Blocks under the same headings, with their columns.
struct Table<'a> {
    columns: Vec<Column<'a>>,
    blocks: Vec<&'a Block>,
    shape: Shape,
    averages: bool,
}

/// How the text was cut.
struct Format {
    bytes: usize,
    delimiter: Delimiter,
    is_stacked: bool,
}

fn read_tables(grid: &Grid, format: Format, hints: &Hints, talk: Talk) -> ReadResult {
    let Format { bytes, delimiter, is_stacked } = format;
    let sorted = blocks::sort(grid, hints);
    let mut ctx = Ctx::new(grid, hints, talk, bytes);
    let around = Around::of(grid, &sorted);
    let tables = tables(grid, &sorted.blocks, hints, around.speaks_of_averages);
    let mut next = vec![0; tables.len()];
    for block in &sorted.blocks {
        // Blocks and tables are in one order, so each block is the next one of its table.
        let found = tables
            .iter()
            .zip(&mut next)
            .find(|(table, next)| table.blocks.get(**next).is_some_and(|b| std::ptr::eq(*b, block)));
        let Some((table, next)) = found else { continue };
        *next += 1;
        if table.averages {
            averages::read_block(&mut ctx, block, &table.columns, around.meant);
        } else {
            shots::read_block(&mut ctx, block, &table.columns, &shots::strands(&table.columns));
        }
    }
    for table in &tables {
        let rows: Vec<usize> = table.blocks.iter().flat_map(|b| b.body.iter().copied()).collect();
        second::attach(&mut ctx.draft, &table.columns, grid, &rows);
    }
    second::settle(&mut ctx.draft.session, &mut ctx.talk);
    let rows = std::mem::take(&mut ctx.summaries);
    let gaps = agreement::compare(&ctx.draft, &rows, &mut ctx.talk);
    summary::settle(&mut ctx.draft, &rows);
    let grouped = tables.iter().any(|t| t.shape != Shape::Plain);
    settle_session(&mut ctx, !grouped);
    let single = tables.iter().find_map(|t| match &t.shape {
        Shape::ColumnPerBuild(single) => Some(single.clone()),
        _ => None,
    });
    let session = &ctx.draft.session;
    let only_averages = session.shots.is_empty() && !session.summaries.is_empty();
    let layout = layout_of(&tables, &sorted, is_stacked, only_averages);
    let columns: Vec<&Column<'_>> = tables.iter().flat_map(|t| &t.columns).collect();
    let questions = plausible::question(&ctx.draft, &columns, &mut ctx.talk);
    report::finish(
        ctx,
        &sorted,
        &columns,
        Shown { delimiter, layout, single, gaps, measures: Vec::new(), questions },
    )
}

/// Order and rounds, and what the session as a whole lacks.
pub(crate) fn settle_session(ctx: &mut Ctx<'_>, rows_are_in_order: bool) {
    let hints = ctx.hints;
    order::settle(&mut ctx.draft, rows_are_in_order, hints.order, &mut ctx.talk);
    order::check_numbers(&ctx.draft.session, &mut ctx.talk);
    averages::note_lacking(&ctx.draft.session, &mut ctx.talk);
    if hints.layout.is_none() {
        averages::ask_for_averages(&ctx.draft.session, &mut ctx.talk);
    }
}

fn layout_of(tables: &[Table<'_>], sorted: &Sorted, is_stacked: bool, no_shots: bool) -> Layout {
    let has = |shape: fn(&Shape) -> bool| tables.iter().any(|t| shape(&t.shape));
    let named = sorted.blocks.iter().filter(|b| b.title.is_some()).count();
    if is_stacked {
        Layout::ColumnAfterColumn
    } else if no_shots {
        Layout::Averages
    } else if has(|s| matches!(s, Shape::ColumnPerBuild(_))) {
        Layout::ColumnPerBuild
    } else if has(|s| matches!(s, Shape::SideBySide)) {
        Layout::SideBySide
    } else if named > 1 {
        Layout::Blocks
    } else {
        Layout::Rows
    }
}

/// What the text around the tables says of them.
pub(crate) struct Around {
    pub(crate) speaks_of_averages: bool,
    meant: SummaryOf,
}

impl Around {
    pub(crate) fn of(grid: &Grid, sorted: &Sorted) -> Self {
        let mut around = Self { speaks_of_averages: false, meant: SummaryOf::All };
        let texts =
            sorted.others.iter().filter(|(_, is)| matches!(is, LineIs::Text | LineIs::Build)).take(50);
        for (row, _) in texts {
            let words: Vec<String> = grid.cells(*row).take(10).flat_map(heading::words).collect();
            around.speaks_of_averages |= averages::speak_of_averages(&words);
            if around.meant == SummaryOf::All {
                around.meant = summary::shots_meant(&words);
            }
        }
        around
    }
}

fn tables<'a>(grid: &'a Grid, blocks: &'a [Block], hints: &Hints, said: bool) -> Vec<Table<'a>> {
    let mut tables: Vec<Table<'a>> = Vec::new();
    let mut known: BTreeMap<String, usize> = BTreeMap::new();
    for block in blocks {
        let key =
            block.headings.map_or_else(String::new, |row| grid.cells(row).collect::<Vec<_>>().join("\0"));
        let at = *known.entry(key).or_insert(tables.len());
        match tables.get_mut(at) {
            Some(table) => table.blocks.push(block),
            None => {
                tables.push(Table {
                    columns: Vec::new(),
                    blocks: vec![block],
                    shape: Shape::Plain,
                    averages: false,
                });
            }
        }
    }
    for table in &mut tables {
        let rows: Vec<usize> = table.blocks.iter().flat_map(|b| b.body.iter().copied()).collect();
        table.columns = columns::profile(grid, &table.blocks);
        table.averages = averages::are_averages(&table.columns, &rows, grid, hints, said);
        if let Some(block) = table.blocks.first().filter(|_| !table.averages) {
            table.shape = layout::find(&mut table.columns, block, grid, hints);
        }
        columns::assign(&mut table.columns, hints, table.averages, grid, &rows);
        if !table.averages {
            second::find(&mut table.columns, hints, grid, &rows);
        }
    }
    tables
}
