//! The core that gives a page's first answer: the whole one without what no first answer runs.
//!
//! What first answers run is found at each build by giving them: `crates/boundary/first-answers.mjs` asks a core that
//! notes which points of its code it reaches. All else becomes a trap, and the constants that nothing refers to any more
//! are left out. What a list of answers misses costs time, never an answer: where the abridged core traps, the page asks
//! the whole one. That both say the same is seen here, or nothing is built.

mod data;
mod points;
mod script;

use crate::shell::{output, program};
use anyhow::{Context, Result, bail};
use data::Constants;
use serde::Deserialize;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use walrus::{Module, ModuleConfig};

/// What it is made of.
pub(crate) struct Made<'a> {
    /// The core as the linker left it, with its relocations.
    pub(crate) linked: &'a Path,
    /// The core as it is shipped, with the names of its functions.
    pub(crate) whole: &'a Path,
    /// The script that goes with it.
    pub(crate) script: &'a Path,
    /// The languages it is asked in.
    pub(crate) tables: &'a [PathBuf],
    /// Where what is made on the way may lie.
    pub(crate) aside: &'a Path,
}

/// What the answers came to.
#[derive(Deserialize)]
struct Given {
    /// The points reached, by number.
    ran: BTreeSet<usize>,
    /// One text for all that was answered.
    answers: String,
}

/// Writes the abridged core, with the names of its functions, and gives its script; `optimized` writes one file from another.
pub(crate) fn write(
    made: &Made<'_>,
    to: &Path,
    optimized: impl Fn(&Path, &Path) -> Result<()>,
) -> Result<String> {
    let whole = fs::read(made.whole)?;
    let aside = |name: &str| made.aside.join(name);
    let mut noting = parsed(&whole)?;
    points::note(&mut noting);
    fs::write(aside("noting.wasm"), noting.emit_wasm())?;
    let given = answers(made, &aside("noting.wasm"))?;

    let mut abridged = parsed(&whole)?;
    points::keep_what_ran(&mut abridged, &given.ran)?;
    fs::write(aside("ran.wasm"), abridged.emit_wasm())?;
    optimized(&aside("ran.wasm"), &aside("lean.wasm"))?;
    let mut abridged = parsed(&fs::read(aside("lean.wasm"))?)?;
    let cleared = Constants::of(&fs::read(made.linked)?)?.clear_unreachable(&mut abridged)?;
    fs::write(aside("cleared.wasm"), abridged.emit_wasm())?;
    optimized(&aside("cleared.wasm"), to)?;
    if answers(made, to)?.answers != given.answers {
        bail!("the abridged core answers otherwise than the whole");
    }
    println!("abridged: {} points ran, {cleared} bytes of constants left out", given.ran.len());
    script::for_module(&fs::read_to_string(made.script)?, &parsed(&fs::read(to)?)?)
}

fn parsed(wasm: &[u8]) -> Result<Module> {
    ModuleConfig::new().generate_producers_section(false).parse(wasm)
}

/// Gives every first answer with a core.
fn answers(made: &Made<'_>, core: &Path) -> Result<Given> {
    let mut asked = program("node", &["crates/boundary/first-answers.mjs"]);
    let text = output(asked.arg(made.script).arg(core).arg(made.whole).args(made.tables))?;
    serde_json::from_str(&text).with_context(|| format!("no answers: {text}"))
}
