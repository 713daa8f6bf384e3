//! Targets about bets: whether chances come true as often as they are stated, and whether a pulled gap is nearer the truth.
//!
//! The true gap of every session is drawn anew, normal around none, by as much as another shaft, another head or an old club
//! is taken to make (`judging::bet`); what the golfer says differs is right, or nothing is said.

use super::effort::{Effort, seed, sessions};
use super::rate::{ERROR, Limit, Rate, Row, rate, values};
use super::sessions::{CARRY, Kind, fixed};
use crate::simulate::model::{STRONG, TYPICAL};
use crate::simulate::random;
use judging::bet::{BetFacts, ChanceRange, bet};
use judging::verdict::{DecisionKind, Direction};
use judging::{judge, settle};
use rand_distr::{Distribution, StandardNormal};
use session::Session;
use session::question::{Differs, Question};

/// How far stated chances may lie from how often they come true.
const POINTS: f64 = 8.0;
/// What the page takes 'longer by enough to matter' to be, yd.
const MARGIN: f64 = 5.0;
/// A tenth of the stated chances counts where at least one in so many sessions falls into it: what fewer do is luck.
const FEWEST: usize = 40;

/// One session: its true gap, what was bet on it, and whether the answer was 'different'.
struct Betted {
    truth: f64,
    bet: BetFacts,
    is_different: bool,
}

/// Target 23: bets.
pub(super) fn bets(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    let kinds = [
        ("another shaft", Differs::Shaft, 2.0),
        ("another head", Differs::Head, 4.0),
        ("an old club", Differs::OldClub, 8.0),
    ];
    for (name, differs, sd) in kinds {
        for said in [Some(differs), None] {
            let kind = Kind::in_turn(TYPICAL, 15, seed(23, rows.len()));
            let betted = betted(&kind, sd, said, effort);
            let known = if said.is_some() { format!("{name}, said") } else { "nothing said".into() };
            let what = format!("true gaps of {sd} yd, 15 each in turn, {known}");
            rows.extend(chances(&what, &betted, effort));
            let found: Vec<&Betted> = betted.iter().filter(|one| one.is_different).collect();
            let missed = found.iter().filter(|one| !holds(one)).count() as u64;
            let row = Row::of_rate(
                23,
                format!("{what}: called different, the true gap missed by the range of the bet"),
                Rate::of(missed, found.len() as u64),
                Limit::AtMost(ERROR),
                effort,
            );
            rows.push(row.promised_wrong_at_most(ERROR));
            if differs == Differs::Head {
                rows.push(nearer_the_truth(&what, &betted, effort));
            }
        }
    }
    for (name, level, first, then) in [("typical", TYPICAL, 15, 15), ("strong", STRONG, 15, 15)] {
        let kind = Kind::blocked(level, &[first, then], seed(23, rows.len()));
        let what = format!("true gaps of 4 yd, {first} then {then}, {name}, another head, said");
        rows.extend(chances(&what, &betted(&kind, 4.0, Some(Differs::Head), effort), effort));
    }
    let kind = Kind::in_turn(TYPICAL, 30, seed(23, rows.len()));
    let what = "true gaps of 4 yd, 30 each in turn, another head, said";
    rows.extend(chances(what, &betted(&kind, 4.0, Some(Differs::Head), effort), effort));
    rows.extend([("typical", TYPICAL), ("strong", STRONG)].map(|(name, level)| {
        let kind = Kind::in_turn(level, 15, seed(23, 900 + usize::from(level == STRONG)));
        pairs(name, &kind, effort)
    }));
    rows
}

/// Chances of any gap and of one that matters, held against how often it was so.
fn chances(what: &str, betted: &[Betted], effort: Effort) -> [Row; 2] {
    let at_all: Vec<(ChanceRange, bool)> =
        betted.iter().map(|one| (one.bet.at_all, toward(one) > 0.0)).collect();
    let enough = betted.iter().filter_map(|one| Some((one.bet.by_margin?, toward(one) >= MARGIN))).collect();
    [("any gain", at_all), ("5 yd or more", enough)].map(|(of, stated)| {
        let (miss, se) = farthest(&stated);
        let what = format!("{what}: chance of {of}, farthest from how often it came true");
        Row::of_value(
            23,
            what,
            (100.0 * miss, 100.0 * se),
            stated.len() as u64,
            Limit::AtMost(POINTS),
            effort,
        )
        .in_unit("%")
    })
}

/// Over tenths of the stated chance, how far outside its stated range it came true at worst; with its standard error.
fn farthest(stated: &[(ChanceRange, bool)]) -> (f64, f64) {
    let tenth = |of: &ChanceRange| (5.0 * (of.chance.low + of.chance.high)).min(9.5).floor();
    let of_tenth = |at: u8| {
        let inside: Vec<&(ChanceRange, bool)> = stated
            .iter()
            .filter(|(of, _)| tenth(of) <= f64::from(at) && tenth(of) + 1.0 > f64::from(at))
            .collect();
        if inside.len() * FEWEST < stated.len() {
            return None;
        }
        let mean = |of: fn(&ChanceRange) -> f64| {
            inside.iter().map(|(chance, _)| of(chance)).sum::<f64>() / inside.len() as f64
        };
        let (low, high) = (mean(|of| of.chance.low), mean(|of| of.chance.high));
        let came_true = Rate::of(inside.iter().filter(|(_, is)| *is).count() as u64, inside.len() as u64);
        Some(((low - came_true.value()).max(came_true.value() - high).max(0.0), came_true.se()))
    };
    (0..10).filter_map(of_tenth).max_by(|one, other| one.0.total_cmp(&other.0)).unwrap_or((0.0, 1.0))
}

/// The true gap, counted the way that the chances are.
fn toward(one: &Betted) -> f64 {
    if one.bet.toward == Direction::Higher { one.truth } else { -one.truth }
}

fn holds(one: &Betted) -> bool {
    let interval = one.bet.gap.interval;
    (interval.low..=interval.high).contains(&one.truth)
}

/// The usual error of the pulled gap as a share of that of the gap shown.
fn nearer_the_truth(what: &str, betted: &[Betted], effort: Effort) -> Row {
    let mean_square = |of: &dyn Fn(&Betted) -> f64| {
        let squares: Vec<f64> = betted.iter().map(|one| (of(one) - one.truth).powi(2)).collect();
        stats::describe::mean(&squares)
    };
    let (pulled, shown) = (mean_square(&|one| one.bet.gap.value), mean_square(&|one| one.bet.gap.shown));
    let share = (pulled / shown).sqrt();
    // Of a ratio of two root mean squares of the same sessions, generously: as if they were independent.
    let se = share / (betted.len() as f64).sqrt();
    let what = format!("{what}: usual error of the gap bet on, as a share of that of the gap shown");
    Row::of_value(23, what, (100.0 * share, 100.0 * se), betted.len() as u64, Limit::AtMost(70.0), effort)
        .in_unit("%")
}

/// Equal clubs: one shot against one shot the candidate is ahead in half of all pairs, and the interval is to hold that.
fn pairs(name: &str, kind: &Kind, effort: Effort) -> Row {
    let missed = rate(sessions(8_000, effort), |number| {
        let (bet, _) = judged(&kind.session(number, &[CARRY]), &fixed(CARRY));
        !(bet.pairs.interval.low..=bet.pairs.interval.high).contains(&0.5)
    });
    let what =
        format!("equal clubs in turn, {name}, 15 each: half of all pairs missed by the interval for pairs");
    Row::of_rate(23, what, missed, Limit::AtMost(0.06), effort).promised_wrong_at_most(ERROR)
}

fn betted(kind: &Kind, sd: f64, differs: Option<Differs>, effort: Effort) -> Vec<Betted> {
    values(sessions(8_000, effort), |number| {
        let deviate: f64 = StandardNormal.sample(&mut random(kind.seed + 500_000, number));
        let truth = sd * deviate;
        let session = kind.clone().with_shift(CARRY, truth).session(number, &[CARRY]);
        let question = Question { differs, ..fixed(CARRY) };
        let (bet, kind) = judged(&session, &question);
        Some(Betted { truth, bet, is_different: kind == DecisionKind::Different })
    })
}

fn judged(session: &Session, question: &Question) -> (BetFacts, DecisionKind) {
    let Ok(settled) = settle(question, session) else { unreachable!("an invented question was refused") };
    let judged = judge(settled);
    match (bet(&judged), judged.headline()) {
        (Ok(bet), Some(headline)) => (bet, headline.decision.kind),
        (why, _) => unreachable!("nothing was bet on an invented session: {why:?}"),
    }
}
