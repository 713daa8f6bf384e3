//! Every file under tests/csv against the reading a careful person would make of it, which stands
//! beside it as `NAME.expected.json`. All of them hold invented data.

use crate::decoded::decoded;
use reading::{Delimiter, Hints, Layout, ReadResult, Settled, read};
use serde_json::{Map, Value, json};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use text::Voice;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/csv")
}

/// The reading in the short form of the expectations; numbers to four decimals.
fn short(result: &ReadResult) -> Value {
    let session = &result.session;
    let round = |v: f64| (v * 1e4).round() / 1e4;
    let name = |v: &dyn erased::Named| v.name();
    let shots: Vec<Value> = session
        .shots
        .iter()
        .map(|s| {
            let mut row = vec![json!(s.build), json!(s.round), json!(s.number)];
            row.extend(s.values.iter().map(|v| json!(v.map(round))));
            row.extend(s.left_out.as_ref().map(|why| json!(why)));
            Value::Array(row)
        })
        .collect();
    let summaries: Vec<Value> = session
        .summaries
        .iter()
        .map(|s| {
            let values: serde_json::Map<String, Value> = s
                .values
                .iter()
                .map(|(id, v)| (id.to_string(), json!([v.mean, v.sd, v.low, v.high].map(|v| v.map(round)))))
                .collect();
            json!({ "build": s.build, "n": s.n, "of": s.of, "line": s.line, "values": values })
        })
        .collect();
    let columns: Vec<Value> = result
        .reading
        .columns
        .iter()
        .map(|c| {
            let mut shown = json!([c.heading, c.role, c.unit, name(&c.unit_source)]);
            if let (Some(list), false) = (shown.as_array_mut(), c.sure) {
                list.push(json!({ "unsure": c.alternatives, "unit": c.unit_question }));
            }
            shown
        })
        .collect();
    let problems: Vec<Value> = result
        .problems
        .iter()
        .map(|p| json!([name(&p.kind), p.place.line, p.place.column, p.suggestion]))
        .collect();
    let notices: BTreeSet<String> = result.notices.iter().map(|n| name(&n.kind)).collect();
    let gaps: Vec<Value> = result
        .gaps
        .iter()
        .map(|g| {
            json!([g.line, g.build, g.measure, name(&g.statistic), round(g.printed), round(g.from_rows), g.n])
        })
        .collect();
    let doubts: Vec<Value> = result
        .doubts
        .iter()
        .map(|d| {
            let builds: Vec<&String> =
                d.builds.iter().filter_map(|&at| session.builds.get(at)).map(|b| &b.name).collect();
            json!([name(&d.kind), d.measure, builds, d.lines])
        })
        .collect();
    json!({
        "doubts": doubts,
        "form": result.form,
        "delimiter": result.reading.delimiter,
        "layout": result.reading.layout,
        "decimal_mark": result.reading.decimal_mark,
        "order": session.order,
        "builds": session.builds.iter().map(|b| &b.name).collect::<Vec<_>>(),
        "measures": session.measures,
        "shots": shots,
        "summaries": summaries,
        "columns": columns,
        "rows": result.reading.rows,
        "problems": problems,
        "notices": notices,
        "gaps": gaps,
        // What else changed, and under which of its values each shot was hit.
        "second": session.second.as_ref().map(|second| {
            json!([second.name, second.values, session.shots.iter().map(|s| s.second).collect::<Vec<_>>()])
        }),
    })
}

mod erased {
    /// Kinds by their `snake_case` name.
    pub(crate) trait Named {
        fn name(&self) -> String;
    }

    impl<T: serde::Serialize> Named for T {
        fn name(&self) -> String {
            serde_json::to_value(self).ok().and_then(|v| v.as_str().map(str::to_owned)).unwrap_or_default()
        }
    }
}

fn files() -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder())
        .expect("tests/csv is there")
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
        .filter(|name| !name.ends_with(".expected.json") && !name.starts_with('.'))
        .collect();
    names.sort();
    names
}

/// Files that are not yet read as expected; each must still fail, or leave the list.
const NOT_YET: [&str; 0] = [];

/// What stands in an expectation that says everything; one with a class says what it must.
const ALWAYS: [&str; 6] = ["builds", "measures", "shots", "summaries", "problems", "doubts"];

#[test]
fn every_file_reads_as_a_careful_person_would() {
    let names = files();
    assert!(names.len() >= 190, "only {} files", names.len());
    let mut wrong = Vec::new();
    for name in &names {
        let found = differences(name);
        if NOT_YET.contains(&name.as_str()) {
            assert!(!found.is_empty(), "{name} is read as expected and can leave the list");
        } else {
            wrong.extend(found);
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Everything in which the reading of a file is not the expected one.
fn differences(name: &str) -> Vec<String> {
    let bytes = std::fs::read(folder().join(name)).expect("the file can be read");
    let text = decoded(&bytes);
    let expected = std::fs::read_to_string(folder().join(format!("{name}.expected.json")))
        .unwrap_or_else(|_| panic!("{name} has no expectation"));
    let mut expected: Value = serde_json::from_str(&expected).expect("the expectation is JSON");
    let keys = expected.as_object_mut().expect("the expectation is an object");
    let about = keys.remove("about");
    assert!(
        about.is_some_and(|a| a.as_str().is_some_and(|a| !a.is_empty())),
        "{name} says not what it is for"
    );
    let mut hints: Hints =
        keys.remove("hints").map(|h| serde_json::from_value(h).expect("hints")).unwrap_or_default();
    let class = keys.remove("class");
    let answers = keys.remove("answers");
    let then = keys.remove("then");
    // In most files nothing changes beside the club, nothing is in doubt, and nothing is left for a form.
    keys.entry("second").or_insert(Value::Null);
    keys.entry("form").or_insert(Value::Null);
    keys.entry("doubts").or_insert(json!([]));
    let result = read(&text, &hints, &Voice::english());
    let got = short(&result);
    let mut wrong = Vec::new();
    said(name, keys, &result, &mut wrong);
    compare(name, keys, &got, &mut wrong);
    match &class {
        Some(class) if class != class_of(&result) => {
            wrong.push(format!("{name}: {} and not {class}: {:?}", class_of(&result), result.problems));
        }
        Some(_) => {}
        None => {
            assert_eq!(keys.len(), got.as_object().map_or(0, Map::len), "{name}: some of it is not expected")
        }
    }
    assert!(class.is_none() || ALWAYS.iter().all(|key| keys.contains_key(*key)), "{name} lacks a part");
    check_rows(name, &text, &result);
    check_words(name, &result);
    if let (Some(Value::Array(answers)), Some(Value::Object(then))) = (answers, then) {
        for answer in &answers {
            if !tap(answer, &result, &mut hints) {
                wrong.push(format!("{name}: {answer} is not offered by {:?}", result.doubts));
            }
        }
        compare(&format!("{name}, then"), &then, &short(&read(&text, &hints, &Voice::english())), &mut wrong);
    }
    wrong
}

fn compare(name: &str, keys: &Map<String, Value>, got: &Value, wrong: &mut Vec<String>) {
    for (key, value) in keys {
        // Numbers are compared as numbers: 250 and 250.0 are one.
        if !alike(value, &got[key]) {
            wrong.push(format!("{name}: {key}\n  expected {value}\n  got      {}", got[key]));
        }
    }
}

/// What has to be said in the words of a notice, and which notice must not be there.
fn said(name: &str, keys: &mut Map<String, Value>, result: &ReadResult, wrong: &mut Vec<String>) {
    let listed = |value: Option<Value>| match value {
        Some(Value::Array(list)) => list.iter().filter_map(|v| v.as_str().map(str::to_owned)).collect(),
        _ => Vec::new(),
    };
    for words in listed(keys.remove("says")) {
        if !result.notices.iter().any(|n| n.message.contains(&words)) {
            wrong.push(format!("{name}: nothing says {words:?}"));
        }
    }
    for kind in listed(keys.remove("notices_not")) {
        if result.notices.iter().any(|n| erased::Named::name(&n.kind) == kind) {
            wrong.push(format!("{name}: {kind} is noted"));
        }
    }
}

/// Right without help, right after a question, or refused with a way forward.
fn class_of(result: &ReadResult) -> &'static str {
    if !result.doubts.is_empty() {
        "asked"
    } else if result.session.shots.is_empty() && result.session.summaries.is_empty() {
        if result.problems.is_empty() { "lost" } else { "refused" }
    } else {
        "right"
    }
}

/// Says what the choice of a doubt says; `false` when no doubt of that kind offers it.
fn tap(answer: &Value, result: &ReadResult, hints: &mut Hints) -> bool {
    let part = |at: usize| answer.get(at).and_then(Value::as_str).unwrap_or_default();
    let says = |settled: &Settled| match settled {
        Settled::Right => ("right", String::new()),
        Settled::LeaveOut => ("leave_out", String::new()),
        Settled::OneClub => ("one_club", String::new()),
        Settled::Second => ("second", String::new()),
        Settled::Count => ("count", String::new()),
        Settled::Unit(unit) => ("unit", unit.clone()),
        Settled::Measure(id) => ("measure", id.to_string()),
        Settled::Column(at) => ("column", at.to_string()),
        Settled::Reason(_) => ("reason", String::new()),
    };
    let wanted = |settled: &Settled| {
        let (word, what) = says(settled);
        word == part(1) && (what == part(2) || word == "reason")
    };
    let doubts = result.doubts.iter().filter(|d| erased::Named::name(&d.kind) == part(0));
    let Some((doubt, choice)) =
        doubts.flat_map(|d| d.choices.iter().map(move |c| (d, c))).find(|(_, choice)| wanted(&choice.says))
    else {
        return false;
    };
    // A reason is the golfer's own words where they are not those of a button.
    let says = match &choice.says {
        Settled::Reason(_) => Settled::Reason(part(2).to_owned()),
        other => other.clone(),
    };
    hints.settled.insert(doubt.key.clone(), says);
    true
}

fn alike(one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Number(a), Value::Number(b)) => {
            (a.as_f64().unwrap_or(f64::NAN) - b.as_f64().unwrap_or(f64::NAN)).abs() < 1e-9
        }
        (Value::Array(a), Value::Array(b)) => a.len() == b.len() && a.iter().zip(b).all(|(a, b)| alike(a, b)),
        (Value::Object(a), Value::Object(b)) => {
            a.len() == b.len() && a.iter().all(|(key, value)| b.get(key).is_some_and(|v| alike(value, v)))
        }
        _ => one == other,
    }
}

/// Every line that is not blank is counted once, wherever a row is a line.
fn check_rows(name: &str, text: &str, result: &ReadResult) {
    let reading = &result.reading;
    let lines_are_rows = !matches!(reading.delimiter, Delimiter::Html | Delimiter::Json)
        && !matches!(reading.layout, Layout::ColumnAfterColumn | Layout::RowPerBuild)
        && name != "quotes_newlines.csv";
    if !lines_are_rows {
        return;
    }
    let filled = text
        .split(['\n', '\r'])
        .filter(|line| line.chars().any(|c| !c.is_whitespace() && !matches!(c, ',' | ';' | '\u{feff}')))
        .count();
    assert_eq!(reading.rows.total(), filled, "{name}: {:?} of {filled} lines", reading.rows);
}

/// Every problem has words and a remedy, and a place wherever it has one.
fn check_words(name: &str, result: &ReadResult) {
    for problem in &result.problems {
        assert!(problem.message.ends_with('.') && problem.remedy.ends_with('.'), "{name}: {problem:?}");
    }
    for notice in &result.notices {
        assert!(notice.message.ends_with(['.', '?']), "{name}: {notice:?}");
    }
}
