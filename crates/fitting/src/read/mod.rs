//! Text in; a session, what was understood, and every row that was not, out. Never fails whole.
//!
//! One way through: text → cells ([`delimited`]) → headings, titles and bodies ([`blocks`]) →
//! what each column holds ([`columns`]) → shots and summaries ([`shots`], [`summary`]) →
//! order and rounds ([`order`]). Everything guessed stands in [`Reading`] and gives way to
//! [`Hints`]. Cost grows linearly with the text; [`limits`] bound it.

mod agreement;
mod blocks;
mod build_column;
mod clock;
mod columns;
mod delimited;
mod draft;
mod formats;
mod grid;
mod heading;
mod hints;
pub mod limits;
mod number;
mod order;
mod outcome;
mod own_measures;
mod position;
mod report;
mod shots;
mod spaces;
mod summary;
mod talk;
mod vocabulary;

pub use hints::Hints;
pub use outcome::{
    ColumnReading, Delimiter, Layout, LineIs, LineReading, Notice, NoticeKind, Place, Problem, ProblemKind,
    ReadResult, Reading, Role, RowCounts, Statistic, SummaryGap, UnitSource,
};

use blocks::{Block, Sorted};
use columns::Column;
use grid::Grid;
use shots::{Ctx, Strand};
use talk::{Talk, place};

/// Reads shots from text.
#[must_use]
pub fn read(text: &str, hints: &Hints) -> ReadResult {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut talk = Talk::default();
    if text.chars().all(number::is_blank) {
        talk.problem(ProblemKind::EmptyText, place(0, ""), "");
    }
    let whole = text;
    let text = limits::prefix(whole, limits::MAX_BYTES);
    let (grid, delimiter) = cells(text, whole.len(), hints, &mut talk);
    let sorted = blocks::sort(&grid, hints);
    read_sorted(&grid, &sorted, delimiter, hints, talk)
}

/// Cuts the text into rows and cells.
fn cells(text: &str, length: usize, hints: &Hints, talk: &mut Talk) -> (Grid, Delimiter) {
    let delimiter = hints.delimiter.unwrap_or_else(|| delimited::sniff(text));
    let byte = match delimiter {
        Delimiter::Tab => b'\t',
        Delimiter::Semicolon => b';',
        Delimiter::Pipe => b'|',
        _ => b',',
    };
    let cut = delimited::cut(text, byte, limits::MAX_ROWS);
    if cut.quotes_ignored {
        let message =
            "A quotation mark never closes; quotation marks were read as plain characters.".to_owned();
        talk.notice(NoticeKind::QuotesIgnored, place(0, ""), message);
    }
    if let Some(line) = cut.stopped_at {
        talk.problem(ProblemKind::TooLong, place(line, ""), "");
    } else if length > text.len() {
        talk.problem(ProblemKind::TooLong, place(0, ""), "");
    }
    (cut.grid, delimiter)
}

/// Blocks under the same headings, with their columns.
struct Table<'a> {
    columns: Vec<Column<'a>>,
    blocks: Vec<&'a Block>,
}

fn read_sorted(grid: &Grid, sorted: &Sorted, delimiter: Delimiter, hints: &Hints, talk: Talk) -> ReadResult {
    let mut ctx = Ctx::new(grid, hints, talk);
    let tables = tables(grid, &sorted.blocks, hints);
    for block in &sorted.blocks {
        let Some(table) = tables.iter().find(|t| t.blocks.iter().any(|b| std::ptr::eq(*b, block))) else {
            continue;
        };
        let strands = [Strand { build: None, columns: (0..table.columns.len()).collect() }];
        shots::read_block(&mut ctx, block, &table.columns, &strands);
    }
    let rows = std::mem::take(&mut ctx.summaries);
    let gaps = agreement::compare(&ctx.draft, &rows, &mut ctx.talk);
    summary::settle(&mut ctx.draft, &rows);
    order::settle(&mut ctx.draft, true, &mut ctx.talk);
    order::check_numbers(&ctx.draft.session, &mut ctx.talk);
    let blocks_named = sorted.blocks.iter().filter(|b| b.title.is_some()).count();
    let layout = if blocks_named > 1 { Layout::Blocks } else { Layout::Rows };
    report::finish(ctx, sorted, tables.iter().flat_map(|t| &t.columns), delimiter, layout, gaps)
}

fn tables<'a>(grid: &'a Grid, blocks: &'a [Block], hints: &Hints) -> Vec<Table<'a>> {
    let mut tables: Vec<Table<'a>> = Vec::new();
    for block in blocks {
        let same = |t: &&mut Table<'_>| t.blocks.first().is_some_and(|b| b.headings == block.headings);
        match tables.iter_mut().find(same) {
            Some(table) => table.blocks.push(block),
            None => tables.push(Table { columns: Vec::new(), blocks: vec![block] }),
        }
    }
    for table in &mut tables {
        let rows: Vec<usize> = table.blocks.iter().flat_map(|b| b.body.iter().copied()).collect();
        table.columns = columns::profile(grid, &table.blocks);
        columns::assign(&mut table.columns, hints, false, grid, &rows);
    }
    tables
}
