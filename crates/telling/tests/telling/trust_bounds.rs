//! What is seen in the order of the shots, held at its bounds from both sides and for both builds alike.

use crate::made::{also, around, blocks, close, noise, rounds, rounds_begun_alike, set_aside};
use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::analysis::PartOf;
use judging::trust::{Seen, Weight};
use session::question::Question;
use session::{Order, Session};
use stats::{Level, OrderedShot};
use telling::trust::TrustFinding;

fn findings(session: Session, question: Question) -> Vec<TrustFinding> {
    answer(session, question).trust
}

fn seen(session: Session, measure: &str) -> Vec<Seen> {
    findings(session, asking(measure)).into_iter().map(|f| f.seen).collect()
}

fn order_of(seen: &[Seen]) -> Option<(Order, u32)> {
    seen.iter()
        .find_map(|s| if let Seen::Order { order, rounds, .. } = s { Some((*order, *rounds)) } else { None })
}

#[test]
fn shots_of_one_build_alone_are_averages_only_on_either_side() {
    for without in [0, 1] {
        let mut session = one_after_the_other("carry", &[12, 12], &[250.0, 255.0], 5.0);
        session.shots.retain(|shot| shot.build != without);
        assert_eq!(seen(session, "carry"), [Seen::AveragesOnly], "{without}");
    }
}

#[test]
fn in_turn_for_others_but_not_for_this_pair_is_one_after_the_other() {
    let mut session = in_turn("carry", 4, &[250.0, 252.0, 251.0], 5.0);
    // The last build was hit after all rounds of the others.
    session.shots.sort_by_key(|shot| shot.build == 2);
    for shot in session.shots.iter_mut().filter(|shot| shot.build == 2) {
        shot.round = Some(9);
    }
    let of = |candidate| {
        let question = Question { candidate: Some(candidate), ..asking("carry") };
        let seen: Vec<Seen> = findings(session.clone(), question).into_iter().map(|f| f.seen).collect();
        order_of(&seen)
    };
    assert_eq!(of(1), Some((Order::Interleaved, 4)));
    assert_eq!(of(2), Some((Order::Blocked, 0)));
}

#[test]
fn an_unknown_order_stays_unknown_and_hides_warming_up_and_drift() {
    let rising: Vec<f64> = (0..24).map(|at| 230.0 + 2.0 * f64::from(at) + noise(at as usize)).collect();
    let blocked = blocks("carry", &[rising[..6].to_vec(), rising[6..].to_vec()]);
    let told = |order| {
        let seen = seen(Session { order, ..blocked.clone() }, "carry");
        let cold = seen.iter().any(|s| matches!(s, Seen::ColdStart { .. }));
        (order_of(&seen).map(|o| o.0), cold, seen.iter().any(|s| matches!(s, Seen::Drift { .. })))
    };
    assert_eq!(told(Order::Blocked), (Some(Order::Blocked), true, true));
    assert_eq!(told(Order::Unknown), (Some(Order::Unknown), false, false));
}

fn long_turns(session: Session) -> Option<(u32, Weight)> {
    let found = findings(session, asking("carry"));
    found
        .iter()
        .find_map(|f| if let Seen::LongTurns { longest } = f.seen { Some((longest, f.weight)) } else { None })
}

#[test]
fn turns_of_five_are_not_long_and_turns_of_a_shot_more_are() {
    let turns = |sizes: [usize; 2]| {
        let set =
            |r: usize| vec![around(250.0, 5.0, sizes[0], 7 * r), around(252.0, 5.0, sizes[1], 7 * r + 3)];
        rounds_begun_alike("carry", &(0..4).map(set).collect::<Vec<_>>())
    };
    assert_eq!(long_turns(turns([5, 5])), None);
    assert_eq!(long_turns(turns([4, 6])), None);
    assert_eq!(long_turns(turns([5, 6])), Some((6, Weight::Serious)));
    assert_eq!(long_turns(turns([8, 4])), Some((8, Weight::Serious)), "the longest, and nothing between");
}

#[test]
fn shots_of_a_third_build_make_no_turn_longer() {
    let set = |r: usize| {
        vec![around(250.0, 5.0, 3, 7 * r), around(252.0, 5.0, 3, 7 * r + 3), around(251.0, 5.0, 9, r)]
    };
    let session = rounds("carry", &(0..4).map(set).collect::<Vec<_>>());
    let question = Question { candidate: Some(1), ..asking("carry") };
    let found = findings(session, question);
    assert!(!found.iter().any(|f| matches!(f.seen, Seen::LongTurns { .. })));
}

/// Ten laps of three and three whose shots are off by `memory` of what the one before was, and by something new.
fn leaning(memory: f64) -> Session {
    let mut off = 0.0;
    let mut state = 2_u64;
    // Even numbers around 0 with no pattern between neighbors.
    let mut new = || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) as f64 / f64::from(u32::MAX >> 1) - 0.5
    };
    let mut shots = |center: f64| -> Vec<f64> {
        (0..3)
            .map(|_| {
                off = memory * off + (1.0 - memory * memory).sqrt() * 25.0 * new();
                center + off
            })
            .collect()
    };
    let lap = |lap: usize| {
        let mut sets = [0, 1].map(|turn| shots([250.0, 252.0][(lap + turn) % 2]));
        // Each lap is begun by the other one.
        if lap % 2 == 1 {
            sets.reverse();
        }
        sets.to_vec()
    };
    rounds("carry", &(0..10).map(lap).collect::<Vec<_>>())
}

#[test]
fn shots_in_streaks_are_named_with_what_they_cost() {
    let streaks = |session: Session| {
        let of = |f: &TrustFinding| match f.seen {
            Seen::InStreaks { memory, widened } => Some((memory, widened, f.weight)),
            _ => None,
        };
        findings(session, asking("carry")).iter().find_map(of)
    };
    assert_eq!(streaks(leaning(0.0)), None);
    let (memory, widened, weight) = streaks(leaning(0.9)).expect("streaks");
    assert!((0.5..=0.8).contains(&memory), "{memory}");
    assert!((1.1..2.0).contains(&widened), "{widened}");
    assert_eq!(weight, Weight::Note);
}

/// Which build was cold, its shots at the start, and the head start it gave.
fn cold(session: Session, measure: &str) -> Option<(usize, usize, Option<f64>)> {
    seen(session, measure).into_iter().find_map(|s| match s {
        Seen::ColdStart { build, shots, head_start, .. } => Some((build, shots, head_start)),
        _ => None,
    })
}

/// How many yards warming up gives the second of two blocks, from its definition: 6·e^(−t/8) on shot t.
fn head_start_yd(first: usize, second: usize) -> f64 {
    let mean = |from: usize, n: usize| {
        (from..from + n).map(|t| 6.0 * (-(t as f64) / 8.0).exp()).sum::<f64>() / n as f64
    };
    mean(0, first) - mean(first, second)
}

#[test]
fn whichever_build_was_hit_first_is_the_cold_one() {
    let session = one_after_the_other("carry", &[6, 20], &[250.0, 252.0], 5.0);
    let (build, shots, head) = cold(session.clone(), "carry").expect("a cold start");
    assert_eq!((build, shots), (0, 6));
    close(head.expect("known for carry"), head_start_yd(6, 20), 1e-9);
    // The same, with the candidate hit first.
    let mut turned = session;
    turned.shots.iter_mut().for_each(|shot| shot.build = 1 - shot.build);
    let (build, shots, head) = cold(turned, "carry").expect("a cold start");
    assert_eq!((build, shots), (1, 6));
    close(head.expect("known for carry"), head_start_yd(6, 20), 1e-9);
}

#[test]
fn only_the_shots_before_the_other_build_are_counted_as_cold() {
    let mut session = blocks("carry", &[around(250.0, 5.0, 9, 0), around(252.0, 5.0, 12, 4)]);
    let last = session.shots.remove(8);
    session.shots.push(last);
    assert_eq!(cold(session, "carry").map(|c| (c.0, c.1)), Some((0, 8)));
}

#[test]
fn a_head_start_of_a_yard_is_told_and_less_is_not() {
    let n = (10..80).find(|&n| head_start_yd(n, n) < 1.0).expect("warming up ends");
    assert!(head_start_yd(n - 1, n - 1) < 1.05 && head_start_yd(n, n) > 0.95, "close to the bound");
    for (shots, told) in [(n - 1, true), (n, false)] {
        let session = one_after_the_other("carry", &[shots, shots], &[250.0, 252.0], 5.0);
        assert_eq!(cold(session.clone(), "carry").is_some(), told, "{shots}");
        let mut turned = session;
        turned.shots.iter_mut().for_each(|shot| shot.build = 1 - shot.build);
        assert_eq!(cold(turned, "carry").is_some(), told, "{shots}, the candidate first");
    }
}

#[test]
fn a_head_start_is_told_in_the_measures_own_unit_or_not_at_all() {
    let of = |measure: &str| {
        let session = one_after_the_other(measure, &[6, 20], &[250.0, 252.0], 5.0);
        cold(session, measure).expect("a cold start").2
    };
    let yards = head_start_yd(6, 20);
    for (measure, rate) in [("carry", 1.0), ("total", 1.0), ("ball_speed", 0.45), ("club_speed", 0.31)] {
        close(of(measure).expect(measure), rate * yards, 1e-9);
    }
    for measure in ["spin_rate", "offline", "launch_angle", "my_own"] {
        assert_eq!(of(measure), None, "{measure}");
    }
}

#[test]
fn hit_in_turn_no_build_had_the_cold_shots_to_itself() {
    // The baseline begins both rounds, and has 1.3 yd less of a warm golfer for it.
    let set = |r: usize| vec![around(250.0, 5.0, 4, 5 * r), around(252.0, 5.0, 4, 5 * r + 3)];
    let session = rounds_begun_alike("carry", &[set(0), set(1)]);
    assert!(cold(Session { order: Order::Blocked, ..session.clone() }, "carry").is_some());
    assert_eq!(cold(session, "carry"), None);
}

/// Carry in turn that moves by `slope` a shot, and the interval of the whole change by the textbook.
fn moving(slope: f64) -> (Session, stats::Interval) {
    let mut session = in_turn("carry", 5, &[250.0, 262.0], 5.0);
    for (at, shot) in session.shots.iter_mut().enumerate() {
        shot.values[0] = shot.values[0].map(|v| v + slope * at as f64);
    }
    let shots: Vec<OrderedShot> = session
        .shots
        .iter()
        .enumerate()
        .map(|(at, s)| OrderedShot { at: at as f64, build: s.build, value: s.values[0].expect("carry") })
        .collect();
    let change = stats::trend(&shots).expect("a trend").total().interval(Level::P95);
    (session, change)
}

#[test]
fn drift_is_told_as_soon_as_its_interval_excludes_zero_up_and_down() {
    let mut told = [0, 0];
    for step in -40..=40 {
        let (session, interval) = moving(0.02 * f64::from(step));
        let found = seen(session, "carry").into_iter().find_map(|s| match s {
            Seen::Drift { change, low, high, .. } => Some((change, low, high)),
            _ => None,
        });
        assert_eq!(found.is_some(), interval.low > 0.0 || interval.high < 0.0, "{step}");
        if let Some((change, low, high)) = found {
            close(low, interval.low, 1e-9);
            close(high, interval.high, 1e-9);
            close(change, (low + high) / 2.0, 1e-9);
            told[usize::from(change > 0.0)] += 1;
        }
    }
    assert!(told[0] > 5 && told[1] > 5 && told[0] + told[1] < 76, "both ways, and sometimes none: {told:?}");
}

#[test]
fn a_build_that_is_longer_is_no_drift() {
    let session = one_after_the_other("carry", &[15, 15], &[250.0, 270.0], 5.0);
    assert!(!seen(session, "carry").iter().any(|s| matches!(s, Seen::Drift { .. })));
}

#[test]
fn twice_the_shots_are_unequal_and_one_less_is_not_whichever_build_has_more() {
    let unequal = |counts: [usize; 2]| {
        let session = one_after_the_other("carry", &counts, &[250.0, 252.0], 5.0);
        seen(session, "carry").into_iter().find(|s| matches!(s, Seen::UnequalCounts { .. }))
    };
    let told = |fewer, few, more, many| Some(Seen::UnequalCounts { fewer, few, more, many });
    assert_eq!(unequal([20, 40]), told(0, 20, 1, 40));
    assert_eq!(unequal([40, 20]), told(1, 20, 0, 40));
    assert_eq!(unequal([20, 39]), None);
    assert_eq!(unequal([39, 20]), None);
    assert_eq!(unequal([20, 20]), None);
}

#[test]
fn shots_set_aside_are_counted_build_by_build() {
    let mut session = in_turn("carry", 4, &[250.0, 252.0, 251.0], 5.0);
    set_aside(&mut session, |at, shot| shot.build == 2 || (shot.build == 1 && at < 5));
    let by_build = [0, 2, 12].map(|shots| PartOf { shots, of: 12 }).to_vec();
    assert!(seen(session.clone(), "carry").contains(&Seen::LeftOut { by_build }));
    session.shots.iter_mut().for_each(|shot| shot.left_out = None);
    assert!(!seen(session, "carry").iter().any(|s| matches!(s, Seen::LeftOut { .. })));
}

#[test]
fn what_was_not_measured_of_swing_and_strike_is_told_and_nothing_else() {
    let missing = |measures: &[&str]| {
        let mut session = in_turn("carry", 4, &[250.0, 252.0], 5.0);
        for measure in measures {
            also(&mut session, measure, |at, _| Some(90.0 + noise(at)));
        }
        seen(session, "carry").into_iter().find_map(|s| match s {
            Seen::NoSwingOrStrike { club_speed, strike } => Some((club_speed, strike)),
            _ => None,
        })
    };
    assert_eq!(missing(&[]), Some((false, false)));
    assert_eq!(missing(&["club_speed"]), Some((true, false)));
    assert_eq!(missing(&["strike_height"]), Some((false, true)));
    assert_eq!(missing(&["strike_offset"]), Some((false, true)));
    assert_eq!(missing(&["club_speed", "strike_height"]), None);
    assert_eq!(missing(&["club_speed", "strike_offset"]), None);
}

#[test]
fn the_most_serious_is_told_first() {
    let mut session = one_after_the_other("carry", &[6, 20], &[250.0, 252.0], 5.0);
    session.shots[9].values[0] = Some(180.0);
    let weights: Vec<Weight> = findings(session, asking("carry")).iter().map(|f| f.weight).collect();
    assert!(weights.is_sorted() && weights.contains(&Weight::Serious) && weights.contains(&Weight::Note));
    let fair = in_turn("carry", 4, &[250.0, 252.0], 5.0);
    assert_eq!(findings(fair, asking("carry")).last().map(|f| f.weight), Some(Weight::Good));
}
