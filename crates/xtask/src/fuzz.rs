//! `cargo xtask fuzz`: hostile texts, links and photo grids in one run; how many, from which seed, and how long it took.

use crate::shell::cargo;
use anyhow::{Context, Result, bail, ensure};
use std::process::{Command, ExitStatus};
use std::time::Instant;

/// How many cases are thrown, and from which seed, unless told otherwise.
const CASES: u64 = 10_000_000;
const SEED: u64 = 1;
/// From the seed of one core's cases to that of the next one's.
const APART: u64 = 1_000_003;

/// What is thrown at, with its share of the cases in tenths: a text has the most ways to go wrong, and takes longest by far.
const KINDS: [(&str, u64, Kind); 3] =
    [("texts", 2, Kind::Texts), ("links", 4, Kind::Links), ("photo grids", 4, Kind::Grids)];

#[derive(Clone, Copy)]
enum Kind {
    Texts,
    Links,
    Grids,
}

/// Throws all of them; the first that breaks what must hold ends the run with what did it.
pub(crate) fn throw(options: &[&str]) -> Result<()> {
    let (mut cases, mut seed) = (CASES, SEED);
    for pair in options.chunks(2) {
        let number =
            |text: &str| text.replace('_', "").parse().with_context(|| format!("`{text}` is no number"));
        match pair {
            ["--cases", count] => cases = number(count)?,
            ["--seed", first] => seed = number(first)?,
            _ => bail!("`fuzz` takes --cases N and --seed N"),
        }
    }
    ensure!(cases >= 10, "fewer than ten cases are none for somebody");
    let start = Instant::now();
    let mut thrown = 0;
    for (at, (name, tenths, kind)) in KINDS.into_iter().enumerate() {
        // The first has what does not divide.
        let rest = if at == 0 { cases % 10 } else { 0 };
        let count = cases / 10 * tenths + rest;
        let began = Instant::now();
        one(kind, count, seed).with_context(|| format!("{name}, {count} cases from seed {seed}"))?;
        println!("{name}: {count} cases from seed {seed} in {:.1} s", began.elapsed().as_secs_f64());
        thrown += count;
    }
    println!("{thrown} cases from seed {seed}: nothing broke, {:.1} s in all", start.elapsed().as_secs_f64());
    Ok(())
}

/// All cases of a kind, shared out among the machine's cores, each with a seed of its own.
fn one(kind: Kind, count: u64, seed: u64) -> Result<()> {
    let cores = u64::try_from(std::thread::available_parallelism().map_or(1, usize::from))?;
    let mut running = Vec::new();
    for core in 0..cores {
        // The first has what does not divide.
        let share = count / cores + if core == 0 { count % cores } else { 0 };
        let mut command = command(kind, share, seed + core * APART);
        running.push(command.spawn().with_context(|| format!("{command:?}"))?);
    }
    let ends = running.into_iter().map(|mut child| child.wait()).collect::<Result<Vec<_>, _>>()?;
    ensure!(ends.iter().all(ExitStatus::success), "what broke stands above");
    Ok(())
}

fn command(kind: Kind, count: u64, seed: u64) -> Command {
    let (count, seed) = (count.to_string(), seed.to_string());
    let example = |package: &str, example: &str| {
        let words = ["run", "--quiet", "--release", "--package", package, "--example", example, "--"];
        let mut command = cargo(&words);
        command.args([&count, &seed]);
        command
    };
    match kind {
        Kind::Texts => example("reading", "fuzz_read"),
        Kind::Links => example("straight-answer", "fuzz_link"),
        Kind::Grids => {
            // What is thrown at is private to its crate: a test that takes its number from outside.
            let mut grids = cargo(&["test", "--quiet", "--release", "--package=photo", "--lib", "--"]);
            grids.args(["--exact", "grids::random_texts_make_tables_tiles_or_nothing", "--nocapture"]);
            grids.env("PHOTO_GRIDS", count).env("PHOTO_GRIDS_SEED", seed);
            grids
        }
    }
}
