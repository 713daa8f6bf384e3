//! Seeded, invented sessions of golf shots whose truth is known: for the demo files, for `bench`, and
//! for measuring how often verdicts are wrong.
//!
//! Every parameter is an assumption of common practice; none is fitted to measured shots. One kind of
//! club (a driver in a strong amateur's hands) only; no wind, no change of ball, no learning across days.
//!
//! A session depends on its seed and its number alone, so that sessions can be made on many threads in
//! any order and stay the same.

pub(crate) mod flown;
#[cfg(test)]
mod luck;
pub(crate) mod model;
pub(crate) mod order;
pub(crate) mod report;
mod written;

pub(crate) use model::{Effects, LEVELS, MEASURES, session};
pub(crate) use order::{Turn, Turns, blocked, in_laps, in_turns};
pub(crate) use written::written_down;

/// The generator of one session.
pub(crate) type Random = rand_pcg::Pcg64;

/// The generator of session `number` under `seed`: a stream of its own.
pub(crate) fn random(seed: u64, number: u64) -> Random {
    Random::new(u128::from(seed), u128::from(number))
}
