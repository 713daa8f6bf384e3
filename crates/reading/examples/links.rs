//! How long links are: `cargo xtask links` prints this table, for the README.
//!
//! The sessions of `demo/`, and invented ones as long and as wide as those of a fitting, read in yards and in meters.
//! Beside the link's length stands what the same shots take as plain text: the tool's own CSV in the same letters.

#[path = "../tests/reading/support/fitting_session.rs"]
mod fitting_session;

#[path = "../tests/reading/support/decoded.rs"]
mod decoded;

use decoded::decoded;
use fitting_session::{Shape, fitting_session};
use reading::link::{PackRequest, pack, unpack};
use reading::write_csv;
use reading::{Hints, read};
use session::Session;
use session::question::{Question, Stopping, StoppingWord, View};
use std::path::Path;
use std::time::Instant;
use text::Voice;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    println!("| session | characters | as CSV text | opens in |\n|---|---:|---:|---:|");
    for name in ["fair-same", "sales-floor", "four-equal"] {
        let file = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../../demo/{name}.csv"));
        let session = read(&decoded(&std::fs::read(file)?), &Hints::default(), &Voice::english()).session;
        let what =
            format!("`demo/{name}.csv`: {} shots × {} measures", session.shots.len(), session.measures.len());
        print_row(&what, session)?;
    }
    for (shots, measures, metric) in [
        (20, 3, false),
        (60, 6, false),
        (60, 6, true),
        (120, 12, false),
        (200, 8, false),
        (200, 8, true),
        (1500, 8, true),
    ] {
        let units = if metric { "meters, km/h" } else { "yards, mph" };
        let what = format!("{shots} shots × {measures} measures, {units}");
        print_row(&what, fitting_session(Shape { shots, measures, metric, seed: 1 }))?;
    }
    Ok(())
}

fn print_row(what: &str, session: Session) -> Result<(), Box<dyn std::error::Error>> {
    let measure = session.measures.first().cloned().unwrap_or_else(|| "carry".into());
    let stopping = Stopping::Word(StoppingWord::Fixed);
    let question = Question {
        baseline: 0,
        candidate: None,
        measure,
        goal: None,
        margin: None,
        first_margin: None,
        stopping,
        differs: None,
    };
    let plain = write_csv(&session).len().div_ceil(3) * 4;
    let text = pack(&PackRequest { session, question, view: View::default() })
        .map_err(|error| format!("{error:?}"))?;
    let start = Instant::now();
    unpack(&text, &Voice::english()).map_err(|error| format!("{error:?}"))?;
    println!("| {what} | {} | {plain} | {:.2} ms |", text.len(), start.elapsed().as_secs_f64() * 1000.0);
    Ok(())
}
