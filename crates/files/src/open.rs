//! From a file to the session in it: opened within a limit, decoded, read as every text is.

use crate::unread::Unread;
use encoding_rs::Encoding;
use reading::{Doubt, FileIs, Hints, Notice, Problem};
use session::Session;
use session::question::Question;
use std::fs;
use std::io::Read;
use std::path::Path;
use straight_answer::whole;
use straight_answer_workbook::sheets;
use text::Voice;
use text::files as say;

/// Largest file that is opened: the reader of text takes no more than half of it, and a workbook no more.
pub const MOST_BYTES: u64 = 20_000_000;

/// A session as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct SessionRead {
    /// Where it was found.
    pub place: String,
    /// The shots.
    pub session: Session,
    /// What was asked, where the file says it.
    pub question: Option<Question>,
    /// Rows and cells that could not be used.
    pub problems: Vec<Problem>,
    /// Guesses and things worth knowing.
    pub notices: Vec<Notice>,
    /// What only the golfer can say.
    pub doubts: Vec<Doubt>,
}

/// Opens and reads a file.
///
/// # Errors
/// An [`Unread`], with a remedy.
pub fn read_file(path: &Path, hints: Option<&Hints>, voice: &Voice) -> Result<SessionRead, Unread> {
    let place = path.display().to_string();
    let cannot =
        || Unread::new(&place, "cannot_open", say::cannot_open(voice), say::cannot_open_remedy(voice));
    let size = fs::metadata(path).map_err(|_| cannot())?.len();
    if size > MOST_BYTES {
        return Err(too_large(&place, size, voice));
    }
    // Not trusting the size: what grows meanwhile, or has none, is cut off at the same limit.
    let mut bytes = Vec::new();
    let file = fs::File::open(path).map_err(|_| cannot())?;
    file.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(|_| cannot())?;
    read_bytes(bytes, &place, hints, voice)
}

/// Reads the bytes of a file of this name.
///
/// # Errors
/// An [`Unread`], with a remedy.
pub fn read_bytes(
    bytes: Vec<u8>,
    place: &str,
    hints: Option<&Hints>,
    voice: &Voice,
) -> Result<SessionRead, Unread> {
    if bytes.len() as u64 > MOST_BYTES {
        return Err(too_large(place, bytes.len() as u64, voice));
    }
    if bytes.iter().all(u8::is_ascii_whitespace) {
        return Err(Unread::new(place, "empty", say::empty(voice), say::empty_remedy(voice)));
    }
    match reading::recognize(&bytes) {
        Err(not_text) => Err(Unread::of(place, not_text.words(place, voice))),
        Ok(FileIs::Workbook) => of_workbook(bytes, place, hints, voice),
        Ok(FileIs::Text(encoding)) => {
            let decoder = Encoding::for_label(encoding.label().as_bytes()).unwrap_or(encoding_rs::UTF_8);
            session_of(&decoder.decode(&bytes).0, place, hints, voice)
        }
    }
}

/// Reads a text; one that is a link is opened.
///
/// # Errors
/// An [`Unread`], where nothing was found.
pub fn session_of(
    text: &str,
    place: &str,
    hints: Option<&Hints>,
    voice: &Voice,
) -> Result<SessionRead, Unread> {
    let is_one_word = text.split_whitespace().nth(1).is_none();
    if let Some(opened) = is_one_word.then(|| whole::unpack(text.trim(), voice).ok()).flatten() {
        return Ok(SessionRead {
            place: place.to_owned(),
            session: opened.session,
            question: Some(opened.question),
            problems: Vec::new(),
            notices: Vec::new(),
            doubts: Vec::new(),
        });
    }
    let read = whole::read(text, hints.unwrap_or(&Hints::default()), voice);
    if read.session.shots.is_empty() && read.session.summaries.is_empty() {
        return Err(Unread::new(place, "no_shots", say::no_shots(voice), say::no_shots_remedy(voice)));
    }
    Ok(SessionRead {
        place: place.to_owned(),
        session: read.session,
        question: read.question,
        problems: read.problems,
        notices: read.notices,
        doubts: read.doubts,
    })
}

fn of_workbook(
    bytes: Vec<u8>,
    place: &str,
    hints: Option<&Hints>,
    voice: &Voice,
) -> Result<SessionRead, Unread> {
    let sheets = sheets(bytes).map_err(|unreadable| {
        let refusal = unreadable.words(voice);
        Unread::new(place, refusal.kind, refusal.message, refusal.remedy)
    })?;
    let mut found = Vec::new();
    for sheet in sheets.iter().filter(|sheet| !sheet.text.is_empty()) {
        if let Ok(read) = session_of(&sheet.text, place, hints, voice) {
            found.push((sheet.name.as_str(), read));
        }
    }
    // Whether two sheets are two clubs of one session or two sessions, nobody here knows.
    if found.len() > 1 {
        let names: Vec<&str> = found.iter().map(|(name, _)| *name).collect();
        let message = say::several_sheets(voice, &names.join(", "));
        return Err(Unread::new(place, "several_sheets", message, say::several_sheets_remedy(voice)));
    }
    let only = found.pop().map(|(_, read)| read);
    only.ok_or_else(|| Unread::new(place, "no_shots", say::no_shots(voice), say::no_shots_remedy(voice)))
}

fn too_large(place: &str, size: u64, voice: &Voice) -> Unread {
    let megabytes = |bytes: u64| (bytes / 1_000_000).to_string();
    let message = say::too_large(voice, &megabytes(size));
    Unread::new(place, "too_large", message, say::too_large_remedy(voice, &megabytes(MOST_BYTES)))
}
