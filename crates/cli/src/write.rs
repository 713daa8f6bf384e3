//! Standard input and output, errors as people read them, and how the program ends.

use files::Unread;
use std::fs;
use std::io::{self, Read, Write};
use std::path::Path;
use text::Voice;
use text::files as say;

/// How it ends; the worst of all files counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Ends {
    /// Everything was answered.
    Answered = 0,
    /// Something was read that cannot be answered.
    CannotAnswer = 2,
    /// Something was not read.
    NotRead = 3,
}

/// Prints to standard output; a reader that has heard enough is no fault of ours.
pub(crate) fn out(text: &str) {
    let mut out = io::stdout().lock();
    let _ = out.write_all(text.as_bytes()).and_then(|()| out.flush());
}

/// Says on standard error what was not read.
pub(crate) fn complain(unread: &Unread) {
    eprintln!("{}: {} {}", unread.place, unread.message, unread.remedy);
}

/// The bytes of standard input, no more than a file may have.
pub(crate) fn standard_input() -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    io::stdin().lock().take(files::MOST_BYTES + 1).read_to_end(&mut bytes)?;
    Ok(bytes)
}

/// A small file of settings.
pub(crate) fn settings(path: &Path, voice: &Voice) -> Result<String, Unread> {
    fs::read_to_string(path).map_err(|_| {
        let place = path.display().to_string();
        Unread::new(&place, "cannot_open", say::cannot_open(voice), say::cannot_open_remedy(voice))
    })
}

/// The same as JSON.
pub(crate) fn settings_of<T: serde::de::DeserializeOwned>(path: &Path, voice: &Voice) -> Result<T, Unread> {
    let text = settings(path, voice)?;
    serde_json::from_str(&text).map_err(|error| {
        let place = path.display().to_string();
        Unread::new(&place, "not_json", say::bad_table(voice, &error.to_string()), String::new())
    })
}

/// A line of JSON.
pub(crate) fn json(value: &impl serde::Serialize) -> String {
    // Numbers of an answer are finite, and its keys are texts.
    serde_json::to_string(value)
        .map_or_else(|error| format!("{{\"error\":\"{error}\"}}\n"), |line| line + "\n")
}

/// A value that is one word in JSON; empty for nothing.
pub(crate) fn word(value: &impl serde::Serialize) -> String {
    let value = serde_json::to_value(value).unwrap_or_default();
    value.as_str().unwrap_or_default().to_owned()
}

/// Rows of cells as CSV.
pub(crate) fn csv(rows: &[Vec<String>]) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for row in rows {
        // Into memory, with as many cells in every row.
        let _ = writer.write_record(row.iter().map(|cell| harmless(cell)));
    }
    writer.into_inner().map(|bytes| String::from_utf8_lossy(&bytes).into_owned()).unwrap_or_default()
}

/// What a spreadsheet would take for a formula has an apostrophe before it; numbers may begin with a sign.
fn harmless(cell: &str) -> String {
    let is_formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r']) && cell.parse::<f64>().is_err();
    if is_formula { format!("'{cell}") } else { cell.to_owned() }
}
