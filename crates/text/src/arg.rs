//! What a message is given, as it crosses from its typed function to its pattern.

/// One of the things a message is given.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Arg<'a> {
    Text(&'a str),
    Count(usize),
    Flag(bool),
}
