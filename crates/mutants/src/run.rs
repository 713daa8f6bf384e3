//! The tests against every fault: each fault meets the tests that reach it, quick ones first, until one fails.

use crate::build::{Built, Program};
use crate::fate::Fate;
use crate::kept::Kept;
use crate::listed::Mutant;
use anyhow::{Context, Result, ensure};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// Tests below this are run in one go.
const QUICK: Duration = Duration::from_millis(150);
/// A go that takes this long takes no more tests.
const ONE_GO: Duration = Duration::from_millis(500);

/// A test of a witness that takes longer is not asked: what it would notice, something quicker should.
const LONGEST_OF_A_WITNESS: Duration = Duration::from_secs(2);

/// One test, with what it reaches.
pub(crate) struct Test<'a> {
    program: &'a Program,
    name: String,
    time: Duration,
    reached: BTreeSet<usize>,
}

/// All tests, the quick ones first.
pub(crate) fn tests(built: &Built) -> Result<Vec<Test<'_>>> {
    let mut tests = Vec::new();
    for program in &built.programs {
        for name in names(program)? {
            tests.extend(look(program, name)?);
        }
    }
    tests.sort_by_key(|test| test.time);
    let whole: Duration = tests.iter().map(|test| test.time).sum();
    eprintln!("{} tests, {:.1} s in all", tests.len(), whole.as_secs_f64());
    Ok(tests)
}

/// Runs the tests against each wanted fault.
pub(crate) fn all(
    built: &Built,
    tests: &[Test<'_>],
    mutants: &[Mutant],
    wanted: &[usize],
    kept: Option<&Kept>,
) -> Result<Vec<Fate>> {
    let mut fates = Vec::with_capacity(wanted.len());
    let (start, mut told) = (Instant::now(), Instant::now());
    for &number in wanted {
        let known = kept.is_some_and(|kept| kept.holds(&mutants[number])) && built.woven.contains(&number);
        let fate = if known { Fate::Killed } else { fate(number, built, tests)? };
        if fate.is_not_noticed() {
            eprintln!("not noticed: {}", mutants[number].name);
        }
        fates.push(fate);
        if told.elapsed() > Duration::from_secs(30) {
            told = Instant::now();
            let gone = fates.iter().filter(|fate| fate.is_not_noticed()).count();
            eprintln!(
                "{} of {} after {} s, {gone} not noticed",
                fates.len(),
                wanted.len(),
                start.elapsed().as_secs()
            );
        }
    }
    Ok(fates)
}

fn fate(number: usize, built: &Built, tests: &[Test<'_>]) -> Result<Fate> {
    if !built.woven.contains(&number) {
        return Ok(if built.refused.contains(&number) { Fate::Unviable } else { Fate::NotWoven });
    }
    let mut reaching = tests.iter().filter(|test| test.reached.contains(&number)).peekable();
    if reaching.peek().is_none() {
        return Ok(Fate::Unreached);
    }
    for (program, names, time) in batches(reaching) {
        let limit = time * 20 + Duration::from_secs(3);
        match passes(program, &names, &number.to_string(), None, limit)? {
            Some(true) => {}
            Some(false) => return Ok(Fate::Killed),
            None => return Ok(Fate::TimedOut),
        }
    }
    Ok(Fate::Survived)
}

/// Quick tests of one program run together, the others one by one; with their time.
fn batches<'a>(tests: impl Iterator<Item = &'a Test<'a>>) -> Vec<(&'a Program, Vec<&'a str>, Duration)> {
    let mut all: Vec<(&Program, Vec<&str>, Duration)> = Vec::new();
    for test in tests {
        let quick = test.time < QUICK;
        let fits = |(program, _, time): &&mut (&Program, Vec<&str>, Duration)| {
            quick && *time < ONE_GO && program.file == test.program.file
        };
        match all.iter_mut().find(fits) {
            Some((_, names, time)) => {
                names.push(&test.name);
                *time += test.time;
            }
            None => all.push((test.program, vec![&test.name], test.time)),
        }
    }
    all
}

/// Whether tests pass; `None` if they do not end.
fn passes(
    program: &Program,
    names: &[&str],
    on: &str,
    notes: Option<&Path>,
    limit: Duration,
) -> Result<Option<bool>> {
    let mut command = Command::new(&program.file);
    command.args(["--exact", "--quiet"]).args(names).current_dir(&program.at).env("MUTANT", on);
    // A snapshot that differs fails its test and is not written down.
    command.env("INSTA_UPDATE", "no");
    if let Some(notes) = notes {
        command.env("MUTANT_NOTES", notes);
    }
    let silent = command.env("CARGO_MANIFEST_DIR", &program.at).stdin(Stdio::null()).stdout(Stdio::null());
    let mut child = silent.stderr(Stdio::null()).spawn().context("a test program")?;
    let start = Instant::now();
    loop {
        if let Some(status) = child.try_wait()? {
            return Ok(Some(status.success()));
        }
        if start.elapsed() > limit {
            child.kill()?;
            child.wait()?;
            return Ok(None);
        }
        std::thread::sleep(Duration::from_millis(if start.elapsed().as_millis() < 50 { 1 } else { 5 }));
    }
}

fn names(program: &Program) -> Result<Vec<String>> {
    let output =
        Command::new(&program.file).args(["--list", "--format=terse"]).current_dir(&program.at).output()?;
    let text = String::from_utf8(output.stdout)?;
    Ok(text.lines().filter_map(|line| line.strip_suffix(": test")).map(str::to_owned).collect())
}

/// Runs a test with no fault on and notes which faults it could meet; `None` for one that is not asked.
fn look(program: &Program, name: String) -> Result<Option<Test<'_>>> {
    let notes = program.file.with_extension("notes");
    let _ = fs::remove_file(&notes);
    let timed = |on: &str, notes: Option<&Path>| -> Result<Duration> {
        let start = Instant::now();
        let passed = passes(program, &[&name], on, notes, Duration::from_secs(600))?;
        ensure!(passed == Some(true), "{name} fails without a fault");
        Ok(start.elapsed())
    };
    let time = timed("note", Some(&notes))?.min(timed("none", None)?);
    if program.is_witness && time > LONGEST_OF_A_WITNESS {
        eprintln!("not asked: {name}, {:.1} s", time.as_secs_f64());
        return Ok(None);
    }
    let text = fs::read_to_string(&notes).unwrap_or_default();
    let reached = text.lines().filter_map(|line| line.parse().ok()).collect();
    Ok(Some(Test { program, name, time, reached }))
}
