//! What a word of a heading can stand for.

use session::known::Known;

/// How strongly a heading says that its column names the builds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Claim {
    /// Says what kind of thing it is: a label like many others.
    Label,
    /// Names a part of the club.
    Part,
    /// Names the groups to be compared.
    Group,
    /// Names the club as built.
    Whole,
}

/// What a heading's word stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Word {
    Measure(Known),
    Build(Claim),
    Round,
    Number,
    Time,
    Count,
    LeftOut,
    Statistic,
    /// Text about a shot or a session: never a build, never a measure.
    Remark,
}
