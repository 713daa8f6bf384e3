//! General-purpose packages on the same numbers: scipy and statsmodels in a Python of their own, simple-statistics and
//! jStat in Node. What cannot be had on this machine is said and left out.

use crate::shell::{find, npm, output, program, root, run};
use anyhow::{Context, Result};
use serde_json::{Map, Value};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Tried in this order.
const PYTHONS: [&str; 4] = ["python3.11", "python3.12", "python3", "python"];
/// Settings that would choose other kernels for another machine.
const LEFT_TO_THE_MACHINE: [&str; 2] = ["OPENBLAS_CORETYPE", "OPENBLAS_L2_SIZE"];

/// Times and results by package; those that could not run are missing.
pub(crate) fn run_all(folder: &Path) -> Map<String, Value> {
    let mut found = Map::new();
    match python(folder) {
        Ok(value) => {
            found.insert("scipy".into(), value);
        }
        Err(why) => println!("skipped: scipy and statsmodels ({why:#})"),
    }
    match javascript(folder) {
        Ok(Value::Object(packages)) => found.extend(packages),
        Ok(other) => println!("skipped: JavaScript packages (not an object: {other})"),
        Err(why) => println!("skipped: JavaScript packages ({why:#})"),
    }
    found
}

/// Sessions a second of the package and of a script, in the same Python; `package` is the folder that the package lies in.
pub(crate) fn seasons(folder: &Path, files: &str, package: &Path) -> Result<Value> {
    let own = own_python(folder)?;
    let mut script = program(&own, &["tests/bench/seasons.py", files]);
    parsed(with_one_thread(script.env("PYTHONPATH", package)))
}

fn python(folder: &Path) -> Result<Value> {
    let own = own_python(folder)?;
    let script = "tests/bench/reference.py";
    parsed(with_one_thread(&mut program(&own, &[script, &folder.display().to_string()])))
}

/// A Python with the packages, made once for each list of them.
fn own_python(folder: &Path) -> Result<String> {
    let place = folder.join("python");
    let wanted = root().join("tests/bench/requirements.txt");
    let inside = if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" };
    let own = place.join(inside).display().to_string();
    if needs(&place, &wanted)? {
        let python = PYTHONS.iter().find(|name| find(name).is_some()).context("no Python on PATH")?;
        let _ = fs::remove_dir_all(&place);
        run(&mut program(python, &["-m", "venv", &place.display().to_string()]))?;
        let wanted = wanted.display().to_string();
        let pip =
            ["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--requirement", &wanted];
        run(&mut program(&own, &pip))?;
        remember(&place, Path::new(&wanted))?;
    }
    Ok(own)
}

fn javascript(folder: &Path) -> Result<Value> {
    let place = folder.join("packages");
    let lock = root().join("tests/bench/package-lock.json");
    if needs(&place, &lock)? {
        fs::create_dir_all(&place)?;
        for name in ["package.json", "package-lock.json"] {
            fs::copy(root().join("tests/bench").join(name), place.join(name)).context(name)?;
        }
        run(npm(&["ci", "--silent", "--no-audit", "--no-fund"])?.current_dir(&place))?;
        remember(&place, &lock)?;
    }
    let [folder, place] = [folder, &place].map(|path| path.display().to_string());
    parsed(&mut program("node", &["tests/bench/packages.mjs", &folder, &place]))
}

fn parsed(command: &mut Command) -> Result<Value> {
    let text = output(command)?;
    serde_json::from_str(&text).with_context(|| format!("not times: {text}"))
}

/// One thread for everybody: the core has one, and so has a page.
fn with_one_thread(command: &mut Command) -> &mut Command {
    for name in LEFT_TO_THE_MACHINE {
        command.env_remove(name);
    }
    command.env("OPENBLAS_NUM_THREADS", "1").env("OMP_NUM_THREADS", "1")
}

fn stamp(place: &Path) -> PathBuf {
    place.join(".installed")
}

/// Whether something else, or nothing, was installed there before.
fn needs(place: &Path, list: &Path) -> Result<bool> {
    let wanted = fs::read(list).with_context(|| list.display().to_string())?;
    Ok(!fs::read(stamp(place)).is_ok_and(|installed| installed == wanted))
}

fn remember(place: &Path, list: &Path) -> Result<()> {
    Ok(fs::copy(list, stamp(place)).map(drop)?)
}
