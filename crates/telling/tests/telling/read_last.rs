//! The last of what readers of generated answers found false: each sentence beside the session it was false of.

use crate::dice::Dice;
use crate::made::{around, blocks, mean, set_aside, summary, with_goal, with_margin};
use crate::support::{answer, asking, averages, empty, in_turn, one_after_the_other, push};
use judging::bet::NoBet;
use judging::claim::{ClaimKind, ClaimOpen, Claimed};
use judging::luck::Showing;
use judging::trust::{AllowedFor, Seen};
use judging::typical::Beside;
use judging::verdict::{DecisionKind, Direction};
use session::question::{Goal, Question, Stopping, StoppingWord, View};
use session::{Order, Session, SummaryOf};
use telling::bet::Bet;
use telling::check::CheckRequest;
use telling::claim::{ClaimReport, ClaimRequest};
use telling::landing::LandingRequest;
use telling::luck::LuckRequest;
use telling::report::{OverlayKind, Report};
use telling::second::Second;
use telling::share::{ShareRequest, Shared};
use telling::typical::Typical;
use text::Voice;

pub(crate) fn report(session: &Session, question: &Question) -> Report {
    answer(session.clone(), question.clone())
}

fn request(session: &Session, question: &Question) -> CheckRequest {
    CheckRequest { session: session.clone(), question: question.clone() }
}

pub(crate) fn bet(session: &Session, question: &Question) -> Bet {
    telling::bet::bet(&request(session, question), &Voice::english()).expect("a request")
}

fn typical(session: &Session, question: &Question) -> Typical {
    telling::typical::typical(&request(session, question), &Voice::english()).expect("a request")
}

pub(crate) fn claimed(gain: f64, session: &Session, question: &Question) -> ClaimReport {
    let claimed = Claimed { gain: Some(gain), price: Some(400.0), ..Claimed::default() };
    let request = ClaimRequest { claimed, session: session.clone(), question: question.clone() };
    telling::claim::claim(&request, &Voice::english()).expect("a claim")
}

fn shared(session: &Session, question: &Question) -> Shared {
    let (session, question) = (session.clone(), question.clone());
    let address = "https://example.org/".into();
    let request = ShareRequest { session, question, view: View::default(), address };
    telling::share::share(&request, Some("x"), &Voice::english()).expect("shared")
}

fn halves(session: &Session, question: &Question) -> Second {
    let n = session.shots.len() / 2;
    let is_second = (0..session.shots.len()).map(|at| Some(at >= n)).collect();
    let (session, question) = (session.clone(), question.clone());
    let request = judging::second::SecondRequest { session, question, is_second, names: None };
    telling::second::second(&request, &Voice::english()).expect("before and after")
}

/// Two laps of long turns whose gaps lie far apart.
fn two_laps() -> Session {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for (lap, gap) in [(1, 12.0), (2, -14.0)] {
        for build in 0..2 {
            around(250.0 + gap * build as f64, 6.0, 15, 3 * lap + build)
                .into_iter()
                .for_each(|value| push(&mut session, build, u32::try_from(lap).ok(), value));
        }
    }
    session
}

#[test]
fn an_interval_wider_than_two_clubs_can_differ_says_next_to_nothing_everywhere() {
    let (session, question) = (two_laps(), with_margin("carry", 2.0));
    let told = report(&session, &question);
    let facts = told.answer.facts.as_ref().expect("facts");
    assert!(facts.says_next_to_nothing);
    let words = &told.answer.words;
    for text in [&words.headline, &words.detail] {
        assert!(text.contains("say next to nothing") && !text.contains("interval"), "{text}");
    }
    assert!(words.line.starts_with("Cannot tell: too few"), "{}", words.line);
    let shared = shared(&session, &question);
    assert_eq!(shared.card.difference, "Gap in these shots: \u{2212}1\u{a0}yd.");
    assert!(!shared.words.plain.contains("% interval"), "{}", shared.words.plain);
    assert_eq!(bet(&session, &question).why, Some(NoBet::NextToNothing));
    let claim = claimed(15.0, &session, &question);
    assert_eq!((claim.facts.kind, claim.facts.open), (ClaimKind::NotSettled, Some(ClaimOpen::NextToNothing)));
    assert!(claim.words.headline.contains("says next to nothing") && claim.words.price.is_empty());
    assert!(claim.words.next.starts_with("Change clubs every three shots"), "{}", claim.words.next);
    let second = halves(&session, &question);
    assert!(second.build.words.contains("say next to nothing"), "{}", second.build.words);
    assert!(
        second.words.headline.starts_with("These shots say next to nothing"),
        "{}",
        second.words.headline
    );
    // The golfer's own margin does not move the limit, and what can be told says something.
    assert!(
        report(&session, &with_margin("carry", 40.0)).answer.facts.is_some_and(|f| f.says_next_to_nothing)
    );
    let apart = one_after_the_other("carry", &[20, 20], &[250.0, 280.0], 6.0);
    assert!(!report(&apart, &question).answer.facts.is_some_and(|facts| facts.says_next_to_nothing));
}

#[test]
fn the_typical_shot_and_scatter_say_next_to_nothing_too() {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for (lap, values) in (1..).zip([[250.0, 180.0], [210.0, 300.0], [265.0, 222.0]]) {
        (0..2).for_each(|build| push(&mut session, build, Some(lap), values[build]));
    }
    let told = typical(&session, &asking("carry"));
    let facts = told.facts.expect("typical shots");
    assert!(facts.says_next_to_nothing && facts.decision.kind == DecisionKind::CannotTell);
    assert_eq!(told.words.headline, "The typical shot: so few shots or laps say next to nothing about it.");
    let scatter = blocks("carry", &[vec![250.0, 251.0, 250.5, 250.2, 290.0], around(250.0, 9.0, 5, 2)]);
    let not_fixed = Stopping::Word(StoppingWord::NotFixed);
    let question = Question { stopping: not_fixed, ..with_goal("carry", Goal::Tighter) };
    let told = report(&scatter, &question);
    assert!(
        told.answer.facts.as_ref().is_some_and(|facts| facts.says_next_to_nothing),
        "{:?}",
        told.answer.estimate
    );
    assert!(told.answer.words.headline.contains("say next to nothing"), "{}", told.answer.words.headline);
    assert!(!told.answer.words.detail.contains("% interval"), "{}", told.answer.words.detail);
}

#[test]
fn few_laps_of_long_turns_call_for_shorter_turns_and_no_number_of_shots() {
    let told = report(&two_laps(), &asking("carry"));
    let facts = told.answer.facts.as_ref().expect("facts").only_whole_laps.expect("few laps");
    assert_eq!((facts.laps, facts.longest_turn), (2, 15));
    let words = &told.answer.words;
    assert!(words.headline.contains("only 2 laps count"), "{}", words.headline);
    assert_eq!(words.next, words.step);
    assert!(
        words.step.starts_with("Change clubs every three shots, in place of turns of up to 15"),
        "{}",
        words.step
    );
    let long = told.trust.iter().find(|f| matches!(f.seen, Seen::LongTurns { .. })).expect("long turns");
    assert_eq!(long.what, "The clubs were hit in turns of up to 15 shots.");
}

#[test]
fn what_averages_assume_of_scatter_is_named_wherever_the_answer_goes() {
    let assumed = averages(SummaryOf::All, Some(8), None, [250.0, 254.0]);
    let given = averages(SummaryOf::All, Some(8), Some(11.0), [250.0, 254.0]);
    for (session, is_assumed) in [(assumed, true), (given, false)] {
        let told = report(&session, &with_margin("carry", 3.0));
        let next = &told.answer.words.next;
        assert_eq!(next.contains("If single shots scatter as assumed"), is_assumed, "{next}");
        let shared = shared(&session, &with_margin("carry", 3.0));
        for text in [&shared.card.alternative, &shared.words.plain] {
            assert_eq!(text.contains("how far single shots scatter is assumed"), is_assumed, "{text}");
            assert!(!text.contains("these shots"), "{text}");
        }
    }
    // Averages are a retest.
    let no_number = averages(SummaryOf::All, None, Some(9.0), [250.0, 254.0]);
    let words = claimed(9.0, &no_number, &asking("carry")).words;
    assert!(words.headline.contains("cannot be compared with it"), "{}", words.headline);
    let one = Session {
        summaries: vec![summary(0, "carry", mean(250.0, None), Some(8), SummaryOf::All)],
        ..empty("carry", 2)
    };
    let words = claimed(9.0, &one, &asking("carry")).words;
    assert!(words.headline.contains("Nothing has been hit again yet"), "{}", words.headline);
}

#[test]
fn a_bet_says_how_many_measured_shots_it_rests_on() {
    let mut session = in_turn("carry", 8, &[250.0, 253.0], 6.0);
    assert_eq!(bet(&session, &asking("carry")).facts.expect("a bet").rests_on, None);
    session.shots.iter_mut().filter(|shot| shot.round > Some(4)).for_each(|shot| shot.values[0] = None);
    let told = bet(&session, &asking("carry"));
    let rests_on = told.facts.expect("a bet").rests_on.expect("fewer than were hit");
    let measured =
        |build: usize| session.shots.iter().filter(|s| s.build == build && s.values[0].is_some()).count();
    assert_eq!((rests_on.n.baseline, rests_on.n.candidate), (measured(0), measured(1)));
    let said = format!("{} shots with Driver B, {} with Own driver.", measured(1), measured(0));
    assert!(told.words.note.contains(&said), "{}", told.words.note);
    let request = LuckRequest {
        session: session.clone(),
        question: asking("carry"),
        shown: None,
        showing: Showing::Picked,
    };
    let whole = telling::luck::luck(&request, &Voice::english()).expect("luck").words.whole;
    assert!(whole.starts_with(&format!("All {} measured shots of each", measured(0))), "{whole}");
}

/// Each shot farther than the one before, the candidate after the baseline.
pub(crate) fn drifting(gap: f64, per_shot: f64) -> Session {
    let of = |from: usize, base: f64| {
        let shots = around(base, 3.0, 14, from).into_iter().enumerate();
        shots.map(|(at, value)| value + per_shot * (from + at) as f64).collect::<Vec<_>>()
    };
    blocks("carry", &[of(0, 250.0), of(14, 250.0 + gap)])
}

#[test]
fn a_drift_says_which_way_it_pushes_and_a_bet_that_way_repeats_it() {
    for (gap, per_shot, pushes, warned) in [
        (0.0, 1.0, Direction::Higher, true),
        (0.0, -1.0, Direction::Lower, true),
        (-40.0, 1.0, Direction::Higher, false),
    ] {
        let session = drifting(gap, per_shot);
        let told = report(&session, &asking("carry"));
        let drift = told.trust.iter().find(|f| matches!(f.seen, Seen::Drift { .. })).expect("a drift");
        let Seen::Drift { pushes: found, .. } = drift.seen else { unreachable!("a drift") };
        assert_eq!(found.map(|found| found.toward), Some(pushes), "{gap} {per_shot}");
        let does = if pushes == Direction::Higher { "carries farther" } else { "carries shorter" };
        assert!(
            drift.why.contains(&format!("By itself it would look like “Driver B {does}”")),
            "{}",
            drift.why
        );
        let note = bet(&session, &asking("carry")).words.note;
        assert_eq!(note.contains("drifted over the session"), warned, "{note}");
    }
    // Hit in turn, both share it.
    let mut session = in_turn("carry", 8, &[250.0, 250.0], 3.0);
    session
        .shots
        .iter_mut()
        .enumerate()
        .for_each(|(at, shot)| shot.values[0] = shot.values[0].map(|v| v + at as f64));
    let told = report(&session, &asking("carry"));
    let drift = told.trust.iter().find(|f| matches!(f.seen, Seen::Drift { .. })).expect("a drift");
    assert!(matches!(drift.seen, Seen::Drift { pushes: None, .. }), "{:?}", drift.seen);
}

#[test]
fn a_slipped_point_that_is_set_aside_counts_nowhere() {
    let plain = in_turn("spin_rate", 6, &[2600.0, 2700.0], 40.0);
    let mut slipped = plain.clone();
    slipped.shots[4].values[0] = Some(261.0);
    set_aside(&mut slipped, |at, _| at == 4);
    let mut gone = plain;
    gone.shots[4].values[0] = None;
    set_aside(&mut gone, |at, _| at == 4);
    let [slipped, gone] = [slipped, gone].map(|session| report(&session, &asking("spin_rate")));
    assert_eq!(slipped.answer.estimate, gone.answer.estimate);
    assert_eq!(slipped.answer.facts.and_then(|f| f.set_aside).map(|aside| aside.slips), Some(1));
    assert!(!slipped.trust.iter().any(|f| matches!(f.seen, Seen::FarShots { .. })));
    // A mishit that is set aside counts all the same.
    let mut topped = in_turn("carry", 6, &[250.0, 252.0], 5.0);
    topped.shots[4].values[0] = Some(120.0);
    let every = report(&topped, &asking("carry")).answer.estimate;
    set_aside(&mut topped, |at, _| at == 4);
    let aside =
        report(&topped, &asking("carry")).answer.facts.and_then(|facts| facts.set_aside).expect("set aside");
    assert_eq!(aside.slips, 0);
    assert_eq!(every.map(|e| e.value), report(&topped, &asking("carry")).answer.estimate.map(|e| e.value));
}

#[test]
fn typical_shots_as_far_apart_as_the_averages_lay_nothing_on_the_bad_shots() {
    let mut found = Vec::new();
    for seed in 0..40 {
        let mut dice = Dice::seeded(seed);
        let mut session = in_turn("carry", 6, &[250.0, 257.0], 0.0);
        session
            .shots
            .iter_mut()
            .for_each(|shot| shot.values[0] = shot.values[0].map(|v| v + 7.0 * dice.normal()));
        let told = typical(&session, &asking("carry"));
        let facts = told.facts.expect("typical shots");
        let estimate = report(&session, &asking("carry")).answer.estimate.expect("an estimate");
        let is_as_far = (estimate.low..=estimate.high).contains(&facts.estimate.value);
        if facts.beside == Beside::SameGapLessSurely {
            assert!(is_as_far && told.words.beside.contains("about the same gap, less surely"));
        }
        assert!(facts.beside != Beside::OnlyAverage || facts.in_the_bad_shots || !is_as_far);
        found.push(facts.beside);
    }
    assert!(found.contains(&Beside::SameGapLessSurely), "{found:?}");
}

#[test]
fn several_clubs_one_after_another_are_not_told_as_two() {
    let found = |clubs: usize| {
        let averages: Vec<f64> = (0..clubs).map(|club| 250.0 + club as f64).collect();
        let mut session = one_after_the_other("carry", &vec![9; clubs], &averages, 5.0);
        session.shots[2].values[0] = Some(222.0);
        report(&session, &asking("carry")).trust
    };
    let of = |clubs: usize, wanted: fn(&Seen) -> bool| {
        found(clubs).into_iter().find(|f| wanted(&f.seen)).map(|f| format!("{} {}", f.what, f.why))
    };
    let order = |clubs| of(clubs, |seen| matches!(seen, Seen::Order { .. })).expect("an order");
    assert!(order(2).starts_with("One club was hit after the other. Whatever changed between the two,"));
    assert!(
        order(5)
            .starts_with("The clubs were hit one after another. Whatever changed between one and the next,")
    );
    let far = |clubs| of(clubs, |seen| matches!(seen, Seen::FarShots { .. })).expect("a far shot");
    assert!(far(2).starts_with("1 shot with Own driver"), "{}", far(2));
    assert!(far(5).starts_with("Of the two clubs compared here, 1 shot with Own driver"), "{}", far(5));
}

#[test]
fn a_landing_without_width_is_a_line_and_a_note_explains_what_is_there() {
    let landed = |offline: &dyn Fn(usize) -> f64, n: usize| {
        let mut session = one_after_the_other("carry", &[n, n], &[250.0, 252.0], 8.0);
        crate::made::also(&mut session, "offline", |at, _| Some(offline(at)));
        let request = LandingRequest {
            session,
            baseline: 0,
            candidate: Some(1),
            fairway: None,
            aim: None,
            stopping: None,
            hand: None,
        };
        telling::landing::landing(&request, &Voice::english()).expect("a landing").words
    };
    let flat = landed(&|at| 0.01 * (at % 3) as f64, 12);
    assert!(flat.alternative.contains("would fall on a line"), "{}", flat.alternative);
    assert!(!flat.alternative.contains("by 0"), "{}", flat.alternative);
    assert!(flat.centers.contains("on the same line as"), "{}", flat.centers);
    let few = landed(&|at| 9.0 * (at % 4) as f64, 4);
    assert_eq!(few.note, "Where balls land, not where they roll to.");
    let many = landed(&|at| 9.0 * (at % 4) as f64 - 30.0, 24);
    assert!(many.note.contains("bell curve") && many.note.contains("best aim"), "{}", many.note);
}

#[test]
fn an_average_on_the_line_is_named_so_only_beside_sides() {
    let of = |measure: &str| {
        let session = blocks(measure, &[vec![-0.2, 0.2, 0.0, -0.1, 0.1], vec![9.0, 8.0, 7.0, 9.0, 8.0]]);
        report(&session, &asking(measure)).answer.words.detail
    };
    assert!(of("offline").contains("Own driver 0\u{a0}yd off line over 5"), "{}", of("offline"));
    assert!(!of("club_path").contains("off line"), "{}", of("club_path"));
}

#[test]
fn where_there_is_no_interval_a_cold_start_says_nothing_of_what_it_allows() {
    // Nothing scatters: there is no interval, and so nothing that it could allow for.
    let session = blocks("carry", &[vec![250.0; 14], vec![255.0; 14]]);
    let told = report(&session, &asking("carry"));
    assert!(told.answer.estimate.is_none());
    let cold = told.trust.iter().find(|f| matches!(f.seen, Seen::ColdStart { .. })).expect("a cold start");
    assert!(matches!(cold.seen, Seen::ColdStart { allowed: AllowedFor::NotSaid, .. }), "{:?}", cold.seen);
    assert!(!cold.why.contains("allows"), "{}", cold.why);
    assert!(!told.overlays.iter().any(|overlay| overlay.kind == OverlayKind::OrderMixedUp));
}
