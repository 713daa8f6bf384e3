//! Trade units, the reference files, and a small seeded generator for tests.

use flight::{Conditions, Flight, Launch, TimeStep, fly};
use serde_json::Value;
use std::f64::consts::PI;

pub(crate) const MPH: f64 = 0.447_04;
pub(crate) const YD: f64 = 0.914_4;
pub(crate) const DEG: f64 = PI / 180.0;
pub(crate) const RPM: f64 = PI / 30.0;

pub(crate) fn launch(mph: f64, deg: f64, rpm: f64) -> Launch {
    Launch {
        speed_mps: mph * MPH,
        elevation_rad: deg * DEG,
        azimuth_rad: 0.0,
        spin_radps: rpm * RPM,
        spin_axis_rad: 0.0,
    }
}

pub(crate) fn driver() -> Launch {
    launch(167.0, 10.9, 2690.0)
}

pub(crate) fn seven_iron() -> Launch {
    launch(120.0, 16.3, 7100.0)
}

/// Driver, slice, 7-iron, wedge, lob, chip.
pub(crate) fn shots() -> [Launch; 6] {
    [
        driver(),
        Launch { spin_axis_rad: 20.0 * DEG, azimuth_rad: -3.0 * DEG, ..launch(155.0, 12.5, 2900.0) },
        seven_iron(),
        launch(102.0, 24.2, 9300.0),
        launch(70.0, 45.0, 9800.0),
        launch(45.0, 35.0, 5500.0),
    ]
}

pub(crate) fn calm(launch: &Launch) -> Flight {
    fly(launch, &Conditions::STANDARD, TimeStep::FINE).unwrap()
}

pub(crate) fn reference(name: &str) -> Value {
    let path = format!("{}/../../tests/reference/flight/{name}", env!("CARGO_MANIFEST_DIR"));
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

pub(crate) fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

pub(crate) fn numbers(value: &Value) -> Vec<f64> {
    rows(value).iter().map(number).collect()
}

pub(crate) fn rows(value: &Value) -> &[Value] {
    value.as_array().unwrap_or_else(|| panic!("{value} is no list"))
}

/// A launch from a reference row: `ball_mph`, `launch_deg`, `spin_rpm`, and the angles where given.
pub(crate) fn launch_of(row: &Value) -> Launch {
    let angle = |key: &str| row.get(key).map_or(0.0, |value| number(value) * DEG);
    Launch {
        azimuth_rad: angle("azimuth_deg"),
        spin_axis_rad: angle("axis_deg"),
        ..launch(
            number(row.get("ball_mph").or(row.get("ball")).unwrap()),
            number(&row["launch_deg"]),
            row.get("spin_rpm").map_or(2500.0, number),
        )
    }
}

#[track_caller]
pub(crate) fn assert_near(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!(
        (got - expected).abs() <= tolerance,
        "{what}: got {got}, expected {expected} ± {tolerance} (off by {:e})",
        got - expected
    );
}

/// SplitMix64 (Steele, Lea, Flood 2014): the same cases in every run.
pub(crate) struct Draws(pub(crate) u64);

impl Draws {
    /// Uniform in `low..high`.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^= z >> 31;
        let unit = f64::from(u32::try_from(z >> 32).unwrap()) / f64::from(u32::MAX);
        low + (high - low) * unit
    }
}
