//! One visit: the builds, the shots in the order they were hit, and averages that came without shots.
//!
//! Values are in canonical units (see [`crate::measure`]). Inside, a shot's values stand
//! in the order of [`Session::measures`]; at the boundary they are keyed by measure id.

use crate::measure::MeasureId;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A club as assembled: head, loft, shaft, length, weight. Known here by its name only.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Build {
    /// As the golfer wrote it. May hold anything: it is text, never markup.
    pub name: String,
}

/// A column that is no measure of the trade's list, kept under its own heading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CustomMeasure {
    /// Id made from the heading.
    pub id: MeasureId,
    /// The heading as written.
    pub name: String,
    /// Unit as written, empty when none was given.
    pub unit: String,
}

/// How builds and time lie in the session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Order {
    /// The builds were hit in turn: at least two rounds hold two builds or more.
    Interleaved,
    /// One build after the other: build and time are the same thing.
    Blocked,
    /// The order in which the shots were hit is not known.
    #[default]
    Unknown,
}

/// One shot as hit. It is never removed: leaving it out gives it a reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Shot {
    /// Index into [`Session::builds`].
    pub build: usize,
    /// The pass through the builds this shot belongs to, from 1.
    pub round: Option<u32>,
    /// The shot's own number where the source had one.
    pub number: Option<u32>,
    /// One value per entry of [`Session::measures`], `None` where nothing was read.
    pub values: Vec<Option<f64>>,
    /// Why the golfer set this shot aside, `None` when it counts.
    pub left_out: Option<String>,
}

/// What is known of one measure of one build when the shots themselves are not.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(default)]
pub struct SummaryValue {
    /// Average, in the measure's canonical unit.
    pub mean: Option<f64>,
    /// Standard deviation.
    pub sd: Option<f64>,
    /// Smallest value.
    pub low: Option<f64>,
    /// Largest value.
    pub high: Option<f64>,
}

/// Which shots an average stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SummaryOf {
    /// Every shot hit, as far as is known.
    #[default]
    All,
    /// The best shot or the best few.
    Best,
    /// "The good ones": somebody chose.
    Chosen,
}

/// Averages that a source gave for one build.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Summary {
    /// Index into [`Session::builds`].
    pub build: usize,
    /// Number of shots behind the averages, `None` when not said.
    pub n: Option<u32>,
    /// Which shots they stand for.
    #[serde(default)]
    pub of: SummaryOf,
    /// By measure id.
    pub values: BTreeMap<MeasureId, SummaryValue>,
    /// Line in the source where it stood, from 1; `None` when typed in.
    #[serde(default)]
    pub line: Option<u32>,
}

/// One visit. Shots are in the order they were hit.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(try_from = "wire::Session", into = "wire::Session")]
pub struct Session {
    /// In order of first appearance.
    pub builds: Vec<Build>,
    /// Ids of the measures that at least one shot or summary has.
    pub measures: Vec<MeasureId>,
    /// Names and units of the measures outside the trade's list.
    pub custom: Vec<CustomMeasure>,
    /// In the order hit.
    pub shots: Vec<Shot>,
    /// Averages that came with the shots or instead of them.
    pub summaries: Vec<Summary>,
    /// How builds and time lie.
    pub order: Order,
}

impl Session {
    /// Position of a measure in every shot's `values`.
    #[must_use]
    pub fn measure_index(&self, id: &MeasureId) -> Option<usize> {
        self.measures.iter().position(|m| m == id)
    }
}

/// The session as it crosses the boundary: values keyed by measure id.
pub mod wire {
    use super::{Build, CustomMeasure, MeasureId, Order, Summary};
    use serde::{Deserialize, Serialize};
    use std::collections::BTreeMap;

    /// A shot with its values keyed by measure id.
    #[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
    #[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
    pub struct Shot {
        /// Index into the session's builds.
        pub build: usize,
        /// The pass through the builds, from 1.
        #[serde(default)]
        pub round: Option<u32>,
        /// The shot's own number.
        #[serde(default)]
        pub number: Option<u32>,
        /// Canonical units; null where nothing was read.
        pub values: BTreeMap<MeasureId, Option<f64>>,
        /// Why it was set aside, null when it counts.
        #[serde(default)]
        pub left_out: Option<String>,
    }

    /// A session as plain data.
    #[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
    #[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
    pub struct Session {
        /// In order of first appearance.
        pub builds: Vec<Build>,
        /// Measure ids present.
        #[serde(default)]
        pub measures: Vec<MeasureId>,
        /// Measures outside the trade's list.
        #[serde(default)]
        pub custom: Vec<CustomMeasure>,
        /// In the order hit.
        #[serde(default)]
        pub shots: Vec<Shot>,
        /// Averages.
        #[serde(default)]
        pub summaries: Vec<Summary>,
        /// How builds and time lie.
        #[serde(default)]
        pub order: Order,
    }

    impl From<super::Session> for Session {
        fn from(session: super::Session) -> Self {
            let measures = session.measures;
            let shots = session
                .shots
                .into_iter()
                .map(|shot| Shot {
                    build: shot.build,
                    round: shot.round,
                    number: shot.number,
                    values: measures.iter().cloned().zip(shot.values).collect(),
                    left_out: shot.left_out,
                })
                .collect();
            Session {
                builds: session.builds,
                measures,
                custom: session.custom,
                shots,
                summaries: session.summaries,
                order: session.order,
            }
        }
    }

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
    }

    impl std::fmt::Display for SessionError {
        fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
            let (what, place, build, builds) = match *self {
                Self::ShotBuild { shot, build, builds } => ("shots", shot, build, builds),
                Self::SummaryBuild { summary, build, builds } => ("summaries", summary, build, builds),
            };
            write!(
                f,
                "{what}[{place}].build is {build}, but there are {builds} builds: use an index from 0 to below {builds}"
            )
        }
    }

    impl std::error::Error for SessionError {}

    impl TryFrom<Session> for super::Session {
        type Error = SessionError;

        fn try_from(session: Session) -> Result<Self, SessionError> {
            let builds = session.builds.len();
            if let Some((shot, s)) = session.shots.iter().enumerate().find(|(_, s)| s.build >= builds) {
                return Err(SessionError::ShotBuild { shot, build: s.build, builds });
            }
            if let Some((summary, s)) = session.summaries.iter().enumerate().find(|(_, s)| s.build >= builds)
            {
                return Err(SessionError::SummaryBuild { summary, build: s.build, builds });
            }
            let mut measures = session.measures;
            let mut known: std::collections::BTreeSet<MeasureId> = measures.iter().cloned().collect();
            let in_shots = session.shots.iter().flat_map(|s| s.values.keys());
            for id in in_shots.chain(session.summaries.iter().flat_map(|s| s.values.keys())) {
                if known.insert(id.clone()) {
                    measures.push(id.clone());
                }
            }
            let shots = session
                .shots
                .into_iter()
                .map(|shot| super::Shot {
                    build: shot.build,
                    round: shot.round,
                    number: shot.number,
                    values: measures
                        .iter()
                        .map(|id| shot.values.get(id).copied().flatten().filter(|v| v.is_finite()))
                        .collect(),
                    left_out: shot.left_out,
                })
                .collect();
            Ok(super::Session {
                builds: session.builds,
                measures,
                custom: session.custom,
                shots,
                summaries: session.summaries,
                order: session.order,
            })
        }
    }
}
