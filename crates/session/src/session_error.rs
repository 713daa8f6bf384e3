//! Why plain data is no session.

use crate::MOST_SECOND;

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

impl std::fmt::Display for SessionError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let no_such_build = |f: &mut std::fmt::Formatter<'_>,
                             place: &str,
                             at: usize,
                             build: usize,
                             builds: usize| {
            write!(
                f,
                "{place}[{at}].build is {build}, but there are {builds} builds: use an index from 0 to below {builds}"
            )
        };
        match self {
            Self::ShotBuild { shot, build, builds } => no_such_build(f, "shots", *shot, *build, *builds),
            Self::SummaryBuild { summary, build, builds } => {
                no_such_build(f, "summaries", *summary, *build, *builds)
            }
            Self::Second { values } => write!(
                f,
                "second.values holds {values}, of at most {MOST_SECOND}: every shots[].second is an index below that"
            ),
            Self::ShotsTwice => f.write_str("shots stand one by one and as columns: send one of the two"),
            Self::ColumnLength { name, got, shots } => {
                write!(f, "columns.{name} holds {got} numbers, but there are {shots} shots")
            }
            Self::NotWhole { name, shot } => {
                write!(f, "columns.{name}[{shot}] is no whole number, zero or more")
            }
            Self::NoSuchShot { shot, shots } => {
                write!(f, "a reason or a note is of shot {shot}, but there are {shots} shots, counted from 0")
            }
        }
    }
}

impl std::error::Error for SessionError {}
