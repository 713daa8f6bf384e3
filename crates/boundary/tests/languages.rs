//! What a language may change: words. Every number, every decision and every name of the golfer's stays, and nothing that
//! is said in one language is said the same in the other.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a file that is not as it should be ends the test")]

#[path = "../../reading/tests/reading/support/decoded.rs"]
mod decoded;

use decoded::decoded;
use reading::{Hints, ReadResult};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use session::known::Known;
use session::refusal::Refusal;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use text::{Language, SPANISH, Units, Voice};

fn files(folder: &str, ending: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(folder);
    let mut files: Vec<PathBuf> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.retain(|file| file.extension().is_some_and(|found| found == ending));
    files.sort();
    files
}

/// What a function says, be it an answer or why there is none.
fn said(function: &str, request: &Value, voice: &Voice) -> Value {
    fn call<Q: DeserializeOwned, A: Serialize>(
        request: &Value,
        voice: &Voice,
        function: impl Fn(&Q, &Voice) -> Result<A, Refusal>,
    ) -> Value {
        let request = serde_json::from_value(request.clone()).unwrap();
        match function(&request, voice) {
            Ok(answer) => serde_json::to_value(answer).unwrap(),
            Err(refusal) => serde_json::to_value(refusal).unwrap(),
        }
    }
    match function {
        "check" => call(request, voice, telling::check::check),
        "bet" => call(request, voice, telling::bet::bet),
        "typical" => call(request, voice, telling::typical::typical),
        "luck" => call(request, voice, telling::luck::luck),
        "share" => call(request, voice, straight_answer::whole::share),
        "landing" => call(request, voice, telling::landing::landing),
        "cause" => call(request, voice, telling::cause::cause),
        "potential" => call(request, voice, telling::potential::potential),
        "consistency" => call(request, voice, telling::consistency::consistency),
        "second" => call(request, voice, telling::second::second),
        "in_standard_air" => call(request, voice, telling::flying::in_standard_air),
        "fly" => call(request, voice, telling::flying::fly),
        "plan" => call(request, voice, telling::plan::plan),
        "follow" => call(request, voice, telling::plan::follow),
        "claim" => call(request, voice, telling::claim::claim),
        "together" => call(request, voice, telling::together::together),
        "feel" => call(request, voice, telling::feel::feel),
        "fitting" => call(request, voice, |seen, voice| Ok(telling::fitting::fitting(seen, voice))),
        other => panic!("no function is called {other}"),
    }
}

/// The same in both languages.
fn both<T>(of: impl Fn(&Voice) -> T) -> (T, T) {
    (of(&Voice::english()), of(&spanish()))
}

fn spanish() -> Voice {
    Voice::new(Language::from_table(SPANISH).unwrap(), Units::Yards)
}

fn read(text: &str, hints: &Hints) -> ReadResult {
    reading::read(text, hints, &Voice::english())
}

/// What stays what it is in every language: names, links, files, what the golfer wrote.
const KEPT: [&str; 5] = ["session", "link", "reading", "found", "request"];

/// Holds two results to each other, and lists what differs that may not, and what is said alike that may not.
fn held(path: &str, english: &Value, spanish: &Value, faults: &mut BTreeSet<String>) {
    match (english, spanish) {
        (Value::String(one), Value::String(other)) => {
            let is_id = one.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_');
            if is_id && one != other && !may_be_a_word(path) {
                faults.insert(format!("{path}: `{one}` became `{other}`"));
            }
            if one == other && is_a_sentence(one) {
                faults.insert(format!("{path}: in both languages `{one}`"));
            }
        }
        (Value::Array(one), Value::Array(other)) if one.len() == other.len() => {
            one.iter().zip(other).for_each(|(one, other)| held(path, one, other, faults));
        }
        (Value::Object(one), Value::Object(other)) if one.keys().eq(other.keys()) => {
            for (key, value) in one.iter().filter(|(key, _)| !KEPT.contains(&key.as_str())) {
                held(&format!("{path}.{key}"), value, &other[key], faults);
            }
        }
        (one, other) if one == other => {}
        (one, other) => {
            faults.insert(format!("{path}: {one} became {other}"));
        }
    }
}

/// Names of measures and the like may be one word.
fn may_be_a_word(path: &str) -> bool {
    ["name", "label", "gap", "value", "reason"].iter().any(|key| path.ends_with(key))
}

/// Three words or more in small letters.
fn is_a_sentence(text: &str) -> bool {
    let is_word = |word: &&str| word.len() > 1 && word.chars().all(|c| c.is_ascii_lowercase());
    text.split(' ').filter(is_word).count() >= 3
}

#[test]
fn every_golden_request_is_answered_alike_in_other_words() {
    let mut faults = BTreeSet::new();
    for path in files("tests/golden", "json") {
        let file: Value = serde_json::from_str(&fs::read_to_string(&path).unwrap()).unwrap();
        let function = file["function"].as_str().unwrap();
        let (english, spanish) = both(|voice| said(function, &file["request"], voice));
        assert_eq!(english, file["result"], "{}", path.display());
        held(function, &english, &spanish, &mut faults);
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn every_demo_is_answered_alike_in_other_words() {
    let mut faults = BTreeSet::new();
    for path in files("demo", "csv") {
        let text = fs::read_to_string(&path).unwrap();
        let session = serde_json::to_value(read(&text, &Hints::default()).session).unwrap();
        for (function, request) in requests(&session) {
            let (english, spanish) = both(|voice| said(function, &request, voice));
            held(function, &english, &spanish, &mut faults);
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// What may be asked of a session, answerable or not.
fn requests(session: &Value) -> Vec<(&'static str, Value)> {
    let mut all = Vec::new();
    let goals = ["higher", "lower", "nearer_zero", "tighter"];
    let measures = ["carry", "offline", "spin_rate", "nothing_of_the_kind"];
    for (goal, measure) in goals.iter().flat_map(|goal| measures.map(|measure| (goal, measure))) {
        for stopping in
            [json!("fixed"), json!("unknown"), json!({ "planned_rounds": 8, "looked_after": [4] })]
        {
            let question =
                json!({ "baseline": 0, "measure": measure, "goal": goal, "stopping": stopping, "margin": 3 });
            let asked = json!({ "session": session, "question": question });
            all.push(("check", asked.clone()));
            let with = |key: &str, value: Value| {
                let mut request = asked.clone();
                request[key] = value;
                request
            };
            all.push(("share", with("address", json!("https://example.com/"))));
            all.push(("feel", with("say", json!({ "straighter": 1, "longer": 0, "look": 1 }))));
            all.push((
                "claim",
                with("claimed", json!({ "gain": 12, "shots_before": 5, "shots_after": 5, "price": 400 })),
            ));
            if stopping == json!("fixed") {
                all.push(("luck", with("showing", json!("in_a_row"))));
            }
        }
    }
    let of = |more: Value| {
        let mut request = json!({ "session": session, "baseline": 0, "candidate": 1 });
        for (key, value) in more.as_object().unwrap() {
            request[key] = value.clone();
        }
        request
    };
    all.push(("landing", of(json!({ "hand": "right", "aim": 4 }))));
    all.push(("landing", of(json!({ "fairway": 900 }))));
    all.push(("cause", of(json!({ "hand": "left" }))));
    all.push(("cause", of(json!({ "candidate": 0 }))));
    all.push(("potential", json!({ "session": session, "baseline": 0 })));
    all.push(("consistency", json!({ "session": session })));
    for conditions in [json!({ "temperature": 35, "altitude_ft": 4000 }), json!({ "temperature": 350 })] {
        all.push(("in_standard_air", json!({ "session": session, "conditions": conditions })));
    }
    let plan = json!({ "builds": ["Own", "New"], "measure": "carry" });
    all.push(("follow", json!({ "plan": plan, "shots": [], "ended": [0, 1], "looks": [] })));
    all.push(("plan", json!({ "builds": ["Own"], "measure": "carry" })));
    all.push(("fly", json!({ "launch": { "ball_speed": 160, "launch_angle": 89, "spin_rate": 2700 } })));
    all
}

#[test]
fn what_is_said_of_a_text_changes_and_what_was_read_does_not() {
    let mut faults = BTreeSet::new();
    let texts = ["csv", "txt", "tsv", "html"].iter().flat_map(|ending| files("tests/csv", ending));
    let mut heard = BTreeSet::new();
    for path in texts {
        let text = decoded(&fs::read(&path).unwrap());
        let (english, spanish) = both(|voice| reading::read(&text, &Hints::default(), voice));
        assert_eq!(english.session.shots, spanish.session.shots, "{}", path.display());
        heard.extend(english.problems.iter().map(|p| format!("{:?}", p.kind)));
        heard.extend(english.notices.iter().map(|n| format!("{:?}", n.kind)));
        let value = |result: &_| serde_json::to_value::<&ReadResult>(result).unwrap();
        held("read", &value(&english), &value(&spanish), &mut faults);
    }
    assert!(faults.is_empty(), "{faults:#?}");
    assert!(heard.len() >= 20, "{heard:?}");
}

#[test]
fn every_measure_is_read_under_its_name_in_either_language() {
    let (english, spanish) = both(|voice| Known::ALL.map(|known| text::names::title(known, voice)));
    for titles in [english, spanish] {
        // Values that any measure can have.
        let text = format!("Palo,{}\n", titles.join(","))
            + "A,1\n".replace(",1", &",1".repeat(titles.len())).repeat(4).as_str();
        let found = read(&text, &Hints::default());
        for (known, title) in Known::ALL.into_iter().zip(&titles) {
            assert!(found.session.measures.contains(&known.into()), "{title} is {known:?}");
        }
    }
}

#[test]
fn a_table_in_spanish_is_read_as_its_english_twin() {
    let spanish = "Palo;Ronda;Velocidad de bola (km/h);CARRY (metros);Desvío;Ángulo de salida;Comentario\n\
                   Antiguo;1;231,5;215,5;3,2 izq;12,1;buen golpe\n\
                   Nuevo;1;236,0;219,0;8 derecha;11,0;\n\
                   Antiguo;2;229,0;211,5;1,0 dcha.;12,4;\n\
                   Nuevo;2;238,5;224,0;4 izquierda;10,8;\n";
    let english = "Build;Round;Ball speed (km/h);CARRY (m);Offline;Launch angle;Comment\n\
                   Antiguo;1;231,5;215,5;3,2 L;12,1;buen golpe\n\
                   Nuevo;1;236,0;219,0;8 R;11,0;\n\
                   Antiguo;2;229,0;211,5;1,0 R;12,4;\n\
                   Nuevo;2;238,5;224,0;4 L;10,8;\n";
    let [one, other] = [spanish, english].map(|text| read(text, &Hints::default()));
    assert_eq!(one.session.shots.len(), 4);
    assert_eq!(one.session, other.session);
}

#[test]
fn a_side_of_another_kind_is_asked_about_not_guessed() {
    // "D" is "down" to one and "derecha", right, to the other.
    let found = read("Palo,Desvío\nA,12 D\nA,3 izq\nB,4 L\nB,5 R\n", &Hints::default());
    assert_eq!(found.problems.len(), 1, "{:?}", found.problems);
    let found = read("Club,Attack angle\nA,1.5 D\nA,2 U\nB,1 down\nB,0\n", &Hints::default());
    assert!(found.problems.is_empty(), "{:?}", found.problems);
}

#[test]
fn meters_change_the_words_and_no_number() {
    let session = read(
        &fs::read_to_string(
            files("demo", "csv").into_iter().find(|f| f.ends_with("fair-12-yards.csv")).unwrap(),
        )
        .unwrap(),
        &Hints::default(),
    )
    .session;
    let asked = json!({ "session": session, "question": { "baseline": 0, "measure": "carry", "margin": 4.0 / 0.9144 } });
    let imperial = said("check", &asked, &Voice::english());
    let metric = said("check", &asked, &Voice::new(Language::english(), Units::Meters));
    assert_eq!(imperial["answer"]["estimate"], metric["answer"]["estimate"]);
    assert_eq!(imperial["answer"]["decision"], metric["answer"]["decision"]);
    let headline = |report: &Value| report["answer"]["words"]["headline"].as_str().unwrap().to_owned();
    let estimate = &metric["answer"]["estimate"];
    let meters = |end: &str| (estimate[end].as_f64().unwrap() * 0.9144).round();
    let wanted =
        format!("{} to {}\u{a0}m more; it starts to matter at 4\u{a0}m", meters("low"), meters("high"));
    assert!(headline(&metric).contains(&wanted), "{} / {wanted}", headline(&metric));
    assert!(headline(&imperial).contains("yd"));
    let everything = metric.to_string();
    assert!(!everything.contains("\u{a0}yd") && !everything.contains("\u{a0}mph"), "{everything}");
}
