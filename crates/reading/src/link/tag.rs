//! Tags of a link's sections. A tag is never given to anything else.

pub(crate) const BUILDS: u64 = 1;
pub(crate) const MEASURES: u64 = 2;
pub(crate) const SHOTS: u64 = 3;
pub(crate) const LEFT_OUT: u64 = 4;
pub(crate) const SUMMARIES: u64 = 5;
pub(crate) const QUESTION: u64 = 6;
pub(crate) const VIEW: u64 = 7;
pub(crate) const PLAN: u64 = 8;
pub(crate) const SECOND: u64 = 9;
pub(crate) const WEATHER: u64 = 10;
pub(crate) const NOTES: u64 = 11;
pub(crate) const DIFFERS: u64 = 12;
/// The last one.
pub(crate) const LAST: usize = 12;
