//! The tables of tests/reference/flight/tables.json: plateau, optimum, band, sensitivities, wind, axis, step.

use crate::support::{
    DEG, MPH, RPM, YD, assert_near, calm, launch, launch_of, number, numbers, reference, rows,
};
use flight::{Air, Conditions, Launch, TimeStep, Wind, Window, fly, sensitivities, window_optimum};

#[test]
fn spin_plateau() {
    let table = &reference("tables.json")["spin_plateau"];
    let (mph, tolerance) = (number(&table["ball_mph"]), number(&table["tolerance_yd"]));
    for row in rows(&table["rows"]) {
        for (rpm, carry_yd) in numbers(&table["spin_rpm"]).iter().zip(numbers(&row["carry_yd"])) {
            let shot = launch(mph, number(&row["launch_deg"]), *rpm);
            assert_near(calm(&shot).carry_m / YD, carry_yd, tolerance, &format!("{shot:?}"));
        }
    }
}

fn capped(degrees: f64) -> Window {
    let [low, _] = Window::DELIVERABLE.launch_rad();
    Window::new([low, degrees * DEG], Window::DELIVERABLE.spin_radps()).unwrap()
}

#[test]
fn windowed_optimum() {
    let table = &reference("tables.json")["optimum"];
    let tolerance = |key: &str| number(&table[key]);
    for row in rows(&table["rows"]) {
        let speed_mps = number(&row["ball_mph"]) * MPH;
        let best = |window: &Window| {
            window_optimum(speed_mps, &Conditions::STANDARD, window, TimeStep::COARSE).unwrap()
        };
        for (key, cap) in [("cap_14", 14.0), ("cap_17", 17.0)] {
            let (found, expected) = (best(&capped(cap)), numbers(&row[key]));
            assert!(found.launch_at_edge && !found.spin_at_edge);
            assert_near(found.launch.elevation_rad / DEG, cap, 1e-9, "launch at the cap");
            let spin_rpm = found.launch.spin_radps / RPM;
            assert_near(spin_rpm, expected[0], tolerance("spin_tolerance_rpm"), "spin");
            let carry_yd = found.flight.carry_m / YD;
            assert_near(carry_yd, expected[1], tolerance("carry_tolerance_yd"), "carry");
        }
        let (found, expected) = (best(&Window::UNCONSTRAINED), numbers(&row["unconstrained"]));
        assert!(!found.launch_at_edge && !found.spin_at_edge);
        let launch_deg = found.launch.elevation_rad / DEG;
        assert_near(launch_deg, expected[0], tolerance("unconstrained_launch_tolerance_deg"), "launch");
        let spin_rpm = found.launch.spin_radps / RPM;
        assert_near(spin_rpm, expected[1], tolerance("unconstrained_spin_tolerance_rpm"), "spin");
        let carry_yd = found.flight.carry_m / YD;
        assert_near(carry_yd, expected[2], tolerance("carry_tolerance_yd"), "carry");
    }
}

#[test]
fn two_yard_band() {
    let table = &reference("tables.json")["band"];
    for row in rows(&table["rows"]) {
        let window = capped(number(&row["launch_deg"]));
        let speed_mps = number(&row["ball_mph"]) * MPH;
        let best = window_optimum(speed_mps, &Conditions::STANDARD, &window, TimeStep::COARSE).unwrap();
        let (expected, tolerance) = (numbers(&row["spin_rpm"]), number(&table["tolerance_rpm"]));
        assert_near(best.band.spin_low_radps / RPM, expected[0], tolerance, "low spin");
        assert_near(best.band.spin_high_radps / RPM, expected[1], tolerance, "high spin");
        for spin_radps in [best.band.spin_low_radps, best.band.spin_high_radps] {
            let lost_m = best.flight.carry_m - calm(&Launch { spin_radps, ..best.launch }).carry_m;
            assert_near(lost_m, number(&table["band_yd"]) * YD, 0.01, "loss at the edge of the band");
        }
        let [low, high] = [best.band.launch_low_rad, best.band.launch_high_rad];
        assert_near(high, best.launch.elevation_rad, 1e-12, "the cap cuts the band off");
        let lost_m = best.flight.carry_m - calm(&Launch { elevation_rad: low, ..best.launch }).carry_m;
        assert_near(lost_m, number(&table["band_yd"]) * YD, 0.01, "loss at the lowest launch");
    }
}

#[test]
fn sensitivities_of_four_clubs() {
    let table = &reference("tables.json")["sensitivities"];
    let tolerance = number(&table["tolerance"]);
    for row in rows(&table["rows"]) {
        let got = sensitivities(&launch_of(row), &Conditions::STANDARD, TimeStep::FINE).unwrap();
        let in_trade_units = [
            got.carry_per_speed_s * MPH / YD,
            got.carry_per_elevation_mprad * DEG / YD,
            got.carry_per_spin_ms * 100.0 * RPM / YD,
            got.carry_elevation_curvature_mprad2 * DEG * DEG / YD,
        ];
        for (value, expected) in in_trade_units.iter().zip(numbers(&row["expected"])) {
            assert_near(*value, expected, tolerance, &row["id"].to_string());
        }
    }
}

/// Against differences ten times narrower, and next to every hard limit, where the three points move inside.
#[test]
fn sensitivities_are_derivatives() {
    let shot = Launch { spin_axis_rad: 6.0 * DEG, ..launch(150.0, 12.0, 2700.0) };
    let got = sensitivities(&shot, &Conditions::STANDARD, TimeStep::FINE).unwrap();
    let narrow = 0.05 * DEG;
    let tilted = [-narrow, narrow].map(|by| calm(&Launch { spin_axis_rad: shot.spin_axis_rad + by, ..shot }));
    let curve = (tilted[1].curve_m - tilted[0].curve_m) / (2.0 * narrow);
    let carry = (tilted[1].forward_m - tilted[0].forward_m) / (2.0 * narrow);
    assert_near(got.curve_per_axis_mprad, curve, 0.01 * curve.abs(), "curve by axis");
    assert_near(got.carry_per_axis_mprad, carry, 0.01 * carry.abs(), "carry by axis");

    for at_limit in [
        launch(15.0, 20.0, 3000.0),
        launch(235.0, 10.0, 2500.0),
        launch(150.0, 0.05, 2500.0),
        launch(150.0, 60.0, 2500.0),
        launch(150.0, 12.0, 0.0),
        launch(150.0, 12.0, 15_000.0),
        Launch { spin_axis_rad: 60.0 * DEG, ..shot },
        Launch { spin_axis_rad: -60.0 * DEG, ..shot },
    ] {
        let got = sensitivities(&at_limit, &Conditions::STANDARD, TimeStep::FINE).unwrap();
        assert!(got.carry_per_speed_s > 0.0 && got.carry_per_speed_s.is_finite(), "{at_limit:?}: {got:?}");
        assert!(got.carry_per_spin_ms.is_finite() && got.curve_per_axis_mprad.is_finite());
    }
}

#[test]
fn wind_of_ten_miles_per_hour() {
    let table = &reference("tables.json")["wind_10_mph"];
    let tolerance = number(&table["tolerance_yd"]);
    for row in rows(&table["rows"]) {
        let shot = launch_of(row);
        let in_wind = |ahead: f64, right: f64| {
            let wind = Wind::new(ahead * MPH, right * MPH).unwrap();
            fly(&shot, &Conditions { air: Air::STANDARD, wind }, TimeStep::FINE).unwrap()
        };
        let still_yd = calm(&shot).carry_m / YD;
        let expected = numbers(&row["head_tail_cross_yd"]);
        assert_near(in_wind(-10.0, 0.0).carry_m / YD - still_yd, expected[0], tolerance, "head");
        assert_near(in_wind(10.0, 0.0).carry_m / YD - still_yd, expected[1], tolerance, "tail");
        assert_near(in_wind(0.0, 10.0).lateral_m / YD, expected[2], tolerance, "cross");
    }
}

#[test]
fn tilt_of_the_spin_axis() {
    let table = &reference("tables.json")["spin_axis"];
    let tolerance = number(&table["tolerance_yd"]);
    for row in rows(&table["rows"]) {
        let straight = launch_of(row);
        for (index, degrees) in numbers(&table["axis_deg"]).iter().enumerate() {
            let flight = calm(&Launch { spin_axis_rad: degrees * DEG, ..straight });
            assert_near(flight.curve_m / YD, number(&row["curve_yd"][index]), tolerance, "curve");
            if !row["carry_change_yd"].is_null() {
                let change_yd = (flight.carry_m - calm(&straight).carry_m) / YD;
                assert_near(change_yd, number(&row["carry_change_yd"][index]), tolerance, "carry change");
            }
        }
    }
}

/// The error of each step is what the table says, within a factor of two, or below rounding.
#[test]
fn error_by_step() {
    let table = &reference("tables.json")["steps"];
    let carry_yd = |seconds: f64| {
        let step = TimeStep::new(seconds).unwrap();
        fly(&launch_of(table), &Conditions::STANDARD, step).unwrap().carry_m / YD
    };
    let exact = carry_yd(0.001);
    for row in rows(&table["rows"]) {
        let error = (carry_yd(number(&row["step_s"])) - exact).abs();
        assert!(error <= 2.0 * number(&row["error_yd"]), "{row}: {error:e}");
    }
}
