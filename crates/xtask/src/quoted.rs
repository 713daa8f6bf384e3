//! A table of the README that a command writes from a file of figures.

use crate::shell::root;
use anyhow::{Context, Result};
use serde_json::Value;
use std::fs;

/// A table between two comments, and the file it quotes.
pub(crate) struct Quote {
    /// In the comments.
    pub(crate) marker: &'static str,
    /// From the root.
    pub(crate) file: &'static str,
    /// Its words.
    pub(crate) text: fn(&Value) -> Result<String>,
}

const README: &str = "README.md";

impl Quote {
    /// Writes the table anew.
    pub(crate) fn write(&self) -> Result<()> {
        let path = root().join(README);
        let readme = fs::read_to_string(&path).context(README)?;
        Ok(fs::write(path, self.quoted(&readme)?)?)
    }

    /// What is wrong with it, if anything is.
    pub(crate) fn fault(&self) -> Result<Option<String>> {
        let readme = fs::read_to_string(root().join(README)).context(README)?;
        let is_same = self.quoted(&readme)? == readme;
        Ok((!is_same).then(|| format!("{README}: the table `{}` is not that of {}", self.marker, self.file)))
    }

    /// The README as it should be.
    fn quoted(&self, readme: &str) -> Result<String> {
        let figures = fs::read_to_string(root().join(self.file)).context(self.file)?;
        replaced(readme, self.marker, &(self.text)(&serde_json::from_str(&figures)?)?)
    }
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
