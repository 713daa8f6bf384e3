//! `cargo xtask photo`: how well photos are read, on photos drawn for it; and the few that every test run reads.

use crate::browser;
use crate::photo_models;
use crate::shell::{npm, program, root, run, target_folder};
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::PathBuf;

const FIGURES: &str = "tests/photo.json";
/// How many are drawn, and from which seed, unless told otherwise.
const PHOTOS: &str = "120";
const SEED: &str = "90211";

/// Draws photos, reads them with the package that was built, and writes what came of them.
pub(crate) fn measure(options: &[&str]) -> Result<()> {
    let (mut photos, mut seed) = (PHOTOS, SEED);
    for pair in options.chunks(2) {
        match pair {
            ["--photos", count] => photos = count,
            ["--seed", number] => seed = number,
            _ => bail!("`photo` takes --photos N and --seed N"),
        }
    }
    if !photo_models::are_shipped() {
        bail!("no models: run `cargo xtask build` on a machine that can fetch them");
    }
    let folder = target_folder().join("photos").join(format!("{seed}-{photos}"));
    if !folder.join("photos").is_dir() {
        draw(&folder, photos, seed)?;
    }
    let mut node = program("node", &["tests/photo/measure.mjs"]);
    node.arg(folder.join("photos"));
    if options.is_empty() {
        node.arg(FIGURES);
    }
    run(&mut node)
}

/// Reads the few photos of the tree; a site without models has nothing to read them with.
pub(crate) fn test() -> Result<()> {
    if !photo_models::are_shipped() {
        println!("   skipped: this machine could not fetch the models");
        return Ok(());
    }
    run(&mut program("node", &["--test", "tests/photo/"]))
}

/// Screens by Chromium, then photos of them.
fn draw(folder: &std::path::Path, photos: &str, seed: &str) -> Result<()> {
    let ours = root().join("tests/photo");
    run(npm(&["ci", "--no-audit", "--no-fund"])?.current_dir(&ours))?;
    let python = python()?;
    let (screens, drawn) = (folder.join("screens"), folder.join("drawn"));
    let mut node = program("node", &["tests/photo/draw.mjs"]);
    run(node.arg(&screens).args([photos, seed]).env("CHROMIUM_PATH", browser::chromium()?))?;
    let mut taking = program(&python.to_string_lossy(), &["tests/photo/photos.py"]);
    run(taking.args([&screens, &drawn]).args(["--seed", seed]))?;
    // Under its name only once it is whole.
    fs::rename(&drawn, folder.join("photos")).context("the drawn photos")
}

/// A Python with what draws, in an environment of its own.
fn python() -> Result<PathBuf> {
    let home = target_folder().join("tools/photo");
    let python = home.join("bin/python");
    if !home.join("done").is_file() {
        run(program("python3", &["-m", "venv"]).arg(&home))?;
        let mut pip =
            program(&python.to_string_lossy(), &["-m", "pip", "install", "--quiet", "--requirement"]);
        run(pip.arg("tests/photo/requirements.txt"))?;
        fs::write(home.join("done"), "")?;
    }
    Ok(python)
}
