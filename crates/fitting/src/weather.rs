//! Reading a text whose weather is known: carry in standard air stands among its measures, modeled and named so.
//!
//! Beside `read`, which knows nothing of flights: what it read is taken on from here.

use crate::flying::{AirRequest, in_standard_air, without_standard_air};
use crate::measure::{MeasureId, STANDARD_AIR_CARRY};
use crate::read::{self, Hints, ReadResult};
use crate::session::{Conditions, Session};

/// Shots that are brought to standard air while a text is read. A visit has hundreds at most; a hundred thousand rows
/// would keep a phone waiting for seconds.
const MOST_SHOTS: usize = 5_000;

/// Reads shots as [`read::read`] does. Where the golfer says what the weather was, or the text does, the shots get
/// their carry in standard air as one more measure, as far as they can be flown.
#[must_use]
pub fn read(text: &str, hints: &Hints) -> ReadResult {
    let mut result = read::read(text, hints);
    if let Some(told) = hints.weather {
        without_standard_air(&mut result.session);
        result.session.weather = Conditions::from_figures(told.figures(), told.temperature_unit);
    }
    if let Some(session) = standard(&result.session) {
        result.session = session;
    }
    result
}

/// The session with the added measure; `None` where it has it, has no weather, or cannot be flown.
fn standard(session: &Session) -> Option<Session> {
    let has = session.measure_index(&MeasureId::from(STANDARD_AIR_CARRY)).is_some();
    let conditions = session.weather.filter(|_| !has && session.shots.len() <= MOST_SHOTS)?;
    let air = in_standard_air(&AirRequest { session: session.clone(), conditions });
    air.ok().map(|air| air.session)
}
