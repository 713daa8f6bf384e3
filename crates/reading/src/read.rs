//! Text in; a session, what was understood, and every row that was not, out. Never fails whole.
//!
//! One way through: text → cells (`source`) → headings, titles and bodies (`blocks`) → what each
//! column holds (`layout`, `columns`) → shots and summaries (`shots`, `averages`, `receipt`) →
//! order and rounds (`order`). Everything guessed stands in [`Reading`] and gives way to
//! [`Hints`]. Cost grows linearly with the text; [`limits`] bound it.

use crate::cut::blocks::{Block, Sorted};
use crate::cut::grid::Grid;
use crate::cut::shape::{self, Laid, Single};
use crate::cut::{blocks, down, lines, source, stacked};
use crate::doubts;
use crate::form::Form;
use crate::hints::Hints;
use crate::outcome::{Delimiter, Layout, LineIs, ReadResult};
use crate::own;
use crate::prose;
use crate::remarks::ProblemKind;
use crate::report::finish::Shown;
use crate::report::{agreement, finish, whole};
use crate::take::around::Around;
use crate::take::ctx::Ctx;
use crate::take::strand::strands;
use crate::take::{averages, breaks, receipt, second_factor, shots, summary};
use crate::talk::{Talk, place};
use crate::trim::is_blank;
use crate::understand::column::Column;
use crate::understand::layout::Shape;
use crate::understand::{column, columns, layout};
use std::collections::BTreeMap;
use text::Voice;

/// Reads shots from text.
#[must_use]
pub fn read(text: &str, hints: &Hints, voice: &Voice) -> ReadResult {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if let Some(own) = own::read::read(text, hints, voice) {
        return own;
    }
    let hints = &*doubts::told(hints);
    let mut talk = Talk::new(voice);
    if text.chars().all(is_blank) {
        talk.problem(ProblemKind::EmptyText, place(0, ""), "");
    }
    let (mut grid, delimiter) = source::cells(text, hints, &mut talk);
    let is_plain = shape::is_plain(&grid);
    if !is_plain {
        if let Some(form) = said_in_sentences(text, hints) {
            return refuse_sentences(text, form, hints, Talk::new(voice));
        }
        grid = shape::in_english(grid);
        if let Some(Laid { grid, single }) = shape::lay_out(text, &grid, delimiter, hints) {
            let format = Format { bytes: text.len(), delimiter, is_stacked: false, laid: Some(single) };
            return read_tables(&grid, format, hints, talk);
        }
    }
    let mut is_stacked = false;
    if delimiter == Delimiter::Lines && !matches!(hints.layout, Some(Layout::Rows | Layout::Blocks)) {
        if let Some(split) = down::split_lines(&grid) {
            grid = split;
        } else if let Some(unstacked) = stacked::unstack(&grid, &mut talk) {
            grid = unstacked;
            is_stacked = true;
        }
    }
    let grid = if is_plain { grid } else { shape::mend(grid) };
    if down::has_measures_down(&grid, hints) {
        let mut ctx = Ctx::new(&grid, hints, talk, text.len());
        let measures = receipt::read(&mut ctx);
        let doubts = doubts::settle(&mut ctx, &[], None);
        whole::note_lacking(&ctx.draft.session, &mut ctx.talk);
        let shown = Shown {
            delimiter,
            layout: Layout::MeasuresDown,
            single: None,
            gaps: Vec::new(),
            measures,
            questions: doubts::unit_questions(&doubts),
            doubts,
        };
        return finish::finish(ctx, &Sorted::default(), &[], shown);
    }
    let format = Format { bytes: text.len(), delimiter, is_stacked, laid: None };
    read_tables(&grid, format, hints, talk)
}

/// What sentences hold, where nothing was said of how the text is to be read.
fn said_in_sentences(text: &str, hints: &Hints) -> Option<Form> {
    let told = hints.delimiter.is_some() || hints.layout.is_some() || !hints.lines.is_empty();
    if told { None } else { prose::form(text) }
}

/// No sentence is taken for a table: its figures go into a form.
fn refuse_sentences(text: &str, form: Form, hints: &Hints, mut talk: Talk) -> ReadResult {
    let (grid, _) = lines::whole(text);
    talk.problem(ProblemKind::NoNumbers, place(0, ""), "");
    let mut ctx = Ctx::new(&grid, hints, talk, text.len());
    ctx.outcomes = (0..grid.len()).map(|row| (row, LineIs::Text)).collect();
    let (delimiter, layout) = (Delimiter::Lines, Layout::Rows);
    let shown = Shown {
        delimiter,
        layout,
        single: None,
        gaps: Vec::new(),
        measures: Vec::new(),
        doubts: Vec::new(),
        questions: Vec::new(),
    };
    ReadResult { form: Some(form), ..finish::finish(ctx, &Sorted::default(), &[], shown) }
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
    /// It was laid out anew, with the measure that stands over all of it.
    laid: Option<Option<Single>>,
}

fn read_tables(grid: &Grid, format: Format, hints: &Hints, talk: Talk) -> ReadResult {
    let Format { bytes, delimiter, is_stacked, laid } = format;
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
            shots::read_block(&mut ctx, block, &table.columns, &strands(&table.columns));
        }
    }
    for table in &tables {
        let rows: Vec<usize> = table.blocks.iter().flat_map(|b| b.body.iter().copied()).collect();
        second_factor::attach(&mut ctx.draft, &table.columns, grid, &rows);
    }
    breaks::mark(&mut ctx, &sorted.others);
    second_factor::settle(&mut ctx.draft.session, &mut ctx.talk);
    let rows = std::mem::take(&mut ctx.summaries);
    summary::settle(&mut ctx.draft, &rows);
    let columns: Vec<&Column<'_>> = tables.iter().flat_map(|t| &t.columns).collect();
    let single = laid.clone().flatten().or_else(|| {
        tables.iter().find_map(|t| match &t.shape {
            Shape::ColumnPerBuild(single) => Some(single.clone()),
            _ => None,
        })
    });
    let doubts = doubts::settle(&mut ctx, &columns, single.as_ref());
    // After what is in doubt was taken out: what is not read yet is held against nothing.
    let gaps = agreement::compare(&ctx.draft, &rows, &doubts, &mut ctx.talk);
    let grouped = tables.iter().any(|t| t.shape != Shape::Plain);
    whole::settle(&mut ctx, !grouped);
    let is_laid = laid.is_some();
    let session = &ctx.draft.session;
    let only_averages = session.shots.is_empty() && !session.summaries.is_empty();
    let layout =
        if is_laid { Layout::RowPerBuild } else { layout_of(&tables, &sorted, is_stacked, only_averages) };
    finish::finish(
        ctx,
        &sorted,
        &columns,
        Shown {
            delimiter,
            layout,
            single,
            gaps,
            measures: Vec::new(),
            questions: doubts::unit_questions(&doubts),
            doubts,
        },
    )
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
        table.columns = column::profile(grid, &table.blocks);
        table.averages = averages::are_averages(&table.columns, &rows, grid, hints, said);
        if let Some(block) = table.blocks.first().filter(|_| !table.averages) {
            table.shape = layout::find(&mut table.columns, block, grid, hints);
        }
        columns::assign(&mut table.columns, hints, table.averages, grid, &rows);
        if !table.averages {
            second_factor::find(&mut table.columns, hints, grid, &rows);
        }
    }
    tables
}
