//! Tables of the README that a command writes from a file of figures; `tidy` finds those that no longer say the same.

use crate::shell::root;
use crate::{bench, calibrate, lighthouse, sizes};
use anyhow::{Context, Result};
use serde_json::Value;
use std::fs;

/// A table between two comments, and the file it quotes.
pub(crate) struct Quote {
    /// In the comments.
    marker: &'static str,
    /// From the root.
    pub(crate) file: &'static str,
    text: fn(&Value) -> Result<String>,
}

/// What `cargo xtask bench` measured.
pub(crate) const BENCH: Quote = Quote { marker: "bench", file: "tests/bench.json", text: bench::markdown };

/// What `cargo xtask lighthouse` measured.
pub(crate) const LIGHTHOUSE: Quote =
    Quote { marker: "lighthouse", file: "tests/lighthouse.json", text: lighthouse::markdown };

/// What `cargo xtask calibrate` measured.
pub(crate) const CALIBRATION: Quote =
    Quote { marker: "calibration", file: "tests/calibration.json", text: calibrate::markdown };

/// What `cargo xtask sizes` counted.
pub(crate) const SIZES: Quote = Quote { marker: "sizes", file: "tests/sizes.json", text: sizes::markdown };

const ALL: [Quote; 4] = [BENCH, LIGHTHOUSE, CALIBRATION, SIZES];
const README: &str = "README.md";

impl Quote {
    /// Writes the table anew.
    pub(crate) fn write(&self) -> Result<()> {
        let path = root().join(README);
        let readme = fs::read_to_string(&path).context(README)?;
        Ok(fs::write(path, self.quoted(&readme)?)?)
    }

    /// The README as it should be.
    fn quoted(&self, readme: &str) -> Result<String> {
        let figures = fs::read_to_string(root().join(self.file)).context(self.file)?;
        replaced(readme, self.marker, &(self.text)(&serde_json::from_str(&figures)?)?)
    }
}

/// Writes every table anew.
pub(crate) fn write_all() -> Result<()> {
    ALL.iter().try_for_each(Quote::write)
}

/// What is wrong with the README's tables.
pub(crate) fn faults() -> Result<Vec<String>> {
    let readme = fs::read_to_string(root().join(README)).context(README)?;
    let mut faults = Vec::new();
    for quote in ALL {
        if quote.quoted(&readme)? != readme {
            faults.push(format!("{README}: the table `{}` is not that of {}", quote.marker, quote.file));
        }
    }
    Ok(faults)
}

/// A text with other words between two comments.
fn replaced(text: &str, marker: &str, table: &str) -> Result<String> {
    let (open, close) = (format!("<!-- {marker}: written by a command -->\n"), format!("<!-- /{marker} -->"));
    let missing = || format!("no `{}` and `{close}` in {README}", open.trim_end());
    let (before, rest) = text.split_once(&open).with_context(missing)?;
    let (_, after) = rest.split_once(&close).with_context(missing)?;
    Ok(format!("{before}{open}{table}{close}{after}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_stands_between_the_comments_changes() {
        let text = "a\n<!-- x: written by a command -->\nold\n<!-- /x -->\nb\n";
        let new = replaced(text, "x", "new\n").unwrap_or_default();
        assert_eq!(new, "a\n<!-- x: written by a command -->\nnew\n<!-- /x -->\nb\n");
        assert!(replaced(text, "y", "new\n").is_err());
    }
}
