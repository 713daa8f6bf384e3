//! The program as it is called: the numbers of the page to the last bit, the ends it comes to, and every form of output.

#![expect(clippy::unwrap_used, reason = "tests")]

use serde_json::Value;
use session::Session;
use session::question::Question;
use std::fmt::Write as _;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

fn called(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_straight-answer")).args(words).stdin(Stdio::null()).output().unwrap()
}

fn called_with(input: &[u8], words: &[&str]) -> Output {
    let mut program = Command::new(env!("CARGO_BIN_EXE_straight-answer"))
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    program.stdin.take().unwrap().write_all(input).unwrap();
    program.wait_with_output().unwrap()
}

fn said(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

fn golden(function: &str) -> Vec<(Value, Value)> {
    let mut found = Vec::new();
    for entry in fs::read_dir(root().join("tests/golden")).unwrap() {
        let file: Value = serde_json::from_str(&fs::read_to_string(entry.unwrap().path()).unwrap()).unwrap();
        if file["function"] == function {
            found.push((file["request"].clone(), file["result"].clone()));
        }
    }
    assert!(!found.is_empty());
    found
}

/// What stands in `tests/golden` is what the page's wasm gives in Node and in three browsers.
#[test]
fn a_report_is_that_of_the_page_to_the_last_bit() {
    let folder = folder("golden");
    for (at, (request, result)) in golden("check").into_iter().enumerate() {
        let session: Session = serde_json::from_value(request["session"].clone()).unwrap();
        let question: Question = serde_json::from_value(request["question"].clone()).unwrap();
        let text = reading::write_csv_asked(&session, &question);
        let path = folder.join(format!("{at}.csv"));
        fs::write(&path, &text).unwrap();
        let of_file = called(&["check", "--json", path.to_str().unwrap()]);
        let line: Value = serde_json::from_str(&said(&of_file)).unwrap();
        assert_eq!(line["report"], result, "{at}");
        let of_input = called_with(text.as_bytes(), &["check", "--json"]);
        let line: Value = serde_json::from_str(&said(&of_input)).unwrap();
        assert_eq!(line["report"], result, "{at} from standard input");
    }
    for (request, result) in golden("plan") {
        let path = folder.join("plan.json");
        fs::write(&path, request.to_string()).unwrap();
        let planned = called(&["plan", "--json", "--request", path.to_str().unwrap()]);
        assert_eq!(serde_json::from_str::<Value>(&said(&planned)).unwrap(), result);
    }
}

#[test]
fn how_it_ends_is_what_the_help_says() {
    let demo = root().join("demo/fair-12-yards.csv");
    let demo = demo.to_str().unwrap();
    assert_eq!(called(&["check", demo]).status.code(), Some(0));
    let one_club = called_with(b"Club,Carry\nOwn,240\nOwn,244\nOwn,251\n", &["check"]);
    assert_eq!(one_club.status.code(), Some(2), "{}", said(&one_club));
    let nothing = called(&["check", demo, "nowhere.csv"]);
    assert_eq!(nothing.status.code(), Some(3));
    assert!(said(&nothing).contains("Driver B"), "the other file is answered all the same");
    assert!(String::from_utf8_lossy(&nothing.stderr).contains("nowhere.csv: "));
    assert_eq!(called(&["check", "--bogus"]).status.code(), Some(64));
    assert_eq!(called(&["--help"]).status.code(), Some(0));
    assert_eq!(called(&["many", demo]).status.code(), Some(2), "one session says nothing of others");
    assert_eq!(called(&["many", demo, "--goal", "tighter"]).status.code(), Some(3));
    assert_eq!(called(&["plan", "Own"]).status.code(), Some(2));
    let help = said(&called(&["--help"]));
    assert!(help.contains("3 when something was not read"), "{help}");
}

#[test]
fn language_and_unit_change_words_and_never_a_number() {
    let demo = root().join("demo/fair-12-yards.csv");
    let demo = demo.to_str().unwrap();
    let english = said(&called(&["check", demo, "--margin", "5"]));
    assert!(english.contains("yd"), "{english}");
    let spanish = said(&called(&["check", demo, "--language", "es", "--unit", "meters"]));
    assert!(spanish.contains("\u{a0}m"), "{spanish}");
    let estimate = |words: &[&str]| {
        let line: Value = serde_json::from_str(&said(&called(words))).unwrap();
        line["report"]["answer"]["estimate"].clone()
    };
    let plain = estimate(&["check", "--json", demo]);
    assert_eq!(plain["value"], estimate(&["check", "--json", "--language", "es", demo])["value"]);
    // 4.572 m are 5 yd.
    let meters = said(&called(&["check", "--json", "--unit", "meters", "--margin", "4.572", demo]));
    let line: Value = serde_json::from_str(&meters).unwrap();
    assert!((line["report"]["asked"]["margin"].as_f64().unwrap() - 5.0).abs() < 1e-9);
}

fn season(name: &str) -> PathBuf {
    let folder = folder(name);
    for number in 0..7_u32 {
        let mut text = String::from("Club,Round,Carry (yd)\n");
        for round in 1..=6_u32 {
            for turn in 0..2_u32 {
                let build = if round % 2 == 1 { turn } else { 1 - turn };
                for shot in 0..3_u32 {
                    let noise = f64::from((number * 37 + round * 53 + build * 19 + shot * 71) % 23) - 11.0;
                    let carry = 240.0 + f64::from(build * number * 2) + noise;
                    writeln!(text, "{},{round},{carry:.1}", ["Own", "=New"][build as usize]).unwrap();
                }
            }
        }
        fs::write(folder.join(format!("{number}.csv")), text).unwrap();
    }
    folder
}

#[test]
fn many_are_told_and_written_as_json_and_as_a_table() {
    let folder = season("season");
    let claims = folder.join("claims.txt");
    fs::write(&claims, "file,claim\n1.csv,12\n5.csv,9\n").unwrap();
    let path = folder.to_str().unwrap();
    let all = ["many", path, "--margin", "5", "--sent", "all", "--claims", claims.to_str().unwrap()];
    let told = called(&all);
    // The table of promises lies in the folder too, and is no session.
    assert_eq!(told.status.code(), Some(0));
    let words = said(&told);
    assert!(words.starts_with("On average a fitting here brings between"), "{words}");
    assert!(
        words.contains("(carry, 95\u{a0}% interval, 7 sessions)") && !words.contains("Not pooled"),
        "{words}"
    );
    assert!(words.contains("2 sessions came with a promise"), "{words}");
    fs::rename(&claims, folder.with_extension("claims")).unwrap();
    let json = called(&["many", path, "--margin", "5", "--json"]);
    assert_eq!(json.status.code(), Some(0));
    let value: Value = serde_json::from_str(&said(&json)).unwrap();
    assert_eq!((value["sessions"].as_u64(), value["each"].as_array().unwrap().len()), (Some(7), 7));
    let one = said(&called(&["many", path, "--margin", "5", "--json", "--threads", "1"]));
    assert_eq!(said(&json), one, "whatever the threads");
    let table = said(&called(&["many", path, "--margin", "5", "--csv"]));
    let lines: Vec<&str> = table.lines().collect();
    assert_eq!(lines.len(), 8);
    assert!(lines[0].starts_with("file,copies,baseline"));
    assert!(lines[1].contains(",'=New,"), "no formula for a spreadsheet: {}", lines[1]);
    let paths: String = (0..3).map(|at| format!("{path}/{at}.csv\n")).collect();
    let named = called_with(paths.as_bytes(), &["many", "-", "--json"]);
    assert_eq!(serde_json::from_str::<Value>(&said(&named)).unwrap()["sessions"], 3);
}

#[test]
fn checks_make_a_table_and_shells_get_their_completions() {
    let demo = |name: &str| root().join("demo").join(name).to_str().unwrap().to_owned();
    let (fair, floor) = (demo("fair-12-yards.csv"), demo("sales-floor.csv"));
    let table = said(&called(&["check", "--csv", &fair, &floor]));
    assert_eq!(table.lines().count(), 3, "{table}");
    assert!(table.lines().nth(1).unwrap().contains(",different,higher,"), "{table}");
    for shell in ["bash", "zsh", "fish", "powershell", "elvish"] {
        assert!(said(&called(&["completions", shell])).contains("many"), "{shell}");
    }
    assert!(said(&called(&["plan", "Own", "B", "--margin", "5"])).lines().count() > 3);
}
