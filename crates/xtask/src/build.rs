//! From the Rust crates and `web/` to the static site in `dist/`. Rebuilds only what changed.

use crate::licenses;
use crate::shell::{cargo, find, npm, output, program, root, run};
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::SystemTime;
use wasm_bindgen_cli_support::Bindgen;

/// The one target besides the native one.
pub(crate) const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// What the web side loads from `web/pkg/`.
struct Package {
    /// The crate it is built from.
    of: &'static str,
    /// What its files are called.
    name: &'static str,
    /// Without the crate's default features, and as small as it gets.
    bare: bool,
}

/// Every function there is; then what a page needs for its first answer, out of the same crate; then what is
/// loaded when it is needed.
const PACKAGES: [Package; 5] = [
    Package { of: "straight-answer", name: "straight_answer", bare: false },
    Package { of: "straight-answer", name: "straight_answer_first", bare: true },
    Package { of: "straight-answer-workbook", name: "straight_answer_workbook", bare: false },
    Package { of: "straight-answer-flight", name: "straight_answer_flight", bare: false },
    Package { of: "straight-answer-plan", name: "straight_answer_plan", bare: false },
];

/// What else the core speaks beside English; a text for each, which the packages are handed (`speak`).
const LANGUAGES: [&str; 1] = ["es"];

/// Builds everything.
pub(crate) fn site() -> Result<()> {
    install_web_packages()?;
    add_wasm_target()?;
    let folder = root().join("web/pkg");
    PACKAGES.iter().try_for_each(|it| package(it, &folder))?;
    LANGUAGES.iter().try_for_each(|language| table(language))?;
    describe_package()?;
    run(&mut npm(&["run", "--silent", "build"])?)?;
    if !root().join("dist/index.html").is_file() {
        bail!("the web build left no dist/index.html");
    }
    licenses::write_site()
}

/// The crates that the packages are built from.
pub(crate) fn crates() -> impl Iterator<Item = &'static str> {
    PACKAGES.iter().map(|package| package.of)
}

/// Adds the wasm target of the toolchain in use when it is missing.
pub(crate) fn add_wasm_target() -> Result<()> {
    let sysroot = output(&mut program("rustc", &["--print", "sysroot"]))?;
    if Path::new(&sysroot).join("lib/rustlib").join(WASM_TARGET).is_dir() {
        return Ok(());
    }
    if find("rustup").is_none() {
        bail!("the toolchain has no {WASM_TARGET} and there is no rustup to add it: https://rustup.rs");
    }
    run(&mut program("rustup", &["target", "add", WASM_TARGET]))
}

/// Installs what the lock file names, unless exactly that was installed before.
pub(crate) fn install_web_packages() -> Result<()> {
    let lock = fs::read(root().join("web/package-lock.json")).context("web/package-lock.json")?;
    let stamp = root().join("web/node_modules/.installed-lock.json");
    if fs::read(&stamp).is_ok_and(|installed| installed == lock) {
        return Ok(());
    }
    run(&mut npm(&["ci", "--no-audit", "--no-fund"])?)?;
    fs::write(stamp, lock)?;
    Ok(())
}

/// The package that only `bench` loads, in a folder of its own.
pub(crate) fn bench_package(folder: &Path) -> Result<()> {
    let of = "straight-answer-bench";
    package(&Package { of, name: "straight_answer_bench", bare: false }, folder)
}

/// Builds a crate and generates its package in a folder from it.
fn package(Package { of, name, bare }: &Package, folder: &Path) -> Result<()> {
    let profile = if *bare { "wasm-first" } else { "wasm" };
    let mut build =
        cargo(&["build", "--quiet", "--lib", "--package", of, "--profile", profile, "--target", WASM_TARGET]);
    if *bare {
        build.arg("--no-default-features");
    }
    run(build.arg("--target-dir").arg(target_folder()))?;
    let compiled =
        target_folder().join(WASM_TARGET).join(profile).join(of.replace('-', "_")).with_extension("wasm");
    let shipped = folder.join(format!("{name}_bg.wasm"));
    if is_newer(&shipped, &[compiled.clone(), std::env::current_exe()?]) {
        return Ok(());
    }
    // Generated aside first, so that a failure on the way never leaves a package that looks finished.
    let aside = target_folder().join("generated-package");
    Bindgen::new()
        .input_path(&compiled)
        .out_name(name)
        .web(true)?
        .typescript(true)
        // Names order the functions below.
        .remove_name_section(false)
        .remove_producers_section(true)
        // A bundler finds the wasm by the path that stands in the script.
        .omit_default_module_path(false)
        .generate(&aside)?;
    fs::create_dir_all(folder)?;
    for ending in [".js", ".d.ts", "_bg.wasm.d.ts"] {
        let file = format!("{name}{ending}");
        fs::copy(aside.join(&file), folder.join(&file))?;
    }
    shrink(&aside.join(format!("{name}_bg.wasm")), &shipped)
}

/// Writes the table of a language beside the packages that take it; it fits those of this build alone.
fn table(language: &str) -> Result<()> {
    let text = output(&mut cargo(&["run", "--quiet", "--package=text", "--example=table", "--", language]))?;
    fs::write(root().join(format!("web/pkg/straight_answer_{language}.txt")), text + "\n")?;
    Ok(())
}

/// wasm-opt from the npm package `binaryen`, with the features that rustc turns on by default.
///
/// What counts is the size after compression: functions stay whole, because code inlined into different places
/// no longer repeats, and stand in the order of their names, so that instances of one generic are neighbors.
/// Both together take a fifth off what a visitor loads.
fn shrink(generated: &Path, shipped: &Path) -> Result<()> {
    let ordered = generated.with_extension("ordered.wasm");
    wasm_opt(
        generated,
        &ordered,
        &[
            // Smaller than -Oz once compressed, and faster.
            "-O2",
            "--always-inline-max-function-size=0",
            "--flexible-inline-max-function-size=0",
            "--one-caller-inline-max-function-size=0",
            "--reorder-functions-by-name",
            "--debuginfo",
        ],
    )?;
    wasm_opt(&ordered, shipped, &["--strip-debug", "--strip-producers"])?;
    let (before, after) = (fs::metadata(generated)?.len(), fs::metadata(shipped)?.len());
    let name = shipped.file_name().unwrap_or_default().display();
    println!("{name}: {before} bytes, {after} after wasm-opt");
    Ok(())
}

fn wasm_opt(from: &Path, to: &Path, passes: &[&str]) -> Result<()> {
    let mut command = npm(&["exec", "--no", "--", "wasm-opt"])?;
    command.args([
        "--enable-bulk-memory",
        "--enable-multivalue",
        "--enable-mutable-globals",
        "--enable-nontrapping-float-to-int",
        "--enable-reference-types",
        "--enable-sign-ext",
    ]);
    run(command.args(passes).arg("--output").arg(to).arg(from))
}

/// What makes the generated files a package for `npm pack`: manifest, words, its own licenses and those of others.
fn describe_package() -> Result<()> {
    let folder = root().join("web/pkg");
    fs::write(folder.join("package.json"), manifest())?;
    let copies = [
        ("web/package-readme.md", "README.md"),
        ("LICENSE-MIT", "LICENSE-MIT"),
        ("LICENSE-APACHE", "LICENSE-APACHE"),
    ];
    for (from, to) in copies {
        fs::copy(root().join(from), folder.join(to)).with_context(|| from.to_owned())?;
    }
    licenses::write_package()
}

/// Makes Node and bundlers read the generated scripts as modules.
fn manifest() -> String {
    let [Package { name, .. }, ..] = PACKAGES;
    format!(
        r#"{{
  "name": "straight-answer",
  "version": "{}",
  "description": "Whether two golf clubs really perform differently, or the session was too small to say.",
  "license": "MIT OR Apache-2.0",
  "type": "module",
  "main": "{name}.js",
  "types": "{name}.d.ts",
  "exports": {{ ".": {{ "types": "./{name}.d.ts", "default": "./{name}.js" }}, "./*": "./*" }},
  "files": ["*.js", "*.d.ts", "*.wasm", "*.txt", "LICENSE-*", "licenses.md"],
  "sideEffects": false
}}
"#,
        env!("CARGO_PKG_VERSION")
    )
}

/// Where cargo builds.
pub(crate) fn target_folder() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from)
}

/// Whether `made` exists and is newer than everything it is made of.
fn is_newer(made: &Path, sources: &[PathBuf]) -> bool {
    let changed = |path: &Path| fs::metadata(path).and_then(|m| m.modified());
    let Ok(made) = changed(made) else { return false };
    sources.iter().all(|source| changed(source).unwrap_or_else(|_| SystemTime::now()) < made)
}
