//! The same journeys in Chromium, Firefox and WebKit: those of them that are here, or that a root can install.

use crate::shell::{cargo, find, node_tests, root, run};
use crate::{browser, build, serve};
use anyhow::Result;
use std::ffi::OsString;
use std::path::PathBuf;

/// What drives Firefox; Debian has no package of it. Built without optimization: it only passes messages on.
const GECKODRIVER: [&str; 5] = ["install", "geckodriver@0.37.1", "--locked", "--debug", "--quiet"];

/// A browser, and the programs it takes with the package of Debian's that holds each.
struct Kind {
    name: &'static str,
    programs: &'static [(&'static str, &'static str)],
}

const KINDS: [Kind; 3] = [
    Kind { name: "Chromium", programs: &[("chromium", "chromium"), ("chromedriver", "chromium-driver")] },
    Kind { name: "Firefox", programs: &[("firefox-esr", "firefox-esr")] },
    // Without a screen of its own it draws on one in memory; xvfb-run calls xauth.
    Kind {
        name: "WebKit",
        programs: &[("WebKitWebDriver", "webkit2gtk-driver"), ("xvfb-run", "xvfb"), ("xauth", "xauth")],
    },
];

impl Kind {
    /// Debian's packages of what is not on PATH.
    fn lacks(&self) -> Vec<&'static str> {
        let there = |program| match program {
            "chromium" => browser::found().is_some(),
            "firefox-esr" => find("firefox-esr").or_else(|| find("firefox")).is_some(),
            other => find(other).is_some(),
        };
        self.programs.iter().filter(|(program, _)| !there(program)).map(|(_, package)| *package).collect()
    }
}

/// Runs `tests/everywhere` in every browser that can be had. One that cannot is named with what to
/// install and fails nothing; a journey that fails in one that is here fails the step.
pub(crate) fn test() -> Result<()> {
    build::install_web_packages()?;
    install_what_lacks();
    let mut here = Vec::new();
    for kind in &KINDS {
        let lacks = kind.lacks();
        if !lacks.is_empty() {
            println!(
                "not in {}: install what is missing (Debian: `apt install {}`)",
                kind.name,
                lacks.join(" ")
            );
        } else if kind.name == "Firefox" && !geckodriver() {
            println!("not in Firefox: it needs geckodriver on PATH (`cargo install geckodriver`)");
        } else {
            here.push(kind.name);
        }
    }
    if here.is_empty() {
        println!("no browser with its driver is here: nothing was tested");
        return Ok(());
    }
    println!("in {}", here.join(", "));
    let address = serve::in_background(browser::SUB_PATH)?;
    let mut tests = node_tests("tests/everywhere")?;
    if let Some(chromium) = browser::found() {
        tests.env("CHROMIUM_PATH", chromium);
    }
    run(tests.env("SITE_URL", address).env("EVERYWHERE", here.join(",")).env("PATH", path_with_tools()?))
}

/// Where root can, installs what is missing; without a network the browsers that are there must do.
fn install_what_lacks() {
    let lacks: Vec<_> = KINDS.iter().flat_map(Kind::lacks).collect();
    if lacks.is_empty() || !browser::can_install() {
        return;
    }
    println!("installing Debian's {}", lacks.join(", "));
    if let Err(error) = browser::update() {
        println!("apt cannot be asked: {error:#}");
        return;
    }
    // One by one, so that one that this Debian does not have leaves the others.
    for package in lacks {
        if let Err(error) = browser::install(package) {
            println!("could not install {package}: {error:#}");
        }
    }
}

fn tools() -> PathBuf {
    root().join("target/tools")
}

/// Whether geckodriver is there, built into `target/tools` where it is not.
fn geckodriver() -> bool {
    let built = tools().join("bin/geckodriver");
    if find("geckodriver").is_some() || built.is_file() {
        return true;
    }
    println!("building geckodriver once, into target/tools");
    match run(cargo(&GECKODRIVER).arg("--root").arg(tools())) {
        Ok(()) => true,
        Err(error) => {
            println!("could not build geckodriver: {error:#}");
            false
        }
    }
}

/// PATH with what was built for these tests at its end.
fn path_with_tools() -> Result<OsString> {
    let path = std::env::var_os("PATH").unwrap_or_default();
    Ok(std::env::join_paths(std::env::split_paths(&path).chain([tools().join("bin")]))?)
}
