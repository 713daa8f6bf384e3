//! Small promises at their edges: what is handed back, what a refusal says, where a limit ends.
#![expect(clippy::float_cmp, reason = "what is handed back unchanged is compared to the last bit")]

use crate::support::{DEG, MPH, RPM, assert_near, driver, launch};
use flight::impact::{Delivery, Head, ImpactError, SmashVerdict, Strike, impact, judge_smash};
use flight::{
    Aerodynamics, Air, BALL, Conditions, ConditionsError, Constant, Hypothesis, Launch, LaunchError, Medium,
    Quantity, STANDARD_GRAVITY_MPS2, Spin, Start, Station, TimeStep, Validity, Vec3, Wind, Window, fly,
    limits, sensitivities, simulate, unit_hypotheses,
};

#[test]
fn air_and_wind_hand_back_what_they_were_made_of() {
    let air = Air::new(301.0, Station::PressurePa(98_000.0), 0.4).unwrap();
    assert_eq!([air.temperature_k(), air.pressure_pa(), air.relative_humidity()], [301.0, 98_000.0, 0.4]);
    let wind = Wind::new(-3.5, 2.25).unwrap();
    assert_eq!([wind.towards_target_mps(), wind.towards_right_mps()], [-3.5, 2.25]);
    let medium = Medium::of(&Conditions { air, wind });
    assert_eq!(medium.wind_mps, Vec3::new(-3.5, 0.0, 2.25));
    assert_eq!(medium.density_kgpm3, air.density_kgpm3());
}

#[test]
fn constant_coefficients_stay_what_they_are() {
    let constant = Constant { drag: 0.3, lift: 0.12, spin_decay: 4e-5 };
    for spin_ratio in [0.0, 0.2, 1.5] {
        assert_eq!(constant.drag(spin_ratio), 0.3);
    }
    assert_eq!(constant.lift_per_spin_ratio(0.25), 0.48);
    assert_eq!(constant.lift_per_spin_ratio(0.0), 0.0, "no spin, no lift");
    assert_eq!(constant.spin_decay(), 4e-5);
}

/// ω = ω₀ exp(−KW (ρ/1.225) L/r) along a parabola, whose length L is known; KW fifty times the usual one.
#[test]
fn spin_that_decays_fast_follows_the_length_of_the_path() {
    let medium = Medium { density_kgpm3: 1.225, wind_mps: Vec3::ZERO, ball: BALL };
    let strong = Constant { drag: 0.0, lift: 0.0, spin_decay: 1e-3 };
    let shot = launch(100.0, 40.0, 3000.0);
    let flight = simulate(&Start::of(&shot), &medium, &strong, TimeStep::FINE).unwrap();
    let (ahead, slope) = (shot.speed_mps * (40.0 * DEG).cos(), (40.0 * DEG).tan());
    let length = ahead * ahead / STANDARD_GRAVITY_MPS2 * (slope * slope.hypot(1.0) + slope.asinh());
    let expected = shot.spin_radps * (-1e-3 * length / BALL.radius_m()).exp();
    assert!(expected < 0.1 * shot.spin_radps);
    assert_near(flight.landing_spin_radps / expected, 1.0, 1e-5, "spin at landing");
}

#[test]
fn spin_and_its_parts_turn_into_each_other() {
    for (back, side) in [(300.0, 0.0), (250.0, 40.0), (250.0, -40.0), (-20.0, 5.0)] {
        let spin = Spin::from_components(back, side);
        assert_near(spin.backspin_radps(), back, 1e-12 * 300.0, "back spin");
        assert_near(spin.sidespin_radps(), side, 1e-12 * 300.0, "side spin");
        assert_near(spin.total_radps, back.hypot(side), 1e-12, "total");
    }
    let tilted = Launch { spin_axis_rad: 12.0 * DEG, ..driver() };
    assert_eq!(tilted.spin(), Spin { total_radps: tilted.spin_radps, axis_rad: tilted.spin_axis_rad });
}

#[test]
fn a_limit_forgives_rounding_and_nothing_more() {
    let spin = |factor: f64| Launch { spin_radps: limits(Quantity::Spin).high * factor, ..driver() }.check();
    assert_eq!(spin(1.0 + 8e-13), Ok(()));
    assert!(matches!(spin(1.0 + 1.2e-12), Err(LaunchError::Outside { quantity: Quantity::Spin, .. })));
    // The slack is a share of the larger end, at both ends.
    let axis = |rad: f64| Launch { spin_axis_rad: rad, ..driver() }.check();
    let most = limits(Quantity::SpinAxis).high;
    for sign in [-1.0, 1.0] {
        assert_eq!(axis(sign * most * (1.0 + 8e-13)), Ok(()));
        assert!(axis(sign * most * (1.0 + 1.2e-12)).is_err());
    }
    assert!(
        Wind::new(30.0 * (1.0 + 8e-13), -30.0).is_ok() && Wind::new(30.0 * (1.0 + 1.2e-12), 0.0).is_err()
    );
    let window = |high: f64| Window::new([2.0 * DEG, high], [2000.0 * RPM, 3000.0 * RPM]);
    assert!(window(60.0 * DEG * (1.0 + 8e-13)).is_ok() && window(60.0 * DEG * (1.0 + 1.2e-12)).is_err());
    let window = |high: f64| Window::new([2.0 * DEG, 17.0 * DEG], [2000.0 * RPM, high]);
    assert!(
        window(15_000.0 * RPM * (1.0 + 8e-13)).is_ok() && window(15_000.0 * RPM * (1.0 + 1.2e-12)).is_err()
    );
}

#[test]
fn the_limits_are_those_of_the_trade() {
    for (quantity, low, high) in [
        (Quantity::BallSpeed, 15.0 * MPH, 235.0 * MPH),
        (Quantity::Elevation, -5.0 * DEG, 60.0 * DEG),
        (Quantity::Azimuth, -180.0 * DEG, 180.0 * DEG),
        (Quantity::Spin, 0.0, 15_000.0 * RPM),
        (Quantity::SpinAxis, -60.0 * DEG, 60.0 * DEG),
        (Quantity::Wind, -30.0, 30.0),
        (Quantity::TimeStep, 1e-4, 0.5),
    ] {
        let found = limits(quantity);
        assert_near(found.low, low, 1e-12 * high, "low");
        assert_near(found.high, high, 1e-12 * high, "high");
    }
    for (window, launch_deg, spin_rpm) in [
        (Window::DELIVERABLE, [1.0, 17.0], [1500.0, 15_000.0]),
        (Window::UNCONSTRAINED, [1.0, 60.0], [100.0, 15_000.0]),
    ] {
        for (end, degrees) in window.launch_rad().into_iter().zip(launch_deg) {
            assert_near(end, degrees * DEG, 1e-12, "launch");
        }
        for (end, rpm) in window.spin_radps().into_iter().zip(spin_rpm) {
            assert_near(end, rpm * RPM, 1e-9, "spin");
        }
    }
    assert_eq!(Window::default(), Window::DELIVERABLE);
}

/// Half a mile per hour, half a degree and fifty revolutions per minute to either side, as the docs say.
#[test]
fn what_a_little_more_is_worth_is_a_difference_of_flights() {
    let shot = Launch { spin_axis_rad: 4.0 * DEG, ..driver() };
    let found = sensitivities(&shot, &Conditions::STANDARD, TimeStep::FINE).unwrap();
    let flown = |changed: Launch| fly(&changed, &Conditions::STANDARD, TimeStep::FINE).unwrap();
    let forward = |changed: Launch| flown(changed).forward_m;
    let speed = |by: f64| forward(Launch { speed_mps: shot.speed_mps + by * 0.5 * MPH, ..shot });
    let angle = |by: f64| forward(Launch { elevation_rad: shot.elevation_rad + by * 0.5 * DEG, ..shot });
    let spin = |by: f64| forward(Launch { spin_radps: shot.spin_radps + by * 50.0 * RPM, ..shot });
    let axis = |by: f64| flown(Launch { spin_axis_rad: shot.spin_axis_rad + by * 0.5 * DEG, ..shot });
    assert_near(found.carry_per_speed_s, (speed(1.0) - speed(-1.0)) / MPH, 1e-9, "speed");
    assert_near(found.carry_per_elevation_mprad, (angle(1.0) - angle(-1.0)) / DEG, 1e-9, "launch");
    let bend = (angle(1.0) - 2.0 * angle(0.0) + angle(-1.0)) / (0.25 * DEG * DEG);
    assert_near(found.carry_elevation_curvature_mprad2, bend, 1e-6, "launch, second");
    assert_near(found.carry_per_spin_ms, (spin(1.0) - spin(-1.0)) / (100.0 * RPM), 1e-9, "spin");
    let tilt = (axis(1.0).forward_m - axis(-1.0).forward_m) / DEG;
    assert_near(found.carry_per_axis_mprad, tilt, 1e-9, "axis");
    assert_near(found.curve_per_axis_mprad, (axis(1.0).curve_m - axis(-1.0).curve_m) / DEG, 1e-9, "curve");
}

#[test]
fn a_refusal_says_its_numbers() {
    let said = |refusal: LaunchError| refusal.to_string();
    let outside = said(LaunchError::Outside { quantity: Quantity::Spin, value: 7.5, low: 1.5, high: 3.5 });
    assert!(["Spin", "7.5", "1.5", "3.5"].iter().all(|part| outside.contains(part)), "{outside}");
    assert!(said(LaunchError::NotFinite { quantity: Quantity::Azimuth }).contains("Azimuth"));
    assert!(said(LaunchError::NotUpward { elevation_rad: -0.25 }).contains("-0.25"));
    assert!(said(LaunchError::StillFlying { after_s: 61.5 }).contains("61.5"));
    assert!(said(LaunchError::Overflow { after_s: 0.75 }).contains("0.75"));
    assert!(said(LaunchError::NoForwardCarry { forward_m: 0.05 }).contains("0.05"));
    let said = |refusal: ConditionsError| refusal.to_string();
    let outside =
        said(ConditionsError::Outside { quantity: Quantity::Wind, value: 40.0, low: -30.0, high: 30.5 });
    assert!(["Wind", "40", "-30", "30.5"].iter().all(|part| outside.contains(part)), "{outside}");
    assert!(said(ConditionsError::NotFinite { quantity: Quantity::Pressure }).contains("Pressure"));
    let window = Window::new([0.3, 0.2], [200.0, 300.0]).unwrap_err().to_string();
    assert!(window.contains("0.3") && window.contains("0.2"), "{window}");
}

#[test]
fn a_start_that_is_not_finite_or_not_upward_is_refused() {
    let medium = Medium::of(&Conditions::STANDARD);
    let constant = Constant { drag: 0.3, lift: 0.0, spin_decay: 0.0 };
    let begin = |velocity_mps, spin_radps| {
        simulate(&Start { velocity_mps, spin_radps }, &medium, &constant, TimeStep::FINE)
    };
    let up = Vec3::new(50.0, 10.0, 0.0);
    for broken in
        [Vec3::new(f64::NAN, 0.0, 0.0), Vec3::new(0.0, f64::INFINITY, 0.0), Vec3::new(0.0, 0.0, f64::NAN)]
    {
        assert_eq!(begin(broken, Vec3::ZERO), Err(LaunchError::NotFinite { quantity: Quantity::Velocity }));
        assert_eq!(begin(up, broken), Err(LaunchError::NotFinite { quantity: Quantity::Spin }));
    }
    for (y, elevation_rad) in [(0.0, 0.0), (-50.0, -45.0 * DEG)] {
        match begin(Vec3::new(30.0, y, 40.0), Vec3::ZERO) {
            Err(LaunchError::NotUpward { elevation_rad: got }) => {
                assert_near(got, elevation_rad, 1e-12, "elevation")
            }
            other => panic!("{other:?}"),
        }
    }
    assert!(begin(up, Vec3::ZERO).is_ok());
}

#[test]
fn a_story_counts_the_units_it_changes() {
    let changes = |speed, carry| Hypothesis { speed, carry, ratio: 1.0 }.changes();
    assert_eq!([changes(0, 0), changes(1, 0), changes(0, 2), changes(2, 3)], [0, 1, 1, 2]);
}

#[test]
fn stories_with_as_many_changes_stand_by_their_fit() {
    let shot = launch(150.0, 12.0, 2500.0);
    let modeled = fly(&shot, &Conditions::STANDARD, TimeStep::FINE).unwrap().forward_m;
    // Twice the carry: three factors bring it back, none of them exactly but the second.
    let factors = [1.0, 0.53, 0.5, 0.48];
    let found =
        unit_hypotheses(2.0 * modeled, &shot, &[1.0], &factors, &Conditions::STANDARD, TimeStep::FINE);
    assert_eq!(found.iter().map(|story| story.carry).collect::<Vec<_>>(), [2, 3, 1]);
    for (story, ratio) in found.iter().zip([1.0, 0.96, 1.06]) {
        assert_near(story.ratio, ratio, 1e-12, "ratio");
    }
}

#[test]
fn a_story_whose_carry_leaves_the_limits_is_dropped() {
    // The longest flight the limits allow, in the wildest tail wind: only its own length decides.
    let conditions = Conditions { air: Air::STANDARD, wind: Wind::new(30.0, 0.0).unwrap() };
    let shot = launch(235.0, 20.0, 3000.0);
    let modeled = fly(&shot, &conditions, TimeStep::FINE).unwrap().forward_m;
    assert!(modeled > 470.0 && modeled * 1.05 > 500.0, "{modeled}");
    let found = |carry_m: f64| {
        unit_hypotheses(0.1 * carry_m, &shot, &[1.0], &[1.0, 10.0], &conditions, TimeStep::FINE).len()
    };
    assert_eq!(found(499.0_f64.min(modeled)), 1);
    assert_eq!(found(modeled * 1.05), 0);
}

#[test]
fn a_step_is_as_long_as_it_says() {
    assert_eq!(TimeStep::new(0.03).unwrap().seconds(), 0.03);
    let shot = Launch { speed_mps: 60.0 * MPH, ..driver() };
    let points = flight::track(&shot, &Conditions::STANDARD, TimeStep::COARSE).unwrap().points;
    assert_near(points[1].time_s, 0.1, 1e-15, "time of the second point");
}

#[test]
fn a_flight_on_the_edge_of_what_was_measured_is_inside() {
    let measured = Validity {
        slowest_air_speed_mps: 20.0,
        launch_spin_radps: 1500.0 * RPM * (1.0 - 1e-12),
        lowest_spin_ratio: 0.03,
        highest_spin_ratio: 1.0,
    };
    assert!(!measured.is_extrapolated(), "{measured:?}");
    let slow = Validity { slowest_air_speed_mps: 19.999, ..measured };
    assert!(slow.is_too_slow() && slow.is_extrapolated());
    let spins_little = Validity { launch_spin_radps: 1499.9 * RPM, ..measured };
    assert!(spins_little.has_too_little_spin() && spins_little.is_extrapolated());
    let falls_behind = Validity { lowest_spin_ratio: 0.0299, ..measured };
    assert!(falls_behind.has_too_little_spin() && !falls_behind.is_too_slow());
    let spins_much = Validity { highest_spin_ratio: 1.0001, ..measured };
    assert!(spins_much.has_too_much_spin() && spins_much.is_extrapolated());
}

#[test]
fn a_vector_is_finite_only_whole() {
    assert!(Vec3::new(1.0, -2.0, 0.0).is_finite());
    for broken in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        for vector in [Vec3::new(broken, 0.0, 0.0), Vec3::new(0.0, broken, 0.0), Vec3::new(0.0, 0.0, broken)]
        {
            assert!(!vector.is_finite(), "{vector:?}");
        }
    }
}

#[test]
fn a_window_holds_its_edges_and_nothing_beyond() {
    let window = Window::new([0.1, 0.3], [200.0, 500.0]).unwrap();
    for inside in [(0.1, 200.0), (0.3, 500.0), (0.2, 300.0)] {
        assert!(window.contains(inside.0, inside.1), "{inside:?}");
    }
    for outside in [(0.099, 300.0), (0.301, 300.0), (0.2, 199.0), (0.2, 501.0), (f64::NAN, 300.0)] {
        assert!(!window.contains(outside.0, outside.1), "{outside:?}");
    }
    for broken in [[0.0, 0.3], [0.1, 1.2], [0.3, 0.1], [0.2, 0.2], [f64::NAN, 0.3], [0.1, f64::NAN]] {
        assert!(Window::new(broken, [200.0, 500.0]).is_err(), "{broken:?}");
    }
    for broken in [[9.0, 500.0], [200.0, 1600.0], [500.0, 200.0]] {
        assert!(Window::new([0.1, 0.3], broken).is_err(), "{broken:?}");
    }
}

#[test]
fn a_smash_is_judged_at_its_edges() {
    let allowed = limits(Quantity::Smash);
    for (smash, verdict) in [
        (allowed.low, SmashVerdict::Ordinary),
        (1.52, SmashVerdict::Ordinary),
        (1.5201, SmashVerdict::High),
        (allowed.high, SmashVerdict::High),
        (allowed.low - 1e-9, SmashVerdict::Impossible),
        (allowed.high + 1e-9, SmashVerdict::Impossible),
        (f64::NAN, SmashVerdict::Impossible),
    ] {
        assert_eq!(judge_smash(smash), verdict, "{smash}");
    }
}

const DELIVERY: Delivery =
    Delivery { club_speed_mps: 45.0, dynamic_loft_rad: 0.22, attack_rad: 0.02, face_rad: 0.0, path_rad: 0.0 };

/// u_n = (1 + e) V cos sl/(1 + m/M + m toe²/I_th + m high²/I_hl), wherever the strike.
#[test]
fn a_strike_off_the_center_costs_speed_in_both_directions() {
    let head = Head { tangential_restitution: 0.3, ..Head::DRIVER };
    for (toe_m, high_m) in [(0.0, 0.0), (0.02, 0.0), (-0.02, 0.0), (0.0, 0.015), (0.0, -0.015), (0.01, 0.02)]
    {
        let found = impact(&DELIVERY, &Strike { toe_m, high_m }, &head).unwrap();
        let yielding = 1.0 / head.mass_kg
            + toe_m * toe_m / head.toe_heel_inertia_kgm2
            + high_m * high_m / head.high_low_inertia_kgm2;
        let (spin_loft, m) = (0.2_f64, BALL.mass_kg);
        let away = (1.0 + head.restitution) * 45.0 * spin_loft.cos() / (1.0 + m * yielding);
        let along = 2.0 / 7.0 * 1.3 * 45.0 * spin_loft.sin() / (1.0 + 2.0 * m / (7.0 * head.mass_kg));
        assert_near(found.launch.speed_mps, away.hypot(along), 1e-9, "ball speed");
        assert_near(found.smash, found.launch.speed_mps / 45.0, 1e-12, "smash");
    }
}

#[test]
fn an_impact_that_overflows_is_refused_whatever_overflows() {
    let strike = Strike { toe_m: 0.02, high_m: 0.0 };
    let deep = Head { gravity_depth_m: f64::MAX, ..Head::DRIVER };
    assert_eq!(impact(&DELIVERY, &strike, &deep), Err(ImpactError::NotFinite));
    for refusal in [ImpactError::NotFinite, ImpactError::NotPositive, ImpactError::NoContact] {
        assert!(refusal.to_string().len() > 20, "{refusal:?}");
    }
}
