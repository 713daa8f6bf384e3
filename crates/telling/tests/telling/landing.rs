//! Where they land, held against counting in simulation and against what must stay the same.

use crate::dice::Dice;
use crate::support::empty;
use judging::landing::HitChance;
use session::question::{Stopping, StoppingWord};
use session::refusal::Refusal;
use session::{Order, Session, Shot};
use telling::hand::Hand;
use telling::landing::{Landing, LandingRequest};
use text::Voice;

fn landing(request: &LandingRequest) -> Result<Landing, Refusal> {
    telling::landing::landing(request, &Voice::english())
}

/// Shots of two builds by the average and deviation of offline; some far wide, as golfers have them.
fn session(dice: &mut Dice, n: usize, builds: [(f64, f64); 2]) -> Session {
    let mut session = empty("carry", 2);
    session.measures.push("offline".into());
    session.order = Order::Interleaved;
    for _ in 0..n {
        for (build, (center, sd)) in builds.iter().enumerate() {
            let values = vec![Some(250.0 + 11.0 * dice.normal()), Some(center + sd * offline(dice))];
            session.shots.push(Shot { build, round: None, number: None, values, ..Shot::default() });
        }
    }
    session
}

/// Mean 0, deviation 1, longer tails than normal: one in twelve scatters twice as wide.
fn offline(dice: &mut Dice) -> f64 {
    let wide = if dice.even() < 1.0 / 12.0 { 2.0 } else { 1.0 };
    wide * dice.normal() / (1.0 + 3.0 / 12.0_f64).sqrt()
}

fn asked(session: &Session) -> LandingRequest {
    LandingRequest {
        session: session.clone(),
        baseline: 0,
        candidate: Some(1),
        fairway: None,
        aim: None,
        stopping: Some(Stopping::Word(StoppingWord::Fixed)),
        hand: None,
    }
}

fn shown(session: &Session) -> Landing {
    landing(&asked(session)).expect("can be shown")
}

/// Share of a hundred thousand shots that finish within half the fairway.
fn counted(center: f64, sd: f64, fairway: f64) -> f64 {
    let mut dice = Dice::seeded(99);
    let hits = (0..100_000).filter(|_| (center + sd * offline(&mut dice)).abs() <= 0.5 * fairway).count();
    hits as f64 / 100_000.0
}

/// The promise: in 95 of 100 sessions the interval holds the share that really lands there. Three deviations of 400
/// sessions are allowed below it.
#[test]
fn chances_hold_what_counting_finds() {
    let sessions = 400;
    for (n, center, sd) in [(12, 6.0, 15.0), (30, 6.0, 15.0), (30, -20.0, 14.0), (60, 0.0, 16.0)] {
        let (mut as_aimed, mut best, mut gain, mut false_gains) = (0, 0, 0, 0);
        let truth = counted(center, sd, 30.0);
        for number in 0..sessions {
            let session =
                session(&mut Dice::seeded(number + 1000 * n as u64), n, [(center, sd), (center, sd)]);
            let build = shown(&session).builds.swap_remove(0).facts;
            let holds =
                |chance: HitChance, truth: f64| usize::from(chance.low <= truth && truth <= chance.high);
            as_aimed += holds(build.as_aimed.expect("enough shots"), truth);
            let aimed = build.best.expect("enough shots");
            // What the aim read off these shots would really hit.
            let really = counted(center + aimed.aim, sd, 30.0);
            best += holds(aimed.chance, really);
            gain += holds(aimed.gain, really - truth);
            false_gains += usize::from(aimed.gain.low > 0.0 && really <= truth);
        }
        for (what, held) in [("as aimed", as_aimed), ("best aim", best), ("gain of aiming", gain)] {
            assert!(held >= 367, "{what}: {held} of {sessions} with {n} shots around {center}");
        }
        assert!(false_gains <= 12, "{false_gains} false gains with {n} shots around {center}");
    }
}

#[test]
fn a_chance_is_the_integral_over_the_strip() {
    let session = session(&mut Dice::seeded(5), 30, [(6.0, 15.0), (-3.0, 12.0)]);
    for aim in [0.0, -12.0, 25.0] {
        let found =
            landing(&LandingRequest { aim: Some(aim), fairway: Some(28.0), ..asked(&session) }).unwrap();
        for build in found.builds.iter().map(|build| &build.facts) {
            let offline: Vec<f64> =
                session.shots.iter().filter(|s| s.build == build.build).filter_map(|s| s.values[1]).collect();
            let mean = offline.iter().sum::<f64>() / 30.0;
            let sd = (offline.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / 29.0).sqrt();
            let density =
                |x: f64| (-0.5 * ((x - mean - aim) / sd).powi(2)).exp() / (sd * 2.506_628_274_631_000_5);
            // Midpoints, fine enough for 1e-7.
            let integral: f64 =
                (0..20_000).map(|i| density(-14.0 + 28.0 * (f64::from(i) + 0.5) / 20_000.0)).sum();
            let chance = build.at_aim.unwrap();
            assert!((chance.value - integral * 28.0 / 20_000.0).abs() < 1e-7);
            assert!(chance.low < chance.value && chance.value < chance.high);
            assert!(chance.low > 0.0 && chance.high < 1.0);
            let within = offline.iter().filter(|x| (*x + aim).abs() <= 14.0).count();
            assert_eq!(build.counted, within);
        }
    }
}

#[test]
fn a_mirror_turns_sides_and_nothing_else() {
    let there = session(&mut Dice::seeded(6), 20, [(8.0, 15.0), (-3.0, 12.0)]);
    let mut back = there.clone();
    back.shots.iter_mut().for_each(|shot| shot.values[1] = shot.values[1].map(|x| -x));
    let (there, back) = (shown(&there), shown(&back));
    for (one, other) in there.builds.iter().zip(&back.builds) {
        let (one, other) = (one.facts.best.unwrap(), other.facts.best.unwrap());
        assert!((one.aim + other.aim).abs() < 1e-9);
        assert!((one.chance.value - other.chance.value).abs() < 1e-9);
        assert!((one.chance.low - other.chance.low).abs() < 1e-6);
    }
    let (one, other) = (there.ground.pair.unwrap(), back.ground.pair.unwrap());
    assert!((one.offline + other.offline).abs() < 1e-9);
    assert!((one.chance_if_same.unwrap() - other.chance_if_same.unwrap()).abs() < 1e-9);
}

#[test]
fn aiming_off_is_advised_where_it_does_more_than_the_club() {
    let request = asked(&session(&mut Dice::seeded(7), 30, [(20.0, 11.0), (19.0, 11.0)]));
    let words = landing(&request).unwrap().words;
    assert!(words.headline.contains("aiming off would fix more than the club does"), "{}", words.headline);
    assert!(words.headline.contains("right on average"));
    let handed =
        |hand| landing(&LandingRequest { hand: Some(hand), ..request.clone() }).unwrap().words.headline;
    assert!(handed(Hand::Right).contains("right, the fade side"));
    assert!(handed(Hand::Left).contains("right, the draw side"));

    let straight = session(&mut Dice::seeded(8), 30, [(0.0, 11.0), (1.0, 11.0)]);
    assert!(shown(&straight).words.headline.contains("do not settle"));
    let club = session(&mut Dice::seeded(9), 40, [(0.0, 26.0), (0.0, 9.0)]);
    assert!(shown(&club).words.headline.contains("Driver B hits a fairway 30\u{a0}yd wide more often"));
}

#[test]
fn what_is_said_in_full() {
    let found = shown(&session(&mut Dice::seeded(7), 30, [(20.0, 11.0), (5.0, 12.0)]));
    let of_builds: Vec<_> = found.builds.iter().map(|build| &build.words).collect();
    insta::assert_debug_snapshot!("landing", (&found.words, of_builds));
}

#[test]
fn few_shots_and_wrong_requests() {
    let few = session(&mut Dice::seeded(1), 5, [(0.0, 10.0), (3.0, 10.0)]);
    let found = shown(&few);
    assert!(found.ground.pair.is_none() && found.builds.iter().all(|build| build.facts.at_aim.is_none()));
    assert!(found.builds.iter().all(|build| build.facts.ovals.is_empty() && build.facts.of_100.is_none()));
    assert!(found.words.ovals.starts_with("No oval for Own driver"), "{}", found.words.ovals);
    assert!(found.words.ovals.contains("cannot be drawn from 5 shots, only from 8 or more"));
    assert_eq!(found.words.line, "Too few shots to say how often a fairway would be hit.");
    let request = asked(&few);
    let wrong = [
        LandingRequest { baseline: 2, ..request.clone() },
        LandingRequest { candidate: Some(7), ..request.clone() },
        LandingRequest { fairway: Some(f64::NAN), ..request.clone() },
        LandingRequest { aim: Some(200.0), ..request.clone() },
        LandingRequest { session: empty("carry", 2), ..request },
    ];
    for request in wrong {
        let refusal = landing(&request).unwrap_err();
        assert!(!refusal.remedy.is_empty());
    }
}

/// Shots with these places sideways, all as long.
fn places(builds: [&[f64]; 2]) -> Session {
    let mut session = empty("carry", 2);
    session.measures.push("offline".into());
    session.order = Order::Interleaved;
    for (build, offline) in builds.iter().enumerate() {
        for (at, x) in offline.iter().enumerate() {
            let values = vec![Some(250.0 + (at % 5) as f64), Some(*x)];
            session.shots.push(Shot { build, round: None, number: None, values, ..Shot::default() });
        }
    }
    session
}

/// 23 of 30 on a fairway of 30 yards and three mishits far off, against 22 of 30 and none.
fn three_mishits() -> Session {
    let on = |n: usize| (0..n).map(|at| [-8.0, 3.0, 9.0, -4.0, 0.0][at % 5]);
    let missed = |n: usize, by: f64| (0..n).map(move |at| if at % 2 == 0 { by } else { -by });
    let own: Vec<f64> = on(23).chain(missed(4, 17.0)).chain([75.0, -80.0, 70.0]).collect();
    let other: Vec<f64> = on(22).chain(missed(8, 16.5)).collect();
    places([&own, &other])
}

#[test]
fn three_mishits_do_not_turn_the_order_around_unsaid() {
    let landing = shown(&three_mishits());
    let [own, other] = &landing.builds[..] else { panic!("two clubs") };
    assert!(own.facts.counted > other.facts.counted);
    let curve = |of: &telling::landing::BuildLanding| of.facts.as_aimed.expect("a chance").value;
    assert!(curve(own) < curve(other), "the curve has them the other way round");
    assert!(
        own.words.chance.starts_with("23 of 30 shots landed on it. That is 77 of 100"),
        "{}",
        own.words.chance
    );
    assert!(landing.words.headline.starts_with("These shots do not settle"), "{}", landing.words.headline);
    assert!(
        landing.words.detail.contains("Counted, a larger share of the shots with Own driver landed on it"),
        "{}",
        landing.words.detail
    );
}

/// The page's answer is held to 99 % where nobody said that the number of shots was fixed, and to more with several clubs.
#[test]
fn who_hits_more_often_is_decided_as_strictly_as_the_answer() {
    let (mut at_95, mut fewer) = (0, 0);
    for seed in 0..60 {
        let session = session(&mut Dice::seeded(300 + seed), 20, [(0.0, 20.0), (0.0, 11.0)]);
        let fixed = shown(&session);
        let open = landing(&LandingRequest { stopping: None, ..asked(&session) }).expect("can be shown");
        assert!((fixed.ground.level - 0.95).abs() < 1e-9 && (open.ground.level - 0.99).abs() < 1e-9);
        let gain = |of: &Landing| of.ground.pair.expect("two clubs").gain_of_club;
        assert!(gain(&open).low < gain(&fixed).low && gain(&open).high > gain(&fixed).high);
        assert!(fixed.words.detail.contains("in 100 (95\u{a0}% interval)"), "{}", fixed.words.detail);
        assert!(open.words.detail.contains("in 100 (99\u{a0}% interval)"), "{}", open.words.detail);
        let finds = |of: &Landing| of.words.headline.contains("more often than");
        at_95 += usize::from(finds(&fixed));
        fewer += usize::from(finds(&fixed) && !finds(&open));
        assert!(!finds(&open) || gain(&open).low * gain(&open).high > 0.0);
    }
    assert!(at_95 > fewer && fewer > 0, "{fewer} of {at_95}");
    let mut three = session(&mut Dice::seeded(1), 12, [(0.0, 20.0), (0.0, 11.0)]);
    three.builds.push(three.builds[0].clone());
    assert!((shown(&three).ground.level - 0.975).abs() < 1e-9);
}

#[test]
fn an_order_that_is_not_known_may_have_moved_a_middle() {
    let mut session = session(&mut Dice::seeded(7), 20, [(20.0, 11.0), (-5.0, 12.0)]);
    let of = |session: &Session| shown(session).words.centers;
    assert!(!of(&session).contains("warming up"));
    session.order = Order::Unknown;
    assert!(
        of(&session).ends_with("The order is not known, so warming up or tiring may have moved a middle.")
    );
    session.order = Order::Blocked;
    assert!(of(&session).contains("One club was hit after the other"));
}

/// 10 of 14 and 12 of 17 both print as 71 of 100.
#[test]
fn shares_that_print_alike_favor_nobody() {
    let on = |n: usize| (0..n).map(|at| [-8.0, 3.0, 9.0, -4.0, 0.0][at % 5]);
    let own: Vec<f64> = on(10).chain([75.0, -80.0, 70.0, -66.0]).collect();
    let other: Vec<f64> = on(12).chain([17.0, -17.0, 16.0, -16.0, 18.0]).collect();
    let landing = shown(&places([&own, &other]));
    assert!(landing.builds.iter().all(|build| build.words.chance.contains("71 of 100")));
    assert!(!landing.words.detail.contains("Counted"), "{}", landing.words.detail);
}

#[test]
fn shots_too_few_for_a_chance_are_for_an_oval() {
    let found = shown(&session(&mut Dice::seeded(1), 7, [(0.0, 10.0), (3.0, 10.0)]));
    assert!(found.builds[0].words.chance.ends_with("Too few shots to give a chance."));
    assert!(!found.words.alternative.contains("Nine in ten"), "{}", found.words.alternative);
    let enough = shown(&session(&mut Dice::seeded(1), 8, [(0.0, 10.0), (3.0, 10.0)]));
    assert!(enough.words.alternative.contains("Nine in ten of the next shots would fall"));
    assert!(enough.words.ovals.starts_with("Ovals: where the next shots would fall"));
    assert!(!enough.words.ovals.contains("No oval"), "{}", enough.words.ovals);
}

/// What stands in the answer says the same as the room: the dots' numbers, and what they settle.
#[test]
fn the_line_in_the_answer_counts_and_says_what_that_settles() {
    let club = session(&mut Dice::seeded(9), 40, [(0.0, 26.0), (0.0, 9.0)]);
    let found = shown(&club);
    let on = |build: usize| found.builds[build].facts.of_100.expect("enough shots").on;
    let counted = format!(
        "Counted, about {} of 100 with Driver B landed on a fairway 30\u{a0}yd wide, about {} of 100 with Own driver.",
        on(1),
        on(0)
    );
    assert_eq!(found.words.line, format!("{counted} As aimed, Driver B hits it more often."));
    let mut blocked = club.clone();
    blocked.order = Order::Blocked;
    assert!(shown(&blocked).words.line.contains("in these shots: a hint, not proof"));
    // Another aim in the room changes nothing of what the answer says of that day.
    let aimed = landing(&LandingRequest { aim: Some(25.0), ..asked(&club) }).expect("can be shown");
    assert_eq!(aimed.words.line, found.words.line);
    let even = shown(&session(&mut Dice::seeded(8), 30, [(0.0, 11.0), (1.0, 11.0)]));
    assert!(even.words.line.ends_with("These shots do not settle which of the two hits it more often."));
    let turned = shown(&three_mishits());
    assert!(turned.words.line.ends_with("do not settle which of the two hits it more often."));
    let aim = shown(&session(&mut Dice::seeded(7), 30, [(20.0, 11.0), (19.0, 11.0)]));
    assert!(aim.words.line.ends_with(&aim.words.headline), "{}", aim.words.line);
}

/// 8 of 10 each, and one of them by far narrower: the curve settles it, the count would read as its opposite.
#[test]
fn what_is_counted_even_stands_not_beside_one_that_hits_more_often() {
    let own: Vec<f64> =
        (0..80).map(|at| if at % 5 == 0 { 70.0 } else { 12.0 - f64::from(at % 3) * 12.0 }).collect();
    let other: Vec<f64> =
        (0..80).map(|at| if at % 5 == 0 { 15.5 } else { f64::from(at % 3) - 1.0 }).collect();
    let found = shown(&places([&own, &other]));
    assert!(found.words.headline.contains("more often than"), "{}", found.words.headline);
    assert_eq!(found.words.line, found.words.headline);
}
