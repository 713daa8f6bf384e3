//! The native half of `cargo xtask bench`; its twin for Node is `tests/bench/bench.mjs`, on the same inputs.
//!
//! Takes the folder with the inputs and prints a JSON object: `times` (milliseconds, the median and the least of many
//! runs, by name), `results` of what other packages compute too, and `growth` (times by size).

mod growth;
mod input;
mod stopwatch;
mod textbook;

use input::Failed;
use judging::flying::Launch;
use judging::luck::Showing;
use reading::link::{PackRequest, pack};
use reading::{Hints, read};
use serde_json::json;
use session::question::View;
use std::fs;
use std::path::Path;
use stopwatch::Times;
use telling::cause::{CauseRequest, cause};
use telling::check::{CheckRequest, check};
use telling::flying::{FlyRequest, fly};
use telling::landing::{LandingRequest, landing};
use telling::luck::{LuckRequest, luck};
use telling::potential::{PotentialRequest, potential};
use text::Voice;

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
    times.take("check", 100, 1, || check(&request, &Voice::english()).is_ok());
    times.take("check_normal", 200, 1, || check(&normal, &Voice::english()).is_ok());
    times.take("read", 9, 1, || read(&rows, &Hints::default(), &Voice::english()).session.shots.len() > 1);
    let CheckRequest { session, question } = normal;
    let asked = LuckRequest {
        session: session.clone(),
        question: question.clone(),
        shown: None,
        showing: Showing::Picked,
    };
    times.take("luck", 20, 1, || luck(&asked, &Voice::english()).is_ok());
    let asked = PackRequest { session, question, view: View::default() };
    times.take("pack", 50, 1, || pack(&asked).is_ok());
    times.take("fly", 50, 100, fly_a_driver);
    let session = request.session;
    let asked = PotentialRequest { session: session.clone(), baseline: 0, map_for: None };
    times.take("potential", 20, 1, || potential(&asked, &Voice::english()).is_ok());
    let asked = CauseRequest { session: session.clone(), baseline: 0, candidate: 1, hand: None };
    times.take("cause", 20, 1, || cause(&asked, &Voice::english()).is_ok());
    let asked = LandingRequest {
        session,
        baseline: 0,
        candidate: Some(1),
        fairway: None,
        aim: None,
        stopping: None,
        hand: None,
    };
    times.take("landing", 20, 1, || landing(&asked, &Voice::english()).is_ok());
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
    fly(&FlyRequest { launch, conditions: None }, &Voice::english()).is_ok()
}
