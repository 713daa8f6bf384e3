//! Bad input is a typed refusal with its numbers; nothing panics, nothing hangs.

use crate::support::{DEG, MPH, RPM, YD, driver, launch};
use flight::{
    Air, Calibrated, Conditions, ConditionsError, Constant, LONGEST_FLIGHT_S, Launch, LaunchError, Medium,
    Quantity, Start, Station, TimeStep, Vec3, Verdict, Wind, Window, best_launch, best_spin, fly, limits,
    plausibility, sensitivities, simulate, standard_carry, track, unit_hypotheses, window_optimum,
};

const STRANGE: [f64; 12] = [
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::MAX,
    f64::MIN,
    f64::MIN_POSITIVE,
    5e-324,
    0.0,
    -0.0,
    -1.0,
    1e-9,
    1e9,
];

#[test]
fn a_value_outside_comes_back_with_its_limits() {
    let fast = Launch { speed_mps: 236.0 * MPH, ..driver() };
    let allowed = limits(Quantity::BallSpeed);
    assert_eq!(
        fly(&fast, &Conditions::STANDARD, TimeStep::FINE),
        Err(LaunchError::Outside {
            quantity: Quantity::BallSpeed,
            value: fast.speed_mps,
            low: allowed.low,
            high: allowed.high
        })
    );
    let unknown = Launch { spin_radps: f64::NAN, ..driver() };
    assert_eq!(unknown.check(), Err(LaunchError::NotFinite { quantity: Quantity::Spin }));
}

#[test]
fn values_on_the_limits_are_inside_them_in_any_unit() {
    for (mph, degrees, rpm, axis) in
        [(15.0, 60.0, 0.0, -60.0), (235.0, 60.0, 15_000.0, 60.0), (235.0, -5.0, 1.0, 0.0)]
    {
        let shot = Launch { spin_axis_rad: axis * DEG, ..launch(mph, degrees, rpm) };
        assert_eq!(shot.check(), Ok(()));
    }
}

#[test]
fn a_ball_that_stays_on_the_ground_is_no_flight_but_a_shot() {
    for degrees in [0.0, -0.0, -3.0] {
        let shot = launch(100.0, degrees, 2500.0);
        assert_eq!(shot.check(), Ok(()));
        let refused = fly(&shot, &Conditions::STANDARD, TimeStep::FINE);
        assert_eq!(refused, Err(LaunchError::NotUpward { elevation_rad: degrees * DEG }));
    }
}

/// A hop shorter than one step still lands, and as the parabola says.
#[test]
fn the_shortest_hop_lands() {
    for elevation_rad in [1e-3, 1e-6, 1e-12, 1e-100, 5e-324] {
        let hop = Launch { elevation_rad, ..launch(15.0, 1.0, 0.0) };
        let flight = fly(&hop, &Conditions::STANDARD, TimeStep::FINE).unwrap();
        assert!(flight.time_s.is_finite() && flight.carry_m.is_finite() && flight.carry_m >= 0.0);
        let expected_s = 2.0 * hop.speed_mps * elevation_rad / flight::STANDARD_GRAVITY_MPS2;
        assert!(
            (flight.time_s - expected_s).abs() <= 0.02 * expected_s + 1e-12,
            "{elevation_rad}: {flight:?}"
        );
    }
}

/// Every public function, every field, every strange number: an answer or a refusal.
#[test]
fn strange_numbers_never_panic() {
    let standard = Conditions::STANDARD;
    let step = TimeStep::COARSE;
    let window = Window::DELIVERABLE;
    for strange in STRANGE {
        let shots = [
            Launch { speed_mps: strange, ..driver() },
            Launch { elevation_rad: strange, ..driver() },
            Launch { azimuth_rad: strange, ..driver() },
            Launch { spin_radps: strange, ..driver() },
            Launch { spin_axis_rad: strange, ..driver() },
        ];
        for shot in shots {
            let outcomes = [
                fly(&shot, &standard, step).err(),
                track(&shot, &standard, step).err(),
                best_launch(&shot, &standard, &window, step).err(),
                best_spin(&shot, &standard, &window, step).err(),
                sensitivities(&shot, &standard, step).err(),
                standard_carry(200.0, &shot, &standard, step).err(),
                plausibility(200.0, &shot, &standard, step).err(),
            ];
            for refusal in outcomes.into_iter().flatten() {
                assert!(!refusal.to_string().is_empty());
            }
            let factors = [1.0, strange, 2.2];
            assert!(unit_hypotheses(strange, &shot, &factors, &factors, &standard, step).len() < 9);
        }
        let _ = window_optimum(strange, &standard, &window, step);
        let _ = Wind::new(strange, 0.0);
        let _ = TimeStep::new(strange);
        let _ = Air::new(strange, Station::AltitudeM(strange), strange);
        let _ = Air::new(288.15, Station::PressurePa(strange), 0.5);
        let _ = Window::new([strange, 0.3], [strange, 500.0]);
    }
}

/// The simulation without limits meets the strangest numbers and still ends.
#[test]
fn the_free_simulation_always_ends() {
    let air = Medium::of(&Conditions::STANDARD);
    for strange in STRANGE {
        let starts = [
            Start { velocity_mps: Vec3::new(strange, 10.0, 0.0), spin_radps: Vec3::ZERO },
            Start { velocity_mps: Vec3::new(10.0, strange, 0.0), spin_radps: Vec3::new(0.0, 0.0, 300.0) },
            Start { velocity_mps: Vec3::new(50.0, 10.0, 0.0), spin_radps: Vec3::new(strange, 0.0, strange) },
        ];
        let media = [
            air,
            Medium { density_kgpm3: strange, ..air },
            Medium { wind_mps: Vec3::new(0.0, strange, strange), ..air },
        ];
        for start in starts {
            for medium in media {
                let wild = Constant { drag: strange, lift: strange, spin_decay: strange };
                let outcomes = [
                    simulate(&start, &medium, &Calibrated::STANDARD, TimeStep::COARSE),
                    simulate(&start, &medium, &wild, TimeStep::COARSE),
                ];
                for flight in outcomes.into_iter().flatten() {
                    assert!(flight.time_s <= LONGEST_FLIGHT_S + 0.1);
                    assert!(flight.forward_m.is_finite() && flight.lateral_m.is_finite());
                }
            }
        }
    }
}

#[test]
fn an_updraft_that_carries_the_ball_away_is_stopped() {
    let start = Start { velocity_mps: Vec3::new(10.0, 10.0, 0.0), spin_radps: Vec3::ZERO };
    let updraft = Medium { wind_mps: Vec3::new(0.0, 80.0, 0.0), ..Medium::of(&Conditions::STANDARD) };
    let outcome = simulate(&start, &updraft, &Calibrated::STANDARD, TimeStep::COARSE);
    assert!(matches!(outcome, Err(LaunchError::StillFlying { after_s }) if after_s >= LONGEST_FLIGHT_S));
}

/// A ball blown back behind the tee gives no ratio.
#[test]
fn a_carry_behind_the_tee_is_no_denominator() {
    let gale = Conditions { air: Air::STANDARD, wind: Wind::new(-30.0, 0.0).unwrap() };
    let pitch = launch(40.0, 58.0, 9000.0);
    let refused = plausibility(30.0, &pitch, &gale, TimeStep::FINE).unwrap_err();
    assert!(matches!(refused, LaunchError::NoForwardCarry { forward_m } if forward_m < 0.1));
}

#[test]
fn conditions_outside_their_formulas_are_refused() {
    let hot = Air::new(400.0, Station::PressurePa(101_325.0), 0.5);
    assert!(matches!(hot, Err(ConditionsError::Outside { quantity: Quantity::Temperature, .. })));
    let high = Air::new(288.15, Station::AltitudeM(9000.0), 0.5);
    assert!(matches!(high, Err(ConditionsError::Outside { quantity: Quantity::Altitude, .. })));
    let percent = Air::new(288.15, Station::AltitudeM(0.0), 50.0);
    assert!(matches!(percent, Err(ConditionsError::Outside { quantity: Quantity::Humidity, .. })));
    assert!(Window::new([0.3, 0.2], [200.0, 300.0]).is_err());
    assert!(Window::new([0.1, 0.2], [200.0, 200.0]).is_err());
}

/// 150/12/2500 with 300 yd fits more than one story: all are listed, those with one wrong unit first.
#[test]
fn several_unit_stories_are_all_listed() {
    let standard = Conditions::STANDARD;
    let shot = launch(150.0, 12.0, 2500.0);
    let speeds = [1.0, 1.0 / MPH, 1.0 / (3.6 * MPH)];
    let carries = [1.0, 1.0 / YD, 1.0 / 3.0];
    let found = unit_hypotheses(300.0 * YD, &shot, &speeds, &carries, &standard, TimeStep::COARSE);
    assert!(found.iter().any(|h| (h.speed, h.carry) == (2, 2)), "km/h and ft: {found:?}");
    assert!(found.windows(2).all(|pair| pair[0].changes() <= pair[1].changes()));
}

/// Meters typed as yards cannot be told on one row: said in the docs, and true.
#[test]
fn meters_as_yards_pass_on_one_row() {
    let row = plausibility(155.0 * YD, &launch(120.0, 16.3, 7100.0), &Conditions::STANDARD, TimeStep::FINE);
    let row = row.unwrap();
    assert_eq!(row.verdict, Verdict::Ok);
    assert!((row.ratio - 0.923).abs() < 1e-3);
}

#[test]
fn validity_is_a_value() {
    let fine = |shot: &Launch| fly(shot, &Conditions::STANDARD, TimeStep::FINE).unwrap().validity;
    assert!(!fine(&driver()).is_extrapolated(), "{:?}", fine(&driver()));
    assert!(fine(&launch(44.0, 35.0, 5500.0)).is_too_slow());
    assert!(fine(&launch(167.0, 12.0, 1400.0)).has_too_little_spin());
    assert!(!fine(&Launch { spin_radps: 1500.0 * RPM, ..driver() }).has_too_little_spin());
    assert!(fine(&launch(20.0, 40.0, 12_000.0)).has_too_much_spin());
}
