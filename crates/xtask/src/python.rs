//! The package for Python, built and tested in a virtual environment of its own below `target/`. Where there is no Python, or
//! its packages cannot be fetched, that is said.

use crate::shell::{cargo, find, output, program, root, run, target_folder};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};

const REQUIREMENTS: &str = "crates/python/requirements.txt";
const OLDEST: &str = "import sys; sys.exit(sys.version_info < (3, 9))";
const DOCTEST: &str = "import doctest, straight_answer as s; raise SystemExit(doctest.testmod(s).failed)";

/// Builds the package and runs its tests.
pub(crate) fn test() -> Result<()> {
    let Some(python) = interpreter() else {
        println!("   skipped: no Python 3.9 or newer is here (https://www.python.org)");
        return Ok(());
    };
    let environment = target_folder().join("python");
    if let Err(error) = prepared(&python, &environment) {
        println!("   skipped: the packages of {REQUIREMENTS} cannot be fetched here ({error:#})");
        return Ok(());
    }
    let within = |name: &str, words: &[&str]| {
        let mut command = program(&of(&environment, name).display().to_string(), words);
        command.env("VIRTUAL_ENV", &environment).env_remove("PYTHONHOME").env_remove("CONDA_PREFIX");
        command
    };
    run(&mut within("maturin", &["develop", "--quiet", "--manifest-path", "crates/python/Cargo.toml"]))?;
    run(&mut within("python", &["-c", DOCTEST]))?;
    run(within("python", &["-m", "unittest"]).current_dir(root().join("crates/python/tests")))
}

/// The package built as it is shipped, in a folder of its own for whoever puts that on its path.
pub(crate) fn release(folder: &Path) -> Result<PathBuf> {
    run(&mut cargo(&["build", "--quiet", "--release", "--package=straight-answer-python"]))?;
    let package = folder.join("straight_answer");
    fs::create_dir_all(&package)?;
    for entry in fs::read_dir(root().join("crates/python/straight_answer"))? {
        let path = entry?.path();
        if path.extension().is_some_and(|ending| ending == "py") {
            fs::copy(&path, package.join(path.file_name().context("a file")?))?;
        }
    }
    let (built, named) = if cfg!(windows) {
        ("straight_answer_native.dll", "_native.pyd")
    } else if cfg!(target_os = "macos") {
        ("libstraight_answer_native.dylib", "_native.abi3.so")
    } else {
        ("libstraight_answer_native.so", "_native.abi3.so")
    };
    fs::copy(target_folder().join("release").join(built), package.join(named)).context(built)?;
    Ok(folder.to_owned())
}

fn interpreter() -> Option<PathBuf> {
    let works =
        |python: &PathBuf| output(&mut program(&python.display().to_string(), &["-c", OLDEST])).is_ok();
    ["python3", "python"].into_iter().filter_map(find).find(works)
}

/// Makes the environment, once for each list of packages.
fn prepared(python: &Path, environment: &Path) -> Result<()> {
    let wanted = fs::read_to_string(root().join(REQUIREMENTS)).context(REQUIREMENTS)?;
    let stamp = environment.join("requirements.txt");
    if fs::read_to_string(&stamp).is_ok_and(|made| made == wanted) {
        return Ok(());
    }
    let place = environment.display().to_string();
    run(&mut program(&python.display().to_string(), &["-m", "venv", "--clear", &place]))?;
    let pip = of(environment, "python").display().to_string();
    let words =
        ["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--requirement", REQUIREMENTS];
    run(&mut program(&pip, &words))?;
    fs::write(&stamp, wanted)?;
    Ok(())
}

/// A program of the environment.
fn of(environment: &Path, name: &str) -> PathBuf {
    if cfg!(windows) {
        environment.join("Scripts").join(format!("{name}.exe"))
    } else {
        environment.join("bin").join(name)
    }
}
