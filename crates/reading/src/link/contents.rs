//! The session's own sections: builds and order, measures, shots, what was left out and why, notes, averages.

use super::bytes::{Broken, Reader, Writer};
use super::codes::{self, ORDERS, SUMMARIES_OF};
use super::limits::{self, MOST_MEASURES, MOST_SHOTS, MOST_SUMMARIES};
use super::{column, series, tag};
use session::MOST_BUILDS;
use session::known::Known;
use session::measure::{self, MeasureId, Unit};
use session::{Build, CustomMeasure, Session, Shot, Summary, SummaryValue};

/// A measure written by its id; then come the session's own columns in their order, then the trade's codes.
const BY_ID: usize = 0;

/// Writes every section of the session.
pub(crate) fn write(out: &mut Writer, session: &Session, measures: &[MeasureId]) {
    out.section(tag::BUILDS, builds(session));
    out.section(tag::MEASURES, measures_section(session, measures));
    out.section(tag::SHOTS, shots(session, measures));
    out.section(tag::LEFT_OUT, said(session, |shot| shot.left_out.as_deref()));
    out.section(tag::NOTES, said(session, |shot| shot.note.as_deref()));
    out.section(tag::SUMMARIES, summaries(session, measures));
}

fn builds(session: &Session) -> Writer {
    let mut out = Writer::default();
    out.byte(codes::code(&ORDERS, &session.order).unwrap_or(0));
    out.length(session.builds.len());
    session.builds.iter().for_each(|build| out.text(&build.name));
    out
}

/// Reads builds and order.
pub(crate) fn read_builds(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    session.order = *ORDERS.get(usize::from(input.byte()?)).ok_or(Broken)?;
    for _ in 0..input.length(MOST_BUILDS)? {
        session.builds.push(Build { name: input.text()? });
    }
    Ok(())
}

fn measures_section(session: &Session, measures: &[MeasureId]) -> Writer {
    let mut out = Writer::default();
    if measures.is_empty() && session.custom.is_empty() {
        return out;
    }
    out.length(session.custom.len());
    for CustomMeasure { id, name, unit } in &session.custom {
        [id.as_str(), name, unit].into_iter().for_each(|text| out.text(text));
    }
    out.length(measures.len());
    for id in measures {
        let own = session.custom.iter().position(|custom| custom.id == *id);
        match (own, id.known()) {
            (Some(at), _) => out.length(1 + at),
            (None, Some(known)) => {
                out.length(1 + session.custom.len() + usize::from(known.facts().link_code))
            }
            (None, None) => {
                out.length(BY_ID);
                out.text(id.as_str());
            }
        }
    }
    out
}

/// Reads the session's own columns, and which measures it has.
pub(crate) fn read_measures(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    for _ in 0..input.length(MOST_MEASURES)? {
        let (id, name, unit) = (MeasureId::from(input.text()?), input.text()?, input.text()?);
        session.custom.push(CustomMeasure { id, name, unit });
    }
    for _ in 0..input.length(MOST_MEASURES)? {
        let own = session.custom.len();
        let id = match input.length(own + Known::ALL.len())? {
            BY_ID => MeasureId::from(input.text()?),
            at if at <= own => session.custom[at - 1].id.clone(),
            at => codes::measure(at - 1 - own)?.into(),
        };
        session.measures.push(id);
    }
    Ok(())
}

fn unit_of(id: &MeasureId) -> Option<Unit> {
    measure::known(id).map(|known| known.unit)
}

fn shots(session: &Session, measures: &[MeasureId]) -> Writer {
    let mut out = Writer::default();
    if session.shots.is_empty() {
        return out;
    }
    let kinds = session.builds.len();
    let whole = |of: &dyn Fn(&Shot) -> Option<i64>| session.shots.iter().map(of).collect::<Vec<_>>();
    let of: Vec<usize> = session.shots.iter().map(|shot| shot.build).collect();
    out.length(of.len());
    series::write(&mut out, &whole(&|shot| i64::try_from(shot.build).ok()), &[], 1);
    series::write(&mut out, &whole(&|shot| shot.round.map(i64::from)), &of, kinds);
    series::write(&mut out, &whole(&|shot| shot.number.map(i64::from)), &of, kinds);
    for (at, id) in measures.iter().enumerate() {
        let value = |shot: &Shot| shot.values.get(at).copied().flatten().filter(|value| value.is_finite());
        let values: Vec<Option<f64>> = session.shots.iter().map(value).collect();
        column::write(&mut out, &values, unit_of(id), &of, kinds);
    }
    out
}

/// Reads the shots; builds and measures must have been read. Gives the measures that were rounded.
pub(crate) fn read_shots(input: &mut Reader<'_>, session: &mut Session) -> Result<Vec<MeasureId>, Broken> {
    read_columns(input, session, false)
}

/// Reads the shots as far as they go: columns that are not whole, and their measures, are not there.
pub(crate) fn read_shots_in_part(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    read_columns(input, session, true)?;
    let Session { custom, measures, .. } = session;
    custom.retain(|own| measures.contains(&own.id));
    Ok(())
}

fn read_columns(
    input: &mut Reader<'_>,
    session: &mut Session,
    in_part: bool,
) -> Result<Vec<MeasureId>, Broken> {
    let count = input.length(MOST_SHOTS)?;
    let kinds = session.builds.len();
    if !limits::fits(kinds, count, &session.measures, 0) {
        return Err(Broken);
    }
    let mut of = Vec::with_capacity(count);
    for build in series::read(input, &vec![0; count], 1)? {
        let build = build.and_then(|build| usize::try_from(build).ok()).filter(|&build| build < kinds);
        of.push(build.ok_or(Broken)?);
    }
    let rounds = small(series::read(input, &of, kinds)?)?;
    let numbers = small(series::read(input, &of, kinds)?)?;
    session.shots = of
        .iter()
        .zip(rounds.into_iter().zip(numbers))
        .map(|(&build, (round, number))| {
            let values = Vec::with_capacity(session.measures.len());
            Shot { build, round, number, values, ..Shot::default() }
        })
        .collect();
    let mut rounded = Vec::new();
    let mut whole = 0;
    for id in &session.measures {
        let column = match column::read(input, unit_of(id), &of, kinds) {
            Ok(column) => column,
            Err(Broken) if in_part => break,
            Err(Broken) => return Err(Broken),
        };
        if column.rounded {
            rounded.push(id.clone());
        }
        for (shot, value) in session.shots.iter_mut().zip(column.values) {
            shot.values.push(value);
        }
        whole += 1;
    }
    session.measures.truncate(whole);
    Ok(rounded)
}

/// Rounds and shot numbers fit 32 bits.
fn small(values: Vec<Option<i64>>) -> Result<Vec<Option<u32>>, Broken> {
    let small = |value: Option<i64>| match value {
        Some(value) => u32::try_from(value).map(Some).map_err(|_| Broken),
        None => Ok(None),
    };
    values.into_iter().map(small).collect()
}

/// What was said of single shots: each text once, then the shots it was said of by how many lie between.
fn said(session: &Session, of: fn(&Shot) -> Option<&str>) -> Writer {
    let mut out = Writer::default();
    let said: Vec<(usize, &str)> =
        session.shots.iter().enumerate().filter_map(|(at, shot)| Some((at, of(shot)?))).collect();
    if said.is_empty() {
        return out;
    }
    let mut texts: Vec<&str> = Vec::new();
    for (_, text) in &said {
        if !texts.contains(text) {
            texts.push(text);
        }
    }
    out.length(texts.len());
    texts.iter().for_each(|text| out.text(text));
    out.length(said.len());
    let mut next = 0;
    for (at, text) in said {
        out.length(at - next);
        out.length(texts.iter().position(|one| *one == text).unwrap_or(0));
        next = at + 1;
    }
    out
}

/// Reads which shots were left out and why; the shots must have been read.
pub(crate) fn read_left_out(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    read_said(input, session, |shot, why| shot.left_out = Some(why))
}

/// Reads what was noted of shots; the shots and what was left out must have been read.
pub(crate) fn read_notes(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    read_said(input, session, |shot, note| shot.note = Some(note).filter(|note| !note.is_empty()))
}

fn read_said(
    input: &mut Reader<'_>,
    session: &mut Session,
    put: fn(&mut Shot, String),
) -> Result<(), Broken> {
    let mut texts = Vec::new();
    for _ in 0..input.length(session.shots.len())? {
        texts.push(input.text()?);
    }
    let mut at = 0_usize;
    let mut bytes = limits::said(session);
    for _ in 0..input.length(session.shots.len())? {
        at += input.length(session.shots.len())?;
        let text = texts.get(input.length(texts.len())?).ok_or(Broken)?;
        bytes += text.len();
        if !limits::fits(session.builds.len(), session.shots.len(), &session.measures, bytes) {
            return Err(Broken);
        }
        put(session.shots.get_mut(at).ok_or(Broken)?, text.clone());
        at += 1;
    }
    Ok(())
}

fn summaries(session: &Session, measures: &[MeasureId]) -> Writer {
    let mut out = Writer::default();
    if session.summaries.is_empty() {
        return out;
    }
    out.length(session.summaries.len());
    for summary in &session.summaries {
        out.length(summary.build);
        out.maybe(summary.n);
        out.byte(codes::code(&SUMMARIES_OF, &summary.of).unwrap_or(0));
        out.maybe(summary.line);
        for id in measures {
            let Some(entry) = summary.values.get(id) else {
                out.byte(0);
                continue;
            };
            let figures = figures(entry);
            let there = |at: usize| u8::from(figures[at].is_some()) << at;
            out.byte(0x10 | there(0) | there(1) | there(2) | there(3));
            figures.into_iter().flatten().for_each(|figure| out.number(figure));
        }
    }
    out
}

fn figures(entry: &SummaryValue) -> [Option<f64>; 4] {
    [entry.mean, entry.sd, entry.low, entry.high].map(|figure| figure.filter(|f| f.is_finite()))
}

/// Reads the averages; builds, measures and shots must have been read.
pub(crate) fn read_summaries(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    let count = input.length(MOST_SUMMARIES)?;
    if !limits::fits(session.builds.len(), session.shots.len() + count, &session.measures, 0) {
        return Err(Broken);
    }
    for _ in 0..count {
        let build = input.length(session.builds.len())?;
        if build == session.builds.len() {
            return Err(Broken);
        }
        let n = input.maybe()?;
        let of = *SUMMARIES_OF.get(usize::from(input.byte()?)).ok_or(Broken)?;
        let line = input.maybe()?;
        let mut values = session::few::Map::default();
        for id in &session.measures {
            let there = input.byte()?;
            if there == 0 {
                continue;
            }
            let mut figure = |at: u8| if there & 1 << at == 0 { Ok(None) } else { input.number().map(Some) };
            let entry = SummaryValue { mean: figure(0)?, sd: figure(1)?, low: figure(2)?, high: figure(3)? };
            values.insert(id.clone(), entry);
        }
        session.summaries.push(Summary { build, n, of, values, line });
    }
    Ok(())
}
