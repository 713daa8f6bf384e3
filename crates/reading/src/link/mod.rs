//! A session, its question and how it was looked at as one short text that fits an address: nothing is stored
//! anywhere, the link is the session.
//!
//! `1.` and then, in letters that addresses keep (`base64`), tagged sections and a check sum over them. A section
//! that this version does not know is skipped with a notice, so links of later versions open as far as they can; what
//! a section once meant it means forever (`tests/links`). Values come back at the precision they were given in
//! ([`column`]). Reading holds every length against a limit first: any text gives a session or an error, quickly.

mod asked;
mod base64;
mod beside;
mod bytes;
mod codes;
mod column;
mod contents;
mod error;
mod limits;
mod plan;
mod series;

pub use error::LinkError;
pub use limits::{MOST_CHARACTERS, MOST_SHOTS};
pub use plan::{PLAN_PREFIX, PlanToShare, SharedPlan, pack_plan, unpack_plan};

use crate::check::{Refusal, refuse_unusable};
use bytes::{Broken, Reader, Writer, check_sum};
use serde::{Deserialize, Serialize};
use session::Session;
use session::measure::MeasureId;
use session::question::Question;

/// The version that stands in front of a link's text. It changes only if sections alone cannot say what is new.
const VERSION: &str = "1";

/// Tags of sections. A tag is never given to anything else.
mod tag {
    pub(crate) const BUILDS: u64 = 1;
    pub(crate) const MEASURES: u64 = 2;
    pub(crate) const SHOTS: u64 = 3;
    pub(crate) const LEFT_OUT: u64 = 4;
    pub(crate) const SUMMARIES: u64 = 5;
    pub(crate) const QUESTION: u64 = 6;
    pub(crate) const VIEW: u64 = 7;
    pub(crate) const PLAN: u64 = 8;
    pub(crate) const SECOND: u64 = 9;
    pub(crate) const WEATHER: u64 = 10;
    pub(crate) const NOTES: u64 = 11;
    /// The last one.
    pub(crate) const LAST: usize = 11;
}

/// How the sender looked at it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
#[serde(default)]
pub struct View {
    /// A line that the sender gave along: a name, a day, a place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

/// What [`pack`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
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

/// Something about a link worth knowing that keeps it from nothing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LinkNotice {
    /// The values of a measure had more digits than a link keeps.
    Rounded {
        /// The measure.
        measure: MeasureId,
        /// In plain words.
        message: String,
    },
    /// A later version wrote something that this one does not know.
    Skipped {
        /// In plain words.
        message: String,
    },
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
/// A [`Refusal`] when the session is too large for any address, or the question does not belong to it.
pub fn pack(request: &PackRequest) -> Result<String, Refusal> {
    let PackRequest { session, question, view } = request;
    refuse_unusable(session, question)?;
    limits::packable(session)?;
    let mut out = Writer::default();
    let measures = contents::all_measures(session);
    contents::write(&mut out, session, &measures);
    beside::write(&mut out, session);
    asked::write_question(&mut out, question, &measures);
    asked::write_view(&mut out, view);
    sealed(out).ok_or_else(limits::too_large)
}

/// The text of these sections with their check sum; `None` when no address is that long.
fn sealed(mut sections: Writer) -> Option<String> {
    let sum = check_sum(&sections.0);
    sections.0.extend(sum);
    let text = format!("{VERSION}.{}", base64::encode(&sections.0));
    (text.len() <= MOST_CHARACTERS).then_some(text)
}

/// What a link's text holds. A whole address and the blanks and line ends that mail puts in are taken too.
///
/// # Errors
/// A [`LinkError`] that says whether the text is no link, was cut or changed on its way, or needs a later version.
pub fn unpack(text: &str) -> Result<Unpacked, LinkError> {
    let bytes = bytes_of(text)?;
    let sections = Sections::of(&bytes)?;
    let unpacked = sections.unpacked().map_err(|Broken| LinkError::Inconsistent)?;
    refuse_unusable(&unpacked.session, &unpacked.question).map_err(|_| LinkError::Inconsistent)?;
    Ok(unpacked)
}

/// The bytes behind the version and the point.
fn bytes_of(text: &str) -> Result<Vec<u8>, LinkError> {
    if text.len() > 2 * MOST_CHARACTERS {
        return Err(LinkError::TooLong);
    }
    let link = text.rsplit('#').next().unwrap_or_default();
    let plain: Vec<u8> = link.bytes().filter(|byte| !byte.is_ascii_whitespace()).collect();
    if plain.len() > MOST_CHARACTERS {
        return Err(LinkError::TooLong);
    }
    let point = plain.iter().position(|&byte| byte == b'.').ok_or(LinkError::NotALink)?;
    let (version, rest) = plain.split_at(point);
    let is_version = (1..=3).contains(&version.len()) && version.iter().all(u8::is_ascii_digit);
    if !is_version {
        return Err(LinkError::NotALink);
    }
    if version != VERSION.as_bytes() {
        return Err(LinkError::Later);
    }
    base64::decode(&rest[1..]).ok_or(LinkError::Damaged)
}

/// The sections of a link by what they hold.
#[derive(Default)]
struct Sections<'a> {
    known: [Option<&'a [u8]>; tag::LAST],
    unknown: usize,
}

impl<'a> Sections<'a> {
    /// Of the bytes of a link, once its check sum is right.
    fn of(bytes: &'a [u8]) -> Result<Self, LinkError> {
        let (content, sum) = bytes.split_last_chunk::<4>().ok_or(LinkError::Damaged)?;
        if check_sum(content) != *sum {
            return Err(LinkError::Damaged);
        }
        let mut sections = Self::default();
        sections.sort(content).map_err(|Broken| LinkError::Inconsistent)?;
        Ok(sections)
    }

    fn sort(&mut self, content: &'a [u8]) -> Result<(), Broken> {
        let mut input = Reader(content);
        while !input.is_empty() {
            let tag = input.whole()?;
            let length = input.length(input.0.len())?;
            let section = input.take(length)?;
            let slot = usize::try_from(tag).ok().and_then(|tag| self.known.get_mut(tag.checked_sub(1)?));
            match slot {
                Some(slot) if slot.is_none() => *slot = Some(section),
                Some(_) => return Err(Broken),
                None => self.unknown += 1,
            }
        }
        Ok(())
    }

    /// A section that is not there is empty.
    fn section(&self, tag: u64) -> Option<Reader<'a>> {
        usize::try_from(tag).ok().and_then(|tag| *self.known.get(tag.checked_sub(1)?)?).map(Reader)
    }

    fn unpacked(&self) -> Result<Unpacked, Broken> {
        let mut session = Session::default();
        let mut notices = Vec::new();
        if let Some(mut input) = self.section(tag::BUILDS) {
            contents::read_builds(&mut input, &mut session)?;
        }
        if let Some(mut input) = self.section(tag::MEASURES) {
            contents::read_measures(&mut input, &mut session)?;
        }
        if let Some(mut input) = self.section(tag::SHOTS) {
            notices.extend(contents::read_shots(&mut input, &mut session)?);
        }
        if let Some(mut input) = self.section(tag::LEFT_OUT) {
            contents::read_left_out(&mut input, &mut session)?;
        }
        if let Some(mut input) = self.section(tag::NOTES) {
            contents::read_notes(&mut input, &mut session)?;
        }
        if let Some(mut input) = self.section(tag::SUMMARIES) {
            contents::read_summaries(&mut input, &mut session)?;
        }
        if let Some(mut input) = self.section(tag::SECOND) {
            beside::read_second(&mut input, &mut session)?;
        }
        if let Some(mut input) = self.section(tag::WEATHER) {
            beside::read_weather(&mut input, &mut session)?;
        }
        let question = asked::read_question(&mut self.section(tag::QUESTION).ok_or(Broken)?, &session)?;
        let view = match self.section(tag::VIEW) {
            Some(mut input) => asked::read_view(&mut input)?,
            None => View::default(),
        };
        notices.extend(skipped(self.unknown));
        Ok(Unpacked { session, question, view, notices })
    }
}

/// Says that there were sections that this version does not know.
fn skipped(unknown: usize) -> Vec<LinkNotice> {
    let notice = || LinkNotice::Skipped { message: text::link::parts_unknown() };
    (unknown > 0).then(notice).into_iter().collect()
}
