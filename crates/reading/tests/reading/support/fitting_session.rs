//! Invented sessions as long and as wide as those of a fitting, with figures as a range shows them.

use session::units::SourceUnit;
use session::{Build, Order, Session, Shot};

/// How large a session, and in which units its figures were read.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shape {
    pub(crate) shots: usize,
    /// At most twelve.
    pub(crate) measures: usize,
    /// Meters and km/h instead of yards and mph.
    pub(crate) metric: bool,
    pub(crate) seed: u64,
}

/// Id, average, scatter, step of its last digit.
const MEASURES: [(&str, f64, f64, f64); 12] = [
    ("carry", 238.0, 9.0, 0.1),
    ("offline", 4.0, 16.0, 0.1),
    ("ball_speed", 152.0, 3.0, 0.1),
    ("launch_angle", 13.1, 1.4, 0.1),
    ("spin_rate", 2650.0, 310.0, 1.0),
    ("club_speed", 104.0, 1.6, 0.1),
    ("apex", 31.0, 4.5, 0.1),
    ("descent_angle", 38.0, 3.0, 0.1),
    ("spin_axis", 2.0, 6.0, 0.1),
    ("smash", 1.46, 0.025, 0.01),
    ("attack_angle", 1.2, 1.3, 0.1),
    ("club_path", 0.8, 2.1, 0.1),
];

/// Two builds hit in turn, three shots each.
pub(crate) fn fitting_session(shape: Shape) -> Session {
    let mut state = shape.seed;
    let shots = (0..shape.shots).map(|at| {
        let build = (at / 3 + at / 6) % 2;
        let values = MEASURES.iter().take(shape.measures).map(|&(id, average, scatter, step)| {
            let gap = if build == 1 { 0.4 * scatter } else { 0.0 };
            Some(read_in(id, average + gap + scatter * normal(&mut state), step, shape.metric))
        });
        let count = u32::try_from(at).unwrap_or(0);
        Shot {
            build,
            round: Some(count / 6 + 1),
            number: Some(count + 1),
            values: values.collect(),
            ..Shot::default()
        }
    });
    Session {
        builds: ["Own driver, 45.5 in, 60 g stiff", "Driver B, 45 in, 70 g stiff"]
            .map(|name| Build { name: name.into() })
            .to_vec(),
        measures: MEASURES.iter().take(shape.measures).map(|(id, ..)| (*id).into()).collect(),
        order: Order::Interleaved,
        shots: shots.collect(),
        ..Session::default()
    }
}

/// The value as it would be read: rounded to its last digit in the unit it was shown in.
fn read_in(id: &str, value: f64, step: f64, metric: bool) -> f64 {
    let known = session::measure::known(&id.into()).expect("a measure of the trade");
    let unit = match id {
        "carry" | "offline" | "apex" if metric => SourceUnit::Meter,
        "ball_speed" | "club_speed" if metric => SourceUnit::KilometerPerHour,
        _ => match SourceUnit::canonical(known.unit) {
            Some(unit) => unit,
            None => return (value / step).round() / (1.0 / step),
        },
    };
    let one = unit.convert(1.0, known.unit).expect("a unit of it");
    let shown = (value / one / step).round() / (1.0 / step).round();
    unit.convert(shown, known.unit).expect("a unit of it")
}

/// About normal, mean 0, deviation 1: the sum of twelve even draws, less six.
fn normal(state: &mut u64) -> f64 {
    let mut sum = -6.0;
    for _ in 0..12 {
        // splitmix64, S. Vigna (2015).
        *state = state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = *state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        sum += ((z ^ (z >> 31)) >> 11) as f64 / 9_007_199_254_740_992.0;
    }
    sum
}
