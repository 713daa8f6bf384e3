//! Text in; a session, what was understood, and every row that was not, out. And back: a session as CSV, as a link.
//!
//! Layers, each seeing only those above it in this list: what is given and found ([`hints`], [`outcome`], [`remarks`]);
//! `lexicon`, what a cell or a heading means; `cut`, from text to cells; `understand`, what columns hold; `take`, from
//! cells to shots; `report`, what is said of it. [`read()`] is the one way through. It sees no statistics.

#![warn(clippy::disallowed_methods)]

mod cut;
pub mod hints;
mod join;
mod lexicon;
pub mod limits;
pub mod link;
pub mod outcome;
mod own;
mod plain;
mod position;
mod read;
mod refusals;
pub mod remarks;
mod report;
mod second_and_weather;
mod take;
mod talk;
mod trim;
mod understand;

pub use cut::file::{Encoding, FileIs, NotText, recognize};
pub use hints::Hints;
pub use join::join;
pub use outcome::{
    ColumnReading, Delimiter, Layout, LineIs, LineReading, ReadResult, Reading, Role, RowCounts, Statistic,
    SummaryGap, UnitSource,
};
pub use own::write::write_csv;
pub use plain::read_plain;
pub use read::read;
pub use remarks::{Notice, NoticeKind, Place, Problem, ProblemKind};
