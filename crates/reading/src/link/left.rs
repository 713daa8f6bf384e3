//! What is left of a link that was cut off: the columns of shots that stand whole before the cut.
//!
//! What comes behind them is gone: reasons, notes, what was asked. Nothing is left of a link with a changed letter,
//! since no one can say which of its values is another.

use super::bytes::{Broken, Reader};
use super::sealed::{Sections, bytes_before_the_cut};
use super::{contents, tag};
use session::Session;

/// The shots before the cut; `None` of a link that is no link, is whole or changed, or was cut before the end of its first column.
#[must_use]
pub fn left_of(text: &str) -> Option<Session> {
    let bytes = bytes_before_the_cut(text)?;
    let (sections, cut) = Sections::before_the_cut(&bytes);
    let session = session(&sections, cut).ok()?;
    (!session.shots.is_empty() && !session.measures.is_empty()).then_some(session)
}

fn session(sections: &Sections<'_>, cut: Option<u64>) -> Result<Session, Broken> {
    let mut session = Session::default();
    let whole = |tag: u64| -> Result<Reader<'_>, Broken> {
        if cut == Some(tag) { Err(Broken) } else { sections.section(tag).ok_or(Broken) }
    };
    contents::read_builds(&mut whole(tag::BUILDS)?, &mut session)?;
    contents::read_measures(&mut whole(tag::MEASURES)?, &mut session)?;
    let mut shots = sections.section(tag::SHOTS).ok_or(Broken)?;
    contents::read_shots_in_part(&mut shots, &mut session)?;
    // A reason that is not whole is none; the shot stays.
    if let Ok(mut input) = whole(tag::LEFT_OUT) {
        contents::read_left_out(&mut input, &mut session)?;
    }
    Ok(session)
}
