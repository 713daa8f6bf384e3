//! One launch in the golfer's units, and what cannot be flown.

use crate::support::{also, blocks};
use judging::flying::{
    AirRefused, FlyRefused, Launch, NotConditions, WeatherFigure, fly, in_standard_air, without_standard_air,
};
use session::known::Known;
use session::{Conditions, TemperatureUnit};

const LAUNCH: Launch = Launch {
    ball_speed: 150.0,
    launch_angle: 12.0,
    spin_rate: 2700.0,
    launch_direction: 2.0,
    spin_axis: 8.0,
};

fn calm() -> Conditions {
    Conditions::default()
}

#[test]
fn a_flight_is_told_in_yards_degrees_miles_an_hour_and_revolutions() {
    let told = fly(&LAUNCH, &calm()).expect("flies");
    let degrees = std::f64::consts::PI / 180.0;
    let launch = flight::Launch {
        speed_mps: 67.056,
        elevation_rad: 12.0 * degrees,
        azimuth_rad: 2.0 * degrees,
        spin_radps: 2700.0 / 60.0 * 2.0 * std::f64::consts::PI,
        spin_axis_rad: 8.0 * degrees,
    };
    let air = flight::Air::new(288.15, flight::Station::AltitudeM(0.0), 0.0).expect("air");
    let conditions = flight::Conditions { air, wind: flight::Wind::CALM };
    let flown = flight::fly(&launch, &conditions, flight::TimeStep::FINE).expect("flies");
    for (told, flown) in [
        (told.carry * 0.9144, flown.forward_m),
        (told.offline * 0.9144, flown.lateral_m),
        (told.curve * 0.9144, flown.curve_m),
        (told.apex * 0.9144, flown.apex.height_m),
        (told.descent_angle * degrees, flown.descent_rad),
        (told.hang_time, flown.time_s),
        (told.landing_speed * 0.447_04, flown.landing_speed_mps),
        (told.landing_spin / 60.0 * 2.0 * std::f64::consts::PI, flown.landing_spin_radps),
    ] {
        assert!((told - flown).abs() <= 1e-9 * flown.abs(), "{told} {flown}");
    }
}

#[test]
fn a_temperature_is_the_same_in_either_unit_and_left_open_it_is_the_standard() {
    let of = |temperature, temperature_unit| {
        fly(&LAUNCH, &Conditions { temperature, temperature_unit, ..calm() }).expect("flies").carry
    };
    let (celsius, fahrenheit) = (TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit);
    assert!((of(Some(35.0), celsius) - of(Some(95.0), fahrenheit)).abs() < 1e-9);
    assert!((of(Some(15.0), celsius) - of(None, fahrenheit)).abs() < 1e-9);
    assert!(of(Some(35.0), celsius) > of(Some(15.0), celsius) + 1.0, "warm air is thin");
}

#[test]
fn wind_and_altitude_and_humidity_are_taken_as_a_golfer_knows_them() {
    let of = |conditions: Conditions| fly(&LAUNCH, &conditions).expect("flies");
    let still = of(calm());
    assert!(of(Conditions { wind_helping_mph: Some(10.0), ..calm() }).carry > still.carry + 3.0);
    assert!(of(Conditions { wind_to_right_mph: Some(10.0), ..calm() }).offline > still.offline + 3.0);
    assert!(of(Conditions { altitude_ft: Some(5000.0), ..calm() }).carry > still.carry + 5.0);
    // Wet air is a little thinner: less than a yard.
    let wet = of(Conditions { humidity_percent: Some(100.0), temperature: Some(30.0), ..calm() }).carry;
    let dry = of(Conditions { temperature: Some(30.0), ..calm() }).carry;
    assert!(wet > dry + 0.05 && wet < dry + 2.0, "{wet} {dry}");
}

#[test]
fn what_cannot_be_flown_is_named() {
    let outside = |conditions: Conditions| fly(&LAUNCH, &conditions).expect_err("refused");
    for (conditions, figure) in [
        (Conditions { temperature: Some(200.0), ..calm() }, WeatherFigure::Temperature),
        (Conditions { humidity_percent: Some(150.0), ..calm() }, WeatherFigure::Humidity),
        (Conditions { wind_helping_mph: Some(200.0), ..calm() }, WeatherFigure::Wind),
        (Conditions { wind_to_right_mph: Some(-200.0), ..calm() }, WeatherFigure::Wind),
        (Conditions { altitude_ft: Some(90_000.0), ..calm() }, WeatherFigure::Altitude),
    ] {
        assert_eq!(outside(conditions), FlyRefused::Conditions(NotConditions::Outside(figure)));
    }
    for (set, known) in [
        ((|launch, x| Launch { ball_speed: x, ..launch }) as fn(Launch, f64) -> Launch, Known::BallSpeed),
        (|launch, x| Launch { launch_angle: x, ..launch }, Known::LaunchAngle),
        (|launch, x| Launch { spin_rate: x, ..launch }, Known::SpinRate),
        (|launch, x| Launch { launch_direction: x, ..launch }, Known::LaunchDirection),
        (|launch, x| Launch { spin_axis: x, ..launch }, Known::SpinAxis),
    ] {
        assert_eq!(fly(&set(LAUNCH, f64::NAN), &calm()), Err(FlyRefused::NotANumber(known)));
        assert_eq!(fly(&set(LAUNCH, 1e6), &calm()), Err(FlyRefused::Outside(known)));
    }
    assert_eq!(fly(&Launch { launch_angle: -4.0, ..LAUNCH }, &calm()), Err(FlyRefused::DoesNotFly));
}

#[test]
fn a_carry_in_standard_air_is_taken_off_again_also_where_a_shot_never_got_it() {
    let mut session = blocks("carry", &[vec![240.0; 3], vec![250.0; 3]]);
    also(&mut session, "ball_speed", |_, _| Some(150.0));
    also(&mut session, "launch_angle", |_, _| Some(12.0));
    let cold = Conditions { temperature: Some(2.0), ..calm() };
    assert!(matches!(in_standard_air(&session, &cold, "Standard"), Err(AirRefused::NothingToBring { .. })));
    also(&mut session, "spin_rate", |at, _| (at != 2).then_some(2600.0));
    let mut added = in_standard_air(&session, &cold, "Standard").expect("can be flown");
    assert_eq!(added.shots, 5);
    assert!(added.average_change > 0.0, "cold air took some of it");
    added.session.shots[2].values.pop();
    without_standard_air(&mut added.session);
    assert_eq!((added.session.measures, added.session.shots), (session.measures, session.shots));
}
