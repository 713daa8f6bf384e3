//! Columns lined up by spaces, or words and numbers with a space between them.
//!
//! Lines that stand together are one table. With two spaces or more between cells, a cell
//! belongs to the column it stands under, so that blanks stay blank; with single spaces, words
//! are joined to headings of the trade and numbers stand alone.

use crate::cut::grid::Grid;
use crate::cut::lines::numbered;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;
use crate::trim::trim;
use session::units::SourceUnit;

/// Whether a line looks like a row of several columns set apart by spaces.
pub(crate) fn has_columns(line: &str) -> bool {
    has_wide_gap(line) || line.split_whitespace().filter(|w| matches!(scan(w), Cell::Figure(_))).count() > 1
}

fn has_wide_gap(line: &str) -> bool {
    trim(line).as_bytes().windows(2).any(|two| two == b"  ")
}

/// Cuts the text. The second value is the line from which on nothing was read.
pub(crate) fn cut(text: &str) -> (Grid, Option<u32>) {
    let mut grid = Grid::default();
    let mut group: Vec<(u32, &str)> = Vec::new();
    for (number, line) in numbered(text) {
        if grid.is_full() {
            return (grid, Some(number));
        }
        if trim(line).is_empty() {
            cut_group(&group, &mut grid);
            group.clear();
        } else {
            group.push((number, line));
        }
        // A table without a blank line is cut in pieces, which only matters for far more rows than a session.
        if group.len() >= 5000 {
            cut_group(&group, &mut grid);
            group.clear();
        }
    }
    cut_group(&group, &mut grid);
    (grid, None)
}

fn cut_group(group: &[(u32, &str)], grid: &mut Grid) {
    let wide = group.iter().filter(|(_, line)| has_wide_gap(line)).count();
    if wide * 2 >= group.len().max(1) {
        by_position(group, grid);
        return;
    }
    let before = sides_before_numbers(group);
    for (number, line) in group {
        grid.begin(*number);
        push_words(line, before, grid);
        grid.drop_if_blank();
    }
}

/// A cell with the span of characters it stands in.
#[derive(Debug, Clone, Copy)]
struct Piece<'a> {
    text: &'a str,
    start: usize,
    end: usize,
}

/// Cells set apart by two spaces or more.
fn pieces(line: &str) -> Vec<Piece<'_>> {
    let mut found = Vec::new();
    // Byte and character of the cell's start and of its last character's end so far.
    let mut open: Option<(usize, usize)> = None;
    let mut close = (0, 0);
    for (at, (byte, c)) in line.char_indices().enumerate() {
        if c.is_whitespace() {
            continue;
        }
        if let Some((from, start)) = open.filter(|_| at - close.1 >= 2) {
            found.push(Piece { text: &line[from..close.0], start, end: close.1 });
            open = None;
        }
        open = open.or(Some((byte, at)));
        close = (byte + c.len_utf8(), at + 1);
    }
    if let Some((from, start)) = open {
        found.push(Piece { text: &line[from..close.0], start, end: close.1 });
    }
    found
}

fn by_position(group: &[(u32, &str)], grid: &mut Grid) {
    let rows: Vec<Vec<Piece<'_>>> = group.iter().map(|(_, line)| pieces(line)).collect();
    let most = rows.iter().map(Vec::len).max().unwrap_or(0);
    // The columns' spans: all rows with the full number of cells together.
    let mut spans = vec![(usize::MAX, 0_usize); most];
    for row in rows.iter().filter(|row| row.len() == most) {
        for (span, piece) in spans.iter_mut().zip(row) {
            *span = (span.0.min(piece.start), span.1.max(piece.end));
        }
    }
    for ((number, _), row) in group.iter().zip(&rows) {
        grid.begin(*number);
        if let Some(headings) =
            row.first().filter(|_| row.len() == 1 && most > 1).and_then(|p| headings(p.text, most))
        {
            headings.iter().for_each(|heading| grid.push(heading));
            continue;
        }
        let mut next = 0;
        for (at, piece) in row.iter().enumerate() {
            let left = row.len() - at - 1;
            let last = most.saturating_sub(left + 1);
            let column = (next..=last).max_by_key(|&c| (overlap(spans[c], *piece), std::cmp::Reverse(c)));
            let column = column.filter(|_| row.len() > 1 || left > 0 || most == 1).unwrap_or(next);
            (next..column).for_each(|_| grid.push(""));
            grid.push(piece.text);
            next = column + 1;
        }
        grid.drop_if_blank();
    }
}

/// Characters that a cell shares with a column, less those by which it misses it.
fn overlap(span: (usize, usize), piece: Piece<'_>) -> isize {
    let shared = span.1.min(piece.end).cast_signed() - span.0.max(piece.start).cast_signed();
    shared.min((piece.end - piece.start).cast_signed())
}

/// Whether `L` and `R` stand before their numbers: some line begins with one or none ends with one.
fn sides_before_numbers(group: &[(u32, &str)]) -> bool {
    let is_side = |word: Option<&str>| {
        word.is_some_and(|w| matches!(w, "L" | "R" | "l" | "r" | "left" | "right" | "Left" | "Right"))
    };
    let any = group.iter().any(|(_, line)| line.split_whitespace().any(|w| is_side(Some(w))));
    any && !group.iter().any(|(_, line)| is_side(line.split_whitespace().last()))
}

fn push_words(line: &str, sides_before: bool, grid: &mut Grid) {
    let words: Vec<&str> = line.split_whitespace().take(1000).collect();
    let figures = words.iter().filter(|w| matches!(scan(w), Cell::Figure(_) | Cell::Missing)).count();
    if figures == 0 {
        push_headings(&words, grid);
        return;
    }
    let mut at = 0;
    while at < words.len() {
        let mut end = at + 1;
        if is_value(words[at]) {
            // "251 yd" and "12 R" are one cell.
            while end < words.len() && joins_number(words[end], sides_before) {
                end += 1;
            }
        } else if sides_before && is_side_word(words[at]) && words.get(end).is_some_and(|w| is_value(w)) {
            end += 1;
        } else {
            while end < words.len() && !is_value(words[end]) && !(sides_before && is_side_word(words[end])) {
                end += 1;
            }
        }
        grid.push(&words[at..end].join(" "));
        at = end;
    }
}

fn is_value(word: &str) -> bool {
    matches!(scan(word), Cell::Figure(_) | Cell::Missing)
}

fn is_side_word(word: &str) -> bool {
    ["L", "R", "left", "right"].iter().any(|w| w.eq_ignore_ascii_case(word))
}

fn joins_number(word: &str, sides_before: bool) -> bool {
    (is_side_word(word) && !sides_before) || (!is_value(word) && SourceUnit::from_text(word).is_some())
}

/// Headings with single spaces over columns that are set further apart.
fn headings(text: &str, columns: usize) -> Option<Vec<String>> {
    let words: Vec<&str> = text.split_whitespace().take(1000).collect();
    let (cells, known) = joined(&words);
    (cells.len() == columns && known > 1).then_some(cells)
}

/// A line without numbers: headings, or one cell of text.
fn push_headings(words: &[&str], grid: &mut Grid) {
    let (cells, known) = joined(words);
    if known * 2 > cells.len() || known > 1 {
        cells.iter().for_each(|cell| grid.push(cell));
    } else {
        grid.push(&words.join(" "));
    }
}

/// Joins words to the longest headings of the trade, and says how many were found.
fn joined(words: &[&str]) -> (Vec<String>, usize) {
    let mut cells: Vec<String> = Vec::new();
    let mut known = 0;
    let mut at = 0;
    while at < words.len() {
        let longest = (1..=4.min(words.len() - at)).rev().find_map(|count| {
            let text = words[at..at + count].join(" ");
            let heading = understand(&text);
            let whole = heading.beside.is_none()
                && !matches!(heading.word, None | Some(Word::Statistic | Word::Remark));
            whole.then_some((count, text))
        });
        let unit = words[at].starts_with(['(', '[']) && words[at].ends_with([')', ']']);
        match (longest, cells.last_mut()) {
            (Some((count, text)), _) => {
                cells.push(text);
                known += 1;
                at += count;
            }
            (None, Some(before)) if unit => {
                before.push(' ');
                before.push_str(words[at]);
                at += 1;
            }
            (None, _) => {
                cells.push(words[at].to_owned());
                at += 1;
            }
        }
    }
    (cells, known)
}
