//! What the columns of a table hold, in which units, and how shots lie in it.

pub(crate) mod alike;
pub(crate) mod build_column;
pub(crate) mod column;
pub(crate) mod columns;
pub(crate) mod formats;
pub(crate) mod layout;
pub(crate) mod own_measures;
