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
mod families;
mod ground;
mod looking;
mod models;
mod planning;
mod ranks;
mod resampling;
mod rounds;
mod spreads;
mod worked_session;
