//! The tests against every fault: each fault meets the tests that reach it, quick ones first, until one fails.

use crate::build::Built;
use crate::fate::Fate;
use crate::kept::Kept;
use crate::listed::Mutant;
use anyhow::{Context, Result, ensure};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// Tests below this are run in one go.
const QUICK: Duration = Duration::from_millis(150);

/// One test, with what it reaches.
struct Test {
    program: PathBuf,
    name: String,
    time: Duration,
    reached: BTreeSet<usize>,
}

/// Runs the tests against each wanted fault.
pub(crate) fn all(built: &Built, mutants: &[Mutant], wanted: &[usize], kept: &Kept) -> Result<Vec<Fate>> {
    let mut tests = Vec::new();
    for program in &built.programs {
        for name in names(program, &built.at)? {
            tests.push(look(program, name, &built.at)?);
        }
    }
    tests.sort_by_key(|test| test.time);
    let whole: Duration = tests.iter().map(|test| test.time).sum();
    eprintln!("{} tests, {:.1} s in all", tests.len(), whole.as_secs_f64());
    let mut fates = Vec::with_capacity(wanted.len());
    let (start, mut told) = (Instant::now(), Instant::now());
    for &number in wanted {
        let known = kept.holds(&mutants[number]) && built.woven.contains(&number);
        let fate = if known { Fate::Killed } else { fate(number, built, &tests)? };
        if matches!(fate, Fate::Survived | Fate::Unreached) {
            eprintln!("not noticed: {}", mutants[number].name);
        }
        fates.push(fate);
        if told.elapsed() > Duration::from_secs(30) {
            told = Instant::now();
            let gone = fates.iter().filter(|fate| matches!(fate, Fate::Survived | Fate::Unreached)).count();
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

fn fate(number: usize, built: &Built, tests: &[Test]) -> Result<Fate> {
    if !built.woven.contains(&number) {
        return Ok(if built.refused.contains(&number) { Fate::Unviable } else { Fate::NotWoven });
    }
    let mut reaching = tests.iter().filter(|test| test.reached.contains(&number)).peekable();
    if reaching.peek().is_none() {
        return Ok(Fate::Unreached);
    }
    for (program, names, time) in batches(reaching) {
        let limit = time * 20 + Duration::from_secs(3);
        match passes(program, &names, &built.at, &number.to_string(), None, limit)? {
            Some(true) => {}
            Some(false) => return Ok(Fate::Killed),
            None => return Ok(Fate::TimedOut),
        }
    }
    Ok(Fate::Survived)
}

/// Quick tests of one program run together, the others one by one; with their time.
fn batches<'a>(tests: impl Iterator<Item = &'a Test>) -> Vec<(&'a Path, Vec<&'a str>, Duration)> {
    let mut all: Vec<(&Path, Vec<&str>, Duration)> = Vec::new();
    for test in tests {
        let quick = test.time < QUICK;
        match all.iter_mut().find(|(program, ..)| quick && *program == test.program) {
            Some((_, names, time)) => {
                names.push(&test.name);
                *time += test.time;
            }
            None => all.push((&test.program, vec![&test.name], test.time)),
        }
    }
    all
}

/// Whether tests pass; `None` if they do not end.
fn passes(
    program: &Path,
    names: &[&str],
    at: &Path,
    on: &str,
    notes: Option<&Path>,
    limit: Duration,
) -> Result<Option<bool>> {
    let mut command = Command::new(program);
    command.args(["--exact", "--quiet"]).args(names).current_dir(at).env("MUTANT", on);
    if let Some(notes) = notes {
        command.env("MUTANT_NOTES", notes);
    }
    let silent = command.env("CARGO_MANIFEST_DIR", at).stdin(Stdio::null()).stdout(Stdio::null());
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

fn names(program: &Path, at: &Path) -> Result<Vec<String>> {
    let output = Command::new(program).args(["--list", "--format=terse"]).current_dir(at).output()?;
    let text = String::from_utf8(output.stdout)?;
    Ok(text.lines().filter_map(|line| line.strip_suffix(": test")).map(str::to_owned).collect())
}

/// Runs a test with no fault on and notes which faults it could meet.
fn look(program: &Path, name: String, at: &Path) -> Result<Test> {
    let notes = program.with_extension("notes");
    let _ = fs::remove_file(&notes);
    let mut test = Test { program: program.to_owned(), name, time: Duration::MAX, reached: BTreeSet::new() };
    let long = Duration::from_secs(600);
    let passed = passes(program, &[&test.name], at, "note", Some(&notes), long)?;
    ensure!(passed == Some(true), "{} fails without a fault", test.name);
    let text = fs::read_to_string(&notes).unwrap_or_default();
    test.reached = text.lines().filter_map(|line| line.parse().ok()).collect();
    let start = Instant::now();
    ensure!(
        passes(program, &[&test.name], at, "none", None, long)? == Some(true),
        "{} fails without a fault",
        test.name
    );
    test.time = start.elapsed();
    Ok(test)
}
