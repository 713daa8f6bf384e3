//! `cargo xtask bench`: how long the boundary's functions take, in wasm under Node and natively, on
//! inputs made here. It prints and asserts nothing: times are the machine's.

use crate::build;
use crate::shell::{cargo, npm, output, program, root};
use crate::simulate::model::TYPICAL;
use crate::simulate::{MEASURES, Turns, in_turns, random, session};
use anyhow::{Context, Result};
use serde_json::{Value, json};
use std::fmt::Write;
use std::fs;

const BUILDS: usize = 4;
const SHOTS_EACH: usize = 60;
const ROWS: usize = 100_000;

/// What is timed, and what is promised of it in milliseconds: under wasm, where nothing else is said.
const TIMED: [(&str, &str, &str); 6] = [
    ("check", "check 4 builds × 60 shots × 8 measures", "20"),
    ("read", "read 100,000 rows of 8 measures", "1000"),
    ("fly", "fly one driver shot, steps of 0.02 s", "0.06 native"),
    ("potential", "carry map and best of 4 builds × 60 shots", "100"),
    ("cause", "split a gap, 60 + 60 shots, with intervals", ""),
    ("landing", "fairway chances, 4 builds × 60 shots", ""),
];

/// Makes the inputs, runs both programs, prints a table.
pub(crate) fn print() -> Result<()> {
    build::site()?;
    let folder = root().join("target/bench");
    fs::create_dir_all(&folder)?;
    fs::write(folder.join("request.json"), request().to_string())?;
    fs::write(folder.join("rows.csv"), rows()?)?;
    let place = folder.display().to_string();
    npm(&[])?; // for its message where Node is missing or too old
    let wasm = times(&output(&mut program("node", &["tests/bench/bench.mjs", &place]))?)?;
    let native = times(&output(&mut cargo(&[
        "run",
        "--quiet",
        "--release",
        "--package=fitting",
        "--example=bench",
        "--",
        &place,
    ]))?)?;
    println!("\n{:42}{:>12}{:>12}{:>12}", "median, milliseconds", "wasm", "native", "promise");
    for (name, what, promise) in TIMED {
        let of = |times: &Value| times.get(name).and_then(Value::as_f64).context(name);
        println!("{what:42}{:>12.2}{:>12.2}{promise:>12}", of(&wasm)?, of(&native)?);
    }
    Ok(())
}

fn times(text: &str) -> Result<Value> {
    serde_json::from_str(text).with_context(|| format!("not times: {text}"))
}

/// A shot with eight values: the generator's six, and two that follow from them.
struct Shot {
    build: usize,
    round: usize,
    values: Vec<(&'static str, f64)>,
}

fn shots(each: usize) -> Vec<Shot> {
    let mut random = random(1, 0);
    let turns = in_turns(BUILDS, each, 3, Turns::Reversed, &mut random);
    let values = session(&turns, &TYPICAL, &[], &mut random);
    let with_two_more = |values: [f64; MEASURES.len()]| {
        let [carry, _, ball_speed, _, _, club_speed] = values;
        let more = [("total", carry + 20.0), ("smash", ball_speed / club_speed)];
        MEASURES.into_iter().zip(values).chain(more).collect()
    };
    turns
        .iter()
        .zip(values)
        .map(|(turn, values)| Shot {
            build: turn.build,
            round: turn.round + 1,
            values: with_two_more(values),
        })
        .collect()
}

fn request() -> Value {
    let shots = shots(SHOTS_EACH).into_iter().enumerate().map(|(before, shot)| {
        let values = shot.values.into_iter().map(|(id, value)| (id.to_owned(), value.into()));
        let values: serde_json::Map<_, _> = values.collect();
        json!({"build": shot.build, "round": shot.round, "number": before + 1, "values": values})
    });
    let builds: Vec<Value> = (0..BUILDS).map(|build| json!({"name": format!("Driver {build}")})).collect();
    json!({
        "session": {"builds": builds, "shots": shots.collect::<Vec<_>>(), "order": "interleaved"},
        "question": {"baseline": 0, "measure": "carry", "stopping": "fixed"},
    })
}

fn rows() -> Result<String> {
    let shots = shots(ROWS / BUILDS);
    let mut text = String::from("Build,Round");
    for (id, _) in shots.first().map(|shot| shot.values.as_slice()).unwrap_or_default() {
        write!(text, ",{}", id.replace('_', " "))?;
    }
    for shot in shots {
        write!(text, "\nDriver {},{}", shot.build, shot.round)?;
        for (_, value) in shot.values {
            write!(text, ",{value:.2}")?;
        }
    }
    Ok(text)
}
