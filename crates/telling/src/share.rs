//! A session and its answer made ready to give away: the link, the words to paste, the lines of a picture, the report
//! as a file. Knows no address but the one it is given, and no date.

use crate::bet::{self, Bet};
use crate::check::say;
use crate::paste::{CardWords, PasteWords, card_words, paste_words};
use crate::refusals;
use crate::report::Report;
use crate::typical::{self, Typical};
use judging::{judge, settle};
use serde::{Deserialize, Serialize};
use session::Session;
use session::question::{Question, View};
use session::refusal::Refusal;
use text::Voice;

/// Characters of an address that forums and messengers commonly let pass whole. Common practice, no source.
pub const FORUM_CHARACTERS: usize = 2_000;

/// What a report's file says it is.
pub const FORMAT: &str = "straight-answer-report";

/// The version of the report's file: it grows when a field changes its meaning or goes, not when one is added.
pub const FORMAT_VERSION: u32 = 1;

/// What [`share`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct ShareRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
    /// How it was looked at; may be left out.
    #[serde(default)]
    #[cfg_attr(feature = "typescript", ts(optional, as = "Option<View>"))]
    pub view: View,
    /// Where the page stands that opens links, without a fragment: `https://example.org/club/`.
    pub address: String,
}

/// A report with what it was made from, as a file for programs.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ReportFile {
    /// Always `straight-answer-report`.
    pub format: String,
    /// The version of the format.
    pub version: u32,
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What was asked of them.
    pub question: Question,
    /// The answer, as `check` gives it.
    pub report: Report,
    /// What to bet, as `bet` gives it.
    pub bet: Bet,
    /// The typical shot, as `typical` gives it.
    pub typical: Typical,
}

/// Everything to give away.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Shared {
    /// The address that holds the session; null when the session is too large for any.
    pub link: Option<String>,
    /// Whether forums and messengers commonly let an address of that length pass.
    pub fits_forums: bool,
    /// The answer as text.
    pub words: PasteWords,
    /// The answer as lines of a picture.
    pub card: CardWords,
    /// The report as a file.
    pub file: ReportFile,
}

/// Answers the question and makes the answer ready to give away. `packed` is the session and its question as a link's text;
/// a session too large for any link is no error: then there is none.
///
/// # Errors
/// The [`Refusal`] of a question that cannot be asked of its session.
pub fn share(request: &ShareRequest, packed: Option<&str>, voice: &Voice) -> Result<Shared, Refusal> {
    let ShareRequest { session, question, address, .. } = request;
    let settled = settle(question, session).map_err(|misfit| refusals::misfit(&misfit, voice))?;
    let judged = judge(settled);
    let report = say(&judged, voice);
    // Whoever gets the words or the picture reads of somebody else's shots.
    let theirs = &voice.of_the_sender();
    let told = say(&judged, theirs);
    let link = packed.map(|text| format!("{}#{text}", plain(address)));
    let fits_forums = link.as_ref().is_some_and(|link| link.len() <= FORUM_CHARACTERS);
    let card = card_words(session, &told, theirs);
    let found = judging::bet::bet(&judged);
    let line = bet::told(&judged, found.clone(), theirs).words.line;
    let typical_line = typical::line(&typical::of_judged(&judged, theirs));
    let beside = [line.as_str(), &typical_line];
    let words = paste_words(&card, &told, beside, link.as_deref().filter(|_| fits_forums), theirs);
    let (session, question) = (session.clone(), question.clone());
    let (bet, typical) = (bet::told(&judged, found, voice), typical::of_judged(&judged, voice));
    let file = ReportFile {
        format: FORMAT.into(),
        version: FORMAT_VERSION,
        session,
        question,
        report,
        bet,
        typical,
    };
    Ok(Shared { link, fits_forums, words, card, file })
}

/// An address without its fragment and without anything that could end it inside a text.
fn plain(address: &str) -> String {
    let address = address.split('#').next().unwrap_or_default();
    address
        .chars()
        .filter(|c| c.is_ascii_graphic() && !matches!(c, '[' | ']' | '(' | ')' | '<' | '>' | '"'))
        .collect()
}
