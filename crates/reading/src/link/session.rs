//! A session and its question as a link, and back.

use super::bytes::{Broken, Writer};
use super::error::{LinkError, PackError, TooLarge};
use super::notice::LinkNotice;
use super::sealed::{Sections, bytes_of, sealed};
use super::{asked, contents, limits, notice, second_and_weather, tag, view};
use serde::{Deserialize, Serialize};
use session::Session;
use session::question::{Question, View};
use text::Voice;

/// What [`pack`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(deny_unknown_fields)]
pub struct PackRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
    /// How it was looked at; may be left out.
    #[serde(default)]
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<View>"))]
    pub view: View,
}

/// What a link holds.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Unpacked {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What the sender asked of them.
    pub question: Question,
    /// How the sender looked at it.
    pub view: View,
    /// What is worth knowing about the link.
    pub notices: Vec<LinkNotice>,
}

/// A session and its question as a text of letters, digits, `-`, `_` and one point.
///
/// The usual margin is written out, so that the link says the same should it ever change.
///
/// # Errors
/// A [`PackError`] when the session is too large for any address, or the question does not belong to it.
pub fn pack(request: &PackRequest) -> Result<String, PackError> {
    let PackRequest { session, question, view } = request;
    question.fits(session)?;
    limits::packable(session)?;
    let mut out = Writer::default();
    let measures = limits::all_measures(session);
    contents::write(&mut out, session, &measures);
    second_and_weather::write(&mut out, session);
    asked::write_question(&mut out, question, &measures);
    view::write_view(&mut out, view);
    sealed(out).ok_or(PackError::TooLarge(TooLarge::Session))
}

/// What a link's text holds. A whole address and the blanks and line ends that mail puts in are taken too.
///
/// # Errors
/// A [`LinkError`] that says whether the text is no link, was cut or changed on its way, or needs a later version.
pub fn unpack(text: &str, voice: &Voice) -> Result<Unpacked, LinkError> {
    let bytes = bytes_of(text)?;
    let sections = Sections::of(&bytes)?;
    let unpacked = unpacked(&sections, voice).map_err(|Broken| LinkError::Inconsistent)?;
    unpacked.question.fits(&unpacked.session).map_err(|_| LinkError::Inconsistent)?;
    Ok(unpacked)
}

fn unpacked(sections: &Sections<'_>, voice: &Voice) -> Result<Unpacked, Broken> {
    let mut session = Session::default();
    let mut notices = Vec::new();
    if let Some(mut input) = sections.section(tag::BUILDS) {
        contents::read_builds(&mut input, &mut session)?;
    }
    if let Some(mut input) = sections.section(tag::MEASURES) {
        contents::read_measures(&mut input, &mut session)?;
    }
    if let Some(mut input) = sections.section(tag::SHOTS) {
        let rounded = contents::read_shots(&mut input, &mut session)?;
        notices.extend(rounded.into_iter().map(|measure| notice::rounded(measure, &session, voice)));
    }
    if let Some(mut input) = sections.section(tag::LEFT_OUT) {
        contents::read_left_out(&mut input, &mut session)?;
    }
    if let Some(mut input) = sections.section(tag::NOTES) {
        contents::read_notes(&mut input, &mut session)?;
    }
    if let Some(mut input) = sections.section(tag::SUMMARIES) {
        contents::read_summaries(&mut input, &mut session)?;
    }
    if let Some(mut input) = sections.section(tag::SECOND) {
        second_and_weather::read_second(&mut input, &mut session)?;
    }
    if let Some(mut input) = sections.section(tag::WEATHER) {
        second_and_weather::read_weather(&mut input, &mut session)?;
    }
    let mut question = asked::read_question(&mut sections.section(tag::QUESTION).ok_or(Broken)?, &session)?;
    if let Some(mut input) = sections.section(tag::DIFFERS) {
        question.differs = asked::read_differs(&mut input)?;
    }
    let view = match sections.section(tag::VIEW) {
        Some(mut input) => view::read_view(&mut input)?,
        None => View::default(),
    };
    notices.extend(notice::skipped(sections.unknown, voice));
    Ok(Unpacked { session, question, view, notices })
}
