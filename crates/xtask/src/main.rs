//! Builds, serves, tests, measures: every command of the project, run as `cargo xtask COMMAND`.
//!
//! Assumes rustup, Node 20 or newer with npm, and git; fetches the rest or says what is missing.

mod abridged;
mod audit;
mod bench;
mod browser;
mod build;
mod calibrated;
mod everywhere;
mod fuzz;
mod licenses;
mod lighthouse;
mod mutants;
mod packages;
mod photo;
mod photo_models;
mod python;
mod quoted;
mod seasons;
mod serve;
mod shell;
mod sizes;
mod steps;
mod tables;
mod tidy;
mod tidy_modules;
mod tidy_web;
mod types;

use anyhow::{Result, bail};
use std::process::ExitCode;

const HELP: &str = "\
cargo xtask COMMAND

  serve [--port N]   build everything and serve the page on this machine, an example loaded
  build              write the finished static site to dist/
  test [STEP ...]    run every test, or only the named steps (`test --list` names them)
  check              the steps that need no test run: format, lints, types, tidy, build, sizes, licenses
  types              rewrite crates/boundary/types.d.ts from the Rust structs, and the report's JSON Schema from it
  bench              time the product natively and in wasm, beside other packages; writes tests/bench.json
  seasons            what many sessions cost, by their number and beside other ways; writes tests/seasons.json
  lighthouse         measure the site on a slow phone; writes tests/lighthouse.json
  tables             write the README's tables anew from the figures in tests/
  picture            photograph the README's three screens of the site that was built, into demo/picture.png
  pictures           photograph start, answers, planner and logging, phone and desk, light and dark, into demo/screens/
  demo               write the invented sessions in demo/ anew, from their seeds
  simulate [...]     moments of many invented sessions (--level none|mild|typical|strong,
                     --order reversed|fixed|drawn|blocked, --builds, --each, --sessions, --seed)
  calibrate [--short | --only N] how often verdicts are wrong, on invented sessions; writes tests/calibration.json
  rivals             power of the answer beside other methods; writes tests/rivals.json
  mutants [again | FILE] put faults into the crates that compute and decide; what no test notices goes to tests/mutants.md
                     (again: spare what a test noticed before; FILE: part of a path, the others stay as listed)
  links              how long the links of real-shaped sessions are, as a table
  fuzz [...]         throw hostile texts, links and photo grids (--cases, 10 million unless told otherwise; --seed)
  licenses           write licenses.md anew, of the site and of the package that were built
  photo [...]        draw photos and read them with what was built; writes tests/photo.json (--photos, --seed)
  photo-models       fetch, cut and pack anew the models that read a photo; a build does it once
  sizes              what a visitor downloads, file by file; writes tests/sizes.json
  help               this text
";

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
        [] | ["help" | "--help" | "-h"] => {
            print!("{HELP}");
            Ok(())
        }
        ["serve", options @ ..] => serve::serve(options),
        ["build"] => build::site(),
        ["test", "--list"] => {
            steps::list();
            Ok(())
        }
        ["test", names @ ..] => steps::test(names),
        ["check"] => steps::check(),
        ["types"] => types::write(),
        ["bench"] => bench::run(),
        ["lighthouse"] => lighthouse::write(),
        ["tables"] => tables::write_all(),
        ["picture"] => browser::photograph("picture"),
        ["pictures"] => browser::photograph("pictures"),
        ["calibrate", options @ ..] => calibrated::run(options),
        ["seasons"] => seasons::write(),
        ["demo" | "rivals"] | ["simulate", ..] => calibrated::figures(words),
        ["fuzz", options @ ..] => fuzz::throw(options),
        ["licenses"] => licenses::write(),
        ["photo", options @ ..] => photo::measure(options),
        ["photo-models"] => photo_models::write(),
        ["mutants"] => mutants::run_all(&[]),
        ["mutants", "again"] => mutants::run_all(&[("AGAIN", "1")]),
        ["mutants", file] => mutants::run_all(&[("ONLY", file)]),
        ["links"] => links(),
        ["sizes"] => build::site().and_then(|()| sizes::write()),
        other => bail!("`{}` is not a command\n\n{HELP}", other.join(" ")),
    }
}

fn links() -> Result<()> {
    shell::run(&mut shell::cargo(&["run", "--quiet", "--release", "--package=reading", "--example=links"]))
}
