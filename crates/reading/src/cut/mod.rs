//! From text to cells: lines, delimiters, tables in markup, blocks and lists.

pub(crate) mod blocks;
pub(crate) mod delimited;
pub(crate) mod down;
pub(crate) mod file;
pub(crate) mod grid;
pub(crate) mod html;
pub(crate) mod json;
pub(crate) mod json_lists;
pub(crate) mod lines;
pub(crate) mod shape;
pub(crate) mod source;
pub(crate) mod spaces;
pub(crate) mod stacked;
