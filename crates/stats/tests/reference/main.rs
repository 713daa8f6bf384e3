//! Every reference case of tests/reference/stats, unrounded, at its stated tolerance.
#![expect(clippy::unwrap_used, clippy::float_cmp, reason = "tests")]

mod passport;

mod descriptives;
mod differences;
mod distributions;
mod families;
mod planning;
mod rounds;
mod worked_session;
