//! The shots of a session laid out for comparison: who hit what, in which round.

use session::measure::MeasureId;
use session::{Order, Session, infer_rounds};

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
    rounds: Option<Vec<u32>>,
    /// Per build, ascending; empty when not hit in turn.
    rounds_of: Vec<Vec<u32>>,
    /// Shots set aside, per build.
    left_out: Vec<usize>,
}

/// One measure of every build, laid out once for all pairs: a session of many builds would otherwise cost by their
/// square.
#[derive(Debug)]
pub struct Measured<'a> {
    pub(super) table: &'a ShotTable<'a>,
    pub(super) measure: &'a MeasureId,
    /// Values of each build, in the order hit.
    by_build: Vec<Vec<f64>>,
    /// `None` when not hit in turn, or when that says nothing.
    pub(super) rounds: Option<stats::FittedRounds>,
}

impl Measured<'_> {
    /// Values of one build, in the order hit.
    pub(super) fn values(&self, build: usize) -> Vec<f64> {
        self.by_build.get(build).cloned().unwrap_or_default()
    }
}

impl<'a> ShotTable<'a> {
    /// Takes the rounds that the session names, or reads them off the order of hitting.
    #[must_use]
    pub fn new(session: &'a Session) -> Self {
        let builds = session.builds.len();
        let mut left_out = vec![0; builds];
        for shot in session.shots.iter().filter(|shot| shot.left_out.is_some()) {
            left_out.get_mut(shot.build).into_iter().for_each(|count| *count += 1);
        }
        if session.order != Order::Interleaved {
            return Self { session, rounds: None, rounds_of: Vec::new(), left_out };
        }
        let named: Option<Vec<u32>> = session.shots.iter().map(|s| s.round).collect();
        let rounds = named.unwrap_or_else(|| {
            let builds: Vec<usize> = session.shots.iter().map(|s| s.build).collect();
            infer_rounds(&builds)
        });
        let mut rounds_of = vec![Vec::new(); builds];
        for (shot, &round) in session.shots.iter().zip(&rounds) {
            rounds_of.get_mut(shot.build).into_iter().for_each(|list| list.push(round));
        }
        let rounds_of = rounds_of.into_iter().map(arrange::distinct).collect();
        Self { session, rounds: Some(rounds), rounds_of, left_out }
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

    /// One measure of every build.
    #[must_use]
    pub fn measured<'t>(&'t self, measure: &'t MeasureId, include: Include) -> Measured<'t> {
        let mut by_build = vec![Vec::new(); self.session.builds.len()];
        let index = self.session.measure_index(measure);
        for (_, shot) in self.counted(include) {
            let value = index.and_then(|index| shot.values.get(index).copied().flatten());
            if let (Some(value), Some(values)) = (value, by_build.get_mut(shot.build)) {
                values.push(value);
            }
        }
        let rounds = index.and_then(|index| self.in_rounds(index, include)).and_then(|shots| {
            let rounds = stats::Rounds::new(&shots).ok()?;
            rounds.fit().ok()
        });
        Measured { table: self, measure, by_build, rounds }
    }

    /// All shots with the measure at `index`, with their rounds; `None` when not hit in turn.
    fn in_rounds(&self, index: usize, include: Include) -> Option<Vec<stats::RoundShot>> {
        let rounds = self.rounds.as_deref()?;
        let shot = |(i, shot): (usize, &session::Shot)| {
            let value = shot.values.get(index).copied().flatten()?;
            Some(stats::RoundShot { round: *rounds.get(i)? as usize, build: shot.build, value })
        };
        Some(self.counted(include).filter_map(shot).collect())
    }

    /// Rounds that hold both builds, whatever was measured; 0 when fewer than two do.
    #[must_use]
    pub fn shared_rounds(&self, one: usize, other: usize) -> u32 {
        let Some((one, other)) = self.rounds_of.get(one).zip(self.rounds_of.get(other)) else { return 0 };
        let shared = one.iter().filter(|round| other.binary_search(round).is_ok()).count();
        u32::try_from(shared).ok().filter(|&s| s >= FEWEST_ROUNDS).unwrap_or(0)
    }

    /// Shots of these two different builds that were set aside.
    #[must_use]
    pub fn left_out(&self, one: usize, other: usize) -> usize {
        [one, other].iter().filter_map(|&build| self.left_out.get(build)).sum()
    }

    fn counted(&self, include: Include) -> impl Iterator<Item = (usize, &'a session::Shot)> {
        let keep = move |shot: &session::Shot| include == Include::All || shot.left_out.is_none();
        self.session.shots.iter().enumerate().filter(move |(_, shot)| keep(shot))
    }
}
