//! The session as it crosses the boundary: values keyed by measure id.

use crate::columns::Columns;
use crate::few::Map;
use crate::measure::MeasureId;
pub use crate::session_error::SessionError;
use crate::{Build, Conditions, CustomMeasure, MOST_SECOND, Order, SecondFactor, Summary};
use serde::de::Error;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// A shot with its values keyed by measure id.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
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
    #[cfg_attr(feature = "typescript", ts(as = "std::collections::BTreeMap<MeasureId, Option<f64>>"))]
    pub values: Map<MeasureId, Option<f64>>,
    /// Why it was set aside, null when it counts.
    #[serde(default)]
    pub left_out: Option<String>,
    /// What the golfer noted of it, such as `mishit`; it counts all the same.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub note: Option<String>,
    /// Index into the values of the session's second factor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub second: Option<u32>,
}

/// A session as plain data.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
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
    /// The same as columns, in the place of `shots`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub columns: Option<Columns>,
    /// Averages.
    #[serde(default)]
    pub summaries: Vec<Summary>,
    /// How builds and time lie.
    #[serde(default)]
    pub order: Order,
    /// What else changed during the session.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub second: Option<SecondFactor>,
    /// The weather.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "typescript", ts(optional))]
    pub weather: Option<Conditions>,
}

impl Serialize for crate::Session {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Session::from(self.clone()).serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for crate::Session {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Session::deserialize(deserializer)?.try_into().map_err(D::Error::custom)
    }
}

impl From<crate::Session> for Session {
    fn from(session: crate::Session) -> Self {
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
                note: shot.note,
                second: shot.second,
            })
            .collect();
        Session {
            builds: session.builds,
            measures,
            custom: session.custom,
            shots,
            columns: None,
            summaries: session.summaries,
            order: session.order,
            second: session.second,
            weather: session.weather,
        }
    }
}

impl TryFrom<Session> for crate::Session {
    type Error = SessionError;

    fn try_from(session: Session) -> Result<Self, SessionError> {
        let builds = session.builds.len();
        if let Some((shot, s)) = session.shots.iter().enumerate().find(|(_, s)| s.build >= builds) {
            return Err(SessionError::ShotBuild { shot, build: s.build, builds });
        }
        if let Some((summary, s)) = session.summaries.iter().enumerate().find(|(_, s)| s.build >= builds) {
            return Err(SessionError::SummaryBuild { summary, build: s.build, builds });
        }
        let mut measures = session.measures;
        let mut known: crate::few::Set<MeasureId> = measures.iter().cloned().collect();
        let in_shots = session.shots.iter().flat_map(|s| s.values.keys());
        let in_columns = session.columns.iter().flat_map(|columns| columns.values.keys());
        let in_summaries = session.summaries.iter().flat_map(|s| s.values.keys());
        for id in in_shots.chain(in_columns).chain(in_summaries) {
            if known.insert(id.clone()) {
                measures.push(id.clone());
            }
        }
        let mut shots = match session.columns {
            Some(_) if !session.shots.is_empty() => return Err(SessionError::ShotsTwice),
            Some(columns) => columns.shots(&measures, builds)?,
            None => session.shots.into_iter().map(|shot| one_by_one(shot, &measures)).collect(),
        };
        let (second, merged) = settled(session.second, &shots)?;
        for shot in &mut shots {
            shot.second = shot.second.and_then(|at| merged.get(at as usize).copied());
        }
        Ok(crate::Session {
            builds: session.builds,
            measures,
            custom: session.custom,
            shots,
            summaries: session.summaries,
            order: session.order,
            second,
            weather: session.weather.filter(|weather| weather.figures().iter().any(Option::is_some)),
        })
    }
}

/// A shot with its values in the order of the measures.
fn one_by_one(shot: Shot, measures: &[MeasureId]) -> crate::Shot {
    let value = |id: &MeasureId| shot.values.get(id).copied().flatten().filter(|v| v.is_finite());
    crate::Shot {
        build: shot.build,
        round: shot.round,
        number: shot.number,
        values: measures.iter().map(value).collect(),
        left_out: shot.left_out,
        note: shot.note.filter(|note| !note.is_empty()),
        second: shot.second,
    }
}

/// The second factor with each value once, and where each of its values then stands.
fn settled(
    second: Option<SecondFactor>,
    shots: &[crate::Shot],
) -> Result<(Option<SecondFactor>, Vec<u32>), SessionError> {
    let SecondFactor { name, values } = second.clone().unwrap_or_default();
    let named = shots.iter().filter_map(|shot| shot.second);
    if values.len() > MOST_SECOND || named.max().is_some_and(|at| at as usize >= values.len()) {
        return Err(SessionError::Second { values: values.len() });
    }
    let mut once: Vec<String> = Vec::new();
    let mut at = Vec::new();
    for value in values {
        let place = once.iter().position(|known| *known == value).unwrap_or(once.len());
        if place == once.len() {
            once.push(value);
        }
        at.extend(u32::try_from(place));
    }
    Ok((second.map(|_| SecondFactor { name, values: once }), at))
}
