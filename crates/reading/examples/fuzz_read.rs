//! Throws mutated texts at `read`: `cargo run --release -p reading --example fuzz_read -- CASES SEED`.
//!
//! Starts from the files in tests/csv and from pieces that mean something to the reader; cuts,
//! joins, repeats, swaps and replaces. Every reading is checked for what must hold of it. A panic
//! or a case that takes longer than two seconds ends the run with the text that did it.

#[path = "support/random.rs"]
mod random;

#[path = "../tests/reading/support/decoded.rs"]
mod decoded;

use cpu_time::ProcessTime;
use decoded::decoded;
use random::Random;
use reading::write_csv;
use reading::{Delimiter, Hints, Layout, LineIs, ReadResult, Role, read, read_plain};
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};
use text::Voice;

/// A case that computes for longer hangs, however long a busy machine lets it wait.
const LONGEST: Duration = Duration::from_secs(2);

/// Bytes a case has at most.
const MOST_BYTES: usize = 600;

const PIECES: [&str; 127] = [
    ",",
    ";",
    "\t",
    "|",
    "  ",
    " ",
    "\n",
    "\r\n",
    "\r",
    "\n\n",
    "\"",
    "\"\"",
    "'",
    "\u{feff}",
    "\u{202e}",
    "\u{a0}",
    "\u{2212}",
    "Build",
    "Club",
    "Carry",
    "Carry (m)",
    "Offline",
    "Ball speed",
    "Ball Speed (km/h)",
    "Spin",
    "rpm",
    "yd",
    "m/s",
    "°",
    "Shot",
    "Round",
    "Time",
    "Left out",
    "Head",
    "Shaft",
    "Average",
    "Std Dev",
    "Min",
    "Max",
    "Count",
    "Shots",
    "n",
    "best 5",
    "good shots",
    "Driver A",
    "Driver B",
    "A",
    "B",
    "250",
    "251.5",
    "251,5",
    "2,480",
    "2.480",
    "1.234,5",
    "1e308",
    "1e999",
    "-0",
    "99999999999999999999",
    "0.000000001",
    "12 L",
    "R3",
    "left 4",
    "25O",
    "l2",
    "n/a",
    "-",
    "--",
    "14:03:22",
    "2:03 PM",
    "2024-05-12T14:03:22Z",
    "251 ± 8",
    "251 (8)",
    "*",
    "|---|---|",
    "+--+",
    "====",
    "<table>",
    "<tr>",
    "<td>",
    "</td>",
    "<th colspan=9>",
    "&nbsp;",
    "&#x1F600;",
    "<!--",
    "[{\"carry\":1}]",
    "{\"a\":[{\"b\":1}]}",
    "\\u0041",
    "[[[[",
    "]]]]",
    "null",
    "=1+1",
    "Straight Answer session,1,blocked",
    ": ",
    " = ",
    " - ",
    "Old driver: 248, 252, 239",
    "New driver: 256, 249 and 261",
    "Shot 1,Shot 2,Shot 3",
    "#1,#2",
    "Carry in yards",
    "(L) 7.0",
    "(2.7)",
    "L7",
    "Schläger;Carry (m);Schlag",
    "Ball;Club",
    "クラブ,キャリー(m)",
    "5 G",
    "<td rowspan=3>",
    "[[\"Club\",\"Carry\"],[\"A\",250]]",
    "\"units\": {\"carry\": \"m\"}",
    "{\"A\": [250, 251]}",
    "1555",
    "28.5",
    "248 yd",
    "234 m",
    "0",
    "Total",
    "Speed",
    "Include?",
    "no",
    "yes",
    "Page;1;of;1",
    "old driver",
    "Old driver",
    "\u{200b}",
    "With my old driver I averaged 248 carry over 12 shots.",
    "With the new driver I hit 256, 249 and 261 today.",
];

fn mutate(random: &mut Random, seeds: &[String]) -> String {
    let mut text: Vec<char> = match random.below(4) {
        0 => Vec::new(),
        _ => random.pick(seeds).chars().take(MOST_BYTES).collect(),
    };
    for _ in 0..=random.below(12) {
        let at = random.below(text.len() + 1);
        let end = (at + random.below(24)).min(text.len());
        match random.below(9) {
            0..=2 => drop(text.splice(at..at, random.pick(&PIECES).chars())),
            3 => drop(text.drain(at..end)),
            4 => {
                let copied: Vec<char> = text[at..end].to_vec();
                let to = random.below(text.len() + 1);
                drop(text.splice(to..to, copied));
            }
            5 => {
                let other: Vec<char> = random.pick(seeds).chars().collect();
                let from = random.below(other.len() + 1);
                let until = (from + random.below(80)).min(other.len());
                drop(text.splice(at..end, other[from..until].iter().copied()));
            }
            6 => {
                let (old, new) = (
                    random.pick(&[',', ';', '\t', ' ', '\n', '.', '0']),
                    random.pick(&[',', ';', '\t', ' ', '\n', '|', '"']),
                );
                text.iter_mut().filter(|c| *c == old).for_each(|c| *c = *new);
            }
            7 => {
                let piece = random.pick(&PIECES).repeat(1 + random.below(30));
                drop(text.splice(at..at, piece.chars()));
            }
            _ => {
                if let Some(c) = text.get_mut(at) {
                    let code = u32::try_from(random.below(0x2_0000)).unwrap_or(0);
                    *c = char::from_u32(code).unwrap_or('\u{fffd}');
                }
            }
        }
        text.truncate(MOST_BYTES);
    }
    text.into_iter().collect()
}

fn hints(random: &mut Random) -> Hints {
    let mut hints = Hints::default();
    if random.below(3) > 0 {
        return hints;
    }
    let roles = [
        Role::Build,
        Role::Round,
        Role::Number,
        Role::Time,
        Role::Count,
        Role::LeftOut,
        Role::Ignored,
        Role::Measure("carry".into()),
        Role::Measure("x".into()),
        Role::Deviation("carry".into()),
        Role::High("offline".into()),
    ];
    let layouts = [
        Layout::Rows,
        Layout::Blocks,
        Layout::ColumnPerBuild,
        Layout::RowPerBuild,
        Layout::SideBySide,
        Layout::ColumnAfterColumn,
        Layout::Averages,
        Layout::MeasuresDown,
    ];
    let delimiters = [
        Delimiter::Comma,
        Delimiter::Tab,
        Delimiter::Semicolon,
        Delimiter::Pipe,
        Delimiter::Spaces,
        Delimiter::Lines,
        Delimiter::Html,
        Delimiter::Json,
    ];
    let lines = [
        LineIs::Shot,
        LineIs::Summary,
        LineIs::Headings,
        LineIs::Units,
        LineIs::Build,
        LineIs::Text,
        LineIs::Problem,
    ];
    for _ in 0..random.below(4) {
        match random.below(7) {
            0 => hints.layout = Some(*random.pick(&layouts)),
            1 => hints.delimiter = Some(*random.pick(&delimiters)),
            2 => hints.columns.insert(random.below(6), random.pick(&roles).clone()),
            3 => hints
                .units
                .insert(random.below(6), (*random.pick(&["m", "km/h", "ft", "in", "x"])).to_owned()),
            4 => hints.lines.insert(u32::try_from(random.below(9)).unwrap_or(0), *random.pick(&lines)),
            5 => hints.decimal_mark = Some((*random.pick(&[".", ","])).to_owned()),
            _ => hints.letters_as_digits = Some(true),
        }
    }
    hints
}

/// Questions that one text may ask, one after the other.
const MOST_QUESTIONS: usize = 60;

/// Answers every question of a reading by some choice: it comes to an end, and no question comes twice.
fn answer(text: &str, hints: &Hints, random: &mut Random) {
    let mut hints = hints.clone();
    for _ in 0..MOST_QUESTIONS {
        let result = read(text, &hints, &Voice::english());
        hold(&result);
        let Some(doubt) = result.doubts.first() else { return };
        assert!(
            !doubt.question.is_empty() && doubt.builds.iter().all(|at| *at < result.session.builds.len())
        );
        assert!(!hints.settled.contains_key(&doubt.key), "{} is asked again", doubt.key);
        // Nothing names the clubs: another text has to be given.
        if doubt.choices.is_empty() {
            return;
        }
        hints.settled.insert(doubt.key.clone(), random.pick(&doubt.choices).says.clone());
    }
    panic!("no end of questions");
}

/// What must hold of every reading.
fn check(text: &str, hints: &Hints, random: &mut Random) {
    if let Some(plain) = read_plain(text, &Voice::english()) {
        assert_eq!(
            plain,
            read(text, &Hints::default(), &Voice::english()),
            "the short way reads as the long one"
        );
    }
    let result = read(text, hints, &Voice::english());
    hold(&result);
    let session = &result.session;
    let again = read(&write_csv(session), &Hints::default(), &Voice::english());
    assert_eq!(again.session, *session, "what was read does not read back");
    answer(text, hints, random);
}

fn hold(result: &ReadResult) {
    let session = &result.session;
    let width = session.measures.len();
    assert!(session.shots.iter().all(|s| s.build < session.builds.len() && s.values.len() == width));
    assert!(session.shots.iter().flat_map(|s| &s.values).flatten().all(|v| v.is_finite()));
    assert!(session.summaries.iter().all(|s| s.build < session.builds.len()));
    assert!(!session.shots.is_empty() || !session.summaries.is_empty() || !result.problems.is_empty());
}

fn seeds() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/csv");
    let entries = std::fs::read_dir(folder).expect("tests/csv is there");
    let files = entries.filter_map(|e| std::fs::read(e.ok()?.path()).ok());
    files.map(|bytes| decoded(&bytes)).filter(|text| text.len() < 4000).collect()
}

fn main() {
    let mut numbers = std::env::args().skip(1).map(|a| a.parse::<u64>().expect("a number"));
    let (cases, seed) = (numbers.next().unwrap_or(100_000), numbers.next().unwrap_or(1));
    let seeds = seeds();
    let done = Arc::new(AtomicU64::new(0));
    let current = Arc::new(Mutex::new((String::new(), Hints::default(), ProcessTime::now())));
    watch(&done, &current);
    let shown = Arc::clone(&current);
    std::panic::set_hook(Box::new(move |info| {
        let (text, hints, _) = &*shown.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        eprintln!("{info}\ntext {text:?}\nhints {hints:?}");
    }));
    let mut random = Random(seed);
    let start = Instant::now();
    let mut slowest = Duration::ZERO;
    let mut bytes = 0;
    for case in 0..cases {
        let text = mutate(&mut random, &seeds);
        let hints = hints(&mut random);
        let began = ProcessTime::now();
        bytes += text.len();
        if let Ok(mut shown) = current.lock() {
            *shown = (text.clone(), hints.clone(), began);
        }
        check(&text, &hints, &mut random);
        slowest = slowest.max(began.elapsed());
        done.store(case + 1, Ordering::Relaxed);
    }
    println!(
        "{cases} cases from seed {seed}, {bytes} bytes: no panic, slowest {slowest:?}, {:?} in all",
        start.elapsed()
    );
}

/// Ends the run when one case takes too long.
fn watch(done: &Arc<AtomicU64>, current: &Arc<Mutex<(String, Hints, ProcessTime)>>) {
    let (done, current) = (Arc::clone(done), Arc::clone(current));
    std::thread::spawn(move || {
        loop {
            let before = done.load(Ordering::Relaxed);
            std::thread::sleep(LONGEST);
            let Ok(shown) = current.lock() else { return };
            if done.load(Ordering::Relaxed) == before && shown.2.elapsed() > LONGEST && !shown.0.is_empty() {
                eprintln!("case {before} hangs\ntext {:?}\nhints {:?}", shown.0, shown.1);
                std::process::exit(1);
            }
        }
    });
}
