//! `cargo xtask rivals`: is power given away? The answer's method beside plain Welch and the best others we could build.
//!
//! The same invented sessions, two builds in turn three at a time, go through every method. Reported: how often
//! equal builds are called different, how often builds of one average but different mishits are, and how often
//! 8 yd of carry are found. A method is better only if it holds its error in every column before the last two; the table is written to
//! `tests/rivals.json`, which the methods page shows. The rivals are textbook methods put together here for this
//! comparison alone; none is in the product.

use super::rate::{Rate, rate};
use super::sessions::{CARRY, Kind, answer, fixed};
use crate::folder::root;
use crate::simulate::model::{NONE, Parameters, STRONG, TYPICAL};
use anyhow::{Context, Result};
use judging::verdict::DecisionKind;
use serde::Serialize;
use session::Session;
use stats::describe::mean;
use stats::distributions::t_sf;
use stats::{Sample, yuen};
use std::fs;

/// Sessions behind each figure: standard errors of at most 0.8 points for power, 0.35 for a rate of 5 %.
const SESSIONS: u64 = 4_000;
const SIZES: [usize; 3] = [9, 15, 30];
/// True difference whose finding is counted, yd.
const GAIN: f64 = 8.0;
/// Mishits of the second build where only mishits differ; the first has the usual 8 %.
const MORE_MISHITS: f64 = 0.20;
const LEVEL: f64 = 0.05;
/// The golfer settles anew each time a club is picked up, by 4 yd: what the widening and the step to whole rounds are for.
const PICKED_UP: Parameters = Parameters { pick_up_sd: 4.0, ..NONE };

/// A name and whether it calls the two builds of a session different.
type Method = (&'static str, fn(&Session) -> bool);

const METHODS: [Method; 5] = [
    ("the answer: laps, widened", headline),
    ("averages (Welch)", welch),
    ("trimmed averages (Yuen)", trimmed),
    ("laps by a mixed model", mixed),
    ("laps, trimmed", rounds_trimmed),
];

/// One figure of the table.
#[derive(Debug, Serialize)]
struct Figure {
    each: usize,
    method: &'static str,
    what: &'static str,
    rate: f64,
    se: f64,
    sessions: u64,
}

/// Measures every method, prints the table and writes it down.
pub(crate) fn run() -> Result<()> {
    let mut figures = Vec::new();
    println!("{:>4}  {:30}{}", "each", "", WHAT.map(|(what, _)| format!("{what:>24}")).concat());
    for each in SIZES {
        for (method, differs) in METHODS {
            let mut line = format!("{each:>4}  {method:30}");
            for (at, (what, session)) in WHAT.into_iter().enumerate() {
                // Every method sees the same sessions.
                let seed = 9_000_000 + (each * 10 + at) as u64;
                let found = rate(SESSIONS, |number| differs(&session(each, seed, number)));
                line += &format!("{:>24.3}", found.value());
                figures.push(figure(each, method, what, found));
            }
            println!("{line}");
        }
    }
    let path = root().join("tests/rivals.json");
    fs::write(&path, serde_json::to_string_pretty(&figures)? + "\n")
        .with_context(|| path.display().to_string())?;
    println!("written to tests/rivals.json");
    Ok(())
}

fn figure(each: usize, method: &'static str, what: &'static str, found: Rate) -> Figure {
    Figure { each, method, what, rate: found.value(), se: found.se(), sessions: SESSIONS }
}

/// A session of so many shots with each build, by seed and number.
type Make = fn(usize, u64, u64) -> Session;

const WHAT: [(&str, Make); 7] = [
    ("equal, no drift", |each, seed, number| equal(NONE, each, seed, number)),
    ("equal, typical", |each, seed, number| equal(TYPICAL, each, seed, number)),
    ("equal, strong", |each, seed, number| equal(STRONG, each, seed, number)),
    ("equal, sets differ", |each, seed, number| equal(PICKED_UP, each, seed, number)),
    ("only mishits differ", only_mishits),
    ("8 yd found, no drift", |each, seed, number| gain(NONE, each, seed, number)),
    ("8 yd found, typical", |each, seed, number| gain(TYPICAL, each, seed, number)),
];

fn equal(level: Parameters, each: usize, seed: u64, number: u64) -> Session {
    Kind::in_turn(level, each, seed).session(number, &[CARRY])
}

fn gain(level: Parameters, each: usize, seed: u64, number: u64) -> Session {
    Kind::in_turn(level, each, seed).with_shift(CARRY, GAIN).session(number, &[CARRY])
}

/// Two builds of one average, the second with more mishits: shots of two sessions of the same order.
fn only_mishits(each: usize, seed: u64, number: u64) -> Session {
    let mut session = equal(NONE, each, seed, number);
    let more = Parameters { mishits: MORE_MISHITS, ..NONE };
    let other = equal(more, each, seed + 500, number);
    for (shot, other) in session.shots.iter_mut().zip(other.shots).filter(|(shot, _)| shot.build == 1) {
        *shot = other;
    }
    session
}

fn headline(session: &Session) -> bool {
    answer(session.clone(), fixed(CARRY)).answer.decision.kind == DecisionKind::Different
}

fn samples(session: &Session, value: impl Fn(usize, f64) -> f64) -> Option<(Sample, Sample)> {
    let of = |build: usize| {
        let shots = session.shots.iter().filter(|s| s.build == build);
        let values = shots.filter_map(|s| Some(value(s.round? as usize, s.values.first().copied()??)));
        Sample::new(values.collect()).ok()
    };
    Some((of(1)?, of(0)?))
}

fn as_measured(_: usize, value: f64) -> f64 {
    value
}

fn welch(session: &Session) -> bool {
    samples(session, as_measured)
        .and_then(|(b, a)| stats::welch(&b, &a).ok())
        .is_some_and(|found| found.p_value() < LEVEL)
}

fn trimmed(session: &Session) -> bool {
    samples(session, as_measured)
        .and_then(|(b, a)| yuen(&b, &a, 0.2).ok())
        .is_some_and(|found| found.difference.p_value() < LEVEL)
}

/// Averages of the rounds, both builds together; every round here holds as many shots of each.
fn round_averages(session: &Session) -> Vec<f64> {
    let rounds = session.shots.iter().filter_map(|s| s.round).max().unwrap_or(0);
    let of = |round: u32| {
        let values: Vec<f64> = session
            .shots
            .iter()
            .filter(|s| s.round == Some(round))
            .filter_map(|s| s.values.first().copied().flatten())
            .collect();
        mean(&values)
    };
    (0..=rounds).map(|round| if round == 0 { 0.0 } else { of(round) }).collect()
}

/// Yuen's test on what is left when each round's average is taken out.
fn rounds_trimmed(session: &Session) -> bool {
    let rounds = round_averages(session);
    samples(session, |round, value| value - rounds[round])
        .and_then(|(b, a)| yuen(&b, &a, 0.2).ok())
        .is_some_and(|found| found.difference.p_value() < LEVEL)
}

/// Rounds fixed, sets of a round random, by restricted likelihood: in a design with as many shots in every set that is
/// the set-to-set mean square where it exceeds the one within sets, and both pooled where it does not.
fn mixed(session: &Session) -> bool {
    let values = |round: u32, build: usize| -> Vec<f64> {
        let set = session.shots.iter().filter(|s| s.round == Some(round) && s.build == build);
        set.filter_map(|s| s.values.first().copied().flatten()).collect()
    };
    let last = session.shots.iter().filter_map(|s| s.round).max().unwrap_or(0);
    let sets: Vec<[Vec<f64>; 2]> = (1..=last).map(|round| [values(round, 0), values(round, 1)]).collect();
    let gaps: Vec<f64> = sets.iter().map(|[a, b]| mean(b) - mean(a)).collect();
    let difference = mean(&gaps);
    let weight = sets.first().map_or(0.0, |[a, _]| a.len() as f64 / 2.0);
    let squares = |values: &[f64]| {
        let middle = mean(values);
        values.iter().map(|v| (v - middle).powi(2)).sum::<f64>()
    };
    let rounds = gaps.len() as f64;
    let shots = session.shots.len() as f64;
    let (between, between_df) = (weight * squares(&gaps), rounds - 1.0);
    let (within, within_df) =
        (sets.iter().flatten().map(|set| squares(set)).sum::<f64>(), shots - 2.0 * rounds);
    let (variance, df) = if between / between_df > within / within_df {
        (between / between_df, between_df)
    } else {
        ((between + within) / (between_df + within_df), between_df + within_df)
    };
    let t = difference.abs() / (variance / (weight * rounds)).sqrt();
    2.0 * t_sf(t, df) < LEVEL
}
