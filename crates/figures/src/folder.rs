//! Where the working tree lies.

use std::path::{Path, PathBuf};

/// The root of the working tree.
pub(crate) fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_owned()
}
