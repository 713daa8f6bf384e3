//! Air and wind of a session as a golfer knows them, and carries brought to standard air.
//!
//! By ratio: only the change of air is modeled, the golfer's own ball and device stay in the number. Real wind grows
//! with height, so a reading at the ground usually understates it: an estimate, and labeled as one.

use super::{Columns, FACTORS, cannot_fly, flown, launch_of};
use crate::check::Refusal;
use crate::measure::{MeasureId, STANDARD_AIR_CARRY};
use crate::session::{Conditions, CustomMeasure, Session, TemperatureUnit};
use crate::units::{M_PER_FT, M_PER_YD, MPS_PER_MPH};
use flight::{Air, ConditionsError, Quantity, Station, TimeStep, Wind};
use serde::{Deserialize, Serialize};
use text::flying as say;

const KELVIN: f64 = 273.15;

impl Conditions {
    /// As the flight model takes them.
    pub(crate) fn flying(&self) -> Result<flight::Conditions, Refusal> {
        let celsius = match (self.temperature, self.temperature_unit) {
            (None, _) => 15.0,
            (Some(t), TemperatureUnit::Celsius) => t,
            (Some(t), TemperatureUnit::Fahrenheit) => (t - 32.0) / 1.8,
        };
        let altitude_m = self.altitude_ft.unwrap_or(0.0) * M_PER_FT;
        let humidity = self.humidity_percent.unwrap_or(0.0) / 100.0;
        let air = Air::new(celsius + KELVIN, Station::AltitudeM(altitude_m), humidity);
        let mps = |wind: Option<f64>| wind.unwrap_or(0.0) * MPS_PER_MPH;
        let wind = Wind::new(mps(self.wind_helping_mph), mps(self.wind_to_right_mph));
        let refused = |error: ConditionsError| outside(&error);
        Ok(flight::Conditions { air: air.map_err(refused)?, wind: wind.map_err(refused)? })
    }
}

fn outside(error: &ConditionsError) -> Refusal {
    let (ConditionsError::NotFinite { quantity } | ConditionsError::Outside { quantity, .. }) = error else {
        return cannot_fly(say::no_conditions(), say::no_conditions_remedy());
    };
    let (field, what) = match quantity {
        Quantity::Temperature => ("temperature", "temperature"),
        Quantity::Humidity => ("humidity_percent", "humidity"),
        Quantity::Wind => ("wind", "wind"),
        _ => ("altitude_ft", "altitude"),
    };
    Refusal {
        kind: "not_conditions".into(),
        place: format!("conditions.{field}"),
        message: say::not_conditions(),
        remedy: say::not_conditions_remedy(what),
    }
}

/// What [`in_standard_air`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct AirRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// Air and wind of the session.
    pub conditions: Conditions,
}

/// A session with the carry in standard air as one more measure.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct InStandardAir {
    /// The session with the measure added, where it could be modeled.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// Id of the added measure.
    pub measure: MeasureId,
    /// The smallest difference of it that usually matters: that of carry, yd.
    pub margin: f64,
    /// Shots that got it.
    pub shots: usize,
    /// What it does to an average shot, yd.
    pub average_change: f64,
    /// In words.
    pub words: String,
    /// What that is worth.
    pub note: String,
}

/// Steps in a yard to which the modeled carry is rounded: finer than a carry is read off, and short in a link.
const PER_YARD: f64 = 10.0;

/// Adds the carry in standard air to every shot that can be flown.
///
/// # Errors
/// A [`Refusal`] for weather outside the formulas, and for shots without ball speed, launch angle, spin and carry.
pub fn in_standard_air(request: &AirRequest) -> Result<InStandardAir, Refusal> {
    let actual = request.conditions.flying()?;
    let mut session = request.session.clone();
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
        let needed = FACTORS.iter().take(3).map(|id| text::measure::name(id)).collect::<Vec<_>>().join(", ");
        return Err(cannot_fly(say::nothing_to_bring(&needed), say::nothing_to_bring_remedy()));
    }
    let measure = MeasureId::from(STANDARD_AIR_CARRY);
    without_standard_air(&mut session);
    session.weather =
        Conditions::from_figures(request.conditions.figures(), request.conditions.temperature_unit);
    let place = {
        session.measures.push(measure.clone());
        session.custom.push(CustomMeasure {
            id: measure.clone(),
            name: say::standard_air_carry(),
            unit: "yd".into(),
        });
        session.shots.iter_mut().for_each(|shot| shot.values.push(None));
        session.measures.len() - 1
    };
    for (shot, standard, _) in &changes {
        if let Some(value) = session.shots.get_mut(*shot).and_then(|shot| shot.values.get_mut(place)) {
            *value = Some((*standard * PER_YARD).round() / PER_YARD);
        }
    }
    let moved: Vec<f64> = changes.iter().map(|(_, standard, measured)| standard - measured).collect();
    let average_change = stats::describe::mean(&moved);
    let words = words(average_change);
    let margin = crate::measure::known(&"carry".into()).map_or(0.0, crate::measure::Measure::usual_margin);
    Ok(InStandardAir {
        session,
        measure,
        margin,
        shots: changes.len(),
        average_change,
        words,
        note: say::note(),
    })
}

/// Takes the added measure off a session again.
pub(crate) fn without_standard_air(session: &mut Session) {
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

fn words(change: f64) -> String {
    let carry = crate::words::Subject::of(&"carry".into(), &Session::default());
    let how = match change {
        _ if carry.prints_as_zero(change) => "same",
        more if more > 0.0 => "farther",
        _ => "less",
    };
    say::would_carry(how, &carry.amount(change))
}
