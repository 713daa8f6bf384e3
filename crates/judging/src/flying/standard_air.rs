//! Air and wind of a session as a golfer knows them, and carries brought to standard air.
//!
//! By ratio: only the change of air is modeled, the golfer's own ball and device stay in the number. Real wind grows
//! with height, so a reading at the ground usually understates it: an estimate, and labeled as one.

use super::{AirRefused, Columns, NEEDED, NotConditions, flown, launch_of};
use flight::{Air, Station, TimeStep, Wind};
use serde::Serialize;
use session::known::Known;
use session::measure::{MeasureId, STANDARD_AIR_CARRY};
use session::units::{M_PER_FT, M_PER_YD, MPS_PER_MPH};
use session::{Conditions, CustomMeasure, Session, TemperatureUnit};

const KELVIN: f64 = 273.15;

/// Steps in a yard to which the modeled carry is rounded: finer than a carry is read off, and short in a link.
const PER_YARD: f64 = 10.0;

/// Shots that are brought to standard air unasked. A visit has hundreds at most; a hundred thousand rows would keep a
/// phone waiting for seconds.
const MOST_SHOTS: usize = 5_000;

/// A session with the carry in standard air as one more measure.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct StandardAir {
    /// The session with the measure added, where it could be modeled.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// Id of the added measure.
    pub measure: MeasureId,
    /// The smallest difference of it that usually matters: that of carry, yd.
    pub margin: f64,
    /// Shots that got it.
    pub shots: usize,
    /// What it does to an average shot, yd.
    pub average_change: f64,
}

/// Adds the carry in standard air, by this name, to every shot that can be flown.
///
/// # Errors
/// An [`AirRefused`] for weather outside the formulas, and for shots without ball speed, launch angle, spin and carry.
pub fn in_standard_air(
    session: &Session,
    conditions: &Conditions,
    name: &str,
) -> Result<StandardAir, AirRefused> {
    let actual = weather(conditions)?;
    let mut session = session.clone();
    let columns = Columns::of(&session);
    let changes: Vec<(usize, f64, f64)> = flown(&session, &columns)
        .iter()
        .filter_map(|shot| {
            let measured_m = shot.carry * M_PER_YD;
            let launch = launch_of(&shot.values);
            let standard = flight::standard_carry(measured_m, &launch, &actual, TimeStep::COARSE).ok()?;
            Some((shot.shot, standard.carry_m / M_PER_YD, shot.carry))
        })
        .collect();
    if changes.is_empty() {
        return Err(AirRefused::NothingToBring { needed: NEEDED });
    }
    without_standard_air(&mut session);
    session.weather = Conditions::from_figures(conditions.figures(), conditions.temperature_unit);
    let measure = MeasureId::from(STANDARD_AIR_CARRY);
    let place = session.measures.len();
    session.measures.push(measure.clone());
    session.custom.push(CustomMeasure { id: measure.clone(), name: name.to_owned(), unit: "yd".into() });
    session.shots.iter_mut().for_each(|shot| shot.values.push(None));
    for (shot, standard, _) in &changes {
        if let Some(value) = session.shots.get_mut(*shot).and_then(|shot| shot.values.get_mut(place)) {
            *value = Some((*standard * PER_YARD).round() / PER_YARD);
        }
    }
    let moved: Vec<f64> = changes.iter().map(|(_, standard, measured)| standard - measured).collect();
    Ok(StandardAir {
        session,
        measure,
        margin: Known::Carry.facts().margin,
        shots: changes.len(),
        average_change: stats::describe::mean(&moved),
    })
}

/// The session with the carry in standard air, by this name, wherever its weather is known; `None` where it has that
/// carry already, has no weather, or cannot be flown.
#[must_use]
pub fn with_standard_air(session: &Session, name: &str) -> Option<Session> {
    let has = session.measure_index(&MeasureId::from(STANDARD_AIR_CARRY)).is_some();
    let conditions = session.weather.filter(|_| !has && session.shots.len() <= MOST_SHOTS)?;
    in_standard_air(session, &conditions, name).ok().map(|air| air.session)
}

/// Takes the added measure off a session again.
pub fn without_standard_air(session: &mut Session) {
    let measure = MeasureId::from(STANDARD_AIR_CARRY);
    let Some(place) = session.measure_index(&measure) else { return };
    session.measures.remove(place);
    session.custom.retain(|custom| custom.id != measure);
    for shot in session.shots.iter_mut().filter(|shot| place < shot.values.len()) {
        shot.values.remove(place);
    }
    for summary in &mut session.summaries {
        summary.values.remove(&measure);
    }
}

/// Air and wind as the flight model takes them.
pub(super) fn weather(conditions: &Conditions) -> Result<flight::Conditions, NotConditions> {
    let celsius = match (conditions.temperature, conditions.temperature_unit) {
        (None, _) => 15.0,
        (Some(t), TemperatureUnit::Celsius) => t,
        (Some(t), TemperatureUnit::Fahrenheit) => (t - 32.0) / 1.8,
    };
    let altitude_m = conditions.altitude_ft.unwrap_or(0.0) * M_PER_FT;
    let humidity = conditions.humidity_percent.unwrap_or(0.0) / 100.0;
    let air = Air::new(celsius + KELVIN, Station::AltitudeM(altitude_m), humidity);
    let mps = |wind: Option<f64>| wind.unwrap_or(0.0) * MPS_PER_MPH;
    let wind = Wind::new(mps(conditions.wind_helping_mph), mps(conditions.wind_to_right_mph));
    Ok(flight::Conditions { air: air?, wind: wind? })
}
