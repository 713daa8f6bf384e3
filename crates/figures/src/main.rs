//! Invented sessions whose truth is known, and what is counted on them: `cargo xtask calibrate` and its neighbors run this.
//!
//! A program of its own, so that whoever only builds or serves the site compiles none of it.

mod bench_inputs;
mod calibrate;
mod coherence;
mod demo;
mod folder;
mod simulate;

use anyhow::{Result, bail};
use std::process::ExitCode;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match command(&words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("\nerror: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn command(words: &[&str]) -> Result<()> {
    match words {
        ["demo"] => demo::write(),
        ["simulate", options @ ..] => simulate::report::print(options),
        ["calibrate", options @ ..] => calibrate::run(options),
        ["coherence", options @ ..] => coherence::run(options),
        ["rivals"] => calibrate::rivals::run(),
        ["bench-inputs", folder] => bench_inputs::write(folder.as_ref()),
        other => bail!("`{}` is not a command: see `cargo xtask help`", other.join(" ")),
    }
}
