//! Why a text is no link that can be opened, and what to do about it.

use session::refusal::Refusal;
use text::link as say;

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
            LinkError::NotALink => ("not_a_link", say::not_a_link(), say::not_a_link_remedy()),
            LinkError::TooLong => ("link_too_long", say::too_long(), say::too_long_remedy()),
            LinkError::Later => ("link_later_version", say::later(), say::later_remedy()),
            LinkError::Damaged => ("link_damaged", say::damaged(), say::damaged_remedy()),
            LinkError::Inconsistent => ("link_inconsistent", say::inconsistent(), say::inconsistent_remedy()),
        };
        Self { kind: kind.into(), place: "link".into(), message, remedy }
    }
}

impl std::fmt::Display for LinkError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Refusal { message, remedy, .. } = (*self).into();
        write!(f, "{message} {remedy}")
    }
}

impl std::error::Error for LinkError {}
