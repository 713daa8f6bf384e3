//! `cargo xtask simulate`: the moments of invented sessions, to see what the assumptions amount to.

use super::{Effects, LEVELS, MEASURES, Turns, blocked, in_turns, random, session};
use anyhow::{Context, Result, bail};

/// What to simulate, from the words of the command line.
struct Options {
    level: String,
    order: String,
    builds: usize,
    each: usize,
    sessions: u64,
    seed: u64,
}

/// Prints average, deviation, skewness and kurtosis of every measure over many sessions.
pub(crate) fn print(words: &[&str]) -> Result<()> {
    let options = Options::parse(words)?;
    let parameters = LEVELS.iter().find(|level| level.0 == options.level).map(|level| level.1);
    let parameters = parameters.with_context(|| format!("no level is called `{}`", options.level))?;
    let builds = vec![Effects::default(); options.builds];
    let mut values: [Vec<f64>; MEASURES.len()] = Default::default();
    for number in 0..options.sessions {
        let mut random = random(options.seed, number);
        let turns = match options.order.as_str() {
            "reversed" => in_turns(options.builds, options.each, 3, Turns::Reversed, &mut random),
            "fixed" => in_turns(options.builds, options.each, 3, Turns::Fixed, &mut random),
            "drawn" => in_turns(options.builds, options.each, 3, Turns::Drawn, &mut random),
            "blocked" => blocked(&vec![options.each; options.builds]),
            other => bail!("no order is called `{other}`"),
        };
        for shot in session(&turns, &parameters, &builds, &mut random) {
            values.iter_mut().zip(shot).for_each(|(all, value)| all.push(value));
        }
    }
    println!("{:13}{:>10}{:>10}{:>10}{:>10}", "measure", "average", "sd", "skewness", "kurtosis");
    for (name, values) in MEASURES.iter().zip(&values) {
        let Moments { mean, sd, skewness, kurtosis } = moments(values);
        println!("{name:13}{mean:>10.2}{sd:>10.3}{skewness:>10.2}{kurtosis:>10.2}");
    }
    Ok(())
}

impl Options {
    fn parse(words: &[&str]) -> Result<Self> {
        let mut options = Self {
            level: "typical".into(),
            order: "reversed".into(),
            builds: 2,
            each: 15,
            sessions: 10_000,
            seed: 1,
        };
        for pair in words.chunks(2) {
            let &[key, value] = pair else { bail!("`{}` needs a value", pair.join(" ")) };
            match key {
                "--level" => options.level = value.into(),
                "--order" => options.order = value.into(),
                "--builds" => options.builds = value.parse()?,
                "--each" => options.each = value.parse()?,
                "--sessions" => options.sessions = value.parse()?,
                "--seed" => options.seed = value.parse()?,
                other => bail!("`{other}` is not an option of simulate"),
            }
        }
        Ok(options)
    }
}

/// Population moments; skewness m₃/m₂^1.5 and kurtosis m₄/m₂² (3 for a normal), with divisor n.
pub(super) struct Moments {
    pub(super) mean: f64,
    pub(super) sd: f64,
    pub(super) skewness: f64,
    pub(super) kurtosis: f64,
}

pub(super) fn moments(values: &[f64]) -> Moments {
    let n = values.iter().map(|_| 1.0).sum::<f64>();
    let mean = values.iter().sum::<f64>() / n;
    let central = |power| values.iter().map(|value| (value - mean).powi(power)).sum::<f64>() / n;
    let variance = central(2);
    Moments {
        mean,
        sd: variance.sqrt(),
        skewness: central(3) / variance.powf(1.5),
        kurtosis: central(4) / (variance * variance),
    }
}

#[cfg(test)]
mod tests {
    use super::super::model::{NONE, STRONG, TYPICAL};
    use super::super::{Turn, order};
    use super::*;
    use crate::simulate::model::Parameters;

    const SESSIONS: u64 = 20_000;

    /// Values by measure of many sessions in turns, 15 shots each of two builds.
    fn many(parameters: &Parameters, builds: &[Effects]) -> [Vec<f64>; MEASURES.len()] {
        let mut values: [Vec<f64>; MEASURES.len()] = Default::default();
        for number in 0..SESSIONS {
            let mut random = random(7, number);
            let turns: Vec<Turn> = order::in_turns(2, 15, 3, Turns::Reversed, &mut random);
            for shot in session(&turns, parameters, builds, &mut random) {
                values.iter_mut().zip(shot).for_each(|(all, value)| all.push(value));
            }
        }
        values
    }

    fn near(what: &str, value: f64, expected: f64, tolerance: f64) {
        assert!((value - expected).abs() <= tolerance, "{what}: {value}, expected {expected}");
    }

    /// Against the first generator of the project (Python, numpy), 40,000 sessions with its own seed.
    #[test]
    fn golf_shape_is_that_of_the_first_generator() {
        let values = many(&NONE, &[]);
        let expected = [
            ("carry", 255.0, 11.47, -1.88, 8.01),
            ("offline", 4.0, 15.69, 0.0, 4.45),
            ("ball_speed", 160.0, 2.997, -1.12, 5.49),
            ("launch_angle", 13.0, 1.602, 0.0, 2.99),
            ("spin_rate", 2850.0, 382.7, 1.22, 8.22),
            ("club_speed", 108.0, 1.349, 0.0, 3.0),
        ];
        for (values, (name, mean, sd, skewness, kurtosis)) in values.iter().zip(expected) {
            let found = moments(values);
            near(&format!("{name} average"), found.mean, mean, 0.008 * sd);
            near(&format!("{name} sd"), found.sd, sd, 0.006 * sd);
            near(&format!("{name} skewness"), found.skewness, skewness, 0.03);
            near(&format!("{name} kurtosis"), found.kurtosis, kurtosis, 0.25);
        }
    }

    /// By hand: Var = (1.8 · 2.2)² + 5.5² + E[L²] − E[L]², L uniform on 15..50 in 8 % of the shots.
    #[test]
    fn carry_scatters_as_its_parts_say() {
        let square_of_loss = 0.08 * (50f64.powi(3) - 15f64.powi(3)) / (3.0 * 35.0);
        let variance: f64 = 3.96 * 3.96 + 5.5 * 5.5 + square_of_loss - (0.08 * 32.5_f64).powi(2);
        near("carry sd", moments(&many(&NONE, &[])[0]).sd, variance.sqrt(), 0.05);
    }

    #[test]
    fn drift_and_memory_are_those_of_the_first_generator() {
        for (parameters, mean, sd, first) in
            [(TYPICAL, 253.36, 11.896, 248.97), (STRONG, 251.70, 12.706, 244.96)]
        {
            let carry = &many(&parameters, &[])[0];
            let found = moments(carry);
            near("average", found.mean, mean, 0.15);
            near("sd", found.sd, sd, 0.12);
            let firsts: Vec<f64> = carry.iter().step_by(30).copied().collect();
            near("first shot", moments(&firsts).mean, first, 0.4);
        }
    }

    #[test]
    fn a_build_shifts_and_spreads_its_own_shots_only() {
        let mut longer = Effects::default();
        longer.shift[0] = 12.0;
        longer.spread[1] = 1.5;
        let mut random_ = random(3, 0);
        let turns = order::in_turns(2, 6, 3, Turns::Fixed, &mut random_);
        let plain = session(&turns, &TYPICAL, &[], &mut random_.clone());
        let changed = session(&turns, &TYPICAL, &[Effects::default(), longer], &mut random_);
        for ((turn, plain), changed) in turns.iter().zip(&plain).zip(&changed) {
            let own = turn.build == 1;
            near("carry", changed[0] - plain[0], if own { 12.0 } else { 0.0 }, 1e-9);
            let factor = if own { 1.5 } else { 1.0 };
            near("offline", changed[1] - 4.0, factor * (plain[1] - 4.0), 1e-9);
        }
    }

    #[test]
    fn a_session_depends_on_its_seed_and_number_alone() {
        let turns = blocked(&[5, 30]);
        let make = |seed, number| session(&turns, &TYPICAL, &[], &mut random(seed, number));
        assert_eq!(make(1, 4), make(1, 4));
        assert_ne!(make(1, 4), make(1, 5));
        assert_ne!(make(1, 4), make(2, 4));
    }
}
