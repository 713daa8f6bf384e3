//! The invented sessions in `demo/`, whose truth is known. `demo/README.md` says how seeds were chosen.

use crate::shell::root;
use crate::simulate::model::TYPICAL;
use crate::simulate::{Effects, MEASURES, Random, Turn, Turns, blocked, in_turns, random, session};
use anyhow::{Context, Result};
use std::fmt::Write;
use std::fs;

/// Opens every file, so that a golfer who meets one elsewhere knows what it is.
const NOTE: &str = "Invented shots: nobody hit them";

/// Heading and digits after the point of each measure, in the order of [`MEASURES`].
const COLUMNS: [(&str, usize); MEASURES.len()] = [
    ("Carry (yd)", 1),
    ("Offline (yd)", 1),
    ("Ball speed (mph)", 1),
    ("Launch angle (deg)", 1),
    ("Spin rate (rpm)", 0),
    ("Club speed (mph)", 1),
];

/// One invented session.
struct Demo {
    file: &'static str,
    builds: &'static [&'static str],
    turns: fn(&mut Random) -> Vec<Turn>,
    /// What is true of the last build; the others are like each other.
    last: fn() -> Effects,
    seed: Seed,
}

/// How a demo came by its seed.
enum Seed {
    /// Fixed before the session was looked at.
    First,
    /// The first, counted from 1, whose session shows what the demo is about.
    FirstThat(fn(&[Turn], &[[f64; MEASURES.len()]]) -> bool),
}

static DEMOS: [Demo; 4] = [
    Demo {
        file: "fair-same.csv",
        builds: &["Own driver", "Driver B"],
        turns: ten_rounds,
        last: Effects::default,
        seed: Seed::First,
    },
    Demo {
        file: "fair-12-yards.csv",
        builds: &["Own driver", "Driver B"],
        turns: ten_rounds,
        last: twelve_yards,
        seed: Seed::First,
    },
    Demo {
        file: "sales-floor.csv",
        builds: &["Own driver", "New driver"],
        turns: |_| blocked(&[5, 30]),
        last: Effects::default,
        seed: Seed::FirstThat(looks_five_yards_longer),
    },
    Demo {
        file: "four-equal.csv",
        builds: &["Own driver", "Driver B", "Driver C", "Driver D"],
        turns: |chance| in_turns(4, 15, 3, Turns::Reversed, chance),
        last: Effects::default,
        seed: Seed::First,
    },
];

/// Writes every demo file anew and says how each came by its seed.
pub(crate) fn write() -> Result<()> {
    for demo in &DEMOS {
        let seed = seed(demo).with_context(|| demo.file)?;
        fs::write(root().join("demo").join(demo.file), csv(demo, seed)?)?;
        println!("demo/{}: seed {seed}", demo.file);
        if let Seed::FirstThat(shows) = demo.seed {
            let tried = 10_000;
            let share = (1..=tried).filter(|&seed| shown(demo, seed, shows)).count();
            println!("   of the seeds 1 to {tried}, {share} show what this demo is about");
        }
    }
    Ok(())
}

fn ten_rounds(random: &mut Random) -> Vec<Turn> {
    in_turns(2, 30, 3, Turns::Reversed, random)
}

/// Truly longer: a faster ball, launched higher with less spin, from the same swing.
fn twelve_yards() -> Effects {
    Effects { shift: [12.0, 0.0, 3.0, 1.0, -300.0, 0.0], ..Effects::default() }
}

/// The plain average carry of the second build leads by at least the usual margin.
fn looks_five_yards_longer(turns: &[Turn], shots: &[[f64; MEASURES.len()]]) -> bool {
    let average = |build| {
        let carries =
            turns.iter().zip(shots).filter(|(turn, _)| turn.build == build).map(|(_, shot)| shot[0]);
        let (sum, n) = carries.fold((0.0, 0.0), |(sum, n), carry| (sum + carry, n + 1.0));
        sum / n
    };
    average(1) - average(0) >= 5.0
}

fn seed(demo: &Demo) -> Option<u64> {
    match demo.seed {
        Seed::First => Some(1),
        Seed::FirstThat(shows) => (1..1000).find(|&seed| shown(demo, seed, shows)),
    }
}

fn shown(demo: &Demo, seed: u64, shows: fn(&[Turn], &[[f64; MEASURES.len()]]) -> bool) -> bool {
    let (turns, shots) = simulated(demo, seed);
    shows(&turns, &shots)
}

fn simulated(demo: &Demo, seed: u64) -> (Vec<Turn>, Vec<[f64; MEASURES.len()]>) {
    let mut random = random(seed, 0);
    let turns = (demo.turns)(&mut random);
    let mut builds = vec![Effects::default(); demo.builds.len() - 1];
    builds.push((demo.last)());
    let shots = session(&turns, &TYPICAL, &builds, &mut random);
    (turns, shots)
}

fn csv(demo: &Demo, seed: u64) -> Result<String> {
    let (turns, shots) = simulated(demo, seed);
    let has_rounds = turns.iter().any(|turn| turn.round > 0);
    let mut text = format!("{NOTE}\nShot,{}Build", if has_rounds { "Round," } else { "" });
    for (heading, _) in COLUMNS {
        write!(text, ",{heading}")?;
    }
    for (number, (turn, shot)) in turns.iter().zip(shots).enumerate() {
        write!(text, "\n{},", number + 1)?;
        if has_rounds {
            write!(text, "{},", turn.round + 1)?;
        }
        write!(text, "{}", demo.builds[turn.build])?;
        for (value, (_, digits)) in shot.iter().zip(COLUMNS) {
            write!(text, ",{value:.digits$}")?;
        }
    }
    text.push('\n');
    Ok(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_files_in_the_tree_are_those_the_command_writes() {
        for demo in &DEMOS {
            let kept = fs::read_to_string(root().join("demo").join(demo.file)).unwrap();
            let made = csv(demo, seed(demo).unwrap()).unwrap();
            assert!(kept == made, "demo/{} is stale: run `cargo xtask demo`", demo.file);
        }
    }
}
