//! Directions and sizes of impact effects, as far as the rigid-body picture goes.

use crate::support::{DEG, MPH, RPM, assert_near};
use flight::impact::{
    Delivery, Head, ImpactError, SmashVerdict, Strike, face_to_path_rad, gear_spin, impact, judge_smash,
    smash, smash_cap, spin_loft_rad,
};

fn delivery(mph: f64, loft_deg: f64) -> Delivery {
    Delivery {
        club_speed_mps: mph * MPH,
        dynamic_loft_rad: loft_deg * DEG,
        attack_rad: 0.0,
        face_rad: 0.0,
        path_rad: 0.0,
    }
}

const CENTER: Strike = Strike { toe_m: 0.0, high_m: 0.0 };

#[test]
fn smash_cap_by_spin_loft_and_mass() {
    let heavy = Head { mass_kg: 0.210, ..Head::DRIVER };
    assert_near(smash_cap(0.0, &Head::DRIVER), 1.488, 5e-4, "200 g");
    assert_near(smash_cap(0.0, &heavy), 1.502, 6e-4, "210 g");
    for (degrees, cap) in [(8.0, 1.474), (10.0, 1.466), (12.0, 1.457), (15.0, 1.439), (20.0, 1.401)] {
        assert_near(smash_cap(degrees * DEG, &Head::DRIVER), cap, 6e-4, "by spin loft");
        let got = impact(&delivery(100.0, degrees), &CENTER, &Head::DRIVER).unwrap();
        assert_near(got.smash, smash_cap(degrees * DEG, &Head::DRIVER), 1e-12, "centered strike");
    }
}

#[test]
fn off_center_strikes_lose_speed() {
    let center = impact(&delivery(100.0, 12.0), &CENTER, &Head::DRIVER).unwrap().smash;
    for (millimeters, percent) in [(10.0, -0.8), (20.0, -3.0), (25.0, -4.6)] {
        let strike = Strike { toe_m: millimeters / 1000.0, high_m: 0.0 };
        let smash = impact(&delivery(100.0, 12.0), &strike, &Head::DRIVER).unwrap().smash;
        assert_near(100.0 * (smash / center - 1.0), percent, 0.06, "toe");
        let heel = Strike { toe_m: -strike.toe_m, high_m: 0.0 };
        assert_near(
            impact(&delivery(100.0, 12.0), &heel, &Head::DRIVER).unwrap().smash,
            smash,
            1e-12,
            "heel",
        );
    }
}

#[test]
fn gear_effect_has_its_sign_and_size() {
    let swing = delivery(113.0, 14.9);
    let toe = gear_spin(&swing, &Strike { toe_m: 0.010, high_m: 0.0 }, &Head::DRIVER);
    assert_near(toe.sidespin_radps / RPM, -760.0, 30.0, "10 mm toe");
    assert_near(toe.backspin_radps, 0.0, 0.0, "toe leaves back spin alone");
    let high = gear_spin(&swing, &Strike { toe_m: 0.0, high_m: 0.010 }, &Head::DRIVER);
    assert_near(high.backspin_radps / RPM, -1400.0, 60.0, "10 mm high");
    let low_heel = gear_spin(&swing, &Strike { toe_m: -0.010, high_m: -0.010 }, &Head::DRIVER);
    assert!(low_heel.sidespin_radps > 0.0 && low_heel.backspin_radps > 0.0);
}

/// A centered driver spins too much in this picture; a strike 8 mm high brings it near practice.
#[test]
fn driver_spin_by_strike_height() {
    let spin = |high_m| {
        let strike = Strike { toe_m: 0.0, high_m };
        impact(&delivery(113.0, 14.9), &strike, &Head::DRIVER).unwrap().launch.spin_radps / RPM
    };
    assert_near(spin(0.0), 3900.0, 50.0, "centered");
    assert_near(spin(0.008), 2800.0, 50.0, "8 mm high");
    assert_near(spin(0.005) - spin(0.0), -700.0, 20.0, "5 mm high");
}

/// A low smash is loft or an off-center strike: three degrees cost what 12 mm cost.
#[test]
fn loft_and_strike_cost_the_same_speed() {
    let at = |loft_deg: f64, toe_m: f64| {
        impact(&delivery(113.0, loft_deg), &Strike { toe_m, high_m: 0.0 }, &Head::DRIVER).unwrap()
    };
    let (base, lofted, toed) = (at(12.0, 0.0), at(15.0, 0.0), at(12.0, 0.012));
    assert_near(100.0 * (lofted.smash / base.smash - 1.0), -1.2, 0.06, "3 deg of spin loft");
    assert_near(100.0 * (toed.smash / base.smash - 1.0), -1.1, 0.06, "12 mm towards the toe");
    let more_rpm = (at(13.0, 0.0).launch.spin_radps - base.launch.spin_radps) / RPM;
    assert_near(more_rpm, 260.0, 10.0, "1 deg of spin loft");
}

#[test]
fn the_ball_starts_near_the_face_and_curves_away_from_the_path() {
    let swing = Delivery { face_rad: 2.0 * DEG, path_rad: -DEG, ..delivery(110.0, 13.0) };
    let got = impact(&swing, &CENTER, &Head::DRIVER).unwrap();
    let share = (got.launch.azimuth_rad - swing.path_rad) / face_to_path_rad(swing.face_rad, swing.path_rad);
    assert_near(share, 0.82, 0.03, "share of the way from path to face");
    assert!(got.launch.spin_axis_rad > 0.0, "an open face curves the ball to the right");
    let mirrored = Delivery { face_rad: -2.0 * DEG, path_rad: 1.0 * DEG, ..swing };
    let left = impact(&mirrored, &CENTER, &Head::DRIVER).unwrap();
    assert_near(left.launch.spin_axis_rad, -got.launch.spin_axis_rad, 1e-14, "mirror");
    assert_near(left.launch.azimuth_rad, -got.launch.azimuth_rad, 1e-14, "mirror");
}

/// Turning everything by one angle turns the launch by it and changes nothing else.
#[test]
fn aim_only_turns_the_impact() {
    let turn = 7.0 * DEG;
    let swing =
        Delivery { face_rad: 1.0 * DEG, path_rad: -2.0 * DEG, attack_rad: -0.03, ..delivery(95.0, 20.0) };
    let turned = Delivery { face_rad: swing.face_rad + turn, path_rad: swing.path_rad + turn, ..swing };
    let strike = Strike { toe_m: 0.004, high_m: -0.003 };
    let [one, two] = [swing, turned].map(|d| impact(&d, &strike, &Head::DRIVER).unwrap());
    assert_near(two.launch.azimuth_rad, one.launch.azimuth_rad + turn, 1e-13, "azimuth");
    assert_near(two.launch.spin_axis_rad, one.launch.spin_axis_rad, 1e-13, "axis");
    assert_near(two.launch.spin_radps, one.launch.spin_radps, 1e-10, "spin");
    assert_near(two.smash, one.smash, 1e-13, "smash");
}

#[test]
fn spin_loft_matches_its_cosine_form_and_keeps_small_angles() {
    for (l, a, f, p) in [(15.0, -3.0, 2.0, -1.0), (50.0, -6.0, -4.0, 3.0), (12.0, 5.0, 0.0, 4.0)] {
        let (l, a, f, p) = (l * DEG, a * DEG, f * DEG, p * DEG);
        let cosine: f64 = l.cos() * a.cos() * (f - p).cos() + l.sin() * a.sin();
        assert_near(spin_loft_rad(l, a, f, p), cosine.acos(), 1e-12, "cosine form");
    }
    assert_near(spin_loft_rad(1e-9, 0.0, 0.0, 0.0), 1e-9, 1e-22, "tiny angle");
    assert!(spin_loft_rad(f64::NAN, 0.0, 0.0, 0.0).is_nan());
}

#[test]
fn smash_is_judged_by_the_limits() {
    assert_near(smash(75.0, 50.0).unwrap(), 1.5, 0.0, "smash");
    for (ball, club) in [(75.0, 0.0), (0.0, 50.0), (f64::NAN, 50.0), (75.0, f64::INFINITY), (1e300, 1e-300)] {
        assert_eq!(smash(ball, club), None);
    }
    assert_eq!(judge_smash(1.48), SmashVerdict::Ordinary);
    assert_eq!(judge_smash(1.53), SmashVerdict::High);
    for impossible in [0.69, 1.57, f64::NAN, f64::INFINITY] {
        assert_eq!(judge_smash(impossible), SmashVerdict::Impossible);
    }
}

#[test]
fn impossible_impacts_are_refused() {
    let swing = delivery(100.0, 12.0);
    let refused = |delivery: Delivery, head: Head| impact(&delivery, &CENTER, &head).unwrap_err();
    let not_a_number = Delivery { club_speed_mps: f64::NAN, ..swing };
    assert_eq!(refused(not_a_number, Head::DRIVER), ImpactError::NotFinite);
    assert_eq!(refused(Delivery { club_speed_mps: -1.0, ..swing }, Head::DRIVER), ImpactError::NotPositive);
    assert_eq!(refused(swing, Head { mass_kg: 0.0, ..Head::DRIVER }), ImpactError::NotPositive);
    let behind = Delivery { dynamic_loft_rad: 95.0 * DEG, ..swing };
    assert_eq!(refused(behind, Head::DRIVER), ImpactError::NoContact);
    let level = impact(&delivery(100.0, 0.0), &CENTER, &Head::DRIVER).unwrap();
    assert_near(level.launch.spin_radps, 0.0, 0.0, "no spin loft, no spin");
}
