//! On how many sessions a rate is measured, and from which seeds they come.

/// How many sessions a rate is measured on.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Effort {
    /// Divides the number of sessions of the full run.
    pub(crate) divisor: u64,
    /// Standard errors added to every limit, since fewer sessions scatter more.
    pub(crate) slack: f64,
}

/// The figures that are published.
pub(crate) const FULL: Effort = Effort { divisor: 1, slack: 0.0 };

/// For every test run: a twentieth of the sessions, limits four standard errors wider, so that a right method
/// fails by luck less than once in ten thousand runs of the whole table.
pub(crate) const SHORT: Effort = Effort { divisor: 20, slack: 4.0 };

/// How many of the sessions of the full run.
pub(crate) fn sessions(full: u64, effort: Effort) -> u64 {
    full / effort.divisor
}

/// A seed of its own for every row, so that no two rows share sessions.
pub(crate) fn seed(target: u32, row: usize) -> u64 {
    1_000_000 + u64::from(target) * 1_000 + row as u64
}
