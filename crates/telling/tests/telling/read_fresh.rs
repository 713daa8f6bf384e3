//! What fresh readers of generated answers found false: each sentence beside the session it was false of.

use crate::made::{around, blocks, rounds, rounds_begun_alike, with_margin};
use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::analysis::MoreShots;
use judging::bet::BetFacts;
use judging::facts::OrderAllowance;
use judging::trust::Seen;
use judging::typical::Beside;
use judging::verdict::DecisionKind;
use session::Session;
use session::question::{LookedAfter, Question, Stopping, View};
use telling::check::CheckRequest;
use telling::share::{ShareRequest, Shared};
use telling::typical::Typical;
use text::Voice;

fn shared(session: &Session, question: &Question) -> Shared {
    let address = "https://example.org/club/#example=fair".to_owned();
    let (session, question) = (session.clone(), question.clone());
    let request = ShareRequest { session, question, view: View::default(), address };
    telling::share::share(&request, None, &Voice::english()).expect("a usable request")
}

fn typical(session: &Session, question: &Question) -> Typical {
    let request = CheckRequest { session: session.clone(), question: question.clone() };
    telling::typical::typical(&request, &Voice::english()).expect("a usable request")
}

fn bet(session: &Session, question: &Question) -> BetFacts {
    let request = CheckRequest { session: session.clone(), question: question.clone() };
    telling::bet::bet(&request, &Voice::english()).expect("a usable request").facts.expect("a bet")
}

/// Laps that all begin with the same club.
fn begun_alike(laps: usize, gap: f64, scatter: f64) -> Session {
    let set =
        |lap: usize| vec![around(250.0, scatter, 3, 6 * lap), around(250.0 + gap, scatter, 3, 6 * lap + 3)];
    rounds_begun_alike("carry", &(0..laps).map(set).collect::<Vec<_>>())
}

/// Laps of fifteen with each club.
fn long_turns(laps: usize, gap: f64) -> Session {
    let lap = |lap: usize| {
        let of = if lap.is_multiple_of(2) { gap + 5.0 } else { gap - 5.0 };
        vec![around(250.0, 6.0, 15, 4 * lap), around(250.0 + of, 6.0, 15, 4 * lap + 1)]
    };
    rounds("carry", &(0..laps).map(lap).collect::<Vec<_>>())
}

#[test]
fn what_is_given_away_names_what_its_interval_leaves_room_for() {
    let told = |session: &Session, measure: &str| {
        let card = shared(session, &asking(measure)).card;
        assert!(card.alternative.contains(&card.difference));
        card.difference
    };
    let of_a_column = one_after_the_other("tempo", &[15, 15], &[3.0, 3.1], 0.2);
    assert!(told(&of_a_column, "tempo").contains("allowing for luck and, by a guess, order \u{2212}"));
    let alike = begun_alike(6, 2.0, 6.0);
    assert!(told(&alike, "carry").contains("allowing for luck and the cold start of each lap \u{2212}"));
    let blocked = one_after_the_other("carry", &[15, 15], &[250.0, 253.0], 6.0);
    assert!(told(&blocked, "carry").contains("allowing for luck and order \u{2212}"));
    let fair = in_turn("carry", 6, &[250.0, 251.0], 6.0);
    assert!(told(&fair, "carry").contains("allowing for luck \u{2212}"));
    let typical = typical(&of_a_column, &asking("tempo")).words.headline;
    assert!(
        !typical.contains("luck alone") && typical.contains("luck and, by a guess, for that"),
        "{typical}"
    );
}

#[test]
fn a_test_in_turn_would_find_what_it_finds_without_room_for_the_order() {
    let session = one_after_the_other("tempo", &[15, 15], &[3.0, 3.02], 0.2);
    let told = answer(session, asking("tempo")).answer;
    let estimate = told.estimate.expect("an estimate");
    assert!(estimate.order_allowance > 0.0);
    let found = estimate.detectable - estimate.order_allowance;
    assert!((estimate.detectable_in_turn() - found).abs() < f64::EPSILON);
    let printed = format!("a true difference of {found:.2} in 8 of 10 cases");
    assert!(told.words.next.contains(&printed), "{printed}: {}", told.words.next);
}

#[test]
fn only_a_gain_that_these_shots_can_show_is_told() {
    let learned = |laps: usize, turn: usize, build: usize| {
        let set = |lap: usize| {
            let of = |club: usize| {
                let values = around(250.0, 2.0, turn, 7 * lap + 3 * club).into_iter().enumerate();
                let short = |k: usize| if club == build { 20.0 * (-(k as f64) / 6.0).exp() } else { 0.0 };
                values.map(|(at, value)| value - short(turn * lap + at)).collect::<Vec<f64>>()
            };
            vec![of(0), of(1)]
        };
        let session = rounds("carry", &(0..laps).map(set).collect::<Vec<_>>());
        let trust = answer(session, asking("carry")).trust;
        trust.into_iter().find(|found| matches!(found.seen, Seen::Learning { .. }))
    };
    let found = learned(5, 3, 1).expect("fifteen shots show it");
    let Seen::Learning { gained, is_the_baseline, .. } = found.seen else { unreachable!() };
    // Of 20 yd all but exp(−14/6) was made up: 18.1.
    assert!(!is_the_baseline && (gained - 18.1).abs() < 2.5, "{gained}");
    assert!(learned(3, 3, 1).is_none(), "nine shots of its own are too few");
    assert!(learned(3, 15, 1).is_none(), "only whole laps count");
    let own = learned(5, 3, 0).expect("the baseline gained");
    assert!(own.why.contains("Warming up may have fallen mostly on it"), "{}", own.why);
    assert!(!own.why.contains("new in the hand"), "{}", own.why);
}

#[test]
fn what_learning_costs_explains_a_gap_only_together_with_luck() {
    let session = blocks("carry", &[around(250.0, 2.0, 12, 0), around(240.0, 2.0, 12, 5)]);
    let detail = answer(session, asking("carry")).answer.words.detail;
    assert!(detail.contains("that and luck together could explain it"), "{detail}");
    assert!(detail.contains("learning a club can cost about 5\u{a0}yd of carry"), "{detail}");
}

#[test]
fn a_test_that_began_every_lap_alike_is_not_sent_to_its_like() {
    let told = answer(begun_alike(12, 2.5, 4.0), with_margin("carry", 6.0)).answer;
    assert_eq!(told.facts.expect("facts").order_allowance, OrderAllowance::StartOfLaps);
    let estimate = told.estimate.expect("an estimate");
    assert_eq!(estimate.more_shots, Some(MoreShots::WereHit), "{estimate:?}");
    let next = told.words.next;
    assert!(next.contains("begins every second lap with the other club"), "{next}");
    assert!(!next.contains("A second one like it would"), "{next}");
}

#[test]
fn long_turns_are_named_however_many_laps_there_are() {
    for laps in [3, 4, 6] {
        let told = answer(long_turns(laps, 1.0), with_margin("carry", 2.0)).answer;
        assert_eq!(told.decision.kind, DecisionKind::CannotTell);
        let words = &told.words;
        assert!(
            words.headline.contains(&format!("so seldom that only {laps} laps count")),
            "{}",
            words.headline
        );
        assert!(words.next.starts_with("Change clubs every three shots"), "{}", words.next);
    }
    // A difference whose size is open is narrowed by shorter turns too.
    let open = answer(long_turns(6, 12.0), with_margin("carry", 11.0)).answer;
    assert_eq!(open.decision.kind, DecisionKind::Different, "{:?}", open.estimate);
    assert!(open.words.next.starts_with("Change clubs every three shots"), "{}", open.words.next);
}

#[test]
fn few_shots_say_next_to_nothing_about_the_typical_one() {
    let told = |shots: usize| {
        typical(
            &blocks("carry", &[around(230.0, 1.0, shots, 0), around(290.0, 1.0, shots, 4)]),
            &asking("carry"),
        )
    };
    for shots in [3, 4, 7] {
        let few = told(shots);
        let facts = few.facts.expect("typical shots");
        assert_eq!((facts.decision.kind, facts.beside), (DecisionKind::CannotTell, Beside::Agree));
        assert!(
            few.words.headline.contains("so few shots or laps say next to nothing"),
            "{}",
            few.words.headline
        );
    }
    assert_eq!(told(8).facts.expect("typical shots").decision.kind, DecisionKind::Different);
}

#[test]
fn no_chance_is_named_that_the_interval_beside_it_denies() {
    // Where every lap begins alike, luck reaches the gap from one side alone, and the interval from both.
    let denied = (0..40).filter(|gap| {
        let told = answer(begun_alike(6, 0.25 * f64::from(*gap), 6.0), with_margin("carry", 5.0)).answer;
        let estimate = told.estimate.expect("an estimate");
        let is_denied = told.decision.kind == DecisionKind::CannotTell
            && estimate.chance_if_same < 1.0 - estimate.decided_by.level;
        assert_eq!(told.words.detail.contains("Two identical clubs"), !is_denied, "{}", told.words.detail);
        is_denied
    });
    assert!(denied.count() > 0);
}

#[test]
fn a_bet_is_no_surer_than_single_shots_let_it_be() {
    // Two laps of shorter turns whose gaps agree by chance, beside the same shots in one block each.
    let lap = |lap: usize| vec![around(250.0, 9.0, 9, 0), around(256.0 + 0.02 * lap as f64, 9.0, 9, 3)];
    let by_chance = bet(&rounds("carry", &[lap(0), lap(1), lap(2)]), &asking("carry"));
    let usual = bet(&in_turn("carry", 9, &[250.0, 256.0], 9.0), &asking("carry"));
    let width = |facts: &BetFacts| facts.gap.interval.high - facts.gap.interval.low;
    assert!(width(&by_chance) > 0.8 * width(&usual), "{} {}", width(&by_chance), width(&usual));
}

#[test]
fn a_value_in_doubt_is_no_far_shot_and_may_be_left_out() {
    let mut session = in_turn("carry", 5, &[250.0, 252.0], 6.0);
    session.shots[4].values[0] = Some(2540.0);
    let told = answer(session, asking("carry"));
    assert!(told.trust.iter().any(|found| matches!(found.seen, Seen::OddValue { .. })));
    assert!(!told.trust.iter().any(|found| matches!(found.seen, Seen::FarShots { .. })));
    let decide = told.trust.iter().find(|found| matches!(found.seen, Seen::FewShotsDecide { .. }));
    assert!(decide.is_none_or(|found| found.next.contains("unless it is a slip")));
    // Its interval is the slip's doing: no ends that no two clubs can lie apart by.
    let words = &told.answer.words;
    assert!(!words.detail.contains("% interval"), "{}", words.detail);
    assert!(words.detail.contains("With the value in doubt counted"), "{}", words.detail);
    assert_eq!(words.line, "Cannot tell: a value is in doubt.");
}

#[test]
fn a_lap_that_is_only_begun_is_not_called_hit() {
    let stopping = Stopping::Planned { planned_rounds: 7, looked_after: LookedAfter::EveryRoundTo(6) };
    let told = |session: Session| {
        let question = Question { stopping: stopping.clone(), ..asking("carry") };
        let trust = answer(session, question).trust;
        let found = trust.into_iter().find(|found| matches!(found.seen, Seen::PlannedLooks { .. }));
        found.expect("a plan").what
    };
    let whole = in_turn("carry", 6, &[250.0, 252.0], 6.0);
    let mut begun = whole.clone();
    begun.shots.pop();
    assert_eq!(told(whole), "6 of 7 planned laps were hit.");
    assert_eq!(told(begun), "6 of 7 planned laps were begun; the last of them is not finished.");
}
