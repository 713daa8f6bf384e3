//! A session as CSV that a spreadsheet opens and that reads back identical.
//!
//! The first line names the format, the order of the shots and what was asked of them. Every other row begins with what
//! it is: `build`, `custom`, `second`, `note`, `weather`, `columns`, `id`, `shot`, or for averages `summary` with its rows
//! `average`, `deviation`, `smallest` and `largest`. Text that a spreadsheet could take for a
//! formula, or that begins with an apostrophe, has an apostrophe before it. Numbers stand in the
//! canonical unit with all their digits.

use crate::own::question;
use session::measure::{self, MeasureId};
use session::question::Question;
use session::units::SourceUnit;
use session::{Order, Session, Summary, SummaryOf, TemperatureUnit};
use std::fmt::Write;

/// What the first cell of such a text says.
pub(crate) const MARK: &str = "Straight Answer session";

/// The version of the format.
pub(crate) const VERSION: &str = "1";

/// Cells before the first measure: kind, build's number and name, round, shot, left out.
pub(crate) const FIRST_MEASURE: usize = 6;

/// An average that is not known although its measure has an entry.
pub(crate) const UNKNOWN: &str = "?";

/// Writes a session as CSV.
#[must_use]
pub fn write_csv(session: &Session) -> String {
    written(session, None)
}

/// Writes a session as CSV together with what was asked of it: read back it is answered as it was.
#[must_use]
pub fn write_csv_asked(session: &Session, question: &Question) -> String {
    written(session, Some(question))
}

fn written(session: &Session, question: Option<&Question>) -> String {
    let mut out = String::new();
    let first = [MARK, VERSION, order_word(session.order)].map(str::to_owned);
    line(&mut out, first.into_iter().chain(question.map(question::cells).unwrap_or_default()));
    for (at, build) in session.builds.iter().enumerate() {
        line(&mut out, ["build".into(), (at + 1).to_string(), guarded(&build.name)]);
    }
    for custom in &session.custom {
        line(
            &mut out,
            ["custom".into(), guarded(custom.id.as_str()), guarded(&custom.name), guarded(&custom.unit)],
        );
    }
    if let Some(second) = &session.second {
        let place = (FIRST_MEASURE + session.measures.len() + 1).to_string();
        let values = second.values.iter().map(|value| filled(value));
        line(&mut out, ["second".into(), place, guarded(&second.name)].into_iter().chain(values));
    }
    let has_notes = session.shots.iter().any(|shot| shot.note.is_some());
    if has_notes {
        let place = FIRST_MEASURE + session.measures.len() + usize::from(session.second.is_some()) + 1;
        line(&mut out, ["note".into(), place.to_string()]);
    }
    if let Some(weather) = &session.weather {
        let [temperature, rest @ ..] = weather.figures().map(value);
        let unit = unit_word(weather.temperature_unit).to_owned();
        line(&mut out, ["weather".into(), temperature, unit].into_iter().chain(rest));
    }
    let before = |kind: &str, titles: [&str; 5]| {
        [kind, titles[0], titles[1], titles[2], titles[3], titles[4]].map(str::to_owned)
    };
    let second = session.second.as_ref().map(|second| guarded(&second.name));
    let note = has_notes.then(|| "note".to_owned());
    let headings = session.measures.iter().map(|id| guarded(&heading(session, id))).chain(second).chain(note);
    line(
        &mut out,
        before("columns", ["no.", "build", "round", "shot", "left out"]).into_iter().chain(headings),
    );
    let ids = session.measures.iter().map(|id| guarded(id.as_str()));
    line(&mut out, before("id", [""; 5]).into_iter().chain(ids));
    for shot in &session.shots {
        let fixed = [
            "shot".into(),
            (shot.build + 1).to_string(),
            guarded(session.builds.get(shot.build).map_or("", |b| b.name.as_str())),
            number(shot.round),
            number(shot.number),
            shot.left_out.as_ref().map_or(String::new(), |why| filled(why)),
        ];
        let values = (0..session.measures.len()).map(|at| value(shot.values.get(at).copied().flatten()));
        let second = session.second.as_ref().map(|second| {
            let at = shot.second.and_then(|at| second.values.get(at as usize));
            at.map_or(String::new(), |value| filled(value))
        });
        let note = has_notes.then(|| shot.note.as_deref().map_or(String::new(), guarded));
        line(&mut out, fixed.into_iter().chain(values).chain(second).chain(note));
    }
    for summary in &session.summaries {
        write_summary(&mut out, session, summary);
    }
    out
}

fn write_summary(out: &mut String, session: &Session, summary: &Summary) {
    let number_of = (summary.build + 1).to_string();
    let name = guarded(session.builds.get(summary.build).map_or("", |b| b.name.as_str()));
    let of = match summary.of {
        SummaryOf::All => "all",
        SummaryOf::Best => "best",
        SummaryOf::Chosen => "chosen",
    };
    line(
        out,
        [
            "summary".into(),
            number_of.clone(),
            name.clone(),
            number(summary.n),
            number(summary.line),
            of.to_owned(),
        ],
    );
    for kind in ["average", "deviation", "smallest", "largest"] {
        let cells: Vec<String> = session
            .measures
            .iter()
            .map(|id| {
                let Some(entry) = summary.values.get(id) else { return String::new() };
                match kind {
                    "average" => entry.mean.map_or(UNKNOWN.to_owned(), |v| value(Some(v))),
                    "deviation" => value(entry.sd),
                    "smallest" => value(entry.low),
                    _ => value(entry.high),
                }
            })
            .collect();
        if cells.iter().any(|cell| !cell.is_empty()) {
            let fixed = [
                kind.to_owned(),
                number_of.clone(),
                name.clone(),
                String::new(),
                String::new(),
                String::new(),
            ];
            line(out, fixed.into_iter().chain(cells));
        }
    }
}

/// The word for an order in the first line.
pub(crate) fn order_word(order: Order) -> &'static str {
    match order {
        Order::Interleaved => "interleaved",
        Order::Blocked => "blocked",
        Order::Unknown => "unknown",
    }
}

/// The unit of temperature by its word.
pub(crate) fn unit_named(word: &str) -> TemperatureUnit {
    let is_fahrenheit = word.trim() == unit_word(TemperatureUnit::Fahrenheit);
    if is_fahrenheit { TemperatureUnit::Fahrenheit } else { TemperatureUnit::Celsius }
}

/// The word for a unit of temperature.
pub(crate) fn unit_word(unit: TemperatureUnit) -> &'static str {
    match unit {
        TemperatureUnit::Celsius => "celsius",
        TemperatureUnit::Fahrenheit => "fahrenheit",
    }
}

fn heading(session: &Session, id: &MeasureId) -> String {
    if let Some(known) = measure::known(id) {
        return match SourceUnit::canonical(known.unit) {
            Some(unit) => format!("{} ({})", known.name, unit.label()),
            None => known.name.to_owned(),
        };
    }
    let custom = session.custom(id);
    match custom {
        // The golfer's own heading mostly has its unit in it.
        Some(c) if c.unit.is_empty() || c.name.contains(&c.unit) => c.name.clone(),
        Some(c) => format!("{} ({})", c.name, c.unit),
        None => id.to_string(),
    }
}

fn number(value: Option<u32>) -> String {
    value.map_or(String::new(), |v| v.to_string())
}

/// The shortest digits that give the same number back.
fn value(value: Option<f64>) -> String {
    value.filter(|v| v.is_finite()).map_or(String::new(), |v| v.to_string())
}

/// Text that no spreadsheet takes for a formula.
fn guarded(text: &str) -> String {
    let inner = text.trim_start_matches(|c: char| c.is_whitespace() || c.is_control());
    let risky = |text: &str| text.starts_with(['=', '+', '-', '@', '＝', '＋', '-', '＠', '−']);
    let control = text.starts_with(|c: char| c.is_control());
    if text.starts_with('\'') || control || risky(text) || risky(inner) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

/// Text that says something even without words: an empty cell would not.
fn filled(text: &str) -> String {
    if text.is_empty() { "'".into() } else { guarded(text) }
}

/// The text that a guarded cell stands for.
pub(crate) fn unguarded(cell: &str) -> &str {
    cell.strip_prefix('\'').unwrap_or(cell)
}

fn line(out: &mut String, cells: impl IntoIterator<Item = String>) {
    for (at, cell) in cells.into_iter().enumerate() {
        if at > 0 {
            out.push(',');
        }
        let plain = !cell.contains([',', '"', '\n', '\r', ';', '\t']) && cell.trim() == cell;
        if plain {
            out.push_str(&cell);
        } else {
            // Writing to a string cannot fail.
            let _ = write!(out, "\"{}\"", cell.replace('"', "\"\""));
        }
    }
    out.push('\n');
}
