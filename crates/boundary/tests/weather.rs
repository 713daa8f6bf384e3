//! Weather that is told: carry in standard air comes along, and is judged as carry is.

use reading::{Hints, ReadResult, write_csv};
use session::Conditions;
use straight_answer::whole;
use text::Voice;

const FLOWN: &str = "Build,Ball speed (mph),Launch angle,Spin rate,Carry (yd)\n\
                     A,160,12,2600,255\nA,161,13,2500,258\nA,159,12.5,2700,252\n\
                     B,162,11,2400,257\nB,160,14,2800,254\nB,161,12,2650,256\n";

fn read(text: &str, hints: &Hints) -> ReadResult {
    whole::read(text, hints, &Voice::english())
}

fn told(weather: Conditions) -> Hints {
    Hints { weather: Some(weather), ..Hints::default() }
}

#[test]
fn weather_told_brings_carry_in_standard_air_along() {
    let hot = Conditions { temperature: Some(35.0), ..Conditions::default() };
    let session = read(FLOWN, &told(hot)).session;
    assert_eq!(session.weather, Some(hot));
    let place = session.measures.iter().position(|id| id.as_str() == "carry_standard_air").expect("modeled");
    // Hot air is thin: in standard air the same balls carry less.
    assert!(session.shots.iter().all(|s| s.values[place] < s.values[3] && s.values[place] > Some(230.0)));
    assert!(session.custom[0].name.contains("Modeled"));
    // The file keeps both, and an empty weather takes them back.
    let text = write_csv(&session);
    assert_eq!(read(&text, &Hints::default()).session, session);
    let back = read(&text, &told(Conditions::default())).session;
    assert_eq!(back, read(FLOWN, &Hints::default()).session);
    // Other weather takes the place of the first.
    let cold = read(&text, &told(Conditions { temperature: Some(0.0), ..Conditions::default() })).session;
    assert_eq!(cold.measures, session.measures);
    assert!(cold.shots[0].values[place] > cold.shots[0].values[3]);
}

#[test]
fn weather_without_flights_is_kept_and_adds_nothing() {
    let windy = Conditions { wind_helping_mph: Some(8.0), ..Conditions::default() };
    let session = read("Build,Carry\nA,240\nA,241\nB,250\nB,255\n", &told(windy)).session;
    assert_eq!(session.weather, Some(windy));
    assert_eq!(session.measures.len(), 1);
}

#[test]
fn carry_in_standard_air_is_judged_as_carry_is() {
    use session::question::{Question, Stopping};
    use telling::check::{CheckRequest, check};
    let hot = Conditions { temperature: Some(35.0), ..Conditions::default() };
    let session = read(FLOWN, &told(hot)).session;
    let asked = |measure: &str| {
        let question = Question {
            baseline: 0,
            candidate: Some(1),
            measure: measure.into(),
            goal: None,
            margin: None,
            first_margin: None,
            stopping: Stopping::default(),
            differs: None,
        };
        check(&CheckRequest { session: session.clone(), question }, &Voice::english()).expect("answers")
    };
    let (measured, modeled) = (asked("carry"), asked("carry_standard_air"));
    assert_eq!((modeled.asked.margin, modeled.asked.goal), (measured.asked.margin, measured.asked.goal));
    // One club after the other: both get the allowance for warming up and tiring.
    let allowance =
        |report: &telling::report::Report| report.answer.estimate.as_ref().map(|e| e.order_allowance);
    assert!(allowance(&measured) > Some(0.0));
    assert_eq!(allowance(&modeled), allowance(&measured));
}
