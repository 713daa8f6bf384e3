//! The section of how the sender looked at what a link holds.

use super::bytes::{Broken, Reader, Writer};
use super::tag;
use session::question::View;

/// Characters that a note keeps.
const LONGEST_NOTE: usize = 280;

/// Writes how the sender looked at it, if there is anything to say.
pub(crate) fn write_view(out: &mut Writer, view: &View) {
    let note = view.note.as_deref().unwrap_or_default().trim();
    let mut section = Writer::default();
    if !note.is_empty() {
        section.text(&note.chars().take(LONGEST_NOTE).collect::<String>());
    }
    out.section(tag::VIEW, section);
}

/// Reads how the sender looked at it.
pub(crate) fn read_view(input: &mut Reader<'_>) -> Result<View, Broken> {
    let note = input.text()?;
    Ok(View { note: Some(note).filter(|note| !note.is_empty() && note.chars().count() <= LONGEST_NOTE) })
}
