//! Text in; a session, what was understood, and every row that was not, out. And back: a session as CSV, as a link.
//!
//! Layers, each seeing only those above it in this list: what is given and found ([`hints`], [`outcome`], [`remarks`]);
//! `lexicon`, what a cell or a heading means; `cut`, from text to cells; `understand`, what columns hold; `take`, from
//! cells to shots; `report`, what is said of it; `doubts`, what only the golfer can say. [`read()`] is the one way through. It sees no statistics.
//!
//! ```
//! use reading::{Hints, read};
//! use session::known::Known;
//! use text::Voice;
//!
//! let result = read("Club,Carry (m)\nOwn,200\nB,210\nB,n/a\n", &Hints::default(), &Voice::english());
//! let session = result.session;
//! assert_eq!(session.builds.iter().map(|build| build.name.as_str()).collect::<Vec<_>>(), ["Own", "B"]);
//! assert_eq!(session.measures, [Known::Carry]);
//! // In yards, whatever was written; what could not be read is no number, and is told with its place.
//! assert!(session.shots[0].values[0].is_some_and(|carry| (carry - 218.7).abs() < 0.1));
//! assert_eq!(result.problems.len(), 1);
//! ```

#![warn(clippy::disallowed_methods)]

mod cut;
pub mod doubt;
mod doubts;
pub mod form;
pub mod hints;
mod join;
mod lexicon;
pub mod limits;
pub mod link;
pub mod outcome;
mod own;
mod plain;
mod position;
mod prose;
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
pub use doubt::{Choice, Doubt, DoubtKind, Sample, Settled};
pub use form::{AveragesRow, Form, ListRow};
pub use hints::Hints;
pub use join::join;
pub use outcome::{
    ColumnReading, Delimiter, Layout, LineIs, LineReading, ReadResult, Reading, Role, RowCounts, Statistic,
    SummaryGap, UnitSource,
};
pub use own::write::{write_csv, write_csv_asked};
pub use plain::read_plain;
pub use read::read;
pub use remarks::{Notice, NoticeKind, Place, Problem, ProblemKind};
