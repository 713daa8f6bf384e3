//! The short way through reading, for a plain table: known headings, one row for each shot, perhaps text around them.
//!
//! It goes through the same stages as [`crate::read()`] and gives the same result, or none: whatever would need
//! another stage is left to the whole reader. A page that starts with this alone has a third as much to load.

use crate::cut::shape;
use crate::cut::{blocks, delimited, down, lines};
use crate::doubts;
use crate::hints::Hints;
use crate::lexicon::word::Word;
use crate::limits::{MAX_BYTES, MAX_COLUMNS};
use crate::outcome::{Delimiter, Layout, ReadResult};
use crate::own::write::MARK;
use crate::report::finish::Shown;
use crate::report::{finish, whole};
use crate::take::around::Around;
use crate::take::ctx::Ctx;
use crate::take::strand::strands;
use crate::take::{averages, breaks, shots};
use crate::talk::Talk;
use crate::trim::{has, is_blank};
use crate::understand::column::Column;
use crate::understand::{column, columns};
use session::few::Set;
use text::Voice;

/// Reads a plain table of shots as [`crate::read()`] does without hints; `None` when the text is anything else.
///
/// Plain: cells set apart by commas, semicolons or tabs, and none of the others anywhere; no quotation marks;
/// one row of headings that each name one measure of the trade, the build, the round or the shot's number;
/// below it nothing but shots whose measures are numbers. Titles, units and lines of text may stand around it.
#[must_use]
pub fn read_plain(text: &str, voice: &Voice) -> Option<ReadResult> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let (delimiter, mark) = only_delimiter(text)?;
    let (grid, None) = lines::cut(text, mark) else { return None };
    let hints = Hints::default();
    let is_wide = (0..grid.len()).any(|row| grid.width(row) > MAX_COLUMNS);
    if is_wide || down::has_measures_down(&grid, &hints) {
        return None;
    }
    if !shape::is_plain(&grid) {
        return None;
    }
    let sorted = blocks::sort(&grid, &hints);
    let [block] = sorted.blocks.as_slice() else { return None };
    block.headings?;
    let said = Around::of(&grid, &sorted).speaks_of_averages;
    let mut columns = column::profile(&grid, &[block]);
    if !are_plain(&columns) || averages::are_averages(&columns, &block.body, &grid, &hints, said) {
        return None;
    }
    columns::assign(&mut columns, &hints, false, &grid, &block.body);
    let mut ctx = Ctx::new(&grid, &hints, Talk::new(voice), text.len());
    shots::read_block(&mut ctx, block, &columns, &strands(&columns));
    if breaks::are_among(&ctx, &sorted.others) {
        return None;
    }
    if !ctx.summaries.is_empty() || ctx.too_many_summaries {
        return None;
    }
    let columns: Vec<&Column<'_>> = columns.iter().collect();
    if !doubts::settle(&mut ctx, &columns, None).is_empty() {
        return None;
    }
    whole::settle(&mut ctx, true);
    if ctx.draft.session.shots.is_empty() {
        return None;
    }
    let shown = Shown {
        delimiter,
        layout: Layout::Rows,
        single: None,
        gaps: Vec::new(),
        measures: Vec::new(),
        doubts: Vec::new(),
        questions: Vec::new(),
    };
    Some(finish::finish(ctx, &sorted, &columns, shown))
}

/// The one mark that sets cells apart, where no other could and nothing is quoted or marked up.
fn only_delimiter(text: &str) -> Option<(Delimiter, char)> {
    let other = text.len() > MAX_BYTES
        || text.starts_with(MARK)
        || text.contains(['"', '<', '|'])
        || text.trim_start().starts_with(['[', '{'])
        || text.chars().all(is_blank);
    if other {
        return None;
    }
    let marks = [(Delimiter::Tab, '\t'), (Delimiter::Semicolon, ';'), (Delimiter::Comma, ',')];
    let mut there = marks.into_iter().filter(|(_, mark)| has(text, *mark));
    let only = there.next().filter(|_| there.next().is_none())?;
    (delimited::sniff(text) == only.0).then_some(only)
}

/// Whether every column says by itself, and alone, what it holds.
fn are_plain(columns: &[Column<'_>]) -> bool {
    let mut seen: Set<&str> = Set::default();
    let plain = |column: &Column<'_>| {
        let key = match column.understood.word {
            Some(Word::Measure(known)) if column.profile.texts == 0 => known.id(),
            Some(Word::Build(_)) if column.profile.texts > 0 => "build",
            Some(Word::Number) => "number",
            Some(Word::Round) => "round",
            _ => return false,
        };
        column.understood.beside.is_none() && column.understood.statistic.is_none() && seen.insert(key)
    };
    columns.iter().all(plain)
}
