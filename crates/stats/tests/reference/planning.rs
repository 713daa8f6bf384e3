//! 09 and the project's own plan: power, shots needed, planned looks.

use crate::passport::each_case;
use stats::power::{Sizes, detection_power, equivalence_power, shots_for_equivalence, shots_to_detect};
use stats::{Level, planned_looks};

#[test]
fn power_cases() {
    each_case("09_power.json", |case| {
        let (d, level) = (case.number("d"), Level::missing(case.number("alpha")).unwrap());
        if case.has("power") {
            let power = case.number("power");
            let n = case.expected("n_per_group").as_f64().unwrap();
            case.within("power at n_per_group", detection_power(d, Sizes::each(n), level), power, 1e-6);
            case.exactly("n_ceiling", shots_to_detect(d, level, power).unwrap().ideal as u64);
            return;
        }
        let sizes = Sizes { first: case.number("n1"), second: case.number("n2") };
        case.close("df", sizes.first + sizes.second - 2.0, "rel");
        case.close("ncp", d / (1.0 / sizes.first + 1.0 / sizes.second).sqrt(), "rel");
        case.close("power", detection_power(d, sizes, level), "rel");
    });
}

/// Shots per build for 80 % power, as simulated and tabled when the method was chosen.
#[test]
fn the_table_of_shots() {
    for (margin, sd, detect, same) in [
        (5.0, 8.0, [42, 51], [45, 55]),
        (5.0, 11.0, [77, 94], [84, 102]),
        (5.0, 14.0, [125, 152], [135, 164]),
        (8.0, 8.0, [17, 21], [18, 22]),
        (8.0, 11.0, [31, 38], [34, 42]),
        (8.0, 14.0, [50, 61], [54, 66]),
        (500.0, 600.0, [24, 30], [26, 32]),
    ] {
        let found = shots_to_detect(margin / sd, Level::P95, 0.8).unwrap();
        assert_eq!([found.ideal, found.tool], detect, "detect {margin} of {sd}");
        let found = shots_for_equivalence(margin / sd, 0.0, Level::P90, 0.8).unwrap();
        assert_eq!([found.ideal, found.tool], same, "same {margin} of {sd}");
    }
}

/// What n shots with each build can detect and certify, in SDs, to the two decimals of the table.
#[test]
fn the_table_of_sessions() {
    for (n, detect, certify) in [
        (3.0, 3.07, 2.92),
        (5.0, 2.02, 2.03),
        (6.0, 1.80, 1.82),
        (8.0, 1.51, 1.54),
        (10.0, 1.32, 1.36),
        (12.0, 1.20, 1.23),
        (15.0, 1.06, 1.10),
        (20.0, 0.91, 0.94),
        (25.0, 0.81, 0.84),
        (30.0, 0.74, 0.76),
        (40.0, 0.63, 0.66),
        (60.0, 0.52, 0.54),
        (100.0, 0.40, 0.42),
    ] {
        let power = |difference| detection_power(difference, Sizes::each(n), Level::P95);
        assert!(power(detect - 0.006) < 0.8 && power(detect + 0.006) > 0.8, "detect at {n}");
        let power = |margin| equivalence_power(margin, 0.0, Sizes::each(n), Level::P90);
        assert!(power(certify - 0.006) < 0.8 && power(certify + 0.006) > 0.8, "certify at {n}");
    }
}

#[test]
fn equivalence_power_at_the_margin_is_the_error() {
    let at_margin = equivalence_power(0.8, 0.8, Sizes::each(60.0), Level::P90);
    assert!((at_margin - 0.05).abs() < 1e-3, "{at_margin}");
    assert_eq!(equivalence_power(0.0, 0.0, Sizes::each(60.0), Level::P90), 0.0);
}

#[test]
fn planned_look_cases() {
    each_case("17_planned_looks.json", |case| {
        let level = Level::missing(case.number("alpha")).unwrap();
        let looks = planned_looks(level, &case.numbers("times")).unwrap();
        case.all_close("z", &looks.iter().map(|look| look.z).collect::<Vec<_>>(), "rel");
        case.all_close("nominal_p", &looks.iter().map(|look| look.nominal_p).collect::<Vec<_>>(), "rel");
    });
}

/// O'Brien–Fleming-type boundary at five equal looks, as published for α = 0.05 two-sided.
#[test]
fn published_five_looks() {
    let looks = planned_looks(Level::P95, &[0.2, 0.4, 0.6, 0.8, 1.0]).unwrap();
    for (look, z) in looks.iter().zip([4.877, 3.357, 2.680, 2.290, 2.031]) {
        assert!((look.z - z).abs() < 6e-4, "{look:?}, published {z}");
    }
}

/// Nominal p after rounds 2..K as tabled to three digits, and the final z.
#[test]
fn the_table_of_looks() {
    let table: [(f64, &[f64]); 10] = [
        (1.993, &[0.0121, 0.0462]),
        (2.014, &[0.00305, 0.0183, 0.044]),
        (2.032, &[0.000788, 0.00735, 0.022, 0.0422]),
        (2.045, &[0.000207, 0.00298, 0.0111, 0.0242, 0.0408]),
        (2.056, &[5.5e-05, 0.00122, 0.00566, 0.0141, 0.0258, 0.0398]),
        (2.065, &[1.47e-05, 0.000499, 0.00289, 0.00816, 0.0163, 0.0269, 0.0389]),
        (2.073, &[3.97e-06, 0.000205, 0.00148, 0.00479, 0.0104, 0.0182, 0.0275, 0.0382]),
        (2.081, &[1.08e-06, 8.5e-05, 0.00076, 0.00279, 0.00661, 0.0123, 0.0195, 0.0279, 0.0375]),
        (2.087, &[2.93e-07, 3.53e-05, 0.000391, 0.00164, 0.00424, 0.00836, 0.0139, 0.0207, 0.0285, 0.0369]),
        (
            2.093,
            &[
                8.01e-08, 1.47e-05, 0.000202, 0.000966, 0.00272, 0.0057, 0.00992, 0.0153, 0.0215, 0.0287,
                0.0363,
            ],
        ),
    ];
    for (rounds, (final_z, p)) in (3_u32..).zip(table) {
        let times: Vec<f64> = (2..=rounds).map(|round| f64::from(round) / f64::from(rounds)).collect();
        let looks = planned_looks(Level::P95, &times).unwrap();
        assert_eq!(looks.len(), p.len());
        for (look, p) in looks.iter().zip(p) {
            // Three digits, and up to half a percent from the coarser integration behind the table (17 is exact).
            let unit = 10f64.powf(p.log10().floor() - 2.0);
            assert!((look.nominal_p - p).abs() <= 0.5 * unit + 0.005 * p, "K {rounds}: {look:?}, tabled {p}");
        }
        // The table's step left its five-look boundary at 2.032 where the published one is 2.031.
        assert!((looks.last().unwrap().z - final_z).abs() < 1.1e-3, "K {rounds}");
    }
}
