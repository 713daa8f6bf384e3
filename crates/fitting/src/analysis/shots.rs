//! The shots of a session laid out for comparison: who hit what, in which round.

use crate::few;
use crate::session::{Order, Session, infer_rounds};
use std::borrow::Cow;

/// Fewest rounds that hold both builds before the comparison may rest on rounds.
const FEWEST_ROUNDS: u32 = 2;

/// Whether shots that were set aside count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Include {
    /// Every shot: what the headline rests on.
    All,
    /// Only those not set aside: shown beside it.
    NotLeftOut,
}

/// A session with the round of every shot settled.
#[derive(Debug)]
pub struct ShotTable<'a> {
    session: &'a Session,
    /// Per shot; `None` when the builds were not hit in turn.
    rounds: Option<Cow<'a, [u32]>>,
}

impl<'a> ShotTable<'a> {
    /// Takes the rounds that the session names, or reads them off the order of hitting.
    #[must_use]
    pub fn new(session: &'a Session) -> Self {
        if session.order != Order::Interleaved {
            return Self { session, rounds: None };
        }
        let named: Option<Vec<u32>> = session.shots.iter().map(|s| s.round).collect();
        let rounds = named.unwrap_or_else(|| {
            let builds: Vec<usize> = session.shots.iter().map(|s| s.build).collect();
            infer_rounds(&builds)
        });
        Self { session, rounds: Some(Cow::Owned(rounds)) }
    }

    /// The session it was made from.
    #[must_use]
    pub fn session(&self) -> &'a Session {
        self.session
    }

    /// Values of one build on the measure at `index`, in the order hit.
    #[must_use]
    pub fn values(&self, build: usize, index: usize, include: Include) -> Vec<f64> {
        self.counted(include)
            .filter(|(_, shot)| shot.build == build)
            .filter_map(|(_, shot)| shot.values.get(index).copied().flatten())
            .collect()
    }

    /// All shots with the measure at `index`, with their rounds; `None` when not hit in turn.
    #[must_use]
    pub fn in_rounds(&self, index: usize, include: Include) -> Option<Vec<stats::RoundShot>> {
        let rounds = self.rounds.as_deref()?;
        let shot = |(i, shot): (usize, &crate::session::Shot)| {
            let value = shot.values.get(index).copied().flatten()?;
            Some(stats::RoundShot { round: *rounds.get(i)? as usize, build: shot.build, value })
        };
        Some(self.counted(include).filter_map(shot).collect())
    }

    /// Rounds that hold both builds, whatever was measured; 0 when fewer than two do.
    #[must_use]
    pub fn shared_rounds(&self, one: usize, other: usize) -> u32 {
        let Some(rounds) = self.rounds.as_deref() else { return 0 };
        let mut seen: few::Map<u32, (bool, bool)> = few::Map::default();
        for (shot, &round) in self.session.shots.iter().zip(rounds) {
            let entry = seen.entry(round, Default::default);
            entry.0 |= shot.build == one;
            entry.1 |= shot.build == other;
        }
        let shared = seen.values().filter(|(a, b)| *a && *b).count();
        u32::try_from(shared).ok().filter(|&s| s >= FEWEST_ROUNDS).unwrap_or(0)
    }

    /// Shots of these two builds that were set aside.
    #[must_use]
    pub fn left_out(&self, one: usize, other: usize) -> usize {
        self.session
            .shots
            .iter()
            .filter(|s| (s.build == one || s.build == other) && s.left_out.is_some())
            .count()
    }

    fn counted(&self, include: Include) -> impl Iterator<Item = (usize, &'a crate::session::Shot)> {
        let keep = move |shot: &crate::session::Shot| include == Include::All || shot.left_out.is_none();
        self.session.shots.iter().enumerate().filter(move |(_, shot)| keep(shot))
    }
}
