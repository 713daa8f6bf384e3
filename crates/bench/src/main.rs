//! The native half of `cargo xtask bench`; its twin for Node is `tests/bench/bench.mjs`, on the same inputs.
//!
//! Takes the folder with the inputs and prints a JSON object: `times` (milliseconds, the median and the least of many
//! runs, by name), `results` of what other packages compute too, and `growth` (times by size).

mod growth;
mod input;
mod stopwatch;
mod textbook;

use fitting::cause::{CauseRequest, cause};
use fitting::check::{CheckRequest, check};
use fitting::flying::{FlyRequest, Launch, fly};
use fitting::landing::{LandingRequest, landing};
use fitting::link::{PackRequest, View, pack};
use fitting::luck::{LuckRequest, Showing, luck};
use fitting::potential::{PotentialRequest, potential};
use fitting::read::{Hints, read};
use input::Failed;
use serde_json::json;
use std::fs;
use std::path::Path;
use stopwatch::Times;

fn main() -> Result<(), Failed> {
    let folder = std::env::args().nth(1).ok_or("name the folder with the inputs")?;
    let folder = Path::new(&folder);
    let mut times = Times::default();
    product(folder, &mut times)?;
    let results = textbook::run(folder, &mut times)?;
    let growth = growth::measure(folder)?;
    println!("{}", json!({"times": times.0, "results": results, "growth": growth}));
    Ok(())
}

/// The functions of the boundary.
fn product(folder: &Path, times: &mut Times) -> Result<(), Failed> {
    let request: CheckRequest = serde_json::from_str(&fs::read_to_string(folder.join("request.json"))?)?;
    let normal: CheckRequest = serde_json::from_str(&fs::read_to_string(folder.join("normal.json"))?)?;
    let rows = fs::read_to_string(folder.join("rows.csv"))?;
    times.take("check", 100, 1, || check(&request).is_ok());
    times.take("check_normal", 200, 1, || check(&normal).is_ok());
    times.take("read", 9, 1, || read(&rows, &Hints::default()).session.shots.len() > 1);
    let CheckRequest { session, question } = normal;
    let asked = LuckRequest {
        session: session.clone(),
        question: question.clone(),
        shown: None,
        showing: Showing::Picked,
    };
    times.take("luck", 20, 1, || luck(&asked).is_ok());
    let asked = PackRequest { session, question, view: View::default() };
    times.take("pack", 50, 1, || pack(&asked).is_ok());
    times.take("fly", 50, 100, fly_a_driver);
    let session = request.session;
    let asked = PotentialRequest { session: session.clone(), baseline: 0, map_for: None };
    times.take("potential", 20, 1, || potential(&asked).is_ok());
    let asked = CauseRequest { session: session.clone(), baseline: 0, candidate: 1, hand: None };
    times.take("cause", 20, 1, || cause(&asked).is_ok());
    let asked =
        LandingRequest { session, baseline: 0, candidate: Some(1), fairway: None, aim: None, hand: None };
    times.take("landing", 20, 1, || landing(&asked).is_ok());
    Ok(())
}

fn fly_a_driver() -> bool {
    let launch = Launch {
        ball_speed: 160.0,
        launch_angle: 13.0,
        spin_rate: 2_700.0,
        launch_direction: 0.0,
        spin_axis: 4.0,
    };
    fly(&FlyRequest { launch, conditions: None }).is_ok()
}
