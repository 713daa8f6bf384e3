//! Rows of cells in one piece of memory: four bytes a cell beside its text.

use crate::limits::{MAX_CELLS, MAX_ROWS};
use crate::trim::{is_unseen, trim};

/// Cells by row, in the order of the text.
#[derive(Debug, Default)]
pub(crate) struct Grid {
    text: String,
    /// Where each cell ends in `text`.
    ends: Vec<u32>,
    rows: Vec<GridRow>,
    /// Headings that stand for others: as they are read, and as they were written.
    written: Vec<(String, String)>,
}

#[derive(Debug, Clone, Copy)]
struct GridRow {
    line: u32,
    first: u32,
    cells: u32,
}

/// Positions are kept in 32 bits; the limit on the text's length is far below.
fn position(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX)
}

impl Grid {
    /// Begins a row; the cells pushed from now on are its cells.
    pub(crate) fn begin(&mut self, line: u32) {
        self.rows.push(GridRow { line, first: position(self.ends.len()), cells: 0 });
    }

    /// Adds a cell to the last row.
    pub(crate) fn push(&mut self, cell: &str) {
        if let Some(row) = self.rows.last_mut() {
            // Marks that nobody sees within a number are no part of it.
            if !cell.is_ascii() && cell.bytes().any(|b| b.is_ascii_digit()) && cell.chars().any(is_unseen) {
                self.text.extend(cell.chars().filter(|c| !is_unseen(*c)));
            } else {
                self.text.push_str(cell);
            }
            self.ends.push(position(self.text.len()));
            row.cells += 1;
        }
    }

    /// Adds a heading that was written in another way.
    pub(crate) fn push_as(&mut self, heading: &str, written: &str) {
        self.push(heading);
        self.written.push((heading.to_owned(), written.to_owned()));
    }

    /// A heading as it was written.
    pub(crate) fn as_written<'a>(&'a self, heading: &'a str) -> &'a str {
        self.written.iter().find(|(read, _)| read == heading).map_or(heading, |(_, written)| written)
    }

    /// Takes the last row back when it holds nothing but delimiters.
    pub(crate) fn drop_if_blank(&mut self) {
        let Some(index) = self.rows.len().checked_sub(1) else { return };
        let blank = |cell: &str| cell.chars().all(|c| matches!(c, ',' | ';' | '|'));
        if self.cells(index).all(blank)
            && let Some(row) = self.rows.pop()
        {
            self.ends.truncate(row.first as usize);
            self.text.truncate(self.ends.last().map_or(0, |&end| end as usize));
        }
    }

    /// Moves the last row before all others.
    pub(crate) fn last_row_first(&mut self) {
        self.rows.rotate_right(1);
    }

    /// Whether as much was read as can be.
    pub(crate) fn is_full(&self) -> bool {
        self.rows.len() >= MAX_ROWS || self.ends.len() >= MAX_CELLS
    }

    pub(crate) fn len(&self) -> usize {
        self.rows.len()
    }

    pub(crate) fn line(&self, row: usize) -> u32 {
        self.rows.get(row).map_or(0, |r| r.line)
    }

    pub(crate) fn width(&self, row: usize) -> usize {
        self.rows.get(row).map_or(0, |r| r.cells as usize)
    }

    /// The cell as written; empty beyond the row's end.
    pub(crate) fn raw(&self, row: usize, column: usize) -> &str {
        let Some(r) = self.rows.get(row).filter(|r| column < r.cells as usize) else { return "" };
        let at = r.first as usize + column;
        let start = at.checked_sub(1).map_or(0, |before| self.ends[before] as usize);
        &self.text[start..self.ends[at] as usize]
    }

    /// The cell without spaces at its ends.
    pub(crate) fn cell(&self, row: usize, column: usize) -> &str {
        trim(self.raw(row, column))
    }

    pub(crate) fn cells(&self, row: usize) -> impl Iterator<Item = &str> {
        (0..self.width(row)).map(move |column| self.cell(row, column))
    }

    /// Number of cells that hold anything.
    pub(crate) fn filled(&self, row: usize) -> usize {
        self.cells(row).filter(|c| !c.is_empty()).count()
    }

    /// The only filled cell of a row.
    pub(crate) fn only_cell(&self, row: usize) -> Option<&str> {
        let mut filled = self.cells(row).filter(|c| !c.is_empty());
        let first = filled.next()?;
        if filled.next().is_some() { None } else { Some(first) }
    }
}
