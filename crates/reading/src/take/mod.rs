//! From cells to shots, averages and names.

pub(crate) mod around;
pub(crate) mod averages;
pub(crate) mod breaks;
pub(crate) mod cell;
pub(crate) mod ctx;
pub(crate) mod draft;
pub(crate) mod names;
pub(crate) mod receipt;
pub(crate) mod second_factor;
pub(crate) mod shots;
pub(crate) mod strand;
pub(crate) mod summary;
