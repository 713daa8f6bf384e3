//! The integrator against formulas that can be written down.

use crate::support::{DEG, MPH, assert_near, launch, shots};
use flight::{
    Air, BALL, Constant, Flight, Medium, STANDARD_GRAVITY_MPS2, Start, Station, TimeStep, Vec3, simulate,
};

const STILL: Medium = Medium { density_kgpm3: 1.225, wind_mps: Vec3::ZERO, ball: BALL };

fn constant(start: &Start, drag: f64, lift: f64) -> Flight {
    simulate(start, &STILL, &Constant { drag, lift, spin_decay: 0.0 }, TimeStep::FINE).unwrap()
}

/// Range v² sin 2θ/g, apex v² sin² θ/2g, time 2 v sin θ/g: parabolas are exact for the method.
#[test]
fn vacuum_is_a_parabola_to_the_last_digits() {
    for (mph, degrees) in [(150.0, 30.0), (20.0, 55.0), (230.0, 3.0), (100.0, 45.0)] {
        let flight = constant(&Start::of(&launch(mph, degrees, 3000.0)), 0.0, 0.0);
        let (v, angle, g) = (mph * MPH, degrees * DEG, STANDARD_GRAVITY_MPS2);
        assert_near(flight.carry_m, v * v * (2.0 * angle).sin() / g, 1e-10, "range");
        assert_near(flight.apex.height_m, (v * angle.sin()).powi(2) / (2.0 * g), 1e-11, "apex");
        assert_near(flight.apex.forward_m, flight.carry_m / 2.0, 1e-10, "apex place");
        assert_near(flight.time_s, 2.0 * v * angle.sin() / g, 1e-12, "time");
        assert_near(flight.descent_rad, angle, 1e-12, "descent");
        assert_near(flight.landing_speed_mps, v, 1e-11, "speed");
    }
}

/// A vacuum by density, not by coefficients, is the same vacuum and keeps the spin.
#[test]
fn no_density_is_a_vacuum_too() {
    let start = Start::of(&launch(150.0, 30.0, 2500.0));
    let nothing = Medium { density_kgpm3: 0.0, ..STILL };
    let flight = simulate(&start, &nothing, &flight::Calibrated::STANDARD, TimeStep::FINE).unwrap();
    assert_near(flight.carry_m, constant(&start, 0.0, 0.0).carry_m, 0.0, "carry");
    assert_near(flight.landing_spin_radps, start.spin_radps.length(), 0.0, "spin");
}

/// Apex (vt²/2g) ln(1 + v₀²/vt²), time (vt/g)(atan(v₀/vt) + acosh(exp(g h/vt²))), impact v₀/√(1 + v₀²/vt²).
#[test]
fn straight_up_with_drag_follows_the_closed_form() {
    for (v0, cd) in [(70.0, 0.25), (30.0, 0.5), (100.0, 0.2)] {
        let up = Start { velocity_mps: Vec3::new(0.0, v0, 0.0), spin_radps: Vec3::ZERO };
        let flight = constant(&up, cd, 0.0);
        let g = STANDARD_GRAVITY_MPS2;
        let vt = (2.0 * BALL.mass_kg * g / (1.225 * BALL.cross_section_m2() * cd)).sqrt();
        let height = vt * vt / (2.0 * g) * (v0 * v0 / (vt * vt)).ln_1p();
        let time = vt / g * ((v0 / vt).atan() + (g * height / (vt * vt)).exp().acosh());
        assert_near(flight.apex.height_m, height, 1e-6, "apex");
        assert_near(flight.time_s, time, 1e-6, "time");
        assert_near(flight.landing_speed_mps, v0 / (1.0 + v0 * v0 / (vt * vt)).sqrt(), 1e-6, "impact");
        assert_near(flight.carry_m, 0.0, 0.0, "carry");
    }
}

/// Lift does no work, and the path is the same forward and backward.
#[test]
fn lift_alone_keeps_energy_and_symmetry() {
    for lift in [0.05, 0.1, 0.2] {
        let flight = constant(&Start::of(&launch(120.0, 10.0, 2500.0)), 0.0, lift);
        assert_near(flight.landing_speed_mps, 120.0 * MPH, 1e-6, "speed");
        assert_near(flight.descent_rad, 10.0 * DEG, 1e-6, "descent");
        assert_near(flight.apex.forward_m, flight.forward_m / 2.0, 1e-6, "apex place");
        assert_near(flight.apex.time_s, flight.time_s / 2.0, 1e-6, "apex time");
    }
}

/// The error falls with the fourth power of the step, or nearly: 2⁴ = 16 per halving.
#[test]
fn the_method_is_of_fourth_order() {
    for shot in shots() {
        let carry = |seconds: f64| {
            let step = TimeStep::new(seconds).unwrap();
            flight::fly(&shot, &flight::Conditions::STANDARD, step).unwrap().carry_m
        };
        let exact = carry(0.002);
        let (wide, narrow) = ((carry(0.2) - exact).abs(), (carry(0.1) - exact).abs());
        assert!(wide < 1e-3, "{wide}");
        assert!(narrow < wide / 8.0, "{wide} {narrow} for {shot:?}");
    }
}

/// ρ = (0.34848 p_hPa − 0.009 RH% exp(0.061 t))/(273.15 + t). Source: OIML R 111-1, E.3 (from memory).
#[test]
fn air_agrees_with_the_legal_metrology_formula() {
    for celsius in [0.0_f64, 10.0, 20.0, 30.0, 35.0] {
        for hectopascal in [850.0, 950.0, 1013.25, 1040.0] {
            for humidity in [0.0, 0.3, 0.8, 1.0] {
                let station = Station::PressurePa(hectopascal * 100.0);
                let air = Air::new(celsius + 273.15, station, humidity).unwrap();
                let vapor = 0.009 * humidity * 100.0 * (0.061 * celsius).exp();
                let formula = (0.348_48 * hectopascal - vapor) / (273.15 + celsius);
                assert_near(air.density_kgpm3(), formula, 6e-4, "density");
            }
        }
    }
}
