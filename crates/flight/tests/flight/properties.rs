//! What no table can check: symmetries, conservation, monotony.

use crate::support::{DEG, Draws, MPH, RPM, YD, assert_near, calm, driver, launch, seven_iron, shots};
use flight::{Aerodynamics, Air};
use flight::{
    BALL, Ball, Calibrated, Conditions, Constant, Flight, Launch, LaunchError, Medium, STANDARD_GRAVITY_MPS2,
    Start, TimeStep, Vec3, Wind, fly, simulate, simulate_path, track,
};

fn values(flight: &Flight) -> [f64; 12] {
    let Flight { carry_m, forward_m, lateral_m, curve_m, apex, descent_rad, .. } = *flight;
    let motion = [flight.landing_speed_mps, flight.landing_spin_radps, flight.time_s];
    let top = [apex.height_m, apex.forward_m, apex.time_s];
    [
        carry_m,
        forward_m,
        lateral_m,
        curve_m,
        descent_rad,
        motion[0],
        motion[1],
        motion[2],
        top[0],
        top[1],
        top[2],
        apex.lateral_m,
    ]
}

fn windy(ahead_mph: f64, right_mph: f64) -> Conditions {
    Conditions { air: Air::STANDARD, wind: Wind::new(ahead_mph * MPH, right_mph * MPH).unwrap() }
}

#[test]
pub(crate) fn azimuth_only_turns_the_flight() {
    for shot in shots() {
        let still = calm(&shot);
        for degrees in [-180.0, -91.0, -12.5, 0.3, 45.0, 90.0, 179.0] {
            let turned = calm(&Launch { azimuth_rad: degrees * DEG, ..shot });
            assert_near(turned.carry_m, still.carry_m, 1e-6, "carry");
            assert_near(turned.curve_m, still.curve_m, 1e-6, "curve");
            assert_near(turned.apex.height_m, still.apex.height_m, 1e-6, "apex");
        }
    }
}

#[test]
pub(crate) fn energy_never_grows_in_calm_air() {
    for shot in shots() {
        let path = track(&shot, &Conditions::STANDARD, TimeStep::FINE).unwrap().points;
        let energy: Vec<f64> = path
            .iter()
            .map(|p| p.velocity_mps.dot(p.velocity_mps) / 2.0 + STANDARD_GRAVITY_MPS2 * p.position_m.y)
            .collect();
        assert!(energy.windows(2).all(|pair| pair[1] < pair[0]), "{shot:?}");
    }
}

/// position(t) = position in still air, started at v₀ − w, + w t; the spin vector is the same.
#[test]
pub(crate) fn uniform_wind_is_a_moving_frame() {
    let wind = Vec3::new(-5.0, 0.0, 3.0);
    let still = Medium::of(&Conditions::STANDARD);
    let moving = Medium { wind_mps: wind, ..still };
    for shot in shots() {
        let start = Start::of(&shot);
        let seen = Start { velocity_mps: start.velocity_mps - wind, ..start };
        let there = simulate_path(&start, &moving, &Calibrated::STANDARD, TimeStep::FINE).unwrap().points;
        let here = simulate_path(&seen, &still, &Calibrated::STANDARD, TimeStep::FINE).unwrap().points;
        assert_eq!(there.len(), here.len());
        for (a, b) in there.iter().zip(&here) {
            let apart = (a.position_m - (b.position_m + wind * a.time_s)).length();
            assert!(apart < 1e-10, "{apart} m apart at {} s", a.time_s);
        }
    }
}

#[test]
pub(crate) fn density_and_mass_cancel() {
    struct WithoutDecay;
    impl Aerodynamics for WithoutDecay {
        fn drag(&self, spin_ratio: f64) -> f64 {
            Calibrated::STANDARD.drag(spin_ratio)
        }
        fn lift_per_spin_ratio(&self, spin_ratio: f64) -> f64 {
            Calibrated::STANDARD.lift_per_spin_ratio(spin_ratio)
        }
        fn spin_decay(&self) -> f64 {
            0.0
        }
    }
    let light = Medium::of(&Conditions::STANDARD);
    let ball = Ball { mass_kg: 2.0 * BALL.mass_kg, ..BALL };
    let heavy = Medium { density_kgpm3: 2.0 * light.density_kgpm3, ball, ..light };
    for shot in shots() {
        let start = Start::of(&shot);
        let one = simulate(&start, &light, &WithoutDecay, TimeStep::FINE).unwrap();
        let two = simulate(&start, &heavy, &WithoutDecay, TimeStep::FINE).unwrap();
        assert_eq!(one, two);
    }
}

#[test]
pub(crate) fn halving_the_step_changes_nothing_visible() {
    for shot in shots() {
        let half = fly(&shot, &Conditions::STANDARD, TimeStep::new(0.01).unwrap()).unwrap();
        for (a, b) in values(&calm(&shot)).iter().zip(values(&half)) {
            assert_near(*a, b, 1e-6, "halved step");
        }
        let coarse = fly(&shot, &Conditions::STANDARD, TimeStep::COARSE).unwrap();
        assert_near(coarse.carry_m / YD, half.carry_m / YD, 1e-5, "coarse step");
    }
}

/// What the docs of the step promise, over golf shots and over everything within the hard limits.
#[test]
fn coarse_steps_are_good_enough_everywhere() {
    let mut draws = Draws(7);
    let exact = TimeStep::new(0.005).unwrap();
    for (mph, degrees, rpm, tolerance_yd) in [
        ([60.0, 200.0], [5.0, 35.0], [1500.0, 10_000.0], 1e-4),
        ([15.0, 235.0], [0.5, 60.0], [0.0, 15_000.0], 0.02),
    ] {
        for _ in 0..500 {
            let mut pick = |[low, high]: [f64; 2]| draws.between(low, high);
            let shot = launch(pick(mph), pick(degrees), pick(rpm));
            let wind = Wind::new(pick([-8.0, 8.0]), pick([-8.0, 8.0])).unwrap();
            let conditions = Conditions { air: Air::STANDARD, wind };
            let carry_yd = |step| fly(&shot, &conditions, step).unwrap().carry_m / YD;
            assert_near(carry_yd(TimeStep::COARSE), carry_yd(exact), tolerance_yd, "coarse step");
        }
    }
}

/// The axis is fixed by construction; what can be seen is the exponential along the path through the air.
#[test]
pub(crate) fn spin_decays_along_its_axis() {
    for shot in shots() {
        let fine = TimeStep::new(0.002).unwrap();
        let path = track(&shot, &Conditions::STANDARD, fine).unwrap().points;
        assert!(path.windows(2).all(|pair| pair[1].spin_radps < pair[0].spin_radps));
        // Simpson would be nicer, but the trapezoid is already within 1e-6 of the length.
        let length_m: f64 = path
            .windows(2)
            .map(|p| {
                let mean = 0.5 * (p[0].velocity_mps.length() + p[1].velocity_mps.length());
                mean * (p[1].time_s - p[0].time_s)
            })
            .sum();
        let decay = 2.0e-5 * Air::STANDARD.density_kgpm3() / 1.225 * length_m / BALL.radius_m();
        let expected = shot.spin_radps * (-decay).exp();
        let landed = path.last().unwrap().spin_radps;
        assert_near(landed / RPM, expected / RPM, 1e-3, "spin at landing, rpm");
    }
}

#[test]
pub(crate) fn head_wind_shortens_and_tail_wind_lengthens() {
    for shot in [driver(), seven_iron()] {
        let carries: Vec<f64> = (-15..=15)
            .map(|mph| fly(&shot, &windy(f64::from(mph), 0.0), TimeStep::COARSE).unwrap().carry_m)
            .collect();
        assert!(carries.windows(2).all(|pair| pair[1] > pair[0]), "{carries:?}");
    }
}

#[test]
pub(crate) fn every_input_has_a_finite_flight_or_a_typed_refusal() {
    let mut draws = Draws(20_240_607);
    let (mut flown, mut refused) = (0, 0);
    for _ in 0..4000 {
        let mph = draws.between(5.0, 250.0);
        let shot = Launch {
            spin_axis_rad: draws.between(-90.0, 90.0) * DEG,
            azimuth_rad: draws.between(-200.0, 200.0) * DEG,
            ..launch(mph, draws.between(-10.0, 80.0), draws.between(0.0, 16_000.0))
        };
        let wind = windy(draws.between(-40.0, 40.0), draws.between(-40.0, 40.0));
        match fly(&shot, &wind, TimeStep::COARSE) {
            Ok(flight) => {
                flown += 1;
                assert!(values(&flight).iter().all(|value| value.is_finite()), "{shot:?}");
                assert!(flight.time_s > 0.0 && flight.landing_spin_radps >= 0.0, "{shot:?}");
            }
            Err(LaunchError::Outside { value, low, high, .. }) => {
                refused += 1;
                assert!(value < low || value > high);
            }
            Err(LaunchError::NotUpward { elevation_rad }) => {
                refused += 1;
                assert!(elevation_rad <= 0.0);
            }
            Err(other) => panic!("{shot:?} in {wind:?}: {other}"),
        }
    }
    assert!(flown > 500 && refused > 500, "{flown} flown, {refused} refused");
}

#[test]
fn mirrored_launch_flies_mirrored() {
    for shot in shots() {
        let wind = Wind::new(2.0, 3.0).unwrap();
        let mirrored_wind = Wind::new(2.0, -3.0).unwrap();
        let shot = Launch { azimuth_rad: 2.0 * DEG, spin_axis_rad: 9.0 * DEG, ..shot };
        let mirrored = Launch { azimuth_rad: -2.0 * DEG, spin_axis_rad: -9.0 * DEG, ..shot };
        let air = Air::STANDARD;
        let right = fly(&shot, &Conditions { air, wind }, TimeStep::FINE).unwrap();
        let left = fly(&mirrored, &Conditions { air, wind: mirrored_wind }, TimeStep::FINE).unwrap();
        assert_near(left.forward_m, right.forward_m, 0.0, "forward");
        assert_near(left.lateral_m, -right.lateral_m, 0.0, "lateral");
        assert_near(left.curve_m, -right.curve_m, 0.0, "curve");
        assert_near(left.apex.lateral_m, -right.apex.lateral_m, 0.0, "apex");
        assert!(right.curve_m > 0.0 && right.lateral_m > 0.0, "right is positive");
    }
}

#[test]
fn more_ball_speed_carries_farther() {
    let carries: Vec<f64> =
        (60..=200).map(|mph| calm(&launch(f64::from(mph), 13.0, 2600.0)).carry_m).collect();
    assert!(carries.windows(2).all(|pair| pair[1] > pair[0]));
}

/// The words at the smallest differences that matter: 1.5 mph of ball speed, 1.5 mph of club speed, 0.02 of smash.
#[test]
fn worth_of_speed() {
    for (ball_mph, degrees, rpm) in [(140.0, 14.0, 2900.0), (160.0, 13.0, 2800.0), (175.0, 11.0, 2500.0)] {
        let carry = |mph: f64| calm(&launch(mph, degrees, rpm)).carry_m;
        let worth = |mph: f64| (carry(ball_mph + mph) / carry(ball_mph) - 1.0) * 100.0;
        let smash = 1.48;
        assert!((0.95..1.5).contains(&worth(1.5)), "ball speed: {} % of carry", worth(1.5));
        for club in [worth(1.5 * smash), worth(0.02 * ball_mph / smash)] {
            assert!((1.45..2.15).contains(&club), "club speed or smash: {club} % of carry");
        }
    }
}

#[test]
fn thinner_air_carries_a_driver_farther() {
    let carry = |kelvin: f64, altitude_m: f64, humidity: f64| {
        let air = Air::new(kelvin, flight::Station::AltitudeM(altitude_m), humidity).unwrap();
        fly(&driver(), &Conditions { air, wind: Wind::CALM }, TimeStep::FINE).unwrap().carry_m
    };
    assert!(carry(303.15, 0.0, 0.0) > carry(283.15, 0.0, 0.0));
    assert!(carry(288.15, 1500.0, 0.0) > carry(288.15, 0.0, 0.0));
    // Humidity 0 to 100 % at 30 °C: +1.5 yd.
    assert_near((carry(303.15, 0.0, 1.0) - carry(303.15, 0.0, 0.0)) / YD, 1.5, 0.06, "humidity");
}

/// Without spin there is nothing to curve the ball, whatever the axis says.
#[test]
fn without_spin_the_flight_stays_in_its_plane() {
    let flight = calm(&Launch { spin_axis_rad: 30.0 * DEG, ..launch(140.0, 14.0, 0.0) });
    assert_near(flight.lateral_m, 0.0, 0.0, "lateral");
    assert!(flight.validity.has_too_little_spin() && flight.validity.is_extrapolated());
}

#[test]
fn the_path_starts_on_the_tee_and_ends_where_the_flight_does() {
    for shot in shots() {
        let track = track(&shot, &Conditions::STANDARD, TimeStep::COARSE).unwrap();
        let (first, last) = (track.points[0], track.points[track.points.len() - 1]);
        assert_eq!(first.position_m, Vec3::ZERO);
        assert_near(last.position_m.x, track.flight.forward_m, 0.0, "forward");
        assert_near(last.position_m.z, track.flight.lateral_m, 0.0, "lateral");
        assert_near(last.position_m.y, 0.0, 0.0, "height");
        assert!(track.points.windows(2).all(|pair| pair[1].time_s > pair[0].time_s));
        let highest = track.points.iter().map(|p| p.position_m.y).fold(0.0, f64::max);
        assert!(highest <= track.flight.apex.height_m + 1e-9);
        assert_eq!(track.flight, fly(&shot, &Conditions::STANDARD, TimeStep::COARSE).unwrap());
    }
}

#[test]
fn multipliers_move_the_carry_the_way_they_say() {
    let medium = Medium::of(&Conditions::STANDARD);
    let carry = |aerodynamics: &Calibrated| {
        simulate(&Start::of(&driver()), &medium, aerodynamics, TimeStep::FINE).unwrap().carry_m
    };
    let standard = carry(&Calibrated::STANDARD);
    assert!(carry(&Calibrated { drag_multiplier: 1.05, ..Calibrated::STANDARD }) < standard);
    assert!(carry(&Calibrated { lift_multiplier: 1.05, ..Calibrated::STANDARD }) > standard);
    let still = Constant { drag: 0.0, lift: 0.0, spin_decay: 0.0 };
    assert!(simulate(&Start::of(&driver()), &medium, &still, TimeStep::FINE).unwrap().carry_m > 0.0);
}
