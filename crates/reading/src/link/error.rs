//! Why a text is no link that can be opened, and why something is no link that can be made.

use session::question::Misfit;

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

/// Why a session and its question cannot be packed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PackError {
    /// The question does not belong to the session.
    DoesNotFit(Misfit),
    /// No link can hold what it should.
    TooLarge(TooLarge),
}

/// What is too large for any address.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TooLarge {
    /// The shots and averages of a session.
    Session,
    /// The names of a plan's builds.
    Names,
}

impl From<Misfit> for PackError {
    fn from(misfit: Misfit) -> Self {
        Self::DoesNotFit(misfit)
    }
}

impl From<TooLarge> for PackError {
    fn from(what: TooLarge) -> Self {
        Self::TooLarge(what)
    }
}
