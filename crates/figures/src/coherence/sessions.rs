//! Invented sessions of every kind that a page is shown, each with the question that is put to it. A session depends on
//! its number alone.

use crate::simulate::model::Parameters;
use crate::simulate::{
    Effects, LEVELS, MEASURES, Random, Turn, Turns, blocked, in_turns, random, session, written_down,
};
use rand_distr::{Distribution, Uniform};
use session::few::Map;
use session::known::Known;
use session::measure::MeasureId;
use session::question::{Differs, Goal, LookedAfter, Question, Stopping, StoppingWord};
use session::{CustomMeasure, Order, Session, Summary, SummaryOf, SummaryValue};
use text::Units;

const SEED: u64 = 19;

/// What is special about a session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Kind {
    InTurn,
    Blocked,
    OrderUnknown,
    Averages,
    FewShots,
    Gaps,
    LeftOut,
    SeveralClubs,
    PlannedLooks,
    Rounded,
    Typo,
    NumbersMissing,
    Straighter,
    Tighter,
    LongTurns,
    OwnColumn,
    OneClubFirst,
    NearTheMargin,
}

impl Kind {
    pub(crate) const ALL: [Self; 18] = [
        Self::InTurn,
        Self::Blocked,
        Self::OrderUnknown,
        Self::Averages,
        Self::FewShots,
        Self::Gaps,
        Self::LeftOut,
        Self::SeveralClubs,
        Self::PlannedLooks,
        Self::Rounded,
        Self::Typo,
        Self::NumbersMissing,
        Self::Straighter,
        Self::Tighter,
        Self::LongTurns,
        Self::OwnColumn,
        Self::OneClubFirst,
        Self::NearTheMargin,
    ];
}

/// A session and what is asked of it.
#[derive(Debug, Clone)]
pub(crate) struct Asked {
    pub(crate) kind: Kind,
    pub(crate) session: Session,
    pub(crate) question: Question,
}

/// The session of this number.
pub(crate) fn asked(number: u64) -> Asked {
    let mut dice = Dice(random(SEED, number));
    let kind = Kind::ALL[usize::try_from(number).unwrap_or(0) % Kind::ALL.len()];
    let mut invented = invented(kind, &mut dice);
    change(kind, &mut invented, &mut dice);
    let question = question(kind, &invented, &mut dice);
    Asked { kind, session: invented, question }
}

/// In which units it is told: every second one in meters.
pub(crate) fn units(number: u64) -> Units {
    if number.is_multiple_of(2) { Units::Yards } else { Units::Meters }
}

/// Chances of one session.
pub(crate) struct Dice(Random);

impl Dice {
    /// From 0 up to below this.
    pub(crate) fn below(&mut self, end: usize) -> usize {
        Uniform::new(0, end.max(1)).map_or(0, |numbers| numbers.sample(&mut self.0))
    }

    fn between(&mut self, low: usize, high: usize) -> usize {
        low + self.below(high - low + 1)
    }

    pub(crate) fn size(&mut self, low: f64, high: f64) -> f64 {
        Uniform::new(low, high).map_or(low, |sizes| sizes.sample(&mut self.0))
    }

    pub(crate) fn one_in(&mut self, times: usize) -> bool {
        self.below(times) == 0
    }
}

fn invented(kind: Kind, dice: &mut Dice) -> Session {
    let builds = if kind == Kind::SeveralClubs { dice.between(3, 5) } else { 2 };
    let (turns, order) = turns(kind, builds, dice);
    let level: Parameters = LEVELS[dice.below(LEVELS.len())].1;
    let effects: Vec<Effects> = (0..builds).map(|build| effects(kind, build, dice)).collect();
    let shots = session(&turns, &level, &effects, &mut dice.0);
    let columns = columns(kind, dice);
    let names = ["Own driver", "Driver B", "Driver C", "Driver D", "Driver E"].map(str::to_owned);
    let tenths = |value: f64| (value * 10.0).round() / 10.0;
    written_down(&turns, &shots, names.into_iter().take(builds), &columns, order, tenths)
}

/// Who is hit when, and what is known of it.
fn turns(kind: Kind, builds: usize, dice: &mut Dice) -> (Vec<Turn>, Order) {
    let each = match kind {
        Kind::FewShots => dice.between(1, 6),
        Kind::LongTurns => dice.between(16, 40),
        _ => dice.between(5, 36),
    };
    let set = match kind {
        Kind::LongTurns => dice.between(8, 16),
        _ => dice.between(1, 3).min(each),
    };
    let how = [Turns::Fixed, Turns::Reversed, Turns::Drawn][dice.below(3)];
    let blocks =
        |dice: &mut Dice| blocked(&(0..builds).map(|_| (each + dice.below(9)).max(1)).collect::<Vec<_>>());
    match kind {
        Kind::Blocked => (blocks(dice), Order::Blocked),
        Kind::OrderUnknown | Kind::Averages => (blocks(dice), Order::Unknown),
        Kind::OneClubFirst => (in_turns(builds, each, set, Turns::Fixed, &mut dice.0), Order::Interleaved),
        Kind::LongTurns | Kind::PlannedLooks | Kind::InTurn => {
            (in_turns(builds, each, set, how, &mut dice.0), Order::Interleaved)
        }
        _ => match dice.below(4) {
            0 => (blocks(dice), Order::Blocked),
            1 => (blocks(dice), Order::Unknown),
            _ if each.div_ceil(set) < 2 => (blocks(dice), Order::Blocked),
            _ => (in_turns(builds, each, set, how, &mut dice.0), Order::Interleaved),
        },
    }
}

/// What is true of a build: often nothing, often something near what matters.
fn effects(kind: Kind, build: usize, dice: &mut Dice) -> Effects {
    let mut effects = Effects::default();
    if build == 0 || dice.one_in(3) {
        return effects;
    }
    let most = if kind == Kind::NearTheMargin { 8.0 } else { 16.0 };
    effects.shift[0] = dice.size(-most, most);
    effects.shift[1] = if dice.one_in(2) { dice.size(-22.0, 22.0) } else { 0.0 };
    effects.shift[2] = effects.shift[0] * 0.4;
    effects.shift[4] = if dice.one_in(2) { dice.size(-500.0, 500.0) } else { 0.0 };
    if kind == Kind::Tighter {
        effects.spread = [dice.size(0.4, 1.6); MEASURES.len()];
    }
    effects
}

/// Carry always, and others of the invented shot.
fn columns(kind: Kind, dice: &mut Dice) -> Vec<usize> {
    let needs_offline = matches!(kind, Kind::Straighter | Kind::Tighter);
    (0..MEASURES.len())
        .filter(|&column| column == 0 || (column == 1 && needs_offline) || !dice.one_in(2))
        .collect()
}

/// What is special about a session, done to it.
fn change(kind: Kind, session: &mut Session, dice: &mut Dice) {
    match kind {
        Kind::Averages => *session = averages(session, dice),
        Kind::Gaps => gaps(session, dice),
        Kind::LeftOut => leave_out(session, dice),
        Kind::Rounded => rounded(session, dice),
        Kind::Typo => typo(session, dice),
        Kind::NumbersMissing => numbers_missing(session, dice),
        Kind::OwnColumn => own_column(session, dice),
        _ => {}
    }
}

/// Averages in the place of shots, some without what an answer needs.
fn averages(session: &Session, dice: &mut Dice) -> Session {
    let has_sd = !dice.one_in(2);
    let summary = |build: usize, dice: &mut Dice| {
        let of_build = || session.shots.iter().filter(move |shot| shot.build == build);
        let n = of_build().count();
        let mut values = Map::default();
        for (column, measure) in session.measures.iter().enumerate() {
            let numbers: Vec<f64> = of_build().filter_map(|shot| shot.values[column]).collect();
            let mean = stats::describe::mean(&numbers);
            let squares: f64 = numbers.iter().map(|x| (x - mean) * (x - mean)).sum();
            let sd = (squares / (n as f64 - 1.0).max(1.0)).sqrt();
            let value =
                SummaryValue { mean: Some(mean), sd: has_sd.then_some(sd), ..SummaryValue::default() };
            values.insert(measure.clone(), value);
        }
        Summary {
            build,
            n: if dice.one_in(10) { None } else { u32::try_from(n).ok() },
            of: if dice.one_in(12) { SummaryOf::Best } else { SummaryOf::All },
            values,
            line: None,
        }
    };
    let summaries = (0..session.builds.len()).map(|build| summary(build, dice)).collect();
    Session { shots: Vec::new(), summaries, order: Order::Unknown, ..session.clone() }
}

/// A column that was read on few of the shots, as spin often is.
fn gaps(session: &mut Session, dice: &mut Dice) {
    let column = dice.below(session.measures.len());
    let one_in = dice.between(2, 8);
    for shot in &mut session.shots {
        if !dice.one_in(one_in) {
            shot.values[column] = None;
        }
    }
}

/// Shots set aside: the shortest of one club, or any.
fn leave_out(session: &mut Session, dice: &mut Dice) {
    let count = dice.between(1, 4);
    let own_club_only = dice.one_in(2).then(|| dice.below(2));
    let mut at: Vec<usize> = (0..session.shots.len()).collect();
    let carry = |at: &usize| session.shots[*at].values[0].unwrap_or(0.0);
    at.sort_by(|one, other| carry(one).total_cmp(&carry(other)));
    at.retain(|at| own_club_only.is_none_or(|club| session.shots[*at].build == club));
    for at in at.into_iter().take(count) {
        session.shots[at].left_out = Some(["thin", "off the toe", ""][dice.below(3)].into());
    }
}

/// Carries rounded to tens or fives; sometimes all alike, or one club exactly so much above the other.
fn rounded(session: &mut Session, dice: &mut Dice) {
    let step = [5.0, 10.0, 1.0][dice.below(3)];
    let how = dice.below(6);
    for shot in &mut session.shots {
        let carry = shot.values[0].unwrap_or(0.0);
        shot.values[0] = Some(match how {
            0 => 250.0 + 10.0 * shot.build as f64,
            1 => 250.0,
            2 => 240.0 + f64::from(shot.round.unwrap_or(0)) + 10.0 * shot.build as f64,
            _ => (carry / step).round() * step,
        });
    }
}

/// One value with a digit too many, or one that was another.
fn typo(session: &mut Session, dice: &mut Dice) {
    let at = dice.below(session.shots.len());
    let column = dice.below(session.measures.len());
    let factor = [10.0, 0.1][dice.below(2)];
    let value = &mut session.shots[at].values[column];
    *value = value.map(|x| x * factor);
}

/// Shots numbered as they were hit, of which some are not here.
fn numbers_missing(session: &mut Session, dice: &mut Dice) {
    for (number, shot) in (1..).zip(&mut session.shots) {
        shot.number = Some(number);
    }
    for _ in 0..dice.between(1, 3) {
        if session.shots.len() > 8 {
            let at = dice.between(1, session.shots.len() - 2);
            session.shots.remove(at);
        }
    }
}

/// A column that is in no list.
fn own_column(session: &mut Session, dice: &mut Dice) {
    let id: MeasureId = "tempo".into();
    session.measures.push(id.clone());
    session.custom.push(CustomMeasure { id, name: "Tempo".into(), unit: String::new() });
    let lead = dice.size(-0.4, 0.4);
    for shot in &mut session.shots {
        shot.values.push(Some(3.0 + lead * shot.build as f64 + dice.size(-0.5, 0.5)));
    }
}

fn question(kind: Kind, session: &Session, dice: &mut Dice) -> Question {
    let offline: MeasureId = Known::Offline.into();
    let measure = match kind {
        Kind::Straighter => offline,
        Kind::OwnColumn => "tempo".into(),
        Kind::Typo | Kind::Rounded => session.measures[0].clone(),
        _ if dice.one_in(3) => session.measures[dice.below(session.measures.len())].clone(),
        _ => session.measures[0].clone(),
    };
    let goal = match kind {
        Kind::Tighter => Some(Goal::Tighter),
        Kind::Straighter => Some(Goal::NearerZero),
        _ => None,
    };
    let unit = measure.usual().map_or(0.3, |known| known.facts().margin);
    let own = |dice: &mut Dice| (unit * dice.size(0.2, 2.4) * 10.0).round() / 10.0;
    let margin = match goal {
        Some(Goal::Tighter) => None,
        _ if dice.one_in(2) => None,
        _ => Some(own(dice)),
    };
    Question {
        baseline: 0,
        candidate: if dice.one_in(2) { None } else { Some(1) },
        measure,
        goal,
        margin,
        first_margin: margin.filter(|_| dice.one_in(6)).map(|margin| margin * 2.0),
        stopping: stopping(kind, session, dice),
        differs: [None, Some(Differs::Shaft), Some(Differs::Head), Some(Differs::OldClub)][dice.below(4)],
    }
}

fn stopping(kind: Kind, session: &Session, dice: &mut Dice) -> Stopping {
    let rounds = session.shots.iter().filter_map(|shot| shot.round).max().unwrap_or(0);
    if kind == Kind::PlannedLooks && rounds > 1 {
        let more = u32::try_from(dice.below(6)).unwrap_or(0);
        let looked_after = match dice.below(3) {
            0 => LookedAfter::Rounds(Vec::new()),
            1 => LookedAfter::EveryRoundTo(rounds),
            _ => LookedAfter::Rounds(vec![rounds.div_ceil(2)]),
        };
        return Stopping::Planned { planned_rounds: (rounds + more).min(60), looked_after };
    }
    Stopping::Word(if dice.one_in(3) { StoppingWord::Unknown } else { StoppingWord::Fixed })
}
