//! The steps that `check` and `test` are made of, in their order; what fails does not hide the rest.

use crate::packages::WASM_TARGET;
use crate::shell::{cargo, node_tests, npm, program, run};
use crate::{
    audit, browser, build, calibrated, everywhere, licenses, lighthouse, photo, python, sizes, tidy, types,
};
use anyhow::{Result, bail};
use std::time::Instant;

/// One thing that can fail.
struct Step {
    name: &'static str,
    what: &'static str,
    run: fn() -> Result<()>,
    /// Part of `check` too.
    quick: bool,
    /// Pointless when `build` failed.
    needs_build: bool,
}

const fn step(name: &'static str, what: &'static str, run: fn() -> Result<()>) -> Step {
    Step { name, what, run, quick: false, needs_build: false }
}

const fn quick(step: Step) -> Step {
    Step { quick: true, ..step }
}

const fn built(step: Step) -> Step {
    Step { needs_build: true, ..step }
}

static STEPS: [Step; 22] = [
    quick(step("format", "rustfmt has nothing to change", format)),
    quick(step("lints", "clippy without a warning, native", lints)),
    quick(step("lints-wasm", "clippy without a warning, wasm32", lints_wasm)),
    quick(step("lints-web", "biome finds nothing in scripts and style sheets", || npm_script("lint"))),
    quick(step("types", "types.d.ts is that of the structs", types::check)),
    quick(step("tidy", "shape of the tree and edges between crates", tidy::check)),
    quick(step("docs", "documentation without a warning", docs)),
    quick(step("audit", "known weaknesses of the packages in the lock files", audit::check)),
    step("rust", "Rust tests of every crate", rust),
    step("python", "the package for Python, in an environment of its own", python::test),
    step("coherence", "no sentence that another one or the session contradicts", coherence),
    step("calibrate", "error rates, in short", || calibrated::run(&["--short"])),
    quick(step("build", "the static site in dist/", build::site)),
    quick(built(step("sizes", "download budgets", sizes::print_and_check))),
    quick(built(step(
        "licenses",
        "what others wrote stands in licenses.md, with its texts",
        licenses::check,
    ))),
    built(step("node", "the generated package in Node", || run(&mut node_tests("tests/node")?))),
    built(step("photo", "the photos of the tree, read by the package that was built", photo::test)),
    built(step("typecheck", "the web side's types", || npm_script("typecheck"))),
    built(step("web", "web unit tests", || npm_script("test"))),
    built(step("browser", "journeys in a real browser", browser::test)),
    built(step("everywhere", "journeys in Chromium, Firefox and WebKit", everywhere::test)),
    built(step("lighthouse", "a report of the site on a slow phone; no figure fails", lighthouse::report)),
];

/// Prints what `test` runs.
pub(crate) fn list() {
    for step in &STEPS {
        println!("{:12} {}", step.name, step.what);
    }
}

/// Runs every step, or only the named ones.
pub(crate) fn test(names: &[&str]) -> Result<()> {
    if let Some(unknown) = names.iter().find(|name| STEPS.iter().all(|step| step.name != **name)) {
        bail!("no step is called `{unknown}`; `cargo xtask test --list` names them");
    }
    run_all(STEPS.iter().filter(|step| names.is_empty() || names.contains(&step.name)))
}

/// Runs the steps that need no test run.
pub(crate) fn check() -> Result<()> {
    run_all(STEPS.iter().filter(|step| step.quick))
}

fn run_all(steps: impl Iterator<Item = &'static Step>) -> Result<()> {
    let mut failed = Vec::new();
    for step in steps {
        println!("\n== {}: {}", step.name, step.what);
        if step.needs_build && failed.contains(&"build") {
            println!("   not run: the build failed");
            failed.push(step.name);
            continue;
        }
        let start = Instant::now();
        match (step.run)() {
            Ok(()) => println!("   ok, {:.1} s", start.elapsed().as_secs_f64()),
            Err(error) => {
                println!("   FAILED: {error:#}");
                failed.push(step.name);
            }
        }
    }
    if failed.is_empty() {
        println!("\nall good");
        return Ok(());
    }
    bail!("failed: {}", failed.join(", "))
}

fn format() -> Result<()> {
    component("fmt", "rustfmt")?;
    run(&mut cargo(&["fmt", "--all", "--check"]))
}

fn lints() -> Result<()> {
    component("clippy", "clippy")?;
    run(&mut cargo(&[
        "clippy",
        "--quiet",
        "--workspace",
        "--all-targets",
        "--all-features",
        "--",
        "--deny=warnings",
    ]))
}

fn lints_wasm() -> Result<()> {
    component("clippy", "clippy")?;
    build::add_wasm_target()?;
    run(&mut cargo(&[
        "clippy",
        "--quiet",
        "--package=stats",
        "--package=flight",
        "--package=text",
        "--package=arrange",
        "--package=session",
        "--package=reading",
        "--package=judging",
        "--package=telling",
        "--package=request",
        "--package=straight-answer",
        "--package=straight-answer-workbook",
        "--package=photo",
        "--package=straight-answer-photo",
        "--target",
        WASM_TARGET,
        "--",
        "--deny=warnings",
    ]))
}

fn docs() -> Result<()> {
    let arguments = ["doc", "--quiet", "--workspace", "--no-deps", "--lib", "--all-features"];
    run(cargo(&arguments).env("RUSTDOCFLAGS", "--deny=warnings"))
}

/// The page draws some of the sessions first, so that what its scripts say is held against the facts too.
fn coherence() -> Result<()> {
    calibrated::figures(&["coherence", "--pages"])?;
    npm_script("coherence")?;
    calibrated::figures(&["coherence"])
}

fn rust() -> Result<()> {
    run(&mut cargo(&["test", "--quiet", "--workspace", "--all-features"]))
}

fn npm_script(name: &'static str) -> Result<()> {
    build::install_web_packages()?;
    run(&mut npm(&["run", "--silent", name])?)
}

/// Adds a part of the toolchain that a minimal installation leaves out.
fn component(subcommand: &str, name: &str) -> Result<()> {
    let there = cargo(&[subcommand, "--version"]).output().is_ok_and(|output| output.status.success());
    if there { Ok(()) } else { run(&mut program("rustup", &["component", "add", name])) }
}
