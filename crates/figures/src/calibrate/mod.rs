//! `cargo xtask calibrate`: how often the verdicts are wrong, measured on invented sessions whose truth is known.
//!
//! Everything goes through `telling::check`, the very code that answers a golfer. Targets and their limits are
//! listed in [`targets`]; limits are the figures measured when the methods were chosen plus about three
//! Monte-Carlo standard errors. The full run writes `tests/calibration.json`, which the methods page shows.

mod beside;
mod bets;
mod days;
mod effort;
mod more;
mod piles;
mod plans;
mod prose;
mod rate;
pub(crate) mod rivals;
mod said;
mod sessions;
mod strained;
mod targets;
mod typical;

use crate::folder::root;
use anyhow::{Context, Result, bail};
use effort::{Effort, FULL, SHORT};
use rate::Row;
use std::fs;
use std::time::Instant;

/// Measures the targets and prints the table; what was measured in full is also written down.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let (effort, only): (Effort, Option<u32>) = match words {
        [] => (FULL, None),
        ["--short"] => (SHORT, None),
        ["--only", target] | ["--short", "--only", target] => {
            let effort = if words.len() == 2 { FULL } else { SHORT };
            (effort, Some(target.parse().context("--only takes the number of a target")?))
        }
        other => bail!("`{}` is not an option of calibrate", other.join(" ")),
    };
    let started = Instant::now();
    println!("{:>3}  {:66}{:>9}{:>9}{:>9}  ", "", "", "measured", "se", "limit");
    let mut rows: Vec<Row> = Vec::new();
    for (_, measure) in targets::ALL.iter().filter(|t| only.is_none_or(|only| t.0.contains(&only))) {
        for row in measure(effort) {
            println!("{row}");
            rows.push(row);
        }
    }
    let missed = rows.iter().filter(|row| !row.pass).count();
    println!(
        "\n{} of {} within their limits, {:.0} s",
        rows.len() - missed,
        rows.len(),
        started.elapsed().as_secs_f64()
    );
    if effort.divisor == 1 {
        write_down(rows, only.is_some())?;
        println!("written to tests/calibration.json");
    }
    if missed > 0 {
        bail!("{missed} targets are missed");
    }
    Ok(())
}

/// Writes the table; with some targets only, their rows take the place of the old ones and the others stay.
fn write_down(rows: Vec<Row>, some_only: bool) -> Result<()> {
    let path = root().join("tests/calibration.json");
    let mut table = rows;
    if some_only {
        let text = fs::read_to_string(&path).with_context(|| path.display().to_string())?;
        let old: Vec<Row> = serde_json::from_str(&text).context("the table as it was")?;
        let measured: Vec<u32> = table.iter().map(|row| row.target).collect();
        table.extend(old.into_iter().filter(|row| !measured.contains(&row.target)));
        table.sort_by_key(|row| row.target);
    }
    let text = serde_json::to_string_pretty(&table).context("the table as JSON")?;
    fs::write(&path, text + "\n").with_context(|| path.display().to_string())
}
