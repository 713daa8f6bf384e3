//! From the Rust crates and `web/` to the static site in `dist/`. Rebuilds only what changed.

use crate::abridged::{self, Made};
use crate::licenses;
use crate::packages::{CORE, PACKAGES, PHOTO, Package, SMALL, WASM_TARGET};
use crate::photo_models;
use crate::shell::{cargo, find, npm, output, program, root, run, target_folder};
use anyhow::{Context, Result, anyhow, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::thread;
use std::time::SystemTime;
use walrus::{Module, ModuleConfig};
use wasm_bindgen_cli_support::Bindgen;

/// The files of the core that gives a page's first answer, made of the whole one.
const FIRST: &str = "straight_answer_first";

/// What the abridged core is made by.
const ANSWERS: [&str; 2] = ["crates/boundary/first-answers.mjs", "crates/boundary/plain-sessions.mjs"];

/// What else the core speaks beside English; a text for each, which a caller hands over with its voice.
const LANGUAGES: [&str; 1] = ["es"];

/// Builds everything.
pub(crate) fn site() -> Result<()> {
    // One waits for the network while the other computes.
    let installing = thread::spawn(install_web_packages);
    add_wasm_target()?;
    let compiled = compile(&PACKAGES);
    installing.join().map_err(|_| anyhow!("npm was not run"))??;
    compiled?;
    let folder = root().join("web/pkg");
    PACKAGES.iter().try_for_each(|it| package(it, &folder))?;
    photos()?;
    describe_package()?;
    run(&mut npm(&["run", "--silent", "build"])?)?;
    if !root().join("dist/index.html").is_file() {
        bail!("the web build left no dist/index.html");
    }
    licenses::write_site()
}

/// What reads photos, and its models. A machine that cannot fetch these builds a site that takes no photos, and says so.
pub(crate) fn photos() -> Result<()> {
    compile(std::slice::from_ref(&PHOTO))?;
    package(&PHOTO, &root().join("web/pkg"))?;
    photo_models::ship()
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
    let bench = Package { of: "straight-answer-bench", name: "straight_answer_bench", compiled: &SMALL };
    compile(std::slice::from_ref(&bench))?;
    package(&bench, folder)
}

/// Compiles crates that are compiled alike, next to each other.
fn compile(packages: &[Package]) -> Result<()> {
    let Some(Package { compiled, .. }) = packages.first() else { return Ok(()) };
    let mut build =
        cargo(&["build", "--quiet", "--lib", "--profile", compiled.profile, "--target", WASM_TARGET]);
    build.args(["--config", &format!(r#"target.{WASM_TARGET}.rustflags = ["{}"]"#, compiled.flags)]);
    build.args(packages.iter().flat_map(|it| ["--package", it.of]));
    run(build.arg("--target-dir").arg(target_folder()))
}

/// Generates the package of a crate in a folder; of the core an abridged one too.
fn package(Package { of, name, compiled }: &Package, folder: &Path) -> Result<()> {
    let built = target_folder().join(WASM_TARGET).join(compiled.profile);
    let compiled = built.join(of.replace('-', "_")).with_extension("wasm");
    let shipped = folder.join(format!("{name}_bg.wasm"));
    let made_by = ANSWERS.map(|file| root().join(file));
    if is_newer(&shipped, &[vec![compiled.clone(), std::env::current_exe()?], made_by.to_vec()].concat()) {
        return Ok(());
    }
    // Generated aside first, so that a failure on the way never leaves a package that looks finished.
    let aside = target_folder().join("generated-package").join(name);
    Bindgen::new()
        .input_module(name, without_relocations(&compiled)?)
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
    let named = aside.join("named.wasm");
    // Smaller than -Oz once compressed, and faster.
    wasm_opt(&aside.join(format!("{name}_bg.wasm")), &named, &smaller("-O2"))?;
    if *name == CORE {
        abridged(&compiled, &aside, folder)?;
    }
    for ending in [".js", ".d.ts", "_bg.wasm.d.ts"] {
        let file = format!("{name}{ending}");
        fs::copy(aside.join(&file), folder.join(&file))?;
    }
    ship(&named, &shipped)
}

/// A linked module without what only the making of the abridged core needs.
fn without_relocations(linked: &Path) -> Result<Module> {
    let mut module = ModuleConfig::new().strict_validate(false).parse_file(linked)?;
    for section in ["linking", "reloc.CODE", "reloc.DATA"] {
        module.customs.remove_raw(section);
    }
    Ok(module)
}

/// Makes the package of the core that gives first answers, beside the whole one.
fn abridged(linked: &Path, aside: &Path, folder: &Path) -> Result<()> {
    // What node is to take for a module must say so.
    fs::write(aside.join("package.json"), r#"{ "type": "module" }"#)?;
    let tables = LANGUAGES.iter().map(|language| table(language)).collect::<Result<Vec<_>>>()?;
    let (whole, script, to) =
        (aside.join("named.wasm"), aside.join(format!("{CORE}.js")), aside.join("first.wasm"));
    let made = Made { linked, whole: &whole, script: &script, tables: &tables, aside };
    let script = abridged::write(&made, &to, |from, to| wasm_opt(from, to, &smaller("-Oz")))?;
    fs::write(
        folder.join(format!("{FIRST}.js")),
        script.replace(&format!("{CORE}_bg.wasm"), &format!("{FIRST}_bg.wasm")),
    )?;
    fs::copy(aside.join(format!("{CORE}.d.ts")), folder.join(format!("{FIRST}.d.ts")))?;
    ship(&to, &folder.join(format!("{FIRST}_bg.wasm")))
}

/// Writes the table of a language beside the packages that take it; it fits those of this build alone.
fn table(language: &str) -> Result<PathBuf> {
    let text = output(&mut cargo(&["run", "--quiet", "--package=text", "--example=table", "--", language]))?;
    let file = root().join(format!("web/pkg/straight_answer_{language}.txt"));
    fs::write(&file, text + "\n")?;
    Ok(file)
}

/// wasm-opt from the npm package `binaryen`, with the features that rustc turns on by default.
///
/// What counts is the size after compression: functions stay whole, because code inlined into different places
/// no longer repeats, and stand in the order of their names, so that instances of one generic are neighbors.
/// Both together take a fifth off what a visitor loads.
fn smaller(level: &str) -> [&str; 6] {
    [
        level,
        "--always-inline-max-function-size=0",
        "--flexible-inline-max-function-size=0",
        "--one-caller-inline-max-function-size=0",
        "--reorder-functions-by-name",
        "--debuginfo",
    ]
}

/// The file that a visitor loads: without names.
fn ship(named: &Path, shipped: &Path) -> Result<()> {
    wasm_opt(named, shipped, &["--strip-debug", "--strip-producers"])?;
    println!("{}: {} bytes", shipped.file_name().unwrap_or_default().display(), fs::metadata(shipped)?.len());
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
        "--enable-simd",
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
    let name = CORE;
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

/// Whether `made` exists and is newer than everything it is made of.
fn is_newer(made: &Path, sources: &[PathBuf]) -> bool {
    let changed = |path: &Path| fs::metadata(path).and_then(|m| m.modified());
    let Ok(made) = changed(made) else { return false };
    sources.iter().all(|source| changed(source).unwrap_or_else(|_| SystemTime::now()) < made)
}
