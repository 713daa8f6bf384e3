//! What a plan promises, held against other plans.

use crate::support::{around, blocks};
use judging::plan::{
    FollowRequest, LoggedShot, LookTaken, PlanRefused, Planned, SpreadFrom, follow, plan, without_session,
};
use session::Order;
use session::known::Known;
use session::measure::MeasureId;
use session::plan::{LookAfter, LookWord, PlanRequest};
use session::question::Goal;

fn request(rounds: u32, margin: f64) -> PlanRequest {
    let builds = ["Own driver", "Driver B"].map(str::to_owned).into();
    PlanRequest { rounds: Some(rounds), margin: Some(margin), ..PlanRequest::of(builds, "carry".into()) }
}

fn planned(request: &PlanRequest) -> Planned {
    plan(request).expect("a plan")
}

#[test]
fn what_can_be_detected_is_found_in_eight_of_ten_tests() {
    let tighter = PlanRequest { goal: Some(Goal::Tighter), margin: Some(1.3), ..request(8, 5.0) };
    for asked in [request(8, 5.0), request(8, 30.0), tighter] {
        let detectable = planned(&asked).power.expect("spread").facts.detectable.expect("of some sense");
        let power =
            planned(&PlanRequest { margin: Some(detectable), ..asked.clone() }).power.expect("spread");
        assert!((power.seen[0].chance - 0.8).abs() < 0.005, "{:?} {detectable}", power.seen);
    }
    // Of some sense up to sixty-four times what matters.
    let of = |margin: f64| planned(&request(8, margin)).power.expect("spread").facts.detectable;
    let detectable = of(5.0).expect("of some sense");
    assert!((of(detectable / 45.0).expect("of some sense") / detectable - 1.0).abs() < 0.001);
    assert_eq!(of(detectable / 70.0), None);
}

#[test]
fn a_longer_test_promises_what_a_plan_of_that_length_promises() {
    for looks in [LookAfter::Word(LookWord::EveryRound), LookAfter::default()] {
        let asked = |rounds| PlanRequest { looks: Some(looks.clone()), ..request(rounds, 6.0) };
        let own = planned(&asked(8));
        for rounds in [4, 8, 16] {
            let length = own.facts.lengths.iter().find(|length| length.rounds == rounds).expect("shown");
            let other = planned(&asked(rounds));
            let power = other.power.expect("spread");
            assert!((length.margin_found.expect("spread") - power.seen[0].chance).abs() < 0.02, "{rounds}");
            assert!((length.double_found.expect("spread") - power.seen[1].chance).abs() < 0.02, "{rounds}");
            assert!((length.same.expect("spread") - power.facts.same.expect("spread")).abs() < 1e-9);
            assert_eq!((length.balls, length.minutes), (other.facts.balls, other.facts.minutes));
            assert_eq!(length.is_plan, rounds == 8);
        }
    }
}

#[test]
fn a_difference_that_nobody_can_miss_ends_the_test_at_its_first_look() {
    let looks = Some(LookAfter::Rounds(vec![3, 6]));
    let average = |margin| {
        let asked = PlanRequest { looks: looks.clone(), ..request(8, margin) };
        planned(&asked).power.expect("spread").facts.average_rounds
    };
    // Three rounds leave the widest interval, which a few tests of a hundred still cannot end on.
    assert!((3.0..3.2).contains(&average(200.0)), "{}", average(200.0));
    // Of a difference as good as none a few tests in a hundred end early by luck.
    assert!((7.7..8.0).contains(&average(0.001)), "{}", average(0.001));
    // What counts is the difference in scatters.
    let of_scatters = |margin: f64, spread: f64| {
        let asked = PlanRequest { looks: looks.clone(), spread: Some(spread), ..request(8, margin) };
        planned(&asked).power.expect("spread").facts.average_rounds
    };
    assert!((of_scatters(8.0, 8.0) - of_scatters(1.0, 1.0)).abs() < 1e-9);
    assert!((4.0..7.0).contains(&of_scatters(8.0, 8.0)), "{}", of_scatters(8.0, 8.0));
}

#[test]
fn equal_builds_are_called_the_same_the_more_often_the_more_they_may_differ_and_the_longer_it_takes() {
    let same =
        |rounds, margin| planned(&request(rounds, margin)).power.expect("spread").facts.same.expect("spread");
    assert!(same(8, 0.5) < 0.01 && same(8, 60.0) > 0.999);
    assert!(same(8, 8.0) < same(8, 10.0) && same(8, 10.0) < same(16, 10.0));
}

fn log(planned: &Planned, shots: usize) -> Vec<LoggedShot> {
    let turns = planned.facts.turns.iter().enumerate();
    let shot = |(turn, set): (usize, &judging::plan::Turn)| {
        let values = [(MeasureId::from(Known::Carry), Some(250.0))].into();
        vec![LoggedShot { turn, values, note: None }; set.shots as usize]
    };
    turns.flat_map(shot).take(shots).collect()
}

/// Three clubs, two shots in a row, eight rounds: 48 balls, a rest after every fourth round, looks after 3 and 8.
#[test]
fn a_test_is_followed_from_the_first_shot_to_the_last() {
    let builds = ["Own driver", "Driver B", "Driver C"].map(str::to_owned).into();
    let looks = Some(LookAfter::Rounds(vec![3]));
    let asked = PlanRequest { set: Some(2), builds, looks, ..request(8, 5.0) };
    let planned = planned(&asked);
    let turns = &planned.facts.turns;
    assert_eq!((turns.len(), planned.facts.rests.as_slice()), (24, [4].as_slice()));
    for hit in 0..=48_usize {
        let request =
            FollowRequest { plan: asked.clone(), shots: log(&planned, hit), ended: vec![], looks: vec![] };
        let facts = follow(&request).expect("in the plan").facts;
        assert_eq!((facts.hit, facts.of, facts.rounds_complete as usize), (hit, 48, hit / 6), "{hit}");
        let within = hit % 6 != 0;
        assert_eq!(facts.look_now, LookTaken { after_round: facts.rounds_complete, within_a_round: within });
        assert_eq!(facts.look_due, hit == 18 || hit == 48, "{hit}");
        let next = if hit <= 18 { Some(3) } else { Some(8) };
        assert_eq!(facts.next_look, next, "{hit}");
        let Some(now) = facts.turn else {
            assert_eq!(hit, 48);
            continue;
        };
        let (set, shot) = (hit / 2, hit % 2);
        assert_eq!((now.index, now.build, now.round), (set, turns[set].build, turns[set].round));
        assert_eq!((now.shot as usize, now.of), (shot + 1, 2));
        // Every second round begins with the club in hand.
        let other_club = set == 0 || turns[set - 1].build != turns[set].build;
        assert_eq!(now.change, shot == 0 && other_club, "{hit}");
        assert_eq!(now.rest, hit == 24, "{hit}");
    }
}

#[test]
fn a_look_was_taken_now_only_at_the_end_of_its_round() {
    let asked = request(4, 5.0);
    let planned = planned(&asked);
    let looked = |hit: usize, looks: Vec<LookTaken>| {
        let request = FollowRequest { plan: asked.clone(), shots: log(&planned, hit), ended: vec![], looks };
        follow(&request).expect("in the plan").looked_now
    };
    let look = |within_a_round| vec![LookTaken { after_round: 2, within_a_round }];
    assert!(looked(12, look(false)) && !looked(12, vec![]) && !looked(12, look(true)));
    assert!(!looked(13, look(true)) && !looked(13, look(false)));
}

#[test]
fn the_scatter_of_an_earlier_session_stands_for_it() {
    let earlier = blocks("carry", &[250.0, 300.0, 280.0].map(|average| around(average, 8.0, 12, 0)));
    let asked = PlanRequest { earlier: Some(earlier), ..request(8, 5.0) };
    let seen = stats::describe::sum_of_squares(&around(250.0, 8.0, 12, 0)) / 11.0;
    let without = without_session(&asked);
    assert!(
        (without.spread.expect("seen") - seen.sqrt()).abs() < 1e-9,
        "builds lie apart, which is no scatter"
    );
    assert_eq!(without.earlier, None);
    assert_eq!(without_session(&PlanRequest { spread: Some(9.0), ..asked.clone() }).spread, Some(9.0));
    // Ten shots of two builds leave eight degrees of freedom; one shot less is too little.
    for (n, known) in [(5, true), (4, false)] {
        let earlier = blocks("carry", &[around(250.0, 8.0, n, 0), around(300.0, 8.0, 5, 0)]);
        let asked = PlanRequest { earlier: Some(earlier), ..request(8, 5.0) };
        assert_eq!(without_session(&asked).spread.is_some(), known, "{n}");
    }
}

#[test]
fn a_scatter_is_a_number_above_nothing() {
    for spread in [0.0, -3.0, f64::NAN, f64::INFINITY] {
        let refused = plan(&PlanRequest { spread: Some(spread), ..request(8, 5.0) });
        assert_eq!(refused.err(), Some(PlanRefused::NotASpread), "{spread}");
    }
    let alike = blocks("carry", &[vec![250.0; 9], vec![255.0; 9]]);
    let settled = planned(&PlanRequest { earlier: Some(alike), ..request(8, 5.0) }).settled;
    assert_eq!(settled.spread.map(|spread| spread.from), Some(SpreadFrom::Usual), "rounded or copied");
}

#[test]
fn a_set_that_was_ended_early_is_over_and_a_round_is_complete_without_its_rest() {
    let asked = request(4, 5.0);
    let planned = planned(&asked);
    let shots = log(&planned, 4);
    let request = FollowRequest { plan: asked, shots, ended: vec![1], looks: vec![] };
    let facts = follow(&request).expect("in the plan").facts;
    assert_eq!((facts.rounds_complete, facts.turn.expect("more to hit").index), (1, 2));
    assert!(!facts.look_now.within_a_round);
}

#[test]
fn what_was_logged_becomes_a_session_with_every_measure_once() {
    let asked = request(4, 5.0);
    let planned = planned(&asked);
    for (hit, order) in [(6, Order::Blocked), (7, Order::Interleaved)] {
        let mut shots = log(&planned, hit);
        for (at, shot) in shots.iter_mut().enumerate().skip(2) {
            shot.values.insert(Known::BallSpeed.into(), (at != 3).then_some(150.0));
        }
        let request = FollowRequest { plan: asked.clone(), shots, ended: vec![], looks: vec![] };
        let names = ["Own driver", "Driver B"].map(str::to_owned);
        let session = follow(&request).expect("in the plan").session(&names);
        assert_eq!(session.measures, [MeasureId::from(Known::Carry), Known::BallSpeed.into()]);
        assert_eq!(session.order, order, "{hit}");
        let numbers: Vec<Option<u32>> = session.shots.iter().map(|shot| shot.number).collect();
        assert_eq!(numbers, (1..).map(Some).take(hit).collect::<Vec<_>>());
        let speeds: Vec<Option<f64>> = session.shots.iter().map(|shot| shot.values[1]).take(5).collect();
        assert_eq!(speeds, [None, None, Some(150.0), None, Some(150.0)]);
    }
}

/// Minutes of an hour in a bay: 40 seconds a ball, 20 to warm up, 30 for another club, two minutes for a rest.
#[test]
fn an_hour_in_a_bay_is_counted_in_balls_clubs_and_rests() {
    let of = |builds: usize, set: u32, rounds: u32, warm_up: u32| {
        let names = ["Own", "B", "C", "D"].iter().take(builds).map(|name| (*name).to_owned()).collect();
        let asked =
            PlanRequest { builds: names, set: Some(set), warm_up: Some(warm_up), ..request(rounds, 5.0) };
        let facts = planned(&asked).facts;
        (facts.balls, facts.minutes, facts.rests)
    };
    // 200 + 2400 + 600 + 240 seconds.
    assert_eq!(of(2, 3, 10, 10), (70, 60, vec![4, 8]));
    // 0 + 3200 + 480 + 3 · 120; the last round is followed by none.
    assert_eq!(of(4, 5, 4, 0), (80, 70, vec![1, 2, 3]));
    // 600 + 960 + 360 + 120 seconds are 34 minutes.
    assert_eq!(of(3, 2, 4, 30), (54, 35, vec![]));
}
