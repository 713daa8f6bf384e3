//! Every case of checks.json, at its own tolerance. An unknown case fails: none is skipped silently.

use crate::properties;
use crate::support::{DEG, MPH, RPM, YD, assert_near, driver, launch, launch_of, number, numbers, reference};
use flight::impact::{Delivery, Head, Strike, impact, plane_spin_loft_rad, spin_loft_rad};
use flight::{
    Aerodynamics, Air, BALL, Calibrated, Conditions, Constant, Flight, Medium, Spin, Start, Station,
    TimeStep, Vec3, Verdict, Wind, Window, best_launch, best_spin, fly, plausibility, simulate,
    standard_carry, station_pressure_pa, unit_hypotheses, window_optimum,
};
use serde_json::Value;

#[test]
fn every_reference_case_holds_at_its_tolerance() {
    let file = reference("checks.json");
    let cases = file["checks"].as_array().unwrap();
    assert_eq!(cases.len() as u64, file["n"].as_u64().unwrap());
    for case in cases {
        let id = case["id"].as_str().unwrap();
        assert!(!case["source"].as_str().unwrap().is_empty(), "{id} has no source");
        match case["kind"].as_str().unwrap() {
            "property" => property(id),
            "trade_value" => trade_value(id, case),
            "closed_form" => closed_form(id, case),
            "model_reference" if id.starts_with("ref-") => flight_case(case),
            "model_reference" => model_value(id, case),
            kind => panic!("{id} is of unknown kind {kind}"),
        }
    }
}

/// Compares each expected value with its own tolerance.
fn expect(case: &Value, got: impl Fn(&str) -> f64) {
    for (key, expected) in case["expected"].as_object().unwrap() {
        let tolerance = &case["tolerance"][key];
        if tolerance.is_null() {
            continue; // not a number under tolerance; the caller compares it itself
        }
        assert_near(got(key), number(expected), number(tolerance), &format!("{} {key}", case["id"]));
    }
}

fn conditions_of(air: &Value) -> Conditions {
    let field = |key: &str| air.get(key).map(number);
    let temperature_k = field("temp_c").map_or(288.15, |celsius| celsius + 273.15);
    let station = match (field("pressure_pa"), field("altitude_m")) {
        (None, Some(altitude_m)) => Station::AltitudeM(altitude_m),
        (pressure_pa, _) => Station::PressurePa(pressure_pa.unwrap_or(101_325.0)),
    };
    let wind = air.get("wind_mph_fwd_up_right").map_or(Wind::CALM, |wind| {
        let wind = numbers(wind);
        Wind::new(wind[0] * MPH, wind[2] * MPH).unwrap()
    });
    Conditions { air: Air::new(temperature_k, station, field("rh").unwrap_or(0.0)).unwrap(), wind }
}

fn in_trade_units(flight: &Flight, key: &str) -> f64 {
    match key {
        "carry_yd" => flight.carry_m / YD,
        "carry_m" => flight.carry_m,
        "forward_yd" => flight.forward_m / YD,
        "lateral_yd" => flight.lateral_m / YD,
        "curve_yd" => flight.curve_m / YD,
        "apex_yd" => flight.apex.height_m / YD,
        "apex_m" => flight.apex.height_m,
        "time_s" | "flight_s" => flight.time_s,
        "land_deg" => flight.descent_rad / DEG,
        "land_speed_mph" => flight.landing_speed_mps / MPH,
        "land_speed_ms" | "impact_ms" => flight.landing_speed_mps,
        "land_spin_rpm" => flight.landing_spin_radps / RPM,
        _ => panic!("unknown flight value {key}"),
    }
}

fn flight_case(case: &Value) {
    let inputs = &case["inputs"];
    let conditions = conditions_of(&inputs["air"]);
    let step = TimeStep::FINE;
    let flight = fly(&launch_of(inputs), &conditions, step).unwrap();
    expect(case, |key| in_trade_units(&flight, key));
}

/// Carries of common practice, in the air they are assumed to stand for.
fn trade_value(id: &str, case: &Value) {
    let air = |celsius: f64| Conditions {
        air: Air::new(celsius + 273.15, Station::PressurePa(101_325.0), 0.5).unwrap(),
        wind: Wind::CALM,
    };
    let carry_yd = |shot, celsius| fly(&shot, &air(celsius), TimeStep::FINE).unwrap().carry_m / YD;
    let got = match id {
        "trade-driver" | "trade-7i" => carry_yd(launch_of(&case["inputs"]), 23.8889),
        "trade-ballspeed" => carry_yd(launch(168.0, 10.9, 2690.0), 23.8889) - carry_yd(driver(), 23.8889),
        "trade-temp" => carry_yd(driver(), 26.7) - carry_yd(driver(), 21.1),
        _ => panic!("unknown trade value {id}"),
    };
    expect(case, |_| got);
}

fn closed_form(id: &str, case: &Value) {
    let inputs = &case["inputs"];
    let input = |key: &str| number(&inputs[key]);
    match id {
        "vacuum-150-30" => {
            let shot = Start::of(&launch(input("ball_mph"), input("launch_deg"), 2500.0));
            let flight = in_still_air(&shot, 0.0, 0.0);
            expect(case, |key| in_trade_units(&flight, key));
        }
        "drag-vertical-0.25" => {
            let up = Start { velocity_mps: Vec3::new(0.0, input("v0_ms"), 0.0), spin_radps: Vec3::ZERO };
            let flight = in_still_air(&up, input("cd"), 0.0);
            let weight = 2.0 * BALL.mass_kg * flight::STANDARD_GRAVITY_MPS2;
            let terminal = (weight / (1.225 * BALL.cross_section_m2() * input("cd"))).sqrt();
            expect(case, |key| if key == "terminal_ms" { terminal } else { in_trade_units(&flight, key) });
        }
        "lift-only-energy" => {
            let shot = Start::of(&launch(input("ball_mph"), input("launch_deg"), 2500.0));
            let flight = in_still_air(&shot, 0.0, input("cl"));
            expect(case, |key| in_trade_units(&flight, key));
        }
        "coeff-S0.08" | "coeff-S0.3" => expect(case, |key| match key {
            "cd" => Calibrated::STANDARD.drag(input("S")),
            _ => input("S") * Calibrated::STANDARD.lift_per_spin_ratio(input("S")),
        }),
        "axis-2600-400" => {
            let spin = Spin::from_components(input("back_rpm") * RPM, input("side_rpm") * RPM);
            expect(case, |key| match key {
                "total_rpm" => spin.total_radps / RPM,
                _ => spin.axis_rad / DEG,
            });
        }
        "iso-p-1524" => expect(case, |_| station_pressure_pa(input("altitude_m"))),
        _ if id.starts_with("air-") => {
            let station = Station::PressurePa(input("station_pressure_pa"));
            let air = Air::new(input("temp_c") + 273.15, station, input("rh")).unwrap();
            expect(case, |_| air.density_kgpm3());
        }
        _ if id.starts_with("spinloft-") => {
            let angle = |key: &str| input(key) * DEG;
            let (loft, attack) = (angle("dyn_loft"), angle("attack"));
            let got = spin_loft_rad(loft, attack, angle("face"), angle("path")) / DEG;
            expect(case, |_| got);
            let plane = plane_spin_loft_rad(loft, attack) / DEG;
            assert_near(plane, number(&case["expected"]["two_d"]), 1e-9, id);
        }
        _ => panic!("unknown closed form {id}"),
    }
}

fn in_still_air(start: &Start, drag: f64, lift: f64) -> Flight {
    let medium = Medium { density_kgpm3: 1.225, wind_mps: Vec3::ZERO, ball: BALL };
    simulate(start, &medium, &Constant { drag, lift, spin_decay: 0.0 }, TimeStep::FINE).unwrap()
}

fn model_value(id: &str, case: &Value) {
    let inputs = &case["inputs"];
    let standard = Conditions::STANDARD;
    let at = |launch: &flight::Launch, flight: &Flight, key: &str| match key {
        "launch_deg" => launch.elevation_rad / DEG,
        "spin_rpm" => launch.spin_radps / RPM,
        _ => flight.carry_m / YD,
    };
    match id {
        "optimum-150" => {
            let speed_mps = number(&inputs["ball_mph"]) * MPH;
            let best = window_optimum(speed_mps, &standard, &Window::default(), TimeStep::COARSE).unwrap();
            expect(case, |key| at(&best.launch, &best.flight, key));
        }
        "bestspin-167-11" => {
            let shot = launch_of(inputs);
            let best = best_spin(&shot, &standard, &Window::default(), TimeStep::COARSE).unwrap();
            expect(case, |key| at(&best.launch, &best.flight, key));
        }
        "bestlaunch-167-2690" => {
            let shot = launch(number(&inputs["ball_mph"]), 11.0, number(&inputs["spin_rpm"]));
            let best = best_launch(&shot, &standard, &Window::UNCONSTRAINED, TimeStep::COARSE).unwrap();
            expect(case, |key| at(&best.launch, &best.flight, key));
        }
        "normalise-262" => {
            let measured_m = number(&inputs["measured_carry_yd"]) * YD;
            let air = conditions_of(&inputs["air"]);
            let got = standard_carry(measured_m, &launch_of(inputs), &air, TimeStep::FINE).unwrap();
            expect(case, |_| got.carry_m / YD);
        }
        "impact-centre" => impact_case(case),
        _ if id.starts_with("plaus-") => plausibility_case(case),
        _ => panic!("unknown model value {id}"),
    }
}

fn plausibility_case(case: &Value) {
    let (inputs, expected) = (&case["inputs"], &case["expected"]);
    let (shot, carry_m) = (launch_of(inputs), number(&inputs["carry"]) * YD);
    let row = plausibility(carry_m, &shot, &Conditions::STANDARD, TimeStep::FINE).unwrap();
    expect(case, |_| row.ratio);
    let verdict = match row.verdict {
        Verdict::Ok => "ok",
        Verdict::Check => "check",
        Verdict::Inconsistent => "inconsistent",
    };
    assert_eq!(verdict, expected["verdict"], "{}", case["id"]);
    let (speeds, carries) = (["mph", "m/s", "km/h"], ["yd", "m", "ft"]);
    let (speed_factors, carry_factors) = ([1.0, 1.0 / MPH, 1.0 / (3.6 * MPH)], [1.0, 1.0 / YD, 1.0 / 3.0]);
    let air = Conditions::STANDARD;
    let found = unit_hypotheses(carry_m, &shot, &speed_factors, &carry_factors, &air, TimeStep::FINE);
    let named: Vec<_> = found.iter().map(|h| vec![speeds[h.speed], carries[h.carry]]).collect();
    assert_eq!(serde_json::json!(named), expected["unit_hypotheses"], "{}", case["id"]);
}

fn impact_case(case: &Value) {
    let input = |key: &str| number(&case["inputs"][key]);
    let delivery = Delivery {
        club_speed_mps: input("club_mph") * MPH,
        dynamic_loft_rad: input("dyn_loft") * DEG,
        attack_rad: input("attack") * DEG,
        face_rad: 0.0,
        path_rad: 0.0,
    };
    let got = impact(&delivery, &Strike::default(), &Head::DRIVER).unwrap();
    for (key, expected) in case["expected"].as_object().unwrap() {
        let value = match key.as_str() {
            "ball_mph" => got.launch.speed_mps / MPH,
            "smash" => got.smash,
            "launch_deg" => got.launch.elevation_rad / DEG,
            "azimuth_deg" => got.launch.azimuth_rad / DEG,
            "back_rpm" => got.launch.spin().backspin_radps() / RPM,
            "side_rpm" => got.launch.spin().sidespin_radps() / RPM,
            "spin_rpm" => got.launch.spin_radps / RPM,
            "axis_deg" => got.launch.spin_axis_rad / DEG,
            "spin_loft_deg" => got.spin_loft_rad / DEG,
            _ => panic!("unknown impact value {key}"),
        };
        let expected = number(expected);
        assert_near(value, expected, 1e-3 * expected.abs() + 1e-9, key);
    }
}

fn property(id: &str) {
    match id {
        "property-2" => properties::azimuth_only_turns_the_flight(),
        "property-3" => properties::energy_never_grows_in_calm_air(),
        "property-5" => properties::uniform_wind_is_a_moving_frame(),
        "property-6" => properties::density_and_mass_cancel(),
        "property-8" => properties::halving_the_step_changes_nothing_visible(),
        "property-9" => properties::spin_decays_along_its_axis(),
        "property-11" => properties::head_wind_shortens_and_tail_wind_lengthens(),
        "property-12" => properties::every_input_has_a_finite_flight_or_a_typed_refusal(),
        _ => panic!("unknown property {id}"),
    }
}
