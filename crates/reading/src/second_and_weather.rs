//! What a session tells beside its shots, written in files of our own and joined from several texts.

use session::{Conditions, MOST_SECOND, SecondFactor, Session};

/// A second factor as a file names it, each value once.
pub(crate) fn written(name: String, values: impl Iterator<Item = String>) -> SecondFactor {
    let mut factor = SecondFactor { name, values: Vec::new() };
    for value in values {
        if !factor.values.contains(&value) {
            factor.values.push(value);
        }
    }
    factor
}

/// Where a value stands, added while there is room: somebody may have changed it in a spreadsheet.
pub(crate) fn place_of(second: &mut Option<SecondFactor>, value: &str) -> Option<u32> {
    let values = &mut second.as_mut()?.values;
    let place = values.iter().position(|known| known == value);
    if place.is_none() && values.len() < MOST_SECOND {
        values.push(value.to_owned());
    }
    place
        .or_else(|| values.len().checked_sub(1).filter(|&last| values[last] == value))
        .and_then(|at| at.try_into().ok())
}

/// Takes the values of one session's second factor into the joined one, and says where each then stands. What changed
/// under two names is named by both.
pub(crate) fn joined(all: &mut Option<SecondFactor>, one: Option<&SecondFactor>) -> Vec<u32> {
    let Some(one) = one else { return Vec::new() };
    let into = all.get_or_insert_with(|| SecondFactor { name: one.name.clone(), values: Vec::new() });
    if !into.name.split(", ").any(|name| name.eq_ignore_ascii_case(&one.name)) {
        into.name = format!("{}, {}", into.name, one.name);
    }
    one.values.iter().map_while(|value| place_of(all, value)).collect()
}

/// The weather of sessions joined: known where all of them had the same.
pub(crate) fn same_weather(sessions: &[Session]) -> Option<Conditions> {
    let weather = sessions.first()?.weather;
    weather.filter(|_| sessions.iter().all(|session| session.weather == weather))
}
