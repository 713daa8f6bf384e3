//! Running other programs from the root of the tree, with errors that say what to do.

use anyhow::{Context, Result, bail};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The root of the working tree.
pub(crate) fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_owned()
}

/// Where cargo builds.
pub(crate) fn target_folder() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from)
}

/// The same cargo that runs this program.
pub(crate) fn cargo(arguments: &[&str]) -> Command {
    program(&std::env::var("CARGO").unwrap_or_else(|_| "cargo".into()), arguments)
}

/// npm in `web/`; without Node 20 an error that says where to get it.
pub(crate) fn npm(arguments: &[&str]) -> Result<Command> {
    let version = output(&mut program("node", &["--version"])).unwrap_or_default();
    let major: u32 =
        version.trim_start_matches('v').split('.').next().and_then(|n| n.parse().ok()).unwrap_or(0);
    if major < 20 || find("npm").is_none() {
        let found = if version.is_empty() { "no node" } else { version.as_str() };
        bail!("Node 20 or newer with npm is needed (found {found}). Get it from https://nodejs.org");
    }
    let mut command = program("npm", arguments);
    command.current_dir(root().join("web"));
    Ok(command)
}

/// A command at the root of the tree, without input.
pub(crate) fn program(name: &str, arguments: &[&str]) -> Command {
    let mut command = Command::new(name);
    command.args(arguments).current_dir(root()).stdin(Stdio::null());
    command
}

/// Node's own test runner on the test files of a folder, in the order of their names.
pub(crate) fn node_tests(folder: &str) -> Result<Command> {
    npm(&[])?; // for its message where Node is missing or too old
    let mut files: Vec<String> = std::fs::read_dir(root().join(folder))?
        .filter_map(|entry| entry.ok()?.path().to_str().map(str::to_owned))
        .filter(|file| file.ends_with(".test.mjs"))
        .collect();
    files.sort();
    let mut node = program("node", &["--test"]);
    node.args(files);
    Ok(node)
}

/// Runs to the end; its output goes where ours goes.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let status = command.status().with_context(|| format!("cannot run {}", spelled(command)))?;
    if !status.success() {
        bail!("{} failed ({status})", spelled(command));
    }
    Ok(())
}

/// Runs to the end and returns what it printed, without the last line end.
pub(crate) fn output(command: &mut Command) -> Result<String> {
    let output = command
        .stderr(Stdio::inherit())
        .output()
        .with_context(|| format!("cannot run {}", spelled(command)))?;
    if !output.status.success() {
        bail!("{} failed ({})", spelled(command), output.status);
    }
    Ok(String::from_utf8(output.stdout)?.trim_end().to_owned())
}

/// A program on PATH.
pub(crate) fn find(name: &str) -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    let endings: &[&str] = if cfg!(windows) { &[".exe", ".cmd"] } else { &[""] };
    std::env::split_paths(&path)
        .flat_map(|folder| endings.iter().map(move |ending| folder.join(format!("{name}{ending}"))))
        .find(|file| file.is_file())
}

fn spelled(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    let words: Vec<_> = words.map(std::ffi::OsStr::to_string_lossy).collect();
    format!("`{}`", words.join(" "))
}
