//! Every reference case of tests/reference/stats, unrounded, at its stated tolerance.
#![expect(
    clippy::unwrap_used,
    clippy::float_cmp,
    clippy::cast_possible_truncation,
    clippy::disallowed_methods,
    reason = "tests"
)]

mod passport;

mod descriptives;
mod differences;
mod distributions;
mod ground;
mod models;
mod piles;
mod planning;
mod resampling;
mod rounds;
mod spreads;
mod worked_session;
