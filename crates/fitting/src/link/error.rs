//! Why a text is no link that can be opened, and what to do about it.

use crate::check::Refusal;

/// Why a link cannot be opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LinkError {
    /// The text does not begin as links do.
    NotALink,
    /// Longer than any link.
    TooLong,
    /// Made by a later version, in a form that this one cannot read at all.
    Later,
    /// Cut off, or letters of it changed on the way.
    Damaged,
    /// Whole, but what it holds does not fit together: no version of this tool made it.
    Inconsistent,
}

impl From<LinkError> for Refusal {
    fn from(error: LinkError) -> Self {
        let (kind, message, remedy) = match error {
            LinkError::NotALink => (
                "not_a_link",
                "This is no link that holds a session or a plan.",
                "Copy the whole address, from https up to its last letter.",
            ),
            LinkError::TooLong => {
                ("link_too_long", "This is longer than any link.", "Ask for the file with the shots instead.")
            }
            LinkError::Later => (
                "link_later_version",
                "A newer version of this page made this link.",
                "Reload the page to get the newest version, then open the link again.",
            ),
            LinkError::Damaged => (
                "link_damaged",
                "This link is not whole: it was cut off or changed on its way.",
                "Copy the whole address again from where it was first written, or ask its sender for it again.",
            ),
            LinkError::Inconsistent => (
                "link_inconsistent",
                "What this link holds does not fit together.",
                "Ask the sender to share it again.",
            ),
        };
        Self { kind: kind.into(), place: "link".into(), message: message.into(), remedy: remedy.into() }
    }
}

impl std::fmt::Display for LinkError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Refusal { message, remedy, .. } = (*self).into();
        write!(f, "{message} {remedy}")
    }
}

impl std::error::Error for LinkError {}
