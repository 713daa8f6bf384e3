//! A real Chromium for the browser tests: found on PATH, or installed where that is possible.

use crate::serve;
use crate::shell::{find, npm, output, program, run};
use anyhow::{Result, bail};
use std::path::PathBuf;

/// The site is tested under a path of its own, because hosts often serve it from one.
pub(crate) const SUB_PATH: &str = "/some/club/";
const NAMES: [&str; 4] = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/// Runs `tests/browser` through the web package's script, with the address and the browser in
/// `SITE_URL` and `CHROMIUM_PATH`.
pub(crate) fn test() -> Result<()> {
    let chromium = chromium()?;
    let address = serve::in_background(SUB_PATH)?;
    run(npm(&["run", "--silent", "browser"])?.env("SITE_URL", address).env("CHROMIUM_PATH", chromium))
}

/// Photographs what is built, by the script of this name.
pub(crate) fn photograph(script: &str) -> Result<()> {
    let script = format!("tests/browser/{script}.mjs");
    run(program("node", &[&script]).env("CHROMIUM_PATH", chromium()?))
}

/// The Chromium of this machine, named in `CHROMIUM_PATH` or on PATH.
pub(crate) fn found() -> Option<PathBuf> {
    let named = std::env::var_os("CHROMIUM_PATH").map(PathBuf::from);
    named.or_else(|| NAMES.iter().find_map(|name| find(name)))
}

/// A Chromium to run, installed with apt where there is none and this is root.
pub(crate) fn chromium() -> Result<PathBuf> {
    if let Some(found) = found() {
        return Ok(found);
    }
    if can_install() {
        println!("no Chromium on PATH: installing Debian's");
        update()?;
        install("chromium")?;
        if let Some(found) = found() {
            return Ok(found);
        }
    }
    bail!(
        "the browser tests need Chromium: install it (Debian: `apt install chromium`) so that one of \
         {} is on PATH, or name it in CHROMIUM_PATH",
        NAMES.join(", ")
    )
}

/// Whether this is root on a machine with apt.
pub(crate) fn can_install() -> bool {
    let is_root = find("id").is_some() && output(&mut program("id", &["-u"])).is_ok_and(|id| id == "0");
    is_root && find("apt-get").is_some()
}

/// Brings apt's list of packages up to date.
pub(crate) fn update() -> Result<()> {
    run(&mut program("apt-get", &["update", "--quiet"]))
}

/// Installs one of Debian's packages.
pub(crate) fn install(package: &str) -> Result<()> {
    run(program("apt-get", &["install", "--quiet", "--yes", "--no-install-recommends", package])
        .env("DEBIAN_FRONTEND", "noninteractive"))
}
