//! More of what readers of generated answers found false or clumsy, each beside the session it was false of.

use crate::dice::Dice;
use crate::made::{also, around, blocks, finding, noise, rounds, with_goal, with_margin};
use crate::read_last::{bet, claimed, drifting, report};
use crate::support::{asking, empty, in_turn, one_after_the_other, push};
use judging::claim::ClaimKind;
use judging::feel::OwnSay;
use judging::second::SecondRequest;
use judging::trust::{Odd, Seen};
use judging::verdict::{DecisionKind, Direction, Matters};
use session::known::Known;
use session::question::{Goal, LookedAfter, Question, Stopping};
use session::{Order, Session, Shot};
use telling::feel::FeelRequest;
use telling::report::{OverlayKind, Report};
use telling::together::{TogetherPair, TogetherRequest};
use text::{Language, Units, Voice};

fn of_kind(told: &Report, wanted: fn(&Seen) -> bool) -> Option<&telling::trust::TrustFinding> {
    told.trust.iter().find(|found| wanted(&found.seen))
}

fn overlay(told: &Report, kind: OverlayKind) -> String {
    let found = told.overlays.iter().find(|overlay| overlay.kind == kind);
    found.map_or_else(String::new, |overlay| overlay.detail.clone())
}

fn together(sessions: Vec<Session>, measure: &str) -> TogetherPair {
    let request = TogetherRequest { sessions, question: asking(measure) };
    telling::together::together(&request, &Voice::english()).expect("days").remove(0)
}

fn feel(session: &Session, question: &Question, own: OwnSay) -> String {
    let request = FeelRequest { session: session.clone(), question: question.clone(), say: own };
    telling::feel::feel(&request, &Voice::english()).expect("what was felt").choose
}

/// Eight laps of three, the second club with a third of the scatter.
fn tighter_in_turn() -> Session {
    let set = |r: usize| vec![around(250.0, 12.0, 3, 5 * r), around(250.0, 3.0, 3, 5 * r + 3)];
    rounds("carry", &(0..8).map(set).collect::<Vec<_>>())
}

#[test]
fn scatter_that_was_not_compared_in_turn_is_a_hint() {
    let question = with_goal("carry", Goal::Tighter);
    let in_turn = tighter_in_turn();
    for (order, why) in [
        (Order::Interleaved, ""),
        (Order::Blocked, "The clubs were hit one after the other, so this is a hint, not proof."),
        (Order::Unknown, "Whether the clubs were hit in turn is not known, so this is a hint, not proof."),
    ] {
        let session = Session { order, ..in_turn.clone() };
        let told = report(&session, &question);
        assert_eq!(told.answer.decision.matters, Some(Matters::Yes), "{order:?}");
        let words = &told.answer.words;
        let is_hint = order != Order::Interleaved;
        assert_eq!(words.lead == why, is_hint, "{}", words.lead);
        assert_eq!(words.detail.contains("a hint, not proof"), is_hint, "{}", words.detail);
        assert_eq!(words.detail.contains("Whatever changed exactly"), order == Order::Blocked);
        assert_eq!(words.next.starts_with("Hit the clubs in turn"), is_hint, "{}", words.next);
        assert_eq!(words.next.contains("This holds"), !is_hint, "{}", words.next);
    }
}

#[test]
fn the_scatter_of_a_measure_is_not_told_as_the_measure() {
    let mut session = in_turn("carry", 8, &[250.0, 251.0], 5.0);
    also(&mut session, "club_speed", |at, _| Some(100.0 + 0.3 * noise(at)));
    let next = |goal| {
        let told = report(&session, &Question { margin: None, ..with_goal("carry", goal) });
        assert_eq!(finding(&told, 1, "club_speed").decision.kind, DecisionKind::Same);
        (told.answer.decision.kind, finding(&told, 1, "club_speed").words.next.clone())
    };
    let (kind, scatter) = next(Goal::Tighter);
    assert_eq!(kind, DecisionKind::CannotTell);
    assert!(scatter.contains("the scatter of carry is not settled"), "{scatter}");
    let mut session = tighter_in_turn();
    also(&mut session, "club_speed", |at, _| Some(100.0 + 0.3 * noise(at)));
    also(&mut session, "spin_rate", |at, shot| Some(2_600.0 + 600.0 * shot.build as f64 + 40.0 * noise(at)));
    let told = report(&session, &with_goal("carry", Goal::Tighter));
    let next = &finding(&told, 1, "club_speed").words.next;
    assert!(next.contains("they differ in spin rate and the scatter of carry"), "{next}");
}

/// A session whose clubs are the same within this margin, and hang on a few shots.
fn same_and_fragile() -> (Session, f64) {
    for seed in 0..200 {
        let mut dice = Dice::seeded(seed);
        let mut set =
            |_| [250.0, 251.0].map(|base| (0..3).map(|_| base + 6.0 * dice.normal()).collect()).to_vec();
        let session = rounds("carry", &(0..6).map(&mut set).collect::<Vec<_>>());
        let told = report(&session, &with_margin("carry", 8.0));
        if told.answer.decision.kind == DecisionKind::Same && told.removals_to_flip.is_some() {
            return (session, 8.0);
        }
    }
    panic!("no session hangs on a few shots");
}

#[test]
fn where_laps_of_the_plan_remain_they_are_the_check_and_not_a_new_test() {
    let (session, margin) = same_and_fragile();
    let fixed = report(&session, &with_margin("carry", margin));
    assert!(fixed.answer.words.next.starts_with("Before choosing, check it with a new test"));
    // Looked at before its end the answer is stricter, so that a wider margin is what these laps hold.
    let mut said = 0;
    for tenths in 0..100 {
        let looked_after = LookedAfter::Rounds(Vec::new());
        let stopping = Stopping::Planned { planned_rounds: 8, looked_after };
        let question = Question { stopping, ..with_margin("carry", margin + 0.1 * f64::from(tenths)) };
        let told = report(&session, &question);
        if told.answer.decision.kind == DecisionKind::Same && told.removals_to_flip.is_some() {
            said += 1;
            let next = &told.answer.words.next;
            assert!(next.starts_with("Before choosing, hit the last 2 laps of the plan"), "{next}");
        }
    }
    assert!(said > 0);
}

#[test]
fn what_hangs_on_a_few_shots_does_not_hold() {
    let mut seen = [0, 0];
    for tenths in 0..80 {
        let session = in_turn("tempo", 6, &[250.0, 250.0 + 0.1 * f64::from(tenths)], 4.0);
        let told = report(&session, &asking("tempo"));
        if told.answer.decision.kind != DecisionKind::Different {
            continue;
        }
        let hangs = told.removals_to_flip.is_some();
        let next = &told.answer.words.next;
        assert_eq!(next.starts_with("This holds for these clubs"), !hangs, "{next}");
        assert_eq!(next.contains("check it with a new test"), hangs, "{next}");
        seen[usize::from(hangs)] += 1;
    }
    assert!(seen[0] > 0 && seen[1] > 0, "{seen:?}");
}

#[test]
fn whoever_may_choose_freely_is_told_that_the_side_stays_open() {
    let of = |scatter: f64| {
        let mut session = in_turn("carry", 12, &[250.0, 250.2], 3.0);
        also(&mut session, "offline", |at, _| Some(2.0 + scatter * noise(5 * at + at / 7)));
        let told = report(&session, &with_margin("carry", 12.0));
        assert_eq!(told.answer.decision.kind, DecisionKind::Same);
        let choose = feel(&session, &with_margin("carry", 12.0), OwnSay::default());
        (finding(&told, 1, "offline").decision.kind, told.answer.words.next, choose)
    };
    let (kind, next, choose) = of(40.0);
    assert_eq!(kind, DecisionKind::CannotTell);
    let open = "How they compare in direction stays open: these shots cannot tell.";
    assert_eq!(next, format!("Choose by feel, look or price. {open}"));
    assert!(choose.ends_with(&format!("choose by feel, look or price. {open}")), "{choose}");
    let (kind, next, choose) = of(1.0);
    assert_eq!(kind, DecisionKind::Same);
    assert_eq!(next, "Choose by feel, look or price.");
    assert!(choose.ends_with("choose by feel, look or price."), "{choose}");
}

#[test]
fn what_was_felt_is_all_there_is_to_go_by_only_where_no_shot_speaks_against_it() {
    let choose = |longer: f64| {
        let set = |r: usize| vec![around(250.0, 9.0, 3, 5 * r), around(250.0 + longer, 8.0, 3, 5 * r + 3)];
        let session = rounds("carry", &(0..6).map(set).collect::<Vec<_>>());
        let question = with_goal("carry", Goal::Tighter);
        assert_eq!(report(&session, &question).answer.decision.kind, DecisionKind::CannotTell);
        assert_eq!(bet(&session, &question).facts, None);
        feel(&session, &question, OwnSay { longer: Some(1), ..OwnSay::default() })
    };
    let by_feel = "what you felt is all there is to go by.";
    assert!(choose(0.0).ends_with(by_feel), "{}", choose(0.0));
    assert_eq!(choose(-40.0), "The shots cannot tell yet: test again.");
}

#[test]
fn an_answer_that_one_value_moves_is_asked_to_look_at_it_first() {
    let first = "First check the value that is asked about: what follows counts it.";
    let mut session = in_turn("carry", 5, &[250.0, 252.0], 6.0);
    let plain = report(&session, &with_margin("carry", 4.0)).answer;
    assert_eq!(plain.decision.kind, DecisionKind::CannotTell);
    assert!(!plain.words.next.contains(first));
    session.shots[4].values[0] = Some(218.0);
    let told = report(&session, &with_margin("carry", 2.0));
    assert!(of_kind(&told, |seen| matches!(seen, Seen::OddValue { .. })).is_some());
    assert_eq!(told.answer.decision.kind, DecisionKind::CannotTell);
    assert_eq!(told.answer.words.step, first);
    assert!(told.answer.words.next.starts_with(first) && told.answer.words.next.len() > first.len());
}

#[test]
fn a_shot_alone_in_its_lap_moves_the_answer_by_what_it_is_and_not_by_its_lap() {
    // Laps of one shot each, whose levels lie far apart, and one shot that lies far from its club's.
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for lap in 0..9_u32 {
        let at = lap as usize;
        push(&mut session, 0, Some(lap + 1), 250.0 + 2.0 * noise(at));
        push(&mut session, 1, Some(lap + 1), 250.0 + 2.0 * noise(at + 5));
    }
    session.shots[9].values[0] = Some(220.0);
    let told = report(&session, &with_margin("carry", 2.0));
    let odd = of_kind(&told, |seen| matches!(seen, Seen::OddValue { .. })).expect("an odd value");
    let Seen::OddValue { because: Odd::MovesTheAnswer { by, .. }, .. } = odd.seen else { unreachable!() };
    let mut own: Vec<f64> =
        session.shots.iter().filter(|s| s.build == 1).filter_map(|s| s.values[0]).collect();
    own.sort_by(f64::total_cmp);
    assert!((by - (own[4] - 220.0) / 9.0).abs() < 1e-9, "{by}");
}

#[test]
fn a_launch_a_tenth_of_the_others_is_asked_about_where_the_ball_flew_like_them() {
    let asked = |carry: f64| {
        let mut session = in_turn("carry", 6, &[250.0, 252.0], 5.0);
        session.shots[4].values[0] = Some(carry);
        also(&mut session, "launch_angle", |at, _| Some(if at == 4 { 1.26 } else { 12.0 + noise(at) }));
        let told = report(&session, &asking("carry"));
        told.trust.iter().any(|found| {
            matches!(&found.seen, Seen::OddValue { measure, because: Odd::PointSlipped { .. }, .. } if *measure == Known::LaunchAngle)
        })
    };
    assert!(asked(251.0));
    assert!(!asked(90.0), "topped");
}

#[test]
fn who_is_told_to_set_one_shot_aside_is_not_told_to_leave_none_out() {
    let (mut session, margin) = same_and_fragile();
    let few = |session: &Session| {
        let told = report(session, &with_margin("carry", margin));
        of_kind(&told, |seen| matches!(seen, Seen::FewShotsDecide { .. })).map(|found| found.next.clone())
    };
    also(&mut session, "ball_speed", |at, _| Some(150.0 + noise(at)));
    assert!(few(&session).expect("few decide").starts_with("Leave none out."));
    session.shots[6].values[1] = Some(15.1);
    assert!(few(&session).expect("few decide").starts_with("Leave none out, unless it is a slip."));
}

#[test]
fn a_claim_not_settled_of_clubs_that_are_told_apart_takes_the_answers_own_step() {
    let mut kinds = Vec::new();
    for (gap, margin, claim) in [(2.0, 1.0, 4.0), (6.0, 5.0, 9.0), (9.0, 2.0, 12.0)] {
        let session = in_turn("carry", 6, &[250.0, 250.0 + gap], 6.0);
        let question = with_margin("carry", margin);
        let (claim, answer) = (claimed(claim, &session, &question), report(&session, &question).answer);
        assert_eq!(claim.facts.kind, ClaimKind::NotSettled, "{gap}");
        let next = &claim.words.next;
        let is_apart = answer.decision.kind == DecisionKind::Different;
        assert_eq!(next.contains("tell the two clubs apart"), !is_apart, "{next}");
        if answer.decision.matters == Some(Matters::Maybe) {
            assert_eq!(*next, answer.words.next);
        } else if is_apart {
            assert_eq!(next, "More shots in turn narrow it.");
        }
        kinds.push((answer.decision.kind, answer.decision.matters));
    }
    assert!(kinds.contains(&(DecisionKind::CannotTell, None)), "{kinds:?}");
    assert!(kinds.contains(&(DecisionKind::Different, Some(Matters::Maybe))), "{kinds:?}");
    assert!(kinds.contains(&(DecisionKind::Different, Some(Matters::Yes))), "{kinds:?}");
}

#[test]
fn a_drift_that_was_found_as_large_as_luck_would_need_is_said_so() {
    let told = |gap: f64, per_shot: f64| {
        let told = report(&drifting(gap, per_shot), &with_margin("carry", 5.0));
        assert_eq!(told.answer.decision.direction, Some(Direction::Higher), "{per_shot}");
        overlay(&told, OverlayKind::OrderMixedUp)
    };
    let none = told(18.0, 0.0);
    assert!(none.contains("Only with a drift of") && !none.contains("was found"), "{none}");
    let found = told(-3.0, 1.5);
    assert!(found.contains("and that much was found"), "{found}");
    assert!(!found.contains("Only with a drift"), "{found}");
}

#[test]
fn a_gain_that_nobody_knows_well_is_told_by_its_least() {
    let mut seen = [0, 0];
    for seed in 0..60 {
        let mut dice = Dice::seeded(seed);
        let mut set = |r: usize| {
            let short = |k: usize| 22.0 * (-(k as f64) / 6.0).exp();
            let own = (0..3).map(|i| 250.0 + 9.0 * dice.normal() - short(3 * r + i)).collect();
            vec![(0..3).map(|_| 250.0 + 9.0 * dice.normal()).collect::<Vec<f64>>(), own]
        };
        let session = rounds("carry", &(0..8).map(&mut set).collect::<Vec<_>>());
        let told = report(&session, &asking("carry"));
        let Some(found) = of_kind(&told, |seen| matches!(seen, Seen::Learning { .. })) else { continue };
        let Seen::Learning { gained, is_rough, low, high, .. } = found.seen else { unreachable!() };
        assert_eq!(is_rough, 0.5 * (high - low) > 0.5 * gained, "{gained} {low} {high}");
        let size = if is_rough { "or more since" } else { "by about" };
        assert!(found.what.contains(size), "{} {size}", found.what);
        seen[usize::from(is_rough)] += 1;
    }
    assert!(seen[0] > 0 && seen[1] > 0, "{seen:?}");
}

#[test]
fn nobody_leads_where_nearer_to_zero_is_better() {
    let told = |measure: &str| {
        let session = one_after_the_other(measure, &[8, 8, 8], &[-7.0, 6.0, 0.0], 9.0);
        overlay(&report(&session, &asking(measure)), OverlayKind::SeveralBuilds)
    };
    assert!(told("carry").contains("The best of"));
    let offline = told("offline");
    assert!(!offline.contains("best") && !offline.contains("lead"), "{offline}");
}

#[test]
fn days_name_what_is_a_guess_and_what_is_allowed_by_one_size() {
    let of = |measure: &str| {
        let day = |from| blocks(measure, &[around(250.0, 5.0, 9, from), around(253.0, 5.0, 9, from + 4)]);
        let days = vec![day(0), day(3)];
        let overlay = overlay(&report(&days[0], &asking(measure)), OverlayKind::OrderMixedUp);
        (overlay, together(days, measure).detail)
    };
    let guess = "what is allowed for them is a guess of ours";
    let (_, own) = of("tempo");
    assert!(own.contains(guess), "{own}");
    let (overlay, carry) = of("carry");
    assert!(!carry.contains(guess), "{carry}");
    // As long as the day itself says, in meters too.
    assert!(
        overlay.contains("of about 6\u{a0}yd") && carry.contains("6\u{a0}yd to either side"),
        "{overlay} {carry}"
    );
    let meters = Voice::new(Language::english(), Units::Meters);
    let days = vec![blocks("carry", &[around(250.0, 5.0, 9, 0), around(253.0, 5.0, 9, 4)]); 2];
    let request = TogetherRequest { sessions: days, question: asking("carry") };
    let told = telling::together::together(&request, &meters).expect("days").remove(0);
    assert!(told.detail.contains("5.5\u{a0}m to either side"), "{}", told.detail);
}

#[test]
fn what_came_later_points_to_a_difference_and_what_was_hit_in_turn_made_one() {
    // By how much the second club and what came later carried farther, and how the headline begins.
    let headline = |session: &Session, is_second: &dyn Fn(usize, &Shot) -> bool| {
        let changed = session.shots.iter().enumerate().map(|(at, shot)| Some(is_second(at, shot))).collect();
        let (session, question) = (session.clone(), asking("carry"));
        let request = SecondRequest { session, question, is_second: changed, names: None };
        telling::second::second(&request, &Voice::english()).expect("before and after").words.headline
    };
    let blocked = |club: f64, change: f64| {
        let own =
            |base: f64, from| [around(base, 4.0, 8, from), around(base + change, 4.0, 8, from + 3)].concat();
        blocks("carry", &[own(250.0, 0), own(250.0 + club, 5)])
    };
    let later = |at: usize, _: &Shot| at % 16 >= 8;
    for (club, change, said) in [
        (40.0, 0.0, "Driver B points to more of a difference in carry than the change to “after” does"),
        (0.0, 40.0, "The change to “after” points to more of a difference in carry than Driver B does"),
        (30.0, 30.0, "Both point to a difference in carry"),
        (22.0, 8.0, "Driver B points to a difference in carry"),
    ] {
        let told = headline(&blocked(club, change), &later);
        assert!(told.starts_with(said), "{club} {change}: {told}");
    }
    // In turn, and the change with every second lap.
    let turns = |club: f64, change: f64| {
        let mut session = in_turn("carry", 12, &[250.0, 250.0 + club], 4.0);
        session.shots.iter_mut().filter(|shot| shot.round.is_some_and(|lap| lap % 2 == 0)).for_each(|shot| {
            shot.values[0] = shot.values[0].map(|value| value + change);
        });
        session
    };
    let every_second = |_: usize, shot: &Shot| shot.round.is_some_and(|lap| lap % 2 == 0);
    for (club, change, said) in [
        (40.0, 0.0, "Driver B made more difference to carry than the change"),
        (0.0, 40.0, "The change to “after” made more difference to carry than Driver B did"),
        (30.0, 30.0, "Both made a difference to carry"),
    ] {
        let told = headline(&turns(club, change), &every_second);
        assert!(told.starts_with(said), "{club} {change}: {told}");
    }
}
