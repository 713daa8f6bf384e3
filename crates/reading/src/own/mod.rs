//! The tool's own CSV: written for spreadsheets, and read back identical.

mod question;
pub(crate) mod read;
pub(crate) mod write;
