//! What a comparison rests on: how many shots, which rounds, which values.

use crate::support::{around, asking, blocks, empty, in_turn, judged, push};
use judging::Judgment;
use judging::analysis::{Compared, Counts, Include, Method, PartOf, ShotTable};
use judging::facts::HowHit;
use judging::verdict::Why;
use session::question::{Goal, Question};
use session::{Order, Session};

fn headline(session: &Session, question: &Question) -> Judgment {
    judged(session, question).headline().expect("a candidate").clone()
}

fn why(session: &Session, goal: Option<Goal>) -> Option<Why> {
    headline(session, &Question { goal, ..asking("carry") }).pair.comparison.err()
}

#[test]
fn averages_are_compared_from_three_shots_of_each_on_and_scatters_from_five() {
    let of = |n: [usize; 2]| blocks("carry", &[around(250.0, 5.0, n[0], 0), around(255.0, 6.0, n[1], 4)]);
    for (n, of_averages, of_scatters) in [
        ([3, 3], None, Some(Why::TooFewShots)),
        ([2, 9], Some(Why::TooFewShots), Some(Why::TooFewShots)),
        ([9, 2], Some(Why::TooFewShots), Some(Why::TooFewShots)),
        ([9, 1], Some(Why::TooFewShots), Some(Why::TooFewShots)),
        ([4, 9], None, Some(Why::TooFewShots)),
        ([9, 4], None, Some(Why::TooFewShots)),
        ([5, 5], None, None),
    ] {
        assert_eq!(why(&of(n), None), of_averages, "{n:?}");
        assert_eq!(why(&of(n), Some(Goal::Tighter)), of_scatters, "{n:?}");
    }
}

#[test]
fn shots_that_are_all_alike_are_no_matter_of_their_number() {
    let alike = |n| blocks("carry", &[vec![250.0; n], vec![255.0; n]]);
    assert_eq!(why(&alike(5), None), Some(Why::NoScatter));
    assert_eq!(why(&alike(5), Some(Goal::Tighter)), Some(Why::NoScatter));
    assert_eq!(why(&alike(4), Some(Goal::Tighter)), Some(Why::TooFewShots));
    assert_eq!(why(&alike(2), None), Some(Why::TooFewShots));
    // Rounds apart, but the same gap in each of them.
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for round in 1..=4_u32 {
        for at in 0..4 {
            push(&mut session, at / 2, Some(round), 250.0 + f64::from(round) + 5.0 * (at / 2) as f64);
        }
    }
    assert_eq!(why(&session, None), Some(Why::NoScatterInRounds));
    assert_eq!(why(&session, Some(Goal::Tighter)), None, "the rounds scatter");
}

/// Rounds of the first build and rounds of the second: nothing was hit in turn.
#[test]
fn rounds_that_hold_one_build_each_are_no_turns() {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
    for round in 1..=6_u32 {
        let build = (round % 2) as usize;
        (0..3).for_each(|_| push(&mut session, build, Some(round), 250.0 + f64::from(round * round % 7)));
    }
    let found = headline(&session, &asking("carry"));
    assert_eq!(found.facts.order, HowHit::OneAfterTheOther);
    assert_eq!(found.comparison().map(|c| c.method), Some(Method::WelchWithAllowance));
}

#[test]
fn one_round_with_both_is_no_comparison_in_turn() {
    for (rounds, method) in [(1, Method::WelchWithAllowance), (2, Method::Rounds)] {
        let mut session = in_turn("carry", rounds, &[250.0, 256.0], 5.0);
        around(251.0, 5.0, 6, 2).into_iter().for_each(|value| push(&mut session, 0, Some(9), value));
        let found = headline(&session, &asking("carry"));
        assert_eq!(found.shared_rounds, if rounds == 1 { 0 } else { rounds });
        assert_eq!(found.comparison().map(|c| c.method), Some(method), "{rounds}");
    }
}

/// Three rounds hold both builds, with 2 and 1, 1 and 1, and 1 and 3 shots: each counts by what it says of the gap.
#[test]
fn averages_of_what_was_compared_are_those_of_the_rounds_with_both() {
    let mut session = Session { order: Order::Interleaved, ..empty("own", 2) };
    for (build, round, value) in [
        (0, 1, 100.0),
        (0, 1, 104.0),
        (1, 1, 111.0),
        (1, 2, 120.0),
        (0, 2, 113.0),
        (0, 3, 300.0),
        (1, 4, 400.0),
        (1, 5, 131.0),
        (1, 5, 135.0),
        (1, 5, 130.0),
        (0, 5, 122.0),
    ] {
        push(&mut session, build, Some(round), value);
    }
    let found = headline(&session, &asking("own"));
    let Compared { baseline, candidate, n, rounds } = found.pair.compared.expect("not those of all shots");
    assert_eq!((n, rounds), (Counts { baseline: 4, candidate: 5 }, 3));
    // Weights 2·1/3, 1·1/2 and 1·3/4.
    let all = 2.0 / 3.0 + 0.5 + 0.75;
    let weighed = |a: f64, b: f64, c: f64| (a * 2.0 / 3.0 + b * 0.5 + c * 0.75) / all;
    let middle = 0.5 * (weighed(102.0, 113.0, 122.0) + weighed(111.0, 120.0, 132.0));
    let gap = found.comparison().expect("compared").value();
    assert!((gap - weighed(9.0, 7.0, 10.0)).abs() < 1e-9, "{gap}");
    assert!((candidate - baseline - gap).abs() < 1e-9);
    assert!((0.5 * (baseline + candidate) - middle).abs() < 1e-9, "{baseline} {candidate}");
}

#[test]
fn where_every_round_holds_both_alike_the_averages_are_those_of_all_shots() {
    assert_eq!(headline(&in_turn("carry", 5, &[250.0, 256.0], 5.0), &asking("carry")).pair.compared, None);
    // One shot more in one round: the same shots, weighed otherwise.
    let mut session = in_turn("carry", 5, &[250.0, 256.0], 5.0);
    push(&mut session, 0, Some(2), 270.0);
    assert!(headline(&session, &asking("carry")).pair.compared.is_some());
    // A shot of one build alone that moves no average: it was not compared all the same.
    for alone in [0, 1] {
        let mut session = in_turn("carry", 5, &[250.0, 256.0], 5.0);
        let own = headline(&session, &asking("carry")).pair.numbers;
        let mean = [own.baseline, own.candidate][alone].expect("shots").mean;
        push(&mut session, alone, Some(9), mean);
        let compared = headline(&session, &asking("carry")).pair.compared.expect("not those of all shots");
        assert_eq!((compared.n.baseline, compared.n.candidate, compared.rounds), (15, 15, 5));
    }
}

#[test]
fn a_slip_is_what_cannot_be_and_was_set_aside() {
    let mut session = blocks("carry", &[vec![250.0, 400.0, 400.5, 401.0, 0.0, -0.5], vec![255.0, 500.0]]);
    for at in [1, 2, 4, 5] {
        session.shots[at].left_out = Some("mishit".into());
    }
    let table = ShotTable::new(&session);
    let carry = "carry".into();
    assert_eq!(table.values(0, 0, Include::All), [250.0, 400.0, 401.0, 0.0], "an end can be");
    assert_eq!(table.values(0, 0, Include::NotLeftOut), [250.0, 401.0]);
    assert_eq!((table.slips(&carry, [0, 1]), table.slips(&carry, [1, 1])), (2, 0));
    assert_eq!(
        (table.left_out(0), table.left_out(1)),
        (PartOf { shots: 4, of: 6 }, PartOf { shots: 0, of: 2 })
    );
}

#[test]
fn who_was_always_first_is_told_from_two_rounds_with_both_on() {
    let first = |openers: &[usize]| {
        let mut session = Session { order: Order::Interleaved, ..empty("carry", 3) };
        for (round, &opener) in (1..).zip(openers) {
            // The third build is hit before both.
            for build in [2, opener, 1 - opener, opener] {
                push(&mut session, build, Some(round), 250.0);
            }
        }
        push(&mut session, 1, Some(50), 250.0);
        ShotTable::new(&session).always_first(0, 1)
    };
    assert_eq!(first(&[0, 0]), Some(0));
    assert_eq!(first(&[1, 1, 1]), Some(1));
    assert_eq!(first(&[0, 0, 1]), None);
    assert_eq!(first(&[0]), None, "one round is no habit");
    let blocked = blocks("carry", &[vec![250.0; 3], vec![255.0; 3]]);
    assert_eq!(ShotTable::new(&blocked).always_first(0, 1), None);
}

#[test]
fn an_answer_stands_only_where_the_shots_set_aside_change_neither_its_kind_nor_its_direction() {
    // Two of the candidate's shots are far off; with them it leads or trails, without them it does not or the other way.
    for (far, rest, stands) in [(262.0, 262.0, true), (330.0, 250.0, false), (300.0, 251.0, false)] {
        let mut session = blocks("carry", &[around(250.0, 3.0, 12, 0), around(rest, 3.0, 12, 5)]);
        for at in 12..18 {
            session.shots[at].values[0] = Some(far + session.shots[at].values[0].unwrap_or(0.0) - rest);
            session.shots[at].left_out = Some("mishit".into());
        }
        let found = headline(&session, &asking("carry"));
        assert_eq!(
            found.decision.why != Some(Why::DependsOnLeftOut),
            stands,
            "{far} {rest}: {:?}",
            found.with_all
        );
    }
}

#[test]
fn shots_set_aside_that_turn_the_winner_around_leave_no_winner() {
    let mut session = blocks("own", &[around(250.0, 2.0, 12, 0), around(256.0, 2.0, 12, 5)]);
    for at in 12..15 {
        session.shots[at].values[0] = Some(200.0 + at as f64);
    }
    // All of them: clearly shorter. Without the three worst: clearly longer.
    session.shots.iter_mut().skip(12).take(3).for_each(|shot| shot.left_out = Some("mishit".into()));
    let mut with = session.clone();
    (0..200).for_each(|at| {
        push(&mut with, 1, None, 240.0 + f64::from(at % 5));
        with.shots.last_mut().expect("pushed").left_out = Some("mishit".into());
    });
    let found = headline(&with, &asking("own"));
    assert_ne!(found.with_all.direction, found.without_left_out.direction);
    assert_eq!(found.decision.why, Some(Why::DependsOnLeftOut));
    assert_eq!((found.decision.direction, found.decision.nearer), (None, None));
}

/// Every round shows the same gaps, but these two never met in one.
#[test]
fn two_that_were_never_hit_in_turn_are_not_told_that_their_rounds_are_alike() {
    let mut session = Session { order: Order::Interleaved, ..empty("carry", 3) };
    for round in 1..=6_u32 {
        for build in [2, usize::from(round > 3)] {
            let level = [250.0, 255.0, 262.0][build];
            push(&mut session, build, Some(round), level + f64::from(round * round % 7));
        }
    }
    let question = asking("carry");
    let judged = judged(&session, &question);
    let met =
        |candidate: usize| judged.of(candidate).expect("judged").pair.comparison.as_ref().map(|c| c.method);
    assert_eq!(met(1), Ok(Method::WelchWithAllowance));
    assert_eq!(met(2), Err(&Why::NoScatterInRounds));
}

#[test]
fn a_drift_is_needed_to_explain_a_lead_only_where_clubs_were_not_hit_in_turn() {
    let in_turn = headline(&in_turn("carry", 8, &[250.0, 275.0], 4.0), &asking("carry"));
    assert!(in_turn.drift_to_explain().abs() < 1e-12);
    let blocked = blocks("carry", &[around(250.0, 4.0, 24, 0), around(275.0, 4.0, 24, 5)]);
    let blocked = headline(&blocked, &asking("carry"));
    let careful = blocked.estimate.as_ref().expect("a size");
    // What is left of the lead's lower end once the allowance is not taken off.
    assert!((blocked.drift_to_explain() - (careful.low + careful.order_allowance)).abs() < 1e-9);
}

#[test]
fn scatters_are_compared_beside_averages_from_five_shots_on() {
    let numbers = |n| {
        let session = blocks("carry", &[around(250.0, 3.0, n, 0), around(255.0, 9.0, n, 0)]);
        headline(&session, &asking("carry")).pair.numbers.spread
    };
    let spread = numbers(24).expect("enough");
    assert!((spread.ratio - 3.0).abs() < 1e-9 && spread.low > 1.0 && spread.high > 3.0 && spread.p < 0.05);
    assert!(numbers(5).is_some() && numbers(4).is_none());
}

/// What a session shows in 8 of 10 cases lies as far beyond its half-width as 80 of 100 lie beyond the middle.
#[test]
fn what_a_session_can_show_is_more_than_its_half_width_by_the_power() {
    for session in [in_turn("carry", 8, &[250.0, 252.0], 6.0), in_turn("own", 20, &[250.0, 251.0], 6.0)] {
        let measure = session.measures[0].clone();
        let question = Question { measure, ..asking("own") };
        let size = headline(&session, &question).estimate.expect("a size");
        let half_width = 0.5 * (size.high - size.low);
        assert!((1.35..1.55).contains(&(size.detectable / half_width)), "{} {half_width}", size.detectable);
    }
}

/// As many shots as a ratio takes show that ratio.
#[test]
fn the_ratio_that_a_session_shows_takes_as_many_shots_as_it_has() {
    for n in [24, 60, 120] {
        let session = blocks("carry", &[around(250.0, 6.0, n, 0), around(251.0, 6.5, n, 0)]);
        let tighter = |margin| Question { goal: Some(Goal::Tighter), margin, ..asking("carry") };
        let shown = headline(&session, &tighter(None)).estimate.expect("a size").detectable;
        let takes = headline(&session, &tighter(Some(shown))).estimate.expect("a size").shots_to_settle;
        let takes = takes.expect("a number of shots") as f64;
        assert!((takes / n as f64 - 1.0).abs() < 0.15, "{n}: {shown} takes {takes}");
    }
}
