//! Why plain data is no session.

/// Why plain data is no session.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SessionError {
    /// A shot names a build that is not in the list.
    ShotBuild {
        /// Position of the shot, from 0.
        shot: usize,
        /// The build index it names.
        build: usize,
        /// How many builds there are.
        builds: usize,
    },
    /// A summary names a build that is not in the list.
    SummaryBuild {
        /// Position of the summary, from 0.
        summary: usize,
        /// The build index it names.
        build: usize,
        /// How many builds there are.
        builds: usize,
    },
    /// The second factor has too many values, or a shot names one that it does not have.
    Second {
        /// How many values it has.
        values: usize,
    },
    /// Shots stand both one by one and as columns.
    ShotsTwice,
    /// A column is longer or shorter than the session.
    ColumnLength {
        /// Which one.
        name: String,
        /// Its length.
        got: usize,
        /// How many shots there are.
        shots: usize,
    },
    /// A count or an index in a column is no whole number.
    NotWhole {
        /// Which column.
        name: String,
        /// Position of the shot, from 0.
        shot: usize,
    },
    /// A reason or a note names a shot that is not there.
    NoSuchShot {
        /// The position it names.
        shot: usize,
        /// How many shots there are.
        shots: usize,
    },
}

/// What a code begins with.
const HEAD: &str = "no session";

/// A code and no sentence: whoever refuses puts it into words. It goes through serde, whose errors are texts, and
/// [`FromStr`](std::str::FromStr) reads it on the other side.
impl std::fmt::Display for SessionError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::ShotBuild { shot, build, builds } => write!(f, "{HEAD}|shot|{shot}|{build}|{builds}|"),
            Self::SummaryBuild { summary, build, builds } => {
                write!(f, "{HEAD}|summary|{summary}|{build}|{builds}|")
            }
            Self::Second { values } => write!(f, "{HEAD}|second|{values}|0|0|"),
            Self::ShotsTwice => write!(f, "{HEAD}|twice|0|0|0|"),
            Self::ColumnLength { name, got, shots } => write!(f, "{HEAD}|length|{got}|{shots}|0|{name}"),
            Self::NotWhole { name, shot } => write!(f, "{HEAD}|whole|{shot}|0|0|{name}"),
            Self::NoSuchShot { shot, shots } => write!(f, "{HEAD}|reason|{shot}|{shots}|0|"),
        }
    }
}

impl std::error::Error for SessionError {}

/// A text that is no code of an error here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NoSuchCode;

impl std::str::FromStr for SessionError {
    type Err = NoSuchCode;

    fn from_str(code: &str) -> Result<Self, NoSuchCode> {
        let parts: Vec<&str> = code.splitn(6, '|').collect();
        let &[HEAD, kind, one, two, three, name] = parts.as_slice() else { return Err(NoSuchCode) };
        let number = |text: &str| text.parse::<usize>().map_err(|_| NoSuchCode);
        let (one, two, three, name) = (number(one)?, number(two)?, number(three)?, name.to_owned());
        Ok(match kind {
            "shot" => Self::ShotBuild { shot: one, build: two, builds: three },
            "summary" => Self::SummaryBuild { summary: one, build: two, builds: three },
            "second" => Self::Second { values: one },
            "twice" => Self::ShotsTwice,
            "length" => Self::ColumnLength { name, got: one, shots: two },
            "whole" => Self::NotWhole { name, shot: one },
            "reason" => Self::NoSuchShot { shot: one, shots: two },
            _ => return Err(NoSuchCode),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_is_read_as_the_error_that_wrote_it() {
        let name = || "a|b".to_owned();
        for error in [
            SessionError::ShotBuild { shot: 3, build: usize::MAX, builds: 2 },
            SessionError::SummaryBuild { summary: 0, build: 2, builds: 2 },
            SessionError::Second { values: 70 },
            SessionError::ShotsTwice,
            SessionError::ColumnLength { name: name(), got: 3, shots: 2 },
            SessionError::NotWhole { name: name(), shot: 4 },
            SessionError::NoSuchShot { shot: 9, shots: 3 },
        ] {
            assert_eq!(error.to_string().parse(), Ok(error));
        }
        for other in ["", "no session", "no session|shot|x|0|0|", "no session|new|0|0|0|"] {
            assert_eq!(other.parse::<SessionError>(), Err(NoSuchCode));
        }
    }
}
