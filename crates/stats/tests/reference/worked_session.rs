//! One invented session of four rounds, worked through by every method when the methods were chosen.
//!
//! Computed with numpy and scipy, the fixed effects also with statsmodels OLS; digits as tabled, 1e-6.

use stats::spread_ratio;
use stats::{Level, RoundShot, Rounds, Sample, TRIM, welch, yuen};

/// Order AB BA AB BA; by round, the shots of A and of B.
const SESSION: [[[f64; 3]; 2]; 4] = [
    [[251.0, 247.0, 255.0], [258.0, 262.0, 249.0]],
    [[254.0, 250.0, 228.0], [266.0, 259.0, 261.0]],
    [[257.0, 252.0, 260.0], [263.0, 255.0, 268.0]],
    [[256.0, 253.0, 258.0], [261.0, 241.0, 264.0]],
];

pub(crate) fn build(index: usize) -> Sample {
    Sample::new(SESSION.iter().flat_map(|round| round[index]).collect()).unwrap()
}

fn rounds() -> Rounds {
    let mut shots = Vec::new();
    for (round, sets) in SESSION.iter().enumerate() {
        for (build, set) in sets.iter().enumerate() {
            shots.extend(set.iter().map(|&value| RoundShot { round, build, value }));
        }
    }
    Rounds::new(&shots).unwrap()
}

pub(crate) fn close(actual: f64, tabled: f64) {
    assert!((actual - tabled).abs() < 1e-6, "{actual} is not {tabled}");
}

#[test]
fn welch_and_yuen() {
    let (a, b) = (build(0), build(1));
    let test = welch(&b, &a).unwrap();
    close(test.diff, 7.166667);
    close(test.half_width(Level::P95), 6.731278);
    close(test.p_value(), 0.037978);
    close(test.df, 21.805106);
    let test = yuen(&b, &a, TRIM).unwrap().difference;
    close(test.diff, 6.875);
    close(test.half_width(Level::P95), 4.403841);
    close(test.p_value(), 0.004920);
    close(test.df, 13.342741);
}

#[test]
fn round_by_round() {
    let result = rounds().compare(1, 0).unwrap();
    let test = result.fixed_effects;
    close(test.diff, 7.166667);
    close(test.half_width(Level::P95), 6.934852);
    close(test.p_value(), 0.043499);
    close(test.df, 19.0);
    close(result.information, 6.0);
    close(result.residual_sd.powi(2), 65.868421);
    let paired = result.paired.unwrap();
    close(paired.half_width(Level::P95), 12.298903);
    close(paired.p_value(), 0.160715);
    close(paired.df, 3.0);
    let interaction = result.interaction.unwrap();
    close(interaction.f, 1.459068);
    close(interaction.p, 0.263123);
    assert_eq!([interaction.df_between, interaction.df_within], [3.0, 16.0]);
    assert!(!result.falls_back());
    let headline = result.headline();
    close(headline.half_width(Level::P95), 7.628338);
    close(headline.half_width(Level::P90), 6.302082);
    close(headline.half_width(Level::P99), 10.427102);
    assert!(!headline.interval(Level::P95).excludes(0.0) && headline.p_value() > 0.05);
}

#[test]
fn spreads() {
    let (a, b) = (build(0), build(1));
    let spread = spread_ratio(&b, &a).unwrap();
    close(spread.ratio(), 0.909533);
    let [low, high] = crate::spreads::as_published(&spread, Level::P95);
    close(low, 0.311091);
    close(high, 2.659188);
    let iterated = spread.interval(Level::P95).unwrap();
    close(iterated.low, 0.287983);
    close(iterated.high, 4.784443);
}
