//! What readers of generated answers found false or at odds with itself, each where it is decided and told.

use crate::made::{also, around, blocks, noise, rounds, with_goal, with_margin};
use crate::support::{answer, asking, check, empty, in_turn, one_after_the_other, push};
use judging::analysis::MoreShots;
use judging::bet::NoBet;
use judging::claim::{ClaimKind, ClaimOpen, Claimed};
use judging::second::SecondRequest;
use judging::trust::{AllowedFor, Seen};
use judging::typical::{Beside, NoTypical};
use judging::verdict::DecisionKind;
use session::question::{Goal, LookedAfter, Question, Stopping, StoppingWord};
use session::{Order, Session, Shot};
use telling::cause::CauseRequest;
use telling::check::CheckRequest;
use telling::claim::{ClaimReport, ClaimRequest};
use telling::report::{Answer, OverlayKind};
use telling::together::TogetherRequest;
use text::Voice;

fn request(session: &Session, question: &Question) -> CheckRequest {
    CheckRequest { session: session.clone(), question: question.clone() }
}

fn claimed(gain: f64, session: &Session, question: &Question) -> ClaimReport {
    let claimed = Claimed { gain: Some(gain), price: Some(400.0), ..Claimed::default() };
    let request = ClaimRequest { claimed, session: session.clone(), question: question.clone() };
    telling::claim::claim(&request, &Voice::english()).expect("a claim")
}

fn answered(session: &Session, question: &Question) -> Answer {
    answer(session.clone(), question.clone()).answer
}

fn bet_note(session: &Session, question: &Question) -> String {
    let bet = telling::bet::bet(&request(session, question), &Voice::english()).expect("a request");
    bet.words.note
}

fn typical(session: &Session, question: &Question) -> telling::typical::Typical {
    telling::typical::typical(&request(session, question), &Voice::english()).expect("a request")
}

/// The same shots, of which nobody said how they were hit.
fn order_not_known(session: &Session) -> Session {
    Session { order: Order::Unknown, ..session.clone() }
}

#[test]
fn an_order_that_nobody_gave_is_not_called_out_of_turn() {
    let blocked = one_after_the_other("carry", &[20, 20], &[250.0, 280.0], 6.0);
    for (session, said, bet) in [
        (blocked.clone(), "The retest was not hit in turn", "The clubs were not hit in turn;"),
        (
            order_not_known(&blocked),
            "Whether the retest was hit in turn is not known",
            "Whether the clubs were hit in turn is not known;",
        ),
    ] {
        let told = claimed(25.0, &session, &asking("carry"));
        assert_eq!(told.facts.kind, ClaimKind::Supported);
        assert!(told.words.next.starts_with(said), "{}", told.words.next);
        let note = bet_note(&session, &asking("carry"));
        assert!(note.starts_with(bet), "{note}");
    }
    let own = one_after_the_other("tempo", &[9, 9], &[3.0, 3.4], 0.2);
    for (session, said) in [
        (own.clone(), "the clubs were not hit in turn"),
        (order_not_known(&own), "whether the clubs were hit"),
    ] {
        let note = bet_note(&session, &asking("tempo"));
        assert!(note.starts_with(&format!("Nothing is bet: {said}")), "{note}");
    }
}

#[test]
fn a_small_promise_that_the_retest_shows_whole_is_not_too_small_to_test() {
    let session = in_turn("carry", 8, &[250.0, 275.0], 5.0);
    let told = claimed(3.0, &session, &with_margin("carry", 7.4));
    assert_eq!(told.facts.kind, ClaimKind::AtLeast);
    assert!(told.words.headline.starts_with("The retest shows at least what was promised"));
    assert_eq!(
        claimed(3.0, &in_turn("carry", 8, &[250.0, 253.0], 5.0), &with_margin("carry", 7.4)).facts.kind,
        ClaimKind::TooSmall
    );
}

#[test]
fn where_nobody_knows_what_the_order_did_a_claim_is_open_for_that_reason_and_the_typical_shot_is_a_hint() {
    let own = one_after_the_other("tempo", &[18, 18], &[3.0, 3.6], 0.1);
    for session in [own.clone(), order_not_known(&own)] {
        let told = claimed(0.5, &session, &with_margin("tempo", 0.2));
        assert_eq!(
            (told.facts.kind, told.facts.open),
            (ClaimKind::NotSettled, Some(ClaimOpen::OrderUnknown))
        );
        assert!(told.words.headline.contains("is not known") && !told.words.headline.contains("luck alone"));
        assert!(told.words.price.is_empty() && told.words.next.starts_with("Hit both clubs in turn"));
        let words = typical(&session, &with_margin("tempo", 0.2)).words.headline;
        assert!(words.contains("in these shots") && words.contains("is not known"), "{words}");
    }
    // Nor are typical shots the same where an interval leaves no room for the order.
    let same = one_after_the_other("tempo", &[18, 18], &[3.0, 3.0], 0.1);
    let found = typical(&same, &with_margin("tempo", 1.0)).facts.expect("typical shots");
    assert_eq!(found.decision.kind, DecisionKind::CannotTell);
    // What to do is said before how much a session shows.
    let open = one_after_the_other("tempo", &[9, 9], &[3.0, 3.05], 0.3);
    let next = answered(&open, &asking("tempo")).words.next;
    assert!(next.starts_with("Hit the clubs in turn") && next.contains("would then find"), "{next}");
}

/// A tenth of what the other shots are counts all the same, and nothing that rests on it is told as if it were right.
#[test]
fn a_slipped_point_gets_what_an_impossible_value_gets() {
    for (gap, margin) in [(1.0, None), (60.0, None), (1.0, Some(90.0))] {
        let mut session = in_turn("spin_rate", 6, &[2600.0, 2600.0 + 10.0 * gap], 40.0);
        session.shots[4].values[0] = Some(261.0);
        let question = Question { margin, ..asking("spin_rate") };
        let report = answer(session.clone(), question.clone());
        let of_the_slip = |overlay: &&telling::report::Overlay| overlay.kind == OverlayKind::OddValue;
        assert!(report.overlays.iter().any(|overlay| of_the_slip(&overlay)), "{gap}");
        let next = &report.answer.words.next;
        assert!(
            next.starts_with("First check the value in doubt") && !next.contains("shots with each"),
            "{next}"
        );
        let bet = telling::bet::bet(&request(&session, &question), &Voice::english()).expect("a request");
        assert_eq!(bet.why, Some(NoBet::ValueInDoubt));
        assert_eq!(typical(&session, &question).why, Some(NoTypical::ValueInDoubt));
        let told = claimed(80.0, &session, &question);
        assert_eq!(
            (told.facts.kind, told.facts.open),
            (ClaimKind::NotSettled, Some(ClaimOpen::ValueInDoubt))
        );
        assert!(told.words.headline.contains("in doubt") && told.words.price.is_empty());
        assert!(told.words.next.starts_with("First check the value in doubt"));
    }
    let mut scatter = in_turn("spin_rate", 6, &[2600.0, 2600.0], 40.0);
    scatter.shots[4].values[0] = Some(261.0);
    let next = answered(&scatter, &with_goal("spin_rate", Goal::Tighter)).words.next;
    assert!(next.starts_with("First check the value in doubt"), "{next}");
}

fn alike_but_for_bad_shots() -> Session {
    let mut session = in_turn("carry", 20, &[250.0, 250.0], 4.0);
    let candidate = session.shots.iter_mut().filter(|shot| shot.build == 1);
    candidate.step_by(5).for_each(|shot| shot.values[0] = shot.values[0].map(|carry| carry - 45.0));
    session
}

#[test]
fn typical_shots_that_are_the_same_are_not_called_impossible_to_tell_apart() {
    let told = typical(&alike_but_for_bad_shots(), &with_margin("carry", 5.0));
    let facts = told.facts.expect("typical shots");
    assert_eq!((facts.decision.kind, facts.beside), (DecisionKind::Same, Beside::OnlyAverage));
    assert!(facts.in_the_bad_shots);
    assert_eq!(
        told.words.beside,
        "The averages differ, and the typical shots are the same: part of that gap may lie in the bad shots."
    );
    // A gap that is too small to matter is nobody's to explain.
    let facts =
        typical(&alike_but_for_bad_shots(), &with_margin("carry", 30.0)).facts.expect("typical shots");
    assert!(!facts.in_the_bad_shots);
}

#[test]
fn mishits_are_counted_as_they_were_hit() {
    let mut session = empty("carry", 2);
    session.order = Order::Interleaved;
    for round in 0..26_u32 {
        for build in 0..2 {
            let far = if build == 1 && (round == 5 || round == 17) { -49.0 } else { 0.0 };
            let carry = 250.0 + 5.0 * noise(round as usize * 2 + build * 7) + far;
            push(&mut session, build, Some(round + 1), carry);
        }
    }
    let mishits = typical(&session, &asking("carry")).facts.expect("typical shots").mishits.expect("counts");
    assert_eq!((mishits.candidate.found, mishits.baseline.found), (2, 0));
}

#[test]
fn nothing_is_said_to_be_allowed_where_nothing_is() {
    let session = one_after_the_other("carry", &[15, 15], &[250.0, 252.0], 8.0);
    let cold = |question: &Question| {
        let report = answer(session.clone(), question.clone());
        let found = report.trust.into_iter().find(|found| matches!(found.seen, Seen::ColdStart { .. }));
        found.expect("a cold start")
    };
    let of_averages = cold(&asking("carry"));
    assert!(matches!(of_averages.seen, Seen::ColdStart { allowed: AllowedFor::UpTo { .. }, .. }));
    assert!(of_averages.why.contains("allows for up to"));
    let of_scatter = cold(&with_goal("carry", Goal::Tighter));
    assert!(matches!(of_scatter.seen, Seen::ColdStart { allowed: AllowedFor::Nothing, .. }));
    assert!(of_scatter.why.ends_with("allows nothing for it."), "{}", of_scatter.why);
}

#[test]
fn the_typical_shot_is_pointed_to_only_where_it_is_told() {
    let mut session = in_turn("carry", 6, &[250.0, 252.0], 5.0);
    session.shots[4].values[0] = Some(200.0);
    let next = |question: &Question| {
        let report = answer(session.clone(), question.clone());
        let found = report.trust.into_iter().find(|found| matches!(found.seen, Seen::FarShots { .. }));
        found.expect("a far shot").next
    };
    assert!(next(&asking("carry")).contains("typical shot"));
    assert!(!next(&with_goal("carry", Goal::Tighter)).contains("typical shot"));
}

#[test]
fn nobody_chooses_by_feel_while_it_is_open_how_far_the_ball_goes() {
    let with_carry = |rounds: u32| {
        let mut session = in_turn("spin_rate", rounds, &[2600.0, 2600.0], 30.0);
        also(&mut session, "carry", |at, shot| Some(250.0 + 4.0 * shot.build as f64 + 11.0 * noise(at)));
        session
    };
    let next = |question: &Question| answered(&with_carry(6), question);
    let told = next(&with_margin("spin_rate", 250.0));
    assert_eq!(told.decision.kind, DecisionKind::Same);
    assert_eq!(
        told.words.next,
        "Spin rate does not decide between them, and carry is not settled: settle that before choosing."
    );
    let planned = |planned_rounds| Question {
        stopping: Stopping::Planned { planned_rounds, looked_after: LookedAfter::Rounds(vec![]) },
        ..with_margin("spin_rate", 400.0)
    };
    assert!(next(&planned(8)).words.next.starts_with("Go on: 2 laps"), "{}", next(&planned(8)).words.next);
}

#[test]
fn nobody_is_sent_to_a_club_that_is_worse() {
    let next = |third: f64| {
        let session = in_turn("carry", 8, &[250.0, 250.0, third], 3.0);
        let question = Question { candidate: Some(1), ..with_margin("carry", 6.0) };
        let told = answered(&session, &question);
        assert_eq!(told.decision.kind, DecisionKind::Same);
        told.words.next
    };
    assert!(next(280.0).contains("look at Driver C before choosing"), "{}", next(280.0));
    assert!(!next(220.0).contains("Driver C"), "{}", next(220.0));
}

#[test]
fn shots_on_which_nothing_was_measured_are_counted_as_hit() {
    let mut session = in_turn("ball_speed", 8, &[150.0, 151.0], 2.0);
    also(&mut session, "carry", |at, _| (at % 17 == 0).then_some(250.0 + at as f64));
    let told = answered(&session, &asking("carry"));
    assert_eq!(told.decision.kind, DecisionKind::CannotAnswer);
    assert!(told.words.detail.contains("of 24 shots"), "{}", told.words.detail);
    assert_eq!(told.words.next, "Have carry measured on every shot.");
}

#[test]
fn a_number_of_shots_that_was_hit_says_what_was_stricter() {
    let mut found = 0;
    for margin in [4.0, 5.0, 6.0, 7.0] {
        for quarters in 4..20 {
            let session = in_turn("carry", 10, &[250.0, 250.0 + 0.25 * f64::from(quarters)], 6.0);
            let stopping = Stopping::Word(StoppingWord::NotFixed);
            let told = answered(&session, &Question { stopping, ..with_margin("carry", margin) });
            let named = told.estimate.as_ref().and_then(|estimate| estimate.shots_to_settle);
            if told.decision.kind == DecisionKind::CannotTell && named.is_some_and(|shots| shots <= 30) {
                assert!(told.words.next.contains("a stricter interval of 99"), "{}", told.words.next);
                found += 1;
            }
        }
    }
    assert!(found > 0);
}

#[test]
fn three_days_are_offered_where_they_hold_the_shots_that_are_named() {
    let mut told = Vec::new();
    for margin in [5.0, 6.0, 8.0, 10.0] {
        let session = in_turn("carry", 4, &[250.0, 252.0], 11.0);
        let found = answered(&session, &with_margin("carry", margin));
        let estimate = found.estimate.expect("an interval");
        let Some(MoreShots::Tell { shots }) = estimate.more_shots else { continue };
        let offered = found.words.next.contains("put the three together");
        assert_eq!(offered, shots <= 36, "{shots}: {}", found.words.next);
        told.push(offered);
    }
    assert!(told.contains(&true) && told.contains(&false), "{told:?}");
}

#[test]
fn what_several_clubs_do_is_guessed_once_and_nobody_leads_where_any_difference_counts() {
    let detail = |measure: &str, scale: f64| {
        let averages = [250.0 * scale, 252.0 * scale, 262.0 * scale];
        let report = answer(in_turn(measure, 6, &averages, 8.0 * scale), asking(measure));
        let overlay = report.overlays.into_iter().find(|o| o.kind == OverlayKind::SeveralBuilds);
        overlay.expect("three clubs").detail
    };
    let carry = detail("carry", 1.0);
    assert!(carry.contains("would lead by") && !carry.contains("fair guess"), "{carry}");
    let launch = detail("launch_angle", 0.05);
    assert!(!launch.contains("lead") && !launch.contains("best") && !launch.contains("better"), "{launch}");
}

#[test]
fn laps_begin_with_another_club_where_there_are_several() {
    let next = |averages: &[f64]| {
        let mut session = in_turn("carry", 6, averages, 5.0);
        session.shots.sort_by_key(|shot| (shot.round, shot.build));
        let report = check(&request(&session, &asking("carry"))).expect("a request");
        let first = |seen: &Seen| matches!(seen, Seen::Order { always_first: Some(_), .. });
        report.trust.into_iter().find(|found| first(&found.seen)).expect("one is first").next
    };
    assert_eq!(next(&[250.0, 252.0]), "Begin every second lap with the other club.");
    assert_eq!(next(&[250.0, 252.0, 254.0]), "Begin each lap with another club.");
}

#[test]
fn a_session_that_holds_both_clubs_and_cannot_be_used_is_not_called_one_without_them() {
    let usable = in_turn("carry", 4, &[250.0, 252.0], 5.0);
    let too_few = blocks("carry", &[vec![250.0, 251.0], vec![252.0, 253.0]]);
    let request = TogetherRequest { sessions: vec![usable, too_few], question: asking("carry") };
    let told = telling::together::together(&request, &Voice::english()).expect("two sessions");
    assert!(told[0].headline.starts_with("Only 1 of these sessions can be used"), "{}", told[0].headline);
}

#[test]
fn who_lacks_what_is_named() {
    let headline = |builds: &[Vec<f64>]| answered(&blocks("carry", builds), &asking("carry")).words;
    let words = headline(&[vec![250.0; 6], vec![250.0; 6]]);
    assert!(
        words.headline.starts_with("With Own driver and Driver B, all shots of either club have one value")
    );
    assert!(!words.detail.contains("lap"), "{}", words.detail);
    let mut session = blocks("ball_speed", &[around(150.0, 2.0, 6, 0), around(151.0, 2.0, 6, 5)]);
    also(&mut session, "carry", |_, shot| (shot.build == 0).then_some(250.0));
    let told = answered(&session, &asking("carry")).words.headline;
    assert_eq!(told, "Carry was not recorded with Driver B.");
}

/// In the second half the second club is longer, in the first as much shorter: on average neither did anything.
#[test]
fn that_a_change_altered_what_the_club_does_is_the_headline() {
    let told = |turn: u32| {
        let mut session = empty("carry", 2);
        session.order = Order::Interleaved;
        for round in 0..(48 / turn) {
            for build in 0..2 {
                for shot in 0..turn {
                    let at = (round * turn + shot) as usize;
                    let by = if at < 24 { -15.0 } else { 15.0 };
                    let carry = 250.0 + 4.0 * noise(at + 5 * build) + if build == 1 { by } else { 0.0 };
                    push(&mut session, build, Some(round + 1), carry);
                }
            }
        }
        let mut seen = [0, 0];
        let is_second = session.shots.iter().map(|shot| {
            seen[shot.build] += 1;
            Some(seen[shot.build] > 24)
        });
        let is_second = is_second.collect();
        let question = Question { candidate: Some(1), ..asking("carry") };
        let request = SecondRequest { session, question, is_second, names: None };
        telling::second::second(&request, &Voice::english()).expect("two conditions")
    };
    let altered = told(3);
    assert_eq!(altered.interaction.facts.decision.kind, DecisionKind::Different);
    assert!(
        altered.words.headline.starts_with("What Driver B does to carry changed"),
        "{}",
        altered.words.headline
    );
    // Two turns of each are two shots of evidence, however long they are.
    assert_eq!(told(24).interaction.facts.decision.kind, DecisionKind::CannotTell);
}

#[test]
fn where_a_gap_comes_from_is_no_surer_than_the_answer_about_long_turns() {
    let told = |turn: usize| {
        let sets: Vec<Vec<Vec<f64>>> = (0..30 / turn)
            .map(|lap| vec![around(240.0, 5.0, turn, lap * turn), around(255.0, 5.0, turn, lap * turn + 5)])
            .collect();
        let mut session = rounds("carry", &sets);
        let carry = |shot: &Shot| shot.values[0].unwrap_or(0.0);
        also(&mut session, "ball_speed", |_, shot| Some(carry(shot) * 0.62));
        also(&mut session, "launch_angle", |at, _| Some(12.5 + 0.3 * noise(at)));
        also(&mut session, "spin_rate", |at, _| Some(2700.0 + 60.0 * noise(at + 3)));
        let request = CauseRequest { session, baseline: 0, candidate: 1, hand: None };
        telling::cause::cause(&request, &Voice::english()).expect("a gap").words
    };
    let (long, short) = (told(15), told(3));
    assert!(
        long.headline.ends_with("The clubs were changed too seldom to be sure of it."),
        "{}",
        long.headline
    );
    assert!(long.note.contains("changed so seldom") && !short.note.contains("changed so seldom"));
    assert!(!short.headline.contains("too seldom"), "{}", short.headline);
}
