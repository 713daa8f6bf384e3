//! Tagged sections and a check sum as the text of a link, and back to the sections.

use super::bytes::{Broken, Reader, Writer, check_sum};
use super::error::LinkError;
use super::limits::MOST_CHARACTERS;
use super::{base64, tag};

/// The version that stands in front of a link's text. It changes only if sections alone cannot say what is new.
const VERSION: &str = "1";

/// The text of these sections with their check sum; `None` when no address is that long.
pub(crate) fn sealed(mut sections: Writer) -> Option<String> {
    let sum = check_sum(&sections.0);
    sections.0.extend(sum);
    let text = format!("{VERSION}.{}", base64::encode(&sections.0));
    (text.len() <= MOST_CHARACTERS).then_some(text)
}

/// The bytes behind the version and the point.
pub(crate) fn bytes_of(text: &str) -> Result<Vec<u8>, LinkError> {
    let letters = letters_of(text)?;
    let whole = base64::decode(&letters);
    if !whole.as_deref().is_some_and(is_whole) {
        // A dash or an underscore behind a link can be of the link or of the sentence around it.
        let shorter = (1..=MOST_MARKS)
            .map_while(|marks| letters.split_at_checked(letters.len().checked_sub(marks)?))
            .take_while(|(_, marks)| marks.iter().all(|mark| b"-_".contains(mark)))
            .find_map(|(link, _)| base64::decode(link).filter(|bytes| is_whole(bytes)));
        if let Some(shorter) = shorter {
            return Ok(shorter);
        }
    }
    whole.ok_or(LinkError::Damaged)
}

/// Most marks behind a link that letters of a link can be, too.
const MOST_MARKS: usize = 3;

fn is_whole(bytes: &[u8]) -> bool {
    bytes.split_last_chunk::<4>().is_some_and(|(content, sum)| check_sum(content) == *sum)
}

/// The letters behind the version and the point, as far as they go.
fn letters_of(text: &str) -> Result<Vec<u8>, LinkError> {
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
    Ok(without_what_follows(&rest[1..]).to_vec())
}

/// A link in a sentence or a forum gets a point, a bracket or somebody's own parameters behind it. Whether what is
/// left is whole, the check sum says.
fn without_what_follows(text: &[u8]) -> &[u8] {
    let end = text.iter().position(|&character| !base64::holds(character)).unwrap_or(text.len());
    &text[..end]
}

/// The bytes of a link that was cut off, as far as they go. None of one that has its whole length: any letter of it may
/// be another, and of one that is no link.
pub(crate) fn bytes_before_the_cut(text: &str) -> Option<Vec<u8>> {
    let letters = letters_of(text).ok()?;
    let bytes = base64::decode(&letters[..letters.len() / 4 * 4])?;
    let mut whole = Sections::default();
    let has_its_length = base64::decode(&letters)
        .as_deref()
        .and_then(|bytes| bytes.split_last_chunk::<4>())
        .is_some_and(|(content, _)| whole.sort(content).is_ok());
    (!has_its_length).then_some(bytes)
}

/// The sections of a link by what they hold.
#[derive(Default)]
pub(crate) struct Sections<'a> {
    known: [Option<&'a [u8]>; tag::LAST],
    /// How many this version does not know.
    pub(crate) unknown: usize,
}

impl<'a> Sections<'a> {
    /// Of the bytes of a link, once its check sum is right.
    pub(crate) fn of(bytes: &'a [u8]) -> Result<Self, LinkError> {
        let (content, sum) = bytes.split_last_chunk::<4>().ok_or(LinkError::Damaged)?;
        if check_sum(content) != *sum {
            return Err(LinkError::Damaged);
        }
        let mut sections = Self::default();
        sections.sort(content).map_err(|Broken| LinkError::Inconsistent)?;
        Ok(sections)
    }

    /// What stands whole before a cut; the section that was cut is there as far as it goes, and named.
    pub(crate) fn before_the_cut(bytes: &'a [u8]) -> (Self, Option<u64>) {
        let mut sections = Self::default();
        let mut input = Reader(bytes);
        while !input.is_empty() {
            let (Ok(tag), Ok(length)) = (input.whole(), input.whole()) else { break };
            let left = input.0.len();
            let length = usize::try_from(length).unwrap_or(usize::MAX);
            let cut = length > left;
            let Ok(section) = input.take(length.min(left)) else { break };
            let slot = usize::try_from(tag).ok().and_then(|tag| sections.known.get_mut(tag.checked_sub(1)?));
            if let Some(slot @ None) = slot {
                *slot = Some(section);
            }
            if cut {
                return (sections, Some(tag));
            }
        }
        (sections, None)
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
    pub(crate) fn section(&self, tag: u64) -> Option<Reader<'a>> {
        usize::try_from(tag).ok().and_then(|tag| *self.known.get(tag.checked_sub(1)?)?).map(Reader)
    }
}
