//! `straight-answer`: sessions checked in a terminal, one or many, and tests planned. The numbers are those of the page, to the
//! last bit.
//!
//! It ends with 0 when everything was answered, with 2 when something was read that cannot be answered, with 3 when something
//! was not read, and with 64 when it was called in a way that it does not know.

mod check;
mod many;
mod options;
mod plan;
mod write;

use clap::{CommandFactory, Parser};
use options::{Command, Options};
use std::process::ExitCode;
use write::Ends;

/// Called in a way that it does not know: the usual number for it.
const USAGE: u8 = 64;

fn main() -> ExitCode {
    let options = match Options::try_parse() {
        Ok(options) => options,
        Err(error) => {
            let is_asked_for = !error.use_stderr();
            let _ = error.print();
            return if is_asked_for { ExitCode::SUCCESS } else { ExitCode::from(USAGE) };
        }
    };
    let voice = options.voice();
    let ends = match &options.command {
        Command::Check(check) => check::run(check, &voice),
        Command::Many(many) => many::run(many, &voice),
        Command::Plan(plan) => plan::run(plan, &voice),
        Command::Completions { shell } => {
            let mut completions = Vec::new();
            clap_complete::generate(*shell, &mut Options::command(), "straight-answer", &mut completions);
            write::out(&String::from_utf8_lossy(&completions));
            Ends::Answered
        }
    };
    ExitCode::from(ends as u8)
}
