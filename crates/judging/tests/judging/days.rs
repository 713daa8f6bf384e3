//! Days put together: each by its own careful error, with what is assumed of days, room for their order, and a control.

use crate::support::{around, asking, blocks, in_turn};
use judging::together::{CombinedDays, DaysLie, JudgedPair, OneMoreDay, OrderOverDays, together};
use judging::{judge, settle};
use session::known::Known;
use session::question::{Question, Stopping, StoppingWord};
use session::{Build, Order, Session};
use stats::Level;
use stats::day_to_day::{Between, DayEffect, day_to_day};
use stats::distributions::normal_upper;

/// A day of three shots each in turn, five rounds, whose scatter is large enough to leave things open.
fn day(gap: f64) -> Session {
    in_turn("carry", 5, &[250.0, 250.0 + gap], 8.0)
}

/// One club after the other.
fn one_after_the_other(gap: f64) -> Session {
    blocks("carry", &[around(250.0, 8.0, 12, 0), around(250.0 + gap, 8.0, 12, 4)])
}

fn pair_of(days: &[Session]) -> JudgedPair {
    together(days, &asking("carry")).expect("days").remove(0)
}

fn combined(days: &[Session]) -> CombinedDays {
    pair_of(days).combined.expect("combined")
}

/// What a day counts with, from its own answer.
fn effect(session: &Session, level: Level) -> DayEffect {
    let question = asking("carry");
    let judged = judge(settle(&question, session).expect("fits"));
    let comparison = *judged.headline().expect("two clubs").comparison().expect("compared");
    let own = comparison.interval(level);
    let half = 0.5 * (own.high - own.low) / normal_upper(level.tail());
    let variance = half * half;
    DayEffect { effect: comparison.value(), variance, weighed: variance, between: Between::Both }
}

#[test]
fn days_are_combined_by_their_own_errors_and_by_what_is_assumed() {
    let days = [day(3.0), day(8.0), day(5.0)];
    let combined = combined(&days);
    assert!((combined.assumed - 5.0).abs() < 1e-12 && combined.days == 3);
    let at = |level| {
        let effects: Vec<DayEffect> = days.iter().map(|day| effect(day, level)).collect();
        day_to_day(&effects, 5.0).expect("effects").gap
    };
    let close = |got: f64, wanted: f64| assert!((got - wanted).abs() < 1e-9, "{got} {wanted}");
    close(combined.value, at(Level::P95).mean());
    for (got, level) in [(combined.different, Level::P95), (combined.same, Level::P90)] {
        let wanted = at(level).interval(level);
        close(got.low, wanted.low);
        close(got.high, wanted.high);
    }
    close(combined.half_width, 0.5 * (combined.different.high - combined.different.low));
    let weights: f64 = pair_of(&days).days.iter().map(|day| day.weight).sum();
    close(weights, 1.0);
}

/// The golfer who does right and comes back learns more: the fault this mends is 60 yd where one day alone says 12.
#[test]
fn a_second_day_like_the_first_narrows_the_answer_and_a_third_does_too() {
    let half = |n: usize| combined(&vec![day(5.0); n]).half_width;
    let own = 1.959_964 * effect(&day(5.0), Level::P95).variance.sqrt();
    assert!(half(2) < 1.25 * own && half(3) < half(2) && half(5) < 0.75 * half(2), "{own} {}", half(2));
}

#[test]
fn what_one_more_day_adds_is_what_it_turns_out_to_add_where_days_agree() {
    let (two, three) = (combined(&[day(5.0), day(5.0)]), combined(&[day(5.0), day(5.0), day(5.0)]));
    assert_eq!(two.one_more, OneMoreDay::Narrows);
    assert!(two.with_one_more < two.half_width);
    // Days that agree wholly also say that days agree: a little better than what was to be expected.
    assert!((1.0..1.25).contains(&(two.with_one_more / three.half_width)), "{two:?} {three:?}");
    let many = combined(&vec![day(5.0); 30]);
    assert_eq!(many.one_more, OneMoreDay::HardlyNarrows);
}

#[test]
fn days_farther_apart_than_is_assumed_widen_the_answer_and_say_so() {
    let (near, far) = (combined(&[day(5.0), day(6.0)]), combined(&[day(-25.0), day(36.0)]));
    assert_eq!((near.lie, far.lie), (DaysLie::Near, DaysLie::FarApart));
    assert!(near.between < 1e-12 && far.between > 5.0 && far.half_width > 2.5 * near.half_width);
    // Ten exact days that move by less than is assumed, and by more than their shots explain.
    let days: Vec<Session> =
        (0..10).map(|at| in_turn("carry", 5, &[250.0, 252.0 + 5.0 * f64::from(at % 2)], 1.0)).collect();
    let apart = combined(&days);
    assert!(apart.lie == DaysLie::Apart && apart.between < 5.0, "{apart:?}");
}

#[test]
fn days_in_the_same_order_keep_the_whole_room_for_it() {
    let whole = Known::Carry.facts().order_allowance;
    for n in [2, 10] {
        let same = combined(&vec![one_after_the_other(5.0); n]);
        assert!((same.order_allowance - whole).abs() < 1e-9 && same.half_width > whole, "{n}: {same:?}");
        assert_eq!(same.order, OrderOverDays::SameEachTime);
    }
    // The candidate first on the second day.
    let mut turned = one_after_the_other(-5.0);
    turned.builds.reverse();
    let turned = combined(&[one_after_the_other(5.0), turned]);
    assert_eq!(turned.order, OrderOverDays::Changes);
    assert!((turned.order_allowance - whole / 2.0_f64.sqrt()).abs() < 1e-6, "{turned:?}");
    let unknown = || Session { order: Order::Unknown, ..one_after_the_other(5.0) };
    let unknown = combined(&[unknown(), unknown()]);
    assert_eq!(unknown.order, OrderOverDays::NotKnown);
    assert!((unknown.order_allowance - whole).abs() < 1e-9);
    let in_turn = combined(&[day(5.0), day(5.0)]);
    assert_eq!((in_turn.order, in_turn.order_allowance), (OrderOverDays::NotNeeded, 0.0));
    // A day in turn beside one that is not: only that one's part of it.
    let mixed = combined(&[day(5.0), one_after_the_other(5.0)]);
    assert_eq!(mixed.order, OrderOverDays::Changes);
    assert!(mixed.order_allowance > 0.0 && mixed.order_allowance < 0.6 * whole, "{mixed:?}");
}

/// Blocks that change hands more than once have no first club.
#[test]
fn clubs_that_were_both_hit_before_the_other_have_no_order() {
    let mut back_again = one_after_the_other(5.0);
    let last = back_again.shots[0].clone();
    back_again.shots.push(last);
    assert_eq!(combined(&[back_again.clone(), back_again]).order, OrderOverDays::NotKnown);
}

fn with_names(names: [&str; 2], gap: f64) -> Session {
    Session { builds: names.map(|name| Build { name: name.into() }).into(), ..day(gap) }
}

#[test]
fn a_club_hit_every_day_links_days_that_hold_one_of_the_two() {
    let days = [
        with_names(["7 iron", "Own driver"], 80.0),
        with_names(["7 Iron", "Driver B"], 88.0),
        with_names(["7 iron", "Own driver"], 81.0),
    ];
    let question = Question { baseline: 1, ..asking("carry") };
    let pairs = together(&days, &question).expect("days");
    let pair = pairs.iter().find(|pair| pair.name == "Driver B").expect("the club of the second day");
    let seen = pair.combined.as_ref().expect("linked");
    let effects: Vec<f64> = days.iter().map(|day| effect(day, Level::P95).effect).collect();
    assert!((seen.value - (effects[1] - 0.5 * (effects[0] + effects[2]))).abs() < 1e-6, "{seen:?}");
    assert_eq!((pair.candidate, pair.usable, pair.control.as_deref()), (2, 3, Some("7 iron")));
    for day in &pair.days {
        assert!(day.judgment.is_none() && day.through.as_deref() == Some("7 iron") && day.weight > 0.2);
    }
    // Nothing links the two where the third club is missing on one of the days, and nothing is said of a club then that the
    // first day does not hold.
    let apart = [with_names(["7 iron", "Own driver"], 80.0), with_names(["9 iron", "Driver B"], 88.0)];
    assert!(together(&apart, &question).expect("days").iter().all(|pair| pair.combined.is_none()));
    assert!(together(&apart, &question).expect("days").iter().all(|pair| pair.name == "7 iron"));
}

#[test]
fn one_day_on_either_side_of_a_control_leaves_nothing_to_disagree() {
    let days = [with_names(["7 iron", "Own driver"], 80.0), with_names(["7 iron", "Driver B"], 120.0)];
    let question = Question { baseline: 1, ..asking("carry") };
    let pairs = together(&days, &question).expect("days");
    let pair = pairs.iter().find(|pair| pair.name == "Driver B").expect("linked");
    assert_eq!(pair.combined.as_ref().map(|days| days.lie), Some(DaysLie::NotSeen));
}

#[test]
fn the_club_asked_for_is_told_alone_and_found_wherever_a_day_has_it() {
    let three = |gap: f64| in_turn("carry", 5, &[250.0, 250.0 + gap, 259.0], 8.0);
    let days = [three(3.0), three(4.0)];
    let of = |candidate| together(&days, &Question { candidate, ..asking("carry") }).expect("days");
    assert_eq!(of(None).iter().map(|pair| pair.candidate).collect::<Vec<_>>(), [1, 2]);
    assert_eq!(of(Some(2)).iter().map(|pair| pair.candidate).collect::<Vec<_>>(), [2]);
    // On the second day the candidate stands first.
    let mut turned = day(4.0);
    turned.builds.reverse();
    turned.shots.iter_mut().for_each(|shot| shot.build = 1 - shot.build);
    let (straight, turned) = (combined(&[day(3.0), day(4.0)]), combined(&[day(3.0), turned]));
    assert!((straight.value - turned.value).abs() < 1e-9);
}

#[test]
fn several_clubs_share_the_error_over_days_too_and_open_numbers_take_more() {
    let level = |averages: &[f64], word| {
        let days = vec![in_turn("carry", 5, averages, 8.0); 2];
        let question = Question { stopping: Stopping::Word(word), ..asking("carry") };
        together(&days, &question).expect("days")[0].combined.as_ref().expect("combined").different.level
    };
    for (averages, word, wanted) in [
        (&[250.0, 255.0][..], StoppingWord::Fixed, 0.95),
        (&[250.0, 255.0, 251.0], StoppingWord::Fixed, 0.975),
        (&[250.0, 255.0], StoppingWord::NotFixed, 0.99),
    ] {
        assert!((level(averages, word) - wanted).abs() < 1e-12, "{wanted}");
    }
}
