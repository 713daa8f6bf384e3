//! What is timed: invented sessions, the same for every program, from fixed seeds.

use crate::simulate::model::TYPICAL;
use crate::simulate::{Effects, MEASURES, Turns, in_turns, random, session};
use anyhow::{Context, Result};
use serde_json::{Value, json};
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// Rows that reading and checking are timed at, the heading among them; the last is the most that is read.
const SHOTS: [usize; 7] = [100, 300, 1_000, 3_000, 10_000, 30_000, 100_000];
/// Builds and measures that checking is timed at, `SHOTS_EACH` shots of each build.
const TABLES: [(usize, usize); 8] = [(2, 1), (2, 2), (2, 4), (2, 8), (4, 8), (8, 8), (16, 8), (32, 8)];

const BUILDS: usize = 4;
const SHOTS_EACH: usize = 60;
/// Shots of each of the two builds of a normal session, and of the samples that other packages get too.
const NORMAL_EACH: usize = 30;
/// Resamples of the permutation test and of the bootstrap: scipy's default.
const DRAWS: u32 = 9_999;

/// Writes every input into a folder.
pub(crate) fn write(folder: &Path) -> Result<()> {
    fs::create_dir_all(folder)?;
    let put = |name: &str, text: String| fs::write(folder.join(name), text).with_context(|| name.to_owned());
    let normal = Session::new(2, NORMAL_EACH, 6);
    put("request.json", Session::new(BUILDS, SHOTS_EACH, 3).request(8).to_string())?;
    put("normal.json", normal.request(MEASURES.len()).to_string())?;
    put("numbers.json", normal.numbers().to_string())?;
    let most = SHOTS.iter().max().context("no sizes")?;
    let rows = Session::new(BUILDS, most / BUILDS, 3).rows(8)?;
    put("rows.csv", rows.lines().take(*most).collect::<Vec<_>>().join("\n"))?;
    for (builds, measures) in TABLES {
        put(&format!("table-{builds}x{measures}.csv"), Session::new(builds, SHOTS_EACH, 3).rows(measures)?)?;
    }
    let tables = TABLES.map(|(builds, measures)| format!("{builds}x{measures}"));
    let growth =
        json!({"question": question(), "shots": SHOTS, "tables": tables, "builds_and_measures": TABLES});
    put("growth.json", growth.to_string())
}

fn question() -> Value {
    json!({"baseline": 0, "measure": "carry", "stopping": "fixed"})
}

/// A shot with eight values: the generator's six, and two that follow from them.
struct Shot {
    build: usize,
    round: usize,
    values: Vec<(&'static str, f64)>,
}

struct Session {
    builds: usize,
    shots: Vec<Shot>,
}

impl Session {
    /// Builds hit in turn, `set` shots at a time; the second carries farther by about what 30 shots can just tell.
    fn new(builds: usize, each: usize, set: usize) -> Self {
        let mut random = random(1, 0);
        let turns = in_turns(builds, each, set, Turns::Reversed, &mut random);
        let second = Effects { shift: [4.0, 0.0, 0.0, 0.0, 0.0, 0.0], ..Effects::default() };
        let values = session(&turns, &TYPICAL, &[Effects::default(), second], &mut random);
        let with_two_more = |values: [f64; MEASURES.len()]| {
            let [carry, _, ball_speed, _, _, club_speed] = values;
            let more = [("total", carry + 20.0), ("smash", ball_speed / club_speed)];
            MEASURES.into_iter().zip(values).chain(more).collect()
        };
        let shots = turns.iter().zip(values).map(|(turn, values)| Shot {
            build: turn.build,
            round: turn.round + 1,
            values: with_two_more(values),
        });
        Self { builds, shots: shots.collect() }
    }

    fn request(&self, measures: usize) -> Value {
        let shots = self.shots.iter().enumerate().map(|(before, shot)| {
            let values = shot.values.iter().take(measures);
            let values: serde_json::Map<_, _> =
                values.map(|&(id, value)| (id.to_owned(), value.into())).collect();
            json!({"build": shot.build, "round": shot.round, "number": before + 1, "values": values})
        });
        let builds: Vec<Value> =
            (0..self.builds).map(|build| json!({"name": format!("Driver {build}")})).collect();
        json!({
            "session": {"builds": builds, "shots": shots.collect::<Vec<_>>(), "order": "interleaved"},
            "question": question(),
        })
    }

    fn rows(&self, measures: usize) -> Result<String> {
        let mut text = String::from("Build,Round");
        let headings = self.shots.first().map(|shot| shot.values.as_slice()).unwrap_or_default();
        for (id, _) in headings.iter().take(measures) {
            write!(text, ",{}", id.replace('_', " "))?;
        }
        for shot in &self.shots {
            write!(text, "\nDriver {},{}", shot.build, shot.round)?;
            for (_, value) in shot.values.iter().take(measures) {
                write!(text, ",{value:.2}")?;
            }
        }
        Ok(text)
    }

    /// Carry as two samples, and as the regression on build and round that compares within rounds.
    fn numbers(&self) -> Value {
        let carry = |shot: &Shot| shot.values.first().map_or(f64::NAN, |&(_, value)| value);
        let of = |build: usize| -> Vec<f64> {
            self.shots.iter().filter(|shot| shot.build == build).map(carry).collect()
        };
        let rounds = self.shots.iter().map(|shot| shot.round).max().unwrap_or(0);
        let column = |is: &dyn Fn(&Shot) -> bool| -> Vec<f64> {
            self.shots.iter().map(|shot| f64::from(u8::from(is(shot)))).collect()
        };
        let mut columns = vec![column(&|shot| shot.build == 1)];
        columns.extend((2..=rounds).map(|round| column(&|shot| shot.round == round)));
        json!({
            "candidate": of(1), "baseline": of(0), "draws": DRAWS, "seed": 1,
            "y": self.shots.iter().map(carry).collect::<Vec<_>>(), "columns": columns,
            "builds": self.shots.iter().map(|shot| shot.build).collect::<Vec<_>>(),
            "rounds": self.shots.iter().map(|shot| shot.round).collect::<Vec<_>>(),
        })
    }
}
