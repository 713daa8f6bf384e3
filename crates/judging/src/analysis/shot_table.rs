//! The shots of a session laid out for comparison: who hit what, in which round.

use super::estimate::Counts;
use super::pair::Compared;
use super::warming_up::start_of_lap;
use serde::Serialize;
use session::measure::MeasureId;
use session::slipped_point::slipped_points;
use session::{Order, Session, few, infer_rounds};

/// Fewest rounds that hold both builds before the comparison may rest on rounds.
const FEWEST_ROUNDS: u32 = 2;

/// Two gaps that are worked out two ways are one within this share.
const SAME: f64 = 1e-9;

/// Whether shots that were set aside count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Include {
    /// Every shot: what the headline rests on.
    All,
    /// Only those not set aside: shown beside it.
    NotLeftOut,
}

/// So many shots of so many.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PartOf {
    /// How many.
    pub shots: usize,
    /// Of all of this club.
    pub of: usize,
}

/// Values that cannot be, or whose point slipped, and whose shots the golfer set aside: slips of the keys or of the reading,
/// which count neither with the shots set aside nor without them. Each as its shot and the place of its measure.
fn slips_set_aside(session: &Session) -> few::Set<(usize, usize)> {
    let mut slips = few::Set::default();
    let some_set_aside = |build: usize| {
        let mut own = session.shots.iter().filter(|shot| shot.build == build);
        own.any(|shot| shot.left_out.is_some())
    };
    for build in (0..session.builds.len()).filter(|&build| some_set_aside(build)) {
        for (column, measure) in session.measures.iter().enumerate() {
            let Some(facts) = measure.usual().map(session::known::Known::facts) else { continue };
            let own = session.shots.iter().enumerate().filter(|(_, shot)| shot.build == build);
            let own = own.filter_map(|(at, shot)| Some((at, shot.values.get(column).copied()??)));
            let (places, values): (Vec<usize>, Vec<f64>) = own.unzip();
            let slipped = slipped_points(&values).filter(|_| facts.keeps_its_size);
            let slipped = slipped.map_or_else(Vec::new, |(_, found)| found);
            for (at, value) in values.iter().enumerate() {
                let cannot_be = !(facts.plausible.low..=facts.plausible.high).contains(value);
                let is_set_aside = session.shots[places[at]].left_out.is_some();
                if is_set_aside && (cannot_be || slipped.contains(&at)) {
                    slips.insert((places[at], column));
                }
            }
        }
    }
    slips
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
    left_out: Vec<PartOf>,
    /// Values that count nowhere: shot, and place of the measure.
    slips: few::Set<(usize, usize)>,
}

/// One measure of every build, laid out once for all pairs: a session of many builds would otherwise cost by their
/// square.
#[derive(Debug)]
pub struct Measured<'a> {
    pub(super) table: &'a ShotTable<'a>,
    pub(super) measure: &'a MeasureId,
    /// Values of each build, in the order hit.
    by_build: Vec<Vec<f64>>,
    /// All its shots with their rounds; `None` when not hit in turn.
    in_rounds: Option<Vec<stats::RoundShot>>,
    /// `None` when not hit in turn, or when that says nothing.
    pub(super) rounds: Option<stats::FittedRounds>,
}

impl Measured<'_> {
    /// All its shots with their rounds; `None` when not hit in turn.
    #[must_use]
    pub fn in_rounds(&self) -> Option<&[stats::RoundShot]> {
        self.in_rounds.as_deref()
    }

    /// Values of one build, in the order hit.
    pub(super) fn values(&self, build: usize) -> Vec<f64> {
        self.by_build.get(build).cloned().unwrap_or_default()
    }
}

impl Measured<'_> {
    /// The averages of two builds over the rounds that hold both, each round by what it says of the gap, and set so far
    /// apart as the comparison found; `None` where they are those of all shots.
    pub(super) fn compared(&self, one: usize, other: usize, gap: f64, all: &[&[f64]; 2]) -> Option<Compared> {
        let mut by_round: few::Map<usize, [(usize, f64); 2]> = few::Map::default();
        for shot in self.in_rounds.as_ref()? {
            let Some(side) = [one, other].iter().position(|&build| build == shot.build) else { continue };
            let cells = by_round.entry(shot.round, || [(0, 0.0); 2]);
            cells[side] = (cells[side].0 + 1, cells[side].1 + shot.value);
        }
        let shared: Vec<_> = by_round.into_values().filter(|[a, b]| a.0 > 0 && b.0 > 0).collect();
        let n = |side: usize| shared.iter().map(|cells| cells[side].0).sum::<usize>();
        let weight = |cells: &[(usize, f64); 2]| {
            let (a, b) = (cells[0].0 as f64, cells[1].0 as f64);
            a * b / (a + b)
        };
        let weights: f64 = shared.iter().map(weight).sum();
        let average = |side: usize| {
            let sum: f64 = shared.iter().map(|c| weight(c) * c[side].1 / c[side].0 as f64).sum();
            sum / weights
        };
        let mean = |values: &[f64]| stats::describe::mean(values);
        let plain = mean(all[1]) - mean(all[0]);
        let middle = 0.5 * (average(0) + average(1));
        let is_all =
            n(0) == all[0].len() && n(1) == all[1].len() && (plain - gap).abs() <= SAME * gap.abs().max(1.0);
        let rounds = u32::try_from(shared.len()).ok()?;
        let n = Counts { baseline: n(0), candidate: n(1) };
        let compared = Compared { baseline: middle - 0.5 * gap, candidate: middle + 0.5 * gap, n, rounds };
        (!is_all).then_some(compared)
    }
}

impl<'a> ShotTable<'a> {
    /// Takes the rounds that the session names, or reads them off the order of hitting.
    #[must_use]
    pub fn new(session: &'a Session) -> Self {
        let builds = session.builds.len();
        let mut left_out = vec![PartOf { shots: 0, of: 0 }; builds];
        for shot in &session.shots {
            if let Some(part) = left_out.get_mut(shot.build) {
                part.of += 1;
                part.shots += usize::from(shot.left_out.is_some());
            }
        }
        let slips = slips_set_aside(session);
        if session.order != Order::Interleaved {
            return Self { session, rounds: None, rounds_of: Vec::new(), left_out, slips };
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
        Self { session, rounds: Some(rounds), rounds_of, left_out, slips }
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
            .filter_map(|(at, _)| self.value(at, index))
            .collect()
    }

    /// One measure of every build.
    #[must_use]
    pub fn measured<'t>(&'t self, measure: &'t MeasureId, include: Include) -> Measured<'t> {
        let mut by_build = vec![Vec::new(); self.session.builds.len()];
        let index = self.session.measure_index(measure);
        for (at, shot) in self.counted(include) {
            let value = index.and_then(|index| self.value(at, index));
            if let (Some(value), Some(values)) = (value, by_build.get_mut(shot.build)) {
                values.push(value);
            }
        }
        let in_rounds = index.and_then(|index| self.in_rounds(index, include));
        let rounds = in_rounds.as_ref().and_then(|shots| stats::Rounds::new(shots).ok()?.fit().ok());
        Measured { table: self, measure, by_build, in_rounds, rounds }
    }

    /// All shots with the measure at `index`, with their rounds; `None` when not hit in turn.
    fn in_rounds(&self, index: usize, include: Include) -> Option<Vec<stats::RoundShot>> {
        let rounds = self.rounds.as_deref()?;
        let shot = |(i, shot): (usize, &session::Shot)| {
            let value = self.value(i, index)?;
            Some(stats::RoundShot { round: *rounds.get(i)? as usize, build: shot.build, value })
        };
        Some(self.counted(include).filter_map(shot).collect())
    }

    /// What a shot holds of a measure; a slip that was set aside holds nothing.
    #[must_use]
    pub fn value(&self, shot: usize, index: usize) -> Option<f64> {
        let value = self.session.shots.get(shot)?.values.get(index).copied().flatten()?;
        (!self.slips.contains(&(shot, index))).then_some(value)
    }

    /// Values of this measure with one of two builds that count nowhere.
    #[must_use]
    pub fn slips(&self, measure: &MeasureId, builds: [usize; 2]) -> usize {
        let Some(index) = self.session.measure_index(measure) else { return 0 };
        let shots = self.session.shots.iter().enumerate();
        let of_pair = shots.filter(|(_, shot)| builds.contains(&shot.build));
        of_pair.filter(|(at, _)| self.slips.contains(&(*at, index))).count()
    }

    /// Shots of the longest turn with one of two builds, as they were hit: also over the end of a round.
    #[must_use]
    pub fn longest_turn(&self, builds: [usize; 2]) -> u32 {
        let of_pair = self.session.shots.iter().map(|shot| shot.build).filter(|build| builds.contains(build));
        let of_pair: Vec<usize> = of_pair.collect();
        let longest = of_pair.chunk_by(|one, next| one == next).map(<[_]>::len).max();
        longest.and_then(|shots| u32::try_from(shots).ok()).unwrap_or(0)
    }

    /// Rounds that hold both builds, whatever was measured; 0 when fewer than two do.
    #[must_use]
    pub fn shared_rounds(&self, one: usize, other: usize) -> u32 {
        let Some((one, other)) = self.rounds_of.get(one).zip(self.rounds_of.get(other)) else { return 0 };
        let shared = one.iter().filter(|round| other.binary_search(round).is_ok()).count();
        u32::try_from(shared).ok().filter(|&s| s >= FEWEST_ROUNDS).unwrap_or(0)
    }

    /// Shots of a build that were set aside.
    #[must_use]
    pub fn left_out(&self, build: usize) -> PartOf {
        self.left_out.get(build).copied().unwrap_or(PartOf { shots: 0, of: 0 })
    }

    /// The one of these two builds that was hit first in every round that holds both; `None` when they changed about, and
    /// when they were not hit in turn.
    #[must_use]
    pub fn always_first(&self, one: usize, other: usize) -> Option<usize> {
        let rounds = self.rounds.as_deref()?;
        let (of_one, of_other) = self.rounds_of.get(one).zip(self.rounds_of.get(other))?;
        let holds_both =
            |round: &u32| of_one.binary_search(round).is_ok() && of_other.binary_search(round).is_ok();
        let mut opened = few::Set::default();
        let mut first = Vec::new();
        for (shot, round) in self.session.shots.iter().zip(rounds) {
            if (shot.build == one || shot.build == other) && holds_both(round) && opened.insert(*round) {
                first.push(shot.build);
            }
        }
        let opener = *first.first()?;
        (first.len() >= FEWEST_ROUNDS as usize && first.iter().all(|&build| build == opener))
            .then_some(opener)
    }

    /// What the start of the laps costs the one of two builds that always opens them more than the other, as a share of
    /// what order can move a measure by; 0 where they changed about, and when they were not hit in turn.
    #[must_use]
    pub fn start_of_laps(&self, one: usize, other: usize) -> f64 {
        let Some(rounds) = self.rounds.as_deref().filter(|_| self.always_first(one, other).is_some()) else {
            return 0.0;
        };
        // Of each lap: how many shots there were so far, and of both builds how many with what they lost together.
        let mut laps: few::Map<u32, (usize, [(f64, f64); 2])> = few::Map::default();
        for (shot, round) in self.session.shots.iter().zip(rounds) {
            let lap = laps.entry(*round, || (0, [(0.0, 0.0); 2]));
            if let Some(side) = [one, other].iter().position(|&build| build == shot.build) {
                lap.1[side].0 += 1.0;
                lap.1[side].1 += start_of_lap(lap.0);
            }
            lap.0 += 1;
        }
        let (mut weights, mut gaps) = (0.0, 0.0);
        for (_, [(n, lost), (m, by_other)]) in laps.into_values() {
            if n > 0.0 && m > 0.0 {
                let weight = n * m / (n + m);
                weights += weight;
                gaps += weight * (lost / n - by_other / m);
            }
        }
        (gaps / weights).abs()
    }

    fn counted(&self, include: Include) -> impl Iterator<Item = (usize, &'a session::Shot)> {
        let keep = move |shot: &session::Shot| include == Include::All || shot.left_out.is_none();
        self.session.shots.iter().enumerate().filter(move |(_, shot)| keep(shot))
    }
}
