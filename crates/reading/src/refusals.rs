//! What whoever asked is told when something cannot be read or made into a link.

use crate::cut::file::NotText;
use crate::link::{LinkError, TooLarge};
use session::refusal::Refusal;
use text::Voice;
use text::{link, reading};

impl LinkError {
    /// As whoever opened it is told.
    #[must_use]
    pub fn words(self, voice: &Voice) -> Refusal {
        let (kind, message, remedy) = match self {
            Self::NotALink => ("not_a_link", link::not_a_link(voice), link::not_a_link_remedy(voice)),
            Self::TooLong => ("link_too_long", link::too_long(voice), link::too_long_remedy(voice)),
            Self::Later => ("link_later_version", link::later(voice), link::later_remedy(voice)),
            Self::Damaged => ("link_damaged", link::damaged(voice), link::damaged_remedy(voice)),
            Self::Inconsistent => {
                ("link_inconsistent", link::inconsistent(voice), link::inconsistent_remedy(voice))
            }
        };
        Refusal { kind: kind.into(), place: "link".into(), message, remedy }
    }
}

impl TooLarge {
    /// As whoever wanted a link is told.
    #[must_use]
    pub fn words(self, voice: &Voice) -> Refusal {
        let (place, message, remedy) = match self {
            Self::Session => ("session", link::too_large(voice), link::too_large_remedy(voice)),
            Self::Names => ("plan.builds", link::names_too_long(voice), link::names_too_long_remedy(voice)),
        };
        Refusal { kind: "too_large_for_a_link".into(), place: place.into(), message, remedy }
    }
}

impl NotText {
    /// As whoever chose the file of this name is told.
    #[must_use]
    pub fn words(self, name: &str, voice: &Voice) -> Refusal {
        let (message, remedy) = (reading::not_text(voice), reading::not_text_remedy(voice));
        Refusal { kind: "not_text".into(), place: name.into(), message, remedy }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_is_refused_with_what_to_do_instead() {
        let refusal = NotText.words("session.bin", &Voice::english());
        assert_eq!((refusal.kind.as_str(), refusal.place.as_str()), ("not_text", "session.bin"));
        assert!(refusal.remedy.contains("paste"));
    }
}
