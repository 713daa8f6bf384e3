//! The shots of a session as columns: what a host hands over and back whole, where thousands of objects would cost more
//! than the work on them.

use crate::few::Map;
use crate::measure::MeasureId;
use crate::session_error::SessionError;
use crate::{Session, Shot};
use serde::de::{Deserialize, Deserializer, SeqAccess, Visitor};
use serde::{Deserialize as Derive, Serialize};
use std::fmt;

/// One number for each shot; where a shot has none, something that is no number.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(type = "Float64Array | Array<number | null>"))]
pub struct Column(pub Vec<f64>);

/// The shots of a session, a column for each thing that is known of them, in the order hit.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Derive)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Columns {
    /// Index into the session's builds; every shot has one.
    pub build: Column,
    /// The pass through the builds, from 1; empty when no shot has one.
    #[serde(default)]
    pub round: Column,
    /// The shot's own number; empty when no shot has one.
    #[serde(default)]
    pub number: Column,
    /// Index into the values of the session's second factor; empty when no shot has one.
    #[serde(default)]
    pub second: Column,
    /// Canonical units, by measure id.
    #[cfg_attr(feature = "typescript", ts(as = "std::collections::BTreeMap<MeasureId, Column>"))]
    pub values: Map<MeasureId, Column>,
    /// Positions of shots that were set aside, each with its reason.
    #[serde(default)]
    pub left_out: Vec<(usize, String)>,
    /// Positions of shots with a note, each with it.
    #[serde(default)]
    pub notes: Vec<(usize, String)>,
}

impl Columns {
    /// The shots of a session as columns.
    #[must_use]
    pub fn of(session: &Session) -> Self {
        let shots = &session.shots;
        let column = |of: &dyn Fn(&Shot) -> Option<u32>| {
            let known = shots.iter().any(|shot| of(shot).is_some());
            let all = shots.iter().map(|shot| of(shot).map_or(f64::NAN, f64::from));
            Column(if known { all.collect() } else { Vec::new() })
        };
        let texts = |of: &dyn Fn(&Shot) -> Option<&String>| {
            shots.iter().enumerate().filter_map(|(at, shot)| Some((at, of(shot)?.clone()))).collect()
        };
        let values = session.measures.iter().enumerate().map(|(index, id)| {
            let value = |shot: &Shot| shot.values.get(index).copied().flatten().unwrap_or(f64::NAN);
            (id.clone(), Column(shots.iter().map(value).collect()))
        });
        Self {
            build: Column(shots.iter().map(|shot| shot.build as f64).collect()),
            round: column(&|shot| shot.round),
            number: column(&|shot| shot.number),
            second: column(&|shot| shot.second),
            values: values.collect(),
            left_out: texts(&|shot| shot.left_out.as_ref()),
            notes: texts(&|shot| shot.note.as_ref()),
        }
    }

    /// The shots again, their values in the order of these measures.
    pub(crate) fn shots(self, measures: &[MeasureId], builds: usize) -> Result<Vec<Shot>, SessionError> {
        let n = self.build.0.len();
        let named = [("round", &self.round), ("number", &self.number), ("second", &self.second)];
        let with_values = self.values.iter().map(|(id, column)| (id.as_str(), column));
        if let Some((name, column)) = named
            .into_iter()
            .chain(with_values)
            .find(|(_, column)| !column.0.is_empty() && column.0.len() != n)
        {
            return Err(SessionError::ColumnLength { name: name.to_owned(), got: column.0.len(), shots: n });
        }
        let columns: Vec<Option<&Column>> = measures.iter().map(|id| self.values.get(id)).collect();
        let mut shots = Vec::with_capacity(n);
        for at in 0..n {
            let build = whole("build", at, &self.build)?.map_or(usize::MAX, |build| build as usize);
            if build >= builds {
                return Err(SessionError::ShotBuild { shot: at, build, builds });
            }
            let value = |column: &Option<&Column>| {
                column.and_then(|c| c.0.get(at)).copied().filter(|v| v.is_finite())
            };
            shots.push(Shot {
                build,
                round: whole("round", at, &self.round)?,
                number: whole("number", at, &self.number)?,
                second: whole("second", at, &self.second)?,
                values: columns.iter().map(value).collect(),
                ..Shot::default()
            });
        }
        for (at, reason) in self.left_out {
            shots.get_mut(at).ok_or(SessionError::NoSuchShot { shot: at, shots: n })?.left_out = Some(reason);
        }
        for (at, note) in self.notes {
            let shot = shots.get_mut(at).ok_or(SessionError::NoSuchShot { shot: at, shots: n })?;
            shot.note = Some(note).filter(|note| !note.is_empty());
        }
        Ok(shots)
    }
}

/// A count or an index; `None` where there is no number.
fn whole(name: &str, at: usize, column: &Column) -> Result<Option<u32>, SessionError> {
    let Some(value) = column.0.get(at).copied().filter(|value| !value.is_nan()) else { return Ok(None) };
    let is_whole = value >= 0.0 && value <= f64::from(u32::MAX) && value.trunc().to_bits() == value.to_bits();
    if !is_whole {
        return Err(SessionError::NotWhole { name: name.to_owned(), shot: at });
    }
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole, and within what the type holds"
    )]
    Ok(Some(value as u32))
}

struct Numbers;

impl<'de> Visitor<'de> for Numbers {
    type Value = Column;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a sequence")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Column, A::Error> {
        let mut all = Vec::with_capacity(items.size_hint().unwrap_or(0));
        while let Some(item) = items.next_element::<Option<f64>>()? {
            all.push(item.unwrap_or(f64::NAN));
        }
        Ok(Column(all))
    }
}

impl<'de> Deserialize<'de> for Column {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_seq(Numbers)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wire;

    fn session() -> Session {
        let text = r#"{"builds": [{"name": "Own"}, {"name": "B"}], "second": {"name": "Ball", "values": ["soft", "hard"]},
            "shots": [
                {"build": 0, "round": 1, "number": 7, "values": {"carry": 250.5}, "second": 1},
                {"build": 1, "round": 1, "values": {"carry": null, "offline": -3}, "left_out": "mishit"},
                {"build": 1, "values": {"carry": 261}, "note": "wind"}
            ]}"#;
        serde_json::from_str(text).expect("a session")
    }

    fn in_columns(session: &Session) -> wire::Session {
        let whole = wire::Session::from(session.clone());
        wire::Session { shots: Vec::new(), columns: Some(Columns::of(session)), ..whole }
    }

    #[test]
    fn a_session_in_columns_is_the_same_session() {
        assert_eq!(Session::try_from(in_columns(&session())), Ok(session()));
        // As text there is no number that is none: it is null.
        let text = serde_json::to_string(&in_columns(&session())).expect("JSON");
        assert_eq!(serde_json::from_str::<Session>(&text).expect("a session"), session());
    }

    #[test]
    fn columns_that_do_not_fit_together_are_refused_with_their_place() {
        let wrong = |change: &dyn Fn(&mut Columns)| {
            let mut whole = in_columns(&session());
            whole.columns.iter_mut().for_each(change);
            Session::try_from(whole).expect_err("a refusal")
        };
        let no_such_build = SessionError::ShotBuild { shot: 2, build: 2, builds: 2 };
        assert_eq!(wrong(&|c| c.build.0[2] = 2.0), no_such_build);
        let not_whole = |name: &str, shot| SessionError::NotWhole { name: name.to_owned(), shot };
        assert_eq!(wrong(&|c| c.build.0[1] = 0.5), not_whole("build", 1));
        assert_eq!(wrong(&|c| c.round.0[0] = -1.0), not_whole("round", 0));
        let length = SessionError::ColumnLength { name: "number".into(), got: 1, shots: 3 };
        assert_eq!(wrong(&|c| c.number.0.truncate(1)), length);
        assert_eq!(
            wrong(&|c| c.left_out.push((3, "x".into()))),
            SessionError::NoSuchShot { shot: 3, shots: 3 }
        );
        assert!(matches!(wrong(&|c| c.second.0[0] = 2.0), SessionError::Second { .. }));
        let twice = wire::Session { columns: Some(Columns::default()), ..wire::Session::from(session()) };
        assert_eq!(Session::try_from(twice), Err(SessionError::ShotsTwice));
    }
}
