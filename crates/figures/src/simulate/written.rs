//! Simulated shots as a golfer would have written them down.

use super::model::Values;
use super::{MEASURES, Turn};
use session::{Build, Order, Session, Shot};

/// The session of these turns: some of the measures, each value as `kept` leaves it, laps only where the builds were hit in turn.
pub(crate) fn written_down(
    turns: &[Turn],
    shots: &[Values],
    builds: impl Iterator<Item = String>,
    columns: &[usize],
    order: Order,
    kept: impl Fn(f64) -> f64,
) -> Session {
    let round =
        |turn: &Turn| (order == Order::Interleaved).then(|| u32::try_from(turn.round + 1).unwrap_or(1));
    let shot = |(turn, values): (&Turn, &Values)| Shot {
        build: turn.build,
        round: round(turn),
        values: columns.iter().map(|&column| Some(kept(values[column]))).collect(),
        ..Shot::default()
    };
    Session {
        builds: builds.map(|name| Build { name }).collect(),
        measures: columns.iter().map(|&column| MEASURES[column].into()).collect(),
        shots: turns.iter().zip(shots).map(shot).collect(),
        order,
        ..Session::default()
    }
}
