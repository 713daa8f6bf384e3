//! What is wrong with a request is said with its place, in either language, and what is right is taken as it is.

#![allow(clippy::unwrap_used, reason = "a value that is not as it should be ends the test")]

use request::{Expected, Value, What, typed, understood};
use serde::Deserialize;
use serde_json::{Value as Json, json};
use session::Session;
use session::question::{LookedAfter, Question, Stopping};
use session::refusal::Refusal;
use text::{Language, Units, Voice};

#[derive(Debug, Deserialize, PartialEq)]
#[serde(deny_unknown_fields)]
struct Asked {
    session: Session,
    question: Question,
}

fn value(json: Json) -> Value {
    serde_json::from_value(json).unwrap()
}

fn refused(json: Json, voice: &Voice) -> Refusal {
    understood::<Asked>(&value(json), "request", voice).expect_err("a refusal")
}

fn asked() -> Json {
    json!({
        "session": {"builds": [{"name": "Own"}, {"name": "B"}], "shots": [
            {"build": 0, "values": {"carry": 250.5}},
            {"build": 1, "values": {"carry": 260, "offline": null}},
        ]},
        "question": {"baseline": 0, "measure": "carry", "margin": 5, "stopping": {"planned_rounds": 6, "looked_after": [2, 4]}},
    })
}

#[test]
fn a_whole_request_is_taken_as_serde_json_takes_it() {
    let taken: Asked = typed(&value(asked())).unwrap();
    assert_eq!(taken, serde_json::from_value(asked()).unwrap());
    let Stopping::Planned { looked_after, .. } = taken.question.stopping else { panic!("no plan") };
    assert_eq!(looked_after, LookedAfter::Rounds(vec![2, 4]));
}

#[test]
fn a_field_that_nobody_knows_is_refused_with_the_nearest() {
    let mut json = asked();
    json["question"]["margn"] = json!(99);
    let english = refused(json.clone(), &Voice::english());
    assert_eq!(english.kind, "not_understood");
    assert_eq!(english.place, "request.question.margn");
    assert_eq!(english.message, "There is no field called `margn` here.");
    assert_eq!(english.remedy, "Did you mean `margin`?");
    let spanish = Voice::new(Language::from_table(text::SPANISH).unwrap(), Units::Yards);
    assert_eq!(refused(json, &spanish).remedy, "¿Querías decir `margin`?");
}

#[test]
fn a_misspelt_wind_is_refused() {
    let mut json = asked();
    json["session"]["weather"] = json!({"wind_helping": 10});
    let refused = refused(json, &Voice::english());
    assert_eq!(refused.place, "request.session.weather.wind_helping");
    assert_eq!(refused.remedy, "Did you mean `wind_helping_mph`?");
}

#[test]
fn a_field_far_from_all_is_refused_with_those_there_are() {
    let mut json = asked();
    json["question"]["stopping"]["xyz"] = json!(1);
    assert_eq!(
        refused(json, &Voice::english()).remedy,
        "The fields here are `planned_rounds`, `looked_after`."
    );
}

#[test]
fn a_wrong_type_names_its_path_and_what_it_should_be() {
    let cases = [
        ("/question/margin", json!("five"), "request.question.margin", "This must be a number."),
        (
            "/question/baseline",
            json!(1.5),
            "request.question.baseline",
            "This must be a whole number, zero or more.",
        ),
        (
            "/question/baseline",
            json!(-1),
            "request.question.baseline",
            "This must be a whole number, zero or more.",
        ),
        (
            "/session/shots/1/values/carry",
            json!("x"),
            "request.session.shots[1].values.carry",
            "This must be a number.",
        ),
        ("/session/builds/0/name", json!(7), "request.session.builds[0].name", "This must be a text."),
        ("/session/shots", json!(true), "request.session.shots", "This must be a list."),
        (
            "/session/builds/1",
            json!("B"),
            "request.session.builds[1]",
            "This must be an object with named fields.",
        ),
        ("/question", json!(null), "request.question", "This must be an object with named fields."),
    ];
    for (pointer, wrong, place, message) in cases {
        let mut json = asked();
        *json.pointer_mut(pointer).unwrap() = wrong;
        let refused = refused(json, &Voice::english());
        assert_eq!((refused.place.as_str(), refused.message.as_str()), (place, message));
    }
}

#[test]
fn a_missing_field_and_an_unknown_word_are_named() {
    let mut json = asked();
    json["question"].as_object_mut().unwrap().remove("measure");
    assert_eq!(refused(json, &Voice::english()).message, "The field `measure` is missing.");
    let mut json = asked();
    json["question"]["goal"] = json!("higer");
    let refused = refused(json, &Voice::english());
    assert_eq!(
        (refused.place.as_str(), refused.remedy.as_str()),
        ("request.question.goal", "Did you mean `higher`?")
    );
}

#[test]
fn a_number_that_is_none_is_refused_with_its_place() {
    for none in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let mut whole = value(asked());
        set(&mut whole, &["session", "shots"], |shots| {
            let Value::List(shots) = shots else { panic!("no list") };
            set(&mut shots[1], &["values", "carry"], |carry| *carry = Value::Number(none));
        });
        let wrong = typed::<Asked>(&whole).expect_err("a refusal");
        assert_eq!(wrong.what, What::NotFinite);
        assert_eq!(wrong.place("request"), "request.session.shots[1].values.carry");
    }
}

#[test]
fn shots_may_come_as_columns_and_what_is_no_number_there_is_nothing() {
    let mut whole = value(asked());
    set(&mut whole, &["session", "shots"], |shots| *shots = Value::List(Vec::new()));
    let columns = |carry: Vec<f64>| {
        let values = Value::Object(vec![("carry".into(), Value::Numbers(carry))]);
        Value::Object(vec![("build".into(), Value::Numbers(vec![0.0, 1.0])), ("values".into(), values)])
    };
    set(&mut whole, &["session"], |session| {
        let Value::Object(fields) = session else { panic!("no object") };
        fields.push(("columns".into(), columns(vec![250.5, f64::NAN])));
    });
    let taken: Asked = typed(&whole).unwrap();
    assert_eq!(taken.session.shots.len(), 2);
    assert_eq!(taken.session.shots[1].values, [None]);
    set(&mut whole, &["session", "columns"], |old| *old = columns(vec![250.5, f64::INFINITY]));
    let wrong = typed::<Asked>(&whole).expect_err("a refusal");
    assert_eq!(
        (wrong.place("request").as_str(), wrong.what),
        ("request.session.columns.values.carry[1]", What::NotFinite)
    );
}

#[test]
fn a_session_that_does_not_fit_together_says_so() {
    let mut json = asked();
    json["session"]["shots"][0]["build"] = json!(9);
    let refused = refused(json, &Voice::english());
    assert_eq!(refused.place, "request.session.shots[0].build");
    assert_eq!(refused.message, "It names the club 9; there are 2, counted from 0.");
}

#[test]
fn a_session_that_does_not_fit_together_is_refused_in_the_language_asked_for() {
    let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Meters);
    let cases = [
        (
            json!({"build": [0, 9], "values": {}}),
            "shots[1].build",
            "Nombra el palo 9; hay 2, contando desde 0.",
        ),
        (
            json!({"build": [0, 1], "values": {"carry": [250]}}),
            "columns.values.carry",
            "Esta columna tiene 1 número; hay 2 golpes.",
        ),
        (
            json!({"build": [0, 1], "round": [1, 1.5], "values": {}}),
            "columns.round[1]",
            "Esto debe ser un número entero, cero o más.",
        ),
        (
            json!({"build": [0, 1], "values": {}, "left_out": [[7, "mishit"]]}),
            "columns",
            "Un motivo o una nota es del golpe 7; hay 2 golpes, contando desde 0.",
        ),
    ];
    for (columns, place, message) in cases {
        let mut json = asked();
        json["session"]["shots"] = json!([]);
        json["session"]["columns"] = columns;
        let refused = refused(json, &spanish);
        assert_eq!(refused.place, format!("request.session.{place}"));
        assert_eq!(refused.message, message);
    }
    let mut twice = asked();
    twice["session"]["columns"] = json!({"build": [0], "values": {}});
    let refused = refused(twice, &spanish);
    assert!(refused.message.starts_with("Los golpes están uno por uno"), "{}", refused.message);
}

#[test]
fn an_own_way_of_saying_what_is_expected_is_kept() {
    let mut json = asked();
    json["question"]["stopping"] = json!(7);
    let wrong = typed::<Asked>(&value(json)).expect_err("a refusal");
    assert!(
        matches!(wrong.what, What::NotOfType { expected: Expected::Other(said) } if said.contains("fixed"))
    );
}

fn set(value: &mut Value, path: &[&str], change: impl FnOnce(&mut Value)) {
    let Some((first, rest)) = path.split_first() else { return change(value) };
    let Value::Object(fields) = value else { panic!("no object") };
    let (_, below) = fields.iter_mut().find(|(name, _)| name == first).unwrap();
    set(below, rest, change);
}
