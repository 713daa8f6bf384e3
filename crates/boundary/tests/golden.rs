//! What a request gives, to the last bit: `tests/golden` holds requests and results that every target must repeat.
//!
//! Here natively, in `tests/node/golden.test.mjs` in Node, in `tests/everywhere` in three browsers. After a change of
//! method or words, `UPDATE_GOLDEN=1 cargo test -p straight-answer --test golden` writes the results anew; look at the difference.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a file that is not as it should be ends the test")]

use serde::de::DeserializeOwned;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use text::Voice;

fn files() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/golden");
    let mut files: Vec<PathBuf> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.sort();
    files
}

fn call<Q: DeserializeOwned, A: serde::Serialize, E: std::fmt::Debug>(
    request: Value,
    function: impl Fn(&Q, &Voice) -> Result<A, E>,
) -> Value {
    let request = serde_json::from_value(request).unwrap();
    serde_json::to_value(function(&request, &Voice::english()).unwrap()).unwrap()
}

fn result(function: &str, request: Value) -> Value {
    match function {
        "typical" => call(request, telling::typical::typical),
        "bet" => call(request, telling::bet::bet),
        "luck" => call(request, telling::luck::luck),
        "second" => call(request, telling::second::second),
        "check" => call(request, telling::check::check),
        "landing" => call(request, telling::landing::landing),
        "cause" => call(request, telling::cause::cause),
        "potential" => call(request, telling::potential::potential),
        "consistency" => call(request, telling::consistency::consistency),
        "fly" => call(request, telling::flying::fly),
        "in_standard_air" => call(request, telling::flying::in_standard_air),
        "claim" => call(request, telling::claim::claim),
        "plan" => call(request, telling::plan::plan),
        "share" => call(request, straight_answer::whole::share),
        "together" => call(request, telling::together::together),
        other => panic!("no function is called {other}"),
    }
}

#[test]
fn every_request_gives_its_result_again() {
    let files = files();
    assert!(files.len() >= 12, "{} files", files.len());
    for path in files {
        let file: Value = serde_json::from_str(&fs::read_to_string(&path).unwrap()).unwrap();
        let now = result(file["function"].as_str().unwrap(), file["request"].clone());
        if std::env::var_os("UPDATE_GOLDEN").is_some() {
            let file =
                serde_json::json!({"function": file["function"], "request": file["request"], "result": now});
            fs::write(&path, format!("{file}\n")).unwrap();
        } else {
            assert_eq!(now, file["result"], "{}", path.display());
        }
    }
}
