//! `cargo xtask calibrate`: runs the counting of wrong verdicts, and shows its table of error rates in the README.

use crate::quoted::Quote;
use crate::shell;
use anyhow::{Context, Result, ensure};
use serde::Deserialize;
use serde_json::Value;
use std::fmt::Write;

/// What was measured, in the README.
pub(crate) const QUOTE: Quote =
    Quote { marker: "calibration", file: "tests/calibration.json", text: markdown };

/// What a line of the table says, of which target, and what the descriptions of its rows have in common.
const LINES: [(&str, u32, &str); 26] = [
    ("equal clubs hit in turn, 6 to 30 shots each, no drift: called different on carry", 1, ": carry"),
    ("the same, typical drift", 2, ": carry"),
    ("the same, strong drift", 3, ": carry"),
    ("the same on ball speed", 3, ": ball speed"),
    ("the same on offline", 3, ": offline"),
    (
        "equal clubs, one after the other, typical drift: called different on carry",
        5,
        "equal clubs, typical: carry",
    ),
    ("the same, strong drift, 5 cold shots against 30 among them", 5, "equal clubs, strong: carry"),
    ("the same on ball speed", 5, "equal clubs, strong: ball speed"),
    ("a measure of one's own, one club after the other: like carry", 30, "own, like carry"),
    ("the same, like ball speed, whose drift is larger beside its scatter", 30, "own, like ball speed"),
    ("one club first in every lap, laps begun 5 yd cold, any measure", 30, "one club first"),
    ("shots leaning on each other by 0.4 or 0.6, 15 or 30 each in turn", 30, "shots leaning"),
    ("every pick-up of a club differing by 8 yd, 15 or 30 each in turn", 30, "every pick-up"),
    ("strong drift in turns of 5, 10 or 20 each", 30, "turns of 5"),
    ("5 or 10 shots with a club that scatters 1.7 times as far, 30 with the other", 30, "scatters 1.7"),
    (
        "a club new in the hand, 10 yd short at first: called different, and not told that learning may explain it",
        30,
        "not told",
    ),
    ("10 yd of wind beginning just between two blocks, which nothing shows and the page says", 30, "of wind"),
    ("clubs 5 yd apart, 15 to 90 shots each: called the same within 5 yd", 6, ""),
    ("plan of 5 or 10 laps, looked at after each, equal clubs: ever called different", 8, ""),
    ("no plan, looked at after each of 10 or 20 laps, equal clubs: ever called different", 9, ""),
    ("scatter, 5 to 30 shots each: truth missed by the interval", 11, ""),
    ("number of shots that the page names: a difference of that size found", 7, "called different"),
    (
        "5, 30 or 300 sessions of different golfers: what fittings bring on average missed by the interval",
        32,
        "mean missed",
    ),
    ("the same: how far golfers differ", 32, "spread missed"),
    ("the same: the next golfer's true gain", 32, "next true gap missed"),
    ("the same: the share that gains enough", 32, ": share missed"),
];

/// What is quoted of a row of the table.
#[derive(Deserialize)]
struct Row {
    target: u32,
    what: String,
    measured: f64,
}

/// Counts; a full run is shown in the README.
pub(crate) fn run(options: &[&str]) -> Result<()> {
    figures(&[&["calibrate"], options].concat())?;
    if options.contains(&"--short") { Ok(()) } else { QUOTE.write() }
}

/// Runs the program that invents sessions and counts on them.
pub(crate) fn figures(words: &[&str]) -> Result<()> {
    shell::run(shell::cargo(&["run", "--quiet", "--package=figures", "--"]).args(words))
}

/// The lowest and the highest rate of each line's rows, as Markdown.
fn markdown(found: &Value) -> Result<String> {
    let rows: Vec<Row> = serde_json::from_value(found.clone()).context("rows of rates")?;
    let mut text = String::from("| invented sessions, and what was counted | in 100 |\n|---|---:|\n");
    for (what, target, common) in LINES {
        let fits =
            |row: &&Row| row.target == target && common.split(", ").all(|part| row.what.contains(part));
        let rates: Vec<f64> = rows.iter().filter(fits).map(|row| row.measured * 100.0).collect();
        ensure!(!rates.is_empty(), "no rate was measured for: {what}");
        let (least, most) =
            rates.iter().fold((f64::INFINITY, 0.0_f64), |(a, b), &rate| (a.min(rate), b.max(rate)));
        writeln!(text, "| {what} | {least:.1} to {most:.1} |")?;
    }
    Ok(text)
}
