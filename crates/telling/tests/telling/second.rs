//! Before and after: the model against R's `lm`, and what must stay the same whatever is called what.

use crate::dice::Dice;
use crate::support::{asking, empty, push};
use judging::second::SecondRequest;
use judging::verdict::DecisionKind;
use serde_json::Value;
use session::refusal::Refusal;
use session::{Order, Session};
use telling::second::{Effect, Second};

const REFERENCE: &str = include_str!("../../../../tests/reference/stats/19_two_factors.json");

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|x| x.as_f64().expect("a number")).collect()
}

fn second(request: &SecondRequest) -> Result<Second, Refusal> {
    telling::second::second(request, &text::Voice::english())
}

fn asked(measure: &str, y: &[f64], build: &[f64], condition: &[f64]) -> SecondRequest {
    let mut session: Session = empty(measure, 2);
    session.order = Order::Interleaved;
    for (value, build) in y.iter().zip(build) {
        push(&mut session, usize::from(*build > 0.0), None, *value);
    }
    SecondRequest {
        session,
        question: session::question::Question { candidate: Some(1), ..asking(measure) },
        is_second: condition.iter().map(|c| Some(*c > 0.0)).collect(),
        names: None,
    }
}

#[test]
fn effects_are_those_of_lm() {
    let reference: Value = serde_json::from_str(REFERENCE).expect("JSON");
    for case in reference["cases"].as_array().expect("cases") {
        let input = |name: &str| numbers(&case["input"][name]);
        let found = second(&asked("carry", &input("y"), &input("build"), &input("condition"))).expect("fits");
        let expected = |name: &str| numbers(&case["expected"][name]);
        let effects = [&found.build, &found.condition, &found.interaction];
        for (i, effect) in effects.into_iter().enumerate() {
            for (got, name) in [(effect.facts.value, "coef"), (effect.facts.se, "se"), (effect.facts.p, "p")]
            {
                let want = expected(name)[i];
                assert!(
                    (got - want).abs() <= 1e-9 * want.abs(),
                    "{} {name} {i}: {got} is not {want}",
                    case["id"]
                );
            }
            assert!((effect.facts.df - case["expected"]["df"].as_f64().unwrap()).abs() < 1e-9);
        }
    }
}

/// Shots by the effects of build and condition and how they work together.
fn made(seed: u64, n: usize, build: f64, condition: f64, together: f64, sd: f64) -> SecondRequest {
    let mut dice = Dice::seeded(seed);
    let (mut y, mut builds, mut conditions) = (Vec::new(), Vec::new(), Vec::new());
    for shot in 0..4 * n {
        let (b, c) = (if shot % 2 == 0 { -0.5 } else { 0.5 }, if shot < 2 * n { -0.5 } else { 0.5 });
        y.push(2_800.0 + build * b + condition * c + together * b * c + sd * dice.normal());
        builds.push(b);
        conditions.push(c);
    }
    asked("spin_rate", &y, &builds, &conditions)
}

fn is(effect: &Effect, kind: DecisionKind) -> bool {
    effect.facts.decision.kind == kind
}

#[test]
fn a_hint_that_did_more_than_the_club_is_said_to() {
    let found = second(&made(1, 15, -150.0, -900.0, 0.0, 250.0)).unwrap();
    assert!(
        found
            .words
            .headline
            .starts_with("The change to “after” made more difference to spin rate than Driver B did"),
        "{}",
        found.words.headline
    );
    let club = second(&made(2, 15, -1_400.0, 100.0, 0.0, 250.0)).unwrap();
    assert!(
        club.words.headline.starts_with("Driver B made more difference to spin rate than the change"),
        "{}",
        club.words.headline
    );
    let neither = second(&made(3, 6, 0.0, 0.0, 0.0, 400.0)).unwrap();
    assert!(neither.words.headline.contains("neither"), "{}", neither.words.headline);
}

/// Sizes beyond the allowance for order (150 rpm) are found, and nothing is found where nothing is.
#[test]
fn effects_are_found_and_not_invented() {
    let (mut found, mut invented, sessions) = (0, 0, 300);
    for seed in 0..sessions {
        let real = second(&made(seed, 15, 0.0, 0.0, 1_000.0, 400.0)).unwrap();
        found += usize::from(is(&real.interaction, DecisionKind::Different));
        let none = second(&made(1_000 + seed, 15, 0.0, 0.0, 0.0, 400.0)).unwrap();
        let effects = [&none.build, &none.condition, &none.interaction];
        invented += effects.into_iter().filter(|effect| is(effect, DecisionKind::Different)).count();
    }
    // An interaction's error is twice that of an effect: 1,000 rpm are 4.4 widened ones.
    assert!(found > 280, "{found} of {sessions}");
    assert!(invented <= 3 * 300 * 4 / 100, "{invented} of {}", 3 * sessions);
}

#[test]
fn exchanging_names_exchanges_effects() {
    let there = made(5, 10, -300.0, 500.0, 200.0, 300.0);
    let one = second(&there).unwrap();
    let mut builds = there.clone();
    builds.question.baseline = 1;
    builds.question.candidate = Some(0);
    let mut times = there.clone();
    times.is_second.iter_mut().for_each(|second| *second = second.map(|second| !second));
    let (builds, times) = (second(&builds).unwrap(), second(&times).unwrap());
    let opposite = |a: &Effect, b: &Effect| {
        (a.facts.value + b.facts.value).abs() < 1e-9 && (a.facts.range.low + b.facts.range.high).abs() < 1e-9
    };
    let same = |a: &Effect, b: &Effect| (a.facts.value - b.facts.value).abs() < 1e-9;
    assert!(opposite(&one.build, &builds.build) && same(&one.condition, &builds.condition));
    assert!(opposite(&one.condition, &times.condition) && same(&one.build, &times.build));
    assert!(
        opposite(&one.interaction, &builds.interaction) && opposite(&one.interaction, &times.interaction)
    );
    let all: [&Second; 3] = [&one, &builds, &times];
    assert!(all.iter().all(|found| same(&found.condition_over_build, &one.condition_over_build)));
}

#[test]
fn empty_cells_are_refused() {
    let mut request = made(6, 4, 0.0, 0.0, 0.0, 100.0);
    request.is_second.iter_mut().for_each(|second| *second = Some(false));
    assert_eq!(second(&request).unwrap_err().kind, "too_few_shots");
    request.is_second.clear();
    assert_eq!(second(&request).unwrap_err().kind, "too_few_shots");
    request.question.candidate = Some(2);
    assert_eq!(second(&request).unwrap_err().kind, "no_such_build");
}

#[test]
fn the_other_of_two_clubs_need_not_be_named_and_one_of_three_must() {
    let mut request = made(6, 4, 0.0, 0.0, 0.0, 100.0);
    let named = second(&request).unwrap();
    request.question.candidate = None;
    assert_eq!(second(&request).unwrap(), named);
    request.session.builds.push(request.session.builds[0].clone());
    assert_eq!(second(&request).unwrap_err().kind, "no_candidate");
}

#[test]
fn only_what_came_later_gets_the_allowance_for_order() {
    let halves = made(7, 10, 0.0, 0.0, 0.0, 300.0);
    assert!(second(&halves).unwrap().condition.facts.order_allowance > 0.0);
    // Two balls in turn, three shots each of both clubs: whatever drifts lies on both balls alike.
    let mut turns = halves.clone();
    turns.is_second = (0..40).map(|shot| Some(shot / 6 % 2 == 1)).collect();
    let found = second(&turns).unwrap();
    assert!(found.condition.facts.order_allowance.abs() < 1e-12 && found.words.note.is_empty());
    turns.session.order = Order::Unknown;
    assert!(second(&turns).unwrap().condition.facts.order_allowance > 0.0);
    // Back once is no turn: before, after, before.
    let mut back = halves;
    back.is_second = (0..40).map(|shot| Some((13..26).contains(&shot))).collect();
    assert!(second(&back).unwrap().condition.facts.order_allowance > 0.0);
}
