//! The short way through reading gives what the whole reader gives, or nothing.

use crate::decoded::decoded;
use proptest::collection::vec;
use proptest::prelude::*;
use reading::{Hints, read, read_plain};
use std::path::{Path, PathBuf};
use text::Voice;

fn folder(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(name)
}

/// Every text of a folder; what says of itself that it is something else is left.
fn texts(name: &str) -> Vec<(String, String)> {
    let mut texts: Vec<(String, String)> = std::fs::read_dir(folder(name))
        .expect("the folder is there")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| {
            path.extension().is_some_and(|ending| !["json", "md", "png"].iter().any(|other| ending == *other))
        })
        .filter(|path| path.is_file())
        .map(|path| {
            let bytes = std::fs::read(&path).expect("the file can be read");
            (path.file_name().unwrap_or_default().display().to_string(), decoded(&bytes))
        })
        .collect();
    texts.sort();
    texts
}

/// Whether the short way took the text; panics when it read it in another way.
fn takes(name: &str, text: &str) -> bool {
    let plain = read_plain(text, &Voice::english());
    if let Some(plain) = &plain {
        assert_eq!(*plain, read(text, &Hints::default(), &Voice::english()), "{name}");
    }
    plain.is_some()
}

#[test]
fn messy_files_are_read_as_always_or_left_to_the_whole_reader() {
    let taken = texts("tests/csv").iter().filter(|(name, text)| takes(name, text)).count();
    assert!(taken >= 5, "only {taken} files are plain: the comparison says little");
}

#[test]
fn every_example_takes_the_short_way() {
    let texts = texts("demo");
    assert!(texts.len() >= 4, "{}", texts.len());
    for (name, text) in texts {
        assert!(takes(&name, &text), "{name}");
    }
}

const HEADINGS: [&str; 16] = [
    "Build",
    "Club",
    "Round",
    "Shot",
    "Carry",
    "Carry (yd)",
    "Total [m]",
    "Offline",
    "Ball speed mph",
    "Spin",
    "Launch",
    "Time",
    "Notes",
    "SD",
    "",
    "Carry B",
];

const CELLS: [&str; 22] = [
    "A", "B", "Driver A", "own", "1", "2", "7", "251", "251.3", "251,3", "12 L", "R 4", "-3", "", "-", "n/a",
    "2,610", "Average", "10:31", "8O", "yd", "5000",
];

proptest! {
    #[test]
    fn any_table_is_read_as_always_or_left_to_the_whole_reader(
        mark in prop::sample::select(vec![",", ";", "\t"]),
        headings in vec(prop::sample::select(&HEADINGS[..]), 1..6),
        cells in vec(vec(prop::sample::select(&CELLS[..]), 1..7), 0..14),
    ) {
        let lines: Vec<String> = std::iter::once(headings).chain(cells).map(|row| row.join(mark)).collect();
        takes("table", &lines.join("\n"));
    }

    #[test]
    fn tables_of_shots_are_read_as_always(
        order in prop::sample::select(vec!["ABABAB", "AABBAABB", "AAABBB", "ABCABC"]),
        values in vec((2000_i32..2900, -300_i32..300, 1000_i32..9000), 8),
        numbered in any::<bool>(),
    ) {
        let mut text = String::from(if numbered { "Build,Shot,Carry,Offline,Spin\n" } else { "Build,Carry,Offline,Spin\n" });
        for (at, (name, (carry, side, spin))) in order.chars().zip(values).enumerate() {
            let number = if numbered { format!("{},", at + 1) } else { String::new() };
            text += &format!("{name},{number}{},{},{spin}\n", f64::from(carry) / 10.0, f64::from(side) / 10.0);
        }
        prop_assert!(takes("shots", &text));
    }
}
