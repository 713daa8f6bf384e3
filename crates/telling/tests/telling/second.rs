//! Before and after: the model against R's `lm`, and what must stay the same whatever is called what.

use crate::dice::Dice;
use crate::support::{asking, empty, in_turn, one_after_the_other, push};
use judging::second::SecondRequest;
use judging::verdict::DecisionKind;
use judging::{judge, settle};
use serde_json::Value;
use session::question::{Question, Stopping, StoppingWord};
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
        question: Question { candidate: Some(1), ..asking(measure) },
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
        // What the build does is the answer's.
        for (i, effect) in [(1, &found.condition), (2, &found.interaction)] {
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
        found.words.headline.starts_with(
            "The change to “after” points to more of a difference in spin rate than Driver B does"
        ),
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
    assert!(
        neither.words.headline.starts_with("Neither the change to “after” nor Driver B"),
        "{}",
        neither.words.headline
    );
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
    assert!(all.iter().all(|found| found.did_more == one.did_more));
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

/// The second half of each club's shots after a change.
fn halfway(session: &Session, question: Question) -> SecondRequest {
    let of = |build: usize| session.shots.iter().filter(|shot| shot.build == build).count();
    let mut seen = [0; 5];
    let is_second = session.shots.iter().map(|shot| {
        seen[shot.build] += 1;
        Some(2 * seen[shot.build] > of(shot.build))
    });
    SecondRequest { is_second: is_second.collect(), session: session.clone(), question, names: None }
}

/// Five clubs, no word on the number of shots, one after the other or in turn: what is said of the two is the answer.
#[test]
fn what_the_club_does_is_the_answer_about_it() {
    for lead in [0.0, 3.0, 6.0, 9.0, 14.0] {
        let sessions = [
            in_turn("carry", 6, &[250.0, 250.0 + lead], 7.0),
            in_turn("carry", 3, &[250.0, 250.0 + lead, 251.0, 249.0, 252.0], 7.0),
            one_after_the_other("carry", &[14, 17], &[250.0, 250.0 + lead], 7.0),
        ];
        for session in sessions {
            for word in [StoppingWord::Fixed, StoppingWord::Unknown] {
                let stopping = Stopping::Word(word);
                let question = Question { candidate: Some(1), stopping, ..asking("carry") };
                let judged = judge(settle(&question, &session).expect("a question that fits"));
                let answer = judged.of(1).expect("a second club");
                let estimate = answer.estimate.as_ref().expect("shots enough");
                let told = second(&halfway(&session, question.clone())).expect("fits");
                assert_eq!(told.build.facts.decision, answer.decision, "{lead} yd");
                assert_eq!(told.build.facts.range, estimate.decided_by, "{lead} yd");
                assert_eq!(told.build.facts.value.to_bits(), estimate.value.to_bits(), "{lead} yd");
                let strict = [answer.levels.different, answer.levels.same].map(|level| level.coverage());
                assert!(strict.contains(&told.condition.facts.range.level), "as strict as the answer");
                assert!(strict.contains(&told.interaction.facts.range.level), "as strict as the answer");
            }
        }
    }
}

#[test]
fn of_laps_without_scatter_nothing_is_said() {
    let mut session = empty("carry", 2);
    session.order = Order::Interleaved;
    for round in 0..8 {
        for build in 0..2 {
            push(&mut session, build, Some(round + 1), 240.0 + f64::from(round) + 10.0 * build as f64);
        }
    }
    let refusal = second(&halfway(&session, asking("carry"))).unwrap_err();
    assert_eq!(refusal.kind, "no_answer");
    assert!(refusal.message.starts_with("Every lap shows the same gap"), "{}", refusal.message);
    assert!(!refusal.remedy.is_empty());
}

#[test]
fn a_club_that_is_the_same_is_not_called_open_by_the_headline() {
    // Both in turn, nothing between the clubs, and much between the balls.
    let request = made(21, 60, 0.0, -900.0, 0.0, 250.0);
    let found = second(&request).unwrap();
    assert!(is(&found.build, DecisionKind::Same), "{:?}", found.build);
    assert!(!found.words.headline.contains("not settled"), "{}", found.words.headline);
    let small = Question { margin: Some(400.0), ..request.question.clone() };
    let beside = second(&SecondRequest { question: small, ..made(22, 60, 0.0, 420.0, 0.0, 250.0) }).unwrap();
    assert!(is(&beside.condition, DecisionKind::Different) && is(&beside.build, DecisionKind::Same));
    assert!(!beside.words.headline.contains("not settled"), "{}", beside.words.headline);
}

/// Each club half before and half after, one club after the other and slowly longer: that is time, not the change.
#[test]
fn two_halves_of_each_club_are_not_in_turn() {
    for order in [Order::Blocked, Order::Interleaved] {
        let mut session = one_after_the_other("carry", &[16, 16], &[250.0, 250.0], 6.0);
        session.order = order;
        let found = second(&halfway(&session, asking("carry"))).unwrap();
        assert!(found.condition.facts.order_allowance > 0.0, "{order:?}");
        assert!(found.words.note.contains("yd wider at each end"), "{}", found.words.note);
    }
    let mut session = one_after_the_other("carry", &[16, 16], &[250.0, 250.0], 6.0);
    let changed = halfway(&session, asking("carry"));
    for (shot, is_second) in session.shots.iter_mut().zip(&changed.is_second) {
        let later = if *is_second == Some(true) { 30.0 } else { 0.0 };
        shot.values[0] = shot.values[0].map(|carry| carry + later);
    }
    let found = second(&SecondRequest { session, ..changed }).unwrap();
    assert!(is(&found.condition, DecisionKind::Different));
    assert!(found.words.note.contains("What the change did is therefore a hint, not proof."));
}

#[test]
fn a_club_hit_after_the_other_is_a_hint_here_too() {
    for (order, said) in [(Order::Blocked, "one after the other"), (Order::Unknown, "is not known")] {
        let mut session = one_after_the_other("carry", &[20, 20], &[250.0, 280.0], 6.0);
        session.order = order;
        let found = second(&halfway(&session, asking("carry"))).unwrap();
        assert!(is(&found.build, DecisionKind::Different));
        let note = &found.words.note;
        assert!(note.contains(said) && note.contains("Driver B did is a hint, not proof"), "{note}");
    }
}

/// More is said only where the sizes in the two intervals have nothing in common.
#[test]
fn which_did_more_follows_from_the_two_intervals() {
    for seed in 0..60 {
        let (build, condition) = (f64::from(seed % 6) * 150.0, f64::from(seed / 6) * -150.0);
        let found = second(&made(u64::from(seed as u32), 15, build, condition, 0.0, 250.0)).unwrap();
        let sizes = |effect: &Effect| {
            let range = effect.facts.range;
            (range.low.max(-range.high).max(0.0), range.high.max(-range.low))
        };
        let (of_build, of_change) = (sizes(&found.build), sizes(&found.condition));
        let headline = &found.words.headline;
        let says_more =
            headline.contains("made more difference") || headline.contains("points to more of a difference");
        assert_eq!(
            says_more,
            of_build.0 > of_change.1 || of_change.0 > of_build.1,
            "{} {of_build:?} {of_change:?}",
            found.words.headline
        );
    }
}

#[test]
fn what_the_change_did_to_the_club_is_said_in_the_measures_own_way() {
    let found = second(&made(8, 30, 0.0, 0.0, -1_500.0, 200.0)).unwrap();
    assert!(
        found
            .interaction
            .words
            .starts_with("The change altered what the club does: against Own driver, Driver B averaged 1,"),
        "{}",
        found.interaction.words
    );
    assert!(
        found.interaction.words.ends_with("rpm less “after” than “before”."),
        "{}",
        found.interaction.words
    );
    let open = second(&made(9, 5, 0.0, 0.0, 0.0, 400.0)).unwrap();
    assert_eq!(
        open.interaction.words,
        "Whether the club makes more difference “after” than “before” is not settled."
    );
}
