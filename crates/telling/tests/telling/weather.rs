//! Carry in standard air beside a session that was read: added where the weather is known, and taken off again.

use crate::support::empty;
use judging::flying::without_standard_air;
use session::measure::{MeasureId, STANDARD_AIR_CARRY};
use session::{Conditions, Session, Shot};
use telling::flying::with_standard_air;
use text::{Language, SPANISH, Units, Voice};

const HOT: Conditions = Conditions {
    temperature: Some(35.0),
    temperature_unit: session::TemperatureUnit::Celsius,
    altitude_ft: Some(3_000.0),
    humidity_percent: None,
    wind_helping_mph: None,
    wind_to_right_mph: None,
};

fn flown(shots: usize, weather: Option<Conditions>) -> Session {
    let mut session = empty("carry", 2);
    session.measures = ["carry", "ball_speed", "launch_angle", "spin_rate"].map(Into::into).to_vec();
    session.weather = weather;
    let values = [255.0, 158.0, 13.0, 2_600.0].map(Some).to_vec();
    session.shots = (0..shots)
        .map(|at| Shot {
            build: at % 2,
            round: None,
            number: None,
            values: values.clone(),
            ..Shot::default()
        })
        .collect();
    session
}

#[test]
fn weather_brings_carry_in_standard_air_along_once() {
    let read = flown(4, Some(HOT));
    let session = with_standard_air(&read, &Voice::english()).expect("flies");
    let place = session.measure_index(&MeasureId::from(STANDARD_AIR_CARRY)).expect("added");
    assert_eq!(session.weather, Some(HOT));
    // Hot, thin air carries farther: in standard air the same shot is shorter.
    assert!(session.shots.iter().all(|shot| shot.values[place] < shot.values[0]));
    assert_eq!(with_standard_air(&session, &Voice::english()), None, "it stands there already");
    let mut back = session;
    without_standard_air(&mut back);
    assert_eq!(back, read);
}

#[test]
fn its_name_is_said_in_the_voice_and_its_numbers_are_not() {
    let spanish = Voice::new(Language::from_table(SPANISH).expect("of this version"), Units::Meters);
    let [english, spanish] = [Voice::english(), spanish].map(|voice| {
        let session = with_standard_air(&flown(4, Some(HOT)), &voice).expect("flies");
        (session.custom[0].name.clone(), session.shots)
    });
    assert_ne!(english.0, spanish.0);
    assert_eq!(english.1, spanish.1);
}

#[test]
fn nothing_is_added_without_weather_without_flights_or_to_a_file_too_long_to_wait_for() {
    let mut grounded = flown(4, Some(HOT));
    grounded.measures.truncate(1);
    grounded.shots.iter_mut().for_each(|shot| shot.values.truncate(1));
    let impossible = Conditions { temperature: Some(400.0), ..HOT };
    for session in [flown(4, None), grounded, flown(4, Some(impossible)), flown(5_001, Some(HOT))] {
        assert_eq!(with_standard_air(&session, &Voice::english()), None);
    }
}
