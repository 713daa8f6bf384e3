//! The sections of what a session tells beside its shots: what else changed, and the weather.

use super::bytes::{Broken, Reader, Writer};
use super::codes::{self, TEMPERATURE_UNITS};
use super::{series, tag};
use session::{Conditions, MOST_SECOND, SecondFactor, Session};

/// Writes what there is to tell.
pub(crate) fn write(out: &mut Writer, session: &Session) {
    out.section(tag::SECOND, second(session));
    out.section(tag::WEATHER, weather(session));
}

fn second(session: &Session) -> Writer {
    let mut out = Writer::default();
    let Some(SecondFactor { name, values }) = &session.second else { return out };
    out.text(name);
    out.length(values.len().min(MOST_SECOND));
    values.iter().take(MOST_SECOND).for_each(|value| out.text(value));
    let places: Vec<Option<i64>> = session.shots.iter().map(|shot| shot.second.map(i64::from)).collect();
    if !places.is_empty() {
        series::write(&mut out, &places, &[], 1);
    }
    out
}

/// Reads what else changed; the shots must have been read.
pub(crate) fn read_second(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    let mut second = SecondFactor { name: input.text()?, values: Vec::new() };
    for _ in 0..input.length(MOST_SECOND)? {
        second.values.push(input.text()?);
    }
    let count = second.values.len();
    if !session.shots.is_empty() {
        let places = series::read(input, &vec![0; session.shots.len()], 1)?;
        for (shot, place) in session.shots.iter_mut().zip(places) {
            let place = place.map(|place| u32::try_from(place).map_err(|_| Broken)).transpose()?;
            if place.is_some_and(|place| place as usize >= count) {
                return Err(Broken);
            }
            shot.second = place;
        }
    }
    session.second = Some(second);
    Ok(())
}

fn weather(session: &Session) -> Writer {
    let mut out = Writer::default();
    if let Some(weather) = &session.weather {
        out.byte(codes::code(&TEMPERATURE_UNITS, &weather.temperature_unit).unwrap_or(0));
        weather.figures().into_iter().for_each(|figure| out.maybe_number(figure));
    }
    out
}

/// Reads the weather.
pub(crate) fn read_weather(input: &mut Reader<'_>, session: &mut Session) -> Result<(), Broken> {
    let unit = *TEMPERATURE_UNITS.get(usize::from(input.byte()?)).ok_or(Broken)?;
    let mut figures = [None; 5];
    for figure in &mut figures {
        *figure = input.maybe_number()?;
    }
    session.weather = Conditions::from_figures(figures, unit);
    Ok(())
}
