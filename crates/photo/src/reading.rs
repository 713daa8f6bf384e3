//! What was read of a photo, as it is handed on.

use crate::quad::Quad;
use serde::Serialize;

/// A table, or big numbers under labels, with what is in doubt.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
pub struct Reading {
    /// Big numbers, each under its label, in one row; otherwise a table.
    pub is_tiles: bool,
    /// From the left.
    pub columns: Vec<Column>,
    /// How many there are.
    pub rows: usize,
    /// Row by row; what is empty is left out.
    pub cells: Vec<Cell>,
    /// Lines above the headings.
    pub above: Vec<String>,
    /// Lines below the last row.
    pub below: Vec<String>,
    /// All cut-outs, one behind the other: gray, `cut_height` high, row by row.
    #[serde(skip)]
    pub cuts: Vec<u8>,
    /// How high each cut-out is.
    pub cut_height: usize,
}

/// A column of a table, or a tile.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
pub struct Column {
    /// As it stands above, with its unit.
    pub heading: String,
    /// Whether it holds numbers.
    pub is_number: bool,
    /// Whether a number in it has a sign, or the letter of a side: what was lost there is easily overlooked.
    pub has_signs: bool,
}

/// A text in its row and column.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Cell {
    /// From the top.
    pub row: usize,
    /// From the left.
    pub column: usize,
    /// As it was read; empty when nothing was, where something stands.
    pub text: String,
    /// What a second look said, when it was something else.
    pub other: Option<String>,
    /// Why to look at it again; none when nothing speaks against it.
    pub doubts: Vec<Doubt>,
    /// Its corners in the picture that was given.
    pub quad: Quad,
    /// Its cut-out.
    pub cut: Option<Cut>,
}

/// Where a cut-out lies among all of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Cut {
    /// Its first byte.
    pub from: usize,
    /// In pixels.
    pub width: usize,
}

/// Why a number is to be looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Doubt {
    /// A character of it could be another.
    Unsure,
    /// A second look read something else.
    ReadOtherwise,
    /// Its form or its size is not that of its column.
    OutOfLine,
    /// It does not fit what stands beside it in another column.
    AgainstAnother,
    /// Found where others of its column stand, by digits alone.
    Filled,
    /// Nothing was read where something stands.
    Missing,
    /// Something like a minus stands before it.
    Sign,
}

/// Why nothing is taken over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refused {
    /// No text was found.
    NoText,
    /// Texts, but no table and no tiles of numbers.
    NoTable,
    /// Too many texts for any table on a screen.
    TooMuch,
    /// Too much of it is in doubt: too dark, too far away, or blurred.
    TooPoor {
        /// Numbers in doubt or missing.
        doubtful: usize,
        /// All numbers of the table.
        of: usize,
    },
}

/// What is being done, for whoever waits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Progress {
    /// Looking for texts.
    Finding,
    /// So many of so many texts are read.
    Reading {
        /// Read so far.
        done: usize,
        /// As far as is known.
        of: usize,
    },
}
